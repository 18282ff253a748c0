package org.oaktag.blocks;

import java.util.Collections;
import java.util.EnumSet;
import java.util.Set;
import org.oaktag.block.Block;
import org.oaktag.body.BodyMeasure;
import org.oaktag.body.BodyMeasurements;
import org.oaktag.body.Ease;
import org.oaktag.garment.Cloth;
import org.oaktag.garment.Garment;
import org.oaktag.garment.Name;

/** The knit top as a value. */
record KnitTopBlock() implements Block {

    private static final Name NAME = Name.of("knit top");

    private static final Set<BodyMeasure> NEEDS = Collections.unmodifiableSet(EnumSet.of(
            BodyMeasure.BUST_GIRTH,
            BodyMeasure.WAIST_GIRTH,
            BodyMeasure.HIP_GIRTH,
            BodyMeasure.NECK_BASE_GIRTH,
            BodyMeasure.UPPER_ARM_GIRTH,
            BodyMeasure.WRIST_GIRTH,
            BodyMeasure.SHOULDER_LENGTH,
            BodyMeasure.ACROSS_BACK,
            BodyMeasure.BACK_WAIST_LENGTH,
            BodyMeasure.WAIST_TO_HIP,
            BodyMeasure.NAPE_TO_ARMPIT,
            BodyMeasure.ARM_LENGTH));

    @Override
    public Name name() {
        return NAME;
    }

    @Override
    public Set<BodyMeasure> needs() {
        return NEEDS;
    }

    @Override
    public Garment draft(BodyMeasurements body, Ease ease, Cloth cloth) {
        return KnitTop.draft(body, ease, cloth);
    }
}
