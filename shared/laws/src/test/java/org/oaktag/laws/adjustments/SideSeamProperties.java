package org.oaktag.laws.adjustments;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.oaktag.adjustments.Bodies.cutSideVent;
import static org.oaktag.adjustments.Bodies.flareSideSeams;
import static org.oaktag.adjustments.Bodies.letOutWaist;
import static org.oaktag.adjustments.Bodies.shapeWaist;
import static org.oaktag.adjustments.Bodies.squareSideSeams;
import static org.oaktag.adjustments.Bodies.straightenSideSeams;
import static org.oaktag.adjustments.Bodies.taperSideSeams;
import static org.oaktag.measure.Length.mm;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.domains.Domain;
import net.jqwik.api.domains.DomainContext;
import org.oaktag.PatternException;
import org.oaktag.blocks.BodyLine;
import org.oaktag.blocks.SideSeam;
import org.oaktag.blocks.TopBody;
import org.oaktag.blocks.TopEdges;
import org.oaktag.blocks.TopNames;
import org.oaktag.garment.EdgeNames;
import org.oaktag.garment.Garment;
import org.oaktag.garment.Name;
import org.oaktag.garment.Note;
import org.oaktag.garment.Piece;
import org.oaktag.measure.Length;

/** What the steps of the side seam keep, and what they move which way. */
@Domain(TopArbitraries.class)
@Domain(DomainContext.Global.class)
class SideSeamProperties {

    private static final double ROUNDING = 1e-9;

    @Property(tries = 60)
    void flaring_then_tapering_by_the_same_amount_is_straightening(
            @ForAll Garment block, @ForAll @DoubleRange(min = -20, max = 70) double out) {
        Garment straight = block.adjust(straightenSideSeams());
        Garment flared = block.adjust(flareSideSeams(mm(out)));
        Sound.assertSound(flared);
        Sound.assertBodySewsTrue(flared);
        Near.assertSame(flared.adjust(taperSideSeams(mm(out))), straight, ROUNDING);
        Near.assertSame(flared.adjust(straightenSideSeams()), flared, ROUNDING);
    }

    @Property(tries = 60)
    void a_seam_at_another_slant_says_by_how_much_the_armholes_changed_and_the_walk_names_the_refit(
            @ForAll Garment block, @ForAll @DoubleRange(min = -20, max = 70) double out) {
        for (Garment drawn : List.of(block.adjust(straightenSideSeams()), block.adjust(flareSideSeams(mm(out))))) {
            List<Note> done = drawn.history().get(1).notes().stream()
                    .filter(note -> note.kind() == Note.Kind.DONE)
                    .toList();
            double most = 0;
            for (Name name : TopBody.HALVES) {
                Length growth = drawn.piece(name)
                        .edge(TopEdges.ARMHOLE)
                        .length()
                        .minus(block.piece(name).edge(TopEdges.ARMHOLE).length());
                most = Math.max(most, Math.abs(growth.mm()));
                assertThat(done).allMatch(note -> note.text().contains(growth.text() + " on the " + name));
                Name seam = name.equals(TopNames.FRONT) ? TopNames.FRONT_ARMHOLE_SEAM : TopNames.BACK_ARMHOLE_SEAM;
                if (Math.abs(growth.mm()) > 0.011) {
                    assertThat(drawn.walkSeams().seam(seam).mend().orElse("")).contains("fit the sleeve cap");
                }
            }
            assertThat(done).hasSize(most < 0.05 ? 0 : 1);
        }
    }

    @Property(tries = 60)
    void a_wider_flare_makes_a_wider_hem(
            @ForAll Garment block,
            @ForAll @DoubleRange(min = -20, max = 60) double out,
            @ForAll @DoubleRange(min = 1, max = 20) double more) {
        Garment flared = block.adjust(flareSideSeams(mm(out)));
        assertThat(flared.adjust(flareSideSeams(mm(more)))
                        .finished(TopNames.HEM_GIRTH)
                        .mm())
                .isGreaterThan(flared.finished(TopNames.HEM_GIRTH).mm());
    }

    @Property(tries = 60)
    void a_box_is_as_wide_at_the_hem_as_at_the_chest_and_boxed_twice_is_boxed_once(@ForAll Garment block) {
        Garment box = block.adjust(squareSideSeams());
        Sound.assertSound(box);
        Sound.assertBodySewsTrue(box);
        assertThat(box.finished(TopNames.HEM_GIRTH).mm())
                .isCloseTo(box.finished(TopNames.CHEST_GIRTH).mm(), within(1e-6));
        Near.assertSame(box.adjust(squareSideSeams()), box, ROUNDING);
    }

    @Property(tries = 60)
    void the_waist_shrinks_four_times_as_much_and_armhole_and_hem_stay_to_the_last_bit(
            @ForAll Garment block, @ForAll @DoubleRange(min = -30, max = 30) double in) {
        Garment shaped = block.adjust(shapeWaist(mm(in)));
        Sound.assertSound(shaped);
        Sound.assertBodySewsTrue(shaped);
        assertThat(waist(shaped)).isCloseTo(waist(block) - 4 * in, within(1e-6));
        assertThat(shaped.finished(TopNames.WAIST_GIRTH).mm()).isCloseTo(waist(shaped), within(1e-9));
        for (Name name : TopBody.HALVES) {
            for (Name edge : new Name[] {TopEdges.ARMHOLE, EdgeNames.HEM, EdgeNames.CENTRE}) {
                assertThat(shaped.piece(name).path(edge))
                        .isEqualTo(block.piece(name).path(edge));
            }
        }
    }

    @Property(tries = 60)
    void taking_the_waist_in_twice_is_taking_it_in_once_by_the_sum(
            @ForAll Garment block,
            @ForAll @DoubleRange(min = 0, max = 15) double first,
            @ForAll @DoubleRange(min = 0, max = 15) double second) {
        Garment twice = block.adjust(shapeWaist(mm(first))).adjust(shapeWaist(mm(second)));
        Near.assertSame(twice, block.adjust(shapeWaist(mm(first + second))), 1e-6);
        Near.assertSame(twice.adjust(letOutWaist(mm(second))), block.adjust(shapeWaist(mm(first))), 1e-6);
    }

    @Property(tries = 60)
    void seam_and_vent_are_the_side_seam_and_the_extension_folds_onto_the_hem(
            @ForAll Garment block,
            @ForAll @DoubleRange(min = 0, max = 50) double flare,
            @ForAll @DoubleRange(min = 30, max = 160) double height,
            @ForAll @DoubleRange(min = 15, max = 60) double width) {
        Garment flared = block.adjust(flareSideSeams(mm(flare)));
        Garment vented = flared.adjust(cutSideVent(mm(height), mm(width)));
        Sound.assertSound(vented);
        Sound.assertBodySewsTrue(vented);
        assertThat(vented.finished(TopNames.HEM_GIRTH)).isEqualTo(flared.finished(TopNames.HEM_GIRTH));
        for (Name name : TopBody.HALVES) {
            Piece piece = vented.piece(name);
            assertThat(piece.path(EdgeNames.SIDE).length() + height)
                    .isCloseTo(flared.piece(name).path(EdgeNames.SIDE).length(), within(1e-6));
            double under = piece.path(EdgeNames.VENT_HEM).length();
            double fold = piece.path(EdgeNames.VENT_TOP).length();
            assertThat(fold).isCloseTo(width, within(ROUNDING));
            assertThat(piece.path(EdgeNames.HEM)
                            .pointAt(under)
                            .distanceTo(piece.path(EdgeNames.VENT_HEM).start()))
                    .as("the extension of the %s unfolded", name)
                    .isCloseTo(2 * width, within(1e-5));
        }
        assertThatThrownBy(() -> vented.adjust(straightenSideSeams()))
                .isInstanceOf(PatternException.class)
                .hasMessageContaining("'vent top'")
                .hasMessageContaining("before");
    }

    private static double waist(Garment garment) {
        double girth = 0;
        for (Name name : TopBody.HALVES) {
            Piece piece = garment.piece(name);
            girth +=
                    2 * SideSeam.at(piece, BodyLine.WAIST.level(garment, piece)).x();
        }
        return girth;
    }
}
