package org.oaktag.adjust;

import java.util.ArrayList;
import java.util.List;
import org.oaktag.PatternException;
import org.oaktag.garment.Adjustment;
import org.oaktag.garment.Garment;

/**
 * A list of steps with a name, to be played on any block that has the edges that the steps work on. Immutable.
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
    public record Played(Step step, Garment before, Garment after) {}

    /** Copies the list. */
    public Recipe {
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
