package org.oaktag.adjust;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import org.oaktag.PatternException;
import org.oaktag.garment.Aspect;
import org.oaktag.garment.Cut;
import org.oaktag.garment.EdgeRef;
import org.oaktag.garment.End;
import org.oaktag.garment.Garment;
import org.oaktag.garment.Name;
import org.oaktag.garment.Notch;
import org.oaktag.garment.Piece;
import org.oaktag.garment.Seam;
import org.oaktag.garment.SeamRule;
import org.oaktag.garment.SeamSide;
import org.oaktag.garment.WalkedSeam;
import org.oaktag.garment.WalkedSpan;
import org.oaktag.measure.Length;

/**
 * Both sides of a seam laid out beside each other, to find the places that are sewn together.
 *
 * @param seam the seam
 * @param from the end from which both are laid out, or empty where the sides cannot be laid beside each other: a lap is
 *     known to lie at one end only where the other lies at a centre, on the fold of the cloth or at a seam of both
 * hands
 * @param a its one side
 * @param b its other side
 * @param stretches the stretches of a, then those of b
 * @param ofA how many of them are those of a
 */
record SewnSides(Seam seam, Optional<End> from, LaidSide a, LaidSide b, List<Stretch> stretches, int ofA) {

    private static final String MATCH = "match";

    /** A place on side a and the place on side b that is sewn to it. */
    record Match(LaidSide.Spot onA, LaidSide.Spot onB) {

        /** Tells whether a notch can be cut at either place, and one only where an edge is sewn to itself. */
        boolean canBeCut(Garment garment) {
            return onA.canBeCut(garment)
                    && onB.canBeCut(garment)
                    && (!onA.laid().edge().equals(onB.laid().edge())
                            || onA.laid().from() == onB.laid().from());
        }

        /** Returns how many cuts a notch that matches these places may have. */
        NotchCuts cuts(Garment garment) {
            return NotchCuts.of(aspect(garment, onA), aspect(garment, onB));
        }

        private static Optional<Aspect> aspect(Garment garment, LaidSide.Spot spot) {
            EdgeRef edge = spot.laid().edge();
            return garment.piece(edge.piece()).aspect(edge.edge());
        }
    }

    SewnSides {
        stretches = List.copyOf(stretches);
    }

    static SewnSides of(Garment garment, Seam seam) {
        Optional<End> from = seam.rule() instanceof SeamRule.Lapped ? centre(garment, seam) : Optional.of(End.START);
        LaidSide a = LaidSide.of(garment, seam.a(), from.orElse(End.START));
        LaidSide b = LaidSide.of(garment, seam.b(), from.orElse(End.START));
        List<Stretch> stretches = new ArrayList<>(a.stretches(garment));
        int ofA = stretches.size();
        stretches.addAll(b.stretches(garment));
        return new SewnSides(seam, from, a, b, stretches, ofA);
    }

    /** Tells whether a seam lays a piece on another all round, as an interfacing: there is nothing to be matched. */
    static boolean isLaidOn(Garment garment, Seam seam) {
        return goesRound(garment, seam.a()) || goesRound(garment, seam.b());
    }

    private static boolean goesRound(Garment garment, SeamSide side) {
        Name piece = side.runAt(End.START).edge().piece();
        if (side.runs().size() != garment.piece(piece).edges().size()) {
            return false;
        }
        for (SeamSide.Run run : side.runs()) {
            if (!run.edge().piece().equals(piece)) {
                return false;
            }
        }
        return true;
    }

    private static Optional<End> centre(Garment garment, Seam seam) {
        for (End end : End.values()) {
            if (isAtCentre(garment, seam.a(), end) && isAtCentre(garment, seam.b(), end)) {
                return Optional.of(end);
            }
        }
        return Optional.empty();
    }

    private static boolean isAtCentre(Garment garment, SeamSide side, End end) {
        SeamSide.Run run = side.runAt(end);
        Piece piece = garment.piece(run.edge().piece());
        Name edge = run.edge().edge();
        Name beside = (run.cornerAt(end) == End.START ? piece.before(edge) : piece.after(edge)).name();
        if (piece.cut() instanceof Cut.OnFold fold) {
            return fold.edge().equals(beside);
        }
        SeamSide own = SeamSide.along(piece.name(), beside);
        return garment.seams().stream()
                .anyMatch(seam -> seam.a().equals(own) && seam.b().equals(own));
    }

    /** Tells whether fullness is to be spread evenly over the whole seam. */
    boolean isSpread() {
        SeamRule rule = seam.rule();
        return (rule instanceof SeamRule.Gathered gathered && gathered.ratio() > 1)
                || (rule instanceof SeamRule.StretchedOn stretched && stretched.ratio() < 1)
                || (rule instanceof SeamRule.Eased eased
                        && eased.within().isEmpty()
                        && eased.most().mm() > 0);
    }

    /** Tells whether the places that lie equally far along both sides are sewn together, as far as they go. */
    private boolean isFlat() {
        return seam.rule() instanceof SeamRule.Flat || seam.rule() instanceof SeamRule.Lapped;
    }

    /**
     * Checks that the other side is long enough for a notch at this place of one of them.
     *
     * @throws PatternException if it is not
     */
    void checkReaches(double along) {
        if (isFlat() && along > Math.min(a.length(), b.length())) {
            throw unlike(seam, a.length(), b.length());
        }
    }

    /** Returns the exception for sides that differ in length so much that no notch can match them. */
    static PatternException unlike(Seam seam, double a, double b) {
        return PatternException.of(
                "seam '" + seam.name() + "'",
                "must have two edges of like length for a notch to match them",
                seam.a().text() + " " + Length.mm(a).text() + " and " + seam.b().text() + " "
                        + Length.mm(b).text(),
                seam.refit());
    }

    /**
     * Returns the parts between the notches that both sides have, over each of which fullness is spread; none where
     * there is no fullness.
     */
    List<WalkedSpan> spans(Supplier<Garment> garment) {
        return isFlat() ? List.of() : WalkedSeam.of(garment.get(), seam).spans();
    }

    /** Returns the places that are sewn together where one of them lies so far along its side. */
    Match at(List<WalkedSpan> spans, double along, boolean isOnA) {
        double other = across(spans, along, isOnA);
        return new Match(a.spot(isOnA ? along : other), b.spot(isOnA ? other : along));
    }

    private static double across(List<WalkedSpan> spans, double along, boolean isOnA) {
        double begin = 0;
        double other = 0;
        for (WalkedSpan span : spans) {
            double own = (isOnA ? span.lengthA() : span.lengthB()).mm();
            double theirs = (isOnA ? span.lengthB() : span.lengthA()).mm();
            if (along < begin + own) {
                return other + (along - begin) / own * theirs;
            }
            begin += own;
            other += theirs;
        }
        return other + (along - begin);
    }

    /** Returns the name of the notch of this number on the seam. */
    Name notch(int number) {
        return seam.name().with(number == 1 ? MATCH : MATCH + " " + number);
    }

    /** Tells whether a notch bears a name of those that are set on the seam. */
    boolean isOwn(Notch notch) {
        String own = seam.name().value();
        String words = notch.name().value();
        return words.startsWith(own) && words.startsWith(" " + MATCH, own.length());
    }
}
