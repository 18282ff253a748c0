package org.oaktag.adjust.data;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;

/**
 * Descriptions of data in the words of JSON Schema (draft 2020-12), themselves data. What can be said of the sort of a
 * value and the names of its fields is said here; which amounts a garment allows, only the values themselves know.
 *
 * <pre>{@code
 * Datum.Fields size = Schema.object(Map.of("bust_mm", Schema.type("number")), List.of("bust_mm"));
 * }</pre>
 */
public final class Schema {

    private static final String PROPERTIES = "properties";
    private static final String REQUIRED = "required";

    private Schema() {}

    /** Returns the description of a value of a sort: {@code "number"}, {@code "string"}. */
    public static Datum.Fields type(String sort) {
        return new Datum.Fields(Map.of("type", new Datum.Text(sort)));
    }

    /** Returns the description of a value that is this text and no other. */
    public static Datum.Fields only(String text) {
        return new Datum.Fields(Map.of("const", new Datum.Text(text)));
    }

    /** Returns the description of a value that is one of these texts. */
    public static Datum.Fields oneOf(List<String> texts) {
        return new Datum.Fields(Map.of("enum", texts(texts)));
    }

    /** Returns the description of a list. */
    public static Datum.Fields list(Datum.Fields item) {
        return type("array").with("items", Objects.requireNonNull(item, "item"));
    }

    /** Returns the description of fields in braces, of which there may be no others. */
    public static Datum.Fields object(Map<String, Datum> properties, List<String> required) {
        return type("object")
                .with(PROPERTIES, new Datum.Fields(properties))
                .with(REQUIRED, texts(required))
                .with("additionalProperties", new Datum.Flag(false));
    }

    /**
     * Returns the description of fields, as {@link #object} gives it, with one more field before them that must be
     * there.
     */
    public static Datum.Fields before(Datum.Fields object, String field, Datum.Fields value) {
        Datum.Fields properties = (Datum.Fields) part(object, PROPERTIES);
        List<Datum> required = new ArrayList<>(((Datum.Items) part(object, REQUIRED)).values());
        required.add(0, new Datum.Text(field));
        return object.with(PROPERTIES, properties.after(field, value)).with(REQUIRED, new Datum.Items(required));
    }

    /** Returns the description of fields with one more field behind them that must be there. */
    public static Datum.Fields after(Datum.Fields object, String field, Datum.Fields value) {
        List<Datum> required = new ArrayList<>(((Datum.Items) part(object, REQUIRED)).values());
        required.add(new Datum.Text(field));
        return optionally(object, field, value).with(REQUIRED, new Datum.Items(required));
    }

    /** Returns the description of fields with one more field behind them that may be left out. */
    public static Datum.Fields optionally(Datum.Fields object, String field, Datum.Fields value) {
        Datum.Fields properties = (Datum.Fields) part(object, PROPERTIES);
        return object.with(PROPERTIES, properties.with(field, value));
    }

    /** Returns the description of fields with another description of one that is among them. */
    public static Datum.Fields told(Datum.Fields object, String field, Datum.Fields value) {
        part((Datum.Fields) part(object, PROPERTIES), Objects.requireNonNull(field, "field"));
        return optionally(object, field, value);
    }

    /** Returns the description of fields of which one says by its text what the others are. */
    public static Datum.Fields by(String field, Map<String, Datum.Fields> objects) {
        List<Datum> cases = new ArrayList<>();
        objects.forEach((text, object) -> {
            Datum.Fields told = type("object")
                    .with(PROPERTIES, new Datum.Fields(Map.of(field, only(text))))
                    .with(REQUIRED, texts(List.of(field)));
            cases.add(new Datum.Fields(Map.of("if", told)).with("then", before(object, field, only(text))));
        });
        return type("object")
                .with(PROPERTIES, new Datum.Fields(Map.of(field, oneOf(List.copyOf(objects.keySet())))))
                .with(REQUIRED, texts(List.of(field)))
                .with("allOf", new Datum.Items(cases));
    }

    static Datum.Fields record(List<RecordForm.Component> components) {
        Map<String, Datum> properties = new LinkedHashMap<>();
        List<String> required = new ArrayList<>();
        for (RecordForm.Component component : components) {
            properties.put(component.field(), component.form().schema());
            if (!(component.form() instanceof OptionalForm)) {
                required.add(component.field());
            }
        }
        return object(properties, required);
    }

    private static Datum part(Datum.Fields object, String name) {
        Datum part = object.values().get(name);
        if (part == null) {
            throw new IllegalArgumentException(
                    "a description of fields must have '" + name + "', got " + object.text());
        }
        return part;
    }

    private static Datum.Items texts(List<String> texts) {
        return new Datum.Items(
                texts.stream().map(Datum.Text::new).map(Datum.class::cast).toList());
    }
}
