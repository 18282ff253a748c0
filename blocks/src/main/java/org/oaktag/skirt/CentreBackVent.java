package org.oaktag.skirt;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.oaktag.PatternException;
import org.oaktag.adjust.Range;
import org.oaktag.adjust.Reshaped;
import org.oaktag.adjust.Step;
import org.oaktag.garment.Amount;
import org.oaktag.garment.Dimension;
import org.oaktag.garment.Edge;
import org.oaktag.garment.EdgeFinish;
import org.oaktag.garment.EdgeNames;
import org.oaktag.garment.EdgeRef;
import org.oaktag.garment.End;
import org.oaktag.garment.Garment;
import org.oaktag.garment.InnerLine;
import org.oaktag.garment.Name;
import org.oaktag.garment.Note;
import org.oaktag.garment.Piece;
import org.oaktag.garment.Quantity;
import org.oaktag.garment.Quantity.Corner;
import org.oaktag.garment.Seam;
import org.oaktag.garment.SeamSide;
import org.oaktag.geometry.Crossings;
import org.oaktag.geometry.Path;
import org.oaktag.geometry.Point;
import org.oaktag.geometry.Transform;
import org.oaktag.geometry.Vector;
import org.oaktag.measure.Length;

/**
 * Cuts a vent or a kick pleat into the seam at centre back: below it both halves have an extension beyond the centre,
 * the left one folded under along the centre, the right one lying beneath it. A pleat is a vent whose edges are sewn
 * together.
 *
 * <pre>{@code
 * skirt.adjust(centreBackSeam()).adjust(vent(mm(45)));         // as high as a full step needs
 * skirt.adjust(centreBackSeam()).adjust(kickPleat(mm(60)));
 * }</pre>
 *
 * <p>An extension is 40 to 50 mm wide and a vent 150 to 200 mm high (common practice); without a height it is as high
 * as a full step of the wearer needs, and 150 mm at least. The hem of the extension is the mirror image of the hem on
 * which it comes to lie.
 *
 * @param width how far the extension reaches beyond the centre, 30 to 120 mm
 * @param height from the hem to where the seam begins, 80 mm or more, or empty for as high as a full step needs
 * @param closed whether its edges are sewn together, so that it is a pleat
 */
public record CentreBackVent(Length width, Optional<Length> height, boolean closed) implements Step {

    private static final Length LEAST_WIDTH = Length.mm(30);
    private static final Length MOST_WIDTH = Length.mm(120);
    private static final double LEAST_HEIGHT = 80;
    private static final double USUAL_HEIGHT = 150;
    private static final double LEAST_SEWN = 50;

    /** How far the upper edge of the extension falls towards its outer edge, as a share of its width. */
    private static final double SLANT = 0.5;

    /** To so many millimetres the height that a step needs is rounded up. */
    private static final double ROUND = 5;

    /**
     * Checks the width.
     *
     * @throws PatternException if it is not 30 to 120 mm
     */
    public CentreBackVent {
        Objects.requireNonNull(height, "height");
        Range.check("extension of a vent", "must be as wide as", width, LEAST_WIDTH, MOST_WIDTH);
    }

    /** Returns the step with another height. */
    public CentreBackVent high(Length other) {
        return new CentreBackVent(width, Optional.of(other), closed);
    }

    @Override
    public String name() {
        return closed ? "lay a kick pleat at the centre back" : "cut a vent at the centre back";
    }

    @Override
    public List<Amount> amounts() {
        return List.of(
                Amount.of("width", width),
                height.map(given -> Amount.of("height", given))
                        .orElseGet(() -> Amount.of("height", "as a full step needs")));
    }

    /**
     * {@inheritDoc}
     *
     * @throws PatternException if the back has no seam at its centre, or the vent is higher than it
     */
    @Override
    public Reshaped reshape(Garment garment) {
        Shell.requireFree(
                garment,
                "vent",
                garment.hasPiece(SkirtFinishNames.lining(SkirtNames.BACK))
                        || garment.hasPiece(SkirtFinishNames.hemFacing(SkirtNames.BACK)),
                "a back that is lined or faced at its hem");
        Piece back = Shell.of(garment, SkirtNames.BACK);
        boolean vented = back.hasEdge(EdgeNames.VENT);
        if (!Shell.isPair(back) || !back.hasEdge(EdgeNames.CENTRE) || vented) {
            throw PatternException.of(
                    "vent at the centre back",
                    "needs a seam there that is sewn down to the hem",
                    vented ? "a vent" : "a back that is to be " + back.cut().instruction(),
                    vented ? "" : "seam the centre back first");
        }
        Shell.requireStraightCentre(back, "vent at the centre back");
        Optional<Length> needed = SkirtChecks.freedForStep(garment);
        double high = height.map(Length::mm)
                .orElseGet(() ->
                        Math.max(USUAL_HEIGHT, Math.ceil(needed.map(Length::mm).orElse(0.0) / ROUND) * ROUND));
        double seam = back.path(EdgeNames.CENTRE).length();
        Range.check(
                "vent at the centre back",
                "in a seam of " + Length.mm(seam).text() + ", of which at least "
                        + Length.mm(LEAST_SEWN).text() + " are sewn above it, it must be as high as",
                Length.mm(high),
                Length.mm(LEAST_HEIGHT),
                Length.mm(seam - LEAST_SEWN));
        Piece cut = cut(back, high);
        SeamSide sewn = sewn();
        Garment done = Finishing.of(garment)
                .put(cut)
                .sew(Seam.flat(SkirtFinishNames.CENTRE_BACK_SEAM, sewn, sewn, "redraw the centre back"))
                .cornerAt(
                        Corner.at(SkirtNames.BACK, EdgeNames.CENTRE, End.START),
                        Corner.at(SkirtNames.BACK, EdgeNames.HEM, End.END))
                .lengthAs(
                        EdgeRef.of(SkirtNames.BACK, EdgeNames.CENTRE),
                        new Quantity.Distance(
                                Corner.at(SkirtNames.BACK, EdgeNames.HEM, End.END),
                                Corner.at(SkirtNames.BACK, EdgeNames.CENTRE, End.END)))
                .check(new SkirtChecks.Walking(freed(garment, high)))
                .done();
        Point corner = cut.corner(EdgeNames.HEM, End.END);
        return new Reshaped(
                done,
                notes(garment, needed, high, seam),
                List.of(
                        new Dimension(
                                SkirtNames.BACK,
                                corner,
                                cut.corner(EdgeNames.CENTRE, End.START),
                                Length.mm(high).text()),
                        new Dimension(SkirtNames.BACK, corner, cut.corner(EdgeNames.VENT_HEM, End.END), width.text())));
    }

    /** A vent opens as far as it is high; a pleat too, if it is wide enough. */
    private Length freed(Garment garment, double high) {
        boolean enough = !closed
                || SkirtChecks.lackingForStep(garment)
                        .map(lacking -> lacking.mm() <= 4 * width.mm())
                        .orElse(true);
        return enough ? Length.mm(high) : Length.ZERO;
    }

    private SeamSide sewn() {
        SeamSide above = SeamSide.along(SkirtNames.BACK, EdgeNames.VENT_TOP)
                .then(SeamSide.along(SkirtNames.BACK, EdgeNames.CENTRE));
        return closed ? SeamSide.along(SkirtNames.BACK, EdgeNames.VENT).then(above) : above;
    }

    private Piece cut(Piece back, double high) {
        Path centre = back.path(EdgeNames.CENTRE);
        Path.Split split = centre.splitAt(high);
        Point corner = centre.start();
        Point top = split.before().end();
        Path hem = back.path(EdgeNames.HEM);
        double along = Crossings.ofLine(hem, corner.plus(Vector.of(width.mm(), 0)), Vector.of(0, 1)).stream()
                .findFirst()
                .orElseThrow(() -> PatternException.of(
                        "vent at the centre back",
                        "must be narrower than the hem of the back, "
                                + Length.mm(hem.length()).text(),
                        width.text(),
                        ""))
                .first();
        Path mirrored = hem.sub(along, hem.length())
                .transformed(Transform.mirror(top, corner))
                .reversed();
        Path under = mirrored.withEnds(corner, mirrored.end());
        Point outer = Point.of(under.end().x(), top.y() + SLANT * width.mm());
        List<Edge> edges = new ArrayList<>();
        for (Edge edge : back.edges()) {
            if (edge.name().equals(EdgeNames.CENTRE)) {
                edges.add(back.edge(EdgeNames.HEM).withName(EdgeNames.VENT_HEM).withPath(under));
                edges.add(Edge.straight(EdgeNames.VENT, under.end(), outer).withFinish(EdgeFinish.NEATENED));
                edges.add(Edge.straight(EdgeNames.VENT_TOP, outer, top));
                edges.add(edge.withPath(split.after().withEnds(top, centre.end())));
            } else {
                edges.add(edge);
            }
        }
        List<InnerLine> lines = new ArrayList<>(back.lines());
        lines.add(new InnerLine(SkirtFinishNames.VENT_FOLD, InnerLine.Use.FOLD, Path.polyline(top, corner)));
        Name own = EdgeNames.CENTRE;
        return back.remade(
                edges,
                lines,
                back.marks(),
                back.notches().stream()
                        .filter(notch -> !notch.edge().equals(own) || notch.fromStart(centre.length()) > high)
                        .map(notch -> notch.edge().equals(own) && notch.from() == End.START
                                ? notch.at(Length.mm(notch.distance() - high))
                                : notch)
                        .toList(),
                back.grainline(),
                back.cut());
    }

    private List<Note> notes(Garment garment, Optional<Length> needed, double high, double seam) {
        List<Note> notes = new ArrayList<>();
        notes.add(Note.rule("centre back " + Length.mm(seam).text() + " - "
                + Length.mm(high).text() + " = "
                + Length.mm(seam - high).text() + " to be sewn above it"
                + needed.map(least -> "; a full step needs " + least.roundedUp().text())
                        .orElse("")));
        if (closed) {
            notes.add(Note.rule("the pleat takes up 4 x " + width.text() + " = "
                    + width.times(4).text()
                    + SkirtChecks.lackingForStep(garment)
                            .map(lacking ->
                                    "; a full step lacks " + lacking.roundedUp().text() + " at the hem")
                            .orElse("")));
        } else {
            notes.add(Note.rule("on the left half the extension folds under along the centre, on the right it lies"
                    + " flat beneath it; both are caught in the seam along its upper edge"));
        }
        return notes;
    }
}
