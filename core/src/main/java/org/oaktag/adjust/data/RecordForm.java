package org.oaktag.adjust.data;

import java.lang.reflect.AccessibleObject;
import java.lang.reflect.Constructor;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.RecordComponent;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import org.oaktag.PatternException;
import org.oaktag.garment.Spelling;

/**
 * The form of a record: its components as fields, their names in lower case with underscores and their unit at the end,
 * {@code above_hem_mm}. It is read through the record's own constructor, which checks it. Immutable.
 *
 * <pre>{@code
 * RecordForm form = RecordForm.of(HemBand.class);
 * Datum.Fields written = form.write(hemBand(mm(50), mm(0)));
 * form.read("step 3", written).equals(hemBand(mm(50), mm(0)));   // = true
 * }</pre>
 */
public final class RecordForm implements Form {

    private final Constructor<? extends Record> constructor;
    private final List<Component> components;

    private RecordForm(Constructor<? extends Record> constructor, List<Component> components) {
        this.constructor = constructor;
        this.components = List.copyOf(components);
    }

    /**
     * A component of a record.
     *
     * @param words its name in words, {@code "above hem"}
     * @param field the name of its field, {@code "above_hem_mm"}
     * @param accessor what reads it off a record
     * @param form the form of its value
     */
    record Component(String words, String field, RecordComponent accessor, Form form) {

        Object of(Record record) {
            try {
                return accessor.getAccessor().invoke(record);
            } catch (ReflectiveOperationException e) {
                throw new IllegalStateException("component " + accessor + " cannot be read", e);
            }
        }
    }

    /**
     * Returns the form of a record.
     *
     * @throws IllegalArgumentException if the record is neither public in an exported package nor in a package that is
     *     open to this module, or a component cannot be written as data
     */
    public static RecordForm of(Class<? extends Record> type) {
        List<Component> components = new ArrayList<>();
        for (RecordComponent component : type.getRecordComponents()) {
            Form form = Form.of(component.getGenericType());
            String words = Form.words(component.getName());
            open(component.getAccessor(), type);
            components.add(new Component(words, words.replace(' ', '_') + form.suffix(), component, form));
        }
        try {
            Class<?>[] types = Arrays.stream(type.getRecordComponents())
                    .map(RecordComponent::getType)
                    .toArray(Class<?>[]::new);
            Constructor<? extends Record> constructor = type.getDeclaredConstructor(types);
            open(constructor, type);
            return new RecordForm(constructor, components);
        } catch (NoSuchMethodException e) {
            throw new IllegalStateException("record " + type.getName() + " has no constructor of its components", e);
        }
    }

    private static void open(AccessibleObject member, Class<? extends Record> type) {
        if (!member.trySetAccessible()) {
            throw new IllegalArgumentException("record " + type.getName() + " must be public in an exported package, or"
                    + " its package open to org.oaktag.core, to be written as data");
        }
    }

    List<Component> components() {
        return components;
    }

    /** Returns the words of the record's name: {@code "widen neckline"} for {@code WidenNeckline}. */
    public String words() {
        return Form.words(constructor.getDeclaringClass().getSimpleName());
    }

    /** Returns every single value within the record, in order. */
    public List<AmountField> amountFields() {
        return AmountField.of(this);
    }

    /** {@inheritDoc} */
    @Override
    public Datum.Fields schema() {
        return Schema.record(components);
    }

    /** {@inheritDoc} */
    @Override
    public Datum.Fields write(Object value) {
        if (!constructor.getDeclaringClass().isInstance(Objects.requireNonNull(value, "value"))) {
            throw new IllegalArgumentException("what is written must be a "
                    + constructor.getDeclaringClass().getSimpleName() + ", got " + value);
        }
        Map<String, Datum> fields = new LinkedHashMap<>();
        for (Component component : components) {
            Object part = component.of((Record) value);
            if (!part.equals(Optional.empty())) {
                fields.put(component.field(), component.form().write(part));
            }
        }
        return new Datum.Fields(fields);
    }

    /**
     * {@inheritDoc}
     *
     * @throws PatternException if a field is unknown or missing, is of the wrong sort, or breaks a rule of the record
     */
    @Override
    public Record read(String where, Datum datum) {
        if (!(datum instanceof Datum.Fields fields)) {
            throw Form.wrong(where, "fields in braces", datum);
        }
        checkKnown(where, fields);
        Object[] parts = new Object[components.size()];
        for (int i = 0; i < parts.length; i++) {
            Component component = components.get(i);
            Datum part = fields.values().get(component.field());
            if (part != null) {
                parts[i] = component.form().read(where + ", " + component.field(), part);
            } else if (component.form() instanceof OptionalForm) {
                parts[i] = Optional.empty();
            } else {
                throw PatternException.of(
                        where, "must have a field '" + component.field() + "'", datum.text(), "add it");
            }
        }
        return made(where, parts);
    }

    private void checkKnown(String where, Datum.Fields fields) {
        List<String> known = components.stream().map(Component::field).toList();
        for (Map.Entry<String, Datum> field : fields.values().entrySet()) {
            if (!known.contains(field.getKey())) {
                throw PatternException.of(
                        where,
                        known.isEmpty() ? "must have no fields" : "must have no fields but " + known,
                        "'" + field.getKey() + "'",
                        Spelling.meant(field.getKey(), known));
            }
        }
    }

    private Record made(String where, Object[] parts) {
        try {
            return constructor.newInstance(parts);
        } catch (InvocationTargetException e) {
            if (e.getCause() instanceof PatternException refused) {
                throw PatternException.of(
                        where + ", " + refused.thing(), refused.rule(), refused.given(), refused.remedy());
            }
            throw new IllegalStateException(constructor + " failed", e);
        } catch (ReflectiveOperationException e) {
            throw new IllegalStateException(constructor + " cannot be called", e);
        }
    }
}
