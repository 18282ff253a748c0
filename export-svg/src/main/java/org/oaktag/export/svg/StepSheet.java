package org.oaktag.export.svg;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.oaktag.adjust.Recipe;
import org.oaktag.export.drawing.Font;
import org.oaktag.export.drawing.FreeText;
import org.oaktag.export.drawing.LineType;
import org.oaktag.export.drawing.Stroke;
import org.oaktag.export.drawing.Table;
import org.oaktag.export.drawing.TextBlock;
import org.oaktag.export.layout.LabelPlacer;
import org.oaktag.export.layout.Skyline;
import org.oaktag.garment.Change;
import org.oaktag.garment.Garment;
import org.oaktag.garment.Moved;
import org.oaktag.garment.Name;
import org.oaktag.garment.Note;
import org.oaktag.geometry.Bounds;
import org.oaktag.geometry.Point;
import org.oaktag.measure.Length;

/** What one step did: the pieces before it and after it on each other, its amounts, and what moved most. */
final class StepSheet {

    private static final double SIDE_WIDTH = 122;
    private static final double SIDE_X = Page.WIDTH - Page.MARGIN - SIDE_WIDTH;
    private static final double ROOM_WIDTH = SIDE_X - 2 * Page.MARGIN;
    private static final double FOOT = 12;

    /** The room beside a piece, and above and below it, for its dimensions, mm on the page. */
    private static final double PADDING_X = 9;

    private static final double PADDING_Y = 13;

    private static final int MOST_ROWS = 14;

    private final Page page;
    private final Change change;
    private final double roomHeight;
    private final LabelPlacer placer;

    private StepSheet(Page page, Change change) {
        this.page = page;
        this.change = change;
        this.roomHeight = Page.HEIGHT - page.top() - Page.MARGIN - FOOT;
        this.placer =
                LabelPlacer.on(new Bounds(Page.MARGIN, page.top(), Page.MARGIN + ROOM_WIDTH, page.top() + roomHeight));
    }

    static String draw(int number, Recipe.Played played) {
        Garment after = played.after();
        Change change = after.history().get(after.history().size() - 1);
        String title = number + "  " + FreeText.shown(change.title());
        String subtitle = FreeText.shown(after.title()) + ", for "
                + FreeText.shown(after.wearer().name());
        StepSheet sheet = new StepSheet(Page.titled(title, subtitle), change);
        sheet.pieces(played.before(), after);
        sheet.legend();
        sheet.side();
        return sheet.page.end("The pieces before the step, light and dashed, and after it, dark.", List.of());
    }

    private void pieces(Garment before, Garment after) {
        List<BeforeAndAfter> all = new ArrayList<>();
        for (Name name : change.pieces()) {
            all.add(BeforeAndAfter.of(name, before.findPiece(name), after.findPiece(name)));
        }
        before.pieces().stream()
                .filter(piece -> !after.hasPiece(piece.name()))
                .forEach(piece -> all.add(BeforeAndAfter.of(piece.name(), Optional.of(piece), Optional.empty())));
        if (all.isEmpty()) {
            page.write(TextBlock.of("No piece was redrawn.", Font.TEXT), Page.MARGIN, page.top());
            return;
        }
        double reduction = reduction(all);
        List<Bounds> places = places(all, reduction);
        for (int i = 0; i < all.size(); i++) {
            all.get(i).drawLines(page.figure(), placer, reduction, seat(places.get(i)));
        }
        List<DimensionLine> dimensions = new ArrayList<>();
        for (int i = 0; i < all.size(); i++) {
            dimensions.addAll(all.get(i).dimensionLines(reduction, seat(places.get(i)), change.dimensions()));
        }
        dimensions.forEach(each -> each.drawLines(page.figure(), placer));
        dimensions.forEach(each -> each.drawText(page.figure(), placer));
        for (int i = 0; i < all.size(); i++) {
            all.get(i).drawName(page.figure(), placer, reduction, seat(places.get(i)));
        }
        page.scaleBar(reduction);
    }

    private Point seat(Bounds place) {
        return Point.of(Page.MARGIN + place.minX() + PADDING_X, page.top() + place.minY() + PADDING_Y);
    }

    private double reduction(List<BeforeAndAfter> all) {
        return Page.reductions().stream()
                .filter(each -> fits(all, each))
                .findFirst()
                .orElse(Page.reductions().get(Page.reductions().size() - 1));
    }

    private boolean fits(List<BeforeAndAfter> all, double reduction) {
        double widest = all.stream()
                .mapToDouble(each -> each.bounds().width() / reduction + 2 * PADDING_X)
                .max()
                .orElse(0);
        return widest <= ROOM_WIDTH
                && places(all, reduction).stream()
                                .mapToDouble(Bounds::maxY)
                                .max()
                                .orElse(0)
                        <= roomHeight;
    }

    private static List<Bounds> places(List<BeforeAndAfter> all, double reduction) {
        List<Bounds> sizes = all.stream()
                .map(each -> new Bounds(
                        0,
                        0,
                        each.bounds().width() / reduction + 2 * PADDING_X,
                        each.bounds().height() / reduction + 2 * PADDING_Y))
                .toList();
        return Skyline.pack(sizes, ROOM_WIDTH, 0);
    }

    private void legend() {
        double x = SIDE_X;
        double y = Page.HEIGHT - Page.MARGIN - 2;
        for (LineType type : List.of(LineType.BEFORE, LineType.AFTER, LineType.SEAM)) {
            page.figure().add(Stroke.line(type, Point.of(x, y), Point.of(x + 12, y)));
            TextBlock text = TextBlock.of(type == LineType.SEAM ? "as it was" : type.meaning(), Font.SMALL);
            page.write(text, x + 14, y - text.height() / 2);
            x += 14 + text.width() + 5;
        }
    }

    private void side() {
        double y = page.top();
        y = page.write(TextBlock.of("What moved most", Font.HEAD), SIDE_X, y) + 1;
        List<Moved> moved = change.moved().stream()
                .filter(each -> each.by().isPresent() || !each.watched().isOfSeam())
                .sorted(Comparator.comparingDouble(StepSheet::size).reversed())
                .toList();
        List<List<String>> rows = moved.stream()
                .limit(MOST_ROWS)
                .map(each -> List.of(
                        each.watched().text(), text(each.before()), text(each.after()), change(each), inches(each)))
                .toList();
        y = new Table(List.of("mm", "before", "after", "change", "in"), rows)
                .draw(page.figure(), SIDE_X, y, SIDE_WIDTH);
        if (moved.size() > MOST_ROWS) {
            y = page.write(TextBlock.of("and " + (moved.size() - MOST_ROWS) + " more", Font.SMALL), SIDE_X, y);
        }
        y += 4;
        for (Note note : change.notes()) {
            String kind = switch (note.kind()) {
                case RULE -> "Rule: ";
                case DONE -> "Also done: ";
                case CAUTION -> "Caution: ";
                case FIT -> "Fit: ";
            };
            TextBlock block =
                    TextBlock.wrapped(kind + BothUnits.of(FreeText.shown(note.text())), Font.SMALL, SIDE_WIDTH);
            if (y + block.height() < Page.HEIGHT - Page.MARGIN - FOOT) {
                y = page.write(block, SIDE_X, y) + 1.5;
            }
        }
    }

    /** What is new or gone counts by its whole size, after whatever was only moved. */
    private static double size(Moved moved) {
        return moved.by().map(by -> Math.abs(by.mm())).orElse(-1.0);
    }

    private static String text(Optional<Length> length) {
        return length.map(StepSheet::tenths).orElse("none");
    }

    private static String change(Moved moved) {
        return moved.by()
                .map(each -> (each.mm() > 0 ? "+" : "") + tenths(each))
                .orElse(moved.after().isPresent() ? "new" : "gone");
    }

    private static String inches(Moved moved) {
        return moved.by()
                .map(each -> signed(each, each.textInInches()))
                .or(() -> moved.after().or(moved::before).map(Length::textInInches))
                .orElse("")
                .replace(" in", "");
    }

    /** A length that shows as zero has no sign. */
    private static String signed(Length length, String text) {
        return length.mm() > 0 && !text.equals(Length.ZERO.textInInches()) ? "+" + text : text;
    }

    private static String tenths(Length length) {
        return length.text().replace(" mm", "");
    }
}
