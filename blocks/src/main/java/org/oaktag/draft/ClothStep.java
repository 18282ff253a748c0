package org.oaktag.draft;

import org.oaktag.adjust.Step;
import org.oaktag.garment.Cloth;

/**
 * A step that adds pieces, such as pockets or bands, from the cloth of the garment unless they get one of their own.
 *
 * <pre>{@code
 * Garment banded = top.adjust(hemBand(mm(50), mm(0)).cutFrom(contrast));
 * }</pre>
 */
public interface ClothStep extends Step {

    /** Returns the step with its pieces cut from another cloth. */
    ClothStep cutFrom(Cloth other);
}
