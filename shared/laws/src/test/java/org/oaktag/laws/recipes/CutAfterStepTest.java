package org.oaktag.laws.recipes;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.oaktag.PatternException;
import org.oaktag.adjust.StepKind;
import org.oaktag.blocks.KnitTop;
import org.oaktag.garment.Allowances;
import org.oaktag.garment.CutLine;
import org.oaktag.garment.Garment;
import org.oaktag.garment.Piece;

/**
 * What any step makes of a block can be cut with the usual allowances, but for two things that leave no room for them:
 * the legs of a dart that is narrower than both, and the hollow under an arm that is rounder.
 */
class CutAfterStepTest {

    private static final int DRAWS = 3;
    private static final Pattern NO_ROOM = Pattern.compile("dart-leg|underarm.*meet in front of its hollow");

    private final DoneSteps steps = new DoneSteps(31);

    @Test
    void every_piece_has_a_cut_line_with_the_usual_allowances_after_a_step_of_any_kind() {
        List<String> refused = new ArrayList<>();
        int cut = 0;
        for (StepKind kind : steps.kinds()) {
            for (int i = 0; i < DRAWS; i++) {
                Optional<Garment> ready = steps.ready(steps.block(i), kind);
                Optional<Garment> after =
                        ready.flatMap(garment -> steps.done(garment, kind).map(garment::adjust));
                for (Piece piece : after.map(Garment::pieces).orElse(List.of())) {
                    Allowances allowances = KnitTop.allowances(after.get());
                    try {
                        CutLine line = CutLine.of(piece, allowances);
                        assertThat(line.outline().area())
                                .isGreaterThanOrEqualTo(piece.outline().area());
                        cut++;
                    } catch (PatternException e) {
                        if (!NO_ROOM.matcher(e.getMessage()).find()) {
                            refused.add(kind.name() + ": " + e.getMessage());
                        }
                    }
                }
            }
        }
        assertThat(refused).isEmpty();
        assertThat(cut).isGreaterThan(DRAWS * steps.kinds().size());
    }
}
