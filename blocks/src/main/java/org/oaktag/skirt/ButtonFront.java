package org.oaktag.skirt;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.oaktag.PatternException;
import org.oaktag.adjust.Range;
import org.oaktag.adjust.Reshaped;
import org.oaktag.adjust.Step;
import org.oaktag.garment.Amount;
import org.oaktag.garment.Cut;
import org.oaktag.garment.Dimension;
import org.oaktag.garment.Edge;
import org.oaktag.garment.EdgeFinish;
import org.oaktag.garment.EdgeNames;
import org.oaktag.garment.End;
import org.oaktag.garment.Garment;
import org.oaktag.garment.InnerLine;
import org.oaktag.garment.Mark;
import org.oaktag.garment.Name;
import org.oaktag.garment.Note;
import org.oaktag.garment.Piece;
import org.oaktag.geometry.Crossings;
import org.oaktag.geometry.Path;
import org.oaktag.geometry.Point;
import org.oaktag.geometry.Transform;
import org.oaktag.geometry.Vector;
import org.oaktag.measure.Length;

/**
 * Opens the front all the way down with buttons: it is cut as a pair, each with a stand beyond its centre and a facing
 * cut on to it that folds in.
 *
 * <pre>{@code
 * Garment buttoned = skirt.adjust(buttons(mm(20), 7));
 * }</pre>
 *
 * <p>The buttonholes lie on the centre at even distances, the lowest about 100 mm above the hem, so that the legs can
 * move (common practice); the first lies as far below the waist as they are apart, as the waistband has a button of its
 * own. The right front has the buttonholes, the left the buttons at the same places, or the other way about.
 *
 * @param stand how far each front reaches beyond its centre, 12 to 40 mm
 * @param count how many buttons the front has, so that they are 40 to 130 mm apart
 */
record ButtonFront(Length stand, int count) implements Step {

    /** How far above the hem the lowest button lies, mm. */
    private static final double ABOVE_HEM = 100;

    private static final double LEAST_APART = 40;
    private static final double MOST_APART = 130;

    /** How far the facing reaches beyond the centre, mm. */
    private static final double BEYOND_CENTRE = 30;

    /**
     * Checks the stand.
     *
     * @throws PatternException if it is not 12 to 40 mm
     */
    public ButtonFront {
        Range.check("button stand", "must be as wide as", stand, Length.mm(12), Length.mm(40));
    }

    @Override
    public String name() {
        return "button the front";
    }

    @Override
    public List<Amount> amounts() {
        return List.of(Amount.of("stand", stand), Amount.of("buttons", String.valueOf(count)));
    }

    /**
     * {@inheritDoc}
     *
     * @throws PatternException if the front is not cut on the fold, or so many buttons lie too near to each other or
     *     too far apart; the message says how many would do
     */
    @Override
    public Reshaped reshape(Garment garment) {
        Shell.requireFree(garment, "button stand", Shell.isFinishedAtWaist(garment), "a waist that is finished");
        Piece front = Shell.of(garment, SkirtNames.FRONT);
        if (!front.isOnFold(EdgeNames.CENTRE)) {
            throw PatternException.of(
                    "button stand",
                    "needs a front cut on the fold of its centre",
                    front.cut().instruction(),
                    "leave this step out");
        }
        Shell.requireStraightCentre(front, "button stand");
        double length = front.path(EdgeNames.CENTRE).length();
        double apart = apart(length);
        Piece buttoned = marked(stood(front), apart);
        Garment done = Finishing.of(garment)
                .put(buttoned)
                .centreBetweenEnds(SkirtNames.FRONT)
                .check(new SkirtChecks.GettingIn(Length.mm(count * apart)))
                .check(new SkirtChecks.Walking(Length.mm(ABOVE_HEM)))
                .done();
        return new Reshaped(
                done,
                List.of(
                        Note.rule(String.format(
                                Locale.ROOT,
                                "%d buttonholes %s apart = (centre front %s - %s above the hem) / %d; the lowest leaves the"
                                        + " legs free (common practice)",
                                count,
                                Length.mm(apart).text(),
                                Length.mm(length).text(),
                                Length.mm(ABOVE_HEM).text(),
                                count)),
                        Note.rule("the facing is the stand " + stand.text() + " and "
                                + Length.mm(BEYOND_CENTRE).text() + " beyond the centre, mirrored through the fold")),
                List.of(new Dimension(
                        SkirtNames.FRONT,
                        buttoned.corner(SkirtFinishNames.STAND_TOP, End.START),
                        buttoned.corner(SkirtFinishNames.STAND_TOP, End.END),
                        "stand " + stand.text())));
    }

    private double apart(double length) {
        double buttoned = length - ABOVE_HEM;
        int least = (int) Math.ceil(buttoned / MOST_APART - 1e-9);
        int most = (int) Math.floor(buttoned / LEAST_APART + 1e-9);
        if (count < least || count > most) {
            throw PatternException.of(
                    "buttons down a front of " + Length.mm(length).text(),
                    "must be " + least + " to " + most + ", "
                            + Length.mm(LEAST_APART).text() + " to "
                            + Length.mm(MOST_APART).text() + " apart",
                    "" + count,
                    "");
        }
        return buttoned / count;
    }

    /** Draws the stand beyond the centre and, beyond its fold, the mirror image of what the facing comes to lie on. */
    private Piece stood(Piece front) {
        Point top = front.corner(SkirtNames.WAIST, End.START);
        Point bottom = front.corner(EdgeNames.HEM, End.END);
        Vector out = Vector.of(-stand.mm(), 0);
        Point foldTop = top.plus(out);
        Point foldBottom = bottom.plus(out);
        Transform mirror = Transform.mirror(foldTop, foldBottom);
        Path waist = front.path(SkirtNames.WAIST);
        Path hem = front.path(EdgeNames.HEM);
        Vector down = Vector.of(0, 1);
        double alongWaist = reach(waist, top, down);
        double alongHem = reach(hem, bottom, down);
        Path facingTop = Shell.joined(Path.polyline(foldTop, top), waist.sub(0, alongWaist))
                .transformed(mirror)
                .reversed();
        Path facingHem = Shell.joined(hem.sub(alongHem, hem.length()), Path.polyline(bottom, foldBottom))
                .transformed(mirror)
                .reversed();
        facingTop = facingTop.withEnds(facingTop.start(), foldTop);
        facingHem = facingHem.withEnds(foldBottom, facingHem.end());
        List<Edge> edges = new ArrayList<>(front.edges());
        edges.removeIf(edge -> edge.name().equals(EdgeNames.CENTRE));
        int after = 0;
        while (!edges.get(after).name().equals(EdgeNames.HEM)) {
            after++;
        }
        edges.addAll(
                after + 1,
                List.of(
                        front.edge(EdgeNames.HEM)
                                .withName(SkirtFinishNames.STAND_HEM)
                                .withPath(Path.polyline(bottom, foldBottom)),
                        front.edge(EdgeNames.HEM)
                                .withName(SkirtFinishNames.STAND_FACING_HEM)
                                .withPath(facingHem),
                        Edge.straight(SkirtFinishNames.STAND_FACING, facingHem.end(), facingTop.start())
                                .withFinish(EdgeFinish.NEATENED),
                        new Edge(SkirtFinishNames.STAND_FACING_TOP, facingTop, EdgeFinish.CLOSED),
                        Edge.straight(SkirtFinishNames.STAND_TOP, foldTop, top).withFinish(EdgeFinish.CLOSED)));
        List<InnerLine> lines = new ArrayList<>(front.lines());
        lines.add(new InnerLine(SkirtFinishNames.CENTRE_FRONT, InnerLine.Use.PLACEMENT, Path.polyline(top, bottom)));
        lines.add(new InnerLine(SkirtFinishNames.STAND_FOLD, InnerLine.Use.FOLD, Path.polyline(foldTop, foldBottom)));
        return front.withCut(Cut.pair()).withEdges(edges).withLines(lines);
    }

    /** Returns the place on the waist or the hem as far from the centre as the facing reaches. */
    private static double reach(Path edge, Point centre, Vector down) {
        return Crossings.ofLine(edge, centre.plus(Vector.of(BEYOND_CENTRE, 0)), down).stream()
                .findFirst()
                .orElseThrow(() -> PatternException.of(
                        "facing of the button stand",
                        "must end on the waist and the hem beside the centre",
                        Length.mm(BEYOND_CENTRE).text() + " beyond it, beside a dart",
                        "move the dart, or take this step before it is opened"))
                .first();
    }

    private Piece marked(Piece front, double apart) {
        Point top = front.corner(SkirtNames.WAIST, End.START);
        List<Mark> marks = new ArrayList<>(front.marks());
        for (int i = 1; i <= count; i++) {
            marks.add(new Mark(Name.of("buttonhole " + i), Mark.Use.BUTTONHOLE, top.plus(Vector.of(0, i * apart))));
        }
        return front.withMarks(marks);
    }
}
