package org.oaktag.laws.recipes;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import java.util.Random;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.oaktag.PatternException;
import org.oaktag.adjust.Recipe;
import org.oaktag.adjust.Reshaped;
import org.oaktag.adjust.Step;
import org.oaktag.adjust.StepCatalogue;
import org.oaktag.adjust.StepKind;
import org.oaktag.block.Style;
import org.oaktag.catalogue.KnownSteps;
import org.oaktag.examples.HoodedTop;
import org.oaktag.garment.Amount;
import org.oaktag.garment.Garment;
import org.oaktag.measure.Length;
import org.oaktag.recipe.json.RecipeJson;

/** The catalogue knows every step of the library, and each comes back from what is written of it. */
class KnownStepsTest {

    private static final StepCatalogue CATALOGUE = KnownSteps.catalogue();

    @Test
    void every_step_of_the_library_is_in_the_catalogue() {
        Set<String> steps = new ClassFileImporter()
                        .withImportOption(new ImportOption.DoNotIncludeTests())
                        .importPackages("org.oaktag.adjust", "org.oaktag.adjustments", "org.oaktag.skirt")
                        .stream()
                        .filter(type -> type.isRecord() && type.isAssignableTo(Step.class))
                        .map(JavaClass::getFullName)
                        .collect(Collectors.toSet());
        assertThat(CATALOGUE.kinds().stream().map(kind -> kind.type().getName()))
                .containsExactlyInAnyOrderElementsOf(steps);
    }

    @Test
    void a_step_of_any_kind_and_amounts_comes_back_from_its_data_and_from_json() {
        DrawnSteps drawn = new DrawnSteps();
        RecipeJson json = RecipeJson.standard();
        Style style = HoodedTop.style();
        Random random = new Random(5);
        for (StepKind kind : CATALOGUE.kinds()) {
            for (int i = 0; i < 20; i++) {
                Step step = drawn.of(kind, random);
                assertThat(CATALOGUE.kindOf(step).name()).isEqualTo(kind.name());
                assertThat(CATALOGUE.read("step", CATALOGUE.write(step))).isEqualTo(step);
                Style written = style.with(Recipe.of("one step", step));
                assertThat(json.read(json.write(written))).isEqualTo(written);
            }
        }
    }

    /** A step of a maker's own. */
    public record Rename(String title, Length unused) implements Step {
        @Override
        public String name() {
            return "rename the garment";
        }

        @Override
        public java.util.List<Amount> amounts() {
            return java.util.List.of(Amount.of("title", title));
        }

        @Override
        public Reshaped reshape(Garment garment) {
            return Reshaped.of(garment.titled(title));
        }
    }

    @Test
    void a_step_of_a_makers_own_takes_one_line() {
        Step own = new Rename("cape", Length.mm(3));
        assertThatThrownBy(() -> CATALOGUE.write(own))
                .isInstanceOf(PatternException.class)
                .hasMessageContaining("StepKind.of");
        StepCatalogue more = CATALOGUE.with(StepKind.of(Rename.class));
        assertThat(more.read("step", more.write(own))).isEqualTo(own);
        assertThatThrownBy(() -> more.with(StepKind.of(Rename.class)))
                .isInstanceOf(PatternException.class)
                .hasMessageContaining("'rename' twice");
    }

    @Test
    void an_unknown_kind_is_refused_with_the_nearest() {
        assertThatThrownBy(() -> CATALOGUE.kind("widen nekline"))
                .isInstanceOf(PatternException.class)
                .hasMessageContaining("did you mean 'widen neckline'?");
    }
}
