package org.oaktag.adjust.data;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.function.BiFunction;
import java.util.function.DoubleFunction;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import org.oaktag.PatternException;
import org.oaktag.garment.Spelling;

/**
 * The form of a value that is written as one piece.
 *
 * @param type the type of the value
 * @param sort what it is written as
 * @param suffix what the name of its field ends in
 * @param schema what its data is like
 * @param writer makes data of it
 * @param reader makes it of data, told where that stands
 */
record LeafForm(
        Class<?> type,
        AmountField.Sort sort,
        String suffix,
        Datum.Fields schema,
        Function<Object, Datum> writer,
        BiFunction<String, Datum, Object> reader)
        implements Form {

    @Override
    public Datum write(Object value) {
        return writer.apply(value);
    }

    @Override
    public Object read(String where, Datum datum) {
        try {
            return reader.apply(where, datum);
        } catch (IllegalArgumentException refused) {
            throw PatternException.of(where, String.valueOf(refused.getMessage()), datum.text(), "");
        }
    }

    static <T> LeafForm number(
            Class<T> type, String suffix, ToDoubleFunction<T> toNumber, DoubleFunction<T> fromNumber) {
        return new LeafForm(
                type,
                AmountField.Sort.NUMBER,
                suffix,
                Schema.type("number"),
                value -> new Datum.Numeral(toNumber.applyAsDouble(type.cast(value))),
                (where, datum) -> fromNumber.apply(numberOf(where, datum)));
    }

    static LeafForm whole() {
        return new LeafForm(
                Integer.class,
                AmountField.Sort.NUMBER,
                "",
                Schema.type("integer"),
                value -> new Datum.Numeral((Integer) value),
                (where, datum) -> {
                    double number = numberOf(where, datum);
                    if (number != Math.rint(number) || Math.abs(number) > Integer.MAX_VALUE) {
                        throw Form.wrong(where, "a whole number", datum);
                    }
                    return (int) number;
                });
    }

    static LeafForm flag() {
        return new LeafForm(
                Boolean.class,
                AmountField.Sort.FLAG,
                "",
                Schema.type("boolean"),
                value -> new Datum.Flag((Boolean) value),
                (where, datum) -> {
                    if (datum instanceof Datum.Flag flag) {
                        return flag.value();
                    }
                    throw Form.wrong(where, "true or false", datum);
                });
    }

    static <T> LeafForm text(
            Class<T> type, Datum.Fields schema, Function<T, String> toText, Function<String, T> fromText) {
        return new LeafForm(
                type,
                AmountField.Sort.TEXT,
                "",
                schema,
                value -> new Datum.Text(toText.apply(type.cast(value))),
                (where, datum) -> fromText.apply(textOf(where, datum)));
    }

    /** The constants of an enum, written in lower-case words. */
    static LeafForm constant(Class<?> type) {
        List<Object> constants = List.of(type.getEnumConstants());
        List<String> known = constants.stream().map(LeafForm::label).toList();
        return new LeafForm(
                type,
                AmountField.Sort.TEXT,
                "",
                Schema.oneOf(known),
                value -> new Datum.Text(label(value)),
                (where, datum) -> {
                    String written = textOf(where, datum);
                    int place = known.indexOf(written);
                    if (place < 0) {
                        throw Spelling.unknown(where, written, known);
                    }
                    return constants.get(place);
                });
    }

    /** Returns the constants of an enum as they are written. */
    static List<String> labels(Class<?> type) {
        return Arrays.stream(type.getEnumConstants()).map(LeafForm::label).toList();
    }

    /** Returns a constant of an enum as it is written. */
    static String label(Object constant) {
        return ((Enum<?>) constant).name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }

    private static double numberOf(String where, Datum datum) {
        if (datum instanceof Datum.Numeral number) {
            return number.value();
        }
        throw Form.wrong(where, "a number", datum);
    }

    static String textOf(String where, Datum datum) {
        if (datum instanceof Datum.Text text) {
            return text.value();
        }
        throw Form.wrong(where, "text", datum);
    }
}
