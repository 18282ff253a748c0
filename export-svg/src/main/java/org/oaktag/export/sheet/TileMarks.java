package org.oaktag.export.sheet;

import java.util.List;
import java.util.Optional;
import org.oaktag.export.drawing.Box;
import org.oaktag.export.drawing.Colours;
import org.oaktag.export.drawing.Figure;
import org.oaktag.export.drawing.Fill;
import org.oaktag.export.drawing.Font;
import org.oaktag.export.drawing.Ink;
import org.oaktag.export.drawing.Label;
import org.oaktag.export.drawing.LineType;
import org.oaktag.export.drawing.Stroke;
import org.oaktag.export.drawing.TextBlock;
import org.oaktag.export.drawing.TextLine;
import org.oaktag.export.layout.LabelPlacer;
import org.oaktag.geometry.Bounds;
import org.oaktag.geometry.Path;
import org.oaktag.geometry.Point;
import org.oaktag.geometry.Transform;

/** What tells sheets apart and joins them: the line of each joint with a numbered diamond on it, and a label. */
final class TileMarks {

    /** Half the width of a diamond, mm: within the usual overlap, so that a sheet shows the whole of it. */
    private static final double DIAMOND = 6;

    private TileMarks() {}

    /** Draws all joints on the plane, so that two neighbours show the same mark in the same place. */
    static Figure joints(TilePlan plan) {
        Figure figure = new Figure();
        for (TilePlan.Joint joint : plan.joints()) {
            Bounds cell =
                    plan.grid().cell(joint.second().column(), joint.second().row());
            Point from = Point.of(cell.minX(), cell.minY());
            Point to = joint.isUpright() ? Point.of(cell.minX(), cell.maxY()) : Point.of(cell.maxX(), cell.minY());
            figure.add(Stroke.line(LineType.JOINT, from, to));
            Point middle = from.midpoint(to);
            figure.add(Stroke.of(LineType.RULE, diamond(middle)));
            TextBlock number = TextBlock.of("" + joint.number(), Font.SMALL);
            // On either side of the line: each half of the diamond says to which other half it belongs.
            double aside = DIAMOND + number.width() / 2 + 0.5;
            double across = DIAMOND + number.height() / 2;
            for (int side : new int[] {-1, 1}) {
                Point at = joint.isUpright()
                        ? Point.of(middle.x() + side * aside, middle.y())
                        : Point.of(middle.x(), middle.y() + side * across);
                figure.add(number.in(new Box(at, number.width(), number.height(), 0)));
            }
        }
        return figure;
    }

    private static Path diamond(Point middle) {
        Point left = Point.of(middle.x() - DIAMOND, middle.y());
        return Path.polyline(
                left,
                Point.of(middle.x(), middle.y() - DIAMOND),
                Point.of(middle.x() + DIAMOND, middle.y()),
                Point.of(middle.x(), middle.y() + DIAMOND),
                left);
    }

    /**
     * Writes on a sheet which one it is, off every line where there is room.
     *
     * @param texts what to write, the first for which there is room
     * @param placements what else is on the sheet
     */
    static Figure label(List<String> texts, Bounds printed, List<Placement> placements) {
        LabelPlacer placer = LabelPlacer.on(printed);
        for (Placement placement : placements) {
            Transform moved = Transform.translation(placement.dx(), placement.dy());
            for (Ink ink : placement.figure().inks()) {
                if (!placement.moved(ink.bounds()).overlaps(printed)) {
                    continue;
                }
                if (ink instanceof Stroke stroke) {
                    placer.avoid(stroke.path().transformed(moved));
                } else if (ink instanceof Label label) {
                    Point center = moved.apply(label.box().center());
                    placer.avoid(new Box(
                            center,
                            label.box().width(),
                            label.box().height(),
                            label.box().angle()));
                } else if (ink instanceof Fill fill) {
                    placer.avoid(fill.outline().transformed(moved));
                }
            }
        }
        Point corner = Point.of(printed.minX(), printed.minY());
        for (String text : texts) {
            TextBlock block = new TextBlock(List.of(new TextLine(text, Font.HEAD, Colours.FAINT)));
            Optional<Box> room = placer.nearest(corner, printed, block.width(), block.height(), 0);
            if (room.isPresent()) {
                return new Figure().add(block.in(room.get()));
            }
        }
        TextBlock shortest = TextBlock.of(texts.get(texts.size() - 1), Font.SMALL);
        return new Figure().add(shortest.at(printed.minX() + 1, printed.minY() + 1));
    }
}
