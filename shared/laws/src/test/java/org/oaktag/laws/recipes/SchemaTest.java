package org.oaktag.laws.recipes;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.networknt.schema.InputFormat;
import com.networknt.schema.JsonSchema;
import com.networknt.schema.JsonSchemaFactory;
import com.networknt.schema.SchemaLocation;
import com.networknt.schema.SpecVersion;
import com.networknt.schema.ValidationMessage;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import java.util.Random;
import java.util.Set;
import java.util.function.Consumer;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.oaktag.PatternException;
import org.oaktag.adjust.Recipe;
import org.oaktag.adjust.StepKind;
import org.oaktag.block.Style;
import org.oaktag.body.BodyMeasure;
import org.oaktag.body.BodyMeasurements;
import org.oaktag.body.Figure;
import org.oaktag.catalogue.KnownSteps;
import org.oaktag.examples.HoodedTop;
import org.oaktag.measure.Length;
import org.oaktag.recipe.json.BodyJson;
import org.oaktag.recipe.json.RecipeJson;

/**
 * What the library writes as JSON against the schemas that it ships, in the judgement of an independent validator of
 * JSON Schema, draft 2020-12. {@code -Doaktag.schemas=write} writes the shipped schemas anew.
 */
class SchemaTest {

    private static final String RECIPE = "recipe.schema.json";
    private static final String BODIES = "bodies.schema.json";
    private static final Path SHIPPED = Path.of("../../recipe-json/src/main/resources/org/oaktag/recipe/json");

    @Test
    void the_shipped_schemas_are_those_of_the_library() throws IOException {
        if ("write".equals(System.getProperty("oaktag.schemas"))) {
            Files.writeString(SHIPPED.resolve(RECIPE), RecipeJson.standard().schema());
            Files.writeString(SHIPPED.resolve(BODIES), BodyJson.schema());
        }
        assertThat(SHIPPED.resolve(RECIPE))
                .as("mvn verify -Doaktag.schemas=write writes it anew")
                .hasContent(RecipeJson.standard().schema());
        assertThat(SHIPPED.resolve(BODIES)).hasContent(BodyJson.schema());
    }

    @Test
    void the_schemas_are_schemas_of_draft_2020_12() {
        JsonSchema drafts = JsonSchemaFactory.getInstance(SpecVersion.VersionFlag.V202012)
                .getSchema(SchemaLocation.of("https://json-schema.org/draft/2020-12/schema"));
        assertThat(drafts.validate(RecipeJson.standard().schema(), InputFormat.JSON))
                .isEmpty();
        assertThat(drafts.validate(BodyJson.schema(), InputFormat.JSON)).isEmpty();
    }

    @Test
    void a_step_of_any_kind_is_written_as_the_schema_says() {
        JsonSchema schema = schema(RECIPE);
        DrawnSteps drawn = new DrawnSteps();
        Random random = new Random(11);
        for (StepKind kind : KnownSteps.catalogue().kinds()) {
            for (int i = 0; i < 20; i++) {
                Style style = HoodedTop.style().with(Recipe.of("one step", drawn.of(kind, random)));
                String json = RecipeJson.standard().write(style);
                assertThat(schema.validate(json, InputFormat.JSON)).as(json).isEmpty();
            }
        }
    }

    @Test
    void bodies_are_written_as_the_schema_says() {
        BodyMeasurements woman = BodyMeasurements.builder()
                .name("Mira")
                .figure(Figure.WOMAN)
                .ageYears(34)
                .bustGirth(Length.mm(865.5))
                .height(Length.mm(1780))
                .build();
        assertThat(schema(BODIES).validate(BodyJson.write(List.of(woman, woman)), InputFormat.JSON))
                .isEmpty();
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
            "version": 1                | "version": 2
            "version": 1                | "version": "1"
            "oaktag recipe"             | "another recipe"
            "title"                     | "titles"
            "step": "widen neckline"    | "step": "widen neklin"
            "step": "widen neckline",   | ``
            "along_mm": 22              | "along_mm": "22"
            "along_mm": 22              | "along_mm": null
            "along_mm": 22              | "along_cm": 2
            "along_mm": 22              | "along_mm": 22, "depth_mm": 3
            "sleeve_follows": false     | "sleeve_follows": 0
            "knit top"                  | "knit tops"
            "stretch_percent": 45       | "stretch": 45
            "rise_mm": 30               | "rise_mm": [30]
            """)
    void what_the_reader_refuses_of_a_recipe_the_schema_refuses(String whole, String broken) {
        refusedByBoth(
                RECIPE, RecipeJson.standard().write(HoodedTop.style()), whole, broken, RecipeJson.standard()::read);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
            "version": 1            | "version": 3
            "oaktag bodies"         | "bodies"
            "bodies":               | "people":
            "woman"                 | "women"
            "name": "Mira",         | ``
            "age_years": 34         | "age_years": 34.5
            "bust_girth_mm"         | "bust_grith_mm"
            "bust_girth_mm": 865    | "bust_girth_mm": 86
            "bust_girth_mm": 865    | "bust_girth_mm": true
            "height_mm": 1780       | "height": 1780
            "waist_girth"           | "waste_girth"
            "confirmed": [          | "confirmed": [ 1,
            """)
    void what_the_reader_refuses_of_bodies_the_schema_refuses(String whole, String broken) {
        BodyMeasurements woman = BodyMeasurements.builder()
                .name("Mira")
                .figure(Figure.WOMAN)
                .ageYears(34)
                .bustGirth(Length.mm(865))
                .height(Length.mm(1780))
                .waistGirth(Length.mm(440))
                .confirmed(BodyMeasure.WAIST_GIRTH)
                .build();
        refusedByBoth(BODIES, BodyJson.write(List.of(woman)), whole, broken, BodyJson::read);
    }

    private static void refusedByBoth(
            String schema, String json, String whole, String broken, Consumer<String> reader) {
        assertThat(json).contains(whole);
        String text = json.replaceFirst(Pattern.quote(whole), broken);
        assertThatThrownBy(() -> reader.accept(text)).isInstanceOf(PatternException.class);
        Set<ValidationMessage> messages = schema(schema).validate(text, InputFormat.JSON);
        assertThat(messages).as(text).isNotEmpty();
    }

    private static JsonSchema schema(String shipped) {
        try (InputStream stream = Objects.requireNonNull(RecipeJson.class.getResourceAsStream(shipped), shipped)) {
            return JsonSchemaFactory.getInstance(SpecVersion.VersionFlag.V202012)
                    .getSchema(new String(stream.readAllBytes(), StandardCharsets.UTF_8));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
