package org.oaktag.examples;

import org.oaktag.body.BodyMeasurements;
import org.oaktag.garment.Cloth;
import org.oaktag.garment.Garment;
import org.oaktag.skirt.SkirtEase;
import org.oaktag.skirt.StraightSkirt;

/** The skirt of the night crew, to be worn over leggings when the dome is open: straight, of a woven tweed. */
public final class TweedSkirt {

    private TweedSkirt() {}

    /** Returns the cloth. */
    public static Cloth cloth() {
        return Cloth.woven("tweed, moss");
    }

    /**
     * Drafts the block of a body.
     *
     * @throws org.oaktag.PatternException if its measures allow no block
     */
    public static Garment block(BodyMeasurements body) {
        return StraightSkirt.BLOCK.draft(body, SkirtEase.standard(), cloth());
    }
}
