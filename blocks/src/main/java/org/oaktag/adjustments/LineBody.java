package org.oaktag.adjustments;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.oaktag.PatternException;
import org.oaktag.adjust.Range;
import org.oaktag.adjust.Reshaped;
import org.oaktag.adjust.Step;
import org.oaktag.blocks.FinishNames;
import org.oaktag.blocks.TopEdges;
import org.oaktag.blocks.TopNames;
import org.oaktag.garment.Amount;
import org.oaktag.garment.Cloth;
import org.oaktag.garment.Dart;
import org.oaktag.garment.Dimension;
import org.oaktag.garment.Edge;
import org.oaktag.garment.EdgeNames;
import org.oaktag.garment.End;
import org.oaktag.garment.Garment;
import org.oaktag.garment.Name;
import org.oaktag.garment.Notch;
import org.oaktag.garment.Note;
import org.oaktag.garment.Piece;
import org.oaktag.garment.Seam;
import org.oaktag.garment.SeamRule;
import org.oaktag.garment.SeamSide;
import org.oaktag.geometry.Path;
import org.oaktag.geometry.Point;
import org.oaktag.geometry.Vector;
import org.oaktag.measure.Length;

/**
 * Lines front and back: the shell less the neck facings, if there are any, and a pleat at centre back for ease (common
 * practice). A double notch on both sides of the back's neck seam says how far the pleat reaches: from there on they
 * are sewn flat. A lining that is there already is replaced. Immutable.
 *
 * <pre>{@code
 * Garment lined = top.adjust(faceNeckline(cm(6), shell)).adjust(lineBody(cm(2), lining));
 * }</pre>
 *
 * @param pleat by how much each half of the back is wider than the shell, 0 to 40 mm
 * @param cloth what it is cut from
 */
record LineBody(Length pleat, Cloth cloth) implements Step {

    private static final double MOST = 40;

    /** How far from the centre of the shell the pleat reaches, as a share of the half of its neckline. */
    private static final double REACH = 0.25;

    private static final String REFIT = "line the body again";

    /**
     * Checks the pleat and takes the cloth as a lining.
     *
     * @throws org.oaktag.PatternException if the pleat is out of its range
     */
    public LineBody {
        Range.check("pleat of the lining", "must be", pleat, Length.mm(0), Length.mm(MOST));
        cloth = cloth.as(Cloth.LINING);
    }

    @Override
    public String name() {
        return "line the body";
    }

    @Override
    public List<Amount> amounts() {
        return List.of(Amount.of("pleat", pleat), Amount.of("lining", cloth.description()));
    }

    @Override
    public Reshaped reshape(Garment garment) {
        requireNoDarts(garment);
        Piece front = ShellBeyondFacing.of(garment, TopNames.FRONT, FinishNames.FRONT_FACING)
                .piece(FinishNames.FRONT_LINING, cloth);
        Piece plain = ShellBeyondFacing.of(garment, TopNames.BACK, FinishNames.BACK_FACING)
                .piece(FinishNames.BACK_LINING, cloth);
        double reach = REACH * plain.path(TopEdges.NECKLINE).length();
        Piece back = marked(pleated(plain), TopEdges.NECKLINE, End.START, reach + pleat.mm());
        boolean faced = garment.hasPiece(FinishNames.BACK_FACING);
        Piece sewnTo = faced
                ? marked(garment.piece(FinishNames.BACK_FACING), FaceNeckline.INNER, End.END, reach)
                : marked(garment.piece(TopNames.BACK), TopEdges.NECKLINE, End.START, reach);
        Garment lined = Assembly.of(garment)
                .takeOff(Set.of(FinishNames.FRONT_LINING, FinishNames.BACK_LINING))
                .put(sewnTo)
                .put(front)
                .put(back)
                .sew(neckSeam(garment, TopNames.FRONT, FinishNames.FRONT_FACING, front.name(), SeamRule.flat()))
                .sew(neckSeam(garment, TopNames.BACK, FinishNames.BACK_FACING, back.name(), neckRule()))
                .sew(seam("lining shoulder", front.name(), TopEdges.SHOULDER, back.name(), TopEdges.SHOULDER)
                        .smoothAt(End.END))
                .sew(seam("lining side", front.name(), EdgeNames.SIDE, back.name(), EdgeNames.SIDE)
                        .smooth())
                .sew(seam("front lining armhole", TopNames.FRONT, TopEdges.ARMHOLE, front.name(), TopEdges.ARMHOLE))
                .sew(seam("back lining armhole", TopNames.BACK, TopEdges.ARMHOLE, back.name(), TopEdges.ARMHOLE))
                .done();
        Point neck = back.corner(EdgeNames.CENTRE, End.END);
        return new Reshaped(
                lined,
                List.of(Note.rule("the lining is the shell"
                        + (garment.hasPiece(FinishNames.FRONT_FACING) ? " beyond the neck facing" : "")
                        + "; each half of the back is wider by a pleat of " + pleat.text()
                        + " at the centre, laid in at the neck (common practice)")),
                List.of(new Dimension(
                        back.name(), neck, neck.plus(Vector.of(pleat.mm(), 0)), "pleat " + pleat.text())));
    }

    private static void requireNoDarts(Garment garment) {
        for (Name name : List.of(TopNames.FRONT, TopNames.BACK)) {
            garment.findPiece(name).map(Dart::all).stream()
                    .flatMap(List::stream)
                    .findFirst()
                    .ifPresent(dart -> {
                        throw PatternException.of(
                                "lining of the " + name,
                                "must be cut from a shell without darts",
                                "dart '" + dart.name() + "'",
                                "line the body before the dart is opened, or ease the dart in");
                    });
        }
    }

    private SeamRule neckRule() {
        return pleat.mm() > 0 ? SeamRule.eased(pleat, SeamRule.Span.upTo(FinishNames.PLEAT_NOTCH)) : SeamRule.flat();
    }

    /** Marks how far the pleat reaches, or takes the mark off where there is none. */
    private Piece marked(Piece piece, Name edge, End centre, double distance) {
        if (pleat.mm() > 0) {
            return piece.withNotch(Notch.paired(FinishNames.PLEAT_NOTCH, edge, centre, distance));
        }
        return piece.withNotches(piece.notches().stream()
                .filter(notch -> !notch.name().equals(FinishNames.PLEAT_NOTCH))
                .toList());
    }

    /** Moves the centre out by the pleat; neckline and hem are prolonged to it, square to the fold. */
    private Piece pleated(Piece piece) {
        if (pleat.mm() == 0) {
            return piece;
        }
        Vector out = Vector.of(-pleat.mm(), 0);
        List<Edge> edges = new ArrayList<>();
        for (Edge edge : piece.edges()) {
            if (edge.name().equals(EdgeNames.CENTRE)) {
                edges.add(edge.withPath(Path.polyline(
                        edge.path().start().plus(out), edge.path().end().plus(out))));
            } else if (edge.name().equals(TopEdges.NECKLINE)) {
                Point at = edge.path().start();
                edges.add(edge.withPath(Path.polyline(at.plus(out), at).then(edge.path())));
            } else if (edge.name().equals(EdgeNames.HEM)) {
                Point at = edge.path().end();
                edges.add(edge.withPath(edge.path().then(Path.polyline(at, at.plus(out)))));
            } else {
                edges.add(edge);
            }
        }
        return piece.withEdges(edges)
                .withNotches(piece.notches().stream().map(this::beyondPleat).toList());
    }

    private Notch beyondPleat(Notch notch) {
        boolean moved = notch.from() == End.START
                ? notch.edge().equals(TopEdges.NECKLINE)
                : notch.edge().equals(EdgeNames.HEM);
        return moved ? notch.at(Length.mm(notch.distance() + pleat.mm())) : notch;
    }

    private static Seam neckSeam(Garment garment, Name shell, Name facing, Name lining, SeamRule rule) {
        SeamSide a = garment.hasPiece(facing)
                ? SeamSide.against(facing, FaceNeckline.INNER)
                : SeamSide.along(shell, TopEdges.NECKLINE);
        return Seam.of(Name.of(lining.value() + " neck"), a, SeamSide.along(lining, TopEdges.NECKLINE), rule, REFIT);
    }

    private static Seam seam(String name, Name a, Name edgeA, Name b, Name edgeB) {
        return Seam.flat(Name.of(name), SeamSide.along(a, edgeA), SeamSide.along(b, edgeB), REFIT);
    }
}
