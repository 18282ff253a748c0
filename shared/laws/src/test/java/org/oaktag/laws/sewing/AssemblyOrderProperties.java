package org.oaktag.laws.sewing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.oaktag.measure.Percent.percent;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.domains.Domain;
import net.jqwik.api.domains.DomainContext;
import org.oaktag.adjustments.Bands;
import org.oaktag.adjustments.Finishes;
import org.oaktag.blocks.BandNames;
import org.oaktag.blocks.FinishNames;
import org.oaktag.blocks.HoodNames;
import org.oaktag.blocks.KnitTop;
import org.oaktag.blocks.TopEase;
import org.oaktag.blocks.TopNames;
import org.oaktag.body.BodyMeasurements;
import org.oaktag.examples.HoodedTop;
import org.oaktag.garment.Cloth;
import org.oaktag.garment.EdgeNames;
import org.oaktag.garment.EdgeRef;
import org.oaktag.garment.Garment;
import org.oaktag.garment.Name;
import org.oaktag.garment.Seam;
import org.oaktag.garment.SeamSide;
import org.oaktag.measure.Length;
import org.oaktag.sewing.AssemblyOrder;
import org.oaktag.sewing.Operation;
import org.oaktag.sewing.SeamClass;
import org.oaktag.sewing.Stitch;
import org.oaktag.testkit.bodies.Adults;

/**
 * The order in which the hooded top, and the plain block, are sewn. What makers do in this order is common practice.
 */
@Domain(Adults.class)
@Domain(DomainContext.Global.class)
class AssemblyOrderProperties {

    private static Garment top(BodyMeasurements body) {
        return HoodedTop.recipe(false).applyTo(HoodedTop.block(body));
    }

    /** A seam of a band to itself, along its fold, is no stitched one. */
    private static boolean isSeam(Operation operation) {
        return operation.work() instanceof Operation.Join || operation.work() instanceof Operation.Fold;
    }

    private static int place(AssemblyOrder order, Name seam) {
        return operation(order, seam).number();
    }

    private static Operation operation(AssemblyOrder order, Name seam) {
        return order.operations().stream()
                .filter(each -> each.name().equals(seam))
                .findFirst()
                .orElseThrow();
    }

    @Property(tries = 20)
    void every_seam_is_sewn_once_and_in_a_numbered_order(@ForAll BodyMeasurements body) {
        Garment top = top(body);
        List<Operation> operations = AssemblyOrder.of(top).operations();
        assertThat(operations)
                .filteredOn(AssemblyOrderProperties::isSeam)
                .extracting(Operation::name)
                .containsExactlyInAnyOrderElementsOf(
                        top.seams().stream().map(Seam::name).toList());
        assertThat(operations)
                .extracting(Operation::number)
                .containsExactlyElementsOf(
                        IntStream.rangeClosed(1, operations.size()).boxed().toList());
    }

    /** Followed by hand, piece by piece, without looking at corners: what one side runs over hangs together already. */
    @Property(tries = 20)
    void a_side_is_in_one_piece_when_it_is_sewn(@ForAll BodyMeasurements body) {
        List<Set<Name>> parts = new ArrayList<>();
        top(body).pieces().forEach(piece -> parts.add(new HashSet<>(Set.of(piece.name()))));
        for (Operation operation : AssemblyOrder.of(top(body)).operations()) {
            if (operation.work() instanceof Operation.LayOn laid) {
                parts.removeIf(Set.of(laid.piece())::equals);
                parts.removeIf(Set.of(laid.shell())::equals);
                parts.add(Set.of(laid.piece(), laid.shell()));
            }
            if (!(operation.work() instanceof Operation.Join join)) {
                continue;
            }
            for (SeamSide side : List.of(join.a(), join.b())) {
                Set<Name> pieces = new HashSet<>();
                side.runs().forEach(run -> pieces.add(run.edge().piece()));
                assertThat(parts).as("%s", operation.name()).anyMatch(part -> part.containsAll(pieces));
            }
            Set<Name> joined = new HashSet<>();
            for (SeamSide side : List.of(join.a(), join.b())) {
                for (SeamSide.Run run : side.runs()) {
                    parts.stream()
                            .filter(part -> part.contains(run.edge().piece()))
                            .forEach(joined::addAll);
                }
            }
            parts.removeIf(joined::containsAll);
            parts.add(joined);
        }
        assertThat(parts).as("one garment").hasSize(1);
    }

    @Property(tries = 10)
    void the_sleeve_is_set_into_the_closed_armhole(@ForAll BodyMeasurements body) {
        AssemblyOrder order = AssemblyOrder.of(top(body));
        for (Name armhole : List.of(TopNames.FRONT_ARMHOLE_SEAM, TopNames.BACK_ARMHOLE_SEAM)) {
            for (Name closing : List.of(TopNames.SHOULDER_SEAM, TopNames.SIDE_SEAM, TopNames.SLEEVE_SEAM)) {
                assertThat(place(order, closing)).isLessThan(place(order, armhole));
                assertThat(operation(order, closing).inTheRound())
                        .as("%s", closing)
                        .isFalse();
            }
            assertThat(operation(order, armhole).inTheRound()).isTrue();
        }
        assertThat(operation(order, TopNames.FRONT_ARMHOLE_SEAM).notches()).contains(TopNames.FRONT_NOTCH);
    }

    @Property(tries = 10)
    void small_parts_are_finished_before_they_are_joined_to_larger_ones(@ForAll BodyMeasurements body) {
        AssemblyOrder order = AssemblyOrder.of(top(body));
        assertThat(List.of(BandNames.CUFF_SIDE_SEAM, BandNames.CUFF_FOLD_SEAM, BandNames.CUFF_SEAM))
                .isSortedAccordingTo((a, b) -> place(order, a) - place(order, b));
        assertThat(operation(order, BandNames.CUFF_SEAM).inTheRound()).isTrue();
        assertThat(List.of(HoodNames.CROWN_SEAM, HoodNames.LINING_NECK_SEAM, HoodNames.NECK_SEAM))
                .isSortedAccordingTo((a, b) -> place(order, a) - place(order, b));
        assertThat(place(order, TopNames.SHOULDER_SEAM)).isLessThan(place(order, HoodNames.NECK_SEAM));
        assertThat(place(order, TopNames.SIDE_SEAM)).isLessThan(place(order, BandNames.FRONT_HEM_SEAM));
        assertThat(place(order, BandNames.FRONT_FOLD_SEAM)).isLessThan(place(order, BandNames.FRONT_HEM_SEAM));
    }

    /**
     * A pouch is turned back at its openings, laid on while the front is flat, and caught in the seam of the hem band.
     */
    @Property(tries = 10)
    void the_pouch_is_laid_on_before_the_seams_and_its_openings_before_that(@ForAll BodyMeasurements body) {
        List<Operation> operations = AssemblyOrder.of(top(body)).operations();
        assertThat(operations.get(0).work())
                .isEqualTo(new Operation.Hem(List.of(EdgeRef.of(FinishNames.POUCH, EdgeNames.OPENING))));
        assertThat(operations.get(0).stitchText()).isEqualTo("406");
        assertThat(operations.get(1).work()).isEqualTo(new Operation.LayOn(FinishNames.POUCH, TopNames.FRONT));
        assertThat(operations.get(1).notches()).hasSize(3);
        assertThat(operations.subList(2, operations.size()))
                .noneMatch(each -> each.work() instanceof Operation.LayOn || each.work() instanceof Operation.Hem);
    }

    @Property(tries = 10)
    void a_knit_is_joined_by_514_and_hemmed_by_406(@ForAll BodyMeasurements body) {
        AssemblyOrder order =
                AssemblyOrder.of(KnitTop.draft(body, TopEase.standard(), Cloth.knit("trial knit", percent(30))));
        assertThat(operation(order, TopNames.SIDE_SEAM).stitches()).containsExactly(Stitch.FOUR_THREAD_OVEREDGE);
        assertThat(operation(order, TopNames.SIDE_SEAM).stitchText()).isEqualTo("514");
        List<Operation> hems = order.operations().stream()
                .filter(each -> each.work() instanceof Operation.Hem)
                .toList();
        assertThat(hems).hasSize(2).allSatisfy(hem -> {
            assertThat(hem.stitchText()).isEqualTo("406");
            assertThat(hem.seamClass()).isEqualTo(SeamClass.EDGE_FINISHING);
            assertThat(hem.inTheRound()).isTrue();
            assertThat(hem.number()).isGreaterThan(order.operations().size() - 2);
        });
    }

    @Property(tries = 10)
    void a_woven_is_joined_by_301_and_its_edges_kept_by_504(@ForAll BodyMeasurements body) {
        Garment top = top(body);
        Garment woven = top.withPieces(top.pieces().stream()
                .map(piece -> piece.withCloth(new Cloth(piece.cloth().use(), "trial woven", percent(0))))
                .toList());
        AssemblyOrder order = AssemblyOrder.of(woven);
        assertThat(operation(order, TopNames.SIDE_SEAM).stitchText()).isEqualTo("301 + 504");
        assertThat(order.operations())
                .extracting(Operation::name)
                .containsExactlyElementsOf(AssemblyOrder.of(top).operations().stream()
                        .map(Operation::name)
                        .toList());
    }

    /** A ring is closed before it is folded, and folded before it is sewn on; what is open at its ends is closed first. */
    @Property(tries = 10)
    void a_band_is_closed_then_folded_then_set(@ForAll BodyMeasurements body) {
        Cloth rib = Cloth.rib("trial rib", percent(80));
        Garment banded = KnitTop.draft(body, TopEase.standard(), Cloth.knit("trial knit", percent(30)))
                .adjust(Finishes.ribNeckband(Length.cm(2), rib))
                .adjust(Bands.hemBand(Length.cm(5), Length.ZERO));
        AssemblyOrder order = AssemblyOrder.of(banded);
        assertThat(List.of(
                        FinishNames.NECKBAND_CLOSING_SEAM, FinishNames.NECKBAND_FOLD_SEAM, FinishNames.NECKBAND_SEAM))
                .isSortedAccordingTo((a, b) -> place(order, a) - place(order, b));
        assertThat(List.of(BandNames.SIDE_BAND_SEAM, BandNames.FRONT_FOLD_SEAM, BandNames.FRONT_HEM_SEAM))
                .isSortedAccordingTo((a, b) -> place(order, a) - place(order, b));
        assertThat(place(order, BandNames.BACK_FOLD_SEAM)).isLessThan(place(order, BandNames.BACK_HEM_SEAM));
        for (Name round : List.of(FinishNames.NECKBAND_SEAM, BandNames.FRONT_HEM_SEAM, BandNames.BACK_HEM_SEAM)) {
            assertThat(operation(order, round).inTheRound()).as("%s", round).isTrue();
        }
        Operation fold = operation(order, FinishNames.NECKBAND_FOLD_SEAM);
        assertThat(fold.work()).isEqualTo(new Operation.Fold(FinishNames.NECKBAND));
        assertThat(fold.stitches()).isEmpty();
        AssemblyOrder lapped = AssemblyOrder.of(top(body));
        Name end = TopNames.HEM_BAND_FRONT.with(BandNames.SIDE.value());
        assertThat(operation(lapped, end).work())
                .isEqualTo(new Operation.Close(EdgeRef.of(TopNames.HEM_BAND_FRONT, BandNames.SIDE)));
        assertThat(List.of(end, BandNames.FRONT_FOLD_SEAM, BandNames.FRONT_HEM_SEAM))
                .isSortedAccordingTo((a, b) -> place(lapped, a) - place(lapped, b));
    }

    @Property(tries = 10)
    void a_facing_is_neatened_before_it_is_sewn_on(@ForAll BodyMeasurements body) {
        Cloth shell = Cloth.knit("trial knit", percent(30));
        AssemblyOrder order = AssemblyOrder.of(
                KnitTop.draft(body, TopEase.standard(), shell).adjust(Finishes.faceNeckline(Length.cm(5), shell)));
        Operation neatened = order.operations().stream()
                .filter(each -> each.work() instanceof Operation.Neaten)
                .findFirst()
                .orElseThrow();
        assertThat(((Operation.Neaten) neatened.work()).edges()).hasSize(2);
        assertThat(neatened.inTheRound()).isTrue();
        assertThat(neatened.number())
                .isGreaterThan(place(order, FinishNames.FACING_SHOULDER_SEAM))
                .isLessThan(place(order, FinishNames.FRONT_FACING_SEAM));
    }

    @Property(tries = 5)
    void gathers_are_drawn_up_before_their_seam(@ForAll BodyMeasurements body) {
        AssemblyOrder order = AssemblyOrder.of(top(body));
        int cuff = place(order, BandNames.CUFF_SEAM);
        assertThat(order.operations().get(cuff - 2).work())
                .isInstanceOfSatisfying(
                        Operation.Gather.class,
                        gather -> assertThat(gather.side().runs().get(0).edge().edge())
                                .isEqualTo(EdgeNames.HEM));
    }
}
