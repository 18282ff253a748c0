package org.oaktag.export.svg;

import java.util.ArrayList;
import java.util.List;
import org.oaktag.export.drawing.Box;
import org.oaktag.export.drawing.Colours;
import org.oaktag.export.drawing.Figure;
import org.oaktag.export.drawing.Fill;
import org.oaktag.export.drawing.Font;
import org.oaktag.export.drawing.LineType;
import org.oaktag.export.drawing.Stroke;
import org.oaktag.export.drawing.TextBlock;
import org.oaktag.export.drawing.TextLine;
import org.oaktag.export.layout.LabelPlacer;
import org.oaktag.geometry.Bounds;
import org.oaktag.geometry.Outline;
import org.oaktag.geometry.Path;
import org.oaktag.geometry.Point;
import org.oaktag.geometry.Vector;

/**
 * A dimension after ISO 129-1: a line parallel to what it measures, extension lines, arrowheads that point outwards, or
 * inwards from outside where there is no room, and the text beside it.
 *
 * @param from one end of what is measured, on the page
 * @param to the other end
 * @param text what is written
 * @param aside the direction in which the dimension line lies off what it measures, of length 1
 */
record DimensionLine(Point from, Point to, String text, Vector aside) {

    private static final double OFFSET = 7;
    private static final double GAP = 1;
    private static final double OVERSHOOT = 1.5;
    private static final double ARROW = 2.5;
    private static final double TAIL = 5;
    private static final double SEARCH = 40;

    static DimensionLine between(Point from, Point to, String text) {
        return new DimensionLine(from, to, text, along(from, to).leftNormal());
    }

    private static Vector along(Point from, Point to) {
        return from.equals(to) ? Vector.of(1, 0) : to.minus(from).unit();
    }

    /** Returns the dimension on that side of what it measures that lies outside the outline, if one does. */
    DimensionLine beside(Outline outline) {
        Point middle = from.midpoint(to);
        boolean inside = outline.contains(middle.plus(aside.times(OFFSET)));
        boolean otherInside = outline.contains(middle.plus(aside.times(-OFFSET)));
        return inside && !otherInside ? new DimensionLine(from, to, text, aside.negated()) : this;
    }

    /** Draws everything but the text, which comes last, when no line can run through it any more. */
    void drawLines(Figure figure, LabelPlacer placer) {
        Point a = shifted(from);
        Point b = shifted(to);
        extension(figure, placer, from, a);
        extension(figure, placer, to, b);
        Vector along = along(from, to);
        Vector tail = along.times(tail());
        line(figure, placer, a.plus(tail.negated()), b.plus(tail));
        boolean outside = tail() > 0;
        String colour = LineType.DIMENSION.colour();
        figure.add(Fill.arrowhead(a, outside ? along : along.negated(), ARROW, colour));
        figure.add(Fill.arrowhead(b, outside ? along.negated() : along, ARROW, colour));
    }

    private Point shifted(Point end) {
        return end.plus(aside.times(OFFSET));
    }

    /** How far the line runs on beyond both ends, to carry arrowheads for which there is no room between them. */
    private double tail() {
        return from.distanceTo(to) >= 3 * ARROW ? 0 : TAIL;
    }

    private static void extension(Figure figure, LabelPlacer placer, Point foot, Point end) {
        Vector out = end.minus(foot).unit();
        line(figure, placer, foot.plus(out.times(GAP)), end.plus(out.times(OVERSHOOT)));
    }

    /** Writes the text where there is room near the line. */
    void drawText(Figure figure, LabelPlacer placer) {
        Vector along = along(from, to);
        Point middle = shifted(from).midpoint(shifted(to));
        double half = from.distanceTo(to) / 2 + tail();
        TextBlock block = new TextBlock(List.of(new TextLine(text, Font.SMALL, Colours.AMOUNT)));
        double angle = Box.readable(along);
        List<Box> places = new ArrayList<>();
        double off = block.height() / 2 + LabelPlacer.CLEARANCE + 0.2;
        for (double further : List.of(0.0, 3.0, 7.0)) {
            for (Vector side : List.of(aside, aside.negated())) {
                Point center = middle.plus(side.times(off + further));
                places.add(new Box(center, block.width(), block.height(), angle));
                places.add(new Box(center, block.width(), block.height(), 0));
            }
            for (int end : new int[] {1, -1}) {
                double reach = half + block.width() / 2 + LabelPlacer.CLEARANCE + 0.2 + further;
                places.add(new Box(middle.plus(along.times(end * reach)), block.width(), block.height(), angle));
            }
        }
        Bounds around = Bounds.of(middle).expanded(SEARCH);
        placer.first(places.stream())
                .or(() -> placer.nearest(middle, around, block.width(), block.height(), 0))
                .ifPresent(box -> figure.add(block.in(box)));
    }

    private static void line(Figure figure, LabelPlacer placer, Point from, Point to) {
        Path path = Path.polyline(from, to);
        figure.add(Stroke.of(LineType.DIMENSION, path));
        placer.avoid(path);
    }
}
