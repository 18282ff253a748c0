package org.oaktag.testkit.lay;

import java.util.Comparator;
import java.util.List;
import org.oaktag.geometry.Bounds;

/**
 * Packs the boxes of shapes on shelves, the tallest first, each on the last shelf or on a new one: "next fit decreasing
 * height" of Coffman, Garey, Johnson and Tarjan, "Performance bounds for level-oriented two-dimensional packing
 * algorithms", SIAM Journal on Computing 9 (1980), 808 to 826.
 */
public final class Shelves {

    private Shelves() {}

    /**
     * Returns the length of cloth that the boxes take.
     *
     * @param boxes boxes of which only width and height matter
     * @param width the width of the cloth, mm, at least that of every box
     * @param gap the room between boxes, mm
     */
    public static double length(List<Bounds> boxes, double width, double gap) {
        double shelf = 0;
        double tall = 0;
        double x = 0;
        for (Bounds box : boxes.stream()
                .sorted(Comparator.comparingDouble(Bounds::height).reversed())
                .toList()) {
            if (x > 0 && x + box.width() > width) {
                shelf += tall + gap;
                tall = 0;
                x = 0;
            }
            tall = Math.max(tall, box.height());
            x += box.width() + gap;
        }
        return shelf + tall;
    }
}
