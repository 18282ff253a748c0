package org.oaktag.block;

import java.util.List;
import java.util.Objects;
import org.oaktag.PatternException;
import org.oaktag.adjust.Recipe;
import org.oaktag.body.BodyMeasurements;
import org.oaktag.body.Ease;
import org.oaktag.garment.Cloth;
import org.oaktag.garment.Garment;

/**
 * A design apart from any body: which block, how loose, of which cloth, and the steps from the block to the garment.
 *
 * <pre>{@code
 * Style hooded = new Style(KnitTop.BLOCK, TopEase.standard(), shell, recipe);
 * crew.stream().map(hooded::on).toList();      // one style, graded by drafting it anew
 * }</pre>
 *
 * <p>Immutable.
 *
 * @param block the block
 * @param ease how much larger it is than the body
 * @param cloth what it is made of
 * @param recipe the steps; its name becomes the title of the garment
 */
public record Style(Block block, Ease ease, Cloth cloth, Recipe recipe) {
    /** Refuses null. */
    public Style {
        Objects.requireNonNull(block, "block");
        Objects.requireNonNull(ease, "ease");
        Objects.requireNonNull(cloth, "cloth");
        Objects.requireNonNull(recipe, "recipe");
    }

    /** Returns what it makes. */
    public String title() {
        return recipe.name();
    }

    /** Returns the style with other steps. */
    public Style with(Recipe other) {
        return new Style(block, ease, cloth, other);
    }

    /**
     * Drafts the block of a body, under the title of the style.
     *
     * @throws PatternException if the ease cannot be worn in that cloth, or the measures allow no block
     */
    public Garment draft(BodyMeasurements body) {
        return block.draft(body, ease, cloth).titled(title());
    }

    /**
     * Makes the garment for a body.
     *
     * @throws PatternException if the measures allow no block, or a step cannot be done
     */
    public Garment on(BodyMeasurements body) {
        return recipe.applyTo(draft(body));
    }

    /**
     * Makes the garment for a body and keeps what it was before and after each step.
     *
     * @throws PatternException if the measures allow no block, or a step cannot be done
     */
    public List<Recipe.Played> play(BodyMeasurements body) {
        return recipe.play(draft(body));
    }
}
