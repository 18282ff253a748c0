package org.oaktag.adjust.data;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;

/**
 * A value as data. A closed family of immutable values.
 *
 * <pre>{@code
 * Datum.Fields written = KnownSteps.catalogue().kind("lower armhole").write(lowerArmhole(mm(12)));
 * written.values().get("by_mm");   // a Numeral of 12
 * }</pre>
 */
public sealed interface Datum {

    /** Returns what it is, for messages: {@code "a number"}. */
    String sort();

    /** Returns it as it is quoted in a message. */
    String text();

    /** A finite number. */
    record Numeral(double value) implements Datum {
        /**
         * Checks the number.
         *
         * @throws IllegalArgumentException if it is not finite
         */
        public Numeral {
            if (!Double.isFinite(value)) {
                throw new IllegalArgumentException("a number must be finite, got " + value);
            }
        }

        @Override
        public String sort() {
            return "a number";
        }

        @Override
        public String text() {
            return String.valueOf(value);
        }
    }

    /** Words. */
    record Text(String value) implements Datum {
        /** Refuses null. */
        public Text {
            Objects.requireNonNull(value, "value");
        }

        @Override
        public String sort() {
            return "text";
        }

        @Override
        public String text() {
            return "'" + value + "'";
        }
    }

    /** Yes or no. */
    record Flag(boolean value) implements Datum {
        @Override
        public String sort() {
            return "true or false";
        }

        @Override
        public String text() {
            return String.valueOf(value);
        }
    }

    /** Values in order. */
    record Items(List<Datum> values) implements Datum {
        /** Copies the list. */
        public Items {
            values = List.copyOf(values);
        }

        @Override
        public String sort() {
            return "a list";
        }

        @Override
        public String text() {
            return "a list of " + values.size();
        }
    }

    /** Values by name, in the order in which they are written. */
    record Fields(Map<String, Datum> values) implements Datum {
        /** Copies the fields. */
        public Fields {
            values = Collections.unmodifiableMap(new LinkedHashMap<>(values));
        }

        /** Returns these fields with another before them. */
        public Fields after(String name, Datum value) {
            Objects.requireNonNull(name, "name");
            Objects.requireNonNull(value, "value");
            Map<String, Datum> all = new LinkedHashMap<>();
            all.put(name, value);
            all.putAll(values);
            return new Fields(all);
        }

        /**
         * Returns these fields with one of them changed or added.
         *
         * @param field its name; that of a field within a field after a dot, {@code "shape.rise_mm"}
         */
        public Fields with(String field, Datum value) {
            Objects.requireNonNull(value, "value");
            Map<String, Datum> all = new LinkedHashMap<>(values);
            int dot = field.indexOf('.');
            if (dot < 0) {
                all.put(field, value);
            } else {
                String outer = field.substring(0, dot);
                Fields inner = values.get(outer) instanceof Fields fields ? fields : new Fields(Map.of());
                all.put(outer, inner.with(field.substring(dot + 1), value));
            }
            return new Fields(all);
        }

        /** Returns these fields without one. */
        public Fields without(String name) {
            Map<String, Datum> all = new LinkedHashMap<>(values);
            all.remove(Objects.requireNonNull(name, "name"));
            return new Fields(all);
        }

        @Override
        public String sort() {
            return "fields in braces";
        }

        @Override
        public String text() {
            return "fields " + values.keySet();
        }
    }
}
