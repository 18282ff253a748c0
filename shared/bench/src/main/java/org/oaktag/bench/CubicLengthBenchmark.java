package org.oaktag.bench;

import java.awt.geom.CubicCurve2D;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.apache.batik.ext.awt.geom.PathLength;
import org.apache.commons.math3.analysis.integration.IterativeLegendreGaussIntegrator;
import org.apache.commons.math3.analysis.integration.UnivariateIntegrator;
import org.oaktag.geometry.Cubic;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OperationsPerInvocation;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** The length of one cubic, to an accuracy in mm. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.NANOSECONDS)
@OperationsPerInvocation(RandomCubics.COUNT)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
@Fork(1)
public class CubicLengthBenchmark {
    @Param({"1e-3", "1e-6", "1e-9"})
    double accuracy;

    private final List<Cubic> cubics = RandomCubics.all();
    private final List<CubicCurve2D> awt = cubics.stream().map(Peers::awt).toList();

    @Benchmark
    public double oaktag() {
        double sum = 0;
        for (Cubic cubic : cubics) {
            sum += cubic.length(accuracy);
        }
        return sum;
    }

    @Benchmark
    public double commonsMath() {
        // It stops at the looser of its two accuracies; the relative one is set so low that the absolute one decides.
        UnivariateIntegrator integrator = new IterativeLegendreGaussIntegrator(24, 1e-12, accuracy);
        double sum = 0;
        for (Cubic cubic : cubics) {
            sum += integrator.integrate(
                    Integer.MAX_VALUE, t -> cubic.derivativeAt(t).length(), 0, 1);
        }
        return sum;
    }

    /** Flattened as finely as java.awt goes; it has no accuracy to ask for. */
    @Benchmark
    public double javaAwt() {
        double sum = 0;
        for (CubicCurve2D cubic : awt) {
            sum += Peers.flattenedLength(cubic, 0.01);
        }
        return sum;
    }

    /** Batik's path length, in float. */
    @Benchmark
    public double batik() {
        double sum = 0;
        for (CubicCurve2D cubic : awt) {
            sum += new PathLength(cubic).lengthOfPath();
        }
        return sum;
    }
}
