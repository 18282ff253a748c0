package org.oaktag.bench;

import java.awt.geom.Path2D;
import java.util.List;
import java.util.SplittableRandom;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.locationtech.jts.geom.Polygon;
import org.oaktag.blocks.TopNames;
import org.oaktag.body.BodyMeasurements;
import org.oaktag.body.Figure;
import org.oaktag.examples.HoodedTop;
import org.oaktag.geometry.Outline;
import org.oaktag.geometry.Point;
import org.oaktag.measure.Length;
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

/** The area of the outline of a sleeve, and whether a point lies in it. JTS gets 256 segments for each curve. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.NANOSECONDS)
@Warmup(iterations = 3, time = 500, timeUnit = TimeUnit.MILLISECONDS)
@Measurement(iterations = 5, time = 400, timeUnit = TimeUnit.MILLISECONDS)
@Fork(1)
public class OutlineBenchmark {

    static final int POINTS = 1024;

    final Outline outline = HoodedTop.block(BodyMeasurements.builder()
                    .name("Mira")
                    .figure(Figure.WOMAN)
                    .bustGirth(Length.cm(94.5))
                    .height(Length.cm(166))
                    .build())
            .piece(TopNames.SLEEVE)
            .outline();
    final Path2D awt = Peers.awt(outline.path().curves());
    final Polygon jts = Peers.jts(outline.path().curves(), Peers.SEGMENTS);
    private final List<Point> points = points(new SplittableRandom(7));

    @Benchmark
    @OperationsPerInvocation(POINTS)
    public int containsOaktag() {
        return Peers.count(points, outline::contains);
    }

    @Benchmark
    @OperationsPerInvocation(POINTS)
    public int containsJavaAwt() {
        return Peers.count(points, point -> awt.contains(point.x(), point.y()));
    }

    @Benchmark
    @OperationsPerInvocation(POINTS)
    public int containsJts() {
        return Peers.count(points, point -> jts.contains(Peers.jts(point)));
    }

    @Benchmark
    public double areaOaktag() {
        return outline.area();
    }

    @Benchmark
    public double areaJts() {
        return jts.getArea();
    }

    private List<Point> points(SplittableRandom random) {
        double width = outline.bounds().width();
        double height = outline.bounds().height();
        return Stream.generate(() -> Point.of(
                        outline.bounds().minX() + random.nextDouble() * width,
                        outline.bounds().minY() + random.nextDouble() * height))
                .limit(POINTS)
                .toList();
    }
}
