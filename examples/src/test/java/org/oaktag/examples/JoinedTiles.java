package org.oaktag.examples;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.oaktag.geometry.Vector;

/**
 * The sheets of a page to be printed, joined again as a maker joins them: by the column and the row that each says it
 * is.
 */
final class JoinedTiles {

    static final Pattern TILE = Pattern.compile("column (\\d+), row (\\d+)");

    private static final Pattern USE =
            Pattern.compile("<use href=\"#piece-([^\"]+)\" x=\"([^\"]+)\" y=\"([^\"]+)\"(?: data-layer=\"[^\"]*\")?/>");

    private final List<Use> uses = new ArrayList<>();

    /** A part of a piece on one tile. */
    private record Use(String piece, int column, int row, double x, double y) {}

    private JoinedTiles() {}

    static JoinedTiles of(String html) {
        JoinedTiles joined = new JoinedTiles();
        for (String sheet : html.split("class=\"sheet\"", -1)) {
            Matcher tile = TILE.matcher(sheet);
            if (tile.find()) {
                for (Matcher use = USE.matcher(sheet); use.find(); ) {
                    joined.uses.add(new Use(
                            use.group(1),
                            Integer.parseInt(tile.group(1)),
                            Integer.parseInt(tile.group(2)),
                            Double.parseDouble(use.group(2)),
                            Double.parseDouble(use.group(3))));
                }
            }
        }
        return joined;
    }

    /** Returns where each figure of a piece lies once the tiles are joined, to the millimetre. */
    Map<String, Set<List<Long>>> places() {
        Map<String, Set<List<Long>>> places = new HashMap<>();
        for (Use use : uses) {
            Vector tile = offset(use.column, use.row);
            places.computeIfAbsent(use.piece, piece -> new HashSet<>())
                    .add(List.of(Math.round(use.x + tile.x()), Math.round(use.y + tile.y())));
        }
        return places;
    }

    /** Returns how far a tile lies from the place before the first, mm. */
    Vector offset(int column, int row) {
        return Vector.of(column * step(true), row * step(false));
    }

    /** How far it is from one column, or row, of tiles to the next: what the first pair of parts of one piece says. */
    private double step(boolean across) {
        for (Use a : uses) {
            for (Use b : uses) {
                int columns = b.column - a.column;
                int rows = b.row - a.row;
                if (a.piece.equals(b.piece) && columns == (across ? 1 : 0) && rows == (across ? 0 : 1)) {
                    return across ? a.x - b.x : a.y - b.y;
                }
            }
        }
        throw new AssertionError("no piece lies on two tiles");
    }
}
