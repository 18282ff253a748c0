package org.oaktag.export.drawing;

import java.util.ArrayList;
import java.util.List;
import org.oaktag.geometry.Bounds;

/**
 * What is drawn in one place, in the order in which it is drawn. Not thread-safe; a sheet is drawn by one thread.
 *
 * <pre>{@code
 * Figure figure = new Figure();
 * figure.add(Stroke.of(LineType.SEAM, hem.path()));
 * figure.add(TextBlock.of("hem", Font.TEXT).at(0, -5));
 * }</pre>
 */
public final class Figure {

    private final List<Ink> inks = new ArrayList<>();

    /** Begins an empty figure. */
    public Figure() {}

    /** Draws something over what is there. */
    public Figure add(Ink ink) {
        inks.add(ink);
        return this;
    }

    /** Draws all of another figure over what is there. */
    public Figure add(Figure figure) {
        inks.addAll(figure.inks);
        return this;
    }

    /** Returns everything drawn so far. */
    public List<Ink> inks() {
        return List.copyOf(inks);
    }

    /**
     * Returns the box that holds everything.
     *
     * @throws IllegalStateException if nothing was drawn
     */
    public Bounds bounds() {
        return inks.stream()
                .map(Ink::bounds)
                .reduce(Bounds::union)
                .orElseThrow(() -> new IllegalStateException("a figure without ink has no bounds"));
    }
}
