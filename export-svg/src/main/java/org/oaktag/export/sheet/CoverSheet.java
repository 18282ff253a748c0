package org.oaktag.export.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.oaktag.export.drawing.Box;
import org.oaktag.export.drawing.Colours;
import org.oaktag.export.drawing.Figure;
import org.oaktag.export.drawing.Fill;
import org.oaktag.export.drawing.Font;
import org.oaktag.export.drawing.FreeText;
import org.oaktag.export.drawing.LineType;
import org.oaktag.export.drawing.Stroke;
import org.oaktag.export.drawing.TextBlock;
import org.oaktag.garment.Allowances;
import org.oaktag.garment.Garment;
import org.oaktag.garment.Piece;
import org.oaktag.geometry.Bounds;
import org.oaktag.geometry.Point;
import org.oaktag.geometry.Transform;
import org.oaktag.measure.Length;

/**
 * The first sheet of a tiled pattern: the square to be measured and the map of the sheets, then how to join them, what
 * to cut, and what the lines mean. What does not fit is written on a sheet after it.
 */
final class CoverSheet {

    private static final double SQUARE = 100;
    private static final double GAP = 6;

    /** The narrowest column of text, mm. */
    private static final double COLUMN = 74;

    /** The height of the map on a sheet on its side, so that there is room for the legend below it, mm. */
    private static final double MAP_ON_ITS_SIDE = 44;

    /** A cut list for which there is no room on the first sheet is written in parts of so many pieces. */
    private static final int PART = 8;

    private final PatternHead head;
    private final Garment garment;
    private final Allowances allowances;
    private final TilePlan plan;
    private final Tiling tiling;
    private final double columnWidth;
    private final ColumnFlow flow;

    private CoverSheet(PatternHead head, Allowances allowances, TilePlan plan, Tiling tiling) {
        this.head = head;
        this.garment = head.garment();
        this.allowances = allowances;
        this.plan = plan;
        this.tiling = tiling;
        Bounds room = plan.grid().printed();
        int others = (int) Math.floor((room.width() - SQUARE) / (COLUMN + GAP));
        this.columnWidth = (room.width() - SQUARE) / others - GAP;
        double[] lefts = new double[others + 1];
        lefts[0] = room.minX();
        for (int i = 1; i <= others; i++) {
            lefts[i] = room.minX() + SQUARE + GAP + (i - 1) * (columnWidth + GAP);
        }
        this.flow = new ColumnFlow(room, lefts);
    }

    /** Draws as many sheets as it takes. */
    static List<List<Placement>> of(PatternHead head, Allowances allowances, TilePlan plan, Tiling tiling) {
        CoverSheet cover = new CoverSheet(head, allowances, plan, tiling);
        cover.flow.across(cover.title());
        cover.flow.besideEachOther(cover.square(), cover.map());
        cover.flow.add(cover.legend());
        // How to join them belongs on the first sheet, however many pieces there are.
        Figure joining = cover.joining();
        List<Figure> cutList = cover.cutList(head.garment().pieces().size());
        if (!cover.flow.holds(cutList.get(0), joining)) {
            cutList = cover.cutList(PART);
        }
        cover.flow.add(cutList.get(0));
        cover.flow.add(joining);
        cutList.stream().skip(1).forEach(cover.flow::add);
        cover.flow.add(cover.allowances());
        head.cautions().forEach(caution -> cover.flow.add(cover.text("Caution", List.of(caution))));
        return cover.flow.sheets();
    }

    private Figure title() {
        double width = plan.grid().printed().width();
        String wearer = "drafted for " + FreeText.shown(garment.wearer().name());
        int tiles = plan.tiles().size();
        String paper = "true scale on " + tiling.paper().name() + ": read this first; the pattern is on the "
                + (tiles == 1 ? "sheet" : tiles + " sheets") + " behind it";
        TextBlock block = TextBlock.of(Font.NAME.fitted(FreeText.shown(garment.title()), width), Font.NAME)
                .above(TextBlock.of(Font.TEXT.fitted(wearer, width), Font.TEXT))
                .above(TextBlock.of(Font.TEXT.fitted(paper, width), Font.TEXT));
        return new Figure().add(block.at(0, 0));
    }

    private Figure square() {
        Bounds square = new Bounds(0, 0, SQUARE, SQUARE);
        TextBlock text = TextBlock.of("100 mm square", Font.HEAD)
                .above(TextBlock.wrapped(
                        "Print at 100 %, not fitted to the page. Measure both the width and the height of this square:"
                                + " each must be 100 mm (" + Length.mm(SQUARE).textInInches() + ").",
                        Font.TEXT,
                        80));
        return new Figure()
                .add(Stroke.of(LineType.RULE, Fill.rim(square)))
                .add(text.at((SQUARE - text.width()) / 2, (SQUARE - text.height()) / 2));
    }

    /** Every sheet of the plane, reduced, with its number and the outlines of the pieces that it carries. */
    private Figure map() {
        Figure figure = new Figure();
        TextBlock head = TextBlock.of("Map of the sheets", Font.HEAD);
        figure.add(head.at(0, 0));
        TileGrid grid = plan.grid();
        double planeHeight = grid.rows() * grid.stepY() + grid.overlap();
        Bounds room = grid.printed();
        double tallest = room.width() > room.height() ? MAP_ON_ITS_SIDE : SQUARE - head.height();
        double scale = Math.min((room.width() - SQUARE - GAP) / grid.width(), tallest / planeHeight);
        double top = head.height() + 1;
        Transform reduced = Transform.scale(scale).then(Transform.translation(0, top));
        for (TilePlan.Tile tile : plan.tiles()) {
            Bounds cell = grid.cell(tile.column(), tile.row());
            Bounds small = new Bounds(
                    cell.minX() * scale, top + cell.minY() * scale, cell.maxX() * scale, top + cell.maxY() * scale);
            figure.add(Stroke.of(LineType.DIMENSION, Fill.rim(small)));
        }
        for (TilePlan.Seated seated : plan.pieces()) {
            Transform onPlane = Transform.translation(
                    seated.placement().dx(), seated.placement().dy());
            figure.add(Stroke.of(
                    LineType.SEAM,
                    seated.piece().cut().path().transformed(onPlane).transformed(reduced)));
        }
        for (TilePlan.Tile tile : plan.tiles()) {
            Point middle = reduced.apply(grid.cell(tile.column(), tile.row()).center());
            TextBlock number = TextBlock.of("" + tile.number(), Font.SMALL);
            // On a white plate as high as its figures, as outlines run across it.
            Bounds plate = new Box(middle, number.width(), 0.6 * number.height(), 0).bounds();
            figure.add(Fill.rectangle(plate, Colours.PAPER));
            figure.add(number.in(new Box(middle, number.width(), number.height(), 0)));
        }
        return figure;
    }

    private Figure joining() {
        String overlap = tiling.overlap().mm() > 0
                ? "Sheets overlap by " + tiling.overlap().text()
                        + ". Cut the left and the upper edge off along the joint"
                        + " line and lay the sheet on its neighbour's joint line, so that the halves of each diamond meet."
                : "Sheets are laid edge to edge. Cut them off along the joint lines and lay them together, so that the"
                        + " halves of each diamond meet.";
        return text(
                "Joining the sheets",
                List.of(
                        overlap,
                        "Equal numbers beside a diamond belong together. Join the sheets of a row first, then the rows.",
                        "A sheet left out of the map would be blank."));
    }

    private List<Figure> cutList(int part) {
        List<Figure> parts = new ArrayList<>();
        List<Piece> pieces = garment.pieces();
        for (int from = 0; from < pieces.size(); from += part) {
            List<String> lines = new ArrayList<>();
            for (int i = from; i < Math.min(from + part, pieces.size()); i++) {
                Piece piece = pieces.get(i);
                lines.add((i + 1) + "  " + piece.name() + ": " + piece.cut().instruction() + ", "
                        + piece.cloth().use());
            }
            if (from + part >= pieces.size()) {
                lines.add(LineLegend.HALVES);
            }
            parts.add(text(from == 0 ? "Cut list" : "Cut list, continued", lines));
        }
        return parts;
    }

    private Figure legend() {
        Figure figure = new Figure();
        LineLegend.draw(figure, head, List.of(LineType.JOINT), 0, 0);
        return figure;
    }

    private Figure allowances() {
        List<String> lines = new ArrayList<>();
        for (Map.Entry<Length, String> each :
                AllowanceNotes.of(garment, allowances).entrySet()) {
            lines.add(each.getKey().text() + ": " + each.getValue());
        }
        lines.add(head.sizes().isEmpty() ? LineLegend.LENGTHS : LineLegend.NESTED);
        lines.add(LineLegend.NOTCHES);
        return text("Allowances (" + allowances.name() + ")", lines);
    }

    private Figure text(String head, List<String> paragraphs) {
        Figure figure = new Figure();
        TextBlock title = TextBlock.wrapped(head, Font.HEAD, columnWidth);
        figure.add(title.at(0, 0));
        double y = title.height() + 1;
        for (String paragraph : paragraphs) {
            TextBlock block = TextBlock.wrapped(paragraph, Font.SMALL, columnWidth);
            figure.add(block.at(0, y));
            y += block.height() + 1;
        }
        return figure;
    }
}
