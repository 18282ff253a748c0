package org.oaktag.recipe.json;

import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import com.fasterxml.jackson.core.util.Separators;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.oaktag.PatternException;
import org.oaktag.adjust.data.Datum;

/** Data as JSON text and back. A field that stands twice, and anything behind the end, is refused. */
final class JsonData {

    private static final ObjectMapper MAPPER = JsonMapper.builder()
            .enable(JsonParser.Feature.STRICT_DUPLICATE_DETECTION)
            .enable(DeserializationFeature.FAIL_ON_TRAILING_TOKENS)
            .build();
    private static final JsonNodeFactory NODES = JsonNodeFactory.instance;

    /** Whole numbers up to this size are exact in a double, and are written without a point. */
    private static final double EXACT = 9e15;

    private JsonData() {}

    /** Returns the text, indented by two blanks, lines parted by a line feed whatever the machine. */
    static String text(Datum datum) {
        DefaultIndenter lines = new DefaultIndenter("  ", "\n");
        DefaultPrettyPrinter printer = new DefaultPrettyPrinter()
                .withObjectIndenter(lines)
                .withArrayIndenter(lines)
                .withSeparators(
                        Separators.createDefaultInstance().withObjectFieldValueSpacing(Separators.Spacing.AFTER));
        try {
            return MAPPER.writer(printer).writeValueAsString(node(datum)) + "\n";
        } catch (JsonProcessingException e) {
            throw new IllegalStateException("a tree of plain values cannot fail to be written", e);
        }
    }

    /**
     * Reads the text.
     *
     * @param what what it is, for messages
     * @throws PatternException if it is no JSON, or no fields in braces
     */
    static Datum.Fields fields(String what, String json) {
        JsonNode node;
        try {
            node = MAPPER.readTree(json);
        } catch (JsonProcessingException e) {
            String where = e.getLocation() == null
                    ? ""
                    : " line " + e.getLocation().getLineNr() + ", column "
                            + e.getLocation().getColumnNr();
            throw PatternException.of(
                    what + where, "must be JSON (RFC 8259), each field once", "" + e.getOriginalMessage(), "");
        }
        if (datum(what, node) instanceof Datum.Fields fields) {
            return fields;
        }
        throw PatternException.of(
                what, "must be fields in braces", node.getNodeType().name(), "");
    }

    private static JsonNode node(Datum datum) {
        if (datum instanceof Datum.Numeral number) {
            return number(number.value());
        } else if (datum instanceof Datum.Text text) {
            return NODES.textNode(text.value());
        } else if (datum instanceof Datum.Flag flag) {
            return NODES.booleanNode(flag.value());
        } else if (datum instanceof Datum.Items items) {
            ArrayNode array = NODES.arrayNode();
            items.values().forEach(each -> array.add(node(each)));
            return array;
        }
        ObjectNode object = NODES.objectNode();
        ((Datum.Fields) datum).values().forEach((name, value) -> object.set(name, node(value)));
        return object;
    }

    private static JsonNode number(double value) {
        boolean whole = value == Math.rint(value) && Math.abs(value) < EXACT && !isNegativeZero(value);
        return whole ? NODES.numberNode((long) value) : NODES.numberNode(value);
    }

    private static boolean isNegativeZero(double value) {
        return value == 0 && Double.doubleToRawLongBits(value) != 0;
    }

    private static Datum datum(String where, JsonNode node) {
        if (node.isNumber()) {
            double value = node.doubleValue();
            if (!Double.isFinite(value)) {
                throw PatternException.of(where, "must be a number that can be held", node.asText(), "");
            }
            return new Datum.Numeral(value);
        } else if (node.isTextual()) {
            return new Datum.Text(node.textValue());
        } else if (node.isBoolean()) {
            return new Datum.Flag(node.booleanValue());
        } else if (node.isArray()) {
            List<Datum> items = new ArrayList<>();
            for (JsonNode each : node) {
                items.add(datum(where + " " + (items.size() + 1), each));
            }
            return new Datum.Items(items);
        } else if (node.isObject()) {
            Map<String, Datum> fields = new LinkedHashMap<>();
            for (Map.Entry<String, JsonNode> field : node.properties()) {
                fields.put(field.getKey(), datum(where + ", " + field.getKey(), field.getValue()));
            }
            return new Datum.Fields(fields);
        }
        throw PatternException.of(
                where,
                "must be a number, text, true or false, a list or fields",
                node.isNull() ? "null" : "nothing",
                "leave the field out");
    }
}
