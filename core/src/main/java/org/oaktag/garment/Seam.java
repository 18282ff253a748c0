package org.oaktag.garment;

import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Stream;

/**
 * Two runs of edges that are sewn to each other, and the rule by which. Immutable.
 *
 * <pre>{@code
 * Seam pocket = Seam.of(
 *         Name.of("pocket"),
 *         SeamSide.along(FRONT, SIDE),
 *         SeamSide.along(Name.of("pocket bag"), SIDE),
 *         SeamRule.flat(),
 *         "draw the pocket bag again");
 * }</pre>
 *
 * @param name the seam's name, unique in its garment
 * @param a the side that stays as it is
 * @param b the side that is made to fit it
 * @param rule how b fits a
 * @param smoothAt the ends of the seam at which the outlines must run on smoothly when the seam is closed, as a
 *     neckline does across a shoulder seam
 * @param refit what mends the seam when a later step has moved one of its sides, as a phrase in the imperative, such
 *     as {@code "refit the sleeve cap to the armhole"}
 */
public record Seam(Name name, SeamSide a, SeamSide b, SeamRule rule, Set<End> smoothAt, String refit) {

    /** Copies the set. */
    public Seam {
        Objects.requireNonNull(name, "name");
        Objects.requireNonNull(a, "a");
        Objects.requireNonNull(b, "b");
        Objects.requireNonNull(rule, "rule");
        Objects.requireNonNull(refit, "refit");
        smoothAt = Set.copyOf(smoothAt);
    }

    /** Returns a seam with no demand on the angles at its ends. */
    public static Seam of(Name name, SeamSide a, SeamSide b, SeamRule rule, String refit) {
        return new Seam(name, a, b, rule, Set.of(), refit);
    }

    /** Returns a seam of two sides that are sewn flat, with no demand on the angles at its ends. */
    public static Seam flat(Name name, SeamSide a, SeamSide b, String refit) {
        return of(name, a, b, SeamRule.flat(), refit);
    }

    /** Returns the seam with a demand that the outlines run on smoothly at these ends. */
    public Seam smoothAt(End... ends) {
        return new Seam(name, a, b, rule, Set.of(ends), refit);
    }

    /** Returns the seam with a demand that the outlines run on smoothly at both its ends. */
    public Seam smooth() {
        return smoothAt(End.START, End.END);
    }

    /** Returns the seam under another rule. */
    public Seam withRule(SeamRule other) {
        return new Seam(name, a, b, other, smoothAt, refit);
    }

    /** Returns the seam with an edge replaced by another on whichever side it lies. */
    public Seam replacing(EdgeRef edge, EdgeRef other) {
        return new Seam(name, a.replacing(edge, other), b.replacing(edge, other), rule, smoothAt, refit);
    }

    /** Returns the edges that it takes in, each once: those of side a in the order of sewing, then those of side b. */
    public List<EdgeRef> edges() {
        return Stream.concat(a.edges().stream(), b.edges().stream()).distinct().toList();
    }

    /** Tells whether the edge is part of this seam. */
    public boolean has(EdgeRef edge) {
        Objects.requireNonNull(edge, "edge");
        return a.has(edge) || b.has(edge);
    }
}
