package org.oaktag.adjust.data;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;

/**
 * A single value within the fields of a record.
 *
 * <pre>{@code
 * AmountField by = RecordForm.of(HemBand.class).amountFields().get(0);
 * by.field();   // = depth_mm
 * by.unit();    // = mm
 * }</pre>
 *
 * @param words its name in words, after those of the record within which it lies
 * @param field the name of its field, after those of the fields within which it lies and a dot
 * @param unit {@code "mm"}, {@code "degrees"} or {@code "percent"}, or nothing
 * @param sort what sort of value it is
 * @param optional whether it may be left out
 * @param choices the words that it may be, where only some will do
 */
public record AmountField(String words, String field, String unit, Sort sort, boolean optional, List<String> choices) {

    /** What sort of value an amount is. */
    public enum Sort {
        /** A number, in its unit where it has one. */
        NUMBER,
        /** Yes or no. */
        FLAG,
        /** A word or a text, or one of some choices. */
        TEXT,
        /** A list, or one of a family of records, with amounts of its own. */
        COMPOUND
    }

    /** Copies the choices. */
    public AmountField {
        Objects.requireNonNull(words, "words");
        Objects.requireNonNull(field, "field");
        Objects.requireNonNull(unit, "unit");
        Objects.requireNonNull(sort, "sort");
        choices = List.copyOf(choices);
    }

    static List<AmountField> of(RecordForm record) {
        List<AmountField> fields = new ArrayList<>();
        for (RecordForm.Component component : record.components()) {
            add(component.words(), component.field(), component.form(), false, fields);
        }
        return List.copyOf(fields);
    }

    private static void add(String words, String field, Form form, boolean optional, List<AmountField> fields) {
        if (form instanceof OptionalForm present) {
            add(words, field, present.of(), true, fields);
        } else if (form instanceof RecordForm record) {
            for (AmountField inner : of(record)) {
                fields.add(new AmountField(
                        words + " " + inner.words,
                        field + "." + inner.field,
                        inner.unit,
                        inner.sort,
                        optional || inner.optional,
                        inner.choices));
            }
        } else {
            Sort sort = form instanceof LeafForm leaf ? leaf.sort() : Sort.COMPOUND;
            List<String> choices =
                    form instanceof LeafForm leaf && leaf.type().isEnum() ? LeafForm.labels(leaf.type()) : List.of();
            fields.add(new AmountField(words, field, form.suffix().replace("_", ""), sort, optional, choices));
        }
    }
}
