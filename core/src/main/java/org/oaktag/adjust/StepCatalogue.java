package org.oaktag.adjust;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.oaktag.PatternException;
import org.oaktag.adjust.data.Datum;
import org.oaktag.adjust.data.Schema;
import org.oaktag.garment.Spelling;

/**
 * The kinds of step that are known by name: for a menu, and to make steps again that were written down.
 *
 * <pre>{@code
 * StepKind kind = KnownSteps.catalogue().kind("widen neckline");
 * kind.amount("along").unit();   // = mm
 * }</pre>
 *
 * <p>It is open: {@link #with} adds kinds of the maker's own. Immutable.
 *
 * @param kinds the kinds, each of a name of its own
 */
public record StepCatalogue(List<StepKind> kinds) {

    private static final String STEP = "step";

    /**
     * Copies the list.
     *
     * @throws PatternException if two kinds have one name
     */
    public StepCatalogue {
        kinds = List.copyOf(kinds);
        Set<String> names = new HashSet<>();
        for (StepKind kind : kinds) {
            if (!names.add(kind.name())) {
                throw PatternException.of(
                        "kind of step",
                        "must have a name of its own",
                        "'" + kind.name() + "' twice, the second time of "
                                + kind.type().getName(),
                        "give the record another name");
            }
        }
    }

    /**
     * Returns a catalogue of these kinds.
     *
     * @throws PatternException if two have one name
     */
    public static StepCatalogue of(StepKind... kinds) {
        return new StepCatalogue(List.of(kinds));
    }

    /**
     * Returns the catalogue with one more kind.
     *
     * @throws PatternException if there is one of its name
     */
    public StepCatalogue with(StepKind kind) {
        List<StepKind> all = new ArrayList<>(kinds);
        all.add(kind);
        return new StepCatalogue(all);
    }

    /**
     * Returns the catalogue with those of another.
     *
     * @throws PatternException if a name is in both
     */
    public StepCatalogue with(StepCatalogue more) {
        List<StepKind> all = new ArrayList<>(kinds);
        all.addAll(more.kinds);
        return new StepCatalogue(all);
    }

    /**
     * Returns the kind of that name.
     *
     * @throws PatternException if there is none; the message names the nearest and lists all
     */
    public StepKind kind(String name) {
        return kind("kind of step", name);
    }

    /**
     * Returns the kind of a step.
     *
     * @throws PatternException if the catalogue lacks it
     */
    public StepKind kindOf(Step step) {
        for (StepKind kind : kinds) {
            if (kind.type() == step.getClass()) {
                return kind;
            }
        }
        throw PatternException.of(
                "step '" + step.name() + "'",
                "must be of a kind that the catalogue knows",
                step.getClass().getName(),
                "add it: catalogue.with(StepKind.of(...))");
    }

    /** Returns what the data of a step is like, in the words of JSON Schema (draft 2020-12). */
    public Datum.Fields schema() {
        Map<String, Datum.Fields> schemas = new LinkedHashMap<>();
        kinds.forEach(kind -> schemas.put(kind.name(), kind.schema()));
        return Schema.by(STEP, schemas);
    }

    /**
     * Writes a step as data, the name of its kind in the field {@code step} before its amounts.
     *
     * @throws PatternException if the catalogue lacks its kind
     */
    public Datum.Fields write(Step step) {
        StepKind kind = kindOf(step);
        return kind.write(step).after(STEP, new Datum.Text(kind.name()));
    }

    /**
     * Makes a step again.
     *
     * @param where what is read, for messages
     * @throws PatternException if its kind is unknown, a field is unknown, missing or of the wrong sort, or an amount
     *     breaks a rule
     */
    public Step read(String where, Datum.Fields fields) {
        if (!(fields.values().get(STEP) instanceof Datum.Text name)) {
            throw PatternException.of(
                    where,
                    "must name its kind in a field '" + STEP + "'",
                    fields.text(),
                    "write it like 'split piece'");
        }
        return kind(where, name.value()).read(where + " (" + name.value() + ")", fields.without(STEP));
    }

    private StepKind kind(String where, String name) {
        for (StepKind kind : kinds) {
            if (kind.name().equals(name)) {
                return kind;
            }
        }
        throw Spelling.unknown(where, name, kinds.stream().map(StepKind::name).toList());
    }
}
