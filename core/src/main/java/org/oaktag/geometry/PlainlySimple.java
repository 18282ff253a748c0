package org.oaktag.geometry;

import java.util.List;

/**
 * Signs, cheap to see, that a closed path meets itself at its joins only. They are there for nearly every piece of a
 * pattern; where one is missing nothing is known. Control points bound a curve: so one whose legs all go forward along
 * its chord does not meet itself, neighbours whose legs from their join lie in two directions apart meet only there,
 * and others do not meet whose points lie apart on one of four axes.
 */
final class PlainlySimple {
    /** Points of a curve that are kept: its ends and its control points. */
    private static final int KEPT = 4;

    /** Up to so many curves all pairs are looked at sooner than a tree of their boxes is made. */
    private static final int FEW = 24;

    /** Nearer than this, mm, is not plainly apart: a thousand times what counts as a meeting. */
    private static final double APART = 1e-6;

    /** The least sine of the angle between two directions that are plainly apart. */
    private static final double TURNED = 1e-3;

    private final int count;
    private final double[] x;
    private final double[] y;

    /** Used for one join after the other. */
    private final Angle before = new Angle();

    private final Angle after = new Angle();

    private PlainlySimple(List<Curve> curves) {
        count = curves.size();
        x = new double[KEPT * count];
        y = new double[KEPT * count];
        for (int i = 0; i < count; i++) {
            Curve curve = curves.get(i);
            Point start = curve.start();
            Point end = curve.end();
            keep(KEPT * i, start.x(), start.y());
            keep(KEPT * i + 3, end.x(), end.y());
            if (curve instanceof Cubic cubic) {
                keep(KEPT * i + 1, cubic.control1().x(), cubic.control1().y());
                keep(KEPT * i + 2, cubic.control2().x(), cubic.control2().y());
            } else {
                keep(KEPT * i + 1, (2 * start.x() + end.x()) / 3, (2 * start.y() + end.y()) / 3);
                keep(KEPT * i + 2, (start.x() + 2 * end.x()) / 3, (start.y() + 2 * end.y()) / 3);
            }
        }
    }

    private void keep(int at, double px, double py) {
        x[at] = px;
        y[at] = py;
    }

    /** Tells whether every sign is there. */
    static boolean isSeenOf(Path closed) {
        return closed.curves().size() > 2 && new PlainlySimple(closed.curves()).isSeen(closed);
    }

    private boolean isSeen(Path closed) {
        for (int i = 0; i < count; i++) {
            if (!goesForward(KEPT * i)) {
                return false;
            }
        }
        if (count <= FEW) {
            return isEveryPairApart();
        }
        for (CurvePair pair : closed.tree().pairsWithin(APART)) {
            if (!isApart(pair.first(), pair.second())) {
                return false;
            }
        }
        return true;
    }

    private boolean isEveryPairApart() {
        for (int i = 0; i < count; i++) {
            for (int j = i + 1; j < count; j++) {
                if (!isApart(i, j)) {
                    return false;
                }
            }
        }
        return true;
    }

    private boolean isApart(int i, int j) {
        if (j == i + 1) {
            return partAt(KEPT * i, KEPT * j);
        }
        return (i == 0 && j == count - 1) ? partAt(KEPT * j, 0) : lieApart(KEPT * i, KEPT * j);
    }

    private boolean goesForward(int a) {
        double wayX = x[a + 3] - x[a];
        double wayY = y[a + 3] - y[a];
        for (int k = a; k < a + 3; k++) {
            if ((x[k + 1] - x[k]) * wayX + (y[k + 1] - y[k]) * wayY < 0) {
                return false;
            }
        }
        return wayX * wayX + wayY * wayY > APART * APART;
    }

    /** Tells whether what arrives at a join and what leaves it keep to angles that are apart. */
    private boolean partAt(int arriving, int leaving) {
        before.hold(arriving + 3, arriving);
        after.hold(leaving, leaving + 3);
        return !before.has(after.x0, after.y0) && !after.has(before.x0, before.y0);
    }

    /**
     * The angle that holds all legs of a curve from one of its ends, from its one bound clockwise on the table to its
     * other; as the curve goes forward along its chord it is less than a half turn.
     */
    private final class Angle {
        private double x0;
        private double y0;
        private double x1;
        private double y1;

        void hold(int from, int to) {
            x0 = x1 = x[to] - x[from];
            y0 = y1 = y[to] - y[from];
            int step = to > from ? 1 : -1;
            for (int k = from + step; k != to; k += step) {
                double legX = x[k] - x[from];
                double legY = y[k] - y[from];
                if (x0 * legY - y0 * legX < 0) {
                    x0 = legX;
                    y0 = legY;
                }
                if (x1 * legY - y1 * legX > 0) {
                    x1 = legX;
                    y1 = legY;
                }
            }
        }

        /** Tells whether a direction lies in the angle, or so near to it that it is not plainly apart. */
        boolean has(double vx, double vy) {
            double room = TURNED * Math.sqrt(vx * vx + vy * vy);
            return x0 * vy - y0 * vx >= -room * Math.sqrt(x0 * x0 + y0 * y0)
                    && vx * y1 - vy * x1 >= -room * Math.sqrt(x1 * x1 + y1 * y1)
                    && (x0 * vx + y0 * vy > 0 || x1 * vx + y1 * vy > 0);
        }
    }

    private boolean lieApart(int a, int b) {
        return lieApartAlong(a, b, 1, 0)
                || lieApartAlong(a, b, 0, 1)
                || lieApartAcross(a, b, a)
                || lieApartAcross(a, b, b);
    }

    private boolean lieApartAcross(int a, int b, int chord) {
        double wayX = x[chord + 3] - x[chord];
        double wayY = y[chord + 3] - y[chord];
        double length = Math.sqrt(wayX * wayX + wayY * wayY);
        return lieApartAlong(a, b, -wayY / length, wayX / length);
    }

    private boolean lieApartAlong(int a, int b, double axisX, double axisY) {
        double leastA = Double.POSITIVE_INFINITY;
        double mostA = Double.NEGATIVE_INFINITY;
        double leastB = Double.POSITIVE_INFINITY;
        double mostB = Double.NEGATIVE_INFINITY;
        for (int k = 0; k < KEPT; k++) {
            double onA = axisX * x[a + k] + axisY * y[a + k];
            double onB = axisX * x[b + k] + axisY * y[b + k];
            leastA = Math.min(leastA, onA);
            mostA = Math.max(mostA, onA);
            leastB = Math.min(leastB, onB);
            mostB = Math.max(mostB, onB);
        }
        return leastB - mostA > APART || leastA - mostB > APART;
    }
}
