package org.oaktag.skirt;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.oaktag.PatternException;
import org.oaktag.adjust.Range;
import org.oaktag.adjust.Reshaped;
import org.oaktag.adjust.Step;
import org.oaktag.body.BodyMeasure;
import org.oaktag.garment.Amount;
import org.oaktag.garment.Dimension;
import org.oaktag.garment.Edge;
import org.oaktag.garment.EdgeNames;
import org.oaktag.garment.End;
import org.oaktag.garment.FinishedMeasure;
import org.oaktag.garment.FinishedMeasure.Term;
import org.oaktag.garment.Garment;
import org.oaktag.garment.Name;
import org.oaktag.garment.Notch;
import org.oaktag.garment.Note;
import org.oaktag.garment.Piece;
import org.oaktag.garment.Quantity;
import org.oaktag.garment.Seam;
import org.oaktag.garment.SeamRule;
import org.oaktag.garment.SeamSide;
import org.oaktag.geometry.Path;
import org.oaktag.measure.Length;

/**
 * Cuts the top of the skirt off as a curved band: a front and a back with the darts closed, a facing of the same shape
 * for each, and interfacing. The skirt begins at the lower edge of the band, its darts shorter by what lies in it.
 *
 * <pre>{@code
 * skirt.adjust(centreBackSeam())
 *         .adjust(zip(mm(200), SkirtOpening.CENTRE_BACK))
 *         .adjust(contouredWaistband(mm(50)));
 * }</pre>
 *
 * <p>The zip runs through the band to the waist. Take it before pockets that reach the waist.
 *
 * @param width how wide the band is, 25 to 80 mm
 */
record ContouredWaistband(Length width) implements Step {

    private static final String REFIT = "cut the band off the top again";

    /**
     * Checks the width.
     *
     * @throws PatternException if it is not 25 to 80 mm
     */
    public ContouredWaistband {
        Objects.requireNonNull(width, "width");
        Range.check("curved waistband", "must be as wide as", width, Length.mm(25), Length.mm(80));
    }

    @Override
    public String name() {
        return "cut a curved waistband";
    }

    @Override
    public List<Amount> amounts() {
        return List.of(Amount.of("width", width));
    }

    /**
     * {@inheritDoc}
     *
     * @throws PatternException if the front buttons, the side seam has a pocket, the skirt is finished or lined at its
     *     waist, or a dart or the zip ends in the band
     */
    @Override
    public Reshaped reshape(Garment garment) {
        boolean taken = Shell.isFinishedAtWaist(garment) || garment.hasPiece(SkirtFinishNames.lining(SkirtNames.FRONT));
        Shell.requireFree(garment, "curved waistband", taken, "a waist that is finished or lined");
        Shell.requireFlatWaist(garment, "curved waistband");
        Shell.requireFree(garment, "curved waistband", Shell.hasPocketInSide(garment), "a pocket in the side seam");
        if (Shell.isButtoned(garment)) {
            throw PatternException.of(
                    "curved waistband",
                    "needs a front that does not button",
                    "a button stand",
                    "set a straight band, or face the waist");
        }
        List<Piece> plain = List.of(Shell.plain(garment, SkirtNames.FRONT), Shell.plain(garment, SkirtNames.BACK));
        List<ClosedTop> tops = plain.stream().map(ClosedTop::of).toList();
        List<ClosedTop.Strip> strips = ClosedTop.strips(tops.get(0), tops.get(1), width.mm());
        Finishing finishing = Finishing.of(garment);
        List<Term> waist = new ArrayList<>();
        for (int i = 0; i < plain.size(); i++) {
            Piece half = plain.get(i);
            Piece below = tops.get(i).below(strips.get(i));
            finishing.put(lowered(garment.piece(half.name()), below, strips.get(i)));
            Piece band = strips.get(i)
                    .piece(
                            SkirtFinishNames.waistband(half.name()),
                            half,
                            EdgeNames.TOP,
                            EdgeNames.BOTTOM,
                            half.cloth());
            Piece facing = band.renamed(band.name().with("facing"));
            finishing.put(band).put(facing);
            Interfacing.of(finishing, band);
            waist.add(FinishedMeasure.times(2, Quantity.lengthOf(band.name(), EdgeNames.TOP)));
        }
        Name front = SkirtFinishNames.waistband(SkirtNames.FRONT);
        Name back = SkirtFinishNames.waistband(SkirtNames.BACK);
        sew(finishing, garment, front, back);
        finishing
                .sew(side("waistband side", front, back))
                .sew(side("waistband facing side", front.with("facing"), back.with("facing")))
                .measure(new FinishedMeasure(
                        SkirtNames.WAIST_GIRTH, waist, Optional.of(BodyMeasure.WAIST_GIRTH.asName())))
                .lengthen(SkirtNames.LENGTH, 1, Quantity.lengthOf(front, EdgeNames.CENTRE))
                .lengthen(SkirtNames.SIDE_LENGTH, 1, Quantity.lengthOf(front, EdgeNames.SIDE));
        Garment banded = finishing.done();
        Path lower = strips.get(0).lower();
        return new Reshaped(
                banded,
                List.of(Note.rule("the band is the top " + width.text() + " of the skirt, its darts closed; from "
                        + banded.finished(SkirtNames.WAIST_GIRTH).text() + " at the waist it widens to "
                        + Length.mm(2 * (lower.length() + strips.get(1).lower().length()))
                                .text()
                        + " where the skirt begins")),
                List.of(new Dimension(
                        front,
                        strips.get(0).centre().end(),
                        strips.get(0).centre().start(),
                        "width " + width.text())));
    }

    /**
     * The band is sewn to the waist of the shell, its facing to its upper edge, and turned in over the first seam.
     */
    private static void sew(Finishing finishing, Garment garment, Name front, Name back) {
        SeamSide shell = Shell.halfRound(garment);
        SeamSide facing = SeamSide.against(front.with("facing"), EdgeNames.BOTTOM)
                .then(SeamSide.along(back.with("facing"), EdgeNames.BOTTOM));
        SeamSide top = SeamSide.along(front, EdgeNames.TOP).then(SeamSide.against(back, EdgeNames.TOP));
        SeamSide facingTop = SeamSide.along(front.with("facing"), EdgeNames.TOP)
                .then(SeamSide.against(back.with("facing"), EdgeNames.TOP));
        finishing
                .sew(Seam.flat(
                        SkirtFinishNames.WAISTBAND_SEAM,
                        shell,
                        SeamSide.against(front, EdgeNames.BOTTOM).then(SeamSide.along(back, EdgeNames.BOTTOM)),
                        REFIT))
                .sew(Seam.flat(Name.of("waistband facing top"), top, facingTop, REFIT))
                .sew(Seam.of(Name.of("waistband facing lower"), shell, facing, SeamRule.lapped(Length.ZERO), REFIT));
    }

    private static Seam side(String name, Name front, Name back) {
        return Seam.flat(
                Name.of(name), SeamSide.along(front, EdgeNames.SIDE), SeamSide.along(back, EdgeNames.SIDE), REFIT);
    }

    /** Returns the shell with its top cut off; what lies beside hem and centre stays. */
    private Piece lowered(Piece shell, Piece below, ClosedTop.Strip strip) {
        List<Edge> edges = new ArrayList<>();
        Edge each = below.edge(SkirtNames.WAIST);
        while (!each.name().equals(EdgeNames.HEM)) {
            edges.add(each);
            each = below.after(each.name());
        }
        Name upper = shell.before(SkirtNames.WAIST).name();
        for (Edge next = shell.edge(EdgeNames.HEM);
                !next.name().equals(SkirtNames.WAIST);
                next = shell.after(next.name())) {
            edges.add(next.name().equals(upper) ? shortened(next, strip.centre().length(), below) : next);
        }
        List<Notch> notches = new ArrayList<>(below.notches());
        for (Notch notch : shell.notches()) {
            boolean onUpper = notch.edge().equals(upper) && notch.from() == End.END;
            if (!notch.edge().equals(EdgeNames.SIDE)) {
                boolean moves = onUpper && notch.distance() >= strip.centre().length();
                notches.add(
                        moves
                                ? notch.at(Length.mm(
                                        notch.distance() - strip.centre().length()))
                                : notch);
            }
        }
        Piece lowered = shell.remade(edges, shell.lines(), shell.marks(), notches, shell.grainline(), shell.cut());
        return Shell.withFolds(lowered);
    }

    private Edge shortened(Edge edge, double by, Piece below) {
        double left = edge.path().length() - by;
        if (left <= 0) {
            throw PatternException.of(
                    "curved waistband",
                    "must be narrower than the " + edge.name() + " is long, "
                            + edge.length().text(),
                    width.text(),
                    "make it narrower");
        }
        Path cut = edge.path().sub(0, left);
        return edge.withPath(cut.withEnds(
                edge.path().start(), below.edge(SkirtNames.WAIST).path().start()));
    }
}
