package org.oaktag.export.xml;

import org.oaktag.geometry.Cubic;
import org.oaktag.geometry.Curve;
import org.oaktag.geometry.Path;
import org.oaktag.geometry.Point;

/**
 * Writes a path as SVG path data: absolute M, L and C only, in millimetres.
 *
 * <pre>{@code
 * String d = PathData.of(front.outline().path());   // absolute M, L and C, in mm
 * }</pre>
 */
public final class PathData {

    /** Steps of a coarse coordinate in a millimetre. */
    private static final double PER_MM = 1000;

    private PathData() {}

    public static String of(Path path) {
        return of(path, 0);
    }

    /** Writes a path for the screen, to a thousandth of a millimetre. */
    public static String coarse(Path path) {
        return of(path, PER_MM);
    }

    private static String of(Path path, double perMm) {
        StringBuilder data = new StringBuilder("M");
        append(data, path.start(), perMm);
        for (Curve curve : path.curves()) {
            if (curve instanceof Cubic cubic) {
                data.append(" C");
                append(data, cubic.control1(), perMm);
                append(data, cubic.control2(), perMm);
            } else {
                data.append(" L");
            }
            append(data, curve.end(), perMm);
        }
        return data.toString();
    }

    private static void append(StringBuilder data, Point point, double perMm) {
        data.append(' ').append(text(point.x(), perMm)).append(' ').append(text(point.y(), perMm));
    }

    private static String text(double value, double perMm) {
        return Decimal.text(perMm == 0 ? value : Math.round(value * perMm) / perMm);
    }
}
