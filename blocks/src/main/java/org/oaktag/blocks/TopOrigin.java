package org.oaktag.blocks;

import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import org.oaktag.adjust.Pieces;
import org.oaktag.garment.Change;
import org.oaktag.garment.EdgeRef;
import org.oaktag.garment.Garment;
import org.oaktag.garment.Moved;
import org.oaktag.garment.Name;
import org.oaktag.garment.Watched;

/**
 * Finds in a garment's history the step that made a piece what it is, told as {@code "'unfold the front' (step 3)"}.
 */
record TopOrigin(Garment garment) {

    static TopOrigin of(Garment garment) {
        return new TopOrigin(garment);
    }

    /** Returns the last step that took the piece away. */
    Optional<String> gone(Name piece) {
        return last(change -> change.moved().stream()
                .anyMatch(moved -> moved.watched() instanceof Watched.OfEdge of
                        && of.edge().piece().equals(piece)
                        && isGone(moved)));
    }

    /** Returns the last step that took the edge away. */
    Optional<String> gone(EdgeRef edge) {
        return last(change ->
                change.moved().stream().anyMatch(moved -> moved.watched().equals(Watched.edge(edge)) && isGone(moved)));
    }

    /** Returns the last step that drew the edge where there was none. */
    Optional<String> came(EdgeRef edge) {
        return last(change -> change.moved().stream()
                .anyMatch(moved -> moved.watched().equals(Watched.edge(edge))
                        && moved.before().isEmpty()));
    }

    /** Returns the last step that changed the length of the edge. */
    Optional<String> moved(EdgeRef edge) {
        return last(change ->
                change.moved().stream().anyMatch(moved -> moved.watched().equals(Watched.edge(edge))));
    }

    /** Returns the last step that sewed the seam where there was none. */
    Optional<String> sewn(Name seam) {
        return last(change -> change.moved().stream()
                .anyMatch(moved -> moved.watched().equals(Watched.seam(seam))
                        && moved.before().isEmpty()));
    }

    /** Returns the last step that turned the piece over. */
    Optional<String> mirrored(Name piece) {
        String phrase = Pieces.mirrorPiece(piece).name();
        return last(change -> change.step().equals(phrase));
    }

    private static boolean isGone(Moved moved) {
        return moved.after().isEmpty();
    }

    /** Steps are counted from 1, after the draft of the block. */
    private Optional<String> last(Predicate<Change> wanted) {
        List<Change> history = garment.history();
        for (int i = history.size() - 1; i > 0; i--) {
            if (wanted.test(history.get(i))) {
                return Optional.of("'" + history.get(i).step() + "' (step " + i + ")");
            }
        }
        return Optional.empty();
    }
}
