package org.oaktag.adjust;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.oaktag.PatternException;
import org.oaktag.adjust.data.Datum;
import org.oaktag.garment.Adjustment;
import org.oaktag.garment.Garment;
import org.oaktag.garment.Spelling;
import org.oaktag.measure.Angle;
import org.oaktag.measure.Length;

/**
 * A list of steps with a name, to be played on any block that has the edges that the steps work on.
 *
 * <pre>{@code
 * Recipe looser = recipe
 *         .withAmount("lower the armhole", "by", mm(20))
 *         .movingBefore("widen the neckline", "fit a hood");
 * }</pre>
 *
 * <p>A step goes by its phrase; where a phrase stands more than once, by the phrase and which of them, {@code "fit the
 * sleeve cap to the armhole (2)"}. Immutable.
 *
 * @param name what it makes; free text
 * @param steps the steps in order
 */
public record Recipe(String name, List<Step> steps) implements Adjustment {

    /**
     * A step of a recipe as it was played.
     *
     * @param step the step
     * @param before the garment before it
     * @param after the garment after it
     */
    public record Played(Step step, Garment before, Garment after) {
        /** Refuses null. */
        public Played {
            Objects.requireNonNull(step, "step");
            Objects.requireNonNull(before, "before");
            Objects.requireNonNull(after, "after");
        }
    }

    /** Copies the list. */
    public Recipe {
        Objects.requireNonNull(name, "name");
        steps = List.copyOf(steps);
    }

    /** Returns a recipe of these steps. */
    public static Recipe of(String name, Step... steps) {
        return new Recipe(name, List.of(steps));
    }

    /**
     * Plays every step.
     *
     * @throws PatternException if a step cannot be done; the message begins with the step's number and name
     */
    @Override
    public Garment applyTo(Garment block) {
        List<Played> played = play(block);
        return played.isEmpty() ? block : played.get(played.size() - 1).after();
    }

    /**
     * Plays every step and keeps the garment before and after each.
     *
     * @throws PatternException if a step cannot be done; the message begins with the step's number and name
     */
    public List<Played> play(Garment block) {
        List<Played> played = new ArrayList<>();
        Garment garment = block;
        for (Step step : steps) {
            Garment after = applied(step, garment, played.size() + 1);
            played.add(new Played(step, garment, after));
            garment = after;
        }
        return List.copyOf(played);
    }

    /** Returns the recipe with one more step at its end. */
    public Recipe adding(Step step) {
        return inserting(steps.size(), step);
    }

    /**
     * Returns the recipe with a step put in before the one at that place, counted from 0.
     *
     * @throws IndexOutOfBoundsException if there is no such place
     */
    public Recipe inserting(int place, Step step) {
        List<Step> all = new ArrayList<>(steps);
        all.add(place, step);
        return new Recipe(name, all);
    }

    /**
     * Returns the recipe without the step at that place, counted from 0.
     *
     * @throws IndexOutOfBoundsException if there is no such place
     */
    public Recipe leavingOut(int place) {
        List<Step> all = new ArrayList<>(steps);
        all.remove(place);
        return new Recipe(name, all);
    }

    /**
     * Returns the recipe with a step put in before another.
     *
     * @throws PatternException if there is no such other step; the message lists those that exist
     */
    public Recipe insertingBefore(String other, Step step) {
        return inserting(place(other), step);
    }

    /**
     * Returns the recipe with a step put in after another.
     *
     * @throws PatternException if there is no such other step; the message lists those that exist
     */
    public Recipe insertingAfter(String other, Step step) {
        return inserting(place(other) + 1, step);
    }

    /**
     * Returns the recipe without a step.
     *
     * @throws PatternException if there is no such step; the message lists those that exist
     */
    public Recipe leavingOut(String step) {
        return leavingOut(place(step));
    }

    /**
     * Returns the recipe with a step moved to just before another.
     *
     * @throws PatternException if either is missing, or both are the same; the message lists those that exist
     */
    public Recipe movingBefore(String step, String other) {
        return moving(place(step), place(other), 0);
    }

    /**
     * Returns the recipe with a step moved to just after another.
     *
     * @throws PatternException if either is missing, or both are the same; the message lists those that exist
     */
    public Recipe movingAfter(String step, String other) {
        return moving(place(step), place(other), 1);
    }

    /**
     * Returns the recipe with another step in the place of one.
     *
     * @throws PatternException if there is no such step; the message lists those that exist
     */
    public Recipe replacing(String step, Step other) {
        List<Step> all = new ArrayList<>(steps);
        all.set(place(step), other);
        return new Recipe(name, all);
    }

    /**
     * Returns the recipe with a length changed among the amounts of a step.
     *
     * @throws PatternException if there is no such step or amount, the amount is no length, or it breaks a rule of the
     *     step
     */
    public Recipe withAmount(String step, String amount, Length length) {
        return withAmount(step, amount, "mm", new Datum.Numeral(length.mm()));
    }

    /**
     * Returns the recipe with an angle changed among the amounts of a step.
     *
     * @throws PatternException if there is no such step or amount, the amount is no angle, or it breaks a rule of the
     *     step
     */
    public Recipe withAmount(String step, String amount, Angle angle) {
        return withAmount(step, amount, "degrees", new Datum.Numeral(angle.degrees()));
    }

    /**
     * Returns the recipe with a choice of yes or no changed among the amounts of a step.
     *
     * @throws PatternException if there is no such step or amount, or the amount is no such choice
     */
    public Recipe withAmount(String step, String amount, boolean choice) {
        return withAmount(step, amount, "", new Datum.Flag(choice));
    }

    /** Returns the steps by the phrases under which they go here, {@code "fit a hood"} or {@code "fit a hood (2)"}. */
    public List<String> phrases() {
        return Phrases.told(steps.stream().map(Step::name).toList());
    }

    /**
     * Returns the place of a step, counted from 0.
     *
     * @param phrase the step's phrase, with which of them where there are several
     * @throws PatternException if there is no such step; the message lists those that exist
     */
    public int place(String phrase) {
        List<String> phrases = phrases();
        int place = phrases.indexOf(phrase);
        if (place < 0) {
            throw Spelling.unknown("step of recipe '" + name + "'", phrase, phrases);
        }
        return place;
    }

    /**
     * Plays the recipe and says which seams a later step left untrue, which parts it left in a place that is no longer
     * theirs, and what mends each.
     *
     * @throws PatternException if a step cannot be done
     */
    public List<Stale> stale(Garment block) {
        return Stale.among(play(block));
    }

    private Recipe moving(int from, int to, int behind) {
        if (from == to) {
            throw PatternException.of(
                    "step of recipe '" + name + "'",
                    "must be moved before or after another",
                    "'" + phrases().get(from) + "' itself",
                    "");
        }
        List<Step> all = new ArrayList<>(steps);
        Step moved = all.remove(from);
        all.add((from < to ? to - 1 : to) + behind, moved);
        return new Recipe(name, all);
    }

    private Recipe withAmount(String step, String amount, String unit, Datum value) {
        int place = place(step);
        StepKind kind = StepKind.of(steps.get(place).getClass());
        AmountKind known = kind.amount(amount);
        if (!known.unit().equals(unit)) {
            throw PatternException.of(
                    "amount '" + amount + "' of step '" + step + "'",
                    "must be given " + (known.unit().isEmpty() ? "without a unit" : "in " + known.unit()),
                    unit.isEmpty() ? value.text() : value.text() + " " + unit,
                    "");
        }
        List<Step> all = new ArrayList<>(steps);
        all.set(
                place,
                kind.read("step '" + step + "'", kind.write(steps.get(place)).with(known.field(), value)));
        return new Recipe(name, all);
    }

    private static Garment applied(Step step, Garment garment, int number) {
        try {
            return step.applyTo(garment);
        } catch (PatternException refused) {
            throw PatternException.of(
                    "step " + number + " (" + step.name() + "), " + refused.thing(),
                    refused.rule(),
                    refused.given(),
                    refused.remedy());
        }
    }
}
