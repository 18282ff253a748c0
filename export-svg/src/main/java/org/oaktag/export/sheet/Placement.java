package org.oaktag.export.sheet;

import java.util.Objects;
import java.util.Optional;
import org.oaktag.export.drawing.Figure;
import org.oaktag.geometry.Bounds;

/**
 * A figure in its place on a sheet of paper.
 *
 * <pre>{@code
 * PaperSheet sheet = Printout.whole(top, allowances, Paper.roll(inches(36))).sheets().get(0);
 * for (Placement placed : sheet.placements()) {
 *     placed.bounds();   // where it lies on the sheet, mm
 * }
 * }</pre>
 *
 * @param id an identifier, the same wherever the same figure is placed
 * @param title what it is, for a reader's table of contents; empty for what needs no entry
 * @param figure what is drawn
 * @param dx how far it is moved to the right, mm
 * @param dy how far it is moved down, mm
 * @param window the part of the sheet outside of which nothing of it is shown; empty where all of it is
 * @param layer the layer that it can be shown or hidden with, such as the name of a size; empty where it is always
 *     shown
 */
public record Placement(
        String id,
        Optional<String> title,
        Figure figure,
        double dx,
        double dy,
        Optional<Bounds> window,
        Optional<String> layer) {
    /** Refuses null. */
    public Placement {
        Objects.requireNonNull(id, "id");
        Objects.requireNonNull(title, "title");
        Objects.requireNonNull(figure, "figure");
        Objects.requireNonNull(window, "window");
        Objects.requireNonNull(layer, "layer");
    }

    static Placement of(String id, Figure figure, double dx, double dy) {
        return new Placement(id, Optional.empty(), figure, dx, dy, Optional.empty(), Optional.empty());
    }

    Placement titled(String title) {
        return new Placement(id, Optional.of(title), figure, dx, dy, window, layer);
    }

    Placement within(Bounds other) {
        return new Placement(id, title, figure, dx, dy, Optional.of(other), layer);
    }

    Placement moved(double x, double y) {
        return new Placement(id, title, figure, dx + x, dy + y, window, layer);
    }

    /** Returns the box on the sheet that holds the whole figure, shown or not. */
    public Bounds bounds() {
        return moved(figure.bounds());
    }

    /** Returns where something of the figure lies on the sheet. */
    Bounds moved(Bounds own) {
        return new Bounds(own.minX() + dx, own.minY() + dy, own.maxX() + dx, own.maxY() + dy);
    }
}
