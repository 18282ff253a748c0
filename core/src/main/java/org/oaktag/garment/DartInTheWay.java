package org.oaktag.garment;

import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;
import org.oaktag.PatternException;
import org.oaktag.geometry.Point;

/**
 * Thrown by a step that needs an edge in one stretch where a dart parts it. Whoever applies the step turns the dart
 * into another edge meanwhile, so that a step of one's own works on pieces with darts by asking this first.
 *
 * <pre>{@code
 * DartInTheWay.requireWhole(block.piece(FRONT), SIDE, HEM);   // neither has a dart in it
 * }</pre>
 */
public final class DartInTheWay extends PatternException {

    private static final long serialVersionUID = 1L;

    /** A point nearer than this to a leg, in millimetres, lies on it. */
    private static final double ON_LEG = 1e-6;

    private final String piece;
    private final String dart;

    private DartInTheWay(Name piece, Name dart, String rule) {
        super("the " + piece, rule, "dart '" + dart + "' there", "move the dart into another edge first");
        this.piece = piece.value();
        this.dart = dart.value();
    }

    /**
     * Checks that no dart lies in some edges of a piece, nor at a corner of one.
     *
     * @throws DartInTheWay if one does
     */
    public static void requireWhole(Piece piece, Name... edges) {
        List<Name> whole = List.of(edges);
        for (Dart each : Dart.all(piece)) {
            Name before = hostBefore(piece, each);
            Name after = hostAfter(piece, each);
            for (Name edge : whole) {
                if (edge.equals(before) || edge.equals(after)) {
                    throw new DartInTheWay(
                            piece.name(), each.name(), "must have its " + edge + " in one stretch for this step");
                }
            }
        }
    }

    /**
     * Checks that a point where a line crosses the outline of a piece lies on no leg of a dart.
     *
     * @throws DartInTheWay if it does
     */
    public static void requireOffLegs(Piece piece, Point crossed) {
        Objects.requireNonNull(crossed, "crossed");
        for (Dart each : Dart.all(piece)) {
            boolean onLeg = Stream.of(Dart.legA(each.name()), Dart.legB(each.name()))
                    .anyMatch(leg -> piece.path(leg).nearest(crossed).distance() < ON_LEG);
            if (onLeg) {
                throw new DartInTheWay(piece.name(), each.name(), "must have no dart across the line of this step");
            }
        }
    }

    private static Name hostBefore(Piece piece, Dart dart) {
        return Dart.whole(piece.before(Dart.legA(dart.name())).name());
    }

    private static Name hostAfter(Piece piece, Dart dart) {
        return Dart.whole(piece.after(Dart.legB(dart.name())).name());
    }

    /** Returns the piece. */
    public Name piece() {
        return Name.of(piece);
    }

    /** Returns the dart. */
    public Name dart() {
        return Name.of(dart);
    }
}
