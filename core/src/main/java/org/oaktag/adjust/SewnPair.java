package org.oaktag.adjust;

import java.util.List;
import java.util.Optional;
import org.oaktag.PatternException;
import org.oaktag.garment.Cut;
import org.oaktag.garment.End;
import org.oaktag.garment.Garment;
import org.oaktag.garment.InnerLine;
import org.oaktag.garment.Name;
import org.oaktag.garment.Notch;
import org.oaktag.garment.Piece;
import org.oaktag.garment.Seam;
import org.oaktag.garment.SeamRule;
import org.oaktag.garment.SeamSide;
import org.oaktag.measure.Length;

/**
 * Both edges of a seam that one notch can match.
 *
 * @param seam the seam
 * @param a the only run of its one side
 * @param b the only run of its other side
 * @param from the end of the seam from which the notch is measured
 * @param length the length of a in millimetres
 */
record SewnPair(Seam seam, SeamSide.Run a, SeamSide.Run b, End from, double length) {

    /** Returns the edges of a seam, or empty where one notch cannot match them. */
    static Optional<SewnPair> of(Garment garment, Seam seam) {
        if (seam.a().runs().size() > 1 || seam.b().runs().size() > 1) {
            return Optional.empty();
        }
        SeamSide.Run a = seam.a().runAt(End.START);
        SeamSide.Run b = seam.b().runAt(End.START);
        if (seam.rule() instanceof SeamRule.Flat) {
            return Optional.of(of(garment, seam, a, b, End.START));
        }
        if (seam.rule() instanceof SeamRule.Lapped) {
            for (End end : End.values()) {
                if (isOnFold(garment, a, end) && isOnFold(garment, b, end)) {
                    return Optional.of(of(garment, seam, a, b, end));
                }
            }
        }
        return Optional.empty();
    }

    private static SewnPair of(Garment garment, Seam seam, SeamSide.Run a, SeamSide.Run b, End from) {
        return new SewnPair(seam, a, b, from, garment.edge(a.edge()).path().length());
    }

    private static boolean isOnFold(Garment garment, SeamSide.Run run, End end) {
        Piece piece = garment.piece(run.edge().piece());
        Name edge = run.edge().edge();
        Name beside = (run.cornerAt(end) == End.START ? piece.before(edge) : piece.after(edge)).name();
        return piece.cut() instanceof Cut.OnFold fold && fold.edge().equals(beside);
    }

    /**
     * Checks that every notch that is set on the one edge lies on the other too.
     *
     * @throws PatternException if the other is shorter than that
     */
    void checkAlike(Garment garment) {
        double other = garment.edge(b.edge()).path().length();
        double farthest = isFolded(garment) ? farthestNotch(garment) : MatchingNotch.FARTHEST * length;
        if (farthest > other) {
            throw PatternException.of(
                    "seam '" + seam.name() + "'",
                    "must have two edges of like length for a notch to match them",
                    a.edge() + " " + Length.mm(length).text() + " and " + b.edge() + " "
                            + Length.mm(other).text(),
                    seam.refit());
        }
    }

    private double farthestNotch(Garment garment) {
        return garment.piece(a.edge().piece()).notches().stream()
                .filter(notch -> notch.edge().equals(a.edge().edge()))
                .mapToDouble(Notch::distance)
                .max()
                .orElse(0);
    }

    /** Tells whether the seam closes a band folded along its middle, both edges of which are then sewn on together. */
    boolean isFolded(Garment garment) {
        return a.edge().piece().equals(b.edge().piece())
                && garment.piece(a.edge().piece()).lines().stream().anyMatch(line -> line.use() == InnerLine.Use.FOLD);
    }

    List<SeamSide.Run> runs() {
        return List.of(a, b);
    }

    /** Returns the name of the notch. */
    Name notch() {
        return seam.name().with("match");
    }

    /** Returns the notch on one of the edges. */
    Notch notch(SeamSide.Run run, MatchingNotch choice) {
        return new Notch(notch(), run.edge().edge(), run.cornerAt(from), choice.share() * length, choice.count());
    }

    /** Returns the piece of a folded band with the notches of the first edge on the second as well. */
    Piece carried(Piece piece) {
        Piece marked = piece;
        for (Notch notch : piece.notches()) {
            if (notch.edge().equals(a.edge().edge())) {
                End end = a.backwards() == b.backwards()
                        ? notch.from()
                        : notch.from().opposite();
                marked = marked.withNotch(
                        new Notch(notch.name(), b.edge().edge(), end, notch.distance(), notch.count()));
            }
        }
        return marked;
    }
}
