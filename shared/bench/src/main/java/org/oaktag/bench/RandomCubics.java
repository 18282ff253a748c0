package org.oaktag.bench;

import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.Stream;
import org.oaktag.geometry.Cubic;
import org.oaktag.geometry.Point;

/** The same 4,096 cubics in every run, their control points spread evenly over a 300 mm square. */
final class RandomCubics {
    static final int COUNT = 4096;

    private static final double SIDE = 300;
    private static final long SEED = 20_250_101;

    private RandomCubics() {}

    static List<Cubic> all() {
        SplittableRandom random = new SplittableRandom(SEED);
        return Stream.generate(() -> Cubic.of(point(random), point(random), point(random), point(random)))
                .limit(COUNT)
                .toList();
    }

    private static Point point(SplittableRandom random) {
        return new Point(random.nextDouble(SIDE), random.nextDouble(SIDE));
    }
}
