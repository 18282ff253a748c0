package org.oaktag.adjust;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import org.oaktag.garment.EdgeRef;
import org.oaktag.garment.End;
import org.oaktag.garment.FinishedMeasure;
import org.oaktag.garment.FinishedMeasure.Term;
import org.oaktag.garment.Garment;
import org.oaktag.garment.Name;
import org.oaktag.garment.Piece;
import org.oaktag.garment.Quantity;
import org.oaktag.garment.Quantity.Across;
import org.oaktag.garment.Quantity.Corner;
import org.oaktag.garment.Quantity.Distance;
import org.oaktag.garment.Quantity.Drop;
import org.oaktag.garment.Quantity.EdgeLength;
import org.oaktag.garment.Quantity.Fall;
import org.oaktag.garment.Quantity.FromEdge;
import org.oaktag.garment.Quantity.FromLine;
import org.oaktag.garment.Seam;
import org.oaktag.garment.SeamSide;
import org.oaktag.geometry.Transform;

/**
 * What became of edges that were cut, joined or renamed, and what that makes of the seams and finished measures that
 * speak of them. Made by one step and used up by it.
 */
final class EdgeChanges {

    private final Map<EdgeRef, List<EdgeRef>> runs = new LinkedHashMap<>();

    /** The pieces of the edges that are others now. */
    private final Set<Name> cut = new HashSet<>();

    private final Map<Corner, Corner> corners = new LinkedHashMap<>();
    private final Set<Name> turned = new LinkedHashSet<>();
    private final Map<EdgeRef, Corner> lowest = new LinkedHashMap<>();
    private final Map<Name, Transform> laid = new LinkedHashMap<>();

    /** Says that an edge is now these edges, in the order in which it ran. */
    void became(EdgeRef old, List<EdgeRef> now) {
        runs.put(old, List.copyOf(now));
        cut.add(old.piece());
    }

    /** Says that a corner is now another one's end. */
    void moved(Corner old, Corner now) {
        corners.put(old, now);
    }

    /** Says which of its corners lies lowest on a straight edge that is gone. */
    void lowest(EdgeRef gone, End end) {
        lowest.put(gone, new Corner(gone, end));
    }

    /** Says that the edges of a piece run the other way round now. */
    void turned(Name piece) {
        turned.add(piece);
    }

    /** Says that a piece lies elsewhere on paper. */
    void laid(Name piece, Transform motion) {
        laid.put(piece, motion);
    }

    /** The edges that an edge is now. */
    List<EdgeRef> now(EdgeRef old) {
        return runs.getOrDefault(old, List.of(old));
    }

    /**
     * An edge that is gone, a fold or the like, was straight: its length is that between the corners where it ended.
     */
    private List<Quantity> edgeLength(EdgeRef edge) {
        List<EdgeRef> now = now(edge);
        return now.isEmpty()
                ? List.of(new Distance(now(new Corner(edge, End.START)), now(new Corner(edge, End.END))))
                : now.stream().<Quantity>map(EdgeLength::new).toList();
    }

    private boolean isJoined(Quantity quantity) {
        return quantity instanceof EdgeLength length
                && runs.values().stream()
                                .filter(now -> now.contains(length.edge()))
                                .count()
                        > 1;
    }

    Corner now(Corner old) {
        Corner moved = corners.get(old);
        if (moved != null) {
            return moved;
        }
        List<EdgeRef> now = now(old.edge());
        if (now.isEmpty()) {
            return old;
        }
        if (turned.contains(old.edge().piece())) {
            return new Corner(now.get(0), old.end().opposite());
        }
        return new Corner(old.end() == End.START ? now.get(0) : now.get(now.size() - 1), old.end());
    }

    /** The garment with these pieces in the place of those of their names, and all that speaks of them. */
    Garment on(Garment garment, List<Piece> redrawn) {
        List<Piece> pieces = garment.pieces().stream()
                .map(piece -> redrawn.stream()
                        .filter(each -> each.name().equals(piece.name()))
                        .findFirst()
                        .orElse(piece))
                .toList();
        return garment.with(pieces, garment.seams().stream().map(this::on).toList(), on(garment.measures()));
    }

    Seam on(Seam seam) {
        if (isUntouched(seam.a()) && isUntouched(seam.b())) {
            return seam;
        }
        return new Seam(seam.name(), on(seam.a()), on(seam.b()), seam.rule(), seam.smoothAt(), seam.refit());
    }

    private boolean isUntouched(SeamSide side) {
        List<SeamSide.Run> all = side.runs();
        for (int i = 0; i < all.size(); i++) {
            EdgeRef edge = all.get(i).edge();
            if (turned.contains(edge.piece()) || (cut.contains(edge.piece()) && runs.containsKey(edge))) {
                return false;
            }
        }
        return true;
    }

    private SeamSide on(SeamSide side) {
        List<SeamSide.Run> all = new ArrayList<>();
        for (SeamSide.Run run : side.runs()) {
            List<EdgeRef> now = new ArrayList<>(now(run.edge()));
            if (run.backwards()) {
                Collections.reverse(now);
            }
            for (EdgeRef edge : now) {
                SeamSide.Run next = new SeamSide.Run(edge, run.backwards() != turned.contains(edge.piece()));
                // Two runs that were joined are one.
                if (all.isEmpty() || !all.get(all.size() - 1).equals(next)) {
                    all.add(next);
                }
            }
        }
        return new SeamSide(all);
    }

    /** The finished measures that can still be taken. */
    List<FinishedMeasure> on(List<FinishedMeasure> measures) {
        Set<Name> touched = touched();
        List<FinishedMeasure> all = new ArrayList<>();
        for (FinishedMeasure measure : measures) {
            if (!isOn(touched, measure)) {
                all.add(measure);
            } else if (measure.terms().stream().noneMatch(this::ends)) {
                all.add(on(measure));
            }
        }
        return all;
    }

    /** The pieces of which anything is no longer what it was. */
    private Set<Name> touched() {
        Set<Name> touched = new HashSet<>(turned);
        touched.addAll(laid.keySet());
        touched.addAll(cut);
        corners.keySet().forEach(corner -> touched.add(corner.edge().piece()));
        lowest.keySet().forEach(edge -> touched.add(edge.piece()));
        return touched;
    }

    private static boolean isOn(Set<Name> pieces, FinishedMeasure measure) {
        List<Term> terms = measure.terms();
        for (int i = 0; i < terms.size(); i++) {
            if (isOn(pieces, terms.get(i).quantity())) {
                return true;
            }
        }
        return false;
    }

    private static boolean isOn(Set<Name> pieces, Quantity quantity) {
        List<Corner> corners = quantity.corners();
        for (int i = 0; i < corners.size(); i++) {
            if (pieces.contains(corners.get(i).edge().piece())) {
                return true;
            }
        }
        List<EdgeRef> edges = quantity.edges();
        for (int i = 0; i < edges.size(); i++) {
            if (pieces.contains(edges.get(i).piece())) {
                return true;
            }
        }
        List<Name> outlines = quantity.outlines();
        for (int i = 0; i < outlines.size(); i++) {
            if (pieces.contains(outlines.get(i))) {
                return true;
            }
        }
        return false;
    }

    /** Tells whether a width has lost the edges at which it ended. */
    private boolean ends(Term term) {
        return term.quantity() instanceof Across across
                && across.edges().stream().allMatch(edge -> now(edge).isEmpty());
    }

    private FinishedMeasure on(FinishedMeasure measure) {
        Set<Term> terms = new LinkedHashSet<>();
        List<Term> all = new ArrayList<>();
        for (Term term : measure.terms()) {
            for (Quantity quantity : on(term.quantity())) {
                Term now = FinishedMeasure.times(term.times(), quantity);
                if (terms.add(now) || !isJoined(quantity)) {
                    all.add(now);
                }
            }
        }
        return new FinishedMeasure(measure.name(), all, measure.body());
    }

    private List<Quantity> on(Quantity quantity) {
        if (quantity instanceof EdgeLength length) {
            return edgeLength(length.edge());
        }
        if (quantity instanceof Distance || quantity instanceof Drop || quantity instanceof FromLine) {
            return List.of(quantity.withCorners(this::now));
        }
        if (quantity instanceof Fall fall) {
            return fall(fall);
        }
        if (quantity instanceof Across across) {
            return List.of(on(across));
        }
        FromEdge from = (FromEdge) quantity;
        Corner start = now(new Corner(from.edge(), End.START));
        Corner end = now(new Corner(from.edge(), End.END));
        boolean whole = start.edge().equals(end.edge()) && now(from.edge()).size() == 1;
        return List.of(
                whole ? new FromEdge(now(from.corner()), start.edge()) : new FromLine(now(from.corner()), start, end));
    }

    private Across on(Across across) {
        Transform motion = laid.getOrDefault(across.from().edge().piece(), Transform.IDENTITY);
        return new Across(
                now(across.from()),
                now(across.to()),
                motion.apply(across.through()),
                across.edges().stream()
                        .flatMap(edge -> now(edge).stream())
                        .distinct()
                        .toList(),
                across.pieces().stream()
                        .flatMap(piece -> now(piece).stream())
                        .distinct()
                        .toList());
    }

    /** The pieces among whose edges those of a piece are now; the piece itself where they are still its own. */
    private List<Name> now(Name piece) {
        List<Name> now = runs.entrySet().stream()
                .filter(run -> run.getKey().piece().equals(piece))
                .flatMap(run -> run.getValue().stream())
                .map(EdgeRef::piece)
                .distinct()
                .toList();
        return now.isEmpty() ? List.of(piece) : now;
    }

    /** Where every edge is gone, the fall is that to the lowest corner of the last of them, if it is known. */
    private List<Quantity> fall(Fall fall) {
        List<EdgeRef> now =
                fall.to().stream().flatMap(edge -> now(edge).stream()).toList();
        if (!now.isEmpty()) {
            return List.of(new Fall(now(fall.from()), now));
        }
        return fall.to().stream()
                .filter(lowest::containsKey)
                .<Quantity>map(edge -> new Drop(now(fall.from()), now(Objects.requireNonNull(lowest.get(edge)))))
                .limit(1)
                .toList();
    }
}
