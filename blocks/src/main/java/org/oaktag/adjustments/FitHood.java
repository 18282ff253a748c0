package org.oaktag.adjustments;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.oaktag.PatternException;
import org.oaktag.adjust.Reshaped;
import org.oaktag.adjust.Step;
import org.oaktag.blocks.HoodNames;
import org.oaktag.blocks.HoodPanel;
import org.oaktag.blocks.HoodShape;
import org.oaktag.blocks.TopNames;
import org.oaktag.body.BodyMeasure;
import org.oaktag.garment.Amount;
import org.oaktag.garment.Cloth;
import org.oaktag.garment.Cut;
import org.oaktag.garment.Dimension;
import org.oaktag.garment.Edge;
import org.oaktag.garment.EdgeNames;
import org.oaktag.garment.EdgeRef;
import org.oaktag.garment.End;
import org.oaktag.garment.FinishedMeasure;
import org.oaktag.garment.Garment;
import org.oaktag.garment.Grainline;
import org.oaktag.garment.Mark;
import org.oaktag.garment.Name;
import org.oaktag.garment.Notch;
import org.oaktag.garment.Note;
import org.oaktag.garment.Piece;
import org.oaktag.garment.Quantity;
import org.oaktag.garment.Seam;
import org.oaktag.garment.SeamRule;
import org.oaktag.garment.SeamSide;
import org.oaktag.geometry.Path;
import org.oaktag.geometry.Point;
import org.oaktag.measure.Length;

/**
 * Fits a three-panel hood to the neckline, in the cloth of the front. A hood that is there already, and its lining, is
 * taken off first.
 *
 * <p>The neck edge of a side panel and of half the strip together is half the neckline and half the lap. The strip is
 * as long as the crown of the side panel. Immutable.
 *
 * @param shape what the hood looks like
 * @param lap by how much its two fronts lap over each other at centre front; 0 for edge to edge
 * @param drawstring whether it gets eyelets for a cord
 */
public record FitHood(HoodShape shape, Length lap, boolean drawstring) implements Step {

    private static final String REFIT = "fit the hood again";
    private static final Set<Name> HOOD =
            Set.of(TopNames.HOOD_SIDE, TopNames.HOOD_CENTRE, TopNames.HOOD_SIDE_LINING, TopNames.HOOD_CENTRE_LINING);

    /** Where the crown's notches lie, as shares of its length; not symmetric, so that the strip cannot be reversed. */
    private static final double CROWN_FRONT = 0.35;

    private static final double CROWN_BACK = 0.70;

    private static final double EYELET_FROM_FACE = 15;
    private static final double EYELET_ABOVE_NECK = 40;

    /**
     * Checks the lap.
     *
     * @throws PatternException if the lap is negative
     */
    public FitHood {
        if (lap.mm() < 0) {
            throw PatternException.of("lap of the hood", "must be 0 mm or more", lap.text(), "");
        }
    }

    /**
     * Returns the step with fronts that lap over each other.
     *
     * @throws PatternException if the lap is negative
     */
    public FitHood lapped(Length by) {
        return new FitHood(shape, by, drawstring);
    }

    /** Returns the step with eyelets for a cord, which is refused for a child. */
    public FitHood withDrawstring() {
        return new FitHood(shape, lap, true);
    }

    @Override
    public String name() {
        return "fit a hood";
    }

    @Override
    public List<Amount> amounts() {
        List<Amount> amounts = new ArrayList<>();
        amounts.add(Amount.of("strip", shape.stripWidth()));
        shape.height().ifPresent(height -> amounts.add(Amount.of("height", height)));
        shape.depth().ifPresent(depth -> amounts.add(Amount.of("depth", depth)));
        amounts.add(Amount.of("rise", shape.rise()));
        amounts.add(Amount.of("lap", lap));
        if (drawstring) {
            amounts.add(Amount.of("drawstring", "with eyelets"));
        }
        return amounts;
    }

    /**
     * {@inheritDoc}
     *
     * @throws PatternException if the lap reaches the shoulder, no well-formed panel fits the neckline, or a child's
     *     hood shall have a drawstring
     */
    @Override
    public Reshaped reshape(Garment garment) {
        if (drawstring) {
            DrawstringRule.check(garment.wearer());
        }
        Length front = garment.piece(TopNames.FRONT).edge(EdgeNames.NECKLINE).length();
        Length back = garment.piece(TopNames.BACK).edge(EdgeNames.NECKLINE).length();
        if (lap.compareTo(front) > 0) {
            throw PatternException.of(
                    "lap of the hood",
                    "must be 0 mm to the front neckline from centre to shoulder, " + front.text(),
                    lap.text(),
                    "");
        }
        Length head = garment.wearer().measure(BodyMeasure.HEAD_GIRTH.asName());
        HoodPanel panel = HoodPanel.draw(shape, head, front.plus(back), back, lap);
        Cloth cloth = garment.piece(TopNames.FRONT).cloth();
        Piece side = side(panel, cloth);
        Piece centre = centre(panel, cloth);
        boolean again = garment.hasPiece(TopNames.HOOD_SIDE);
        Garment hooded = Assembly.of(garment)
                .takeOff(HOOD)
                .put(side)
                .put(centre)
                .sew(neckSeam())
                .sew(crownSeam())
                .measure(FinishedMeasure.of(HoodNames.FACE_HEIGHT, FinishedMeasure.times(1, FACE)))
                .measure(FinishedMeasure.of(
                        HoodNames.FACE_OPENING, FinishedMeasure.times(2, FACE), FinishedMeasure.times(2, HALF_STRIP)))
                .measure(FinishedMeasure.of(HoodNames.OVER_CROWN, FinishedMeasure.times(1, STRIP_LENGTH)))
                .done();
        return new Reshaped(hooded, notes(panel, head, front.plus(back), garment, again), dimensions(panel, side));
    }

    /** Taken between corners, as the face is no edge any more once a facing is cut on. */
    private static final Quantity FACE = new Quantity.Distance(
            Quantity.Corner.at(TopNames.HOOD_SIDE, HoodNames.NECK, End.END),
            Quantity.Corner.at(TopNames.HOOD_SIDE, HoodNames.CROWN, End.START));

    private static final Quantity HALF_STRIP =
            new Quantity.EdgeLength(EdgeRef.of(TopNames.HOOD_CENTRE, HoodNames.NECK));

    private static final Quantity STRIP_LENGTH =
            new Quantity.EdgeLength(EdgeRef.of(TopNames.HOOD_CENTRE, HoodNames.CROWN));

    private Piece side(HoodPanel panel, Cloth cloth) {
        double faceLength = panel.face().length();
        double crownLength = panel.crown().length();
        double middle = panel.depth() * 0.45;
        List<Notch> notches = new ArrayList<>();
        if (lap.mm() > 0) {
            notches.add(Notch.single(HoodNames.CENTRE_FRONT_NOTCH, HoodNames.NECK, End.END, lap.mm() / 2));
        }
        notches.add(Notch.single(TopNames.SHOULDER_NOTCH, HoodNames.NECK, End.START, panel.shoulder()));
        notches.addAll(crownNotches(crownLength));
        Piece piece = Piece.of(
                        TopNames.HOOD_SIDE,
                        List.of(
                                new Edge(HoodNames.FACE, panel.face()),
                                new Edge(HoodNames.CROWN, panel.crown()),
                                new Edge(HoodNames.NECK, panel.neck())),
                        new Grainline(Point.of(middle, faceLength * 0.25), Point.of(middle, faceLength * 0.75)),
                        Cut.pair(),
                        cloth)
                .withNotches(notches);
        return drawstring
                ? piece.withMarks(
                        List.of(new Mark(HoodNames.EYELET, Point.of(EYELET_FROM_FACE, faceLength - EYELET_ABOVE_NECK))))
                : piece;
    }

    private Piece centre(HoodPanel panel, Cloth cloth) {
        double half = shape.stripWidth().mm() / 2;
        double length = panel.crown().length();
        Point face = Point.of(half, 0);
        Point nape = Point.of(half, length);
        Point foldedNape = Point.of(0, length);
        return Piece.of(
                        TopNames.HOOD_CENTRE,
                        List.of(
                                new Edge(HoodNames.FACE, Path.polyline(Point.ORIGIN, face)),
                                new Edge(HoodNames.CROWN, Path.polyline(face, nape)),
                                new Edge(HoodNames.NECK, Path.polyline(nape, foldedNape)),
                                new Edge(EdgeNames.CENTRE, Path.polyline(foldedNape, Point.ORIGIN))),
                        new Grainline(Point.of(half / 2, length * 0.25), Point.of(half / 2, length * 0.75)),
                        Cut.onFold(EdgeNames.CENTRE),
                        cloth)
                .withNotches(crownNotches(length));
    }

    private static List<Notch> crownNotches(double length) {
        return List.of(
                Notch.single(HoodNames.CROWN_FRONT_NOTCH, HoodNames.CROWN, End.START, CROWN_FRONT * length),
                Notch.paired(HoodNames.CROWN_BACK_NOTCH, HoodNames.CROWN, End.START, CROWN_BACK * length));
    }

    private Seam neckSeam() {
        return Seam.of(
                HoodNames.NECK_SEAM,
                SeamSide.along(TopNames.FRONT, EdgeNames.NECKLINE)
                        .then(SeamSide.against(TopNames.BACK, EdgeNames.NECKLINE)),
                SeamSide.against(TopNames.HOOD_SIDE, HoodNames.NECK)
                        .then(SeamSide.along(TopNames.HOOD_CENTRE, HoodNames.NECK)),
                lap.mm() > 0 ? SeamRule.lapped(lap.times(0.5)) : SeamRule.flat(),
                REFIT);
    }

    private static Seam crownSeam() {
        return Seam.of(
                        HoodNames.CROWN_SEAM,
                        SeamSide.along(TopNames.HOOD_SIDE, HoodNames.CROWN),
                        SeamSide.along(TopNames.HOOD_CENTRE, HoodNames.CROWN),
                        SeamRule.flat(),
                        REFIT)
                .smoothAt(End.START, End.END);
    }

    private List<Note> notes(HoodPanel panel, Length head, Length halfNeckline, Garment garment, boolean again) {
        List<Note> notes = new ArrayList<>();
        Length half = shape.stripWidth().times(0.5);
        if (again) {
            notes.add(
                    Note.done("the earlier hood was taken off, and its lining if it had one: line the new one again"));
        }
        notes.add(Note.rule("neck edge of a side panel = half the neckline " + halfNeckline.text() + " + half the lap "
                + lap.times(0.5).text() + " - half the strip " + half.text() + " = "
                + Length.mm(panel.neck().length()).text()));
        notes.add(Note.rule(heightRule(panel, head, half)));
        notes.add(Note.rule("the side panel reaches " + Length.mm(panel.depth()).text()
                + " back from the face; the strip is as long as its crown, "
                + Length.mm(panel.crown().length()).text()));
        if (drawstring) {
            notes.add(DrawstringRule.cordCaution());
        }
        if (garment.wearer().child()) {
            notes.add(DrawstringRule.childCaution());
        }
        return notes;
    }

    private String heightRule(HoodPanel panel, Length head, Length half) {
        String height = "height of a side panel above the shoulder = "
                + Length.mm(panel.height()).text();
        return shape.height().isPresent()
                ? height + ", as given"
                : height + ": half the tape from side neck point over the crown to the other (1.15 of the head girth "
                        + head.text() + ", common practice) + 40.0 mm - half the strip " + half.text();
    }

    private List<Dimension> dimensions(HoodPanel panel, Piece side) {
        List<Dimension> dimensions = new ArrayList<>();
        Name piece = side.name();
        Point shoulder = panel.neck().pointAt(panel.shoulder());
        dimensions.add(new Dimension(
                piece,
                shoulder,
                Point.of(shoulder.x(), 0),
                "height " + Length.mm(panel.height()).text()));
        dimensions.add(new Dimension(
                piece,
                Point.of(0, panel.widest()),
                Point.of(panel.depth(), panel.widest()),
                "depth " + Length.mm(panel.depth()).text()));
        if (lap.mm() > 0) {
            double length = panel.neck().length();
            dimensions.add(new Dimension(
                    piece,
                    panel.neck().pointAt(length - lap.mm() / 2),
                    panel.neck().end(),
                    "half lap " + lap.times(0.5).text()));
        }
        double middle = panel.crown().length() / 2;
        dimensions.add(new Dimension(
                TopNames.HOOD_CENTRE,
                Point.of(0, middle),
                Point.of(shape.stripWidth().mm() / 2, middle),
                "half strip " + shape.stripWidth().times(0.5).text()));
        return dimensions;
    }
}
