package org.oaktag.skirt;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.oaktag.PatternException;
import org.oaktag.adjust.Range;
import org.oaktag.adjust.Reshaped;
import org.oaktag.adjust.Step;
import org.oaktag.garment.Amount;
import org.oaktag.garment.Cloth;
import org.oaktag.garment.Dart;
import org.oaktag.garment.Dimension;
import org.oaktag.garment.Edge;
import org.oaktag.garment.EdgeFinish;
import org.oaktag.garment.EdgeNames;
import org.oaktag.garment.End;
import org.oaktag.garment.FoldedDart;
import org.oaktag.garment.Garment;
import org.oaktag.garment.InnerLine;
import org.oaktag.garment.Name;
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
 * Lines a skirt: front and back as the shell is, below its waist facing if it has one, shorter at the hem, with ease at
 * the centre of the back, and its darts laid as pleats or sewn. At a vent the lining is left open from the same place.
 *
 * <pre>{@code
 * skirt.adjust(lineSkirt(lining));
 * }</pre>
 *
 * <p>A lining is 20 to 30 mm shorter than the finished skirt and its back wider by a few millimetres, laid in at the
 * waist; its darts are laid as pleats, which give way when the wearer sits (common practice).
 *
 * @param shorter by how much it is shorter than the shell, 10 to 80 mm
 * @param ease by how much each half of the back is wider, 0 to 25 mm
 * @param pleats whether the darts are laid as pleats
 * @param cloth what it is cut from
 */
public record LineSkirt(Length shorter, Length ease, boolean pleats, Cloth cloth) implements Step {

    private static final String REFIT = "line the skirt again";
    private static final Name PLEAT = Name.of("pleat");

    /**
     * Checks the amounts and takes the cloth as a lining.
     *
     * @throws PatternException if one is out of its range
     */
    public LineSkirt {
        cloth = cloth.as(Cloth.LINING);
        Range.check("lining", "must be shorter than the skirt by", shorter, Length.mm(10), Length.mm(80));
        Range.check("ease of the lining at centre back", "must be", ease, Length.ZERO, Length.mm(25));
    }

    /** Returns the step with a lining shorter by another amount. */
    public LineSkirt shorterBy(Length other) {
        return new LineSkirt(other, ease, pleats, cloth);
    }

    /** Returns the step with another ease at centre back. */
    public LineSkirt eased(Length other) {
        return new LineSkirt(shorter, other, pleats, cloth);
    }

    /** Returns the step with darts that are sewn as those of the shell are. */
    public LineSkirt withDarts() {
        return new LineSkirt(shorter, ease, false, cloth);
    }

    @Override
    public String name() {
        return "line the skirt";
    }

    @Override
    public List<Amount> amounts() {
        return List.of(
                Amount.of("shorter by", shorter),
                Amount.of("ease at centre back", ease),
                Amount.of("darts", pleats ? "as pleats" : "sewn"),
                Amount.of("lining", cloth.description()));
    }

    /**
     * {@inheritDoc}
     *
     * @throws PatternException if the front buttons down to the hem
     */
    @Override
    public Reshaped reshape(Garment garment) {
        if (Shell.isButtoned(garment)) {
            throw PatternException.of(
                    "lining",
                    "needs a front that does not button, whose facing it would be sewn to",
                    "a button stand",
                    "line it before, or leave it unlined");
        }
        Shell.requireFree(
                garment,
                "lining",
                garment.hasPiece(SkirtFinishNames.lining(SkirtNames.FRONT)),
                "a lining that is there");
        Piece front = top(garment, SkirtNames.FRONT);
        Piece back = top(garment, SkirtNames.BACK);
        List<HemStrip> strips = HemStrip.of(front, back, shorter.mm());
        Piece frontLining = lining(front, strips.get(0), 0);
        Piece wider = lining(back, strips.get(1), ease.mm());
        Piece shell = garment.piece(SkirtNames.BACK);
        Piece backLining = opened(wider, shell);
        Finishing finishing = Finishing.of(garment).put(frontLining).put(backLining);
        finishing.sew(Seam.flat(
                Name.of("lining side"),
                SeamSide.along(frontLining.name(), EdgeNames.SIDE),
                SeamSide.along(backLining.name(), EdgeNames.SIDE),
                REFIT));
        if (Shell.isPair(shell)) {
            SeamSide centre = SeamSide.along(backLining.name(), EdgeNames.CENTRE);
            finishing.sew(Seam.flat(Name.of("lining centre back"), centre, centre, REFIT));
        }
        for (Piece lining : List.of(frontLining, backLining)) {
            for (Dart dart : Dart.all(lining)) {
                finishing.sew(Seam.flat(
                        lining.name().with(dart.name().value()),
                        SeamSide.along(lining.name(), Dart.legA(dart.name())),
                        SeamSide.against(lining.name(), Dart.legB(dart.name())),
                        REFIT));
            }
        }
        finishing.sewBefore(
                SkirtFinishNames.WAISTBAND_SEAM,
                Seam.of(
                        SkirtFinishNames.LINING_SEAM,
                        sewnTo(garment),
                        SkirtBody.waist(frontLining).then(Shell.reversed(SkirtBody.waist(backLining))),
                        ease.mm() > 0 ? SeamRule.eased(ease) : SeamRule.flat(),
                        REFIT));
        Path hem = shell.path(EdgeNames.HEM);
        return new Reshaped(
                finishing.done(),
                notes(garment, shell),
                List.of(new Dimension(
                        backLining.name(),
                        backLining.corner(EdgeNames.HEM, End.END),
                        hem.end().plus(Vector.of(-ease.mm(), 0)),
                        "shorter by " + shorter.text())));
    }

    private List<Note> notes(Garment garment, Piece shell) {
        List<Note> notes = new ArrayList<>();
        notes.add(Note.rule("the lining is the shell"
                + (FaceWaist.isOn(garment) ? " below the facing" : "")
                + ", shorter by " + shorter.text() + "; each half of its back is wider by " + ease.text()
                + ", laid in at the waist beside the centre (common practice)"));
        notes.add(Note.rule(
                pleats
                        ? "its darts are laid as pleats, as wide as the darts at the waist, and left open below"
                        : "its darts are those of the shell"));
        if (shell.hasEdge(EdgeNames.VENT)) {
            notes.add(Note.rule("it is left open at the centre from where the vent begins"));
        }
        return notes;
    }

    /** Returns the half to be lined: the shell below its facing. */
    private static Piece top(Garment garment, Name half) {
        Piece plain = Shell.plain(garment, half);
        if (!FaceWaist.isOn(garment)) {
            return plain;
        }
        Piece facing = garment.piece(SkirtFinishNames.waistFacing(half));
        return ClosedTop.of(plain).below(FaceWaist.strip(facing));
    }

    private Piece lining(Piece half, HemStrip strip, double wider) {
        Path side = half.path(EdgeNames.SIDE);
        Path down = side.sub(0, side.length() - strip.side().length());
        Vector out = Vector.of(-wider, 0);
        List<Edge> edges = new ArrayList<>();
        for (Edge edge : half.edges()) {
            if (edge.name().equals(EdgeNames.SIDE)) {
                edges.add(edge.withPath(down.withEnds(side.start(), strip.side().start())));
            } else if (edge.name().equals(EdgeNames.HEM)) {
                edges.add(edge.withPath(prolonged(strip.upper().reversed(), out)));
            } else if (edge.name().equals(EdgeNames.CENTRE)) {
                edges.add(Edge.straight(
                        EdgeNames.CENTRE,
                        strip.centre().end().plus(out),
                        edge.path().end().plus(out)));
            } else if (edge.name().equals(SkirtNames.WAIST) && wider > 0) {
                Point centre = edge.path().start();
                edges.add(edge.withPath(Path.polyline(centre.plus(out), centre).then(edge.path())));
            } else {
                edges.add(edge);
            }
        }
        Piece copy = Piece.of(SkirtFinishNames.lining(half.name()), edges, half.grainline(), half.cut(), cloth)
                .withAspectOf(half)
                .withNotches(half.notches());
        return pleats ? pleated(copy) : Shell.withFolds(copy);
    }

    private static Path prolonged(Path hem, Vector out) {
        return out.length() == 0
                ? hem
                : hem.then(Path.polyline(hem.end(), hem.end().plus(out)));
    }

    /** Lays the darts as pleats: the waist goes straight over their mouths, and the fold is marked. */
    private static Piece pleated(Piece darted) {
        List<Edge> edges = new ArrayList<>();
        List<InnerLine> lines = new ArrayList<>(darted.lines());
        List<Dart> darts = Dart.all(darted);
        for (Edge edge : darted.edges()) {
            Dart legA = dartOf(darts, edge.name(), true);
            if (legA != null) {
                edges.add(
                        Edge.straight(pleat(legA), legA.mouthA(), legA.mouthB()).withFinish(EdgeFinish.TAKEN_IN));
                Point middle = legA.mouthA().midpoint(legA.mouthB());
                lines.add(new InnerLine(
                        FoldedDart.foldLine(legA.name()),
                        InnerLine.Use.FOLD,
                        Path.polyline(middle, middle.lerp(legA.apex(), 0.4))));
            } else if (dartOf(darts, edge.name(), false) == null) {
                edges.add(edge);
            }
        }
        return darted.withEdges(edges).withLines(lines);
    }

    private static Name pleat(Dart dart) {
        return PLEAT.with(dart.name().value());
    }

    private static @Nullable Dart dartOf(List<Dart> darts, Name edge, boolean legA) {
        for (Dart dart : darts) {
            if (edge.equals(legA ? Dart.legA(dart.name()) : Dart.legB(dart.name()))) {
                return dart;
            }
        }
        return null;
    }

    /** Opens the centre of the back where the shell has a zip or a vent. */
    private Piece opened(Piece lining, Piece shell) {
        Piece opened = lining;
        if (shell.hasEdge(SkirtFinishNames.ZIP)) {
            double from = opened.path(EdgeNames.CENTRE).length();
            double zip = shell.path(SkirtFinishNames.ZIP).length()
                    - (lining.corner(EdgeNames.CENTRE, End.END).y()
                            - shell.corner(SkirtNames.WAIST, End.START).y());
            opened = Shell.parted(
                            opened,
                            EdgeNames.CENTRE,
                            List.of(EdgeNames.CENTRE, SkirtFinishNames.ZIP),
                            List.of(from - zip))
                    .withFinish(SkirtFinishNames.ZIP, EdgeFinish.FASTENED);
        }
        if (shell.hasEdge(EdgeNames.VENT)) {
            double open = shell.corner(EdgeNames.HEM, End.END).y()
                    - shell.corner(EdgeNames.CENTRE, End.START).y()
                    - shorter.mm();
            opened = Shell.parted(opened, EdgeNames.CENTRE, List.of(EdgeNames.VENT, EdgeNames.CENTRE), List.of(open))
                    .withFinish(EdgeNames.VENT, EdgeFinish.NEATENED);
        }
        return opened;
    }

    private static SeamSide sewnTo(Garment garment) {
        return FaceWaist.isOn(garment)
                ? SeamSide.against(SkirtFinishNames.waistFacing(SkirtNames.FRONT), FaceWaist.LOWER)
                        .then(SeamSide.along(SkirtFinishNames.waistFacing(SkirtNames.BACK), FaceWaist.LOWER))
                : Shell.halfRound(garment);
    }
}
