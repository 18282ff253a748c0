package org.oaktag.adjustments;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.oaktag.blocks.BandNames;
import org.oaktag.blocks.HoodNames;
import org.oaktag.blocks.HoodPanel;
import org.oaktag.blocks.HoodShape;
import org.oaktag.blocks.TopNames;
import org.oaktag.garment.Aspect;
import org.oaktag.garment.Cloth;
import org.oaktag.garment.Cut;
import org.oaktag.garment.Dimension;
import org.oaktag.garment.Edge;
import org.oaktag.garment.EdgeNames;
import org.oaktag.garment.End;
import org.oaktag.garment.FinishedMeasure;
import org.oaktag.garment.Grainline;
import org.oaktag.garment.InnerLine;
import org.oaktag.garment.Mark;
import org.oaktag.garment.Name;
import org.oaktag.garment.Notch;
import org.oaktag.garment.Piece;
import org.oaktag.garment.Quantity;
import org.oaktag.garment.Seam;
import org.oaktag.garment.SeamRule;
import org.oaktag.garment.SeamSide;
import org.oaktag.geometry.Path;
import org.oaktag.geometry.Point;
import org.oaktag.geometry.Vector;
import org.oaktag.measure.Length;
import org.oaktag.measure.Percent;

/**
 * The pieces of a hood, made from the drawing of its side panel, with their seams and measures.
 *
 * @param panel the drawing of the side panel
 * @param opening the neckline that it is sewn to
 * @param shape whether there is a strip over the middle, and how wide
 * @param lap by how much the fronts lap over each other
 * @param eyelets whether the side panel is marked for a cord
 * @param cloth what all is cut from
 */
record HoodPieces(HoodPanel panel, NeckOpening opening, HoodShape shape, Length lap, boolean eyelets, Cloth cloth) {

    private static final String REFIT = "fit the hood again";

    /** Where the crown's notches lie, as shares of its length; not symmetric, so that the strip cannot be reversed. */
    private static final double CROWN_FRONT = 0.35;

    private static final double CROWN_BACK = 0.70;
    private static final double EYELET_FROM_FACE = 15;
    private static final double EYELET_ABOVE_NECK = 40;
    /** The side of the square that is laid behind an eyelet: inside the face, and twice as wide as an eyelet's rim. */
    private static final double PATCH = 24;

    private static final double GRAIN_SHARE = 0.45;

    /** Nearer to the end of an edge, in millimetres, the end itself shows the place. */
    private static final double CLEAR = 3;

    /** Returns the side panel. */
    Piece side() {
        double faceLength = panel.face().length();
        double grain = GRAIN_SHARE * panel.depth();
        List<Notch> notches = new ArrayList<>(crownNotches());
        notches.addAll(neckNotches(HoodNames.NECK, End.START, halfStrip(), Double.MAX_VALUE));
        if (lap.mm() > 0) {
            notches.add(Notch.single(
                    HoodNames.CENTRE_FRONT_NOTCH,
                    HoodNames.NECK,
                    End.END,
                    lap.times(0.5).mm()));
        }
        Point eyelet = Point.of(EYELET_FROM_FACE, faceLength - EYELET_ABOVE_NECK);
        return Piece.of(
                        TopNames.HOOD_SIDE,
                        List.of(
                                new Edge(HoodNames.FACE, panel.face()).withAspect(Aspect.FRONT),
                                new Edge(HoodNames.CROWN, panel.crown()),
                                new Edge(HoodNames.NECK, panel.neck())),
                        upright(grain, faceLength),
                        Cut.pair(),
                        cloth)
                .withNotches(notches)
                .withLines(eyelets ? List.of(patch(eyelet)) : List.of())
                .withMarks(eyelets ? List.of(new Mark(HoodNames.EYELET, Mark.Use.EYELET, eyelet)) : List.of());
    }

    private static InnerLine patch(Point eyelet) {
        Point corner = eyelet.plus(Vector.of(-PATCH / 2, -PATCH / 2));
        List<Path> sides = patchSides(corner);
        return new InnerLine(
                HoodNames.EYELET_PATCH,
                InnerLine.Use.PLACEMENT,
                sides.get(0).then(sides.get(1)).then(sides.get(2)).then(sides.get(3)));
    }

    private static List<Path> patchSides(Point topLeft) {
        Point topRight = topLeft.plus(Vector.of(PATCH, 0));
        Point bottomRight = topRight.plus(Vector.of(0, PATCH));
        Point bottomLeft = topLeft.plus(Vector.of(0, PATCH));
        return List.of(
                Path.polyline(topLeft, topRight),
                Path.polyline(topRight, bottomRight),
                Path.polyline(bottomRight, bottomLeft),
                Path.polyline(bottomLeft, topLeft));
    }

    /** Returns what is laid behind the eyelets, one for either side; empty where there are none. */
    Optional<Piece> eyeletPatch() {
        if (!eyelets) {
            return Optional.empty();
        }
        List<Path> sides = patchSides(Point.ORIGIN);
        return Optional.of(Piece.of(
                HoodNames.EYELET_PATCH,
                List.of(
                        new Edge(EdgeNames.TOP, sides.get(0)),
                        new Edge(BandNames.SIDE_BACK, sides.get(1)).withAspect(Aspect.BACK),
                        new Edge(EdgeNames.BOTTOM, sides.get(2)),
                        new Edge(BandNames.SIDE_FRONT, sides.get(3)).withAspect(Aspect.FRONT)),
                upright(PATCH / 2, PATCH),
                Cut.pair(),
                new Cloth(Cloth.INTERFACING, "firm interfacing", Percent.percent(0))));
    }

    /**
     * Returns the notches of those joints of the neckline that a neck edge meets.
     *
     * @param from the end of the edge that lies towards centre back
     * @param least how far that end is from centre back
     * @param most how far the other end is from there
     */
    private List<Notch> neckNotches(Name edge, End from, double least, double most) {
        List<Notch> notches = new ArrayList<>();
        for (NeckOpening.Joint joint : opening.joints()) {
            double fromBack = opening.half() - joint.fromFront();
            if (fromBack > least + CLEAR && fromBack < most - CLEAR) {
                notches.add(new Notch(joint.notch(), edge, from, fromBack - least, joint.cuts()));
            }
        }
        return notches;
    }

    private double halfStrip() {
        return shape.stripWidth().mm() / 2;
    }

    /** Returns the strip over the middle, where there is one. */
    Optional<Piece> centre() {
        if (!shape.hasStrip()) {
            return Optional.empty();
        }
        double half = halfStrip();
        double length = panel.crown().length();
        Point face = Point.of(half, 0);
        Point nape = Point.of(half, length);
        Point foldedNape = Point.of(0, length);
        List<Notch> notches = new ArrayList<>(crownNotches());
        notches.addAll(neckNotches(HoodNames.NECK, End.END, 0, half));
        return Optional.of(Piece.of(
                        TopNames.HOOD_CENTRE,
                        List.of(
                                Edge.straight(HoodNames.FACE, Point.ORIGIN, face)
                                        .withAspect(Aspect.FRONT),
                                Edge.straight(HoodNames.CROWN, face, nape),
                                Edge.straight(HoodNames.NECK, nape, foldedNape),
                                Edge.straight(EdgeNames.CENTRE, foldedNape, Point.ORIGIN)),
                        upright(half / 2, length),
                        Cut.onFold(EdgeNames.CENTRE),
                        cloth)
                .withNotches(notches));
    }

    private static Grainline upright(double x, double height) {
        return new Grainline(Point.of(x, height * 0.25), Point.of(x, height * 0.75));
    }

    private List<Notch> crownNotches() {
        double length = panel.crown().length();
        return List.of(
                Notch.single(HoodNames.CROWN_FRONT_NOTCH, HoodNames.CROWN, End.START, CROWN_FRONT * length),
                Notch.paired(HoodNames.CROWN_BACK_NOTCH, HoodNames.CROWN, End.START, CROWN_BACK * length));
    }

    /** Returns the seam of neckline and hood, from centre front to centre back. */
    Seam neckSeam() {
        SeamSide side = SeamSide.against(TopNames.HOOD_SIDE, HoodNames.NECK);
        return Seam.of(
                HoodNames.NECK_SEAM,
                opening.side(),
                shape.hasStrip() ? side.then(SeamSide.along(TopNames.HOOD_CENTRE, HoodNames.NECK)) : side,
                lap.mm() > 0 ? SeamRule.lapped(lap.times(0.5)) : SeamRule.flat(),
                REFIT);
    }

    /** Returns the seam of the side panel with the strip, or with the other side panel, from the face to the nape. */
    Seam crownSeam() {
        return Seam.flat(
                        HoodNames.CROWN_SEAM,
                        SeamSide.along(TopNames.HOOD_SIDE, HoodNames.CROWN),
                        SeamSide.along(shape.hasStrip() ? TopNames.HOOD_CENTRE : TopNames.HOOD_SIDE, HoodNames.CROWN),
                        REFIT)
                .smooth();
    }

    /**
     * Returns the finished measures of a hood. The face is taken between corners, as it is no edge any more once a
     * facing is cut on to it.
     */
    List<FinishedMeasure> measures() {
        Quantity face = new Quantity.Distance(
                Quantity.Corner.at(TopNames.HOOD_SIDE, HoodNames.NECK, End.END),
                Quantity.Corner.at(TopNames.HOOD_SIDE, HoodNames.CROWN, End.START));
        Name middle = shape.hasStrip() ? TopNames.HOOD_CENTRE : TopNames.HOOD_SIDE;
        Quantity crown = Quantity.lengthOf(middle, HoodNames.CROWN);
        return List.of(
                FinishedMeasure.of(HoodNames.FACE_HEIGHT, face),
                shape.hasStrip()
                        ? FinishedMeasure.of(
                                HoodNames.FACE_OPENING,
                                FinishedMeasure.times(2, face),
                                FinishedMeasure.times(2, Quantity.lengthOf(middle, HoodNames.NECK)))
                        : FinishedMeasure.of(HoodNames.FACE_OPENING, FinishedMeasure.times(2, face)),
                FinishedMeasure.of(HoodNames.OVER_CROWN, crown));
    }

    /** Returns where height, depth, lap and strip show. */
    List<Dimension> dimensions() {
        Point shoulder = panel.neck().pointAt(panel.shoulder());
        List<Dimension> dimensions = new ArrayList<>(List.of(
                onSide("height", panel.height(), shoulder, Point.of(shoulder.x(), 0)),
                onSide("depth", panel.depth(), Point.of(0, panel.widest()), Point.of(panel.depth(), panel.widest()))));
        if (shape.hasStrip()) {
            Length half = shape.stripWidth().times(0.5);
            double nape = panel.crown().length();
            dimensions.add(new Dimension(
                    TopNames.HOOD_CENTRE, Point.of(0, nape), Point.of(half.mm(), nape), "half strip " + half.text()));
        }
        if (lap.mm() > 0) {
            Point centreFront = panel.neck().pointAt(panel.neck().length() - lap.mm() / 2);
            dimensions.add(
                    onSide("half lap", lap.mm() / 2, centreFront, panel.neck().end()));
        }
        return dimensions;
    }

    private static Dimension onSide(String what, double mm, Point from, Point to) {
        return new Dimension(
                TopNames.HOOD_SIDE, from, to, what + " " + Length.mm(mm).text());
    }
}
