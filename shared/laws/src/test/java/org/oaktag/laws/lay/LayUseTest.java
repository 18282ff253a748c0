package org.oaktag.laws.lay;

import static org.assertj.core.api.Assertions.assertThat;
import static org.oaktag.measure.Length.cm;
import static org.oaktag.measure.Length.inches;
import static org.oaktag.measure.Length.mm;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.oaktag.blocks.KnitTop;
import org.oaktag.body.BodyMeasurements;
import org.oaktag.body.Figure;
import org.oaktag.examples.HoodedTop;
import org.oaktag.garment.Allowances;
import org.oaktag.garment.Cloth;
import org.oaktag.garment.Cut;
import org.oaktag.garment.CutList;
import org.oaktag.garment.Edge;
import org.oaktag.garment.Garment;
import org.oaktag.garment.Grainline;
import org.oaktag.garment.Name;
import org.oaktag.garment.Piece;
import org.oaktag.geometry.Path;
import org.oaktag.geometry.Point;
import org.oaktag.lay.Effort;
import org.oaktag.lay.Lay;
import org.oaktag.lay.Spread;
import org.oaktag.measure.Percent;
import org.oaktag.testkit.lay.ColumnBound;

/** How much of the cloth the shell of the hooded top uses, and how much it could use at the most. */
class LayUseTest {

    /** Mira of the night crew. */
    private static final Garment TOP = HoodedTop.recipe(false)
            .applyTo(HoodedTop.block(BodyMeasurements.builder()
                    .name("Mira")
                    .figure(Figure.WOMAN)
                    .ageYears(34)
                    .bustGirth(cm(86.5))
                    .waistGirth(cm(68))
                    .hipGirth(cm(94))
                    .neckBaseGirth(cm(35.6))
                    .upperArmGirth(cm(26.5))
                    .wristGirth(cm(15))
                    .headGirth(cm(55.5))
                    .shoulderLength(inches(5.25))
                    .acrossBack(inches(14.875))
                    .backWaistLength(cm(41.5))
                    .napeToArmpit(mm(165))
                    .armLength(inches(23.5))
                    .height(cm(178))
                    .build()));

    private static final CutList.Owner OWNER = new CutList.Owner("trial", "Mira");
    private static final CutList LIST = CutList.of(TOP);
    private static final Cloth SHELL = LIST.cloths().get(0);

    /** Places across the cloth that are this far apart prove enough, mm. */
    private static final double PITCH = 16;

    private static Lay lay(int tops, boolean nap) {
        Spread spread = nap ? Spread.single(cm(150)).withNap() : Spread.single(cm(150));
        List<CutList.Item> items =
                Stream.generate(LIST::items).limit(tops).flatMap(List::stream).toList();
        return Lay.of(new CutList(items), SHELL, KnitTop.allowances(TOP), spread, Effort.standard());
    }

    @ParameterizedTest
    @ValueSource(booleans = {true, false})
    void one_top_uses_more_than_three_quarters_of_the_cloth(boolean nap) {
        assertThat(lay(1, nap).use().percent()).isGreaterThan(78);
    }

    /** Nobody knows the shortest lay; it lies between what is proved and what was found. */
    @Test
    void with_a_nap_it_comes_within_a_twelfth_of_what_it_could() {
        Lay lay = lay(1, true);
        assertThat(lay.length().mm()).isLessThan((1 + 1.0 / 12) * ColumnBound.length(lay, PITCH, 2));
    }

    @Test
    void two_tops_in_one_lay_use_more_of_the_cloth_than_one() {
        assertThat(lay(2, true).use().percent())
                .isGreaterThan(lay(1, true).use().percent());
    }

    /**
     * Of three rectangles, 600 wide on cloth 1000 wide, every two share upright lines, so that they lie one above the
     * other.
     */
    @ParameterizedTest
    @CsvSource({"1500, true", "1498, false"})
    void the_proof_knows_the_length_of_rectangles_that_must_lie_above_each_other(double length, boolean allowed) {
        List<Point> corners = List.of(Point.of(0, 0), Point.of(600, 0), Point.of(600, 500), Point.of(0, 500));
        List<Edge> edges = new ArrayList<>();
        for (int i = 0; i < corners.size(); i++) {
            Path side = Path.polyline(corners.get(i), corners.get((i + 1) % corners.size()));
            edges.add(new Edge(Name.of("edge " + i), side));
        }
        Grainline grain = new Grainline(Point.of(300, 100), Point.of(300, 400));
        Cloth cloth = Cloth.knit("trial cloth", Percent.percent(20));
        Piece panel = Piece.of(Name.of("panel"), edges, grain, new Cut.Single(3), cloth);
        Lay lay = Lay.of(
                new CutList(List.of(new CutList.Item(OWNER, 1, 1, panel))),
                cloth,
                Allowances.of("none", mm(0)),
                Spread.single(mm(1000)).withGap(mm(0)),
                Effort.tries(10));
        assertThat(ColumnBound.allows(lay, length, 5)).isEqualTo(allowed);
    }
}
