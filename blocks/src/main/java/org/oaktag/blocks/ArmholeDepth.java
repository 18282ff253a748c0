package org.oaktag.blocks;

import org.oaktag.body.EaseCategory;

/**
 * How far below the armpit the underarm point of a block may lie, in millimetres. It is the one free measure by which a
 * sleeve gets both its width and a cap of a sensible height. The ranges hold for every adult body of a survey at the
 * ease of their category; there is no published source for them. An ease that asks for a depth outside gets it.
 *
 * @param least the shallowest
 * @param asked the depth that the ease asks for, from which the draft departs only where it has to
 * @param most the deepest
 */
record ArmholeDepth(double least, double asked, double most) {

    static ArmholeDepth of(TopAmounts ease) {
        double asked = ease.scyeDepth().mm();
        ArmholeDepth range = range(ease.category(), asked);
        return new ArmholeDepth(Math.min(range.least, asked), asked, Math.max(range.most, asked));
    }

    private static ArmholeDepth range(EaseCategory category, double asked) {
        return switch (category) {
            case VERY_CLOSE -> new ArmholeDepth(15, asked, 70);
            case CLOSE -> new ArmholeDepth(25, asked, 80);
            case STANDARD -> new ArmholeDepth(35, asked, 100);
            case LOOSE -> new ArmholeDepth(45, asked, 115);
            case OVERSIZED -> new ArmholeDepth(50, asked, 125);
        };
    }

    /**
     * Returns the depths with none over a limit. A depth that is usual for its category gives way; one deeper than any
     * that is usual was meant, and stays.
     */
    ArmholeDepth upTo(double limit) {
        double kept = asked < most && limit >= least ? Math.min(asked, limit) : asked;
        return new ArmholeDepth(least, kept, Math.max(kept, Math.min(most, limit)));
    }
}
