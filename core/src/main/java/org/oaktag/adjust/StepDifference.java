package org.oaktag.adjust;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * One way in which a recipe differs from another. A closed family of immutable values; places count from 0.
 *
 * <pre>{@code
 * Recipe looser = recipe.withAmount("lower the armhole", "by", mm(20));
 * StepDifference difference = RecipeComparison.of(recipe, looser).get(0);
 * String line = difference.toString();   // = changed, step 4: lower the armhole, by 12 mm to 20 mm
 * }</pre>
 */
public sealed interface StepDifference {

    /** A step that only the second has. */
    record Added(int place, Step step) implements StepDifference {
        /** Refuses null. */
        public Added {
            Objects.requireNonNull(step, "step");
        }

        @Override
        public String toString() {
            return "added as step " + (place + 1) + ": " + step.name();
        }
    }

    /** A step that only the first has. */
    record Removed(int place, Step step) implements StepDifference {
        /** Refuses null. */
        public Removed {
            Objects.requireNonNull(step, "step");
        }

        @Override
        public String toString() {
            return "left out, step " + (place + 1) + ": " + step.name();
        }
    }

    /** A step that the second does at another point among those that both have. */
    record MovedTo(int from, int to, Step step) implements StepDifference {
        /** Refuses null. */
        public MovedTo {
            Objects.requireNonNull(step, "step");
        }

        @Override
        public String toString() {
            return "moved from step " + (from + 1) + " to step " + (to + 1) + ": " + step.name();
        }
    }

    /**
     * A step that both do, with other amounts.
     *
     * @param from its place in the first
     * @param to its place in the second
     * @param before as it is in the first
     * @param after as it is in the second
     * @param amounts what is not the same
     */
    record Changed(int from, int to, Step before, Step after, List<ChangedAmount> amounts) implements StepDifference {
        /** Copies the list. */
        public Changed {
            Objects.requireNonNull(before, "before");
            Objects.requireNonNull(after, "after");
            amounts = List.copyOf(amounts);
        }

        @Override
        public String toString() {
            return "changed, step " + (to + 1) + ": " + after.name() + ", "
                    + amounts.stream().map(ChangedAmount::toString).collect(Collectors.joining(", "));
        }
    }

    /**
     * An amount that is not the same.
     *
     * @param name its name in words
     * @param before what it is in the first, with its unit; empty where it is left out
     * @param after what it is in the second
     */
    record ChangedAmount(String name, Optional<String> before, Optional<String> after) {
        /** Refuses null. */
        public ChangedAmount {
            Objects.requireNonNull(name, "name");
            Objects.requireNonNull(before, "before");
            Objects.requireNonNull(after, "after");
        }

        @Override
        public String toString() {
            return name + " " + before.orElse("not given") + " to " + after.orElse("not given");
        }
    }
}
