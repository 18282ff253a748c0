package org.oaktag.adjustments;

import static org.oaktag.blocks.TopNames.BACK;
import static org.oaktag.blocks.TopNames.FRONT;
import static org.oaktag.blocks.TopNames.SHOULDER_SEAM;
import static org.oaktag.blocks.TopNames.SIDE_SEAM;
import static org.oaktag.blocks.TopNames.SLEEVE;
import static org.oaktag.blocks.TopNames.SLEEVE_SEAM;

import java.util.stream.Stream;
import org.oaktag.adjust.Darts;
import org.oaktag.adjust.Pieces;
import org.oaktag.adjust.StepCatalogue;
import org.oaktag.adjust.StepKind;

/**
 * Every kind of step for a top, and every general one, with what is usual for its amounts (common practice of the
 * trade, signs as in the step's own words: negative to narrow, raise or shorten).
 *
 * <pre>{@code
 * StepCatalogue all = TopSteps.catalogue();
 * all.kinds().stream().map(StepKind::name).toList();   // "widen neckline", "lower neckline" ...
 * }</pre>
 */
public final class TopSteps {

    private static final StepCatalogue CATALOGUE = Stream.of(
                    Shoulders.steps(),
                    Armholes.steps(),
                    Bodies.steps(),
                    Sleeves.steps(),
                    Bands.steps(),
                    Hoods.steps(),
                    Finishes.steps(),
                    new StepCatalogue(
                            Pieces.steps().kinds().stream().map(TopSteps::ofTop).toList()),
                    Darts.steps())
            .reduce(Necklines.steps(), StepCatalogue::with);

    private TopSteps() {}

    /** Returns the catalogue of these kinds; add kinds of your own with {@link StepCatalogue#with(StepKind)}. */
    public static StepCatalogue catalogue() {
        return CATALOGUE;
    }

    private static StepKind ofTop(StepKind general) {
        return switch (general.name()) {
            case "cut from", "mirror piece" -> general.among("piece", FRONT, BACK, SLEEVE);
            case "unfold piece" -> general.among("piece", FRONT, BACK);
            case "true corner" -> general.among("seam", SHOULDER_SEAM, SIDE_SEAM, SLEEVE_SEAM);
            default -> general;
        };
    }
}
