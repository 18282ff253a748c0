package org.oaktag.adjust.data;

import java.lang.reflect.ParameterizedType;
import java.lang.reflect.Type;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.SortedMap;
import org.oaktag.PatternException;
import org.oaktag.garment.Name;
import org.oaktag.geometry.Curve;
import org.oaktag.geometry.Path;
import org.oaktag.measure.Angle;
import org.oaktag.measure.Length;
import org.oaktag.measure.Percent;

/**
 * How values of one type become data and come back.
 *
 * <p>Lengths are numbers of millimetres, angles of degrees, percents of hundredths; names, words of free text and the
 * constants of an enum are text; records are fields; a sealed family of records is fields with its {@code kind}; a path
 * is the list of its curves; a sorted map from the constants of an enum is fields. An optional component that is empty
 * is left out.
 */
sealed interface Form permits LeafForm, OptionalForm, ListForm, MapForm, RecordForm, FamilyForm {

    /** Returns what the name of a field of this form ends in: {@code "_mm"}, or nothing. */
    default String suffix() {
        return "";
    }

    /** Returns the value as data. */
    Datum write(Object value);

    /** Returns what data of this form is like. */
    Datum.Fields schema();

    /**
     * Reads the value.
     *
     * @param where what is read, for messages
     * @throws PatternException if the data is no such value
     */
    Object read(String where, Datum datum);

    /**
     * Returns the form of a type.
     *
     * @throws IllegalArgumentException if values of that type cannot be written
     */
    static Form of(Type type) {
        if (type instanceof ParameterizedType generic && generic.getRawType() == Optional.class) {
            return new OptionalForm(of(generic.getActualTypeArguments()[0]));
        }
        if (type instanceof ParameterizedType generic && generic.getRawType() == List.class) {
            return new ListForm(of(generic.getActualTypeArguments()[0]));
        }
        if (type instanceof ParameterizedType generic
                && generic.getRawType() == SortedMap.class
                && generic.getActualTypeArguments()[0] instanceof Class<?> keys
                && keys.isEnum()) {
            return new MapForm(keys, of(generic.getActualTypeArguments()[1]));
        }
        if (type == Path.class) {
            Form curves = new ListForm(of(Curve.class));
            return new LeafForm(
                    Path.class,
                    AmountField.Sort.COMPOUND,
                    "",
                    curves.schema(),
                    path -> curves.write(((Path) path).curves()),
                    (where, datum) -> Path.of(((List<?>) curves.read(where, datum))
                            .stream().map(Curve.class::cast).toList()));
        }
        if (type instanceof Class<?> plain) {
            return of(plain);
        }
        throw new IllegalArgumentException("values of type " + type.getTypeName() + " cannot be written as data");
    }

    private static Form of(Class<?> type) {
        if (type == Length.class) {
            return LeafForm.number(Length.class, "_mm", Length::mm, Length::mm);
        }
        if (type == Angle.class) {
            return LeafForm.number(Angle.class, "_degrees", Angle::degrees, Angle::degrees);
        }
        if (type == Percent.class) {
            return LeafForm.number(Percent.class, "_percent", Percent::percent, Percent::percent);
        }
        if (type == double.class) {
            return LeafForm.number(Double.class, "", Double::doubleValue, Double::valueOf);
        }
        if (type == int.class || type == Integer.class) {
            return LeafForm.whole();
        }
        if (type == boolean.class) {
            return LeafForm.flag();
        }
        if (type == String.class) {
            return LeafForm.text(String.class, Schema.type("string"), words -> words, words -> words);
        }
        if (type == Name.class) {
            return LeafForm.text(
                    Name.class, Schema.type("string").with("minLength", new Datum.Numeral(1)), Name::value, Name::of);
        }
        if (type.isEnum()) {
            return LeafForm.constant(type);
        }
        if (type.isRecord()) {
            return RecordForm.of(type.asSubclass(Record.class));
        }
        if (type.isSealed()) {
            return FamilyForm.of(type);
        }
        throw new IllegalArgumentException("values of type " + type.getName()
                + " cannot be written as data; take records, lists, optionals, lengths, angles, percents, names, text,"
                + " numbers, flags and enums");
    }

    /** Returns the words of a name in camel case: {@code "above hem"} for {@code aboveHem}. */
    static String words(String camelCase) {
        return camelCase.replaceAll("(?<=[a-z0-9])(?=[A-Z])", " ").toLowerCase(Locale.ROOT);
    }

    /** Returns the refusal of data of the wrong sort. */
    static PatternException wrong(String where, String wanted, Datum datum) {
        return PatternException.of(where, "must be " + wanted, datum.sort() + ", " + datum.text(), "");
    }
}
