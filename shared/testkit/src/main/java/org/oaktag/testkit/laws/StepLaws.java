package org.oaktag.testkit.laws;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Collectors;
import org.oaktag.adjust.Comparison;
import org.oaktag.adjust.History;
import org.oaktag.adjust.Step;
import org.oaktag.garment.Change;
import org.oaktag.garment.Garment;
import org.oaktag.garment.Moved;
import org.oaktag.garment.Name;
import org.oaktag.garment.Piece;
import org.oaktag.garment.SeamWalk;
import org.oaktag.garment.WalkedSeam;

/**
 * What every step must keep, whoever wrote it: the garment it was given stays as it was, taken twice from there it
 * makes the same, each seam is true or named with what mends it, no outline crosses itself, and the history is what an
 * independent measurement of before and after finds.
 *
 * <pre>{@code
 * StepLaws laws = new StepLaws();
 * Garment after = laws.assertKept(garment, flareGaiter(cm(4)));
 * }</pre>
 *
 * <p>Keeps what it has measured, so that a long run of steps is not measured over and over. Not for several threads.
 */
public final class StepLaws {

    /** How far, in mm, the history may lie off the measurement by another rule. */
    private static final double AGREES = 1e-4;

    private final Measured measured = new Measured();

    /**
     * Takes a step, checks that it keeps the laws, and returns what it made.
     *
     * @throws AssertionError if it breaks one; the message tells the history
     * @throws org.oaktag.PatternException if the step is refused
     */
    public Garment assertKept(Garment garment, Step step) {
        int history = garment.history().size();
        Garment after = garment.adjust(step);
        assertThat(garment.history()).as("the garment before it was touched").hasSize(history);
        assertThat(after.history()).as("entries in the history").hasSize(history + 1);
        assertThat(garment.adjust(step))
                .as("the same step taken again from before")
                .isEqualTo(after);
        String told = told(after);
        Change change = after.history().get(history);
        checkSeams(told, after, change);
        checkMeasures(told, after);
        checkOutlines(told, after, change);
        checkMoved(told, measured.all(garment), measured.all(after), change);
        return after;
    }

    /**
     * Checks that the changes of a history add up to what a garment differs in from its block.
     *
     * @throws AssertionError if they do not
     */
    public void assertAddsUp(Garment block, Garment garment) {
        checkTotal(block, garment);
    }

    private static void checkSeams(String told, Garment garment, Change change) {
        SeamWalk walk = SeamWalk.of(garment);
        assertThat(garment.walkSeams()).as("walk taken over in part, %s", told).isEqualTo(walk);
        assertThat(change.untrue()).as(told).hasSameSizeAs(walk.untrue());
        for (WalkedSeam seam : walk.untrue()) {
            assertThat(change.untrue())
                    .as(told)
                    .anyMatch(text -> text.startsWith(seam.seam().name() + ": ")
                            && text.contains(seam.seam().refit()));
            assertThat(seam.seam().refit()).as(told).isNotBlank();
        }
    }

    /** A garment of the same pieces that was made by no step has no earlier one to take measures over from. */
    private static void checkMeasures(String told, Garment garment) {
        assertThat(garment.takeMeasures())
                .as("measures taken over in part, %s", told)
                .isEqualTo(garment.withPieces(garment.pieces()).takeMeasures());
        assertThat(garment.fit())
                .as("answers of the fit taken over in part, %s", told)
                .isEqualTo(garment.withPieces(garment.pieces()).fit());
    }

    private static void checkOutlines(String told, Garment garment, Change change) {
        for (Name name : change.pieces()) {
            Piece piece = garment.piece(name);
            assertThat(piece.outline().selfCrossings())
                    .as("crossings of the %s, %s", name, told)
                    .isEmpty();
            assertThat(piece.outline().isClockwise())
                    .as("the %s lies the right way round, %s", name, told)
                    .isTrue();
        }
    }

    private static void checkMoved(String told, Map<String, Double> before, Map<String, Double> after, Change change) {
        Map<String, Moved> moved = new LinkedHashMap<>();
        for (Moved each : change.moved()) {
            assertThat(moved.put(each.watched().text(), each))
                    .as("%s twice, %s", each, told)
                    .isNull();
            assertThat(each.before().isPresent())
                    .as("%s, %s", each, told)
                    .isEqualTo(before.containsKey(each.watched().text()));
            assertThat(each.after().isPresent())
                    .as("%s, %s", each, told)
                    .isEqualTo(after.containsKey(each.watched().text()));
            each.before()
                    .ifPresent(length -> assertThat(length.mm())
                            .as("%s before, %s", each.watched().text(), told)
                            .isCloseTo(before.get(each.watched().text()), within(AGREES)));
            each.after()
                    .ifPresent(length -> assertThat(length.mm())
                            .as("%s after, %s", each.watched().text(), told)
                            .isCloseTo(after.get(each.watched().text()), within(AGREES)));
        }
        after.forEach((quantity, now) -> {
            Double old = before.get(quantity);
            if (old == null || Math.abs(now - old) > AGREES) {
                assertThat(moved).as(told).containsKey(quantity);
            }
        });
        before.keySet().stream()
                .filter(quantity -> !after.containsKey(quantity))
                .forEach(quantity -> assertThat(moved).as(told).containsKey(quantity));
    }

    /** The changes added up are what the last garment differs in from the block. */
    private static void checkTotal(Garment block, Garment garment) {
        Map<String, Moved> expected = byQuantity(Comparison.moved(block, garment));
        Map<String, Moved> total = byQuantity(History.of(garment).sinceTheBlock());
        assertThat(total.keySet()).as(told(garment)).containsExactlyInAnyOrderElementsOf(expected.keySet());
        expected.forEach((quantity, moved) -> {
            Moved added = Objects.requireNonNull(total.get(quantity));
            assertThat(added.before().isPresent()).isEqualTo(moved.before().isPresent());
            assertThat(added.after().isPresent()).isEqualTo(moved.after().isPresent());
            moved.after()
                    .ifPresent(length -> assertThat(added.after().orElseThrow().mm())
                            .as(quantity)
                            .isCloseTo(length.mm(), within(AGREES)));
        });
    }

    private static Map<String, Moved> byQuantity(List<Moved> moved) {
        return moved.stream()
                .filter(each -> each.by().map(by -> Math.abs(by.mm()) > AGREES).orElse(true))
                .collect(Collectors.toMap(each -> each.watched().text(), each -> each));
    }

    private static String told(Garment garment) {
        return garment.history().stream().map(Change::title).toList().toString();
    }
}
