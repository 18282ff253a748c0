package org.oaktag.export.lesson;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.oaktag.adjust.Recipe;
import org.oaktag.export.xml.XmlWriter;
import org.oaktag.garment.Dimension;
import org.oaktag.garment.Garment;
import org.oaktag.garment.Name;
import org.oaktag.garment.Piece;
import org.oaktag.geometry.Bounds;

/**
 * The pieces of a lesson side by side, all at one scale. Each has room for what it is at any position of the slider, so
 * that nothing jumps while the slider moves, and they wrap as the page gets narrower.
 */
final class Stage {

    /** The room round a piece, in shares of the width of the widest row on a desk. */
    private static final double MARGIN = 0.045;

    /** The height of the drawing in widths: on a desk, on a telephone, on paper. */
    private static final double DESK = 0.6;

    private static final double PHONE = 1.5;
    private static final double SHEET = 0.36;

    private static final double GROWTH = 1.02;

    private final Map<Name, Bounds> rooms;
    private final double margin;

    private Stage(Map<Name, Bounds> rooms, double margin) {
        this.rooms = rooms;
        this.margin = margin;
    }

    /** Prepares the stage for all positions. */
    static Stage of(List<View> wanted, List<Recipe.Played> all) {
        List<View> shown = wanted.isEmpty() ? redrawn(all) : wanted;
        Map<Name, Bounds> bounds = new LinkedHashMap<>();
        for (View view : shown) {
            all.stream()
                    .flatMap(played -> Stream.of(played.before(), played.after()))
                    .map(garment -> garment.findPiece(view.piece()))
                    .flatMap(Optional::stream)
                    .flatMap(view::bounds)
                    .reduce(Bounds::union)
                    .ifPresent(box -> bounds.put(view.piece(), box));
        }
        double margin = MARGIN * row(bounds.values().stream().toList(), DESK);
        bounds.replaceAll((name, box) -> box.expanded(margin));
        return new Stage(bounds, margin);
    }

    private static List<View> redrawn(List<Recipe.Played> all) {
        return all.stream()
                .flatMap(played -> NumbersTable.change(played).pieces().stream())
                .distinct()
                .map(View::of)
                .toList();
    }

    List<Name> pieces() {
        return List.copyOf(rooms.keySet());
    }

    /** Returns how many millimetres a row is wide on a desk, a telephone and a sheet of paper, as custom properties. */
    String rows() {
        List<Bounds> boxes = List.copyOf(rooms.values());
        return "--desk:" + Math.round(row(boxes, DESK)) + ";--phone:" + Math.round(row(boxes, PHONE)) + ";--sheet:"
                + Math.round(row(boxes, SHEET));
    }

    /** Returns the least width of a row at which all rows together are no higher than so many widths. */
    private static double row(List<Bounds> boxes, double height) {
        double row = boxes.stream().mapToDouble(Bounds::width).max().orElse(1);
        while (wrapped(boxes, row) > height * row) {
            row *= GROWTH;
        }
        return Math.ceil(row);
    }

    private static double wrapped(List<Bounds> boxes, double row) {
        double height = 0;
        double x = 0;
        double highest = 0;
        for (Bounds box : boxes) {
            if (x + box.width() > row) {
                height += highest;
                x = 0;
                highest = 0;
            }
            x += box.width();
            highest = Math.max(highest, box.height());
        }
        return height + highest;
    }

    /** Draws every piece before and after a step. */
    void write(XmlWriter xml, Recipe.Played played) {
        xml.begin("div").attribute("class", "pieces");
        for (Map.Entry<Name, Bounds> room : rooms.entrySet()) {
            Optional<Piece> before = played.before().findPiece(room.getKey());
            Optional<Piece> after = played.after().findPiece(room.getKey());
            if (before.isPresent() || after.isPresent()) {
                List<Dimension> dimensions = NumbersTable.change(played).dimensions().stream()
                        .filter(each -> each.piece().equals(room.getKey()))
                        .toList();
                new StagedPiece(room.getKey(), before, after, dimensions, room.getValue(), margin).write(xml);
            }
        }
        xml.end();
    }

    /** Tells whether a garment has any of the pieces that are shown. */
    boolean isIn(Garment garment) {
        return rooms.keySet().stream().anyMatch(garment::hasPiece);
    }

    /** Draws the pieces of a garment that a step refused. */
    void write(XmlWriter xml, Garment refused) {
        xml.begin("div").attribute("class", "pieces");
        for (Map.Entry<Name, Bounds> room : rooms.entrySet()) {
            Optional<Piece> piece = refused.findPiece(room.getKey());
            if (piece.isPresent()) {
                new StagedPiece(room.getKey(), piece, piece, List.of(), room.getValue(), margin).write(xml);
            }
        }
        xml.end();
    }
}
