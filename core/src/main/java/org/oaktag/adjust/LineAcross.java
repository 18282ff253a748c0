package org.oaktag.adjust;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.oaktag.PatternException;
import org.oaktag.garment.Edge;
import org.oaktag.garment.End;
import org.oaktag.garment.Piece;
import org.oaktag.geometry.Crossing;
import org.oaktag.geometry.Crossings;
import org.oaktag.geometry.Cubic;
import org.oaktag.geometry.Line;
import org.oaktag.geometry.Path;
import org.oaktag.geometry.Point;
import org.oaktag.geometry.Vector;
import org.oaktag.measure.Length;

/**
 * A line along which a piece is slashed or split, from one place on its outline to another. It has a direction, so that
 * a part of the piece lies on its left and another on its right. A closed family of immutable values.
 *
 * <pre>{@code
 * LineAcross straight = LineAcross.straight(Place.share(SIDE, 0.2), Place.share(CENTRE, 0.6));
 * LineAcross curved = LineAcross.bowed(Place.share(SIDE, 0.2), Place.share(CENTRE, 0.6), mm(12));
 * }</pre>
 */
public sealed interface LineAcross {

    /**
     * Lays the line on a piece.
     *
     * @throws PatternException if the piece lacks an edge or a place, or the line does not run from outline to outline
     */
    LaidLine on(Piece piece);

    /** Returns the straight line from place to place. */
    static LineAcross straight(Place from, Place to) {
        return new Straight(from, to);
    }

    /** Returns a curve from place to place whose middle lies so far to the left of the straight line. */
    static LineAcross bowed(Place from, Place to, Length bow) {
        return new Bowed(from, to, bow);
    }

    /** Returns a curve from place to place that is square to the edges at both ends. */
    static LineAcross square(Place from, Place to) {
        return new Square(from, to);
    }

    /** Returns the part inside the piece of a line drawn right across it. */
    static LineAcross drawn(Path path) {
        return new Drawn(path);
    }

    /**
     * Straight from place to place.
     *
     * @param from where it begins
     * @param to where it ends
     */
    record Straight(Place from, Place to) implements LineAcross {
        /** Refuses null. */
        public Straight {
            Objects.requireNonNull(from, "from");
            Objects.requireNonNull(to, "to");
        }

        @Override
        public LaidLine on(Piece piece) {
            return new LaidLine(Path.polyline(from.on(piece), to.on(piece)), from, to);
        }
    }

    /**
     * A curve whose middle lies off the straight line; the curve is a parabola.
     *
     * @param from where it begins
     * @param to where it ends
     * @param bow how far the middle lies to the left of the straight line, negative for the right
     */
    record Bowed(Place from, Place to, Length bow) implements LineAcross {

        /** The controls of a cubic lie 4/3 as far off the chord as its middle does. */
        private static final double CONTROL = 4.0 / 3;

        /** Refuses null. */
        public Bowed {
            Objects.requireNonNull(from, "from");
            Objects.requireNonNull(to, "to");
            Objects.requireNonNull(bow, "bow");
        }

        @Override
        public LaidLine on(Piece piece) {
            Point start = from.on(piece);
            Point end = to.on(piece);
            Vector chord = chord(piece, start, end);
            Vector off = chord.unit().leftNormal().times(CONTROL * bow.mm());
            Cubic curve = Cubic.of(
                    start,
                    start.plus(chord.times(1.0 / 3)).plus(off),
                    start.plus(chord.times(2.0 / 3)).plus(off),
                    end);
            return new LaidLine(Path.of(curve), from, to);
        }
    }

    /**
     * A curve that is square to the edges at both ends, straight where that is square already.
     *
     * @param from where it begins
     * @param to where it ends
     */
    record Square(Place from, Place to) implements LineAcross {

        private static final double STRAIGHT = 1e-12;

        /** Refuses null. */
        public Square {
            Objects.requireNonNull(from, "from");
            Objects.requireNonNull(to, "to");
        }

        @Override
        public LaidLine on(Piece piece) {
            Point start = from.on(piece);
            Point end = to.on(piece);
            Vector chord = chord(piece, start, end);
            Vector inward = direction(piece, from).rightNormal();
            Vector outward = direction(piece, to).leftNormal();
            double handle = chord.length() / 3;
            boolean straight = Math.abs(inward.cross(chord.unit())) <= STRAIGHT
                    && Math.abs(outward.cross(chord.unit())) <= STRAIGHT;
            Path path = straight
                    ? Path.of(new Line(start, end))
                    : Path.of(Cubic.hermite(start, inward.times(handle), end, outward.times(handle)));
            return new LaidLine(path, from, to);
        }

        private static Vector direction(Piece piece, Place place) {
            Path edge = piece.path(place.edge());
            double at = place.distanceOn(piece);
            return at <= 0 ? edge.startDirection() : edge.directionAt(Math.min(at, edge.length()));
        }
    }

    /**
     * A line drawn on paper, of which the part inside the piece counts.
     *
     * @param path where it runs; it crosses the outline twice, or begins and ends on it
     */
    record Drawn(Path path) implements LineAcross {

        private static final double SHORTEST = 1e-3;

        /** Refuses null. */
        public Drawn {
            Objects.requireNonNull(path, "path");
        }

        private record Hit(double along, Place place) {}

        @Override
        public LaidLine on(Piece piece) {
            List<Hit> hits = new ArrayList<>();
            for (Edge edge : piece.edges()) {
                for (Crossing crossing : Crossings.between(path, edge.path())) {
                    double along = crossing.first();
                    // At a corner two edges are hit at once.
                    if (hits.stream().noneMatch(hit -> Math.abs(hit.along() - along) < SHORTEST)) {
                        hits.add(new Hit(along, Place.along(edge.name(), End.START, Length.mm(crossing.second()))));
                    }
                }
            }
            if (hits.size() != 2) {
                throw PatternException.of(
                        "line across piece '" + piece.name() + "'",
                        "must cross the outline at two places",
                        "" + hits.size(),
                        hits.size() < 2 ? "draw it right across the piece" : "split one part at a time");
            }
            boolean forwards = hits.get(0).along() < hits.get(1).along();
            Hit first = hits.get(forwards ? 0 : 1);
            Hit last = hits.get(forwards ? 1 : 0);
            return new LaidLine(path.sub(first.along(), last.along()), first.place(), last.place());
        }
    }

    private static Vector chord(Piece piece, Point start, Point end) {
        if (start.equals(end)) {
            throw PatternException.of(
                    "line across piece '" + piece.name() + "'",
                    "must run between two places of the outline",
                    "one that ends where it starts",
                    "");
        }
        return end.minus(start);
    }
}
