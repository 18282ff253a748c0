package org.oaktag.geometry;

/**
 * Area and centroid of a closed path by Green's theorem: {@code A = 1/2 integral (x dy - y dx)},
 * {@code A cx = 1/2 integral x² dy} and {@code A cy = -1/2 integral y² dx}.
 *
 * <p>For a cubic the integrands of the last two are polynomials of degree 8, which Gauss-Legendre with 5 nodes
 * integrates exactly. Everything is taken relative to the start of the path, so that a piece far from the origin loses
 * no digits.
 */
final class Area {
    private static final double[] NODES = {
        -0.906179845938664, -0.5384693101056831, 0, 0.5384693101056831, 0.906179845938664
    };
    private static final double[] WEIGHTS = {
        0.23692688505618908, 0.47862867049936647, 128.0 / 225, 0.47862867049936647, 0.23692688505618908
    };

    private Area() {}

    static double signed(Path path) {
        return toStart(path).sweep();
    }

    static Point centroid(Path path) {
        Path local = toStart(path);
        double area = local.sweep();
        if (area == 0) {
            throw new IllegalStateException("an outline without area has no centre of gravity");
        }
        double mx = 0;
        double my = 0;
        for (Curve curve : local.curves()) {
            for (int i = 0; i < NODES.length; i++) {
                double t = 0.5 * (1 + NODES[i]);
                Point p = curve.pointAt(t);
                Vector d = curve.derivativeAt(t);
                mx += 0.25 * WEIGHTS[i] * p.x() * p.x() * d.y();
                my -= 0.25 * WEIGHTS[i] * p.y() * p.y() * d.x();
            }
        }
        return path.start().plus(new Vector(mx / area, my / area));
    }

    private static Path toStart(Path path) {
        return path.transformed(
                Transform.translation(-path.start().x(), -path.start().y()));
    }
}
