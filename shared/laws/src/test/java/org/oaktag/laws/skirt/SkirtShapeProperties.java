package org.oaktag.laws.skirt;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.oaktag.measure.Length.mm;
import static org.oaktag.skirt.SkirtShapes.aLine;
import static org.oaktag.skirt.SkirtShapes.circleSkirt;
import static org.oaktag.skirt.SkirtShapes.curveSidesOut;
import static org.oaktag.skirt.SkirtShapes.flareSides;
import static org.oaktag.skirt.SkirtShapes.gatherSkirt;
import static org.oaktag.skirt.SkirtShapes.goreSkirt;
import static org.oaktag.skirt.SkirtShapes.pegSides;
import static org.oaktag.skirt.SkirtShapes.pleatSkirt;
import static org.oaktag.skirt.SkirtShapes.skirtLength;
import static org.oaktag.skirt.SkirtShapes.wrapSkirt;
import static org.oaktag.skirt.SkirtShapes.yokeSkirt;

import java.util.List;
import java.util.Optional;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.domains.Domain;
import net.jqwik.api.domains.DomainContext;
import net.jqwik.api.statistics.Statistics;
import org.oaktag.PatternException;
import org.oaktag.adjust.Step;
import org.oaktag.body.BodyMeasurements;
import org.oaktag.garment.Cloth;
import org.oaktag.garment.Fairness;
import org.oaktag.garment.Garment;
import org.oaktag.garment.Piece;
import org.oaktag.skirt.GoreCount;
import org.oaktag.skirt.PleatKind;
import org.oaktag.skirt.SkirtEase;
import org.oaktag.skirt.SkirtNames;
import org.oaktag.skirt.StraightSkirt;
import org.oaktag.testkit.bodies.Adults;

/** What holds of every shape of a skirt, of whatever body: a step is refused with a reason, or leaves a sound skirt. */
@Domain(Adults.class)
@Domain(SkirtShapeProperties.Shapes.class)
@Domain(DomainContext.Global.class)
class SkirtShapeProperties {

    /** Steps by chance, in and beyond what is usual. */
    static class Shapes extends net.jqwik.api.domains.DomainContextBase {
        @Provide
        Arbitrary<Step> shapes() {
            Arbitrary<Double> shares = Arbitraries.doubles().between(0.05, 1);
            return Arbitraries.oneOf(
                    Arbitraries.doubles().between(350, 1000).map(to -> skirtLength(mm(to))),
                    shares.map(share -> aLine(share)),
                    shares.map(share -> aLine(1)),
                    Arbitraries.doubles().between(-60, 150).map(out -> flareSides(mm(out))),
                    Arbitraries.doubles().between(0, 40).map(in -> pegSides(mm(in))),
                    Arbitraries.doubles().between(-40, 120).map(out -> curveSidesOut(mm(out))),
                    Combinators.combine(
                                    Arbitraries.of(GoreCount.class),
                                    Arbitraries.doubles().between(0, 200))
                            .as((gores, spread) -> goreSkirt(gores, mm(spread))),
                    Arbitraries.doubles().between(40, 170).map(deep -> yokeSkirt(mm(deep))),
                    Arbitraries.doubles().between(0.15, 1).map(share -> circleSkirt(share)),
                    Arbitraries.doubles().between(1.1, 4).map(ratio -> gatherSkirt(ratio)),
                    Combinators.combine(
                                    Arbitraries.of(PleatKind.class),
                                    Arbitraries.integers().between(1, 10),
                                    Arbitraries.doubles().between(8, 60))
                            .as((kind, quarter, deep) -> pleatSkirt(kind, 4 * quarter, mm(deep))),
                    Combinators.combine(
                                    Arbitraries.doubles().between(40, 400),
                                    Arbitraries.doubles().between(0, 60))
                            .as((overlap, facing) -> wrapSkirt(mm(overlap), mm(facing))));
        }
    }

    private static Optional<Garment> skirt(BodyMeasurements body) {
        try {
            return Optional.of(StraightSkirt.BLOCK.draft(body, SkirtEase.standard(), Cloth.woven("poplin")));
        } catch (PatternException refused) {
            return Optional.empty();
        }
    }

    private static Optional<Garment> after(Garment skirt, Step step) {
        try {
            return Optional.of(skirt.adjust(step));
        } catch (PatternException refused) {
            assertThat(refused).hasMessageContaining("; got ");
            return Optional.empty();
        }
    }

    @Property(tries = 300)
    void a_shape_leaves_every_seam_true_the_waist_as_long_and_every_line_fair(
            @ForAll BodyMeasurements body, @ForAll Step first, @ForAll Step second) {
        Optional<Garment> block = skirt(body);
        Optional<Garment> one = block.flatMap(skirt -> after(skirt, first));
        Optional<Garment> two = one.flatMap(skirt -> after(skirt, second));
        Statistics.collect(first.getClass().getSimpleName(), one.isPresent() ? "done" : "refused");
        for (Garment made : List.of(one, two).stream().flatMap(Optional::stream).toList()) {
            assertThat(made.walkSeams().isTrue()).as("%s", made.walkSeams()).isTrue();
            double waist = block.orElseThrow().finished(SkirtNames.WAIST_GIRTH).mm();
            assertThat(made.finished(SkirtNames.WAIST_GIRTH).mm()).isCloseTo(waist, within(0.01));
            for (Piece piece : made.pieces()) {
                for (Fairness line : Fairness.of(piece)) {
                    assertThat(line.greatestCorner().degrees()).as("%s", line).isLessThan(0.1);
                    assertThat(line.changes()).as("%s", line).isLessThanOrEqualTo(1);
                    assertThat(line.leastRadius()).as("%s", line).isGreaterThan(40);
                }
            }
        }
    }

    @Property(tries = 200)
    void the_more_of_the_darts_is_closed_the_wider_is_the_hem(
            @ForAll BodyMeasurements body,
            @ForAll @DoubleRange(min = 0.1, max = 0.5) double less,
            @ForAll @DoubleRange(min = 0.51, max = 1) double more) {
        Optional<Garment> block = skirt(body);
        Optional<Garment> narrow = block.flatMap(skirt -> after(skirt, aLine(less)));
        Optional<Garment> wide = block.flatMap(skirt -> after(skirt, aLine(more)));
        if (narrow.isPresent() && wide.isPresent()) {
            assertThat(wide.get().finished(SkirtNames.HEM_GIRTH))
                    .isGreaterThan(narrow.get().finished(SkirtNames.HEM_GIRTH));
        }
    }
}
