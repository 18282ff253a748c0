package org.oaktag.export.drawing;

import java.util.ArrayList;
import java.util.List;
import org.oaktag.geometry.Bounds;
import org.oaktag.geometry.Point;
import org.oaktag.geometry.Vector;

/**
 * Lettering in its place. Immutable.
 *
 * <pre>{@code
 * Label label = TextBlock.of("front", Font.NAME).in(new Box(Point.of(100, 200), 60, 12, 0));
 * }</pre>
 *
 * @param block what it says
 * @param box the room it takes
 * @param align how its lines lie in the box
 */
public record Label(TextBlock block, Box box, Align align) implements Ink {

    /** How lines lie in their box. */
    public enum Align {
        /** Flush left. */
        START(-0.5),
        /** Centred. */
        MIDDLE(0),
        /** Flush right. */
        END(0.5);

        /** How far the anchor lies right of the middle, in widths. */
        private final double share;

        Align(double share) {
            this.share = share;
        }
    }

    /**
     * One line in its place. Immutable.
     *
     * @param line what it says
     * @param at where its baseline begins, has its middle or ends, as the label is aligned
     */
    public record Placed(TextLine line, Point at) {}

    /** Returns the label with its lines aligned in another way. */
    public Label aligned(Align other) {
        return new Label(block, box, other);
    }

    @Override
    public Bounds bounds() {
        return box.bounds();
    }

    /** Returns each line with the point of its baseline that its alignment speaks of. */
    public List<Placed> placed() {
        Vector along = Vector.polar(1, box.angle());
        Vector down = along.rightNormal();
        List<Placed> placed = new ArrayList<>();
        double fromTop = 0;
        for (TextLine line : block.lines()) {
            placed.add(new Placed(
                    line,
                    box.center()
                            .plus(along.times(align.share * box.width()))
                            .plus(down.times(fromTop + line.font().baseline() - block.height() / 2))));
            fromTop += line.font().lineHeight();
        }
        return placed;
    }
}
