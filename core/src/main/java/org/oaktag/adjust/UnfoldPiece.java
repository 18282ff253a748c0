package org.oaktag.adjust;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.oaktag.PatternException;
import org.oaktag.garment.Amount;
import org.oaktag.garment.Cut;
import org.oaktag.garment.Edge;
import org.oaktag.garment.EdgeRef;
import org.oaktag.garment.End;
import org.oaktag.garment.Garment;
import org.oaktag.garment.InnerLine;
import org.oaktag.garment.Mark;
import org.oaktag.garment.Name;
import org.oaktag.garment.Notch;
import org.oaktag.garment.Note;
import org.oaktag.garment.Piece;
import org.oaktag.garment.Quantity.Corner;
import org.oaktag.geometry.Path;
import org.oaktag.geometry.Point;
import org.oaktag.geometry.Transform;

/**
 * Draws a piece that is cut on the fold whole: the half as it was and, beyond the fold, its mirror image, whose edges
 * are named {@code "<edge> mirrored"}. Seams and finished measures go on speaking of the half that was drawn.
 *
 * <pre>{@code
 * Garment whole = block.adjust(unfoldPiece(FRONT));
 * whole.piece(FRONT).outline().area() / front.outline().area();   // = 2.0
 * }</pre>
 *
 * @param piece the piece
 */
record UnfoldPiece(Name piece) implements PieceStep {

    private static final double ON_FOLD = 1e-6;

    /** Refuses null. */
    public UnfoldPiece {
        Objects.requireNonNull(piece, "piece");
    }

    @Override
    public String name() {
        return "unfold the " + piece;
    }

    @Override
    public List<Amount> amounts() {
        return List.of();
    }

    /** Returns the name of an edge, or of a line or mark, on the other side of the fold. */
    public static Name mirrored(Name name) {
        return name.with("mirrored");
    }

    /**
     * Unfolds a piece by itself.
     *
     * @throws PatternException if the piece is not cut on a straight fold
     */
    @Override
    public Piece on(Piece half) {
        Cut.OnFold fold = fold(half);
        StraightFold.require(half, fold.edge(), "as it lies on the fold of the cloth");
        Path line = half.path(fold.edge());
        Transform mirror = Transform.mirror(line.start(), line.end());
        List<Edge> chain = Chain.without(half, fold.edge());
        List<Fragment> ring = new ArrayList<>();
        chain.forEach(edge -> ring.add(Fragment.of(edge, edge.path(), 0)));
        for (int i = chain.size() - 1; i >= 0; i--) {
            Edge own = chain.get(i);
            Path image = own.path().transformed(mirror).reversed();
            Point start = ring.get(ring.size() - 1).path().end();
            Point end = i == 0 ? ring.get(0).path().start() : image.end();
            ring.add(Fragment.drawn(own.withName(mirrored(own.name())).withPath(image.withEnds(start, end))));
        }
        List<Edge> edges = ring.stream()
                .map(fragment -> fragment.whole().withPath(fragment.path()))
                .toList();
        return half.remade(
                edges,
                lines(half, mirror),
                marks(half, fold.edge(), mirror),
                notches(half, fold.edge()),
                half.grainline(),
                new Cut.Single(fold.count()));
    }

    private static Cut.OnFold fold(Piece half) {
        if (half.cut() instanceof Cut.OnFold fold) {
            return fold;
        }
        throw PatternException.of(
                "piece '" + half.name() + "'",
                "must be cut on the fold to be unfolded",
                half.cut().instruction(),
                "mirror it and join both, where it has a straight edge for it");
    }

    private static List<InnerLine> lines(Piece half, Transform mirror) {
        List<InnerLine> lines = new ArrayList<>(half.lines());
        half.lines()
                .forEach(line -> lines.add(new InnerLine(
                        mirrored(line.name()), line.use(), line.path().transformed(mirror))));
        return lines;
    }

    /** A notch on the fold is a mark in the middle of the whole piece. */
    private static List<Mark> marks(Piece half, Name fold, Transform mirror) {
        List<Mark> marks = new ArrayList<>(half.marks());
        for (Mark mark : half.marks()) {
            Point image = mirror.apply(mark.point());
            if (!image.isCloseTo(mark.point(), ON_FOLD)) {
                marks.add(mark.renamed(mirrored(mark.name())).at(image));
            }
        }
        half.notches().stream()
                .filter(notch -> notch.edge().equals(fold))
                .forEach(notch -> marks.add(Mark.of(notch.name(), half.pointOf(notch))));
        return marks;
    }

    private static List<Notch> notches(Piece half, Name fold) {
        List<Notch> notches = new ArrayList<>();
        for (Notch notch : half.notches()) {
            if (!notch.edge().equals(fold)) {
                notches.add(notch);
                notches.add(new Notch(
                        notch.name(),
                        mirrored(notch.edge()),
                        notch.from().opposite(),
                        notch.distance(),
                        notch.count()));
            }
        }
        return notches;
    }

    @Override
    public Reshaped reshape(Garment garment) {
        Piece half = garment.piece(piece);
        Piece whole = on(half);
        Name fold = fold(half).edge();
        EdgeRef gone = EdgeRef.of(piece, fold);
        NotSewn.require(garment, gone, "an edge on the fold");
        EdgeChanges changes = new EdgeChanges();
        changes.became(gone, List.of());
        changes.moved(
                new Corner(gone, End.START), Corner.at(piece, half.before(fold).name(), End.END));
        changes.moved(
                new Corner(gone, End.END), Corner.at(piece, half.after(fold).name(), End.START));
        return Reshaped.of(
                changes.on(garment, List.of(whole)),
                Note.rule("the half, and its mirror image beyond '" + fold + "', "
                        + half.edge(fold).length().text() + " long; seams and measures are those of the half"));
    }
}
