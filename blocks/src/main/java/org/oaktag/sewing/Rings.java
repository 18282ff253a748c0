package org.oaktag.sewing;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.oaktag.garment.EdgeRef;
import org.oaktag.garment.End;
import org.oaktag.garment.Garment;
import org.oaktag.garment.Name;
import org.oaktag.garment.Piece;
import org.oaktag.garment.Seam;
import org.oaktag.garment.SeamSide;

/**
 * Finds seams that close on themselves, alone or several in a row, such as both halves of an armhole, and the seams
 * that end on them, which close the two edges to rings.
 *
 * <p>A seam runs on into another where both its sides do: because they meet at the same corner of one piece, or because
 * a third seam brings the corners together. Where both sides end at the middle of what is drawn as its half, they run
 * on into their other half: at the fold of the cloth, or at an edge that is sewn to its own mirror image.
 */
final class Rings {

    /** More seams in a row are taken to be no ring: no garment has them. */
    private static final int LONGEST = 8;

    private final Garment garment;
    private final Glue glue;
    private final List<Ring> found = new ArrayList<>();

    /**
     * Seams that close on themselves.
     *
     * @param seams the seams in a row
     * @param closedBy the seams that close their edges to rings
     */
    record Ring(Set<Seam> seams, Set<Seam> closedBy) {}

    private Rings(Garment garment, Glue glue) {
        this.garment = garment;
        this.glue = glue;
    }

    /** Returns every ring once. */
    static List<Ring> of(Garment garment, Glue glue) {
        Rings rings = new Rings(garment, glue);
        for (Seam seam : garment.seams()) {
            Set<Seam> row = new LinkedHashSet<>();
            row.add(seam);
            rings.follow(
                    seam, End.END, row, Set.of(), (last, end, all) -> rings.continued(last, end, seam, End.START, all));
            for (End entering : End.values()) {
                rings.middle(seam, entering)
                        .ifPresent(closing -> rings.follow(
                                seam, entering.opposite(), row, closing, (last, end, all) -> rings.middle(last, end)));
            }
        }
        return rings.found;
    }

    /** Tells through which seams a row comes to its end there, empty where it does not. */
    private interface Closed {
        Optional<Set<Seam>> by(Seam last, End leaving, Set<Seam> row);
    }

    /** Follows a row until it is closed, on itself or at the other middle of the garment. */
    private void follow(Seam last, End leaving, Set<Seam> row, Set<Seam> closedBy, Closed closed) {
        closed.by(last, leaving, row).ifPresent(closing -> {
            Set<Seam> all = united(closedBy, closing);
            // Without a seam that ends on it a row would be a closed edge of one piece, sewn flat.
            if (!all.isEmpty() && found.stream().noneMatch(ring -> ring.seams().equals(row))) {
                found.add(new Ring(new LinkedHashSet<>(row), all));
            }
        });
        if (row.size() == LONGEST) {
            return;
        }
        for (Seam next : garment.seams()) {
            for (End entering : End.values()) {
                if (!row.contains(next)) {
                    continued(last, leaving, next, entering, row)
                            .ifPresent(closing -> follow(
                                    next,
                                    entering.opposite(),
                                    united(row, Set.of(next)),
                                    united(closedBy, closing),
                                    closed));
                }
            }
        }
    }

    private static Set<Seam> united(Set<Seam> some, Set<Seam> more) {
        Set<Seam> all = new LinkedHashSet<>(some);
        all.addAll(more);
        return all;
    }

    /**
     * Returns the seams through which both sides of a seam run on into their other half at one end, empty where one of
     * them does not.
     */
    private Optional<Set<Seam>> middle(Seam seam, End end) {
        return middle(seam.a(), end).flatMap(a -> middle(seam.b(), end).map(b -> united(a, b)));
    }

    private Optional<Set<Seam>> middle(SeamSide side, End end) {
        SeamSide.Run run = side.runAt(end);
        Piece piece = garment.piece(run.edge().piece());
        Name last = run.edge().edge();
        Name beyond = (run.cornerAt(end) == End.START ? piece.before(last) : piece.after(last)).name();
        if (piece.isOnFold(beyond)) {
            return Optional.of(Set.of());
        }
        List<EdgeRef> mirrored = List.of(EdgeRef.of(piece.name(), beyond));
        return garment.seams().stream()
                .filter(each ->
                        each.a().edges().equals(mirrored) && each.b().edges().equals(mirrored))
                .findFirst()
                .map(Set::of);
    }

    /** Returns the seams through which one seam runs on into another, empty where it does not. */
    private Optional<Set<Seam>> continued(Seam from, End leaving, Seam to, End entering, Set<Seam> row) {
        Set<Seam> without = new LinkedHashSet<>(row);
        without.add(to);
        Corner a = Corner.ofA(garment, from, leaving);
        Corner b = Corner.ofB(garment, from, leaving);
        Corner c = Corner.ofA(garment, to, entering);
        Corner d = Corner.ofB(garment, to, entering);
        Optional<Set<Seam>> straight = both(a, c, b, d, without);
        return straight.isPresent() || from.equals(to) ? straight : both(a, d, b, c, without);
    }

    private Optional<Set<Seam>> both(Corner a, Corner c, Corner b, Corner d, Set<Seam> without) {
        return glue.between(a, c, without)
                .flatMap(first -> glue.between(b, d, without).map(second -> united(first, second)));
    }
}
