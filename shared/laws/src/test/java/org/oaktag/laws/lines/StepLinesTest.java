package org.oaktag.laws.lines;

import static org.assertj.core.api.Assertions.assertThat;
import static org.oaktag.measure.Angle.degrees;
import static org.oaktag.measure.Length.mm;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.DoubleFunction;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.oaktag.PatternException;
import org.oaktag.adjust.Step;
import org.oaktag.adjustments.Armholes;
import org.oaktag.adjustments.Necklines;
import org.oaktag.adjustments.Shoulders;
import org.oaktag.blocks.TopEdges;
import org.oaktag.blocks.TopNames;
import org.oaktag.body.BodyMeasurements;
import org.oaktag.body.EaseCategory;
import org.oaktag.garment.Fairness;
import org.oaktag.garment.Garment;
import org.oaktag.garment.Name;
import org.oaktag.garment.Piece;
import org.oaktag.testkit.lines.LineTable;

/**
 * What a step of a neckline, a shoulder or an armhole does to the lines, over all amounts that it takes, on adults of
 * all sizes: they stay fair, or a caution names the line and says from what amount on it is not.
 */
class StepLinesTest {

    private static final int OF_EACH = 12;
    private static final double LEAST = -90;
    private static final double MOST = 150;
    private static final double APART = 7.5;

    /** The radius below which no allowance lies flat round a neckline, and an armhole hooks (common practice). */
    private static final double LEAST_NECK_RADIUS = 12;

    private static final double LEAST_ARMHOLE_RADIUS = 14;

    private static final Pattern FROM =
            Pattern.compile("from (-?[0-9.]+) (?:mm|°) on the (neckline|armhole) of the (front|back)");

    static Stream<Arguments> steps() {
        return Stream.of(
                step("widen the neckline", by -> Necklines.widenNeckline(mm(by))),
                step("lower the front neckline", by -> Necklines.lowerFrontNeckline(mm(by))),
                step("lower the back neckline", by -> Necklines.lowerBackNeckline(mm(by))),
                step("move the neckline in for a band", by -> Necklines.insetNecklineForBand(mm(by))),
                step("boat neckline", by -> Necklines.boatNeckline(mm(60), mm(by))),
                step("drop the shoulder", by -> Shoulders.dropShoulder(mm(by))),
                step("extend the shoulder", by -> Shoulders.extendShoulder(mm(by))),
                step("slope the shoulder by a length", by -> Shoulders.slopeShoulder(mm(by))),
                step("slope the shoulder by an angle", by -> Shoulders.slopeShoulder(degrees(by / 4))),
                step("move the shoulder seam", by -> Shoulders.moveShoulderForward(mm(by))),
                step("lower the armhole", by -> Armholes.lowerArmhole(mm(by))),
                step("scoop the front armhole", by -> Armholes.scoopFrontArmhole(mm(by))),
                step("widen the armhole", by -> Armholes.widenArmhole(mm(by))));
    }

    private static Arguments step(String name, DoubleFunction<Step> by) {
        return Arguments.of(name, by);
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("steps")
    void a_step_leaves_the_lines_fair_or_says_from_what_amount_on_not(String name, DoubleFunction<Step> by) {
        List<String> wrong = new ArrayList<>();
        int done = 0;
        for (EaseCategory category : List.of(EaseCategory.VERY_CLOSE, EaseCategory.STANDARD, EaseCategory.LOOSE)) {
            for (BodyMeasurements body : LineTable.adults(OF_EACH)) {
                Garment block = LineTable.block(body, category);
                for (double amount = LEAST; amount <= MOST; amount += APART) {
                    Optional<Garment> after = taken(block, by, amount);
                    if (after.isPresent()) {
                        done++;
                        check(block, after.get(), by, amount)
                                .ifPresent(why -> wrong.add(category + ", " + body.name() + ", " + why));
                    }
                }
            }
        }
        assertThat(done).isGreaterThan(100);
        assertThat(wrong).isEmpty();
    }

    private static Optional<Garment> taken(Garment block, DoubleFunction<Step> by, double amount) {
        try {
            return Optional.of(block.adjust(by.apply(amount)));
        } catch (PatternException refused) {
            return Optional.empty();
        }
    }

    private static Optional<String> check(Garment block, Garment after, DoubleFunction<Step> by, double amount) {
        for (Name piece : List.of(TopNames.FRONT, TopNames.BACK)) {
            for (Name edge : List.of(TopEdges.NECKLINE, TopEdges.ARMHOLE)) {
                Optional<String> told = after.cautions().stream()
                        .filter(caution -> caution.contains("the " + edge + " of the " + piece + " bends"))
                        .findFirst();
                boolean fair = isFair(after, piece, edge);
                if (fair == told.isPresent()) {
                    return Optional.of(amount + ": " + Fairness.of(after.piece(piece), edge) + ", told " + told);
                }
                if (told.isPresent()) {
                    Matcher from = FROM.matcher(told.get());
                    if (from.find()) {
                        double begins =
                                Double.parseDouble(from.group(1)) * (told.get().contains("°") ? 4 : 1);
                        double before = begins - Math.signum(amount) * 0.5;
                        Optional<Garment> less = taken(block, by, before);
                        if (less.isPresent() && !isFair(less.get(), piece, edge)) {
                            return Optional.of(amount + ": not fair at " + before + " either, " + told.get());
                        }
                    }
                }
            }
        }
        return Optional.empty();
    }

    private static boolean isFair(Garment garment, Name name, Name edge) {
        Piece piece = garment.piece(name);
        if (!piece.hasEdge(edge)) {
            return true;
        }
        Fairness line = Fairness.of(piece, edge);
        double least = edge.equals(TopEdges.NECKLINE) ? LEAST_NECK_RADIUS : LEAST_ARMHOLE_RADIUS;
        return line.changes() == 0 && line.leastRadius() >= least;
    }
}
