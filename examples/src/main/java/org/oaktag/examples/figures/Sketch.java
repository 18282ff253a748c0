package org.oaktag.examples.figures;

import java.util.ArrayList;
import java.util.List;
import org.oaktag.export.drawing.Box;
import org.oaktag.export.drawing.Colours;
import org.oaktag.export.drawing.Figure;
import org.oaktag.export.drawing.Fill;
import org.oaktag.export.drawing.Font;
import org.oaktag.export.drawing.Label;
import org.oaktag.export.drawing.LineType;
import org.oaktag.export.drawing.Stroke;
import org.oaktag.export.drawing.TextBlock;
import org.oaktag.export.drawing.TextLine;
import org.oaktag.export.svg.SvgSheet;
import org.oaktag.garment.Edge;
import org.oaktag.garment.Name;
import org.oaktag.garment.Notch;
import org.oaktag.garment.Piece;
import org.oaktag.geometry.Outline;
import org.oaktag.geometry.Path;
import org.oaktag.geometry.Point;
import org.oaktag.geometry.Transform;
import org.oaktag.geometry.Vector;

/**
 * A figure drawn in the millimetres of a garment and reduced onto paper. What stands for what: the widest line is what
 * the figure is about, the narrow one what is there as well; of a step, the dashed light line is what was there before
 * and the wide dark one what is there after it.
 */
final class Sketch {

    private static final String CLOTH = "#eef2f7";
    private static final double NOTCH = 2.2;
    private static final double BETWEEN_NOTCHES = 1.4;
    private static final double ARROW = 2.5;
    private static final double DOT = 0.9;
    private static final double GAP = 1.2;

    /** The length of the straight parts in which a line is looked at, mm. */
    private static final double STEP = 2;

    private final double reduction;
    private final Figure figure = new Figure();
    private final List<Label> labels = new ArrayList<>();
    private final List<Lettered> dimensions = new ArrayList<>();

    /** The text of a dimension and where it may stand, best first. */
    private record Lettered(TextBlock block, List<Box> places) {}

    private Transform onPaper;

    private Sketch(double reduction) {
        this.reduction = reduction;
        this.onPaper = Transform.scale(1 / reduction);
    }

    static Sketch reduced(double reduction) {
        return new Sketch(reduction);
    }

    /** Draws what follows so far to the right and down, in mm on paper. */
    Sketch at(double right, double down) {
        onPaper = Transform.scale(1 / reduction).then(Transform.translation(right, down));
        return this;
    }

    /** Draws what follows with this point of the garment so far to the right and down, in mm on paper. */
    Sketch seated(Point point, double right, double down) {
        return at(right - point.x() / reduction, down - point.y() / reduction);
    }

    /** Draws a piece with narrow lines, its notches, and its fold as such. */
    Sketch piece(Piece piece) {
        figure.add(new Fill(CLOTH, piece.outline().path().transformed(onPaper)));
        for (Edge edge : piece.edges()) {
            boolean onFold = piece.isOnFold(edge.name());
            line(onFold ? LineType.FOLD : LineType.SEAM, edge.path());
        }
        piece.notches().forEach(notch -> notch(piece, notch));
        return this;
    }

    /** Draws the notches of one edge of a piece. */
    Sketch notches(Piece piece, Name edge) {
        piece.notches().stream().filter(notch -> notch.edge().equals(edge)).forEach(notch -> notch(piece, notch));
        return this;
    }

    private void notch(Piece piece, Notch notch) {
        Path path = piece.path(notch.edge()).transformed(onPaper);
        double at = notch.fromStart(piece.path(notch.edge()).length()) / reduction;
        for (int i = 0; i < notch.count(); i++) {
            double along = Math.min(Math.max(at + (i - (notch.count() - 1) / 2.0) * BETWEEN_NOTCHES, 0), path.length());
            Point foot = path.pointAt(along);
            Vector inward = path.directionAt(along).rightNormal().times(NOTCH);
            figure.add(Stroke.line(LineType.NOTCH, foot, foot.plus(inward)));
        }
    }

    Sketch cloth(Outline outline) {
        figure.add(new Fill(CLOTH, outline.path().transformed(onPaper)));
        return this;
    }

    Sketch line(LineType type, Path path) {
        figure.add(Stroke.of(type, path.transformed(onPaper)));
        return this;
    }

    /** Draws what the figure is about, where that is a line. */
    Sketch subject(Path path) {
        return line(LineType.SUBJECT, path);
    }

    /** Draws what is there after a step. */
    Sketch strong(Path path) {
        return line(LineType.AFTER, path);
    }

    /** Draws what was there before. */
    Sketch before(Path path) {
        return line(LineType.BEFORE, path);
    }

    Sketch dot(Point point) {
        Point middle = onPaper.apply(point);
        figure.add(new Fill(Colours.AMOUNT, disc(middle)));
        return this;
    }

    private static Path disc(Point middle) {
        Point[] corners = new Point[25];
        for (int i = 0; i < corners.length; i++) {
            corners[i] = middle.plus(Vector.polar(DOT, i * 2 * Math.PI / (corners.length - 1)));
        }
        corners[corners.length - 1] = corners[0];
        return Path.polyline(corners);
    }

    /** Writes beside a point, so far to the right and down of it in mm on paper. */
    Sketch text(String text, Point beside, double right, double down, Label.Align align) {
        Point place = onPaper.apply(beside).plus(Vector.of(right, down));
        TextBlock block = TextBlock.of(text, Font.SMALL);
        double middle = switch (align) {
            case START -> place.x() + block.width() / 2;
            case MIDDLE -> place.x();
            case END -> place.x() - block.width() / 2;
        };
        Box box = new Box(Point.of(middle, place.y()), block.width(), block.height(), 0);
        labels.add(new Label(block, box, align));
        return this;
    }

    /**
     * Draws a dimension so far off what it measures, in mm on paper, to the left of the way from one end to the other.
     */
    Sketch dimension(Point from, Point to, String text, double off) {
        Point a = onPaper.apply(from);
        Point b = onPaper.apply(to);
        Vector along = b.minus(a).unit();
        Vector out = along.leftNormal().times(off);
        Vector overshoot = along.leftNormal().times(Math.signum(off) * 1.5);
        Point c = a.plus(out);
        Point d = b.plus(out);
        if (off != 0) {
            figure.add(Stroke.line(LineType.DIMENSION, a, c.plus(overshoot)));
            figure.add(Stroke.line(LineType.DIMENSION, b, d.plus(overshoot)));
        }
        boolean roomy = c.distanceTo(d) > 3 * ARROW;
        Vector tail = along.times(roomy ? 0 : 2 * ARROW);
        figure.add(Stroke.line(LineType.DIMENSION, c.plus(tail.negated()), d.plus(tail)));
        figure.add(Fill.arrowhead(c, roomy ? along.negated() : along, ARROW, Colours.AMOUNT));
        figure.add(Fill.arrowhead(d, roomy ? along : along.negated(), ARROW, Colours.AMOUNT));
        TextBlock block = new TextBlock(List.of(new TextLine(text, Font.SMALL, Colours.AMOUNT)));
        Vector side = along.leftNormal().times(off == 0 ? 1 : Math.signum(off));
        List<Box> places = new ArrayList<>();
        if (c.distanceTo(d) > block.width()) {
            for (Vector beside : List.of(side, side.negated())) {
                for (double share : new double[] {0.5, 0.35, 0.65, 0.25, 0.75}) {
                    Point middle = c.lerp(d, share).plus(beside.times(block.height() / 2 + GAP));
                    places.add(new Box(middle, block.width(), block.height(), Box.readable(along)));
                }
            }
        } else {
            double reach = Math.abs(side.x()) * block.width() / 2 + Math.abs(side.y()) * block.height() / 2;
            for (Vector beside : List.of(side, side.negated())) {
                Point middle = c.midpoint(d).plus(beside.times(reach + 2 * GAP));
                places.add(new Box(middle, block.width(), block.height(), 0));
            }
        }
        // Else beyond an end of it.
        double beyond = Math.abs(along.x()) * block.width() / 2
                + Math.abs(along.y()) * block.height() / 2
                + (roomy ? GAP : 2 * ARROW + GAP);
        for (Point middle : List.of(d.plus(along.times(beyond)), c.plus(along.times(-beyond)))) {
            places.add(new Box(middle, block.width(), block.height(), 0));
        }
        dimensions.add(new Lettered(block, places));
        return this;
    }

    /** Draws an arrow from one point to another. */
    Sketch arrow(Point from, Point to) {
        Point a = onPaper.apply(from);
        Point b = onPaper.apply(to);
        figure.add(Stroke.line(LineType.DIMENSION, a, b));
        figure.add(Fill.arrowhead(b, b.minus(a), ARROW, Colours.AMOUNT));
        return this;
    }

    private boolean isFree(Box box) {
        return labels.stream().noneMatch(label -> label.box().overlaps(box))
                && figure.inks().stream()
                        .filter(Stroke.class::isInstance)
                        .noneMatch(ink -> isCrossed(box, ((Stroke) ink).path()));
    }

    private static boolean isCrossed(Box box, Path path) {
        if (!path.bounds().overlaps(box.bounds())) {
            return false;
        }
        int parts = (int) Math.ceil(path.length() / STEP);
        Point from = path.start();
        for (int i = 1; i <= parts; i++) {
            Point to = path.pointAt(Math.min(i * path.length() / parts, path.length()));
            if (box.meets(from, to)) {
                return true;
            }
            from = to;
        }
        return false;
    }

    /** Returns the figure, its lettering over everything else. */
    SvgSheet sheet(String title, String description) {
        Figure whole = new Figure().add(figure);
        for (Lettered dimension : dimensions) {
            Box place = dimension.places().stream()
                    .filter(this::isFree)
                    .findFirst()
                    .orElse(dimension.places().get(0));
            labels.add(dimension.block().in(place));
        }
        labels.forEach(whole::add);
        return SvgSheet.figure(title, description, whole);
    }
}
