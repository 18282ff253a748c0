package org.oaktag.export.svg;

import java.util.regex.Pattern;
import org.oaktag.measure.Length;

/** Adds inches to text that speaks in millimetres, for classes in which both are used. */
final class BothUnits {

    private static final Pattern MILLIMETRES = Pattern.compile("(-?\\d+(?:\\.\\d+)?) mm\\b");

    private BothUnits() {}

    /**
     * Returns the text with each length in inches behind it: {@code "drop 25.4 mm"} as {@code "drop 25.4 mm (1 in)"}.
     */
    static String of(String text) {
        return MILLIMETRES
                .matcher(text)
                .replaceAll(found -> found.group() + " ("
                        + Length.mm(Double.parseDouble(found.group(1))).textInInches() + ")");
    }
}
