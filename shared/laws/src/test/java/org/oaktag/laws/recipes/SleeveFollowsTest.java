package org.oaktag.laws.recipes;

import static org.assertj.core.api.Assertions.assertThat;
import static org.oaktag.adjustments.Bodies.flareSideSeams;
import static org.oaktag.measure.Length.mm;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.oaktag.PatternException;
import org.oaktag.adjust.AmountKind;
import org.oaktag.adjust.Step;
import org.oaktag.adjust.StepKind;
import org.oaktag.adjust.data.Datum;
import org.oaktag.blocks.TopEdges;
import org.oaktag.blocks.TopNames;
import org.oaktag.garment.Change;
import org.oaktag.garment.Garment;
import org.oaktag.garment.Name;
import org.oaktag.garment.Piece;

/**
 * Every step that changes the length of an armhole has the sleeve follow where that is asked for, or leaves it and says
 * so.
 */
class SleeveFollowsTest {

    private static final int DRAWS = 12;
    private static final String FOLLOWS = "sleeve follows";
    private static final String FIELD = "sleeve_follows";
    private static final String ADJUSTMENTS = "org.oaktag.adjustments";

    private final DoneSteps steps = new DoneSteps(23);

    @Test
    void every_adjustment_that_changes_an_armhole_and_leaves_its_seam_untrue_offers_the_sleeve_to_follow() {
        Set<String> leaving = new TreeSet<>();
        Set<String> offering = new TreeSet<>();
        for (StepKind kind : steps.kinds()) {
            if (offers(kind)) {
                offering.add(kind.name());
            }
            for (int i = 0; i < DRAWS && kind.type().getPackageName().equals(ADJUSTMENTS); i++) {
                Garment block = block(i);
                Optional<Step> step = steps.done(block, kind).map(drawn -> following(kind, drawn, false));
                step.map(block::adjust)
                        .filter(after -> leaves(block, after))
                        .ifPresent(after -> leaving.add(kind.name()));
            }
        }
        assertThat(leaving).isEqualTo(offering);
    }

    @Test
    void with_its_sleeve_the_step_leaves_every_seam_true_and_without_it_the_refit_is_named() {
        Set<String> left = new TreeSet<>();
        Set<String> offering = new TreeSet<>();
        for (StepKind kind :
                steps.kinds().stream().filter(SleeveFollowsTest::offers).toList()) {
            offering.add(kind.name());
            int done = 0;
            for (int i = 0; i < DRAWS; i++) {
                Garment block = block(i);
                Optional<Step> step = steps.done(block, kind);
                if (step.isPresent() && check(block, following(kind, step.get(), false), kind)) {
                    left.add(kind.name());
                }
                done += step.isPresent() ? 1 : 0;
            }
            assertThat(done).as(kind.name()).isPositive();
        }
        assertThat(left).isEqualTo(offering);
    }

    /** Returns a block, every other one with side seams that slant, so that a step may straighten them. */
    private Garment block(int i) {
        Garment block = steps.block(i);
        return i % 2 == 0 ? block : block.adjust(flareSideSeams(mm(30)).withSleeve());
    }

    /** Checks the step both ways. Returns whether it leaves seams untrue where the sleeve does not follow. */
    private static boolean check(Garment block, Step alone, StepKind kind) {
        Garment left = block.adjust(alone);
        Garment followed;
        try {
            followed = block.adjust(following(kind, alone, true));
        } catch (PatternException refused) {
            assertThat(refused).as(kind.name()).hasMessageContaining("cap");
            return false;
        }
        assertThat(followed.walkSeams().untrue()).as(alone.toString()).isEmpty();
        for (Name half : List.of(TopNames.FRONT, TopNames.BACK)) {
            assertThat(followed.piece(half).outline())
                    .as(alone.toString())
                    .isEqualTo(left.piece(half).outline());
        }
        Change told = last(followed);
        assertThat(told.amounts()).anyMatch(amount -> amount.text().contains("follows"));
        assertThat(told.notes().subList(0, 1)).isEqualTo(last(left).notes().subList(0, 1));
        assertThat(told.notes()).noneMatch(note -> note.text().contains("fit it to the armhole again"));
        List<String> untrue = new ArrayList<>(last(left).untrue());
        untrue.removeIf(text -> text.contains("refit the sleeve cap to the armhole"));
        assertThat(untrue).as(alone.toString()).isEmpty();
        return !left.walkSeams().untrue().isEmpty();
    }

    private static boolean leaves(Garment block, Garment after) {
        boolean armholes = Stream.of(TopNames.FRONT, TopNames.BACK)
                .anyMatch(half -> !armhole(block, half).equals(armhole(after, half)));
        return armholes
                && after.walkSeams().untrue().stream()
                        .anyMatch(walked -> walked.seam().refit().equals("refit the sleeve cap to the armhole"));
    }

    private static Optional<Object> armhole(Garment garment, Name half) {
        Optional<Piece> piece = garment.findPiece(half).filter(found -> found.hasEdge(TopEdges.ARMHOLE));
        return piece.map(found -> found.path(TopEdges.ARMHOLE));
    }

    private static boolean offers(StepKind kind) {
        return kind.amounts().stream().map(AmountKind::name).anyMatch(FOLLOWS::equals);
    }

    private static Step following(StepKind kind, Step step, boolean follows) {
        return offers(kind) ? kind.read("step", kind.write(step).with(FIELD, new Datum.Flag(follows))) : step;
    }

    private static Change last(Garment garment) {
        return garment.history().get(garment.history().size() - 1);
    }
}
