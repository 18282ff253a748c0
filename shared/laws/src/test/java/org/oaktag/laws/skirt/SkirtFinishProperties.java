package org.oaktag.laws.skirt;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.oaktag.measure.Length.mm;
import static org.oaktag.measure.Percent.percent;
import static org.oaktag.skirt.SkirtFinishes.buttons;
import static org.oaktag.skirt.SkirtFinishes.centreBackSeam;
import static org.oaktag.skirt.SkirtFinishes.contouredWaistband;
import static org.oaktag.skirt.SkirtFinishes.elasticWaistband;
import static org.oaktag.skirt.SkirtFinishes.faceHem;
import static org.oaktag.skirt.SkirtFinishes.faceWaist;
import static org.oaktag.skirt.SkirtFinishes.inSeamPocket;
import static org.oaktag.skirt.SkirtFinishes.kickPleat;
import static org.oaktag.skirt.SkirtFinishes.lineSkirt;
import static org.oaktag.skirt.SkirtFinishes.patchPocket;
import static org.oaktag.skirt.SkirtFinishes.slantPocket;
import static org.oaktag.skirt.SkirtFinishes.straightWaistband;
import static org.oaktag.skirt.SkirtFinishes.vent;
import static org.oaktag.skirt.SkirtFinishes.zip;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.domains.Domain;
import net.jqwik.api.domains.DomainContext;
import net.jqwik.api.statistics.Statistics;
import org.oaktag.PatternException;
import org.oaktag.adjust.Pieces;
import org.oaktag.adjust.Step;
import org.oaktag.body.BodyMeasurements;
import org.oaktag.garment.Allowances;
import org.oaktag.garment.Cloth;
import org.oaktag.garment.CutLine;
import org.oaktag.garment.CutList;
import org.oaktag.garment.Garment;
import org.oaktag.garment.Name;
import org.oaktag.garment.Piece;
import org.oaktag.garment.WalkedSeam;
import org.oaktag.measure.Length;
import org.oaktag.sewing.AssemblyOrder;
import org.oaktag.skirt.SkirtAllowances;
import org.oaktag.skirt.SkirtEase;
import org.oaktag.skirt.SkirtLength;
import org.oaktag.skirt.SkirtNames;
import org.oaktag.skirt.SkirtOpening;
import org.oaktag.skirt.SkirtShapes;
import org.oaktag.skirt.StraightSkirt;
import org.oaktag.testkit.bodies.Adults;

/** What holds of a skirt that is finished in whatever way, of whatever body. */
@Domain(Adults.class)
@Domain(SkirtFinishProperties.Ways.class)
@Domain(DomainContext.Global.class)
class SkirtFinishProperties {

    private static final Cloth WOOL = Cloth.woven("flannel");
    private static final Cloth SATIN = Cloth.woven("satin");

    /** A way to shape and finish a skirt: its steps, in an order in which they go together or are refused. */
    record Way(SkirtLength length, Cloth cloth, List<Step> steps) {}

    /** Ways by chance. */
    static class Ways extends net.jqwik.api.domains.DomainContextBase {
        @Provide
        Arbitrary<Way> ways() {
            return Combinators.combine(
                            Arbitraries.of(SkirtLength.class),
                            shapes(),
                            openings(),
                            pockets(),
                            waists(),
                            linings(),
                            Arbitraries.of(false, false, false, true),
                            Arbitraries.of(true, false))
                    .as((length, shape, opening, pocket, waist, lining, stretches, pocketFirst) -> {
                        List<Step> steps = new ArrayList<>(shape);
                        steps.addAll(stretches ? List.of() : opening);
                        steps.addAll(pocketFirst ? pocket : List.of());
                        steps.addAll(stretches ? List.of(elasticWaistband(mm(30))) : waist);
                        steps.addAll(pocketFirst ? List.of() : pocket);
                        steps.addAll(lining);
                        return new Way(length, stretches ? Cloth.knit("jersey", percent(40)) : WOOL, steps);
                    });
        }

        private static Arbitrary<List<Step>> shapes() {
            return Arbitraries.oneOf(
                    Arbitraries.just(List.of()),
                    Arbitraries.doubles().between(0.3, 1).map(share -> List.of(SkirtShapes.aLine(share))),
                    Arbitraries.doubles().between(-15, 80).map(out -> List.of(SkirtShapes.flareSides(mm(out)))));
        }

        private static Arbitrary<List<Step>> openings() {
            Arbitrary<Length> zips = Arbitraries.doubles().between(120, 230).map(Length::mm);
            Arbitrary<Length> deep = Arbitraries.doubles().between(40, 60).map(Length::mm);
            return Arbitraries.oneOf(
                    zips.map(zip -> List.of(zip(zip, SkirtOpening.LEFT_SIDE))),
                    zips.map(zip -> List.of(centreBackSeam(), zip(zip, SkirtOpening.CENTRE_BACK))),
                    Combinators.combine(zips, deep)
                            .as((zip, wide) ->
                                    List.of(centreBackSeam(), zip(zip, SkirtOpening.CENTRE_BACK), vent(wide))),
                    Combinators.combine(zips, deep)
                            .as((zip, wide) ->
                                    List.of(centreBackSeam(), kickPleat(wide), zip(zip, SkirtOpening.CENTRE_BACK))),
                    Arbitraries.integers().between(4, 12).map(count -> List.of(buttons(mm(18), count))));
        }

        private static Arbitrary<List<Step>> pockets() {
            return Arbitraries.oneOf(
                    Arbitraries.just(List.of()),
                    Arbitraries.doubles()
                            .between(30, 90)
                            .map(below ->
                                    List.of(inSeamPocket(mm(below), mm(150)).cutFrom(SATIN))),
                    Arbitraries.doubles().between(25, 70).map(from -> List.of(slantPocket(mm(from), mm(140)))),
                    Arbitraries.doubles()
                            .between(100, 160)
                            .map(wide -> List.of(patchPocket(SkirtNames.FRONT, mm(wide), mm(150)))));
        }

        private static Arbitrary<List<Step>> waists() {
            Arbitrary<Length> widths = Arbitraries.doubles().between(30, 60).map(Length::mm);
            return Arbitraries.oneOf(
                    widths.map(width -> List.of(straightWaistband(width))),
                    widths.map(width -> List.of(contouredWaistband(width))),
                    widths.map(width -> List.of(faceWaist(width, WOOL))));
        }

        private static Arbitrary<List<Step>> linings() {
            return Arbitraries.oneOf(
                    Arbitraries.just(List.of()),
                    Arbitraries.just(List.of(lineSkirt(SATIN))),
                    Arbitraries.just(List.of(lineSkirt(SATIN).withDarts(), faceHem(mm(50), WOOL))));
        }
    }

    /** Takes every step that can be taken; what is refused says why. */
    private static Optional<Garment> finished(BodyMeasurements body, Way way) {
        Garment skirt;
        try {
            skirt = new StraightSkirt(way.length()).draft(body, SkirtEase.standard(), way.cloth());
        } catch (PatternException refused) {
            return Optional.empty();
        }
        for (Step step : way.steps()) {
            try {
                skirt = skirt.adjust(step);
                Statistics.label(step.getClass().getSimpleName()).collect("done");
            } catch (PatternException refused) {
                assertThat(refused).hasMessageContaining("; got ");
                Statistics.label(step.getClass().getSimpleName()).collect("refused");
            }
        }
        return Optional.of(skirt);
    }

    @Property(tries = 200)
    void a_finished_skirt_has_true_seams_and_can_be_cut_and_sewn(@ForAll BodyMeasurements body, @ForAll Way way) {
        Optional<Garment> made = finished(body, way);
        if (made.isEmpty()) {
            return;
        }
        Garment skirt = made.get();
        assertThat(untrue(skirt)).isEmpty();
        Allowances allowances = SkirtAllowances.of("12 and 40", mm(12), mm(40), skirt);
        for (Piece piece : skirt.pieces()) {
            assertThat(CutLine.of(piece, allowances)).as("%s", piece.name()).isNotNull();
            assertThat(piece.outline().isClockwise()).as("%s", piece.name()).isTrue();
        }
        assertThat(CutList.of(skirt).items()).hasSameSizeAs(skirt.pieces());
        assertThat(AssemblyOrder.of(skirt).operations())
                .hasSizeGreaterThanOrEqualTo(skirt.seams().size());
        assertThat(untrue(skirt.adjust(Pieces.notchSeams()))).isEmpty();
    }

    private static List<String> untrue(Garment garment) {
        return garment.walkSeams().seams().stream()
                .filter(seam -> !seam.isTrue())
                .map(WalkedSeam::text)
                .toList();
    }

    /** What a finish takes from one piece it adds in another. */
    @Property(tries = 200)
    void a_finish_leaves_the_skirt_as_long_and_as_wide_at_hip_and_hem(@ForAll BodyMeasurements body, @ForAll Way way) {
        Optional<Garment> bare = finished(body, new Way(way.length(), way.cloth(), shaping(way)));
        Optional<Garment> made = finished(body, way);
        if (made.isEmpty()) {
            return;
        }
        for (Name measure :
                List.of(SkirtNames.HIP_GIRTH, SkirtNames.HEM_GIRTH, SkirtNames.LENGTH, SkirtNames.SIDE_LENGTH)) {
            assertThat(made.get().finished(measure).mm())
                    .as("%s", measure)
                    .isCloseTo(bare.orElseThrow().finished(measure).mm(), within(0.01));
        }
        assertThat(bare.orElseThrow().finished(SkirtNames.WAIST_GIRTH).mm()
                        - made.get().finished(SkirtNames.WAIST_GIRTH).mm())
                .isBetween(-0.01, 20.01);
    }

    private static List<Step> shaping(Way way) {
        return way.steps().stream()
                .filter(step -> !step.getClass().getSimpleName().matches(".*(Seam|Zip|Vent|Front|Waist.*|Pocket|Hem)")
                        && !step.name().startsWith("line"))
                .toList();
    }
}
