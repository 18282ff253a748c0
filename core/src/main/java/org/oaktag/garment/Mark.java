package org.oaktag.garment;

import java.util.Objects;
import org.oaktag.geometry.Point;
import org.oaktag.measure.Length;

/**
 * A point marked inside a piece, such as the place of an eyelet. Immutable.
 *
 * <pre>{@code
 * Mark badge = Mark.of(Name.of("name badge"), Point.of(80, 180));
 * Piece marked = front.withMarks(List.of(badge));
 * }</pre>
 *
 * @param name what it marks
 * @param use what the maker does there
 * @param point where, in the piece's own millimetres
 */
public record Mark(Name name, Use use, Point point) {
    /**
     * How far inside its corner a hole is drilled, so that what is laid on covers it: an eighth of an inch and the
     * drill (common practice).
     */
    public static final Length INSIDE_CORNER = Length.mm(4);

    /** Refuses null. */
    public Mark {
        Objects.requireNonNull(name, "name");
        Objects.requireNonNull(use, "use");
        Objects.requireNonNull(point, "point");
    }

    /** What the maker does at a mark. */
    public enum Use {
        /** It is marked on the cloth with chalk or a thread. */
        POINT,
        /** It is drilled through the lay, {@link Mark#INSIDE_CORNER} inside the corner of what is laid on there. */
        DRILL,
        /** An eyelet is set. */
        EYELET,
        /** A buttonhole is sewn, level on paper. */
        BUTTONHOLE
    }

    /** Returns a point that is marked with chalk or a thread. */
    public static Mark of(Name name, Point point) {
        return new Mark(name, Use.POINT, point);
    }

    /** Returns the same mark in another place. */
    public Mark at(Point other) {
        return new Mark(name, use, other);
    }

    /** Returns the same mark under another name. */
    public Mark renamed(Name other) {
        return new Mark(other, use, point);
    }
}
