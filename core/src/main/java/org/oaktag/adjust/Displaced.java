package org.oaktag.adjust;

import java.util.ArrayList;
import java.util.List;
import org.oaktag.geometry.Cubic;
import org.oaktag.geometry.Curve;
import org.oaktag.geometry.Line;
import org.oaktag.geometry.Path;
import org.oaktag.geometry.Point;
import org.oaktag.geometry.Vector;

/**
 * A path whose last stretch is displaced by a vector times a profile over the arc length.
 *
 * <p>On each curve the profile is the cubic that has its values and slopes at both ends of the curve, so that the
 * displaced curve is a cubic again and joins the next one with the same direction.
 */
final class Displaced {

    private static final double PARALLEL = 1e-12;

    private Displaced() {}

    /** How the displacement grows along the stretch, over u from 0 to 1; it begins with neither a step nor a corner. */
    enum Profile {
        /** Carries the end along and leaves its direction as it is: 3u² - 2u³. */
        CARRY {
            @Override
            double value(double u) {
                return u * u * (3 - 2 * u);
            }

            @Override
            double slope(double u) {
                return 6 * u * (1 - u);
            }
        },
        /** Leaves the end where it is and turns its direction: u³ - u², of slope 1 at the end. */
        TURN {
            @Override
            double value(double u) {
                return u * u * (u - 1);
            }

            @Override
            double slope(double u) {
                return u * (3 * u - 2);
            }
        };

        abstract double value(double u);

        abstract double slope(double u);
    }

    /** Displaces the last stretch of the path, so long; a reach of the whole path and more takes in the whole path. */
    static Path end(Path path, double reach, Profile profile, Vector by) {
        boolean whole = reach >= path.length() - 1e-6;
        List<Curve> curves = new ArrayList<>();
        Path stretch = path;
        if (!whole) {
            Path.Split split = path.splitAt(path.length() - reach);
            curves.addAll(split.before().curves());
            stretch = split.after();
        }
        if (profile == Profile.CARRY && isAlong(stretch, by)) {
            Ring.append(curves, Path.polyline(stretch.start(), stretch.end().plus(by)));
            return Path.of(curves);
        }
        double length = stretch.length();
        double begun = 0;
        Point at = stretch.start();
        for (int i = 0; i < stretch.curves().size(); i++) {
            Cubic cubic = Cubic.from(stretch.curves().get(i));
            double end = i == stretch.curves().size() - 1 ? length : begun + cubic.length();
            Cubic moved = curve(cubic, begun / length, end / length, length, profile, by);
            curves.add(Cubic.of(at, moved.control1(), moved.control2(), moved.end()));
            at = moved.end();
            begun = end;
        }
        return Path.of(curves);
    }

    private static boolean isAlong(Path stretch, Vector by) {
        return stretch.curves().size() == 1
                && stretch.curves().get(0) instanceof Line line
                && Math.abs(line.end().minus(line.start()).unit().cross(by)) <= PARALLEL * by.length();
    }

    private static Cubic curve(Cubic cubic, double from, double to, double length, Profile profile, Vector by) {
        double v0 = profile.value(from);
        double v3 = profile.value(to);
        double v1 = v0 + profile.slope(from) * cubic.derivativeAt(0).length() / (3 * length);
        double v2 = v3 - profile.slope(to) * cubic.derivativeAt(1).length() / (3 * length);
        return Cubic.of(
                cubic.start().plus(by.times(v0)),
                cubic.control1().plus(by.times(v1)),
                cubic.control2().plus(by.times(v2)),
                cubic.end().plus(by.times(v3)));
    }
}
