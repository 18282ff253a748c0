package org.oaktag.testkit.curves;

import org.oaktag.geometry.Cubic;
import org.oaktag.geometry.Point;
import org.oaktag.geometry.Transform;
import org.oaktag.geometry.Vector;

/** The kinds of cubic that break careless code, each made from four points anywhere and a share of 0 to 1. */
public enum CubicShape {
    GENERAL {
        @Override
        Cubic of(Point a, Point b, Point c, Point d, double share) {
            return new Cubic(a, b, c, d);
        }
    },
    DOUBLED_START {
        @Override
        Cubic of(Point a, Point b, Point c, Point d, double share) {
            return new Cubic(a, a, c, d);
        }
    },
    DOUBLED_END {
        @Override
        Cubic of(Point a, Point b, Point c, Point d, double share) {
            return new Cubic(a, b, d, d);
        }
    },
    DOUBLED_BOTH {
        @Override
        Cubic of(Point a, Point b, Point c, Point d, double share) {
            return new Cubic(a, a, d, d);
        }
    },
    DOUBLED_CONTROLS {
        @Override
        Cubic of(Point a, Point b, Point c, Point d, double share) {
            return new Cubic(a, b, b, d);
        }
    },
    CLOSED {
        @Override
        Cubic of(Point a, Point b, Point c, Point d, double share) {
            return new Cubic(a, b, c, a);
        }
    },
    /** All on one line, in any order: it may turn back once or twice. */
    COLLINEAR {
        @Override
        Cubic of(Point a, Point b, Point c, Point d, double share) {
            Vector along = b.minus(a);
            return new Cubic(
                    a,
                    a.plus(along.times(c.x() / SIDE)),
                    a.plus(along.times(c.y() / SIDE)),
                    a.plus(along.times(d.x() / SIDE)));
        }
    },
    /** A parabola with controls at two thirds. */
    RAISED_PARABOLA {
        @Override
        Cubic of(Point a, Point b, Point c, Point d, double share) {
            return new Cubic(a, a.lerp(b, 2.0 / 3), d.lerp(b, 2.0 / 3), d);
        }
    },
    /** A derivative that vanishes inside, as far as rounding lets it. */
    CUSP {
        @Override
        Cubic of(Point a, Point b, Point c, Point d, double share) {
            double t = 0.1 + 0.8 * share;
            double s = 1 - t;
            Vector last =
                    b.minus(a).times(s * s).plus(c.minus(b).times(2 * s * t)).times(-1 / (t * t));
            return new Cubic(a, b, c, c.plus(last));
        }
    },
    /** As good as a cusp, off by a hair to a millimetre. */
    NEAR_CUSP {
        @Override
        Cubic of(Point a, Point b, Point c, Point d, double share) {
            Cubic cusp = CUSP.of(a, b, c, d, share);
            double off = Math.pow(10, -12 * share);
            return new Cubic(cusp.start().plus(new Vector(off, -off / 2)), b, c, cusp.end());
        }
    },
    LOOP {
        @Override
        Cubic of(Point a, Point b, Point c, Point d, double share) {
            Vector across = d.minus(a);
            return new Cubic(a, c.plus(across.times(1 + share)), c.plus(across.times(-1 - share)), d);
        }
    },
    POINT {
        @Override
        Cubic of(Point a, Point b, Point c, Point d, double share) {
            return new Cubic(a, a, a, a);
        }
    },
    /** A millionth of a millimetre across. */
    TINY {
        @Override
        Cubic of(Point a, Point b, Point c, Point d, double share) {
            return new Cubic(a, b, c, d).transformed(Transform.scale(1e-6 / SIDE));
        }
    },
    /** Ten kilometres across. */
    HUGE {
        @Override
        Cubic of(Point a, Point b, Point c, Point d, double share) {
            return new Cubic(a, b, c, d).transformed(Transform.scale(1e7 / SIDE));
        }
    },
    /** Of an ordinary size, ten kilometres away. */
    FAR_AWAY {
        @Override
        Cubic of(Point a, Point b, Point c, Point d, double share) {
            return new Cubic(a, b, c, d).transformed(Transform.translation(1e7, -1e7));
        }
    };

    /** Half the side of the square that the points come from, mm. */
    static final double SIDE = 300;

    /** Makes the cubic; not every shape uses every point. */
    abstract Cubic of(Point a, Point b, Point c, Point d, double share);
}
