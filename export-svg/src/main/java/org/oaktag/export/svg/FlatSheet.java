package org.oaktag.export.svg;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.oaktag.export.drawing.ClothPaint;
import org.oaktag.export.drawing.Figure;
import org.oaktag.export.drawing.Fill;
import org.oaktag.export.drawing.Font;
import org.oaktag.export.drawing.FreeText;
import org.oaktag.export.drawing.LineType;
import org.oaktag.export.drawing.Stroke;
import org.oaktag.export.drawing.Table;
import org.oaktag.export.drawing.TextBlock;
import org.oaktag.export.sheet.Cloths;
import org.oaktag.garment.Aspect;
import org.oaktag.garment.Cloth;
import org.oaktag.garment.FinishedMeasure;
import org.oaktag.garment.FlatShape;
import org.oaktag.garment.Garment;
import org.oaktag.geometry.Bounds;
import org.oaktag.geometry.Transform;
import org.oaktag.measure.Length;

/** The garment laid flat, front and back, in its cloths, with its finished measures beside it. */
final class FlatSheet {

    private static final double ROOM_WIDTH = Page.WIDTH - 2 * Page.MARGIN;
    private static final double FOOT = 14;
    private static final double CAPTION = 8;
    private static final double BETWEEN = 8;

    /** The reduction of a view by itself. */
    private static final double ALONE = 10;

    private static final double CLOTHS_WIDTH = 112;
    private static final double TABLE_GAP = 14;

    /** What stands behind a measure of the body that was not taken. */
    private static final String DERIVED = "*";

    private FlatSheet() {}

    static String draw(Garment garment) {
        Page page = Page.titled(
                FreeText.shown(garment.title()),
                "laid flat for " + FreeText.shown(garment.wearer().name())
                        + "; folded where it is folded, gathered where it is gathered");
        Cloths cloths = Cloths.of(garment);
        double legendTop = Page.HEIGHT - Page.MARGIN - FOOT - legendHeight(garment, cloths);
        views(page, garment, cloths, legendTop - page.top() - BETWEEN);
        cloths(page, cloths, legendTop);
        measures(page, garment, legendTop);
        return page.end("The garment laid flat, front and back, reduced; the bar gives the scale.", cloths.used());
    }

    static String drawAlone(Garment garment, boolean front) {
        Cloths cloths = Cloths.of(garment);
        List<FlatShape> placed = garment.laidFlat(front ? Aspect.FRONT : Aspect.BACK).stream()
                .map(shape -> shape.transformed(Transform.scale(1 / ALONE)))
                .toList();
        Figure figure = new Figure();
        placed.forEach(shape -> DrawnShape.silhouette(shape, figure));
        placed.forEach(shape -> DrawnShape.draw(shape, figure, cloths));
        Bounds box = figure.bounds();
        String side = front ? "front" : "back";
        return SvgDocument.beginBare(
                        box.width(),
                        box.height(),
                        FreeText.shown(garment.title()) + ", " + side,
                        "The " + side + " laid flat, at a tenth of its size.",
                        cloths.used())
                .draw(side, figure, -box.minX(), -box.minY())
                .end();
    }

    private static void views(Page page, Garment garment, Cloths cloths, double room) {
        List<FlatShape> front = garment.laidFlat(Aspect.FRONT);
        List<FlatShape> back = garment.laidFlat(Aspect.BACK);
        double width = Math.max(bounds(front).width(), bounds(back).width());
        double height = Math.max(bounds(front).height(), bounds(back).height());
        double reduction = Page.reduction(2 * width, height, ROOM_WIDTH - BETWEEN, room - CAPTION);
        double top = page.top() + (room - CAPTION - height / reduction) / 2;
        view(page, "front", front, cloths, Page.reduced(reduction, Page.MARGIN + ROOM_WIDTH / 4, top));
        view(page, "back", back, cloths, Page.reduced(reduction, Page.MARGIN + 3 * ROOM_WIDTH / 4, top));
        page.scaleBar(reduction);
    }

    /** Draws a view below its name, its middle and its top where the map puts the origin. */
    private static void view(Page page, String name, List<FlatShape> shapes, Cloths cloths, Transform reduced) {
        TextBlock caption = TextBlock.of(name, Font.HEAD);
        page.write(caption, reduced.e() - caption.width() / 2, reduced.f());
        Bounds box = bounds(shapes);
        Transform onPage = Transform.translation(-box.center().x(), -box.minY())
                .then(reduced)
                .then(Transform.translation(0, CAPTION));
        List<FlatShape> placed =
                shapes.stream().map(shape -> shape.transformed(onPage)).toList();
        placed.forEach(shape -> DrawnShape.silhouette(shape, page.figure()));
        placed.forEach(shape -> DrawnShape.draw(shape, page.figure(), cloths));
    }

    private static Bounds bounds(List<FlatShape> shapes) {
        return shapes.stream()
                .map(shape -> shape.outline().bounds())
                .reduce(Bounds::union)
                .orElseThrow();
    }

    private static double legendHeight(Garment garment, Cloths cloths) {
        int lines = Math.max(
                (garment.measures().size() + 1) / 2, 1 + cloths.paints().size());
        return (lines + 2.5) * Font.SMALL.lineHeight();
    }

    private static void cloths(Page page, Cloths cloths, double top) {
        Figure figure = page.figure();
        double y = page.write(TextBlock.of("Cloths", Font.HEAD), Page.MARGIN, top) + 1.5;
        for (Map.Entry<Cloth, ClothPaint> each : cloths.paints().entrySet()) {
            Bounds swatch = new Bounds(Page.MARGIN, y + 0.4, Page.MARGIN + 10, y + 5);
            figure.add(Fill.rectangle(swatch, each.getValue().paint()));
            figure.add(Stroke.of(LineType.SEAM, Fill.rim(swatch)));
            String text =
                    each.getKey().use() + ": " + FreeText.shown(each.getKey().description());
            String fitted = Font.SMALL.fitted(text, CLOTHS_WIDTH - 14);
            y = page.write(TextBlock.of(fitted, Font.SMALL), Page.MARGIN + 13, y) + 1.2;
        }
    }

    /** Half of the measures beside the other half. */
    private static void measures(Page page, Garment garment, double top) {
        List<List<String>> rows = new ArrayList<>();
        garment.measures()
                .forEach(measure -> measure.taken(garment).ifPresent(finished -> {
                    Optional<Length> body = measure.body().map(garment.wearer()::measure);
                    rows.add(List.of(
                            measure.name().value(),
                            number(finished),
                            body.map(FlatSheet::number).orElse("") + mark(garment, measure),
                            body.map(finished::minus).map(FlatSheet::number).orElse("")));
                }));
        if (rows.isEmpty()) {
            return;
        }
        double x = Page.MARGIN + CLOTHS_WIDTH + TABLE_GAP;
        double width = (Page.WIDTH - Page.MARGIN - x - TABLE_GAP) / 2;
        int half = (rows.size() + 1) / 2;
        List<String> head = List.of("finished, mm", "garment", "body", "ease");
        double below = new Table(head, rows.subList(0, half)).draw(page.figure(), x, top, width);
        if (half < rows.size()) {
            new Table(head, rows.subList(half, rows.size())).draw(page.figure(), x + width + TABLE_GAP, top, width);
        }
        if (rows.stream().anyMatch(row -> row.get(2).endsWith(DERIVED))) {
            page.write(TextBlock.of(DERIVED + " derived from other measures, not taken", Font.SMALL), x, below + 1);
        }
    }

    private static String mark(Garment garment, FinishedMeasure measure) {
        return measure.body().filter(garment.wearer()::isDerived).isPresent() ? DERIVED : "";
    }

    private static String number(Length length) {
        return length.text().replace(" mm", "");
    }
}
