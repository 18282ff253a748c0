package org.oaktag.bench;

import java.awt.geom.Area;
import java.awt.geom.CubicCurve2D;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.locationtech.jts.geom.LineString;
import org.oaktag.geometry.Crossings;
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

/**
 * Where one cubic crosses another. JTS gets each as 256 segments; java.awt has no crossings, but the area that two
 * shapes share.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.NANOSECONDS)
@OperationsPerInvocation(CrossingsBenchmark.PAIRS)
@Warmup(iterations = 3, time = 500, timeUnit = TimeUnit.MILLISECONDS)
@Measurement(iterations = 5, time = 400, timeUnit = TimeUnit.MILLISECONDS)
@Fork(1)
public class CrossingsBenchmark {

    static final int PAIRS = 512;

    final List<Cubic> cubics = RandomCubics.all().subList(0, 2 * PAIRS);
    final List<LineString> lines =
            cubics.stream().map(cubic -> Peers.jts(cubic, Peers.SEGMENTS)).toList();
    private final List<CubicCurve2D> awt = cubics.stream().map(Peers::awt).toList();

    @Benchmark
    public int oaktag() {
        int found = 0;
        for (int i = 0; i < PAIRS; i++) {
            found += Crossings.between(cubics.get(2 * i), cubics.get(2 * i + 1)).size();
        }
        return found;
    }

    @Benchmark
    public int jts() {
        int found = 0;
        for (int i = 0; i < PAIRS; i++) {
            found += lines.get(2 * i).intersection(lines.get(2 * i + 1)).getNumGeometries();
        }
        return found;
    }

    @Benchmark
    public int javaAwt() {
        int found = 0;
        for (int i = 0; i < PAIRS; i++) {
            Area shared = new Area(awt.get(2 * i));
            shared.intersect(new Area(awt.get(2 * i + 1)));
            found += shared.isEmpty() ? 0 : 1;
        }
        return found;
    }
}
