package org.oaktag.laws.bands;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.oaktag.laws.bands.Tops.HOOD;
import static org.oaktag.laws.bands.Tops.block;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.domains.Domain;
import org.oaktag.PatternException;
import org.oaktag.blocks.TopNames;
import org.oaktag.body.BodyMeasurements;
import org.oaktag.garment.Garment;
import org.oaktag.testkit.bodies.Adults;
import org.oaktag.testkit.bodies.Children;

/**
 * ASTM F1816 and the US CPSC's guidelines on drawstrings: no hood or neck drawstring in sizes 2T to 12. EN 14682: no
 * cord at hood or neck for children under 7 years or up to 134 cm, no free ends from 7 to 14 years.
 */
class ChildSafetyProperties {

    @Property(tries = 200)
    @Domain(Children.class)
    void a_drawstring_in_a_childs_hood_is_refused_and_the_rules_are_named(@ForAll BodyMeasurements child) {
        Garment top = block(child);
        assertThatThrownBy(() -> top.adjust(HOOD.withDrawstring()))
                .isInstanceOf(PatternException.class)
                .hasMessageContaining("hood drawstring")
                .hasMessageContaining("ASTM F1816 / US CPSC: no hood or neck drawstring in sizes 2T to 12")
                .hasMessageContaining("EN 14682")
                .hasMessageContaining("check the rules in force where it is sold");
    }

    @Property(tries = 200)
    @Domain(Children.class)
    void a_childs_hood_without_a_cord_is_fitted_and_cautions_against_one(@ForAll BodyMeasurements child) {
        Garment top = block(child).adjust(HOOD);
        assertThat(top.walkSeams().untrue()).isEmpty();
        assertThat(top.piece(TopNames.HOOD_SIDE).marks()).isEmpty();
        assertThat(top.cautions())
                .anyMatch(caution -> caution.contains("no cord may be put into this hood")
                        && caution.contains("check the rules in force where it is sold"));
    }

    @Property(tries = 200)
    @Domain(Adults.class)
    void an_adults_drawstring_is_marked_and_cautioned(@ForAll BodyMeasurements adult) {
        Garment top = block(adult).adjust(HOOD.withDrawstring());
        assertThat(top.piece(TopNames.HOOD_SIDE).marks())
                .singleElement()
                .satisfies(eyelet -> assertThat(
                                top.piece(TopNames.HOOD_SIDE).outline().contains(eyelet.point()))
                        .isTrue());
        assertThat(top.cautions())
                .anyMatch(caution ->
                        caution.contains("strangle") && caution.contains("check the rules in force where it is sold"));
    }
}
