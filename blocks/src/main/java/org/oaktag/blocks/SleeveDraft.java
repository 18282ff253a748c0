package org.oaktag.blocks;

import java.util.HashMap;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.function.DoubleFunction;
import java.util.function.ToDoubleFunction;
import org.oaktag.draft.RootFinder;
import org.oaktag.measure.Length;

/**
 * A body and a sleeve cap that fits its armhole: as deep as asked where the cap then lies in its band at the width that
 * the sleeve is to have, and else as near to that as puts it there. Immutable.
 *
 * @param body the body
 * @param fit the cap, prepared for its armholes
 * @param cap its height and widths
 */
record SleeveDraft(BodyDraft body, CapFit fit, CapFit.Solved cap) {

    private static final Length CAP_EASE = Length.mm(6);

    /** Returns by how much the cap is longer than its armhole: 0 to 20 mm in knits (common practice). */
    static Length capEase() {
        return CAP_EASE;
    }

    /** Returns the height of the cap as a share of the armhole's depth. */
    double share() {
        return cap.height() / body.armholeDepth();
    }

    /**
     * Solves the depth of the armhole.
     *
     * @param bodies the body with an armhole so far below the armpit, in millimetres
     * @param depth the depths that may be tried
     * @param width how wide the sleeve shall be at its underarm points, in millimetres
     */
    static SleeveDraft of(DoubleFunction<BodyDraft> bodies, ArmholeDepth depth, double width) {
        BodyDraft body = bodies.apply(depth.asked());
        SleeveDraft low = capped(body, CapBand::least);
        if (low.cap.width() < width) {
            return reaching(new Tried(bodies, CapBand::least, depth.asked(), low), width, depth, depth.most());
        }
        SleeveDraft high = capped(body, CapBand::most);
        if (high.cap.width() > width) {
            return reaching(new Tried(bodies, CapBand::most, depth.asked(), high), width, depth, depth.least());
        }
        return low.fit
                .atWidth(width, low.cap, high.cap)
                .map(cap -> new SleeveDraft(body, low.fit, cap))
                .orElse(low);
    }

    /** The depth at which a cap of a share makes the sleeve so wide, or the last that may be tried. */
    private static SleeveDraft reaching(Tried tried, double width, ArmholeDepth depth, double last) {
        OptionalDouble reached = RootFinder.solve(
                at -> tried.at(at).cap.width() - width, Math.min(depth.asked(), last), Math.max(depth.asked(), last));
        return tried.at(reached.orElse(last));
    }

    /** The drafts at the depths that were tried: the last is tried again, and the first is known before. */
    private static final class Tried {

        private final DoubleFunction<BodyDraft> bodies;
        private final ToDoubleFunction<CapBand> share;
        private final Map<Double, SleeveDraft> drafts = new HashMap<>();

        Tried(DoubleFunction<BodyDraft> bodies, ToDoubleFunction<CapBand> share, double depth, SleeveDraft draft) {
            this.bodies = bodies;
            this.share = share;
            drafts.put(depth, draft);
        }

        SleeveDraft at(double depth) {
            return drafts.computeIfAbsent(depth, tried -> capped(bodies.apply(tried), share));
        }
    }

    private static SleeveDraft capped(BodyDraft body, ToDoubleFunction<CapBand> share) {
        CapFit fit = CapFit.of(body.armhole(BodyHalf.FRONT), body.armhole(BodyHalf.BACK), CAP_EASE);
        double height = share.applyAsDouble(body.capBand()) * body.armholeDepth();
        return new SleeveDraft(body, fit, fit.nearest(height));
    }
}
