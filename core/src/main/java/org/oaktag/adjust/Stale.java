package org.oaktag.adjust;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.oaktag.garment.EdgeRef;
import org.oaktag.garment.Garment;
import org.oaktag.garment.Name;
import org.oaktag.garment.Piece;
import org.oaktag.garment.Seam;
import org.oaktag.garment.SeamSide;
import org.oaktag.garment.WalkedSeam;

/**
 * A seam that a later step left untrue, as when a neckline is widened after its hood was fitted, or a part that is laid
 * on a piece and whose place is no longer right, as when a body is lengthened after its pouch was laid on: which step
 * fitted it, which step left it behind, and what mends it. Immutable.
 *
 * <pre>{@code
 * Recipe widenedLate = recipe.adding(widenNeckline(mm(5)));
 * for (Stale stale : widenedLate.stale(block)) {
 *     stale.text();                                            // what was left behind, and what mends it
 *     Optional<Recipe> mended = stale.reordered(widenedLate);   // the step put in earlier, where that helps
 * }
 * }</pre>
 *
 * @param seam the seam, or the part that is laid on
 * @param fault what is wrong with it and what refits it, as the walk says of a seam
 * @param fittedBy the place of the step that last fitted it, counted from 0; empty where the block did
 * @param brokenBy the place of the step that left it untrue
 * @param fitting the phrase of the step that fitted it; empty where the block did
 * @param breaking the phrase of the step that left it untrue
 * @param refit what refits it, as a phrase in the imperative
 */
public record Stale(
        Name seam,
        String fault,
        OptionalInt fittedBy,
        int brokenBy,
        Optional<String> fitting,
        String breaking,
        String refit) {

    /**
     * Returns the seams that are not true after the last step although an earlier step, or the block, made them so, and
     * after them the parts that a step laid on a piece and would now lay elsewhere.
     *
     * @param played the steps as they were played, in order
     */
    public static List<Stale> among(List<Recipe.Played> played) {
        List<Stale> stale = new ArrayList<>();
        if (played.isEmpty()) {
            return stale;
        }
        Recipe recipe = new Recipe("", played.stream().map(Recipe.Played::step).toList());
        Garment last = played.get(played.size() - 1).after();
        for (WalkedSeam walked : last.walkSeams().untrue()) {
            firstUntrueToTheEnd(played, walked.seam().name())
                    .ifPresent(broken -> stale.add(of(recipe, played, walked, broken)));
        }
        stale.addAll(new LaidParts(recipe, played).stale());
        return List.copyOf(stale);
    }

    /**
     * Returns the recipe in the order that mends it: the step that left the seam behind moved to just before the one
     * that fitted it. Empty where the block fitted it, as nothing comes before that.
     *
     * <p>The order alone may not do: where the moved step works on what an earlier step has to make first, it is
     * refused when the recipe is played.
     */
    public Optional<Recipe> reordered(Recipe recipe) {
        return fitting.map(step -> recipe.movingBefore(breaking, step));
    }

    /**
     * Returns the recipe with the fitting step done again right after the step that left the seam behind. Empty where
     * the block fitted it; then {@link #refit} says what does. A step that uses up what it works on, as one that makes
     * a sleeve part of the body, is refused when the recipe is played; there the order mends it.
     */
    public Optional<Recipe> refitted(Recipe recipe) {
        return fittedBy.isPresent()
                ? Optional.of(recipe.inserting(brokenBy + 1, recipe.steps().get(fittedBy.getAsInt())))
                : Optional.empty();
    }

    /** Returns it as a sentence with both ways to mend it. */
    public String text() {
        String order = fitting.map(step -> ", or move '" + breaking + "' before '" + step + "'")
                .orElse("");
        return "'" + breaking + "' was done after '" + fitting.orElse("the block was drafted") + "': " + fault + order;
    }

    @Override
    public String toString() {
        return seam + ": " + text();
    }

    private static Stale of(Recipe recipe, List<Recipe.Played> played, WalkedSeam walked, int broken) {
        OptionalInt fitted = fitting(played, walked.seam(), broken);
        List<String> phrases = recipe.phrases();
        return new Stale(
                walked.seam().name(),
                walked.mend().orElse(""),
                fitted,
                broken,
                fitted.isPresent() ? Optional.of(phrases.get(fitted.getAsInt())) : Optional.empty(),
                phrases.get(broken),
                walked.seam().refit());
    }

    /** Returns the step since which the seam is untrue, if it was true before that; it may have been made by it. */
    private static OptionalInt firstUntrueToTheEnd(List<Recipe.Played> played, Name seam) {
        for (int i = played.size() - 1; i >= 0; i--) {
            Optional<WalkedSeam> before = walked(played.get(i).before(), seam);
            if (before.isEmpty()) {
                return OptionalInt.empty();
            }
            if (before.get().isTrue()) {
                return OptionalInt.of(i);
            }
        }
        return OptionalInt.empty();
    }

    /** Returns the last step before that one which drew the side of the seam that is made to fit. */
    private static OptionalInt fitting(List<Recipe.Played> played, Seam seam, int broken) {
        for (int i = broken - 1; i >= 0; i--) {
            for (SeamSide.Run run : seam.b().runs()) {
                if (!edgeIn(played.get(i).before(), run.edge())
                        .equals(edgeIn(played.get(i).after(), run.edge()))) {
                    return OptionalInt.of(i);
                }
            }
        }
        return OptionalInt.empty();
    }

    private static Optional<WalkedSeam> walked(Garment garment, Name seam) {
        return garment.walkSeams().seams().stream()
                .filter(walked -> walked.seam().name().equals(seam))
                .findFirst();
    }

    private static Optional<Object> edgeIn(Garment garment, EdgeRef edge) {
        Optional<Piece> piece = garment.findPiece(edge.piece());
        return piece.filter(found -> found.hasEdge(edge.edge())).map(found -> found.path(edge.edge()));
    }
}
