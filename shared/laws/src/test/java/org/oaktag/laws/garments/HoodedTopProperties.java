package org.oaktag.laws.garments;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.domains.Domain;
import net.jqwik.api.domains.DomainContext;
import net.jqwik.api.statistics.Statistics;
import org.oaktag.PatternException;
import org.oaktag.blocks.TopEdges;
import org.oaktag.blocks.TopNames;
import org.oaktag.body.BodyMeasurements;
import org.oaktag.examples.HoodedTop;
import org.oaktag.garment.Garment;
import org.oaktag.garment.Name;
import org.oaktag.garment.Piece;
import org.oaktag.garment.SeamRule;
import org.oaktag.garment.WalkedSeam;
import org.oaktag.testkit.bodies.Adults;

/**
 * The hooded top for grown bodies drawn from the 2012 survey of the U.S. Army (Gordon et al., NATICK/TR-15/007): its
 * published means, standard deviations and correlations, both sexes.
 */
@Domain(Adults.class)
@Domain(DomainContext.Global.class)
class HoodedTopProperties {

    private static final Name CROWN = Name.of("crown");
    private static final double LAP = 50;

    @Property(tries = 1200)
    void every_grown_body_gets_a_top_whose_seams_are_true_or_a_reason(@ForAll BodyMeasurements body) {
        Garment top;
        try {
            top = HoodedTop.recipe(false).applyTo(HoodedTop.block(body));
        } catch (PatternException refused) {
            assertThat(refused.thing()).isNotBlank();
            assertThat(refused.rule()).isNotBlank();
            assertThat(refused.given()).isNotBlank();
            Statistics.collect("refused");
            return;
        }
        Statistics.collect("made");
        assertThat(top.walkSeams().untrue()).isEmpty();
        for (WalkedSeam seam : top.walkSeams().seams()) {
            if (seam.seam().rule() instanceof SeamRule.Flat) {
                assertThat(seam.difference().mm()).as("%s", seam.seam().name()).isCloseTo(0, within(0.01));
            }
        }
        for (Piece piece : top.pieces()) {
            assertThat(piece.outline().selfCrossings()).as("%s", piece.name()).isEmpty();
        }
        Statistics.coverage(coverage -> coverage.check("made").percentage(share -> share > 99.5));
    }

    @Property(tries = 200)
    void the_hood_follows_the_neckline_and_its_strip_the_crown(@ForAll BodyMeasurements body) {
        Garment top = HoodedTop.recipe(false).applyTo(HoodedTop.block(body));
        double neckEdge = 2 * (length(top, TopNames.HOOD_SIDE, "neck") + length(top, TopNames.HOOD_CENTRE, "neck"));
        double neckline = 2
                * (top.piece(TopNames.FRONT).path(TopEdges.NECKLINE).length()
                        + top.piece(TopNames.BACK).path(TopEdges.NECKLINE).length());
        assertThat(neckEdge - LAP).as("neck edge less the lap").isCloseTo(neckline, within(0.01));
        assertThat(top.piece(TopNames.HOOD_CENTRE).path(CROWN).length())
                .isCloseTo(top.piece(TopNames.HOOD_SIDE).path(CROWN).length(), within(0.01));
    }

    private static double length(Garment top, Name piece, String edge) {
        return top.piece(piece).path(Name.of(edge)).length();
    }
}
