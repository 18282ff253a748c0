package org.oaktag.examples.figures;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.oaktag.adjust.Recipe;
import org.oaktag.examples.lessons.LessonBook;
import org.oaktag.export.drawing.Label.Align;
import org.oaktag.export.lesson.Lesson;
import org.oaktag.export.lesson.View;
import org.oaktag.export.svg.SvgSheet;
import org.oaktag.garment.Change;
import org.oaktag.garment.Dimension;
import org.oaktag.garment.Edge;
import org.oaktag.garment.Garment;
import org.oaktag.garment.Piece;
import org.oaktag.geometry.Bounds;
import org.oaktag.geometry.Point;

/** The adjustments of the lessons, each at the first position of its slider: the pieces before and after. */
final class AdjustmentFigures {

    private static final double REDUCTION = 6;
    private static final double BETWEEN = 20;
    private static final double DIMENSION = 5;

    private AdjustmentFigures() {}

    static Map<String, SvgSheet> of(Garment block, Garment skirt) {
        Map<String, SvgSheet> all = new LinkedHashMap<>();
        for (Lesson lesson : LessonBook.on(block, skirt)) {
            all.put(
                    lesson.hyphenated(),
                    figure(
                            lesson,
                            lesson.trials().apply(lesson.slider().first()).played()));
        }
        return all;
    }

    private static SvgSheet figure(Lesson lesson, Recipe.Played played) {
        Sketch sketch = Sketch.reduced(REDUCTION);
        Change change = played.after().history().get(played.after().history().size() - 1);
        double right = 0;
        for (View view : lesson.views()) {
            Optional<Piece> before = played.before().findPiece(view.piece());
            Piece after = played.after().piece(view.piece());
            Bounds box = before.map(piece -> piece.outline().bounds())
                    .map(after.outline().bounds()::union)
                    .orElseGet(() -> after.outline().bounds());
            sketch.seated(Point.of(box.minX(), box.maxY()), right, 0).piece(after);
            before.ifPresent(piece -> changed(piece, after).forEach(edge -> sketch.before(edge.path())));
            changed(after, before.orElse(null)).forEach(edge -> sketch.strong(edge.path()));
            for (Dimension dimension : change.dimensions()) {
                if (dimension.piece().equals(view.piece())) {
                    sketch.dimension(dimension.from(), dimension.to(), dimension.text(), side(after, dimension));
                }
            }
            sketch.text(view.piece().value(), Point.of(box.center().x(), box.maxY()), 0, 17, Align.MIDDLE);
            right += box.width() / REDUCTION + BETWEEN;
        }
        return sketch.sheet(lesson.title(), change.title() + ": before, dashed, and after, wide.");
    }

    private static double side(Piece piece, Dimension dimension) {
        Point middle = dimension
                .from()
                .midpoint(dimension.to())
                .plus(dimension.to().minus(dimension.from()).unit().leftNormal().times(DIMENSION * REDUCTION));
        return piece.outline().contains(middle) ? -DIMENSION : DIMENSION;
    }

    private static List<Edge> changed(Piece piece, @Nullable Piece other) {
        return piece.edges().stream()
                .filter(edge -> other == null
                        || !other.hasEdge(edge.name())
                        || !other.path(edge.name()).equals(edge.path()))
                .toList();
    }
}
