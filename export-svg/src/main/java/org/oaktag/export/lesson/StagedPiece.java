package org.oaktag.export.lesson;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.oaktag.export.drawing.Box;
import org.oaktag.export.xml.Decimal;
import org.oaktag.export.xml.PathData;
import org.oaktag.export.xml.XmlWriter;
import org.oaktag.garment.Dimension;
import org.oaktag.garment.Edge;
import org.oaktag.garment.EdgeRef;
import org.oaktag.garment.InnerLine;
import org.oaktag.garment.Name;
import org.oaktag.garment.Notch;
import org.oaktag.garment.Piece;
import org.oaktag.geometry.Bounds;
import org.oaktag.geometry.Path;
import org.oaktag.geometry.Point;
import org.oaktag.geometry.Vector;

/**
 * A piece before and after a step, drawn in its own millimetres; how a line looks is left to the style sheet.
 *
 * @param name the piece's name
 * @param before the piece before the step, or empty where it is new
 * @param after the piece after it, or empty where it is gone
 * @param dimensions where the amounts of the step show on it
 * @param room what is shown of the plane
 * @param unit a length that looks the same on all pieces
 */
record StagedPiece(
        Name name,
        Optional<Piece> before,
        Optional<Piece> after,
        List<Dimension> dimensions,
        Bounds room,
        double unit) {

    private static final double NOTCH = 0.28;
    private static final double BETWEEN_NOTCHES = 0.16;
    private static final double DIMENSION = 0.5;
    private static final double ARROW = 0.22;
    private static final double SLENDER = 0.32;

    /** A dimension longer than this has its text on its line, a shorter one beside it. */
    private static final double TEXT = 4;

    private static final double BESIDE = 1.15;

    /** The size of a text on a desk: its padding, a character and a line. */
    private static final double PADDING = 0.4;

    private static final double CHARACTER = 0.29;
    private static final double LINE = 0.9;

    void write(XmlWriter xml) {
        xml.begin("figure").attribute("style", "--w:" + Decimal.text(Math.round(room.width() * 10) / 10.0));
        xml.begin("div");
        xml.begin("svg")
                .attribute(
                        "viewBox",
                        tenths(room.minX()) + " " + tenths(room.minY()) + " " + tenths(room.width()) + " "
                                + tenths(room.height()))
                .attribute("role", "img")
                .attribute("aria-label", label());
        after.ifPresent(
                piece -> path(xml, "cloth", PathData.coarse(piece.outline().path()) + "Z"));
        before.ifPresent(piece -> piece.edges().stream()
                .filter(edge -> !isKept(after, edge))
                .forEach(edge -> path(xml, "before", PathData.coarse(edge.path()))));
        after.ifPresent(piece -> drawAfter(xml, piece));
        dimensions.forEach(dimension -> drawDimension(xml, dimension));
        xml.end();
        writeDimensions(xml);
        xml.end();
        xml.begin("figcaption").text(name.value() + state()).end();
        xml.end();
    }

    private String state() {
        return before.isEmpty() ? " (new)" : after.isEmpty() ? " (gone)" : "";
    }

    private String label() {
        long changed = after.stream()
                .flatMap(piece -> piece.edges().stream())
                .filter(edge -> !isKept(before, edge))
                .count();
        return name.value() + state() + ", "
                + (changed == 0 ? "no edge redrawn" : changed == 1 ? "1 edge redrawn" : changed + " edges redrawn");
    }

    private void drawAfter(XmlWriter xml, Piece piece) {
        for (InnerLine inner : piece.lines()) {
            path(xml, inner.use() == InnerLine.Use.FOLD ? "fold" : "style", PathData.coarse(inner.path()));
        }
        for (Edge edge : piece.edges()) {
            boolean onFold = piece.isOnFold(edge.name());
            xml.begin("path")
                    .attribute("class", onFold ? "fold" : isKept(before, edge) ? "kept" : "after")
                    .attribute("data-edge", EdgeRef.of(name, edge.name()).id())
                    .attribute("d", PathData.coarse(edge.path()))
                    .end();
        }
        for (Notch notch : piece.notches()) {
            Path path = piece.path(notch.edge());
            double at = notch.fromStart(path.length());
            for (int i = 0; i < notch.count(); i++) {
                double along = at + (i - (notch.count() - 1) / 2.0) * BETWEEN_NOTCHES * unit;
                double inside = Math.min(Math.max(along, 0), path.length());
                Vector inward = path.directionAt(inside).rightNormal().times(NOTCH * unit);
                Point foot = path.pointAt(inside);
                path(xml, "notch", PathData.coarse(Path.polyline(foot, foot.plus(inward))));
            }
        }
    }

    private static boolean isKept(Optional<Piece> other, Edge edge) {
        return other.isPresent()
                && other.get().hasEdge(edge.name())
                && other.get().path(edge.name()).equals(edge.path());
    }

    /** The direction in which a dimension lies off what it measures: out of the piece, where that is to be told. */
    private Vector aside(Dimension dimension) {
        Vector normal = along(dimension).leftNormal();
        Point middle = dimension.from().midpoint(dimension.to());
        boolean inside = Stream.of(after, before)
                .flatMap(Optional::stream)
                .anyMatch(piece -> piece.outline().contains(middle.plus(normal.times(DIMENSION * unit))));
        return inside ? normal.negated() : normal;
    }

    private static Vector along(Dimension dimension) {
        Vector span = dimension.to().minus(dimension.from());
        return span.length() == 0 ? Vector.of(1, 0) : span.unit();
    }

    /** A line parallel to what it measures, arrowheads from outside where there is no room between them. */
    private void drawDimension(XmlWriter xml, Dimension dimension) {
        Vector along = along(dimension);
        Vector out = aside(dimension).times(DIMENSION * unit);
        Point from = dimension.from().plus(out);
        Point to = dimension.to().plus(out);
        boolean roomy = isRoomy(dimension, 3 * ARROW);
        Vector tail = along.times(roomy ? 0 : 2 * ARROW * unit);
        path(
                xml,
                "dimension",
                PathData.coarse(Path.polyline(dimension.from(), from.plus(out.times(0.2))))
                        + PathData.coarse(Path.polyline(dimension.to(), to.plus(out.times(0.2))))
                        + PathData.coarse(Path.polyline(from.plus(tail.negated()), to.plus(tail))));
        arrow(xml, from, roomy ? along : along.negated());
        arrow(xml, to, roomy ? along.negated() : along);
    }

    private boolean isRoomy(Dimension dimension, double units) {
        return dimension.from().distanceTo(dimension.to()) > units * unit;
    }

    private void arrow(XmlWriter xml, Point tip, Vector back) {
        Point foot = tip.plus(back.times(ARROW * unit));
        Vector side = back.perpendicular().times(ARROW * unit * SLENDER);
        path(xml, "arrow", PathData.coarse(Path.polyline(tip, foot.plus(side), foot.plus(side.negated()))) + "Z");
    }

    /** Writes the texts of the dimensions, each where it lies on no other. */
    private void writeDimensions(XmlWriter xml) {
        List<Box> taken = new ArrayList<>();
        for (Dimension dimension : dimensions) {
            double width = unit * (PADDING + CHARACTER * dimension.text().length());
            List<Box> places = Stream.of(0, 1, -1)
                    .flatMap(lines -> Stream.of(0.5, 0.3, 0.7, 0.15, 0.85)
                            .map(share -> new Box(middle(dimension, share, lines, width), width, unit * LINE, 0)))
                    .toList();
            Box place = places.stream()
                    .filter(box -> taken.stream().noneMatch(box::overlaps))
                    .findFirst()
                    .orElse(places.get(0));
            taken.add(place);
            double left = 100 * (place.center().x() - room.minX()) / room.width();
            double top = 100 * (place.center().y() - room.minY()) / room.height();
            xml.begin("span")
                    .attribute("class", "chip")
                    .attribute("style", "left:" + tenths(left) + "%;top:" + tenths(top) + "%");
            BothUnits.sentence(xml, dimension.text());
            xml.end();
        }
    }

    /**
     * Where the middle of a text lies: on a long line, beside a short one or by so many lines off, and inside the room.
     */
    private Point middle(Dimension dimension, double share, int lines, double width) {
        double off = (isRoomy(dimension, TEXT) ? DIMENSION : BESIDE) + lines * LINE;
        Point wanted = dimension
                .from()
                .lerp(dimension.to(), share)
                .plus(aside(dimension).times(off * unit));
        double half = Math.min(width, room.width()) / 2;
        double high = LINE * unit / 2;
        return Point.of(
                Math.min(Math.max(wanted.x(), room.minX() + half), room.maxX() - half),
                Math.min(Math.max(wanted.y(), room.minY() + high), room.maxY() - high));
    }

    private static void path(XmlWriter xml, String type, String data) {
        xml.begin("path").attribute("class", type).attribute("d", data).end();
    }

    private static String tenths(double value) {
        return Decimal.text(Math.round(value * 10) / 10.0);
    }
}
