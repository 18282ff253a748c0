package org.oaktag.bench;

import java.util.Map;
import java.util.concurrent.TimeUnit;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.operation.buffer.BufferParameters;
import org.locationtech.jts.operation.buffer.OffsetCurve;
import org.oaktag.geometry.Cubic;
import org.oaktag.geometry.Path;
import org.oaktag.geometry.Point;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/**
 * The parallel of one well-formed cubic at 10 mm, to a tolerance in mm. JTS gets as many segments as it needs for that.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.NANOSECONDS)
@Warmup(iterations = 3, time = 500, timeUnit = TimeUnit.MILLISECONDS)
@Measurement(iterations = 5, time = 400, timeUnit = TimeUnit.MILLISECONDS)
@Fork(1)
public class OffsetBenchmark {

    /** For each tolerance, the least power of two of segments with which the offset of JTS keeps it. */
    private static final Map<String, Integer> SEGMENTS = Map.of("1e-2", 128, "1e-4", 1024, "1e-6", 16384);

    static final double DISTANCE = 10;

    @Param({"1e-2", "1e-4", "1e-6"})
    String tolerance = "1e-2";

    final Cubic cubic = new Cubic(Point.of(0, 0), Point.of(30, 180), Point.of(120, 240), Point.of(260, 250));

    @Benchmark
    public Path oaktag() {
        return org.oaktag.geometry.OffsetCurve.of(cubic, DISTANCE, Double.parseDouble(tolerance));
    }

    @Benchmark
    public Geometry jts() {
        LineString line = Peers.jts(cubic, SEGMENTS.getOrDefault(tolerance, 0));
        return OffsetCurve.getCurve(
                line, DISTANCE, 8, BufferParameters.JOIN_ROUND, BufferParameters.DEFAULT_MITRE_LIMIT);
    }
}
