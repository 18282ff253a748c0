package org.oaktag.bench;

import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;

/**
 * How finely the peers flatten that cannot be asked for an accuracy: as they come, or so that the lengths of all
 * samples keep one.
 */
@State(Scope.Benchmark)
public class Fineness {
    static final String AS_IT_COMES = "";

    @Param({AS_IT_COMES, "1e-6"})
    String mm = AS_IT_COMES;

    static Fineness of(String mm) {
        Fineness fineness = new Fineness();
        fineness.mm = mm;
        return fineness;
    }

    /** The segments of JTS's line: {@link Peers#SEGMENTS}, or the least power of two that keeps 1e-6 mm. */
    int segments() {
        return mm.isEmpty() ? Peers.SEGMENTS : 32_768;
    }

    /**
     * The flatness for java.awt: the finest that its own limit of subdivisions carries through, or half of what is
     * asked.
     */
    double flatness() {
        return mm.isEmpty() ? 0.01 : 5e-7;
    }

    /** How often java.awt may halve: its own limit, or as often as the flatness takes. */
    int halvings() {
        return mm.isEmpty() ? 10 : 20;
    }
}
