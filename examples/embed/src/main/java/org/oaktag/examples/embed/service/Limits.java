package org.oaktag.examples.embed.service;

import java.time.Duration;
import org.oaktag.PatternException;

/**
 * What one request may ask of the service, so that nobody can take it all.
 *
 * @param bytes how long a request may be; a body and a recipe of twenty steps take about 5 kB
 * @param steps how many steps a recipe may have
 * @param time how long a sender waits for an answer, from the moment at which the request was read
 * @param atWork how many patterns are drawn at a time
 * @param waiting how many more may wait for their turn; beyond that a sender is asked to come back
 */
public record Limits(int bytes, int steps, Duration time, int atWork, int waiting) {

    /** Refuses limits that would let nothing through. */
    public Limits {
        if (bytes < 1 || steps < 1 || time.isNegative() || time.isZero() || atWork < 1 || waiting < 1) {
            throw PatternException.of(
                    "limits of the service",
                    "must each be above zero",
                    bytes + " bytes, " + steps + " steps, " + time + ", " + atWork + " at work, " + waiting
                            + " waiting",
                    "");
        }
    }

    /**
     * Returns limits for a small machine: 64 KiB, 100 steps, 5 s, as many at work as there are processors, 64 waiting.
     */
    public static Limits modest() {
        return new Limits(
                64 * 1024, 100, Duration.ofSeconds(5), Runtime.getRuntime().availableProcessors(), 64);
    }
}
