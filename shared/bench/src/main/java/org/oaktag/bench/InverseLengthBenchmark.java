package org.oaktag.bench;

import java.awt.geom.CubicCurve2D;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.apache.batik.ext.awt.geom.PathLength;
import org.apache.commons.math3.analysis.integration.IterativeLegendreGaussIntegrator;
import org.apache.commons.math3.analysis.integration.UnivariateIntegrator;
import org.apache.commons.math3.analysis.solvers.BrentSolver;
import org.oaktag.geometry.Cubic;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OperationsPerInvocation;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** The parameter at a share of the length of a cubic, to 1e-6 mm; the length is known beforehand. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.NANOSECONDS)
@OperationsPerInvocation(RandomCubics.COUNT)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
@Fork(1)
public class InverseLengthBenchmark {

    private static final double SHARE = 0.37;
    private static final double ACCURACY = 1e-6;

    private final List<Cubic> cubics = RandomCubics.all();
    private final List<CubicCurve2D> awt = cubics.stream().map(Peers::awt).toList();
    private final double[] lengths =
            cubics.stream().mapToDouble(cubic -> cubic.length(1e-9)).toArray();

    @Benchmark
    public double oaktag() {
        double sum = 0;
        for (int i = 0; i < lengths.length; i++) {
            sum += cubics.get(i).parameterAt(SHARE * lengths[i], ACCURACY);
        }
        return sum;
    }

    @Benchmark
    public double commonsMath() {
        UnivariateIntegrator integrator = new IterativeLegendreGaussIntegrator(24, 1e-12, ACCURACY / 10);
        BrentSolver solver = new BrentSolver(1e-12, 1e-9, ACCURACY);
        double sum = 0;
        for (int i = 0; i < lengths.length; i++) {
            Cubic cubic = cubics.get(i);
            double wanted = SHARE * lengths[i];
            sum += solver.solve(
                    200,
                    t -> (t <= 0
                                    ? 0
                                    : integrator.integrate(
                                            Integer.MAX_VALUE,
                                            u -> cubic.derivativeAt(u).length(),
                                            0,
                                            t))
                            - wanted,
                    0,
                    1);
        }
        return sum;
    }

    /** Batik's point at a length, in float, on a path that it measures first. */
    @Benchmark
    public double batik() {
        double sum = 0;
        for (int i = 0; i < lengths.length; i++) {
            sum += new PathLength(awt.get(i))
                    .pointAtLength((float) (SHARE * lengths[i]))
                    .getX();
        }
        return sum;
    }
}
