package org.oaktag.export.sheet;

import java.util.List;
import java.util.Objects;

/**
 * One sheet of paper with what is printed on it.
 *
 * <pre>{@code
 * for (PaperSheet sheet : Printout.tiled(top, allowances, Tiling.on(Paper.A4)).sheets()) {
 *     String line = sheet.title() + ", " + sheet.width() + " x " + sheet.height() + " mm";
 * }
 * }</pre>
 *
 * @param title what it is, for a reader's table of contents
 * @param width its width as it is read, mm
 * @param height its height as it is read, mm
 * @param placements what is drawn, in this order
 */
public record PaperSheet(String title, double width, double height, List<Placement> placements) {

    /** Copies the list. */
    public PaperSheet {
        Objects.requireNonNull(title, "title");
        placements = List.copyOf(placements);
    }
}
