package org.oaktag.lay;

import java.util.List;

/**
 * Lays parts on shelves by the boxes round them, the tallest first, each on the last shelf or on a new one: "next fit
 * decreasing height" of Coffman, Garey, Johnson and Tarjan, "Performance bounds for level-oriented two-dimensional
 * packing algorithms", SIAM Journal on Computing 9 (1980), 808 to 826. What is packed by exact outlines has to beat it,
 * so that no lay is longer than one that anybody could make with a ruler.
 */
final class Shelves {

    private Shelves() {}

    /** Returns the parts on their shelves, each in the first of its ways; one on the fold begins a shelf. */
    static Layout of(Nesting nesting) {
        List<Part> parts = nesting.parts();
        Layout.Seat[] seats = new Layout.Seat[parts.size()];
        double shelf = 0;
        double tall = 0;
        double x = 0;
        for (int part : nesting.greatestFirst(each -> each.shapes().get(0).height())) {
            Shape shape = parts.get(part).shapes().get(0);
            if (x > 0 && (shape.onFold() || x + shape.width() > nesting.width())) {
                shelf += tall + nesting.gap();
                tall = 0;
                x = 0;
            }
            seats[part] = new Layout.Seat(nesting.ways(part)[0], x, shelf);
            tall = Math.max(tall, shape.height());
            x += shape.width() + nesting.gap();
        }
        return Layout.of(List.of(seats), nesting);
    }
}
