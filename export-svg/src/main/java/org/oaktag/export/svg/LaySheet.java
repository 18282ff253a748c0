package org.oaktag.export.svg;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.oaktag.export.drawing.Box;
import org.oaktag.export.drawing.Colours;
import org.oaktag.export.drawing.Figure;
import org.oaktag.export.drawing.Fill;
import org.oaktag.export.drawing.Font;
import org.oaktag.export.drawing.FreeText;
import org.oaktag.export.drawing.LineType;
import org.oaktag.export.drawing.Stroke;
import org.oaktag.export.drawing.Table;
import org.oaktag.export.drawing.TextBlock;
import org.oaktag.export.layout.LabelPlacer;
import org.oaktag.export.sheet.Cloths;
import org.oaktag.garment.CutList;
import org.oaktag.garment.Grainline;
import org.oaktag.geometry.Bounds;
import org.oaktag.geometry.Outline;
import org.oaktag.geometry.Path;
import org.oaktag.geometry.Point;
import org.oaktag.geometry.Transform;
import org.oaktag.geometry.Vector;
import org.oaktag.lay.LaidPiece;
import org.oaktag.lay.Lay;
import org.oaktag.lay.Spread;

/** The pieces of one cloth on it, reduced: the cloth runs from left to right, its left selvage or its fold below. */
final class LaySheet {

    /** How far a plate reaches past its lettering on both sides, mm. */
    private static final double BESIDE_TEXT = 0.6;

    private static final double TABLE_WIDTH = 104;
    private static final double BETWEEN = 22;
    private static final double FOOT = 22;
    private static final double ARROW = 3;

    /** How far the fold is drawn past the ends of the cloth, mm. */
    private static final double PAST = 4;

    /** How long the arrow of the grain is at the most, on the page, mm. */
    private static final double LONGEST_GRAIN = 16;

    private final Lay lay;
    private final Page page;
    private final Transform onPage;
    private final double reduction;
    private final List<CutList.Owner> owners;

    private LaySheet(Lay lay, Page page) {
        this.lay = lay;
        this.page = page;
        this.owners = owners(lay);
        double width = lay.spread().tableWidth().mm();
        this.reduction = Page.reduction(
                lay.length().mm(),
                width,
                Page.WIDTH - 2 * Page.MARGIN - BETWEEN - TABLE_WIDTH,
                Page.HEIGHT - page.top() - Page.MARGIN - FOOT);
        // A quarter turn, so that the cloth runs to the right; a mirror would show every piece of the wrong hand.
        this.onPage = new Transform(0, -1, 1, 0, 0, width).then(Page.reduced(reduction, Page.MARGIN, page.top()));
    }

    static String draw(Lay lay, Cloths cloths) {
        Page page = Page.titled(
                "Lay of the " + lay.cloth().use() + ": "
                        + FreeText.shown(lay.cloth().description()),
                wearers(owners(lay)) + "; " + spread(lay));
        LaySheet sheet = new LaySheet(lay, page);
        sheet.cloth();
        for (LaidPiece piece : lay.pieces()) {
            sheet.piece(piece, cloths);
        }
        sheet.fold();
        sheet.dimensions();
        sheet.table();
        page.scaleBar(sheet.reduction);
        return page.end("The pieces on the cloth, reduced; the bar gives the scale.", cloths.used());
    }

    private static List<CutList.Owner> owners(Lay lay) {
        return lay.pieces().stream()
                .map(piece -> piece.item().owner())
                .distinct()
                .toList();
    }

    private static String wearers(List<CutList.Owner> owners) {
        Map<String, Set<String>> wearers = new TreeMap<>();
        for (CutList.Owner owner : owners) {
            wearers.computeIfAbsent(FreeText.shown(owner.title()), title -> new TreeSet<>())
                    .add(FreeText.shown(owner.wearer()));
        }
        return wearers.entrySet().stream()
                .map(each -> each.getKey() + ", for " + String.join(", ", each.getValue()))
                .collect(Collectors.joining("; "));
    }

    /** Which side is up decides the hand of a piece that is cut from the upper layer alone. */
    private static String spread(Lay lay) {
        return (lay.spread().folded() ? "folded lengthwise, right side out" : "in a single layer, right side up")
                + (lay.spread().nap() ? ", with nap: every top lies to the left" : ", without nap");
    }

    private void cloth() {
        double width = lay.spread().tableWidth().mm();
        double length = lay.length().mm();
        Path rim = Fill.rim(new Bounds(0, 0, width, length)).transformed(onPage);
        page.figure().add(Stroke.of(LineType.RULE, rim));
    }

    private void fold() {
        if (lay.spread().folded()) {
            Point beyond = at(0, lay.length().mm()).plus(Vector.of(PAST, 0));
            page.figure().add(Stroke.line(LineType.FOLD, at(0, 0).plus(Vector.of(-PAST, 0)), beyond));
        }
    }

    private void piece(LaidPiece piece, Cloths cloths) {
        Outline outline = piece.outline().transformed(onPage);
        Ribs.fill(page.figure(), outline.path(), cloths.of(lay.cloth()), () -> Ribs.along(outline.path(), up(piece)));
        page.figure().add(Stroke.of(LineType.CUT, outline.path()));
        label(piece, outline);
    }

    /** The largest label beside which there is room for the arrow of the grain, or the largest there is room for. */
    private void label(LaidPiece piece, Outline outline) {
        Optional<Label> largest = Optional.empty();
        for (TextBlock block : blocks(piece)) {
            for (double angle : new double[] {0, -Math.PI / 2}) {
                LabelPlacer placer = LabelPlacer.inside(outline);
                Optional<Box> text =
                        placer.nearest(outline.centroid(), outline.bounds(), block.width(), block.height(), angle);
                if (text.isPresent()) {
                    Label label = new Label(block, text.get(), arrow(piece, outline, placer));
                    if (label.arrow.isPresent()) {
                        draw(label, piece);
                        return;
                    }
                    largest = largest.or(() -> Optional.of(label));
                }
            }
        }
        largest.ifPresent(label -> draw(label, piece));
    }

    private record Label(TextBlock block, Box text, Optional<Box> arrow) {}

    /**
     * Returns what tells the pieces of several garments apart: for whom they are, or else what; nothing where there is
     * one.
     */
    private String who(CutList.Item item) {
        if (owners.size() == 1) {
            return "";
        }
        boolean apart = owners.stream().map(CutList.Owner::wearer).distinct().count() == owners.size();
        return FreeText.shown(apart ? item.owner().wearer() : item.owner().title());
    }

    private List<TextBlock> blocks(LaidPiece piece) {
        String who = who(piece.item());
        String number = (who.isEmpty() ? "" : who + " ") + piece.item().number();
        String name = number + "  " + piece.item().piece().name();
        TextBlock hand = TextBlock.of(hand(piece), Font.SMALL);
        return List.of(
                TextBlock.of(name, Font.HEAD).above(hand),
                TextBlock.of(name, Font.SMALL).above(hand),
                TextBlock.wrapped(name, Font.SMALL, 30).above(hand),
                TextBlock.of(name, Font.SMALL),
                TextBlock.of(number + ".  " + hand(piece), Font.SMALL),
                // The dot tells a 6 from a 9 that is read from the wrong side.
                TextBlock.of(number + ".", Font.SMALL));
    }

    /** Lettering is read on a white plate, however dark the cloth is. */
    private void draw(Label label, LaidPiece piece) {
        Box text = label.text;
        Box plate = new Box(text.center(), text.width() + 2 * BESIDE_TEXT, text.height(), text.angle());
        List<Point> corners = new ArrayList<>(plate.corners());
        corners.add(corners.get(0));
        page.figure().add(new Fill(Colours.PAPER, Path.polyline(corners.toArray(new Point[0]))));
        page.figure().add(label.block.in(label.text));
        label.arrow.ifPresent(room -> grain(room, up(piece)));
    }

    private Vector up(LaidPiece piece) {
        Grainline grain = piece.item().piece().grainline();
        return onPage.apply(piece.motion().apply(grain.top().minus(grain.bottom())))
                .unit();
    }

    /** Returns room for an arrow towards the top of the piece, as near to its middle as there is. */
    private Optional<Box> arrow(LaidPiece piece, Outline outline, LabelPlacer placer) {
        Optional<Box> room = Optional.empty();
        for (double length : new double[] {LONGEST_GRAIN, LONGEST_GRAIN / 2, ARROW + 1}) {
            room = room.or(() -> placer.nearest(
                    outline.centroid(),
                    outline.bounds(),
                    length,
                    ARROW / 2,
                    up(piece).angle()));
        }
        return room;
    }

    private void grain(Box room, Vector up) {
        Vector half = up.times(room.width() / 2);
        Point tip = room.center().plus(half);
        page.figure().add(Stroke.line(LineType.GRAIN, room.center().plus(half.negated()), tip));
        page.figure().add(Fill.arrowhead(tip, up, ARROW, LineType.GRAIN.colour()));
    }

    private static String hand(LaidPiece piece) {
        return switch (piece.through()) {
            case ON_FOLD -> "on the fold";
            case BOTH_LAYERS -> "through both layers";
            case ONE_LAYER ->
                piece.item().isMirrored()
                        ? (piece.motion().reverses() ? "mirrored" : "as drawn")
                        : piece.item().isOnFold() ? "opened out" : "as drawn";
        };
    }

    private void dimensions() {
        double width = lay.spread().tableWidth().mm();
        double length = lay.length().mm();
        Figure figure = page.figure();
        LabelPlacer placer = LabelPlacer.on(new Bounds(0, 0, Page.WIDTH, Page.HEIGHT));
        placer.avoid(Box.from(
                Fill.rim(new Bounds(0, 0, width, length)).transformed(onPage).bounds()));
        List<DimensionLine> lines = List.of(
                DimensionLine.between(
                        at(0, length), at(0, 0), lay.length().roundedUp().text()),
                DimensionLine.between(
                        at(width, length),
                        at(0, length),
                        lay.spread().tableWidth().text()));
        lines.forEach(line -> line.drawLines(figure, placer));
        lines.forEach(line -> line.drawText(figure, placer));
    }

    private void table() {
        double x = Page.WIDTH - Page.MARGIN - TABLE_WIDTH;
        double y = page.write(TextBlock.of("Buy " + lay.lengthToBuyText(), Font.NAME), x, page.top()) + 2;
        for (String text : facts()) {
            y = page.write(TextBlock.wrapped(text, Font.SMALL, TABLE_WIDTH), x, y);
        }
        List<List<String>> rows = new ArrayList<>();
        List<CutList.Item> items =
                lay.pieces().stream().map(LaidPiece::item).distinct().toList();
        items.stream()
                .sorted(Comparator.comparing(this::who).thenComparingInt(CutList.Item::number))
                .forEach(item -> rows.add(List.of(
                        (who(item) + " " + item.number()).strip() + "  "
                                + item.piece().name(),
                        instruction(item))));
        new Table(List.of("piece", "cut"), rows).draw(page.figure(), x, y + 5, TABLE_WIDTH);
    }

    /** On a single layer there is no fold to cut on. */
    private String instruction(CutList.Item item) {
        return item.isOnFold() && !lay.spread().folded()
                ? "cut " + item.count() + ", opened out"
                : item.piece().cut().instruction();
    }

    private List<String> facts() {
        List<String> facts = new ArrayList<>();
        Spread spread = lay.spread();
        facts.add(spread.width().text() + " wide"
                + (spread.shrunkWidth().equals(spread.width())
                        ? ""
                        : ", " + spread.shrunkWidth().text() + " after washing"));
        facts.add("the lay takes " + lay.length().roundedUp().text() + ", "
                + lay.use().text() + " of it in the pieces");
        if (spread.shrinksAlong().percent() > 0) {
            facts.add("wash the cloth before cutting: it shrinks by "
                    + spread.shrinksAlong().text() + " in length");
        }
        if (spread.repeat().mm() > 0) {
            facts.add("whole repeats of " + spread.repeat().text() + ", and one more for matching");
        }
        facts.add("sold in steps of " + spread.soldBy().text());
        return facts;
    }

    private Point at(double across, double along) {
        return onPage.apply(Point.of(across, along));
    }
}
