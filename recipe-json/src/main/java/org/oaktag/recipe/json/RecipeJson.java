package org.oaktag.recipe.json;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.SortedMap;
import java.util.TreeMap;
import org.oaktag.PatternException;
import org.oaktag.adjust.Recipe;
import org.oaktag.adjust.Step;
import org.oaktag.adjust.StepCatalogue;
import org.oaktag.adjust.data.Datum;
import org.oaktag.adjust.data.RecordForm;
import org.oaktag.adjust.data.Schema;
import org.oaktag.block.Block;
import org.oaktag.block.BlockCatalogue;
import org.oaktag.block.Style;
import org.oaktag.body.BodyMeasure;
import org.oaktag.body.Ease;
import org.oaktag.catalogue.KnownBlocks;
import org.oaktag.catalogue.KnownSteps;
import org.oaktag.garment.Cloth;
import org.oaktag.garment.Name;
import org.oaktag.measure.Length;

/**
 * Writes styles, each a block and a recipe, as JSON and reads them.
 *
 * <pre>{@code
 * String json = RecipeJson.standard().write(style);
 * Style again = RecipeJson.standard().read(json);     // equals style
 * }</pre>
 *
 * <p>Immutable.
 *
 * @param blocks the blocks that a style may begin with
 * @param steps the kinds of step that may stand in a recipe
 */
public record RecipeJson(BlockCatalogue blocks, StepCatalogue steps) {

    private static final Format FORMAT = new Format("oaktag recipe", 1);
    private static final String BLOCK = "block";
    private static final String STEPS = "steps";

    /** Refuses null. */
    public RecipeJson {
        Objects.requireNonNull(blocks, "blocks");
        Objects.requireNonNull(steps, "steps");
    }

    /**
     * What stands before the steps.
     *
     * @param title what the style makes
     * @param block the name of its block
     * @param ease how much larger it is than the body, measure by measure
     * @param cloth what it is made of
     */
    public record Head(String title, Name block, SortedMap<BodyMeasure, Length> ease, Cloth cloth) {
        /** Copies the amounts. */
        public Head {
            Objects.requireNonNull(title, "title");
            Objects.requireNonNull(block, "block");
            ease = Collections.unmodifiableSortedMap(new TreeMap<>(ease));
            Objects.requireNonNull(cloth, "cloth");
        }
    }

    /**
     * Returns what reads and writes every block and step of the library; for your own as well, give catalogues that
     * have them.
     */
    public static RecipeJson standard() {
        return new RecipeJson(KnownBlocks.catalogue(), KnownSteps.catalogue());
    }

    /**
     * Returns the JSON Schema (draft 2020-12) of what {@link #write} writes, for editors and other programs. It knows
     * every field and its sort; which amounts a step allows, only {@link #read} and the garment say. That of
     * {@link #standard()} lies beside this class as {@code recipe.schema.json}.
     */
    public String schema() {
        Datum.Fields head = Schema.told(head().schema(), BLOCK, Schema.oneOf(blocks.names()));
        return JsonData.text(FORMAT.schema(Schema.after(head, STEPS, Schema.list(steps.schema()))));
    }

    /**
     * Writes a style.
     *
     * @throws PatternException if its block, or the kind of a step, is not in the catalogue
     */
    public String write(Style style) {
        requireKnown(style.block());
        Head head = new Head(style.title(), style.block().name(), style.ease().amounts(), style.cloth());
        Map<String, Datum> fields = new LinkedHashMap<>(head().write(head).values());
        List<Datum> written = new ArrayList<>();
        for (Step step : style.recipe().steps()) {
            written.add(steps.write(step));
        }
        fields.put(STEPS, new Datum.Items(written));
        return JsonData.text(FORMAT.before(new Datum.Fields(fields)));
    }

    /**
     * Reads a style.
     *
     * @throws PatternException if the text is no JSON, of another format or version, a field is unknown, missing or of
     *     the wrong sort, the block or a step is unknown, or an amount breaks a rule; the message says where, and what
     * would do
     */
    public Style read(String json) {
        Datum.Fields content = FORMAT.content(JsonData.fields("recipe", Objects.requireNonNull(json, "json")));
        if (!(content.values().get(STEPS) instanceof Datum.Items items)) {
            throw PatternException.of("recipe", "must have its steps in a list '" + STEPS + "'", content.text(), "");
        }
        Head head = (Head) head().read("recipe", content.without(STEPS));
        Block block = blocks.block(head.block().value());
        List<Step> read = new ArrayList<>();
        for (Datum step : items.values()) {
            read.add(step("step " + (read.size() + 1), step));
        }
        return new Style(block, new Ease(head.ease()), head.cloth(), new Recipe(head.title(), read));
    }

    private void requireKnown(Block block) {
        if (!blocks.blocks().contains(block)) {
            throw PatternException.of(
                    "block '" + block.name() + "'",
                    "must be one that the catalogue knows",
                    "one of " + block.getClass().getName(),
                    "add it: catalogue.with(block)");
        }
    }

    private Step step(String where, Datum step) {
        if (step instanceof Datum.Fields fields) {
            return steps.read(where, fields);
        }
        throw PatternException.of(where, "must be fields in braces", step.text(), "");
    }

    private static RecordForm head() {
        return RecordForm.of(Head.class);
    }
}
