package org.oaktag.export.svg;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.oaktag.export.drawing.Figure;
import org.oaktag.export.drawing.Font;
import org.oaktag.export.drawing.LineType;
import org.oaktag.export.drawing.Stroke;
import org.oaktag.export.drawing.TextBlock;
import org.oaktag.export.layout.LabelPlacer;
import org.oaktag.garment.Dimension;
import org.oaktag.garment.Edge;
import org.oaktag.garment.InnerLine;
import org.oaktag.garment.Name;
import org.oaktag.garment.Notch;
import org.oaktag.garment.Piece;
import org.oaktag.geometry.Bounds;
import org.oaktag.geometry.Outline;
import org.oaktag.geometry.Path;
import org.oaktag.geometry.Point;
import org.oaktag.geometry.Transform;
import org.oaktag.geometry.Vector;

/**
 * A piece that a step redrew, made or took away, reduced onto a page.
 *
 * @param name the piece's name
 * @param before the piece before the step, or empty where it is new
 * @param after the piece after it, or empty where it is gone
 * @param bounds the box that holds both
 */
record BeforeAndAfter(Name name, Optional<Piece> before, Optional<Piece> after, Bounds bounds) {

    private static final double NOTCH = 2;

    /** How far off its piece a name may lie, mm. */
    private static final double AROUND = 12;

    static BeforeAndAfter of(Name name, Optional<Piece> before, Optional<Piece> after) {
        Bounds bounds = Stream.concat(before.stream(), after.stream())
                .map(piece -> piece.outline().bounds())
                .reduce(Bounds::union)
                .orElseThrow(() -> new IllegalArgumentException("piece '" + name + "' must exist before or after"));
        return new BeforeAndAfter(name, before, after, bounds);
    }

    private Transform onPage(double reduction, Point seat) {
        return Page.reduced(reduction, seat.x() - bounds.minX() / reduction, seat.y() - bounds.minY() / reduction);
    }

    void drawLines(Figure figure, LabelPlacer placer, double reduction, Point seat) {
        Transform onPage = onPage(reduction, seat);
        before.ifPresent(piece -> piece.edges().stream()
                .filter(edge -> !isKept(after, edge))
                .forEach(edge ->
                        line(figure, placer, LineType.BEFORE, edge.path().transformed(onPage))));
        after.ifPresent(piece -> {
            for (InnerLine inner : piece.lines()) {
                LineType type = inner.use() == InnerLine.Use.FOLD ? LineType.FOLD : LineType.PLACEMENT;
                line(figure, placer, type, inner.path().transformed(onPage));
            }
            for (Edge edge : piece.edges()) {
                LineType type = isKept(before, edge) ? LineType.SEAM : LineType.AFTER;
                line(figure, placer, type, edge.path().transformed(onPage));
            }
            for (Notch notch : piece.notches()) {
                Path path = piece.path(notch.edge());
                double at = Math.min(Math.max(notch.fromStart(path.length()), 0), path.length());
                Point foot = onPage.apply(path.pointAt(at));
                Vector inward = path.directionAt(at).rightNormal().times(NOTCH);
                line(figure, placer, LineType.SEAM, Path.polyline(foot, foot.plus(inward)));
            }
        });
    }

    private static boolean isKept(Optional<Piece> other, Edge edge) {
        return other.isPresent()
                && other.get().hasEdge(edge.name())
                && other.get().path(edge.name()).equals(edge.path());
    }

    /** Returns those of the dimensions that lie on this piece, on the page. */
    List<DimensionLine> dimensionLines(double reduction, Point seat, List<Dimension> dimensions) {
        Transform onPage = onPage(reduction, seat);
        Outline outline = after.or(() -> before).orElseThrow().outline().transformed(onPage);
        return dimensions.stream()
                .filter(dimension -> dimension.piece().equals(name))
                .map(dimension -> DimensionLine.between(
                                onPage.apply(dimension.from()),
                                onPage.apply(dimension.to()),
                                BothUnits.of(dimension.text()))
                        .beside(outline))
                .toList();
    }

    void drawName(Figure figure, LabelPlacer placer, double reduction, Point seat) {
        double width = bounds.width() / reduction;
        double height = bounds.height() / reduction;
        String state = before.isEmpty() ? " (new)" : after.isEmpty() ? " (gone)" : "";
        TextBlock block = TextBlock.of(name.value() + state, Font.HEAD);
        Point middle = Point.of(seat.x() + width / 2, seat.y() + height / 2);
        Bounds inside = new Bounds(seat.x(), seat.y(), seat.x() + width, seat.y() + height);
        Outline outline = after.or(() -> before).orElseThrow().outline().transformed(onPage(reduction, seat));
        // Level inside the piece, upright inside it, or wherever there is room nearby.
        placer.nearest(middle, inside, block.width(), block.height(), 0, outline::contains)
                .or(() ->
                        placer.nearest(middle, inside, block.width(), block.height(), -Math.PI / 2, outline::contains))
                .or(() -> placer.nearest(
                        middle, inside.expanded(AROUND), block.width(), block.height(), 0, point -> true))
                .ifPresent(box -> figure.add(block.in(box)));
    }

    private static void line(Figure figure, LabelPlacer placer, LineType type, Path path) {
        figure.add(Stroke.of(type, path));
        placer.avoid(path);
    }
}
