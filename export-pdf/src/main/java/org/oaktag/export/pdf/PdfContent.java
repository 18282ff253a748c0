package org.oaktag.export.pdf;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.nio.charset.StandardCharsets;
import org.oaktag.geometry.Bounds;
import org.oaktag.geometry.Cubic;
import org.oaktag.geometry.Curve;
import org.oaktag.geometry.Path;
import org.oaktag.geometry.Point;

/** Writes the operators of a content stream (ISO 32000-1, annex A), numbers to a millionth. Not thread-safe. */
final class PdfContent {

    private static final int DIGITS = 6;
    private static final int MATRIX_DIGITS = 10;

    private final StringBuilder out = new StringBuilder();

    PdfContent operator(String text) {
        out.append(text).append('\n');
        return this;
    }

    /** Begins a path. */
    PdfContent path(Path path) {
        point(path.start()).operator("m");
        for (Curve curve : path.curves()) {
            if (curve instanceof Cubic cubic) {
                point(cubic.control1())
                        .point(cubic.control2())
                        .point(cubic.end())
                        .operator("c");
            } else {
                point(curve.end()).operator("l");
            }
        }
        return this;
    }

    PdfContent rectangle(Bounds box) {
        return number(box.minX())
                .number(box.minY())
                .number(box.width())
                .number(box.height())
                .operator("re");
    }

    /** Maps everything after it. */
    PdfContent matrix(double a, double b, double c, double d, double e, double f) {
        return matrixOperands(a, b, c, d, e, f).operator("cm");
    }

    /** Sets where and how text is written. */
    PdfContent textMatrix(double a, double b, double c, double d, double e, double f) {
        return matrixOperands(a, b, c, d, e, f).operator("Tm");
    }

    private PdfContent matrixOperands(double... operands) {
        for (double each : operands) {
            out.append(text(each, MATRIX_DIGITS)).append(' ');
        }
        return this;
    }

    private PdfContent point(Point point) {
        return number(point.x()).number(point.y());
    }

    PdfContent number(double value) {
        out.append(text(value, DIGITS)).append(' ');
        return this;
    }

    /** Sets the colour of what is filled ({@code rg}) or drawn ({@code RG}). */
    PdfContent colour(String hex, String operator) {
        for (int i = 1; i < 7; i += 2) {
            out.append(text(Integer.parseInt(hex.substring(i, i + 2), 16) / 255.0, 4))
                    .append(' ');
        }
        return operator(operator);
    }

    String text() {
        return out.toString();
    }

    byte[] bytes() {
        return text().getBytes(StandardCharsets.US_ASCII);
    }

    /** PDF knows no exponents. */
    private static String text(double value, int digits) {
        BigDecimal rounded = BigDecimal.valueOf(value).setScale(digits, RoundingMode.HALF_EVEN);
        return rounded.signum() == 0 ? "0" : rounded.stripTrailingZeros().toPlainString();
    }
}
