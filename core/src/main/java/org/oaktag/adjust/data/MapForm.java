package org.oaktag.adjust.data;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import org.oaktag.garment.Spelling;

/**
 * The form of a map from the constants of an enum: a field for each that is there, by its words with underscores and
 * with the unit of its value.
 *
 * @param keys the enum
 * @param of the form of the values
 */
record MapForm(Class<?> keys, Form of) implements Form {

    @Override
    public Datum.Fields schema() {
        Map<String, Datum> properties = new LinkedHashMap<>();
        for (String label : LeafForm.labels(keys)) {
            properties.put(field(label), of.schema());
        }
        return Schema.object(properties, List.of());
    }

    @Override
    public Datum write(Object value) {
        Map<String, Datum> fields = new LinkedHashMap<>();
        ((SortedMap<?, ?>) value).forEach((key, each) -> fields.put(field(LeafForm.label(key)), of.write(each)));
        return new Datum.Fields(fields);
    }

    @Override
    public Object read(String where, Datum datum) {
        if (!(datum instanceof Datum.Fields fields)) {
            throw Form.wrong(where, "fields in braces", datum);
        }
        List<String> known = LeafForm.labels(keys).stream().map(this::field).toList();
        SortedMap<Object, Object> values = new TreeMap<>();
        fields.values().forEach((field, value) -> {
            int place = known.indexOf(field);
            if (place < 0) {
                throw Spelling.unknown(where, field, known);
            }
            values.put(keys.getEnumConstants()[place], of.read(where + ", " + field, value));
        });
        return Collections.unmodifiableSortedMap(values);
    }

    private String field(String label) {
        return label.replace(' ', '_') + of.suffix();
    }
}
