package org.oaktag.export.svg;

import org.oaktag.geometry.Cubic;
import org.oaktag.geometry.Curve;
import org.oaktag.geometry.Path;
import org.oaktag.geometry.Point;

/** Writes a path as SVG path data: absolute M, L and C only, in millimetres. */
final class PathData {

    private PathData() {}

    static String of(Path path) {
        StringBuilder data = new StringBuilder("M");
        append(data, path.start());
        for (Curve curve : path.curves()) {
            if (curve instanceof Cubic cubic) {
                data.append(" C");
                append(data, cubic.control1());
                append(data, cubic.control2());
            } else {
                data.append(" L");
            }
            append(data, curve.end());
        }
        return data.toString();
    }

    private static void append(StringBuilder data, Point point) {
        data.append(' ').append(Decimal.text(point.x())).append(' ').append(Decimal.text(point.y()));
    }
}
