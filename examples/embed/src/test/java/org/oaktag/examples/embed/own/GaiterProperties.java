package org.oaktag.examples.embed.own;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.oaktag.examples.embed.own.FlareGaiter.flareGaiter;
import static org.oaktag.measure.Length.cm;
import static org.oaktag.measure.Length.mm;
import static org.oaktag.measure.Percent.percent;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.domains.Domain;
import net.jqwik.api.domains.DomainContext;
import org.oaktag.PatternException;
import org.oaktag.adjust.Recipe;
import org.oaktag.adjust.StepKind;
import org.oaktag.block.Block;
import org.oaktag.block.Style;
import org.oaktag.body.BodyMeasurements;
import org.oaktag.body.Ease;
import org.oaktag.body.Figure;
import org.oaktag.catalogue.KnownBlocks;
import org.oaktag.catalogue.KnownSteps;
import org.oaktag.export.sheet.Cloths;
import org.oaktag.export.svg.SvgSheet;
import org.oaktag.garment.Allowances;
import org.oaktag.garment.Cloth;
import org.oaktag.garment.CutList;
import org.oaktag.garment.Garment;
import org.oaktag.garment.Name;
import org.oaktag.lay.Effort;
import org.oaktag.lay.Lay;
import org.oaktag.lay.Spread;
import org.oaktag.recipe.json.RecipeJson;
import org.oaktag.sewing.AssemblyOrder;
import org.oaktag.testkit.bodies.Adults;
import org.oaktag.testkit.laws.StepLaws;

@Domain(Adults.class)
@Domain(DomainContext.Global.class)
class GaiterProperties {
    private static final Cloth JERSEY = Cloth.knit("wool jersey, night blue", percent(60));

    private static final Block GAITER = new Gaiter(cm(28));

    private final StepLaws laws = new StepLaws();

    @Property(tries = 200)
    void a_flare_keeps_the_laws_of_every_step(
            @ForAll BodyMeasurements body, @ForAll @DoubleRange(min = 0, max = 300) double by) {
        Garment gaiter = GAITER.draft(body, Ease.none(), JERSEY);
        Garment flared = laws.assertKept(gaiter, flareGaiter(mm(by)));
        assertThat(flared.walkSeams().isTrue()).isTrue();
        laws.assertAddsUp(gaiter, flared);
    }

    @Property(tries = 200)
    void a_flare_taken_back_leaves_the_gaiter_as_it_was(
            @ForAll BodyMeasurements body, @ForAll @DoubleRange(min = 0, max = 300) double by) {
        Garment gaiter = GAITER.draft(body, Ease.none(), JERSEY);
        Garment back = gaiter.adjust(flareGaiter(mm(by)).then(flareGaiter(mm(-by))));
        Name bottom = Name.of("bottom girth");
        assertThat(back.finished(bottom).mm()).isCloseTo(gaiter.finished(bottom).mm(), within(1e-9));
    }

    @Property(tries = 100)
    void the_stretched_top_passes_the_head(@ForAll BodyMeasurements body) {
        double top = GAITER.draft(body, Ease.none(), JERSEY)
                .finished(Name.of("top girth"))
                .mm();
        assertThat(top * 1.6).isCloseTo(body.headGirth().mm(), within(1e-9));
    }

    @Property(tries = 20)
    void every_sheet_is_drawn_of_it(@ForAll BodyMeasurements body) {
        Style style = new Style(GAITER, GAITER.standardEase(), JERSEY, Recipe.of("dome gaiter", flareGaiter(cm(8))));
        Garment gaiter = style.on(body);
        Allowances allowances = GAITER.allowances(gaiter);
        assertThat(SvgSheet.pattern(gaiter, allowances).text()).contains(">gaiter<");
        assertThat(SvgSheet.flat(gaiter).text()).contains(">dome gaiter<", ">top girth<");
        assertThat(SvgSheet.step(1, style.play(body).get(0)).text()).contains("flare");
        Lay lay = Lay.of(CutList.of(gaiter), JERSEY, allowances, Spread.single(cm(150)), Effort.tries(2));
        assertThat(lay.pieces()).hasSize(1);
        assertThat(SvgSheet.lay(lay, Cloths.of(gaiter)).text()).contains("gaiter");
        assertThat(AssemblyOrder.of(gaiter).operations()).isNotEmpty();
    }

    @Property(tries = 20)
    void a_style_of_it_is_written_down_and_read_again_like_one_of_the_librarys(@ForAll BodyMeasurements body) {
        RecipeJson json = new RecipeJson(
                KnownBlocks.catalogue().with(GAITER), KnownSteps.catalogue().with(StepKind.of(FlareGaiter.class)));
        Style style = new Style(GAITER, Ease.none(), JERSEY, Recipe.of("dome gaiter", flareGaiter(cm(8))));
        assertThat(json.read(json.write(style))).isEqualTo(style);
        assertThat(json.read(json.write(style)).on(body)).isEqualTo(style.on(body));
        assertThat(json.schema()).contains("\"gaiter\"").contains("\"flare gaiter\"");
    }

    @Property(tries = 1)
    void a_body_of_which_the_head_alone_was_measured_is_enough() {
        BodyMeasurements head = BodyMeasurements.builder()
                .name("Juno")
                .figure(Figure.WOMAN)
                .headGirth(cm(56))
                .build();
        assertThat(GAITER.missing(head.measures().keySet())).isEmpty();
        assertThat(GAITER.draft(head, Ease.none(), JERSEY).walkSeams().isTrue()).isTrue();
    }

    @Property(tries = 20)
    void too_wide_a_flare_is_refused_and_the_range_it_names_is_taken(@ForAll BodyMeasurements body) {
        Garment gaiter = GAITER.draft(body, Ease.none(), JERSEY);
        assertThatThrownBy(() -> gaiter.adjust(flareGaiter(cm(60))))
                .isInstanceOf(PatternException.class)
                .hasMessageContaining("0.0 mm to 560.0 mm")
                .hasMessageContaining("600.0 mm");
        assertThat(gaiter.adjust(flareGaiter(mm(560))).walkSeams().isTrue()).isTrue();
    }
}
