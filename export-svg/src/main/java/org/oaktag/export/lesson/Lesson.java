package org.oaktag.export.lesson;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.DoubleFunction;
import org.oaktag.PatternException;
import org.oaktag.adjust.Recipe;
import org.oaktag.garment.Name;

/**
 * A lesson about one step: what is tried at each position of a slider, and what is said about it. Immutable, if its
 * functions are.
 *
 * <pre>{@code
 * Lesson lesson = Lesson.of(
 *                 "Widen the neckline",
 *                 Slider.lengths("along the shoulder", mm(0), mm(20), mm(10), mm(10)),
 *                 by -> new Trial(block, widenNeckline(mm(by))))
 *         .showing(FRONT)
 *         .saying("The side neck point moves along the shoulder.");
 * lesson.outcomes().size();   // = 3
 * }</pre>
 *
 * @param title what is learnt, as a phrase in the imperative; free text
 * @param text what is said about it, a paragraph each; lengths are to be written in mm, {@code "12.0 mm"}
 * @param slider what the learner moves
 * @param trials what is tried at an amount of the slider, in mm, degrees or percent; may throw a {@link
 *     PatternException}, which is then shown
 * @param views the pieces that are shown, in this order; none for those that the step redraws, whole
 * @param formulas the formulas that are filled in
 */
public record Lesson(
        String title,
        List<String> text,
        Slider slider,
        DoubleFunction<Trial> trials,
        List<View> views,
        List<Formula> formulas) {

    /** What came of a trial. A closed family of immutable values. */
    public sealed interface Outcome {

        /** Returns the amount that was tried, in mm, degrees or percent. */
        double amount();
    }

    /**
     * The step was done.
     *
     * @param amount the amount
     * @param played the step with the garment before and after
     */
    public record Done(double amount, Recipe.Played played) implements Outcome {}

    /**
     * The step was refused.
     *
     * @param amount the amount
     * @param refusal what was said
     */
    public record Refused(double amount, PatternException refusal) implements Outcome {}

    /** Copies the lists. */
    public Lesson {
        text = List.copyOf(text);
        views = List.copyOf(views);
        formulas = List.copyOf(formulas);
    }

    /** Returns a lesson about which nothing is said yet. */
    public static Lesson of(String title, Slider slider, DoubleFunction<Trial> trials) {
        return new Lesson(title, List.of(), slider, trials, List.of(), List.of());
    }

    /** Returns the lesson with another paragraph. */
    public Lesson saying(String paragraph) {
        return new Lesson(title, with(text, paragraph), slider, trials, views, formulas);
    }

    /** Returns the lesson that shows these pieces whole, after those that it shows already. */
    public Lesson showing(Name... shown) {
        Lesson lesson = this;
        for (Name piece : shown) {
            lesson = lesson.showing(View.of(piece));
        }
        return lesson;
    }

    /** Returns the lesson that shows this too, after what it shows already. */
    public Lesson showing(View view) {
        return new Lesson(title, text, slider, trials, with(views, view), formulas);
    }

    /** Returns the lesson with another formula. */
    public Lesson computing(Formula formula) {
        return new Lesson(title, text, slider, trials, views, with(formulas, formula));
    }

    /**
     * Tries every position, the least amount first.
     *
     * @throws IllegalStateException if a formula that must agree does not, or no position can be done
     */
    public List<Outcome> outcomes() {
        List<Outcome> outcomes = slider.amounts().stream().map(this::outcome).toList();
        if (outcomes.stream().noneMatch(Done.class::isInstance)) {
            throw new IllegalStateException(
                    "a position of the lesson '" + title + "' must be possible, got only refusals: " + outcomes.get(0));
        }
        return outcomes;
    }

    /** Returns the title as one word for a file: {@code "widen-the-neckline"}. */
    public String hyphenated() {
        return title.toLowerCase(Locale.ROOT)
                .replaceAll("[^\\p{L}\\p{Nd}]+", "-")
                .replaceAll("^-|-$", "");
    }

    /** Tries one amount. */
    Outcome outcome(double amount) {
        Recipe.Played played;
        try {
            played = trials.apply(amount).played();
        } catch (PatternException refusal) {
            return new Refused(amount, refusal);
        }
        for (Formula formula : formulas) {
            if (formula.exact() && !formula.agrees(played)) {
                throw new IllegalStateException("formula '" + formula.measured().name() + "' of the lesson '" + title
                        + "' must agree with what is measured; at " + amount + " it differs by "
                        + formula.difference(played) + " mm");
            }
        }
        return new Done(amount, played);
    }

    private static <T> List<T> with(List<T> list, T more) {
        List<T> all = new ArrayList<>(list);
        all.add(more);
        return all;
    }
}
