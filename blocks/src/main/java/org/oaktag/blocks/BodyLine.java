package org.oaktag.blocks;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.oaktag.PatternException;
import org.oaktag.body.BodyMeasure;
import org.oaktag.garment.EdgeNames;
import org.oaktag.garment.Garment;
import org.oaktag.garment.Name;
import org.oaktag.garment.Piece;
import org.oaktag.geometry.Curve;
import org.oaktag.geometry.Path;
import org.oaktag.geometry.Point;
import org.oaktag.geometry.Transform;
import org.oaktag.measure.Length;

/**
 * A line across front and back at which both can be lengthened or shortened.
 *
 * <pre>{@code
 * Garment longer = block.adjust(lengthenBody(BodyLine.WAIST, cm(3)));   // at the waist, not at the hem
 * }</pre>
 */
public enum BodyLine {
    /** Across the pitch points of the armhole: the armhole grows, and the side seams move down as they are. */
    ARMHOLE("armhole line") {
        @Override
        public double level(Garment garment, Piece piece) {
            Piece half = TopPieces.withArmhole(garment, piece.name());
            return ArmholeShape.pitch(half.path(TopEdges.ARMHOLE)).y();
        }

        @Override
        Piece stretched(Piece piece, double level, double by) {
            return piece.redrawn(Map.of(TopEdges.ARMHOLE, TopArmhole.withPitchLowered(piece, by)));
        }

        @Override
        double run(Piece piece, double level) {
            List<Curve> curves = piece.path(TopEdges.ARMHOLE).curves();
            return level - curves.get(curves.size() - 2).start().y();
        }

        @Override
        Path side(Piece piece, double level, double by) {
            return piece.path(EdgeNames.SIDE).transformed(Transform.translation(0, by));
        }
    },
    /** Across the waist of the body: its back waist length below the nape. */
    WAIST("waist line") {
        @Override
        public double level(Garment garment, Piece piece) {
            return NeckShape.backRise(garment.wearer().measure(BodyMeasure.NECK_BASE_GIRTH.asName()))
                    + garment.wearer()
                            .measure(BodyMeasure.BACK_WAIST_LENGTH.asName())
                            .mm();
        }

        @Override
        Piece stretched(Piece piece, double level, double by) {
            return piece;
        }

        @Override
        double run(Piece piece, double level) {
            List<Curve> curves = piece.path(EdgeNames.SIDE).curves();
            Curve crossed = curves.get(crossing(piece, curves, level));
            return crossed.end().y() - crossed.start().y();
        }

        @Override
        Path side(Piece piece, double level, double by) {
            List<Curve> curves = new ArrayList<>(piece.path(EdgeNames.SIDE).curves());
            int crossing = crossing(piece, curves, level);
            Curve crossed = curves.get(crossing);
            Transform down = Transform.translation(0, by);
            Path longer = Redraw.between(Path.of(crossed), crossed.start(), down.apply(crossed.end()));
            List<Curve> all = new ArrayList<>(curves.subList(0, crossing));
            all.addAll(longer.curves());
            curves.subList(crossing + 1, curves.size()).forEach(curve -> all.add(curve.transformed(down)));
            return Path.of(all);
        }
    };

    /** The shortest run, in millimetres, that may be left of what crosses the line. */
    private static final double LEAST_RUN = 30;

    private static final double MOST = 400;

    private final String label;

    BodyLine(String label) {
        this.label = label;
    }

    /** Returns what the line is called: {@code "armhole line"}. */
    public String label() {
        return label;
    }

    /**
     * Returns the level of the line on a piece.
     *
     * @param piece a front or a back of the garment
     * @throws PatternException if the line is the waist's and the wearer's back waist length is not known, or it is the
     *     armhole's and the piece has no whole armhole
     */
    public abstract double level(Garment garment, Piece piece);

    /** Returns the piece with what the line crosses above the side seam redrawn. */
    abstract Piece stretched(Piece piece, double level, double by);

    /** Returns how far down what the line crosses runs, in millimetres. */
    abstract double run(Piece piece, double level);

    /** Returns the side seam of a piece lengthened at the line. */
    abstract Path side(Piece piece, double level, double by);

    /**
     * Returns the garment lengthened at the line: what lies below moves down, and the curve of armhole or side seam
     * that crosses it is redrawn with the directions that it had at its ends.
     *
     * @param by how far, in millimetres; negative to shorten
     * @throws PatternException if the line does not cross the side seam, less than 30 mm would be left of what crosses
     *     it, or a side seam does not run down to the hem
     */
    public Garment lengthened(Garment garment, double by) {
        double least = Double.NEGATIVE_INFINITY;
        for (Name name : TopBody.HALVES) {
            Piece piece = garment.piece(name);
            least = Math.max(least, LEAST_RUN - run(piece, level(garment, piece)));
        }
        Garment stretched = garment;
        Map<Name, Path> sides = new HashMap<>();
        Map<Name, Point> centres = new HashMap<>();
        for (Name name : TopBody.HALVES) {
            Piece piece = garment.piece(name);
            double level = level(garment, piece);
            check(piece, by, least);
            stretched = stretched.withPiece(stretched(piece, level, by));
            Path side = side(piece, level, by);
            if (!side.startDirection().equals(piece.path(EdgeNames.SIDE).startDirection())) {
                TopPieces.withArmhole(garment, name);
            }
            sides.put(name, side);
            Point centre = TopBody.centreEnd(piece);
            centres.put(name, Point.of(centre.x(), centre.y() + by));
        }
        return TopBody.redrawn(stretched, sides, centres);
    }

    private static int crossing(Piece piece, List<Curve> curves, double level) {
        double top = curves.get(0).start().y();
        double bottom = curves.get(curves.size() - 1).end().y();
        if (level <= top || level > bottom) {
            throw PatternException.of(
                    "waist line of the " + piece.name(),
                    "must cross the side seam, which runs from "
                            + Length.mm(top).text() + " to " + Length.mm(bottom).text() + " below the side neck point",
                    Length.mm(level).text(),
                    "lengthen it at the hem instead");
        }
        int crossing = 0;
        while (curves.get(crossing).end().y() < level) {
            crossing++;
        }
        return crossing;
    }

    private void check(Piece piece, double by, double least) {
        if (by < least || by > MOST) {
            throw PatternException.of(
                    label + " of the " + piece.name(),
                    "lets the body be lengthened by "
                            + Length.mm(least).roundedUp().text() + " to "
                            + Length.mm(MOST).text(),
                    Length.mm(by).text(),
                    "");
        }
    }
}
