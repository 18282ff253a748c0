package org.oaktag.bench;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.oaktag.geometry.Cubic;
import org.oaktag.geometry.Point;
import org.oaktag.geometry.Transform;

/**
 * The shapes that trip a length: of each kind as many as of every other, turned, scaled to a garment's size and strewn
 * about.
 */
final class HardCubics {
    static final int COUNT = 512;

    private static final long SEED = 20_250_102;

    /** Control points x0 y0 ... x3 y3. */
    private static final double[][] KINDS = {
        // a cusp, exactly and nearly
        {0, 0, 1, 1, 0, 1, 1, 0},
        {0, 0, 1.001, 1, -0.001, 1, 1, 0},
        // a loop
        {0, 0, 2, 2, -1, 2, 1, 0},
        // doubled controls, at one end, the other, both, and in the middle
        {0, 0, 0, 0, 1.0 / 3, 0, 1, 1},
        {0, 0, 1, 0, 2, 1, 2, 1},
        {0, 0, 0, 0, 0.6, 0.8, 0.6, 0.8},
        {0, 0, 1, 2, 1, 2, 3, 0},
        // collinear, with a turn back, exactly and nearly
        {0, 0, 1, 0, -1, 0, 2, 0},
        {0, 0, 1, 0, -1, 1e-6, 2, 0},
    };

    private HardCubics() {}

    static List<Cubic> all() {
        SplittableRandom random = new SplittableRandom(SEED);
        List<Cubic> cubics = new ArrayList<>(COUNT);
        for (int i = 0; i < COUNT; i++) {
            double[] c = KINDS[i % KINDS.length];
            Transform strewn = Transform.rotation(random.nextDouble(2 * Math.PI), Point.ORIGIN)
                    .then(Transform.scale(random.nextDouble(5, 150)))
                    .then(Transform.translation(random.nextDouble(300), random.nextDouble(300)));
            cubics.add(new Cubic(Point.of(c[0], c[1]), Point.of(c[2], c[3]), Point.of(c[4], c[5]), Point.of(c[6], c[7]))
                    .transformed(strewn));
        }
        return cubics;
    }
}
