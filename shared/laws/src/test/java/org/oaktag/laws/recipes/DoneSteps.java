package org.oaktag.laws.recipes;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.oaktag.PatternException;
import org.oaktag.adjust.Step;
import org.oaktag.adjust.StepKind;
import org.oaktag.blocks.KnitTop;
import org.oaktag.blocks.TopEase;
import org.oaktag.body.EaseCategory;
import org.oaktag.body.Figure;
import org.oaktag.garment.Garment;
import org.oaktag.laws.adjustments.TopArbitraries;
import org.oaktag.testkit.bodies.SurveyPopulation;

/** Steps of every kind, drawn by chance, that can be done, on blocks of surveyed bodies. */
final class DoneSteps {

    private static final int BODIES_OF_A_SEX = 6;
    private static final int DRAWS = 60;

    private final DrawnSteps drawn = new DrawnSteps();
    private final List<Garment> blocks = new ArrayList<>();
    private final Random random;

    DoneSteps(int seed) {
        random = new Random(seed);
        for (Figure figure : List.of(Figure.WOMAN, Figure.MAN)) {
            SurveyPopulation.of(figure)
                    .draw(seed)
                    .limit(BODIES_OF_A_SEX)
                    .forEach(body -> blocks.add(KnitTop.draft(
                            body.measuredAs("drawn"), TopEase.of(EaseCategory.STANDARD), TopArbitraries.CLOTH)));
        }
    }

    List<StepKind> kinds() {
        return drawn.kinds();
    }

    List<Garment> blocks() {
        return blocks;
    }

    Garment block(int i) {
        return blocks.get(i % blocks.size());
    }

    /** Returns the block with what a step of the kind needs to be there, or empty where that cannot be done on it. */
    Optional<Garment> ready(Garment block, StepKind kind) {
        Optional<String> before = switch (kind.name()) {
            case "move dart", "ease dart", "true dart fold" -> Optional.of("open dart");
            case "line hood" -> Optional.of("fit hood");
            case "armhole band" -> Optional.of("leave out sleeves");
            case "join pieces" -> Optional.of("split piece");
            default -> Optional.empty();
        };
        return before.isEmpty()
                ? Optional.of(block)
                : kinds().stream()
                        .filter(each -> each.name().equals(before.get()))
                        .findFirst()
                        .flatMap(first -> done(block, first))
                        .map(block::adjust);
    }

    /** Draws a step of a kind until one can be done on the garment. */
    Optional<Step> done(Garment garment, StepKind kind) {
        for (int i = 0; i < DRAWS; i++) {
            Step step = drawn.of(kind, random);
            try {
                garment.adjust(step);
                return Optional.of(step);
            } catch (PatternException refused) {
                // Another draw may be done.
            }
        }
        return Optional.empty();
    }
}
