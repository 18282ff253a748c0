package org.oaktag.testkit.curves;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import org.oaktag.geometry.Cubic;
import org.oaktag.geometry.Curve;
import org.oaktag.geometry.Line;
import org.oaktag.geometry.Path;
import org.oaktag.geometry.Point;
import org.oaktag.geometry.Vector;

/**
 * Paths of 2 to 11 curves without a corner: gentle, winding, straight or turning one way, of curves a hundredth of a
 * millimetre to a hundred millimetres long, as a hand or a program draws them.
 */
public final class SmoothPaths {
    private static final double SHORTEST = 0.01;
    private static final double LONGEST = 100;
    private static final double[] LEAST_TURN = {-0.3, -2, 0, 0};
    private static final double[] MOST_TURN = {0.3, 2, 0, 0.6};

    private SmoothPaths() {}

    /** Returns the paths; they are not shrunk. */
    public static Arbitrary<Path> all() {
        return Arbitraries.randomValue(SmoothPaths::path);
    }

    private static Path path(Random random) {
        int kind = random.nextInt(LEAST_TURN.length);
        int count = 2 + random.nextInt(10);
        List<Curve> curves = new ArrayList<>(count);
        Point pen = Point.of(between(random, 0, 300), between(random, 0, 300));
        double angle = between(random, 0, 2 * Math.PI);
        for (int i = 0; i < count; i++) {
            double length = SHORTEST * Math.pow(LONGEST / SHORTEST, random.nextDouble());
            double turn = between(random, LEAST_TURN[kind], MOST_TURN[kind]);
            if (turn == 0 || random.nextInt(5) == 0) {
                Point end = pen.plus(Vector.polar(length, angle));
                curves.add(Line.of(pen, end));
                pen = end;
            } else {
                Point end = pen.plus(Vector.polar(length, angle + turn * between(random, 0.3, 0.7)));
                Vector leaving = Vector.polar(length * between(random, 0.1, 0.6), angle);
                angle += turn;
                curves.add(Cubic.hermite(pen, leaving, end, Vector.polar(length * between(random, 0.1, 0.6), angle)));
                pen = end;
            }
        }
        return Path.of(curves);
    }

    private static double between(Random random, double least, double most) {
        return least + (most - least) * random.nextDouble();
    }
}
