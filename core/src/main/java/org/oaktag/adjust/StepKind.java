package org.oaktag.adjust;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.oaktag.PatternException;
import org.oaktag.adjust.data.AmountField;
import org.oaktag.adjust.data.Datum;
import org.oaktag.adjust.data.RecordForm;
import org.oaktag.garment.Name;
import org.oaktag.garment.Spelling;

/**
 * A kind of step: what it is called, what amounts it takes, and how a step of it is written down and made again.
 *
 * <p>A step is a record, public in an exported package or in a package that its module opens to {@code org.oaktag.core}:
 * its users then know it by what makes it, and by no type of its own. Its kind is called by the words of the record's name, and its amounts by those of its
 * components: {@code record WidenNeckline(Length along)} is the kind {@code "widen neckline"} with the amount
 * {@code "along"} in millimetres. So one line makes a kind, of the maker's own steps as well:
 *
 * <pre>{@code
 * StepKind kind = StepKind.of(HemBand.class).usually("depth", 30, 90);
 * }</pre>
 *
 * <p>Immutable.
 */
public final class StepKind {

    private final Class<? extends Step> type;
    private final RecordForm form;
    private final List<AmountKind> amounts;

    private StepKind(Class<? extends Step> type, RecordForm form, List<AmountKind> amounts) {
        this.type = type;
        this.form = form;
        this.amounts = List.copyOf(amounts);
    }

    /**
     * Returns the kind of these steps.
     *
     * @throws IllegalArgumentException if the class is no record, or none that can be seen from here, or a component is of a
     *     type that cannot be written as data
     */
    public static StepKind of(Class<? extends Step> type) {
        if (!type.isRecord()) {
            throw new IllegalArgumentException("a step that is written down must be a record, got " + type.getName());
        }
        RecordForm form = RecordForm.of(type.asSubclass(Record.class));
        return new StepKind(
                type, form, form.amountFields().stream().map(StepKind::amount).toList());
    }

    /** Returns what the kind is called, {@code "widen neckline"}. */
    public String name() {
        return form.words();
    }

    /** Returns the record of which its steps are. */
    public Class<? extends Step> type() {
        return type;
    }

    /**
     * Returns the amounts that it takes, in the order of the record; those of a record within it by all their words.
     */
    public List<AmountKind> amounts() {
        return amounts;
    }

    /**
     * Returns the amount of that name.
     *
     * @throws PatternException if there is none; the message lists those that exist
     */
    public AmountKind amount(String name) {
        return amounts.get(indexOf(name));
    }

    /**
     * Returns the kind with what is usual for one of its amounts, in the amount's own unit.
     *
     * @throws PatternException if there is no such amount
     * @throws IllegalArgumentException if the least is not less than the most
     */
    public StepKind usually(String amount, double least, double most) {
        return with(indexOf(amount), amount(amount).usually(least, most));
    }

    /**
     * Returns the kind with the names that one of its amounts may be.
     *
     * @throws PatternException if there is no such amount
     */
    public StepKind among(String amount, Name... choices) {
        return with(
                indexOf(amount),
                amount(amount).among(Arrays.stream(choices).map(Name::value).toList()));
    }

    /** Returns what the data of a step of this kind is like, in the words of JSON Schema (draft 2020-12). */
    public Datum.Fields schema() {
        return form.schema();
    }

    /** Writes a step of this kind as data. */
    public Datum.Fields write(Step step) {
        return form.write(step);
    }

    /**
     * Makes a step of this kind from data.
     *
     * @param where what is read, for messages
     * @throws PatternException if a field is unknown, missing or of the wrong sort, or an amount breaks a rule
     */
    public Step read(String where, Datum.Fields fields) {
        return type.cast(form.read(where, fields));
    }

    @Override
    public String toString() {
        return name() + " " + amounts.stream().map(AmountKind::name).toList();
    }

    private StepKind with(int place, AmountKind amount) {
        List<AmountKind> all = new ArrayList<>(amounts);
        all.set(place, amount);
        return new StepKind(type, form, all);
    }

    private int indexOf(String amount) {
        for (int i = 0; i < amounts.size(); i++) {
            if (amounts.get(i).name().equals(amount)) {
                return i;
            }
        }
        throw Spelling.unknown(
                "amount of '" + name() + "'",
                amount,
                amounts.stream().map(AmountKind::name).toList());
    }

    private static AmountKind amount(AmountField field) {
        return new AmountKind(
                field.words(),
                field.field(),
                field.unit(),
                field.sort(),
                field.optional(),
                Optional.empty(),
                field.choices());
    }
}
