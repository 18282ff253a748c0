package org.oaktag.skirt;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.oaktag.PatternException;
import org.oaktag.garment.Aspect;
import org.oaktag.garment.Dart;
import org.oaktag.garment.Edge;
import org.oaktag.garment.EdgeNames;
import org.oaktag.garment.EdgeRef;
import org.oaktag.garment.End;
import org.oaktag.garment.Garment;
import org.oaktag.garment.InnerLine;
import org.oaktag.garment.Name;
import org.oaktag.garment.Notch;
import org.oaktag.garment.Piece;
import org.oaktag.garment.Seam;
import org.oaktag.garment.SeamSide;
import org.oaktag.geometry.Crossings;
import org.oaktag.geometry.Path;
import org.oaktag.geometry.Point;
import org.oaktag.measure.Length;

/** The body of a skirt as its two halves, front and back, from whose sides and hems steps draw new ones. */
final class SkirtBody {

    static final List<Name> HALVES = List.of(SkirtNames.FRONT, SkirtNames.BACK);

    /** A line that ends as near to the hem as this, mm, ends on it. */
    private static final double SAME = 1e-6;

    private SkirtBody() {}

    /**
     * Returns front and back.
     *
     * @throws PatternException if the garment has no front or back with side, hem and centre in a row; the message says
     *     which step has to come first
     */
    static List<Piece> halves(Garment garment) {
        List<Piece> halves = new ArrayList<>();
        for (Name name : HALVES) {
            Piece piece = garment.findPiece(name)
                    .filter(SkirtBody::isHalf)
                    .orElseThrow(() -> PatternException.of(
                            "skirt",
                            "must have a " + name + " with a side, a hem and a centre, one after the other",
                            garment.pieces().stream()
                                    .map(each -> each.name().value())
                                    .toList()
                                    .toString(),
                            "take this step before those that cut the skirt up or finish its edges"));
            halves.add(piece);
        }
        return halves;
    }

    /** Returns at which side of the garment a half lies. */
    static Aspect aspect(Name half) {
        return half.equals(SkirtNames.BACK) ? Aspect.BACK : Aspect.FRONT;
    }

    private static boolean isHalf(Piece piece) {
        return piece.hasEdge(EdgeNames.SIDE)
                && piece.hasEdge(EdgeNames.CENTRE)
                && piece.after(EdgeNames.SIDE).name().equals(EdgeNames.HEM)
                && piece.after(EdgeNames.HEM).name().equals(EdgeNames.CENTRE);
    }

    /** Refuses a skirt whose front or back is not cut on the fold of its centre. */
    static void requireFolds(Garment garment) {
        for (Piece half : halves(garment)) {
            if (!half.isOnFold(EdgeNames.CENTRE)) {
                throw PatternException.of(
                        half.name() + " of the skirt",
                        "must be cut on the fold of its centre",
                        half.cut().instruction(),
                        "take this step first");
            }
        }
    }

    /**
     * Returns the side of a half.
     *
     * @throws PatternException if the hip is not notched on it
     */
    static SideLine side(Piece half) {
        Path side = half.path(EdgeNames.SIDE);
        double hip = half.notch(EdgeNames.SIDE, SkirtNames.HIP_NOTCH)
                .map(notch -> notch.fromStart(side.length()))
                .orElseThrow(() -> PatternException.of(
                        "side of the " + half.name(),
                        "must be notched at the hip, from which down it is drawn",
                        "no notch '" + SkirtNames.HIP_NOTCH + "'",
                        "take this step before those that draw another skirt"));
        return new SideLine(side, hip);
    }

    static HalfHem hem(Piece half, Path side) {
        Path centre = half.path(EdgeNames.CENTRE);
        return new HalfHem(side.end(), side.endDirection(), centre.start(), centre.startDirection());
    }

    /**
     * What was made of the sides.
     *
     * @param longer by how much both are longer so that the hem is fair; negative for shorter
     */
    record Hemmed(Garment garment, Length longer) {}

    /**
     * Draws new sides, in the order of the halves, and hems that run square from them to the centres. Where no fair hem
     * does, both sides are made longer or shorter by as much as it takes. Straight inner lines that ran down to a hem
     * do so again.
     *
     * @param before the skirt whose lines ran to its hem
     */
    static Hemmed withSides(Garment before, Garment garment, List<SideLine> sides) {
        double longer = 0;
        for (int i = 0; i < HALVES.size(); i++) {
            double lacking =
                    hem(garment.piece(HALVES.get(i)), sides.get(i).path()).lacking();
            longer = Math.abs(lacking) > Math.abs(longer) ? lacking : longer;
        }
        Garment hemmed = garment;
        for (int i = 0; i < HALVES.size(); i++) {
            Path side = sides.get(i).longer(longer).path();
            Piece drawn = redrawn(garment.piece(HALVES.get(i)), side);
            hemmed = hemmed.withPiece(drawn.withLines(toHem(before.piece(HALVES.get(i)), drawn)));
        }
        return new Hemmed(hemmed, Length.mm(longer));
    }

    private static List<InnerLine> toHem(Piece before, Piece drawn) {
        Path was = before.path(EdgeNames.HEM);
        Path hem = drawn.path(EdgeNames.HEM);
        List<InnerLine> lines = new ArrayList<>();
        for (InnerLine line : drawn.lines()) {
            Path path = line.path();
            boolean reached =
                    path.curves().size() == 1 && was.nearest(path.end()).distance() < SAME;
            Path longer = reached
                    ? Crossings.ofLine(hem, path.start(), path.endDirection()).stream()
                            .findFirst()
                            .map(met -> Path.polyline(path.start(), met.point()))
                            .orElse(path)
                    : path;
            lines.add(new InnerLine(line.name(), line.use(), longer));
        }
        return lines;
    }

    private static Piece redrawn(Piece half, Path side) {
        Path closed = side.withEnds(half.path(EdgeNames.SIDE).start(), side.end());
        return half.redrawn(
                Map.of(EdgeNames.SIDE, closed, EdgeNames.HEM, hem(half, closed).drawn()));
    }

    /** Returns a half whose centre ends so much lower; its hem is still where it was. */
    static Piece withCentre(Piece half, double lower) {
        Path centre = half.path(EdgeNames.CENTRE);
        Point end = centre.start().plus(centre.startDirection().times(-lower));
        Path hem = half.path(EdgeNames.HEM);
        return half.redrawn(Map.of(
                EdgeNames.CENTRE, Path.polyline(end, centre.end()), EdgeNames.HEM, Path.polyline(hem.start(), end)));
    }

    /** Returns the stretches of an edge of a piece, parted by darts. */
    static List<Edge> stretches(Piece piece, Name edge) {
        return piece.edges().stream()
                .filter(each -> Dart.whole(each.name()).equals(edge))
                .toList();
    }

    /** Returns how long an edge of a piece is, its darts sewn, mm. */
    static double sewn(Piece piece, Name edge) {
        return stretches(piece, edge).stream()
                .mapToDouble(each -> each.path().length())
                .sum();
    }

    /** Returns how long the waist of a piece is, its darts sewn, mm. */
    static double sewnWaist(Piece piece) {
        return sewn(piece, SkirtNames.WAIST);
    }

    /** Returns the waist of a piece as a side of a seam, its darts left out. */
    static SeamSide waist(Piece piece) {
        return new SeamSide(stretches(piece, SkirtNames.WAIST).stream()
                .map(edge -> new SeamSide.Run(EdgeRef.of(piece.name(), edge.name()), false))
                .toList());
    }

    /** Returns the side seam of a front and a back. */
    static Seam sideSeam() {
        return Seam.flat(
                        SkirtNames.SIDE_SEAM,
                        SeamSide.along(SkirtNames.FRONT, EdgeNames.SIDE),
                        SeamSide.along(SkirtNames.BACK, EdgeNames.SIDE),
                        "redraw both sides alike")
                .smooth();
    }

    static Notch hipNotch(double fromWaist) {
        return Notch.single(SkirtNames.HIP_NOTCH, EdgeNames.SIDE, End.START, fromWaist);
    }
}
