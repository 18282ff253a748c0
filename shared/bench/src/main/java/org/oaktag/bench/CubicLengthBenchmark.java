package org.oaktag.bench;

import java.awt.geom.CubicCurve2D;
import java.util.concurrent.TimeUnit;
import org.oaktag.geometry.Cubic;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OperationsPerInvocation;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Warmup;

/**
 * The length of one cubic: to an accuracy in mm from ourselves and commons-math; from java.awt and JTS, which know
 * none, as it comes and as finely flattened as that accuracy takes; from Batik as it comes.
 */
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.NANOSECONDS)
@OperationsPerInvocation(Sample.COUNT)
@Warmup(iterations = 3, time = 500, timeUnit = TimeUnit.MILLISECONDS)
@Measurement(iterations = 5, time = 400, timeUnit = TimeUnit.MILLISECONDS)
@Fork(1)
public class CubicLengthBenchmark {

    @Benchmark
    public double oaktag(Sample sample, Accuracy accuracy) {
        double sum = 0;
        for (Cubic cubic : sample.all) {
            sum += cubic.length(accuracy.mm);
        }
        return sum;
    }

    @Benchmark
    public double commonsMath(Sample sample, Accuracy accuracy) {
        double sum = 0;
        for (Cubic cubic : sample.all) {
            sum += Peers.integratedLength(cubic, accuracy.mm);
        }
        return sum;
    }

    @Benchmark
    public double javaAwt(Sample sample, Fineness fineness) {
        double sum = 0;
        for (CubicCurve2D cubic : sample.awt) {
            sum += Peers.flattenedLength(cubic, fineness);
        }
        return sum;
    }

    @Benchmark
    public double jts(Sample sample, Fineness fineness) {
        double sum = 0;
        for (Cubic cubic : sample.all) {
            sum += Peers.jts(cubic, fineness.segments()).getLength();
        }
        return sum;
    }

    @Benchmark
    public double batik(Sample sample) {
        double sum = 0;
        for (CubicCurve2D cubic : sample.awt) {
            sum += Peers.batikLength(cubic);
        }
        return sum;
    }
}
