package org.oaktag.export.sheet;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.oaktag.export.drawing.Box;
import org.oaktag.export.drawing.Colours;
import org.oaktag.export.drawing.Figure;
import org.oaktag.export.drawing.Fill;
import org.oaktag.export.drawing.Font;
import org.oaktag.export.drawing.FreeText;
import org.oaktag.export.drawing.LineType;
import org.oaktag.export.drawing.Stroke;
import org.oaktag.export.drawing.TextBlock;
import org.oaktag.export.drawing.TextLine;
import org.oaktag.export.layout.LabelPlacer;
import org.oaktag.garment.Dart;
import org.oaktag.garment.Edge;
import org.oaktag.garment.FoldedDart;
import org.oaktag.garment.Garment;
import org.oaktag.garment.InnerLine;
import org.oaktag.garment.Mark;
import org.oaktag.garment.Name;
import org.oaktag.garment.Piece;
import org.oaktag.geometry.Bounds;
import org.oaktag.geometry.Path;
import org.oaktag.geometry.Point;
import org.oaktag.geometry.Vector;

/** Writes on a piece: what each edge is and how long, and in its middle what the piece is and how it is cut. */
final class PieceLabels {

    /** Where along an edge its label is tried, in shares of its length: the middle first. */
    private static final double[] ALONG = {0.5, 0.42, 0.58, 0.34, 0.66, 0.26, 0.74, 0.18, 0.82, 0.1, 0.9};

    /** How far off its line a label is tried, mm beyond the clearance. */
    private static final double[] ASIDE = {0.3, 2.5, 5, 8, 12};

    /** How far from the end of the grainline it may be said which way is up, mm. */
    private static final double NEAR = 30;

    /** The lengths of the arrow of stretch, the first for which there is room, and that of its heads, mm. */
    private static final double[] STRETCH = {50, 30, 17};

    private static final double STRETCH_ARROW = 3.5;

    private final Piece piece;
    private final Figure figure;
    private final LabelPlacer placer;
    private final List<LeftOut> leftOut = new ArrayList<>();

    PieceLabels(Piece piece, Figure figure, LabelPlacer placer) {
        this.piece = piece;
        this.figure = figure;
        this.placer = placer;
    }

    /** Returns what there was no room for. */
    List<LeftOut> leftOut() {
        return List.copyOf(leftOut);
    }

    /** Writes the name and length of every edge; the legs of a dart need none, and its name stands along its fold. */
    void edges() {
        Set<Name> legs = new HashSet<>();
        for (Dart dart : Dart.all(piece)) {
            legs.add(Dart.legA(dart.name()));
            legs.add(Dart.legB(dart.name()));
        }
        for (Edge edge : piece.edges()) {
            if (legs.contains(edge.name())) {
                continue;
            }
            String name = edge.withName(Dart.whole(edge.name())).label();
            List<String> texts =
                    List.of(name + "  " + edge.length().text(), edge.length().text(), name);
            beside(edge.path(), texts, true);
        }
    }

    void insides() {
        List<Dart> darts = Dart.all(piece);
        for (InnerLine line : piece.lines()) {
            if (darts.stream().noneMatch(dart -> line.name().equals(FoldedDart.peakLine(dart.name())))) {
                String name = darts.stream()
                        .filter(dart -> line.name().equals(FoldedDart.foldLine(dart.name())))
                        .map(dart -> dart.name() + "  " + dart.width().text())
                        .findFirst()
                        .orElse(line.name().value());
                beside(line.path(), List.of(name), false);
            }
        }
        for (Mark mark : piece.marks()) {
            TextBlock block = TextBlock.of(mark.name().value(), Font.SMALL);
            placer.nearest(mark.point(), piece.outline().bounds(), block.width(), block.height(), 0)
                    .ifPresentOrElse(
                            box -> figure.add(block.in(box)),
                            () -> leaveOut(mark.name().value()));
        }
    }

    void fold(Point from, Point to, Vector inward) {
        beside(Path.polyline(from, to), List.of("place on fold"), false);
    }

    /** Writes at the upper end of the grainline which way is up. */
    void up() {
        TextBlock block = TextBlock.of("up", Font.SMALL);
        placer.nearest(piece.grainline().top(), piece.outline().bounds(), block.width(), block.height(), 0)
                .filter(box -> box.center().distanceTo(piece.grainline().top()) < NEAR)
                .ifPresentOrElse(box -> figure.add(block.in(box)), () -> leaveOut("up"));
    }

    private void leaveOut(String label) {
        leftOut.add(new LeftOut(piece.name(), label));
    }

    /** Draws an arrow across the grain where the cloth stretches that way, as long as there is room for. */
    void stretch() {
        if (piece.cloth().stretch().percent() == 0) {
            return;
        }
        Vector across =
                piece.grainline().bottom().minus(piece.grainline().top()).unit().leftNormal();
        Point wanted = piece.grainline().top().lerp(piece.grainline().bottom(), 0.8);
        TextBlock block = TextBlock.of("stretch", Font.SMALL);
        double angle = Box.readable(across);
        for (double length : STRETCH) {
            Optional<Box> room = placer.nearest(
                    wanted,
                    piece.outline().bounds(),
                    length + 2 * STRETCH_ARROW,
                    block.height() + STRETCH_ARROW,
                    angle);
            if (room.isPresent()) {
                Vector along = Vector.polar(1, angle);
                Vector down = along.rightNormal();
                Point text = room.get().center().plus(down.times(-STRETCH_ARROW / 2));
                figure.add(block.in(new Box(text, block.width(), block.height(), angle)));
                Point middle = room.get().center().plus(down.times(block.height() / 2));
                Point from = middle.plus(along.times(-length / 2));
                Point to = middle.plus(along.times(length / 2));
                figure.add(Stroke.line(LineType.GRAIN, from, to));
                figure.add(Fill.arrowhead(from, along.negated(), STRETCH_ARROW, LineType.GRAIN.colour()));
                figure.add(Fill.arrowhead(to, along, STRETCH_ARROW, LineType.GRAIN.colour()));
                return;
            }
        }
        leaveOut("stretch");
    }

    /**
     * Writes the first of the texts for which there is room along a path, on its inner side (its right) or on either.
     */
    private void beside(Path path, List<String> texts, boolean rightOnly) {
        for (String text : texts) {
            TextBlock block = TextBlock.of(text, Font.SMALL);
            Optional<Box> room = placer.first(candidates(path, block, rightOnly));
            if (room.isPresent()) {
                figure.add(block.in(room.get()));
                return;
            }
        }
        leaveOut(texts.get(0).replace("  ", " "));
    }

    /** The places along a path, nearest to it first; none is worked out before those ahead of it have been tried. */
    private static Stream<Box> candidates(Path path, TextBlock block, boolean rightOnly) {
        return Arrays.stream(ASIDE)
                .boxed()
                .flatMap(aside -> Arrays.stream(ALONG)
                        .boxed()
                        .flatMap(share -> beside(path, share * path.length(), aside, block, rightOnly)));
    }

    private static Stream<Box> beside(Path path, double at, double aside, TextBlock block, boolean rightOnly) {
        double half = block.width() / 2;
        // The chord under the label, not the tangent: on a curve the text must clear the line all along.
        Point from = path.pointAt(Math.max(0, at - half));
        Point to = path.pointAt(Math.min(path.length(), at + half));
        if (from.distanceTo(to) < half) {
            return Stream.empty();
        }
        Vector along = to.minus(from).unit();
        Vector off = along.rightNormal().times(block.height() / 2 + LabelPlacer.CLEARANCE + aside);
        Point foot = path.pointAt(at);
        Box right = box(foot.plus(off), block, along);
        return rightOnly ? Stream.of(right) : Stream.of(right, box(foot.plus(off.negated()), block, along));
    }

    private static Box box(Point center, TextBlock block, Vector along) {
        return new Box(center, block.width(), block.height(), Box.readable(along));
    }

    /** Writes what the piece is, as large and as fully as there is room for; below a piece that is too small for it. */
    void block(Garment garment) {
        Bounds bounds = piece.outline().bounds();
        Point middle = piece.outline().centroid();
        List<TextBlock> blocks = blocks(garment);
        for (TextBlock block : blocks) {
            for (double angle : List.of(0.0, -Math.PI / 2)) {
                Optional<Box> room = placer.nearest(middle, bounds, block.width(), block.height(), angle);
                if (room.isPresent()) {
                    figure.add(block.in(room.get()));
                    return;
                }
            }
        }
        TextBlock smallest = blocks.get(blocks.size() - 1);
        Bounds drawn = figure.bounds();
        figure.add(smallest.at(drawn.minX(), drawn.maxY() + LabelPlacer.CLEARANCE));
    }

    private List<TextBlock> blocks(Garment garment) {
        String name = piece.name().value();
        String number = number(garment) + " of " + garment.pieces().size();
        String cut = piece.cut().instruction();
        String cloth = piece.cloth().use() + ": " + FreeText.shown(piece.cloth().description());
        String wearer = FreeText.shown(garment.title()) + ", for "
                + FreeText.shown(garment.wearer().name());
        List<TextBlock> blocks = new ArrayList<>();
        for (double widest : List.of(160.0, 110.0, 70.0)) {
            TextBlock body = TextBlock.of("piece " + number, Font.TEXT)
                    .above(TextBlock.wrapped(cut, Font.HEAD, widest))
                    .above(TextBlock.wrapped(cloth, Font.TEXT, widest))
                    .above(faint(TextBlock.wrapped(Font.SMALL.fitted(wearer, 2 * widest), Font.SMALL, widest)));
            blocks.add(TextBlock.wrapped(name, Font.NAME, widest).above(body));
            blocks.add(TextBlock.wrapped(name, Font.HEAD, widest).above(body));
        }
        String use = piece.cloth().use().value();
        blocks.add(TextBlock.of(number + "  " + name + ", " + cut + ", " + use, Font.SMALL));
        blocks.add(TextBlock.of(number, Font.SMALL)
                .above(TextBlock.of(name, Font.SMALL))
                .above(TextBlock.of(cut, Font.SMALL))
                .above(TextBlock.of(use, Font.SMALL)));
        return blocks;
    }

    /** Its place by its name: of nested sizes it may be another size's piece that is written on. */
    private int number(Garment garment) {
        return garment.pieces().stream().map(Piece::name).toList().indexOf(piece.name()) + 1;
    }

    private static TextBlock faint(TextBlock block) {
        return new TextBlock(block.lines().stream()
                .map(line -> new TextLine(line.text(), line.font(), Colours.FAINT))
                .toList());
    }
}
