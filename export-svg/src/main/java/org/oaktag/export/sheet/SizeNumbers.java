package org.oaktag.export.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.oaktag.export.drawing.Box;
import org.oaktag.export.drawing.Figure;
import org.oaktag.export.drawing.Font;
import org.oaktag.export.drawing.Ink;
import org.oaktag.export.drawing.Label;
import org.oaktag.export.drawing.Stroke;
import org.oaktag.export.drawing.TextBlock;
import org.oaktag.export.layout.LabelPlacer;
import org.oaktag.garment.CutLine;
import org.oaktag.garment.InnerLine;
import org.oaktag.garment.Mark;
import org.oaktag.garment.Notch;
import org.oaktag.garment.Piece;
import org.oaktag.garment.Snip;
import org.oaktag.geometry.Path;
import org.oaktag.geometry.Point;
import org.oaktag.geometry.Vector;

/**
 * Says whose a notch, a mark or an inner line of nested sizes is, by the number of its size, where nothing else does:
 * where the cut lines of two sizes run on each other, and inside.
 */
final class SizeNumbers {

    /** What is no further apart than this is one on paper, mm. */
    private static final double SAME = 0.5;

    /** Cut lines no further apart than this are not told apart by the notches on them, mm. */
    private static final double CLOSE = 2;

    /** How far from its mark a number may stand, mm. */
    private static final double NEAR = 14;

    private static final int ROWS = 5;

    /** Bold, so that it is not read as a part of the label beside it. */
    private static final Font FONT = new Font(Font.SMALL.size(), true);

    private final List<Piece> sizes;
    private final List<CutLine> cuts;
    private final List<Figure> own;
    private final LabelPlacer labels;
    private final List<LabelPlacer> rooms = new ArrayList<>();
    private final List<LeftOut> leftOut = new ArrayList<>();

    private SizeNumbers(List<Piece> sizes, List<CutLine> cuts, List<Figure> own, LabelPlacer labels) {
        this.sizes = sizes;
        this.cuts = cuts;
        this.own = own;
        this.labels = labels;
    }

    /**
     * Writes the numbers and returns those for which there was no room.
     *
     * @param sizes the piece in each size
     * @param cuts the cut line of each
     * @param own the drawing of what belongs to each, to which its numbers are added
     * @param shared what is drawn for all
     * @param labels what is to keep off the numbers
     */
    static List<LeftOut> write(
            List<Piece> sizes, List<CutLine> cuts, List<Figure> own, Figure shared, LabelPlacer labels) {
        SizeNumbers numbers = new SizeNumbers(sizes, cuts, own, labels);
        for (Piece piece : sizes) {
            LabelPlacer room = LabelPlacer.inside(piece.outline());
            own.forEach(figure -> avoid(figure, room));
            avoid(shared, room);
            numbers.rooms.add(room);
        }
        List<List<Sign>> signs = numbers.signs();
        for (int i = 0; i < sizes.size(); i++) {
            for (Sign sign : signs.get(i)) {
                if (numbers.isUnclear(sign, i, signs)) {
                    numbers.write(i, sign.name, along(sign));
                }
            }
            for (Mark mark : sizes.get(i).marks()) {
                if (numbers.isUnclear(mark, i)) {
                    numbers.write(i, mark.name().value(), around(mark.point()));
                }
            }
            for (InnerLine line : sizes.get(i).lines()) {
                if (numbers.isUnclear(line, i)) {
                    numbers.write(i, line.name().value(), beside(line.path()));
                }
            }
        }
        return numbers.leftOut;
    }

    private static void avoid(Figure figure, LabelPlacer room) {
        for (Ink ink : figure.inks()) {
            if (ink instanceof Stroke stroke) {
                room.avoid(stroke.path());
            } else if (ink instanceof Label label) {
                room.avoid(label.box());
            }
        }
    }

    /**
     * The cuts of a notch taken together.
     *
     * @param onCutLine its end on the cut line
     * @param inside its other end
     */
    private record Sign(String name, Point onCutLine, Point inside) {}

    private List<List<Sign>> signs() {
        List<List<Sign>> all = new ArrayList<>();
        for (int i = 0; i < sizes.size(); i++) {
            List<Sign> signs = new ArrayList<>();
            List<Snip> snips = cuts.get(i).snips();
            int from = 0;
            for (Notch notch : sizes.get(i).notches()) {
                Snip first = snips.get(from);
                from += notch.count();
                signs.add(sign(notch.name().value(), sizes.get(i), first, snips.get(from - 1)));
            }
            // Those that are left are the centre points: each is the end of its own cut line.
            all.add(signs);
        }
        return all;
    }

    private static Sign sign(String name, Piece piece, Snip first, Snip last) {
        Point seam = first.seam().midpoint(last.seam());
        Point cut = first.cut().midpoint(last.cut());
        // Where an edge has no allowance, the notch is drawn from it into the piece.
        return piece.outline().contains(cut) ? new Sign(name, seam, cut) : new Sign(name, cut, seam);
    }

    private boolean isUnclear(Sign sign, int size, List<List<Sign>> signs) {
        return others(size)
                .anyMatch(other -> cuts.get(other).runs().stream()
                                .anyMatch(run -> run.nearest(sign.onCutLine).distance() <= CLOSE)
                        && signs.get(other).stream()
                                .noneMatch(each -> each.onCutLine.distanceTo(sign.onCutLine) <= SAME));
    }

    private boolean isUnclear(Mark mark, int size) {
        return others(size)
                .anyMatch(other -> sizes.get(other).marks().stream()
                        .noneMatch(each -> each.point().distanceTo(mark.point()) <= SAME));
    }

    /** A line with a mark on it is told by that. */
    private boolean isUnclear(InnerLine line, int size) {
        Point middle = line.path().pointAt(line.path().length() / 2);
        return sizes.get(size).marks().stream().noneMatch(mark -> isOn(line, mark.point()))
                && others(size)
                        .anyMatch(other -> sizes.get(other).lines().stream().noneMatch(each -> isOn(each, middle)));
    }

    private static boolean isOn(InnerLine line, Point point) {
        return line.path().nearest(point).distance() <= SAME;
    }

    private IntStream others(int size) {
        return IntStream.range(0, sizes.size()).filter(other -> other != size);
    }

    private void write(int size, String what, Stream<Box> places) {
        rooms.get(size)
                .first(places)
                .ifPresentOrElse(
                        box -> {
                            own.get(size).add(text(size).in(box));
                            labels.avoid(box);
                            others(size).forEach(other -> rooms.get(other).avoid(box));
                        },
                        () -> leftOut.add(new LeftOut(sizes.get(size).name(), "size " + (size + 1) + " at " + what)));
    }

    private static TextBlock text(int size) {
        return TextBlock.of("" + (size + 1), FONT);
    }

    /** The places from the notch inwards, those straight on first. */
    private static Stream<Box> along(Sign sign) {
        TextBlock text = text(0);
        Vector inward = sign.inside.minus(sign.onCutLine).unit();
        double off = reach(inward, text) + LabelPlacer.CLEARANCE + 0.2;
        double step = 2 * reach(inward, text) + LabelPlacer.CLEARANCE + 0.2;
        return Stream.iterate(off, each -> each + step)
                .limit(ROWS)
                .flatMap(depth -> DoubleStream.of(0, 1, -1, 2, -2)
                        .mapToObj(side -> box(
                                sign.inside
                                        .plus(inward.times(depth))
                                        .plus(inward.rightNormal().times(side)),
                                text)));
    }

    private static Stream<Box> around(Point point) {
        TextBlock text = text(0);
        return DoubleStream.iterate(4, distance -> distance <= NEAR, distance -> distance + 1)
                .boxed()
                .flatMap(distance -> IntStream.range(0, 8)
                        .mapToObj(turn -> Vector.polar(1, (2 * turn + 1) * Math.PI / 8))
                        .map(towards -> box(point.plus(towards.times(distance)), text)));
    }

    private static Stream<Box> beside(Path path) {
        TextBlock text = text(0);
        return DoubleStream.of(0.5, 0.4, 0.6, 0.3, 0.7, 0.2, 0.8)
                .map(share -> share * path.length())
                .boxed()
                .flatMap(at -> {
                    Vector normal = path.directionAt(at).rightNormal();
                    double off = reach(normal, text) + LabelPlacer.CLEARANCE + 0.2;
                    return Stream.of(off, -off).map(each -> box(path.pointAt(at).plus(normal.times(each)), text));
                });
    }

    /** How far an upright text reaches from its middle in a direction, mm. */
    private static double reach(Vector direction, TextBlock text) {
        return (Math.abs(direction.x()) * text.width() + Math.abs(direction.y()) * text.height()) / 2;
    }

    private static Box box(Point middle, TextBlock text) {
        return new Box(middle, text.width(), text.height(), 0);
    }
}
