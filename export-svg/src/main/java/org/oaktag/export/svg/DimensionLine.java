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
        Vector along = from.equals(to) ? Vector.of(1, 0) : to.minus(from).unit();
        return new DimensionLine(from, to, text, along.leftNormal());
    }

    /** Returns the dimension on that side of what it measures that lies outside the outline, if one does. */
    DimensionLine beside(Outline outline) {
        Point middle = from.midpoint(to);
        boolean inside = outline.contains(middle.plus(aside.times(OFFSET)));
        boolean otherInside = outline.contains(middle.plus(aside.times(-OFFSET)));
        return inside && !otherInside ? new DimensionLine(from, to, text, aside.negated()) : this;
    }

    void draw(Figure figure, LabelPlacer placer) {
        Point a = from.plus(aside.times(OFFSET));
        Point b = to.plus(aside.times(OFFSET));
        extension(figure, placer, from, a);
        extension(figure, placer, to, b);
        Vector along = aside.rightNormal();
        String colour = LineType.DIMENSION.colour();
        boolean roomy = a.distanceTo(b) >= 3 * ARROW;
        Vector tail = along.times(roomy ? 0 : TAIL);
        line(figure, placer, a.plus(tail.negated()), b.plus(tail));
        figure.add(Fill.arrowhead(a, roomy ? along.negated() : along, ARROW, colour));
        figure.add(Fill.arrowhead(b, roomy ? along : along.negated(), ARROW, colour));
        write(figure, placer, a.midpoint(b), along, a.distanceTo(b) / 2 + tail.length());
    }

    private static void extension(Figure figure, LabelPlacer placer, Point foot, Point end) {
        Vector out = end.minus(foot).unit();
        line(figure, placer, foot.plus(out.times(GAP)), end.plus(out.times(OVERSHOOT)));
    }

    private void write(Figure figure, LabelPlacer placer, Point middle, Vector along, double half) {
        TextBlock block = new TextBlock(List.of(new TextLine(text, Font.SMALL, Colours.AMOUNT)));
        boolean upsideDown = along.x() < -1e-9 || (Math.abs(along.x()) <= 1e-9 && along.y() > 0);
        Vector reading = upsideDown ? along.negated() : along;
        List<Box> places = new ArrayList<>();
        double off = block.height() / 2 + LabelPlacer.CLEARANCE + 0.2;
        for (double further : List.of(0.0, 3.0, 7.0)) {
            for (Vector side : List.of(aside, aside.negated())) {
                Point center = middle.plus(side.times(off + further));
                places.add(new Box(center, block.width(), block.height(), reading.angle()));
                places.add(new Box(center, block.width(), block.height(), 0));
            }
            for (int end : new int[] {1, -1}) {
                double reach = half + block.width() / 2 + LabelPlacer.CLEARANCE + 0.2 + further;
                places.add(
                        new Box(middle.plus(along.times(end * reach)), block.width(), block.height(), reading.angle()));
            }
        }
        Bounds around = Bounds.of(middle).expanded(SEARCH);
        placer.first(places)
                .or(() -> placer.nearest(middle, around, block.width(), block.height(), 0))
                .ifPresent(box -> figure.add(block.in(box)));
    }

    private static void line(Figure figure, LabelPlacer placer, Point from, Point to) {
        Path path = Path.polyline(from, to);
        figure.add(Stroke.of(LineType.DIMENSION, path));
        placer.avoid(path);
    }
}
