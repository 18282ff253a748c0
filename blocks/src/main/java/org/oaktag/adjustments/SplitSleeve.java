package org.oaktag.adjustments;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.oaktag.PatternException;
import org.oaktag.adjust.Reshaped;
import org.oaktag.adjust.Step;
import org.oaktag.blocks.TopNames;
import org.oaktag.blocks.Unknown;
import org.oaktag.garment.Amount;
import org.oaktag.garment.Cloth;
import org.oaktag.garment.Dimension;
import org.oaktag.garment.Edge;
import org.oaktag.garment.EdgeNames;
import org.oaktag.garment.EdgeRef;
import org.oaktag.garment.End;
import org.oaktag.garment.FinishedMeasure;
import org.oaktag.garment.Garment;
import org.oaktag.garment.Grainline;
import org.oaktag.garment.Name;
import org.oaktag.garment.Notch;
import org.oaktag.garment.Note;
import org.oaktag.garment.Piece;
import org.oaktag.garment.Quantity;
import org.oaktag.garment.Quantity.Corner;
import org.oaktag.garment.Quantity.Drop;
import org.oaktag.garment.Seam;
import org.oaktag.garment.SeamRule;
import org.oaktag.garment.SeamSide;
import org.oaktag.geometry.Cubic;
import org.oaktag.geometry.Line;
import org.oaktag.geometry.Path;
import org.oaktag.geometry.Point;
import org.oaktag.geometry.Vector;
import org.oaktag.measure.Length;

/**
 * Cuts the sleeve in two along a style line that is square to both underarm edges, so that it runs on smoothly round the
 * arm: level on a straight sleeve, hanging a little on a tapered one. The upper part keeps the name of the sleeve and
 * ends in the edge
 * {@code bottom}; the lower part begins with the edge {@code top} and carries the hem. Both new edges are one line, so
 * that they are equal by construction, and are notched off the middle, so that they cannot be joined the wrong way
 * round.
 *
 * @param aboveHem how far above the hem the line lies
 * @param below the cloth of the lower part
 */
public record SplitSleeve(Length aboveHem, Cloth below) implements Step {

    private static final Name STYLE_NOTCH = Name.of("style line");
    private static final double NOTCH_SHARE = 1.0 / 3;
    private static final double LEVEL = 1e-12;
    private static final double LEAST_PART = 20;
    private static final double GRAIN_SHARE = 0.2;

    @Override
    public String name() {
        return "split the sleeve";
    }

    @Override
    public List<Amount> amounts() {
        return List.of(Amount.of("above the hem", aboveHem), Amount.of("below in", below.description()));
    }

    @Override
    public Reshaped reshape(Garment garment) {
        Piece sleeve = garment.piece(TopNames.SLEEVE);
        if (!sleeve.hasEdge(EdgeNames.HEM)) {
            throw PatternException.of(
                    "sleeve", "can be split once", "a sleeve that is split already", "leave one split out");
        }
        double level = level(sleeve);
        Path underarmFront = sleeve.path(EdgeNames.UNDERARM_FRONT);
        Path underarmBack = sleeve.path(EdgeNames.UNDERARM_BACK);
        Path.Split front = underarmFront.splitAt(place(underarmFront, level));
        Path.Split back = underarmBack.splitAt(underarmBack.length() - place(underarmBack.reversed(), level));
        Point frontPoint = front.after().start();
        Point backPoint = back.before().end();
        Path line = styleLine(
                frontPoint,
                front.after().startDirection(),
                backPoint,
                back.after().startDirection());
        Piece upper = upper(sleeve, front.before(), line, back.after());
        Piece lower = lower(sleeve, line, front.after(), back.before());
        Garment split = rejoined(garment, upper, lower);
        Note rule = Note.rule(
                "a line " + aboveHem.text() + " above the hem, square to the underarm edges: both new edges are "
                        + Length.mm(line.length()).text() + " long");
        Dimension dimension = new Dimension(
                TopNames.SLEEVE_LOWER, frontPoint, Point.of(frontPoint.x(), level + aboveHem.mm()), aboveHem.text());
        return new Reshaped(split, List.of(rule), List.of(dimension));
    }

    private double level(Piece sleeve) {
        double hem = sleeve.path(EdgeNames.HEM).start().y();
        double underarm = sleeve.corner(EdgeNames.CAP_FRONT, End.END).y();
        double most = hem - underarm - LEAST_PART;
        if (aboveHem.mm() < LEAST_PART || aboveHem.mm() > most) {
            throw PatternException.of(
                    "style line of the sleeve",
                    "must lie " + Length.mm(LEAST_PART).text() + " to "
                            + Length.mm(most).text() + " above the hem, below the underarm points",
                    aboveHem.text(),
                    "");
        }
        return hem - aboveHem.mm();
    }

    private static double place(Path downwards, double level) {
        OptionalDouble place = Unknown.solve(along -> downwards.pointAt(along).y() - level, 0, downwards.length());
        return place.orElseThrow(() -> PatternException.of(
                "style line of the sleeve",
                "must cross both underarm edges",
                "y = " + level + " mm",
                "straighten the sleeve first"));
    }

    private static Path styleLine(Point front, Vector downFront, Point back, Vector upBack) {
        Vector inward = downFront.rightNormal();
        Vector outward = upBack.leftNormal();
        double handle = front.distanceTo(back) / 3;
        return Math.abs(inward.y()) <= LEVEL
                ? Path.of(new Line(front, back))
                : Path.of(Cubic.hermite(front, inward.times(handle), back, outward.times(handle)));
    }

    private static Piece upper(Piece sleeve, Path front, Path line, Path back) {
        List<Edge> edges = List.of(
                sleeve.edge(EdgeNames.CAP_BACK),
                sleeve.edge(EdgeNames.CAP_FRONT),
                new Edge(EdgeNames.UNDERARM_FRONT, front),
                new Edge(EdgeNames.BOTTOM, line),
                new Edge(EdgeNames.UNDERARM_BACK, back));
        Grainline grain = sleeve.grainline();
        double lowest = line.start().y() - (line.start().y() - grain.top().y()) * GRAIN_SHARE;
        return sleeve.withNotches(sleeve.notches().stream()
                        .filter(notch -> !notch.edge().equals(EdgeNames.HEM))
                        .toList())
                .withEdges(edges)
                .withGrainline(
                        new Grainline(grain.top(), Point.of(grain.bottom().x(), lowest)))
                .withNotch(Notch.single(STYLE_NOTCH, EdgeNames.BOTTOM, End.END, line.length() * NOTCH_SHARE));
    }

    private Piece lower(Piece sleeve, Path line, Path front, Path back) {
        double length = line.length();
        double high = line.start().y();
        double low = front.end().y();
        double x = sleeve.grainline().top().x();
        return Piece.of(
                        TopNames.SLEEVE_LOWER,
                        List.of(
                                new Edge(EdgeNames.TOP, line.reversed()),
                                new Edge(EdgeNames.UNDERARM_FRONT, front),
                                sleeve.edge(EdgeNames.HEM),
                                new Edge(EdgeNames.UNDERARM_BACK, back)),
                        new Grainline(
                                Point.of(x, high + GRAIN_SHARE * (low - high)),
                                Point.of(x, low - GRAIN_SHARE * (low - high))),
                        sleeve.cut(),
                        below)
                .withNotch(Notch.single(STYLE_NOTCH, EdgeNames.TOP, End.START, length * NOTCH_SHARE));
    }

    private static Garment rejoined(Garment garment, Piece upper, Piece lower) {
        EdgeRef oldHem = EdgeRef.of(TopNames.SLEEVE, EdgeNames.HEM);
        EdgeRef newHem = EdgeRef.of(TopNames.SLEEVE_LOWER, EdgeNames.HEM);
        List<Piece> pieces = new ArrayList<>();
        for (Piece piece : garment.pieces()) {
            if (piece.name().equals(TopNames.SLEEVE)) {
                pieces.add(upper);
                pieces.add(lower);
            } else {
                pieces.add(piece);
            }
        }
        List<Seam> seams = new ArrayList<>();
        for (Seam seam : garment.seams()) {
            seams.add(seam.replacing(oldHem, newHem));
            if (seam.name().equals(TopNames.SLEEVE_SEAM)) {
                seams.add(Seam.of(
                                TopNames.SLEEVE_LOWER_SEAM,
                                SeamSide.along(TopNames.SLEEVE_LOWER, EdgeNames.UNDERARM_FRONT),
                                SeamSide.against(TopNames.SLEEVE_LOWER, EdgeNames.UNDERARM_BACK),
                                SeamRule.flat(),
                                seam.refit())
                        .smoothAt(End.START, End.END));
                seams.add(Seam.of(
                        TopNames.SLEEVE_STYLE_SEAM,
                        SeamSide.against(TopNames.SLEEVE, EdgeNames.BOTTOM),
                        SeamSide.along(TopNames.SLEEVE_LOWER, EdgeNames.TOP),
                        SeamRule.flat(),
                        "split the sleeve after its width is settled"));
            }
        }
        return garment.with(
                pieces,
                seams,
                garment.measures().stream().map(SplitSleeve::across).toList());
    }

    /** A measure that ran down to the hem now runs down to the style line and from there to the hem. */
    private static FinishedMeasure across(FinishedMeasure measure) {
        List<FinishedMeasure.Term> terms = new ArrayList<>();
        for (FinishedMeasure.Term term : measure.terms()) {
            Quantity quantity = term.quantity();
            if (quantity instanceof Drop drop && isHem(drop.to().edge())) {
                terms.add(FinishedMeasure.times(
                        term.times(), new Drop(drop.from(), Corner.at(TopNames.SLEEVE, EdgeNames.BOTTOM, End.START))));
                terms.add(FinishedMeasure.times(
                        term.times(),
                        new Drop(
                                Corner.at(TopNames.SLEEVE_LOWER, EdgeNames.TOP, End.END),
                                Corner.at(TopNames.SLEEVE_LOWER, EdgeNames.HEM, End.START))));
            } else if (quantity instanceof Quantity.EdgeLength length && isHem(length.edge())) {
                terms.add(FinishedMeasure.times(
                        term.times(), new Quantity.EdgeLength(EdgeRef.of(TopNames.SLEEVE_LOWER, EdgeNames.HEM))));
            } else {
                terms.add(term);
            }
        }
        return new FinishedMeasure(measure.name(), terms, measure.body());
    }

    private static boolean isHem(EdgeRef edge) {
        return edge.equals(EdgeRef.of(TopNames.SLEEVE, EdgeNames.HEM));
    }
}
