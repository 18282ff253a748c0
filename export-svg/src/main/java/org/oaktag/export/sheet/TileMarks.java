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
    static final double DIAMOND = 6;

    private TileMarks() {}

    /**
     * Draws all joints on the plane, so that two neighbours show the same mark in the same place: in the middle of the
     * joint, or where next to it no line and no lettering of a piece is in its way.
     */
    static Figure joints(TilePlan plan) {
        Figure figure = new Figure();
        JointPlaces places = JointPlaces.of(plan);
        for (TilePlan.Joint joint : plan.joints()) {
            Bounds cell =
                    plan.grid().cell(joint.second().column(), joint.second().row());
            Point from = Point.of(cell.minX(), cell.minY());
            Point to = joint.isUpright() ? Point.of(cell.minX(), cell.maxY()) : Point.of(cell.maxX(), cell.minY());
            figure.add(Stroke.line(LineType.JOINT, from, to));
            TextBlock number = TextBlock.of("" + joint.number(), Font.SMALL);
            JointPlaces.Place place = places.best(from, to, number);
            figure.add(Stroke.of(LineType.RULE, diamond(place.middle())));
            // On either side of the line: each half of the diamond says to which other half it belongs.
            place.numbers().forEach(box -> figure.add(number.in(box)));
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
        placements.forEach(each -> avoid(each, printed, placer, true));
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

    /** Keeps off the lettering of a placement and, if asked to, its lines. */
    static void avoid(Placement placement, Bounds shown, LabelPlacer placer, boolean lines) {
        Transform moved = Transform.translation(placement.dx(), placement.dy());
        for (Ink ink : placement.figure().inks()) {
            if (!placement.moved(ink.bounds()).overlaps(shown)) {
                continue;
            }
            if (ink instanceof Label label) {
                Box box = label.box();
                placer.avoid(new Box(moved.apply(box.center()), box.width(), box.height(), box.angle()));
            } else if (lines && ink instanceof Stroke stroke) {
                placer.avoid(stroke.path().transformed(moved));
            } else if (lines && ink instanceof Fill fill) {
                placer.avoid(fill.outline().transformed(moved));
            }
        }
    }
}
