package org.oaktag.blocks;

import java.util.HashMap;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import org.oaktag.PatternException;
import org.oaktag.draft.RootFinder;
import org.oaktag.geometry.Path;
import org.oaktag.measure.Length;

/**
 * A sleeve cap fitted to its armhole: each half is solved against its own half of the armhole, so that the top of the
 * cap lands on the shoulder seam. Immutable.
 *
 * <pre>{@code
 * CapFit fit = CapFit.of(front.path(ARMHOLE), block.piece(BACK).path(ARMHOLE), mm(6));
 * CapFit.Solved cap = fit.atHeight(110);
 * cap.width();   // of the sleeve at the underarm, mm
 * }</pre>
 *
 * @param front the front half on the front armhole
 * @param back the back half on the back armhole
 * @param frontLength the length that the front half must have: its armhole and half the ease
 * @param backLength the length that the back half must have
 */
public record CapFit(CapHalf front, CapHalf back, double frontLength, double backLength) {
    /** Refuses null. */
    public CapFit {
        Objects.requireNonNull(front, "front");
        Objects.requireNonNull(back, "back");
    }

    /**
     * A cap of a height that reaches round its armhole.
     *
     * @param height from the top down to the underarm points, in millimetres
     * @param front the width of the front half
     * @param back the width of the back half
     */
    public record Solved(double height, double front, double back) {

        /** Returns the width of the sleeve at the underarm points. */
        public double width() {
            return front + back;
        }
    }

    /**
     * Prepares a cap for two armholes.
     *
     * @param frontArmhole the front armhole, from the shoulder to the underarm point
     * @param backArmhole the back armhole likewise
     * @param ease by how much the cap is longer than both together; half of it goes to each half
     */
    public static CapFit of(Path frontArmhole, Path backArmhole, Length ease) {
        return new CapFit(
                CapHalf.ontoFront(frontArmhole),
                CapHalf.ontoBack(backArmhole),
                frontArmhole.length(1e-9) + ease.mm() / 2,
                backArmhole.length(1e-9) + ease.mm() / 2);
    }

    /**
     * Solves the widths of both halves at a height.
     *
     * @throws PatternException if a cap of that height is longer than it may be however narrow it is, or lower than the
     *     curves copied from the armhole; the message gives the heights that work
     */
    public Solved atHeight(double height) {
        OptionalDouble frontWidth = front.widthFor(height, frontLength);
        OptionalDouble backWidth = back.widthFor(height, backLength);
        if (frontWidth.isPresent() && backWidth.isPresent()) {
            return new Solved(height, frontWidth.getAsDouble(), backWidth.getAsDouble());
        }
        throw PatternException.of(
                "sleeve cap",
                "a cap that reaches round an armhole of "
                        + Length.mm(frontLength + backLength).text() + " (ease included) must be "
                        + Length.mm(leastHeight()).roundedUp().text() + " to "
                        + Length.mm(mostHeight()).roundedDown().text() + " high",
                Length.mm(height).text(),
                height > leastHeight() ? "lower the cap, or lower the armhole" : "raise the cap");
    }

    /** Returns the least height that a cap on these armholes can have: just above what is copied from them. */
    public double leastHeight() {
        return Math.max(front.copiedHeight(), back.copiedHeight()) + 2;
    }

    /** Returns the greatest height at which both halves still reach round their armholes. */
    public double mostHeight() {
        return Math.min(mostHeight(front, frontLength), mostHeight(back, backLength));
    }

    /**
     * Solves the widths of both halves at the height that a cap on these armholes can have and that is nearest to one
     * asked for.
     *
     * @throws PatternException if they can have none
     */
    public Solved nearest(double height) {
        double raised = Math.max(height, leastHeight());
        double frontExcess = front.length(front.leastWidth(), raised) - frontLength;
        double backExcess = back.length(back.leastWidth(), raised) - backLength;
        if (frontExcess > 0 || backExcess > 0) {
            return atHeight(Math.min(raised, mostHeight()));
        }
        OptionalDouble frontWidth = front.widthFor(raised, frontLength, frontExcess);
        OptionalDouble backWidth = back.widthFor(raised, backLength, backExcess);
        return frontWidth.isPresent() && backWidth.isPresent()
                ? new Solved(raised, frontWidth.getAsDouble(), backWidth.getAsDouble())
                : atHeight(raised);
    }

    /**
     * Solves the height at which the sleeve has a width.
     *
     * @param width the width at the underarm points
     * @param lowest the lowest cap that may be tried, which makes the sleeve widest
     * @param highest the highest
     * @return the cap, or empty where neither of these nor any between makes the sleeve so wide
     */
    public Optional<Solved> atWidth(double width, Solved lowest, Solved highest) {
        Map<Double, Solved> solved = new HashMap<>();
        solved.put(lowest.height(), lowest);
        solved.put(highest.height(), highest);
        OptionalDouble height = RootFinder.solve(
                tried -> solved.computeIfAbsent(tried, this::atHeight).width() - width,
                lowest.height(),
                highest.height());
        return height.isPresent()
                ? Optional.of(solved.computeIfAbsent(height.getAsDouble(), this::atHeight))
                : Optional.empty();
    }

    private static double mostHeight(CapHalf half, double length) {
        double least = half.copiedHeight() + 1;
        return RootFinder.solve(height -> half.length(half.leastWidth(), height) - length, least, least + length)
                .orElse(least);
    }
}
