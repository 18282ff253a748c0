package org.oaktag.skirt;

import java.util.ArrayList;
import java.util.List;
import org.oaktag.garment.Cloth;
import org.oaktag.garment.Cut;
import org.oaktag.garment.Edge;
import org.oaktag.garment.EdgeNames;
import org.oaktag.garment.End;
import org.oaktag.garment.Grainline;
import org.oaktag.garment.InnerLine;
import org.oaktag.garment.Name;
import org.oaktag.garment.Notch;
import org.oaktag.garment.Piece;
import org.oaktag.garment.Seam;
import org.oaktag.garment.SeamRule;
import org.oaktag.garment.SeamSide;
import org.oaktag.geometry.Path;
import org.oaktag.geometry.Point;
import org.oaktag.measure.Length;

/**
 * A straight band that is folded along its middle, drawn open, its outer half below: the edge that is sewn to the
 * skirt, and what laps at either end of it.
 *
 * @param underlap how far it goes on at its left end, mm
 * @param sewn how long the edge is that is sewn to the skirt, mm
 * @param overlap how far it goes on at its right end, mm
 * @param width how wide the folded band is, mm
 */
record StraightBand(double underlap, double sewn, double overlap, double width) {

    private static final Name LEFT_END = Name.of("left end");
    private static final Name RIGHT_END = Name.of("right end");
    private static final Name LEFT_INNER = Name.of("left end inner");
    private static final Name RIGHT_INNER = Name.of("right end inner");

    /** Returns the piece, marked at the places of a ring of another length. */
    Piece piece(WaistRing ring, double ringLength, Cloth cloth) {
        double length = underlap + sewn + overlap;
        double deep = 2 * width;
        List<Edge> edges = new ArrayList<>();
        edges.add(Edge.straight(EdgeNames.TOP, Point.of(0, 0), Point.of(length, 0)));
        edges.add(Edge.straight(RIGHT_INNER, Point.of(length, 0), Point.of(length, width)));
        edges.add(Edge.straight(RIGHT_END, Point.of(length, width), Point.of(length, deep)));
        if (overlap > 0) {
            edges.add(
                    Edge.straight(SkirtFinishNames.OVERLAP, Point.of(length, deep), Point.of(length - overlap, deep)));
        }
        edges.add(Edge.straight(EdgeNames.BOTTOM, Point.of(length - overlap, deep), Point.of(underlap, deep)));
        if (underlap > 0) {
            edges.add(Edge.straight(SkirtFinishNames.UNDERLAP, Point.of(underlap, deep), Point.of(0, deep)));
        }
        edges.add(Edge.straight(LEFT_END, Point.of(0, deep), Point.of(0, width)));
        edges.add(Edge.straight(LEFT_INNER, Point.of(0, width), Point.of(0, 0)));
        List<Notch> notches = new ArrayList<>();
        for (WaistRing.Place place : ring.places()) {
            notches.add(Notch.single(place.name(), EdgeNames.BOTTOM, End.END, place.along() * sewn / ringLength));
        }
        if (underlap > 0) {
            notches.add(Notch.single(ring.end(), EdgeNames.BOTTOM, End.END, 0));
        }
        if (overlap > 0) {
            notches.add(Notch.single(ring.end().with("over"), EdgeNames.BOTTOM, End.START, 0));
        }
        return Piece.of(
                        SkirtFinishNames.WAISTBAND,
                        edges,
                        new Grainline(Point.of(0.3 * length, 1.5 * width), Point.of(0.7 * length, 1.5 * width)),
                        Cut.single(),
                        cloth)
                .withNotches(notches)
                .withLines(List.of(new InnerLine(
                        SkirtFinishNames.BAND_FOLD,
                        InnerLine.Use.FOLD,
                        Path.polyline(Point.of(0, width), Point.of(length, width)))));
    }

    /** Returns the seams of both ends, each folded on itself. */
    List<Seam> endSeams(String refit) {
        Name own = SkirtFinishNames.WAISTBAND;
        return List.of(
                Seam.flat(
                        own.with("left end"), SeamSide.along(own, LEFT_END), SeamSide.against(own, LEFT_INNER), refit),
                Seam.flat(
                        own.with("right end"),
                        SeamSide.against(own, RIGHT_END),
                        SeamSide.along(own, RIGHT_INNER),
                        refit));
    }

    /** Returns the seam of both ends, which closes the band to a ring. */
    Seam closingSeam(String refit) {
        Name own = SkirtFinishNames.WAISTBAND;
        return Seam.flat(
                SkirtFinishNames.WAISTBAND_CLOSING_SEAM,
                SeamSide.along(own, RIGHT_INNER).then(SeamSide.along(own, RIGHT_END)),
                SeamSide.against(own, LEFT_INNER).then(SeamSide.against(own, LEFT_END)),
                refit);
    }

    /** Returns the seam of the inner half, which is turned in and stitched down on the outer one. */
    Seam foldSeam(String refit) {
        SeamSide outer = SeamSide.against(SkirtFinishNames.WAISTBAND, EdgeNames.BOTTOM);
        if (underlap > 0) {
            outer = SeamSide.against(SkirtFinishNames.WAISTBAND, SkirtFinishNames.UNDERLAP)
                    .then(outer);
        }
        if (overlap > 0) {
            outer = outer.then(SeamSide.against(SkirtFinishNames.WAISTBAND, SkirtFinishNames.OVERLAP));
        }
        return Seam.of(
                SkirtFinishNames.WAISTBAND_FOLD_SEAM,
                outer,
                SeamSide.along(SkirtFinishNames.WAISTBAND, EdgeNames.TOP),
                SeamRule.lapped(Length.ZERO),
                refit);
    }
}
