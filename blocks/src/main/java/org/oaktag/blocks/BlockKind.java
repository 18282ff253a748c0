package org.oaktag.blocks;

import org.oaktag.PatternException;
import org.oaktag.body.BodyMeasurements;
import org.oaktag.body.Ease;
import org.oaktag.garment.Cloth;
import org.oaktag.garment.Garment;

/**
 * The basic blocks that there are, so that a style can name its own.
 *
 * <pre>{@code
 * Garment block = BlockKind.KNIT_TOP.draft(juno, Ease.standard(), shell);
 * }</pre>
 */
public enum BlockKind {
    /** The block of {@link KnitTop}. */
    KNIT_TOP {
        @Override
        public Garment draft(BodyMeasurements body, Ease ease, Cloth cloth) {
            return KnitTop.draft(body, ease, cloth);
        }
    };

    /**
     * Drafts the block.
     *
     * @throws PatternException if the ease cannot be worn in that cloth, or the measures allow no block
     */
    public abstract Garment draft(BodyMeasurements body, Ease ease, Cloth cloth);
}
