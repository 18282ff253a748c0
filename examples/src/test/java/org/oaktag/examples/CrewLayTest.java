package org.oaktag.examples;

import static org.assertj.core.api.Assertions.assertThat;
import static org.oaktag.measure.Length.cm;

import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.oaktag.body.BodyMeasurements;
import org.oaktag.export.sheet.Cloths;
import org.oaktag.export.svg.SvgSheet;
import org.oaktag.garment.Allowances;
import org.oaktag.garment.CutList;
import org.oaktag.garment.Garment;
import org.oaktag.lay.Effort;
import org.oaktag.lay.LaidPiece;
import org.oaktag.lay.Lay;
import org.oaktag.lay.Spread;

/** Lays of the tops of the crew: what holds for each, and several tops in one lay. */
class CrewLayTest {

    /** Lengths nearer to each other than this are the same, mm. */
    private static final double SAME = 1e-6;

    static Stream<List<String>> cut() {
        return Stream.concat(
                BodyFile.nightCrew().bodies().stream().map(body -> List.of(body.name())),
                Stream.of(List.of("Mira", "Bram"), List.of("Teodor", "Haldis")));
    }

    private static Garment top(String name) {
        BodyMeasurements body = BodyFile.nightCrew().body(name);
        return HoodedTop.recipe(false).applyTo(HoodedTop.block(body));
    }

    private static Lay lay(List<Garment> tops, Spread spread, int tries) {
        CutList list = CutList.of(tops);
        Map<CutList.Owner, Allowances> allowances = tops.stream()
                .collect(Collectors.toMap(top -> CutList.of(top).owners().get(0), Allowances::industryKnit));
        return Lay.of(
                list,
                list.cloths().get(0),
                owner -> allowances.getOrDefault(owner, Allowances.of("none", cm(0))),
                spread,
                Effort.tries(tries));
    }

    /** Whoever may do more does no worse: pieces may lie as with a nap where there is none, and more tries begin with the same. */
    @ParameterizedTest
    @MethodSource("cut")
    void no_lay_grows_with_what_it_may_do(List<String> crew) {
        List<Garment> tops = crew.stream().map(CrewLayTest::top).toList();
        Spread single = Spread.single(cm(150));
        for (Spread spread : List.of(single, Spread.folded(cm(150)))) {
            double napped = lay(tops, spread.withNap(), 60).length().mm();
            double free = lay(tops, spread, 60).length().mm();
            assertThat(free).as("%s without nap", spread).isLessThanOrEqualTo(napped + SAME);
        }
        double tried = lay(tops, single, 180).length().mm();
        assertThat(tried).isLessThanOrEqualTo(lay(tops, single, 60).length().mm() + SAME);
    }

    @Test
    void two_tops_in_one_lay_are_both_whole_and_each_piece_says_whose_it_is() {
        List<Garment> tops = List.of(top("Mira"), top("Bram"));
        Lay both = lay(tops, Spread.single(cm(150)).withNap(), 100);
        Map<String, List<String>> laid = both.pieces().stream()
                .collect(Collectors.groupingBy(
                        piece -> piece.item().owner().wearer(),
                        Collectors.mapping(CrewLayTest::name, Collectors.toList())));
        assertThat(laid).containsOnlyKeys("Mira", "Bram");
        for (Garment top : tops) {
            Lay alone = lay(List.of(top), Spread.single(cm(150)).withNap(), 1);
            assertThat(laid.get(top.wearer().name()))
                    .containsExactlyInAnyOrderElementsOf(
                            alone.pieces().stream().map(CrewLayTest::name).toList());
        }
        String sheet = SvgSheet.lay(both, Cloths.of(tops.get(0))).text();
        assertThat(sheet).contains("night crew hooded top, for Bram, Mira");
        for (LaidPiece piece : both.pieces()) {
            CutList.Item item = piece.item();
            assertThat(sheet)
                    .contains(item.owner().wearer() + " " + item.number() + "  "
                            + item.piece().name());
        }
    }

    private static String name(LaidPiece piece) {
        return piece.item().numberText() + " " + piece.item().piece().name();
    }
}
