package org.oaktag.bench;

import java.awt.geom.CubicCurve2D;
import java.util.List;
import org.oaktag.geometry.Cubic;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;

/** The cubics of one run; the same {@link #COUNT} in every run and for everyone, the hard ones again and again. */
@State(Scope.Benchmark)
public class Sample {
    static final int COUNT = RandomCubics.COUNT;

    @Param({"random", "hard"})
    String cubics = "random";

    List<Cubic> all = List.of();
    List<CubicCurve2D> awt = List.of();
    double[] lengths = {};

    /** Makes the curves as each library takes them, and measures them. */
    @Setup
    public void fill() {
        List<Cubic> some = cubics.equals("hard") ? HardCubics.all() : RandomCubics.all();
        all = java.util.stream.IntStream.range(0, COUNT)
                .mapToObj(i -> some.get(i % some.size()))
                .toList();
        awt = all.stream().map(Peers::awt).toList();
        lengths = all.stream().mapToDouble(cubic -> cubic.length(1e-9)).toArray();
    }
}
