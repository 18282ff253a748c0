package org.oaktag.laws.recipes;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.oaktag.PatternException;
import org.oaktag.adjust.AmountKind;
import org.oaktag.adjust.Step;
import org.oaktag.adjust.StepKind;
import org.oaktag.adjust.data.Datum;
import org.oaktag.export.drawing.Ink;
import org.oaktag.export.drawing.Label;
import org.oaktag.export.drawing.LineType;
import org.oaktag.export.drawing.Stroke;
import org.oaktag.export.sheet.PieceDrawing;
import org.oaktag.garment.Allowances;
import org.oaktag.garment.Garment;
import org.oaktag.garment.Grainline;
import org.oaktag.garment.InnerLine;
import org.oaktag.garment.Mark;
import org.oaktag.garment.Piece;
import org.oaktag.geometry.Curve;
import org.oaktag.geometry.Outline;
import org.oaktag.geometry.Point;
import org.oaktag.measure.Length;

/** What is drawn on a piece lies inside it, after a step of any kind and after many, however large their amounts. */
class InsideThePieceTest {

    /**
     * Amounts by so many times what is usual, refused ones left out: a crop is a body lengthened by much less than
     * nothing.
     */
    private static final double[] TIMES = {1, -20, -12, -5, 0.3, 5, 12};

    private static final int BODIES = 4;
    private static final int RECIPES = 250;
    private static final int STEPS = 12;
    private static final int DRAWN_EACH = 7;

    /** How far inside its corner a hole is drilled: an eighth of an inch and the drill (common practice). */
    private static final double HOLE = 4;

    private static final double ROUNDING = 1e-6;

    private final DoneSteps steps = new DoneSteps(47);
    private final Set<String> outside = new TreeSet<>();
    private int looked;
    private int holes;
    private int drawn;

    @Test
    void grainlines_marks_and_labels_lie_inside_after_a_step_of_any_kind() {
        for (StepKind kind : steps.kinds()) {
            for (int i = 0; i < BODIES; i++) {
                Garment block = steps.block(3 * i);
                Optional<Garment> ready = steps.ready(block, kind);
                Optional<Step> step = ready.flatMap(garment -> steps.done(garment, kind));
                for (double times : step.isPresent() ? TIMES : new double[0]) {
                    play(ready.get(), kind, step.get(), times);
                }
            }
        }
        assertThat(outside).isEmpty();
        assertThat(looked).isGreaterThan(4 * BODIES * steps.kinds().size());
        assertThat(drawn).isGreaterThan(300);
        assertThat(holes).isGreaterThan(3 * BODIES);
    }

    @Test
    void they_do_after_many_steps() {
        DrawnSteps any = new DrawnSteps();
        Random random = new Random(8);
        for (int i = 0; i < RECIPES; i++) {
            Garment garment = steps.block(i);
            for (int k = 0; k < STEPS; k++) {
                StepKind kind = steps.kinds().get(random.nextInt(steps.kinds().size()));
                double times = random.nextInt(3) == 0 ? TIMES[random.nextInt(TIMES.length)] : 1;
                garment = play(garment, kind, any.of(kind, random), times);
            }
        }
        assertThat(outside).isEmpty();
        assertThat(looked).isGreaterThan(4 * RECIPES);
        assertThat(holes).isGreaterThan(RECIPES / 10);
    }

    private Garment play(Garment garment, StepKind kind, Step step, double times) {
        Garment after;
        try {
            after = garment.adjust(times == 1 ? step : scaled(kind, step, times));
        } catch (PatternException refused) {
            return garment;
        }
        for (Piece piece : after.pieces()) {
            check(kind.name() + " x " + times + ": " + piece.name(), piece);
        }
        if (looked % DRAWN_EACH == 0) {
            draw(kind.name() + " x " + times, after);
        }
        return after;
    }

    private static Step scaled(StepKind kind, Step step, double times) {
        Datum.Fields written = kind.write(step);
        for (AmountKind amount : kind.amounts()) {
            if (amount.unit().equals("mm") && written.values().get(amount.field()) instanceof Datum.Numeral number) {
                written =
                        written.with(amount.field(), new Datum.Numeral(Math.round(number.value() * times * 10) / 10.0));
            }
        }
        return kind.read("scaled", written);
    }

    private void check(String where, Piece piece) {
        looked++;
        Outline outline = piece.outline();
        Grainline grain = piece.grainline();
        for (int i = 0; i <= 20; i++) {
            expectInside(where + ", grainline", outline, grain.top().lerp(grain.bottom(), i / 20.0));
        }
        for (Mark mark : piece.marks()) {
            expectInside(where + ", " + mark.name(), outline, mark.point());
            if (mark.use() == Mark.Use.DRILL) {
                checkHole(where, piece, mark);
            }
        }
    }

    /** A hole is at its distance from the corner that it marks, and inside what is laid on there. */
    private void checkHole(String where, Piece piece, Mark hole) {
        String part = hole.name().value().replaceFirst(" corner.*", "");
        double nearest = piece.lines().stream()
                .filter(line -> line.name().value().startsWith(part))
                .map(InnerLine::path)
                .flatMap(path -> path.curves().stream())
                .mapToDouble(side -> Math.abs(side.start().distanceTo(hole.point()) - HOLE))
                .min()
                .orElse(Double.POSITIVE_INFINITY);
        if (nearest > ROUNDING) {
            outside.add(where + ": the hole '" + hole.name() + "' is "
                    + Length.mm(nearest).text() + " off");
        }
        holes++;
    }

    private void draw(String where, Garment garment) {
        for (Piece piece : garment.pieces()) {
            List<Ink> inks;
            try {
                inks = PieceDrawing.of(garment, piece, Allowances.of("none", Length.ZERO))
                        .inks();
            } catch (PatternException refused) {
                continue;
            }
            drawn++;
            Outline outline = piece.outline();
            for (Ink ink : inks) {
                if (ink instanceof Label label
                        && label.bounds().minY() <= outline.bounds().maxY()) {
                    label.box()
                            .corners()
                            .forEach(corner -> expectInside(
                                    where + ": " + piece.name() + ", label '"
                                            + label.block().lines().get(0).text() + "'",
                                    outline,
                                    corner));
                } else if (ink instanceof Stroke stroke && stroke.type() == LineType.GRAIN) {
                    for (Curve curve : stroke.path().curves()) {
                        expectInside(where + ": " + piece.name() + ", a line of the grain", outline, curve.start());
                        expectInside(where + ": " + piece.name() + ", a line of the grain", outline, curve.end());
                    }
                }
            }
        }
    }

    private void expectInside(String what, Outline outline, Point point) {
        if (!outline.contains(point) && outline.path().nearest(point).distance() > ROUNDING) {
            outside.add(what);
        }
    }
}
