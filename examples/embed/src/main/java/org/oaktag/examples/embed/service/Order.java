package org.oaktag.examples.embed.service;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.StreamReadFeature;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.oaktag.PatternException;
import org.oaktag.block.Style;
import org.oaktag.body.BodyMeasurements;
import org.oaktag.garment.Garment;
import org.oaktag.recipe.json.BodyJson;
import org.oaktag.recipe.json.RecipeJson;

/**
 * What a sender wants made: a style, and the body it is for.
 *
 * <pre>{@code {"body": {...one body, as BodyJson writes it...}, "recipe": {...a style, as RecipeJson writes
 * it...}}}</pre>
 *
 * @param body the body
 * @param style the style
 */
record Order(BodyMeasurements body, Style style) {

    private static final Set<String> FIELDS = Set.of("body", "recipe");

    private static final JsonMapper JSON = JsonMapper.builder()
            .enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION)
            .enable(DeserializationFeature.FAIL_ON_TRAILING_TOKENS)
            .build();

    /**
     * Reads an order.
     *
     * @throws JsonProcessingException if the text is no JSON
     * @throws PatternException if it is JSON, and no order: a field is unknown or missing, a measure is no measure of a
     *     body, a step or an amount breaks its rule, or there are more steps than allowed
     */
    static Order parse(String text, int steps) throws JsonProcessingException {
        JsonNode order = JSON.readTree(text);
        Set<String> given = new TreeSet<>();
        order.fieldNames().forEachRemaining(given::add);
        if (!given.equals(FIELDS)) {
            throw PatternException.of("order", "must have the fields 'body' and 'recipe'", given.toString(), "");
        }
        List<BodyMeasurements> bodies = BodyJson.read(order.get("body").toString());
        if (bodies.size() != 1) {
            throw PatternException.of("order", "must be for one body", bodies.size() + " bodies", "send one for each");
        }
        Style style = RecipeJson.standard().read(order.get("recipe").toString());
        int asked = style.recipe().steps().size();
        if (asked > steps) {
            throw PatternException.of("recipe", "must have at most " + steps + " steps", asked + " steps", "");
        }
        return new Order(bodies.get(0), style);
    }

    Garment made() {
        return style.on(body);
    }
}
