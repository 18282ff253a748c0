package org.oaktag.adjust;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.DoubleFunction;
import org.oaktag.garment.Name;
import org.oaktag.garment.Notch;
import org.oaktag.garment.WalkedSpan;

/** One seam while its notches are set. Made by one step and used up by it. */
final class SeamNotching {

    private static final List<String> QUARTERS = List.of("quarter 1", "half", "quarter 3");

    private final Notching notching;
    private final SewnSides sides;

    SeamNotching(Notching notching, SewnSides sides) {
        this.notching = notching;
        this.sides = sides;
    }

    String name() {
        return sides.seam().name().value();
    }

    /** Tells whether fullness is to be spread along the seam and nothing says yet where it goes. */
    boolean lacksQuarters() {
        return sides.isSpread() && sides.stretches().stream().allMatch(notching::isBare);
    }

    /** Marks the quarters of both sides, as far as they can be cut, and tells whether one could. */
    boolean quarter() {
        List<WalkedSpan> spans = sides.spans(notching::notched);
        boolean set = false;
        for (int i = 0; i < QUARTERS.size(); i++) {
            SewnSides.Match match = sides.at(spans, (i + 1) / 4.0 * sides.a().length(), true);
            if (notching.canBeCut(match)) {
                int count = notching.cuts(match).counts().get(0);
                notching.set(match, sides.seam().name().with(QUARTERS.get(i)), count);
                set = true;
            }
        }
        return set;
    }

    /** Tells whether no stretch of the seam could be taken for one to which the others are not sewn. */
    boolean isDistinct() {
        for (Stretch stretch : sides.stretches()) {
            if (!notching.isDistinct(stretch)) {
                return false;
            }
        }
        return true;
    }

    /**
     * Takes off what was set at an earlier time if it tells the seam no longer, and tells whether there was something.
     */
    boolean clear() {
        return !isDistinct() && notching.clear(sides);
    }

    /**
     * Sets a notch on every stretch that has none yet, and returns how many. Which ones get theirs does not depend on
     * lengths, so that a style carries the same notches in every size; only where they lie does.
     *
     * @throws org.oaktag.PatternException if a side is too short for a notch that is needed
     */
    int tellApart() {
        int set = 0;
        for (int i = 0; i < sides.stretches().size(); i++) {
            Stretch stretch = sides.stretches().get(i);
            boolean isOfA = i < sides.ofA();
            if (sides.from().isPresent()
                    && stretch.hasRoom()
                    && notching.isBare(stretch)
                    && (takesOver(stretch, isOfA) || hasNew(stretch, isOfA, freeName()))) {
                set++;
            }
        }
        return set;
    }

    /** Sets on a stretch the notches that lie across the seam from it, if they are enough to tell it. */
    private boolean takesOver(Stretch stretch, boolean isOfA) {
        List<WalkedSpan> spans = sides.spans(notching::notched);
        LaidSide own = isOfA ? sides.a() : sides.b();
        LaidSide across = isOfA ? sides.b() : sides.a();
        List<Notch> taken = new ArrayList<>();
        for (LaidSide.Laid laid : across.edges()) {
            for (Notch notch : notching.notchesOn(laid.edge())) {
                SewnSides.Match match = sides.at(spans, laid.placeOf(notch), !isOfA);
                LaidSide.Spot spot = isOfA ? match.onA() : match.onB();
                if (stretch.refs().contains(spot.laid().edge())
                        && !hasNotch(own, notch.name())
                        && notching.canBeCut(match)
                        && notching.cuts(match).counts().contains(notch.count())) {
                    taken.add(spot.notch(notch.name(), notch.count()));
                }
            }
        }
        return !taken.isEmpty() && notching.setIfTold(sides, stretch.piece(), taken);
    }

    /** The name of the first notch of the seam that neither side has: notches that bear one name are sewn together. */
    private Name freeName() {
        int number = 1;
        Name name = sides.notch(number);
        while (hasNotch(sides.a(), name) || hasNotch(sides.b(), name)) {
            number++;
            name = sides.notch(number);
        }
        return name;
    }

    private boolean hasNotch(LaidSide side, Name name) {
        for (LaidSide.Laid laid : side.edges()) {
            if (notching.hasNotch(laid.edge(), name)) {
                return true;
            }
        }
        return false;
    }

    private boolean hasNew(Stretch stretch, boolean isOfA, Name name) {
        sides.checkReaches(stretch.begin() + MatchingNotch.FARTHEST * stretch.length());
        List<WalkedSpan> spans = sides.spans(notching::notched);
        DoubleFunction<SewnSides.Match> at =
                share -> sides.at(spans, stretch.begin() + share * stretch.length(), isOfA);
        Optional<MatchingNotch> choice = MatchingNotch.first(
                        share -> notching.cuts(at.apply(share)),
                        each -> notching.wouldTell(sides, at.apply(each.share()), name, each.count()))
                .or(() -> MatchingNotch.first(
                        share -> notching.cuts(at.apply(share)), each -> notching.canBeCut(at.apply(each.share()))));
        choice.ifPresent(each -> notching.set(at.apply(each.share()), name, each.count()));
        return choice.isPresent();
    }
}
