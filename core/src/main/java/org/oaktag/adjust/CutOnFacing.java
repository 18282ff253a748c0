package org.oaktag.adjust;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.oaktag.PatternException;
import org.oaktag.garment.Amount;
import org.oaktag.garment.Cut;
import org.oaktag.garment.Dimension;
import org.oaktag.garment.Edge;
import org.oaktag.garment.EdgeFinish;
import org.oaktag.garment.EdgeRef;
import org.oaktag.garment.End;
import org.oaktag.garment.Garment;
import org.oaktag.garment.InnerLine;
import org.oaktag.garment.Name;
import org.oaktag.garment.Note;
import org.oaktag.garment.Piece;
import org.oaktag.garment.Quantity.Corner;
import org.oaktag.geometry.Crossing;
import org.oaktag.geometry.Crossings;
import org.oaktag.geometry.Line;
import org.oaktag.geometry.Path;
import org.oaktag.geometry.Point;
import org.oaktag.geometry.Transform;
import org.oaktag.geometry.Vector;
import org.oaktag.measure.Length;

/**
 * Cuts a facing on to a straight edge, which becomes a fold: the strip of the piece beside the edge, mirrored through
 * it, so that it lies on the piece when it is folded in. The new edges are {@code "<edge> facing"}, which lies furthest
 * out, and beside it the mirrored {@code "<neighbour> facing"}.
 *
 * <pre>{@code
 * Garment hemmed = block.adjust(cutOnFacing(EdgeRef.of(SLEEVE, HEM), mm(25)));
 * }</pre>
 *
 * @param edge the edge; it must be part of no seam and not on the fold of the cloth
 * @param width how wide the facing is
 */
public record CutOnFacing(EdgeRef edge, Length width) implements Step {
    /** Refuses null. */
    public CutOnFacing {
        Objects.requireNonNull(edge, "edge");
        Objects.requireNonNull(width, "width");
    }

    @Override
    public String name() {
        return "cut a facing on to the " + edge.edge() + " of the " + edge.piece();
    }

    @Override
    public List<Amount> amounts() {
        return List.of(Amount.of("width", width));
    }

    /** Returns the name of an edge of the facing. */
    public static Name facing(Name edge) {
        return edge.with("facing");
    }

    /**
     * Cuts the facing on to a piece by itself.
     *
     * @throws PatternException if the edge is not straight, lies on the fold of the cloth or ends there, or an edge
     *     beside it does not reach as far in as the facing is wide
     */
    public Piece face(Piece before) {
        Name own = edge.edge();
        if (before.isOnFold(own)) {
            throw PatternException.of(
                    name(),
                    "must not lie on the fold of the cloth",
                    "edge '" + own + "', " + before.cut().instruction(),
                    "cut the piece as a mirrored pair first");
        }
        requireOffFold(before);
        StraightFold.require(before, own, "as the facing is folded in along it");
        if (!(width.mm() > 0)) {
            throw PatternException.of(name(), "must be wider than 0 mm", width.text(), "");
        }
        Path line = before.path(own);
        Transform mirror = Transform.mirror(line.start(), line.end());
        Path stripBefore = strip(before, before.before(own).path().reversed());
        Path stripAfter = strip(before, before.after(own).path());
        Path out = stripBefore.transformed(mirror).withEnds(line.start(), mirror.apply(stripBefore.end()));
        Path in = stripAfter.transformed(mirror).reversed().withEnds(mirror.apply(stripAfter.end()), line.end());
        List<Edge> edges = new ArrayList<>();
        for (Edge each : before.edges()) {
            if (each.name().equals(own)) {
                edges.add(mirrored(before.before(own), out));
                edges.add(Edge.straight(facing(own), out.end(), in.start()).withFinish(EdgeFinish.NEATENED));
                edges.add(mirrored(before.after(own), in));
            } else {
                edges.add(each);
            }
        }
        List<InnerLine> lines = new ArrayList<>(before.lines());
        lines.add(new InnerLine(own.with("fold"), InnerLine.Use.FOLD, line));
        Piece faced = before.withoutNotchesOn(own).withEdges(edges).withLines(lines);
        if (faced.outline().meetsItself()) {
            throw PatternException.of(
                    name(), "must not make the outline cross itself", width.text(), "make the facing narrower");
        }
        return faced;
    }

    private static Edge mirrored(Edge neighbour, Path path) {
        return neighbour.withName(facing(neighbour.name())).withPath(path);
    }

    private void requireOffFold(Piece before) {
        if (before.cut() instanceof Cut.OnFold fold
                && (before.before(edge.edge()).name().equals(fold.edge())
                        || before.after(edge.edge()).name().equals(fold.edge()))) {
            throw PatternException.of(
                    name(),
                    "must not end on the fold of the cloth, where no edge is free to be mirrored",
                    "edge '" + fold.edge() + "' beside it, " + before.cut().instruction(),
                    "give the edge an allowance that is folded back, or a facing of its own");
        }
    }

    /** What of a neighbour, from the edge on, lies within the width of the facing. */
    private Path strip(Piece before, Path neighbour) {
        Path line = before.path(edge.edge());
        Vector along = line.endDirection();
        Point inside = line.start().plus(along.rightNormal().times(width.mm()));
        double reach = neighbour.length() + line.length();
        Path limit =
                Path.of(new Line(inside.plus(along.times(-reach)), inside.plus(along.times(line.length() + reach))));
        Crossing met = Crossings.between(neighbour, limit).stream()
                .findFirst()
                .orElseThrow(() -> PatternException.of(
                        name(),
                        "must be at most "
                                + Length.mm(deepest(neighbour, line))
                                        .roundedDown()
                                        .text()
                                + ", as far as the edges beside it reach in",
                        width.text(),
                        ""));
        return neighbour.sub(0, met.first());
    }

    private static double deepest(Path neighbour, Path line) {
        Vector in = line.endDirection().rightNormal();
        return Math.max(0, neighbour.end().minus(line.start()).dot(in));
    }

    @Override
    public Reshaped reshape(Garment garment) {
        NotSewn.require(garment, edge, "a folded edge");
        Piece before = garment.piece(edge.piece());
        Piece after = face(before);
        EdgeChanges changes = new EdgeChanges();
        changes.became(edge, List.of());
        changes.lowest(
                edge,
                before.corner(edge.edge(), End.START).y()
                                > before.corner(edge.edge(), End.END).y()
                        ? End.START
                        : End.END);
        changes.moved(
                new Corner(edge, End.START),
                Corner.at(edge.piece(), before.before(edge.edge()).name(), End.END));
        changes.moved(
                new Corner(edge, End.END),
                Corner.at(edge.piece(), before.after(edge.edge()).name(), End.START));
        Path line = before.path(edge.edge());
        Point middle = line.pointAt(line.length() / 2);
        return new Reshaped(
                changes.on(garment, List.of(after)),
                List.of(Note.rule("the strip of " + width.text()
                        + " beside the edge, mirrored through it and folded in along it")),
                List.of(new Dimension(
                        edge.piece(),
                        middle,
                        middle.plus(line.endDirection().leftNormal().times(width.mm())),
                        width.text())));
    }
}
