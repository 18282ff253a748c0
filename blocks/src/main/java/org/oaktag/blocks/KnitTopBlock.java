package org.oaktag.blocks;

import java.util.List;
import java.util.Set;
import org.oaktag.block.Block;
import org.oaktag.body.BodyMeasure;
import org.oaktag.body.BodyMeasurements;
import org.oaktag.body.Ease;
import org.oaktag.garment.Allowances;
import org.oaktag.garment.Cloth;
import org.oaktag.garment.Garment;
import org.oaktag.garment.Name;

/** The knit top as a value. */
record KnitTopBlock() implements Block {

    private static final Name NAME = Name.of("knit top");

    private static final Set<BodyMeasure> NEEDS = Set.of(BodyMeasure.BUST_GIRTH, BodyMeasure.HEIGHT);

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

    @Override
    public Ease standardEase() {
        return TopEase.standard();
    }

    @Override
    public List<Name> tabled() {
        return List.of(
                TopNames.CHEST_GIRTH,
                TopNames.WAIST_GIRTH,
                TopNames.HEM_GIRTH,
                TopNames.BACK_LENGTH,
                TopNames.SHOULDER_LENGTH,
                TopNames.SLEEVE_LENGTH);
    }

    @Override
    public Allowances allowances(Garment garment) {
        return KnitTop.allowances(garment);
    }
}
