package org.oaktag.recipe.json;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import org.oaktag.PatternException;
import org.oaktag.adjust.data.Datum;
import org.oaktag.adjust.data.RecordForm;
import org.oaktag.adjust.data.Schema;
import org.oaktag.body.BodyBuilder;
import org.oaktag.body.BodyMeasure;
import org.oaktag.body.BodyMeasurements;
import org.oaktag.body.Derived;
import org.oaktag.body.Figure;
import org.oaktag.body.PlausibleRange;
import org.oaktag.garment.Spelling;
import org.oaktag.measure.Length;

/**
 * Writes bodies as JSON and reads them. Only what was taken is written; what was derived is derived again, by the same
 * rules, so that the body comes back as it was. What is asked about and meant stands in the list {@code confirmed}.
 *
 * <pre>{@code
 * String json = BodyJson.write(crew);
 * BodyJson.read(json).equals(crew);   // = true
 * }</pre>
 */
public final class BodyJson {

    private static final Format FORMAT = new Format("oaktag bodies", 1);
    private static final String BODIES = "bodies";
    private static final String MEASURES = "measures";
    private static final String CONFIRMED = "confirmed";

    private BodyJson() {}

    /**
     * What stands before the measures of a body.
     *
     * @param name who it is
     * @param figure whose body it is
     * @param ageYears the age in whole years, or empty
     */
    public record Head(String name, Figure figure, Optional<Integer> ageYears) {
        /** Refuses null. */
        public Head {
            Objects.requireNonNull(name, "name");
            Objects.requireNonNull(figure, "figure");
            Objects.requireNonNull(ageYears, "ageYears");
        }
    }

    /**
     * Returns the JSON Schema (draft 2020-12) of what {@link #write} writes. Its ranges are those of a child or a grown
     * body, whichever is wider; {@link #read} knows which it is. It lies beside this class as {@code
     * bodies.schema.json}.
     */
    public static String schema() {
        Map<String, Datum> measures = new LinkedHashMap<>();
        for (BodyMeasure measure : BodyMeasure.values()) {
            measures.put(
                    field(measure),
                    Schema.type("number")
                            .with("description", new Datum.Text(measure.definition()))
                            .with(
                                    "minimum",
                                    end(PlausibleRange.of(measure, Figure.GIRL).least()))
                            .with(
                                    "maximum",
                                    end(PlausibleRange.of(measure, Figure.WOMAN).greatest())));
        }
        Datum.Fields body = Schema.after(head().schema(), MEASURES, Schema.object(measures, List.of()));
        Datum.Fields asked = Schema.optionally(
                body,
                CONFIRMED,
                Schema.list(Schema.oneOf(
                        Arrays.stream(BodyMeasure.values()).map(BodyJson::word).toList())));
        return JsonData.text(FORMAT.schema(Schema.object(Map.of(BODIES, Schema.list(asked)), List.of(BODIES))));
    }

    private static Datum end(Length length) {
        return new Datum.Numeral(length.mm());
    }

    /** Writes bodies in their order. */
    public static String write(List<BodyMeasurements> bodies) {
        List<Datum> items = new ArrayList<>();
        bodies.forEach(body -> items.add(fields(body)));
        return JsonData.text(FORMAT.before(new Datum.Fields(Map.of(BODIES, new Datum.Items(items)))));
    }

    /**
     * Reads bodies.
     *
     * @throws PatternException if the text is no JSON, of another format or version, a field is unknown, missing or of
     *     the wrong sort, or a measure is no measure of a body or asked about; the message says which body, and what
     *     would do
     */
    public static List<BodyMeasurements> read(String json) {
        Datum.Fields content = FORMAT.content(JsonData.fields("bodies", Objects.requireNonNull(json, "json")));
        if (!(content.values().get(BODIES) instanceof Datum.Items items)
                || content.values().size() > 1) {
            throw PatternException.of(
                    "bodies", "must have one more field, the list '" + BODIES + "'", content.text(), "");
        }
        List<BodyMeasurements> bodies = new ArrayList<>();
        for (Datum item : items.values()) {
            bodies.add(body("body " + (bodies.size() + 1), item));
        }
        return List.copyOf(bodies);
    }

    private static Datum.Fields fields(BodyMeasurements body) {
        Optional<Integer> age =
                body.ageYears().isPresent() ? Optional.of(body.ageYears().getAsInt()) : Optional.empty();
        Map<String, Datum> fields = new LinkedHashMap<>(
                head().write(new Head(body.name(), body.figure(), age)).values());
        Set<BodyMeasure> derived =
                Set.copyOf(body.derived().stream().map(Derived::measure).toList());
        Map<String, Datum> measures = new LinkedHashMap<>();
        body.measures().forEach((measure, length) -> {
            if (!derived.contains(measure)) {
                measures.put(field(measure), new Datum.Numeral(length.mm()));
            }
        });
        fields.put(MEASURES, new Datum.Fields(measures));
        if (!body.confirmed().isEmpty()) {
            fields.put(
                    CONFIRMED,
                    new Datum.Items(body.confirmed().stream()
                            .<Datum>map(doubt -> new Datum.Text(word(doubt.measure())))
                            .toList()));
        }
        return new Datum.Fields(fields);
    }

    private static BodyMeasurements body(String where, Datum item) {
        if (!(item instanceof Datum.Fields fields)
                || !(fields.values().get(MEASURES) instanceof Datum.Fields measures)) {
            throw PatternException.of(where, "must have its '" + MEASURES + "' in braces", item.text(), "");
        }
        Head head = (Head) head().read(where, fields.without(MEASURES).without(CONFIRMED));
        BodyBuilder builder = BodyMeasurements.builder().name(head.name()).figure(head.figure());
        head.ageYears().ifPresent(builder::ageYears);
        String whose = where + " ('" + head.name() + "')";
        measures.values().forEach((field, value) -> {
            if (!(value instanceof Datum.Numeral number)) {
                throw PatternException.of(whose + ", " + field, "must be a number", value.text(), "");
            }
            builder.measure(measure(whose, field, BodyJson::field), Length.mm(number.value()));
        });
        confirmed(whose, fields).forEach(builder::confirmed);
        return builder.build();
    }

    private static List<BodyMeasure> confirmed(String whose, Datum.Fields fields) {
        Datum list = fields.values().getOrDefault(CONFIRMED, new Datum.Items(List.of()));
        if (!(list instanceof Datum.Items items) || !items.values().stream().allMatch(Datum.Text.class::isInstance)) {
            throw PatternException.of(whose, "'" + CONFIRMED + "' must be a list of measures", list.text(), "");
        }
        return items.values().stream()
                .map(item -> measure(whose, ((Datum.Text) item).value(), BodyJson::word))
                .toList();
    }

    private static BodyMeasure measure(String whose, String written, Function<BodyMeasure, String> words) {
        return Arrays.stream(BodyMeasure.values())
                .filter(measure -> words.apply(measure).equals(written))
                .findFirst()
                .orElseThrow(() -> unknown(whose, written, words));
    }

    private static PatternException unknown(String whose, String written, Function<BodyMeasure, String> words) {
        List<String> known = Arrays.stream(BodyMeasure.values()).map(words).toList();
        return PatternException.of(
                whose, "must have no measures but " + known, "'" + written + "'", Spelling.meant(written, known));
    }

    private static String field(BodyMeasure measure) {
        return word(measure) + "_mm";
    }

    private static String word(BodyMeasure measure) {
        return measure.label().replace(' ', '_');
    }

    private static RecordForm head() {
        return RecordForm.of(Head.class);
    }
}
