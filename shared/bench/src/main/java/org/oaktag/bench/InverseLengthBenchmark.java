package org.oaktag.bench;

import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OperationsPerInvocation;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Warmup;

/** The place at a share of the length of a cubic, to an accuracy; the length is known beforehand. */
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.NANOSECONDS)
@OperationsPerInvocation(Sample.COUNT)
@Warmup(iterations = 3, time = 500, timeUnit = TimeUnit.MILLISECONDS)
@Measurement(iterations = 5, time = 400, timeUnit = TimeUnit.MILLISECONDS)
@Fork(1)
public class InverseLengthBenchmark {
    static final double SHARE = 0.37;

    @Benchmark
    public double oaktag(Sample sample, Accuracy accuracy) {
        double sum = 0;
        for (int i = 0; i < Sample.COUNT; i++) {
            sum += sample.all.get(i).parameterAt(SHARE * sample.lengths[i], accuracy.mm);
        }
        return sum;
    }

    @Benchmark
    public double commonsMath(Sample sample, Accuracy accuracy) {
        double sum = 0;
        for (int i = 0; i < Sample.COUNT; i++) {
            sum += Peers.solvedParameter(sample.all.get(i), SHARE * sample.lengths[i], accuracy.mm);
        }
        return sum;
    }

    /** Batik's point at a length, in float, on a path that it measures first. */
    @Benchmark
    public double batik(Sample sample) {
        double sum = 0;
        for (int i = 0; i < Sample.COUNT; i++) {
            sum += Peers.batikPoint(sample.awt.get(i), SHARE * sample.lengths[i])
                    .getX();
        }
        return sum;
    }
}
