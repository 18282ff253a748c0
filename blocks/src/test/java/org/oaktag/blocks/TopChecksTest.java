package org.oaktag.blocks;

import static org.assertj.core.api.Assertions.assertThat;
import static org.oaktag.measure.Length.cm;
import static org.oaktag.measure.Percent.percent;

import org.junit.jupiter.api.Test;
import org.oaktag.body.BodyBuilder;
import org.oaktag.body.BodyMeasurements;
import org.oaktag.body.EaseCategory;
import org.oaktag.body.Figure;
import org.oaktag.garment.Cloth;
import org.oaktag.garment.Fit;
import org.oaktag.garment.Garment;

/** Each finding of the fit says on which measures it rests that nobody took. */
class TopChecksTest {

    private static final Cloth KNIT = Cloth.knit("knit", percent(35));

    @Test
    void a_hem_round_a_hip_that_nobody_measured_says_so() {
        assertThat(hem(body().build())).endsWith("; the hip girth is derived, not taken");
        assertThat(hem(body().hipGirth(cm(101)).build())).doesNotContain("derived");
    }

    private static String hem(BodyMeasurements body) {
        Garment block = KnitTop.draft(body, TopEase.of(EaseCategory.STANDARD), KNIT);
        return block.fit().stream()
                .filter(fit -> fit.check().equals(TopChecks.HEM))
                .map(Fit::text)
                .findFirst()
                .orElseThrow();
    }

    private static BodyBuilder body() {
        return BodyMeasurements.builder()
                .name("observer")
                .figure(Figure.WOMAN)
                .bustGirth(cm(94.5))
                .height(cm(166));
    }
}
