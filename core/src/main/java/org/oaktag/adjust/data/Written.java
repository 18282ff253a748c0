package org.oaktag.adjust.data;

import java.math.BigDecimal;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;

/**
 * Data as a maker reads it, amount by amount: {@code "above hem"} is {@code "140 mm"}.
 *
 * <pre>{@code
 * Datum.Fields step = KnownSteps.catalogue().kind("lower armhole").write(lowerArmhole(mm(12)));
 * Written.amounts(step).get("by");   // = 12 mm
 * Written.words("above_hem_mm");     // = above hem
 * }</pre>
 */
public final class Written {

    private static final Map<String, String> UNITS = Map.of("mm", " mm", "degrees", "°", "percent", " %");

    private Written() {}

    /**
     * Returns every amount within fields by its name, in order. The amounts of fields within fields, and of the items
     * of a list, are named by all the words that lead to them.
     */
    public static Map<String, String> amounts(Datum.Fields fields) {
        Map<String, String> amounts = new LinkedHashMap<>();
        add("", Objects.requireNonNull(fields, "fields"), amounts);
        return amounts;
    }

    /** Returns the words of a field's name, its unit left out: {@code "above hem"} for {@code above_hem_mm}. */
    public static String words(String field) {
        int end = field.lastIndexOf('_');
        boolean hasUnit = end > 0 && UNITS.containsKey(field.substring(end + 1));
        return (hasUnit ? field.substring(0, end) : field).replace('_', ' ');
    }

    private static void add(String before, Datum datum, Map<String, String> amounts) {
        if (datum instanceof Datum.Fields fields) {
            fields.values().forEach((field, value) -> {
                String name = (before + " " + words(field)).strip();
                String unit = UNITS.getOrDefault(field.substring(field.lastIndexOf('_') + 1), "");
                if (value instanceof Datum.Numeral number) {
                    amounts.put(name, plain(number.value()) + unit);
                } else {
                    add(name, value, amounts);
                }
            });
        } else if (datum instanceof Datum.Items items) {
            List<Datum> values = items.values();
            for (int i = 0; i < values.size(); i++) {
                add(before + " " + (i + 1), values.get(i), amounts);
            }
        } else if (datum instanceof Datum.Numeral number) {
            amounts.put(before, plain(number.value()));
        } else if (datum instanceof Datum.Flag flag) {
            amounts.put(before, flag.value() ? "yes" : "no");
        } else if (datum instanceof Datum.Text text) {
            amounts.put(before, text.value());
        }
    }

    private static String plain(double value) {
        return new BigDecimal(Double.toString(value + 0.0)).stripTrailingZeros().toPlainString();
    }
}
