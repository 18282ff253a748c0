package org.oaktag.body;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.oaktag.measure.Length.cm;
import static org.oaktag.measure.Length.mm;

import java.util.Arrays;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.oaktag.PatternException;
import org.oaktag.garment.Name;
import org.oaktag.garment.Wearer;
import org.oaktag.measure.Length;

class BodyMeasurementsTest {

    @Test
    void what_was_taken_stays_as_it_was_taken() {
        BodyMeasurements body = woman().neckBaseGirth(cm(37.5)).build();
        assertThat(body.bustGirth()).isEqualTo(cm(94));
        assertThat(body.height()).isEqualTo(cm(168));
        assertThat(body.neckBaseGirth()).isEqualTo(cm(37.5));
        assertThat(body.taken())
                .containsOnlyKeys(BodyMeasure.BUST_GIRTH, BodyMeasure.NECK_BASE_GIRTH, BodyMeasure.HEIGHT);
    }

    @Test
    void every_measure_has_an_accessor_of_its_own() {
        BodyBuilder builder = BodyMeasurements.builder()
                .name("Nell")
                .figure(Figure.WOMAN)
                .bustGirth(mm(941))
                .waistGirth(mm(762))
                .hipGirth(mm(1013))
                .neckBaseGirth(mm(374))
                .upperArmGirth(mm(305))
                .wristGirth(mm(156))
                .handGirth(mm(187))
                .handGirthWithThumb(mm(228))
                .headGirth(mm(559))
                .shoulderLength(mm(131))
                .acrossBack(mm(392))
                .backWaistLength(mm(403))
                .waistToHip(mm(204))
                .napeToArmpit(mm(165))
                .armLength(mm(566))
                .height(mm(1687));
        BodyMeasurements body = builder.build();
        assertThat(body.derived()).isEmpty();
        assertThat(List.of(
                        body.bustGirth(),
                        body.waistGirth(),
                        body.hipGirth(),
                        body.neckBaseGirth(),
                        body.upperArmGirth(),
                        body.wristGirth(),
                        body.handGirth(),
                        body.handGirthWithThumb(),
                        body.headGirth(),
                        body.shoulderLength(),
                        body.acrossBack(),
                        body.backWaistLength(),
                        body.waistToHip(),
                        body.napeToArmpit(),
                        body.armLength(),
                        body.height()))
                .containsExactlyElementsOf(
                        Arrays.stream(BodyMeasure.values()).map(body::measure).toList())
                .doesNotHaveDuplicates();
    }

    /** 0.1565 x 940 + 223.0 = 370.11: regression of the 2012 survey's women (Gordon et al., NATICK/TR-15/007). */
    @Test
    void a_derived_measure_says_its_rule_with_the_numbers_filled_in() {
        Derived neck = rule(woman().build(), BodyMeasure.NECK_BASE_GIRTH);
        assertThat(neck.value().mm()).isCloseTo(370.11, within(1e-9));
        assertThat(neck.text())
                .isEqualTo("neck base girth 370.1 mm = 0.1565 x bust girth 940.0 mm + 223.0 mm, give or take 14.9 mm");
        assertThat(rule(woman().build(), BodyMeasure.ARM_LENGTH).rule())
                .isEqualTo("0.3636 x height 1680.0 mm - 48.5 mm");
        assertThat(rule(woman().build(), BodyMeasure.ACROSS_BACK).rule())
                .isEqualTo("0.1348 x bust girth 940.0 mm + 0.1050 x height 1680.0 mm + 97.1 mm");
        assertThat(rule(woman().wristGirth(mm(150)).build(), BodyMeasure.HAND_GIRTH_WITH_THUMB)
                        .rule())
                .isEqualTo("1.4660 x wrist girth 150.0 mm");
    }

    @Test
    void a_rule_used_beyond_the_surveyed_bodies_says_so() {
        assertThat(rule(woman().bustGirth(cm(160)).hipGirth(cm(165)).build(), BodyMeasure.NECK_BASE_GIRTH)
                        .rule())
                .isEqualTo("0.1565 x bust girth 1600.0 mm + 223.0 mm (beyond the surveyed bust girth of 695.0 to"
                        + " 1469.0 mm)");
    }

    @Test
    void the_hand_follows_a_wrist_that_was_taken() {
        BodyMeasurements slight = woman().wristGirth(mm(140)).build();
        BodyMeasurements stout = woman().wristGirth(mm(170)).build();
        assertThat(slight.handGirth()).isLessThan(stout.handGirth());
        assertThat(slight.handGirthWithThumb()).isLessThan(stout.handGirthWithThumb());
    }

    /** Of a hand 5.9 mm about 0.8315 wrists, of a wrist 5.8 mm about its rule: the root of the sum of their squares. */
    @Test
    void what_rests_on_a_derived_measure_has_the_spread_of_both() {
        BodyMeasurements small = woman().bustGirth(mm(900)).height(mm(1600)).build();
        assertThat(rule(small, BodyMeasure.WRIST_GIRTH).spread()).isEqualTo(mm(5.8));
        assertThat(rule(small, BodyMeasure.HAND_GIRTH).spread().mm())
                .isCloseTo(Math.hypot(5.9, 0.8315 * 5.8), within(1e-9));
        assertThat(rule(small.toBuilder().wristGirth(mm(150)).build(), BodyMeasure.HAND_GIRTH)
                        .spread())
                .isEqualTo(mm(5.9));
    }

    /** The least and the greatest bust girth and height of the 2012 survey (Gordon et al., NATICK/TR-15/007). */
    @ParameterizedTest
    @EnumSource(
            value = Figure.class,
            names = {"WOMAN", "MAN"})
    void every_measure_is_derived_wherever_bust_and_height_are_among_the_surveyed(Figure figure) {
        for (Length bust : List.of(mm(695), mm(1469))) {
            for (Length height : List.of(mm(1409), mm(1993))) {
                BodyMeasurements body = BodyMeasurements.builder()
                        .name("corner")
                        .figure(figure)
                        .bustGirth(bust)
                        .height(height)
                        .confirmed(BodyMeasure.BUST_GIRTH)
                        .confirmed(BodyMeasure.HIP_GIRTH)
                        .build();
                assertThat(body.measures()).containsOnlyKeys(BodyMeasure.values());
            }
        }
    }

    @Test
    void a_rule_that_leads_to_no_body_is_refused_and_the_tape_asked_for() {
        BodyBuilder slight = woman().figure(Figure.MAN).bustGirth(mm(490)).confirmed(BodyMeasure.BUST_GIRTH);
        assertThatThrownBy(slight::build)
                .isInstanceOf(PatternException.class)
                .hasMessage("waist girth of 'Nell': a derived measure must be 427.0 to 1862.0 mm; got 355.3 mm ="
                        + " 0.9698 x bust girth 490.0 mm - 119.9 mm (beyond the surveyed bust girth of 695.0 to"
                        + " 1469.0 mm); take this measure with a tape");
        assertThat(slight.waistGirth(mm(440)).build().waistGirth()).isEqualTo(mm(440));
    }

    /**
     * Derived measures are of the natural waist, whose means the 1988 survey has (NATICK/TR-89/044): 725.5 mm round it.
     */
    @Test
    void a_derived_waist_is_the_natural_one_and_no_navels() {
        assertThat(woman().bustGirth(mm(907.1)).build().waistGirth().mm()).isBetween(725.5, 791.9);
    }

    @Test
    void the_wearer_of_a_garment_has_every_measure_by_name() {
        BodyMeasurements body = woman().build();
        Wearer wearer = body.wearer();
        assertThat(wearer.name()).isEqualTo("Nell");
        assertThat(wearer.child()).isFalse();
        assertThat(wearer.measures()).hasSize(BodyMeasure.values().length);
        assertThat(wearer.measure(Name.of("neck base girth"))).isEqualTo(body.neckBaseGirth());
        assertThat(wearer.isDerived(Name.of("neck base girth"))).isTrue();
        assertThat(wearer.isDerived(Name.of("height"))).isFalse();
        assertThat(wearer.derived()).hasSize(BodyMeasure.values().length - 2);
    }

    @Test
    void nothing_is_derived_for_a_child() {
        BodyMeasurements child = girl().neckBaseGirth(cm(28)).build();
        assertThat(child.isChild()).isTrue();
        assertThat(child.wearer().child()).isTrue();
        assertThat(child.derived()).isEmpty();
        assertThat(child.find(BodyMeasure.ARM_LENGTH)).isEmpty();
        assertThatThrownBy(child::armLength)
                .isInstanceOf(PatternException.class)
                .hasMessage(
                        "arm length of 'Pip': must be taken: no rule derives it for a girl; got only bust girth, neck"
                                + " base girth, height; measure from the shoulder point down the outside of the arm to the wrist"
                                + " bone");
    }

    @Test
    void a_body_without_any_measure_is_refused() {
        assertThatThrownBy(() -> BodyMeasurements.builder()
                        .name("Nell")
                        .figure(Figure.WOMAN)
                        .build())
                .isInstanceOf(PatternException.class)
                .hasMessage("body 'Nell': must come with the measures that its garment needs, or with bust girth and"
                        + " height, from which they are derived; got no measure");
    }

    @Test
    void a_body_has_what_was_taken_and_what_follows_from_that_and_no_more() {
        BodyMeasurements nell = BodyMeasurements.builder()
                .name("Nell")
                .figure(Figure.WOMAN)
                .waistGirth(cm(76))
                .hipGirth(cm(101))
                .height(cm(168))
                .build();
        assertThat(nell.measures())
                .containsOnlyKeys(
                        BodyMeasure.WAIST_GIRTH,
                        BodyMeasure.HIP_GIRTH,
                        BodyMeasure.SHOULDER_LENGTH,
                        BodyMeasure.WAIST_TO_HIP,
                        BodyMeasure.ARM_LENGTH,
                        BodyMeasure.HEIGHT);
        assertThatThrownBy(nell::bustGirth)
                .isInstanceOf(PatternException.class)
                .hasMessage("bust girth of 'Nell': must be taken: nothing derives it; got only waist girth, hip girth,"
                        + " shoulder length, waist to hip, arm length, height; measure horizontal girth of the trunk at the"
                        + " fullest part of the bust or chest");
        assertThatThrownBy(nell::headGirth)
                .isInstanceOf(PatternException.class)
                .hasMessageStartingWith("head girth of 'Nell': must be taken, or derived from bust girth and height;");
    }

    @Test
    void women_and_men_are_derived_from_the_same_measures() {
        assertThat(BodyMeasure.values())
                .allSatisfy(measure -> assertThat(measure.derivedFrom())
                        .isEqualTo(Derivations.rule(measure, Figure.MAN)
                                .map(DerivationRule::predictors)
                                .orElse(Set.of())));
    }

    @Test
    void a_body_without_name_or_figure_is_refused() {
        assertThatThrownBy(() -> BodyMeasurements.builder().name("  ").build())
                .isInstanceOf(PatternException.class)
                .hasMessage("body: must have a name; got none");
        assertThatThrownBy(() -> BodyMeasurements.builder().name("Nell").build())
                .isInstanceOf(PatternException.class)
                .hasMessage("figure of 'Nell': must be one of [woman, man, girl, boy]; got none");
    }

    @Test
    void an_implausible_measure_is_refused() {
        assertThatThrownBy(() -> woman().neckBaseGirth(mm(37.5)).build())
                .isInstanceOf(PatternException.class)
                .hasMessage("neck base girth of 'Nell': must be 211.0 to 654.0 mm; got 37.5 mm;"
                        + " centimetres read as millimetres? that would be 375.0 mm");
    }

    @Test
    void an_age_that_does_not_go_with_the_figure_is_refused() {
        assertThat(woman().ageYears(14).build().ageYears()).hasValue(14);
        assertThat(girl().ageYears(17).build().ageYears()).hasValue(17);
        assertThatThrownBy(() -> woman().ageYears(13).build())
                .isInstanceOf(PatternException.class)
                .hasMessage(
                        "age of 'Nell': a woman must be 14 to 120 years; got 13 years; name the figure girl or boy");
        assertThatThrownBy(() -> girl().ageYears(18).build())
                .isInstanceOf(PatternException.class)
                .hasMessage("age of 'Pip': a girl must be 0 to 17 years; got 18 years");
    }

    @ParameterizedTest
    @CsvSource({"WOMAN, 14", "MAN, 120", "GIRL, 0", "BOY, 17"})
    void an_age_at_the_end_of_its_range_goes(Figure figure, int years) {
        assertThat(girl().figure(figure)
                        .bustGirth(cm(80))
                        .ageYears(years)
                        .build()
                        .ageYears())
                .hasValue(years);
    }

    @ParameterizedTest
    @CsvSource({
        "WOMAN, -1, a woman must be 14 to 120 years; got -1 years",
        "MAN, 121, a man must be 14 to 120 years; got 121 years",
        "MAN, 0, a man must be 14 to 120 years; got 0 years; name the figure girl or boy",
        "BOY, -1, a boy must be 0 to 17 years; got -1 years"
    })
    void an_age_beyond_its_range_is_refused(Figure figure, int years, String message) {
        assertThatThrownBy(() ->
                        girl().figure(figure).bustGirth(cm(80)).ageYears(years).build())
                .isInstanceOf(PatternException.class)
                .hasMessage("age of 'Pip': " + message);
    }

    @Test
    void a_body_is_rebuilt_from_what_was_taken_and_the_rest_derived_anew() {
        BodyMeasurements body = woman().ageYears(40).wristGirth(mm(150)).build();
        assertThat(body.toBuilder().build()).isEqualTo(body);
        BodyMeasurements fuller = body.toBuilder().bustGirth(cm(104)).build();
        assertThat(fuller.wristGirth()).isEqualTo(mm(150));
        assertThat(fuller.neckBaseGirth()).isGreaterThan(body.neckBaseGirth());
    }

    @Test
    void bodies_with_the_same_measures_are_equal() {
        assertThat(woman().build())
                .isEqualTo(woman().build())
                .hasSameHashCodeAs(woman().build())
                .isNotEqualTo(woman().height(cm(168.1)).build())
                .isNotEqualTo(woman().name("Nan").build());
        BodyMeasurements derived = woman().build();
        assertThat(woman().neckBaseGirth(derived.neckBaseGirth()).build())
                .as("taken, not derived")
                .isNotEqualTo(derived);
    }

    @Test
    void a_term_of_the_trade_finds_its_measure() {
        assertThat(BodyMeasure.named(Name.of("across back"))).contains(BodyMeasure.ACROSS_BACK);
        assertThat(BodyMeasure.named(Name.of("chest girth"))).contains(BodyMeasure.BUST_GIRTH);
        assertThat(BodyMeasure.named(Name.of("knee girth"))).isEmpty();
    }

    private static Derived rule(BodyMeasurements body, BodyMeasure measure) {
        return body.derived().stream()
                .filter(rule -> rule.measure() == measure)
                .findFirst()
                .orElseThrow();
    }

    private static BodyBuilder woman() {
        return BodyMeasurements.builder()
                .name("Nell")
                .figure(Figure.WOMAN)
                .bustGirth(cm(94))
                .height(cm(168));
    }

    private static BodyBuilder girl() {
        return BodyMeasurements.builder()
                .name("Pip")
                .figure(Figure.GIRL)
                .bustGirth(cm(60))
                .height(cm(116));
    }
}
