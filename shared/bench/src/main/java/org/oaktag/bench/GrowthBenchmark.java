package org.oaktag.bench;

import java.awt.geom.Path2D;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.oaktag.geometry.CornerStyle;
import org.oaktag.geometry.Crossing;
import org.oaktag.geometry.Crossings;
import org.oaktag.geometry.Cubic;
import org.oaktag.geometry.Outline;
import org.oaktag.geometry.OutlineOffset;
import org.oaktag.geometry.Path;
import org.oaktag.geometry.PathNearest;
import org.oaktag.geometry.Point;
import org.oaktag.geometry.Transform;
import org.oaktag.geometry.Vector;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OperationsPerInvocation;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/**
 * What questions cost of one and the same ring with waves, drawn by more and more cubics.
 *
 * <p>Where the index is part of the cost (self-crossings, crossings) a copy that nobody has asked yet is asked each
 * time; a place is asked of an outline that has been asked before.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.NANOSECONDS)
@Warmup(iterations = 3, time = 500, timeUnit = TimeUnit.MILLISECONDS)
@Measurement(iterations = 5, time = 400, timeUnit = TimeUnit.MILLISECONDS)
@Fork(1)
public class GrowthBenchmark {
    static final int POINTS = 1024;

    @Param({"4", "16", "64", "256", "1024"})
    int edges = 4;

    private List<Cubic> cubics = List.of();
    private Outline outline = ring(ringOf(4));
    private Outline moved = outline;
    private Path2D awt = Peers.awt(outline.path().curves());
    private List<Point> points = List.of();

    /** Draws the ring. */
    @Setup
    public void draw() {
        cubics = ringOf(edges);
        outline = ring(cubics);
        moved = outline.transformed(Transform.translation(30, 7));
        awt = Peers.awt(outline.path().curves());
        SplittableRandom random = new SplittableRandom(7);
        points = Stream.generate(() -> Point.of(random.nextDouble(60, 740), random.nextDouble(-40, 640)))
                .limit(POINTS)
                .toList();
    }

    private static Outline ring(List<Cubic> cubics) {
        return Outline.of(Path.of(cubics));
    }

    private static List<Cubic> ringOf(int count) {
        List<Cubic> ring = new ArrayList<>(count);
        for (int i = 0; i < count; i++) {
            Vector leaving = onRing(i + 1, count).minus(onRing(i - 1, count)).times(1.0 / 6);
            Vector arriving = onRing(i + 2, count).minus(onRing(i, count)).times(1.0 / 6);
            ring.add(Cubic.hermite(onRing(i, count), leaving, onRing((i + 1) % count, count), arriving));
        }
        return ring;
    }

    private static Point onRing(int i, int count) {
        double angle = 2 * Math.PI * i / count;
        return Point.of(400, 300).plus(Vector.polar(300 + 40 * Math.sin(5 * angle), angle));
    }

    @Benchmark
    @OperationsPerInvocation(POINTS)
    public int contains() {
        return Peers.count(points, outline::contains);
    }

    @Benchmark
    @OperationsPerInvocation(POINTS)
    public int containsJavaAwt() {
        return Peers.count(points, point -> awt.contains(point.x(), point.y()));
    }

    @Benchmark
    @OperationsPerInvocation(POINTS)
    public double nearest() {
        double sum = 0;
        for (Point point : points) {
            PathNearest nearest = outline.path().nearest(point);
            sum += nearest.distance();
        }
        return sum;
    }

    @Benchmark
    public List<Crossing> selfCrossings() {
        return ring(cubics).selfCrossings();
    }

    @Benchmark
    public boolean meetsItself() {
        return ring(cubics).meetsItself();
    }

    @Benchmark
    public List<Crossing> crossings() {
        return Crossings.between(ring(cubics).path(), moved.path());
    }

    @Benchmark
    public OutlineOffset offset() {
        return OutlineOffset.outward(ring(cubics), 10, CornerStyle.mitre(4), 0.01);
    }
}
