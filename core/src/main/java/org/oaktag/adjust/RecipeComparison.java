package org.oaktag.adjust;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.oaktag.adjust.data.Datum;
import org.oaktag.adjust.data.RecordForm;
import org.oaktag.adjust.data.Written;

/**
 * Compares two recipes step by step.
 *
 * <pre>{@code
 * Recipe looser = recipe.withAmount("lower the armhole", "by", mm(20));
 * RecipeComparison.of(recipe, looser).size();   // = 1
 * }</pre>
 *
 * <p>Steps that are equal are paired first, then steps of one kind, each in order. What stays alone was added or left
 * out. Of the pairs, as many as can be keep their order; the others were moved.
 */
public final class RecipeComparison {

    private static final int NONE = -1;

    private final List<Step> before;
    private final List<Step> after;

    /** For each step of the first its place in the second, or none. */
    private final int[] partner;

    private RecipeComparison(Recipe before, Recipe after) {
        this.before = before.steps();
        this.after = after.steps();
        this.partner = new int[this.before.size()];
        Arrays.fill(partner, NONE);
    }

    /** Returns in what the second recipe differs from the first, in the order of the second, what is left out last. */
    public static List<StepDifference> of(Recipe before, Recipe after) {
        RecipeComparison comparison = new RecipeComparison(before, after);
        comparison.pair(true);
        comparison.pair(false);
        return comparison.differences();
    }

    private void pair(boolean equal) {
        for (int i = 0; i < partner.length; i++) {
            for (int j = 0; j < after.size() && partner[i] == NONE; j++) {
                Step old = before.get(i);
                Step now = after.get(j);
                if (from(j) == NONE && (equal ? old.equals(now) : old.getClass() == now.getClass())) {
                    partner[i] = j;
                }
            }
        }
    }

    private List<StepDifference> differences() {
        Set<Integer> inOrder = inOrder();
        List<StepDifference> differences = new ArrayList<>();
        for (int to = 0; to < after.size(); to++) {
            Step step = after.get(to);
            int from = from(to);
            if (from == NONE) {
                differences.add(new StepDifference.Added(to, step));
                continue;
            }
            if (!inOrder.contains(from)) {
                differences.add(new StepDifference.MovedTo(from, to, step));
            }
            if (!before.get(from).equals(step)) {
                differences.add(
                        new StepDifference.Changed(from, to, before.get(from), step, amounts(before.get(from), step)));
            }
        }
        for (int from = 0; from < partner.length; from++) {
            if (partner[from] == NONE) {
                differences.add(new StepDifference.Removed(from, before.get(from)));
            }
        }
        return List.copyOf(differences);
    }

    private int from(int to) {
        for (int from = 0; from < partner.length; from++) {
            if (partner[from] == to) {
                return from;
            }
        }
        return NONE;
    }

    /** Returns the longest run of paired steps of the first whose partners follow each other in the same order. */
    private Set<Integer> inOrder() {
        int[] longest = new int[partner.length];
        int[] previous = new int[partner.length];
        int best = NONE;
        for (int i = 0; i < partner.length; i++) {
            previous[i] = NONE;
            if (partner[i] == NONE) {
                continue;
            }
            longest[i] = 1;
            for (int j = 0; j < i; j++) {
                if (partner[j] != NONE && partner[j] < partner[i] && longest[j] + 1 > longest[i]) {
                    longest[i] = longest[j] + 1;
                    previous[i] = j;
                }
            }
            if (best == NONE || longest[i] > longest[best]) {
                best = i;
            }
        }
        Set<Integer> run = new LinkedHashSet<>();
        for (int i = best; i != NONE; i = previous[i]) {
            run.add(i);
        }
        return run;
    }

    private static List<StepDifference.ChangedAmount> amounts(Step before, Step after) {
        Map<String, String> old = Written.amounts(fields(before));
        Map<String, String> now = Written.amounts(fields(after));
        Set<String> names = new LinkedHashSet<>(now.keySet());
        names.addAll(old.keySet());
        List<StepDifference.ChangedAmount> changed = new ArrayList<>();
        for (String name : names) {
            Optional<String> from = Optional.ofNullable(old.get(name));
            Optional<String> to = Optional.ofNullable(now.get(name));
            if (!from.equals(to)) {
                changed.add(new StepDifference.ChangedAmount(name, from, to));
            }
        }
        return changed;
    }

    /** Returns the amounts of a step; none where it is no record and its amounts cannot be told apart. */
    private static Datum.Fields fields(Step step) {
        return step instanceof Record record
                ? RecordForm.of(record.getClass()).write(record)
                : new Datum.Fields(Map.of());
    }
}
