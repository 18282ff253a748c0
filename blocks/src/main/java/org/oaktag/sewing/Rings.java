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
            rings.follow(seam, seam, End.END, row, new LinkedHashSet<>());
            for (End entering : End.values()) {
                rings.middle(seam, entering)
                        .ifPresent(closing -> rings.followHalf(seam, entering.opposite(), row, closing));
            }
        }
        return rings.found;
    }

    private void follow(Seam first, Seam last, End leaving, Set<Seam> row, Set<Seam> closedBy) {
        continued(last, leaving, first, End.START, row).ifPresent(closing -> {
            Set<Seam> all = new LinkedHashSet<>(closedBy);
            all.addAll(closing);
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
                    continued(last, leaving, next, entering, row).ifPresent(closing -> {
                        Set<Seam> longer = new LinkedHashSet<>(row);
                        longer.add(next);
                        Set<Seam> all = new LinkedHashSet<>(closedBy);
                        all.addAll(closing);
                        follow(first, next, entering.opposite(), longer, all);
                    });
                }
            }
        }
    }

    /** Follows a row from one middle of the garment to another. */
    private void followHalf(Seam last, End leaving, Set<Seam> row, Set<Seam> closedBy) {
        middle(last, leaving).ifPresent(closing -> {
            Set<Seam> all = new LinkedHashSet<>(closedBy);
            all.addAll(closing);
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
                    continued(last, leaving, next, entering, row).ifPresent(closing -> {
                        Set<Seam> longer = new LinkedHashSet<>(row);
                        longer.add(next);
                        Set<Seam> all = new LinkedHashSet<>(closedBy);
                        all.addAll(closing);
                        followHalf(next, entering.opposite(), longer, all);
                    });
                }
            }
        }
    }

    /**
     * Returns the seams through which both sides of a seam run on into their other half at one end, empty where one of
     * them does not.
     */
    private Optional<Set<Seam>> middle(Seam seam, End end) {
        Optional<Set<Seam>> a = middle(seam.a(), end);
        Optional<Set<Seam>> b = middle(seam.b(), end);
        if (a.isEmpty() || b.isEmpty()) {
            return Optional.empty();
        }
        Set<Seam> all = new LinkedHashSet<>(a.get());
        all.addAll(b.get());
        return Optional.of(all);
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
                        edges(each.a()).equals(mirrored) && edges(each.b()).equals(mirrored))
                .findFirst()
                .map(Set::of);
    }

    private static List<EdgeRef> edges(SeamSide side) {
        return side.runs().stream().map(SeamSide.Run::edge).toList();
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
        Optional<Set<Seam>> first = glue.between(a, c, without);
        Optional<Set<Seam>> second = glue.between(b, d, without);
        if (first.isEmpty() || second.isEmpty()) {
            return Optional.empty();
        }
        Set<Seam> all = new LinkedHashSet<>(first.get());
        all.addAll(second.get());
        return Optional.of(all);
    }
}
