package org.oaktag.testkit.bodies;

import static org.assertj.core.api.Assertions.assertThat;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.domains.Domain;
import org.oaktag.body.BodyMeasure;
import org.oaktag.body.BodyMeasurements;
import org.oaktag.body.PlausibleRange;

class GeneratedBodiesProperties {

    @Property
    @Domain(Adults.class)
    void an_adult_has_every_measure_and_each_is_plausible(@ForAll BodyMeasurements body) {
        assertThat(body.isChild()).isFalse();
        assertThat(body.measures()).containsOnlyKeys(BodyMeasure.values());
        body.measures()
                .forEach((measure, length) -> assertThat(
                                PlausibleRange.of(measure, body.figure()).includes(length))
                        .as("%s %s", measure, length)
                        .isTrue());
    }

    @Property
    @Domain(Children.class)
    void a_child_has_every_measure_and_none_is_derived(@ForAll BodyMeasurements body) {
        assertThat(body.isChild()).isTrue();
        assertThat(body.ageYears()).isPresent();
        assertThat(body.measures()).containsOnlyKeys(BodyMeasure.values());
        assertThat(body.derived()).isEmpty();
    }

    @Property
    @Domain(Adults.class)
    void a_body_rebuilt_from_what_was_taken_is_the_same_body(@ForAll BodyMeasurements body) {
        assertThat(body.toBuilder().build()).isEqualTo(body);
    }
}
