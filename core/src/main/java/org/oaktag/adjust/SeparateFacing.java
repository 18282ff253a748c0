package org.oaktag.adjust;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.oaktag.PatternException;
import org.oaktag.garment.Amount;
import org.oaktag.garment.Cloth;
import org.oaktag.garment.Cut;
import org.oaktag.garment.Dimension;
import org.oaktag.garment.Edge;
import org.oaktag.garment.EdgeFinish;
import org.oaktag.garment.EdgeRef;
import org.oaktag.garment.Garment;
import org.oaktag.garment.Name;
import org.oaktag.garment.Note;
import org.oaktag.garment.Piece;
import org.oaktag.garment.Seam;
import org.oaktag.garment.SeamSide;
import org.oaktag.geometry.Path;
import org.oaktag.geometry.Point;
import org.oaktag.measure.Length;

/**
 * Draws a facing of its own for an edge: the strip of the piece beside the edge, of an even width. Its edge is the very
 * edge that it faces, with the same notches, and is sewn to it flat; its inner edge is {@code "<edge> facing"}.
 *
 * <pre>{@code
 * Garment faced = block.adjust(
 *         separateFacing(EdgeRef.of(FRONT, NECKLINE), mm(50), Name.of("neck facing"), shell));
 * }</pre>
 *
 * @param edge the edge
 * @param width how wide the facing is
 * @param facing the name of the new piece, and of its seam
 * @param cloth what it is cut from
 */
public record SeparateFacing(EdgeRef edge, Length width, Name facing, Cloth cloth) implements Step {
    /** Refuses null. */
    public SeparateFacing {
        Objects.requireNonNull(edge, "edge");
        Objects.requireNonNull(width, "width");
        Objects.requireNonNull(facing, "facing");
        Objects.requireNonNull(cloth, "cloth");
    }

    @Override
    public String name() {
        return "face the " + edge.edge() + " of the " + edge.piece();
    }

    @Override
    public List<Amount> amounts() {
        return List.of(
                Amount.of("width", width), Amount.of("as", facing.value()), Amount.of("in", cloth.description()));
    }

    /**
     * Draws the facing of a piece by itself.
     *
     * @throws PatternException if the width is not above zero, the inner edge does not meet the edges beside, or the
     *     edge lies on the fold
     */
    public Piece facing(Piece shell) {
        Name own = edge.edge();
        if (shell.isOnFold(own)) {
            throw PatternException.of(name(), "must not lie on the fold of the cloth", "edge '" + own + "'", "");
        }
        if (!(width.mm() > 0)) {
            throw PatternException.of(name(), "must be wider than 0 mm", width.text(), "");
        }
        ParallelEdge inner = ParallelEdge.of(shell, own, -width.mm());
        Edge before = shell.before(own);
        Edge after = shell.after(own);
        Path cutBefore =
                before.path().sub(inner.before().length(), before.path().length());
        Path cutAfter =
                after.path().sub(0, after.path().length() - inner.after().length());
        Path back = inner.path().reversed().withEnds(cutAfter.end(), cutBefore.start());
        List<Edge> edges = List.of(
                shell.edge(own),
                after.withPath(cutAfter),
                new Edge(CutOnFacing.facing(own), back, EdgeFinish.NEATENED),
                before.withPath(cutBefore));
        List<CarriedNotches.Carried> notches = new ArrayList<>();
        shell.notches().stream()
                .filter(notch -> notch.edge().equals(own))
                .forEach(notch -> notches.add(CarriedNotches.Carried.of(shell, notch, shell.pointOf(notch))));
        Piece made = Piece.of(facing, edges, shell.grainline(), cut(shell, before.name(), after.name()), cloth)
                .withAspectOf(shell)
                .withNotches(CarriedNotches.on(notches, edges, List::of));
        return made.withGrainline(PartGrain.of(shell.grainline(), made.outline()));
    }

    /** A facing that reaches to the fold is cut on it; one that does not comes out twice. */
    private static Cut cut(Piece shell, Name before, Name after) {
        if (!(shell.cut() instanceof Cut.OnFold fold)) {
            return shell.cut();
        }
        boolean reaches = fold.edge().equals(before) || fold.edge().equals(after);
        return reaches ? fold : new Cut.MirroredPair(fold.count());
    }

    @Override
    public Reshaped reshape(Garment garment) {
        if (garment.hasPiece(facing)) {
            throw PatternException.of(name(), "must have a name of its own", "'" + facing + "' twice", "");
        }
        Piece shell = garment.piece(edge.piece());
        Piece made = facing(shell);
        List<Seam> seams = new ArrayList<>(garment.seams());
        seams.add(Seam.flat(
                facing,
                SeamSide.along(edge.piece(), edge.edge()),
                SeamSide.along(facing, edge.edge()),
                "face the edge after its shape is settled"));
        Path own = shell.path(edge.edge());
        Point middle = own.pointAt(own.length() / 2);
        Path inner = made.path(CutOnFacing.facing(edge.edge()));
        return new Reshaped(
                garment.withPiece(made).withSeams(seams),
                List.of(Note.rule("the strip of " + width.text() + " beside the edge; inner edge "
                        + Length.mm(inner.length()).text())),
                List.of(new Dimension(facing, middle, inner.nearest(middle).point(), width.text())));
    }
}
