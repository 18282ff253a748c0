package org.oaktag.laws.adjust;

import static org.oaktag.measure.Percent.percent;

import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.Provide;
import net.jqwik.api.domains.DomainContextBase;
import org.oaktag.adjust.Place;
import org.oaktag.garment.Cloth;
import org.oaktag.garment.Cut;
import org.oaktag.garment.Edge;
import org.oaktag.garment.End;
import org.oaktag.garment.Grainline;
import org.oaktag.garment.Name;
import org.oaktag.garment.Notch;
import org.oaktag.garment.Piece;
import org.oaktag.geometry.Cubic;
import org.oaktag.geometry.Curve;
import org.oaktag.geometry.Line;
import org.oaktag.geometry.Path;
import org.oaktag.geometry.Point;
import org.oaktag.geometry.Vector;

/**
 * Pieces of four or five edges, straight and curved, round the middle of a sheet, and places on two edges that do not
 * touch.
 */
public final class PieceArbitraries extends DomainContextBase {

    static final Cloth CLOTH = Cloth.knit("any cloth", percent(20));

    private static final List<String> EDGES = List.of("one", "two", "three", "four", "five");

    /** A piece, and a place on its first edge and on its third. */
    record Crossed(Piece piece, Place from, Place to) {}

    /** For jqwik. */
    public PieceArbitraries() {}

    @Provide
    Arbitrary<Crossed> crossed() {
        return Combinators.combine(pieces(), shares(), shares())
                .as((piece, from, to) ->
                        new Crossed(piece, Place.share(Name.of("one"), from), Place.share(Name.of("three"), to)));
    }

    @Provide
    Arbitrary<Piece> pieces() {
        Arbitrary<List<Double>> radii =
                Arbitraries.doubles().between(180, 220).list().ofMinSize(4).ofMaxSize(5);
        Arbitrary<List<Double>> bows = Arbitraries.oneOf(
                        Arbitraries.just(0.0), Arbitraries.doubles().between(-0.06, 0.25))
                .list()
                .ofSize(5);
        Arbitrary<Double> turn = Arbitraries.doubles().between(0, 1.5);
        return Combinators.combine(radii, bows, turn).as(PieceArbitraries::piece);
    }

    private static Arbitrary<Double> shares() {
        return Arbitraries.doubles().between(0.2, 0.8);
    }

    private static Piece piece(List<Double> radii, List<Double> bows, double turn) {
        int count = radii.size();
        List<Point> corners = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            corners.add(Point.of(300, 300).plus(Vector.polar(radii.get(i), turn + 2 * Math.PI * i / count)));
        }
        List<Edge> edges = new ArrayList<>();
        List<Notch> notches = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            Name name = Name.of(EDGES.get(i));
            Path path = Path.of(side(corners.get(i), corners.get((i + 1) % count), bows.get(i)));
            edges.add(new Edge(name, path));
            notches.add(Notch.single(Name.of("mark"), name, End.START, path.length() * 0.1));
            notches.add(Notch.paired(Name.of("other mark"), name, End.END, path.length() * 0.1));
        }
        return Piece.of(
                        Name.of("panel"),
                        edges,
                        new Grainline(Point.of(300, 250), Point.of(300, 350)),
                        Cut.single(),
                        CLOTH)
                .withNotches(notches);
    }

    /** Bowed outwards by a share of its length, lopsided so that nothing depends on symmetry. */
    private static Curve side(Point from, Point to, double bow) {
        if (bow == 0) {
            return new Line(from, to);
        }
        Vector chord = to.minus(from);
        Vector out = chord.leftNormal().times(bow);
        return Cubic.of(
                from,
                from.plus(chord.times(0.3)).plus(out),
                from.plus(chord.times(0.6)).plus(out.times(0.8)),
                to);
    }
}
