package org.oaktag.adjust;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.oaktag.garment.Amount;
import org.oaktag.garment.Cut;
import org.oaktag.garment.EdgeRef;
import org.oaktag.garment.End;
import org.oaktag.garment.Garment;
import org.oaktag.garment.InnerLine;
import org.oaktag.garment.Name;
import org.oaktag.garment.Notch;
import org.oaktag.garment.Note;
import org.oaktag.garment.Piece;
import org.oaktag.garment.Seam;
import org.oaktag.garment.SeamRule;
import org.oaktag.garment.SeamSide;
import org.oaktag.geometry.Point;
import org.oaktag.measure.Length;

/**
 * Sets a notch on both sides of every seam that could be mistaken for another: edges of like length and like notches that
 * are not sewn to each other. Seams that no other looks like stay as they are.
 *
 * <p>One cut tells a front, two a back (common practice); where that does not tell the edges apart, the notch moves or has
 * other cuts. A lapped seam is notched as far from the end that lies on the fold of the cloth on both sides; one that is
 * gathered, eased or stretched has notches of its own, and one of several edges a side is known by them. Both edges of a
 * band that is folded along its middle are sewn on together and are notched alike.
 *
 * <p>Immutable.
 */
public record NotchSeams() implements Step {

    /** On a shorter edge, in millimetres, a notch is not worth its cut. */
    private static final double SHORTEST = 25;

    /** How near two notches of one edge may lie, in millimetres, and still be told from a double one. */
    private static final double CLEAR = 15;

    /** Both edges of a seam, and whether the notch is measured from its end instead of its start. */
    private record Sewn(Seam seam, SeamSide.Run a, SeamSide.Run b, End from) {

        static Optional<Sewn> of(Garment garment, Seam seam) {
            if (seam.a().runs().size() > 1 || seam.b().runs().size() > 1) {
                return Optional.empty();
            }
            SeamSide.Run a = seam.a().runAt(End.START);
            SeamSide.Run b = seam.b().runAt(End.START);
            if (seam.rule() instanceof SeamRule.Flat) {
                return Optional.of(new Sewn(seam, a, b, End.START));
            }
            if (seam.rule() instanceof SeamRule.Lapped) {
                for (End end : End.values()) {
                    if (isOnFold(garment, a, end) && isOnFold(garment, b, end)) {
                        return Optional.of(new Sewn(seam, a, b, end));
                    }
                }
            }
            return Optional.empty();
        }

        /** Tells whether the seam closes a band folded along its middle, both edges of which are then sewn on together. */
        boolean isFolded(Garment garment) {
            return a.edge().piece().equals(b.edge().piece())
                    && garment.piece(a.edge().piece()).lines().stream()
                            .anyMatch(line -> line.use() == InnerLine.Use.FOLD);
        }

        /** Returns the garment with the notches of the first edge on the second as well. */
        Garment carried(Garment garment) {
            Piece piece = garment.piece(a.edge().piece());
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
            return garment.withPiece(marked);
        }

        private static boolean isOnFold(Garment garment, SeamSide.Run run, End end) {
            Piece piece = garment.piece(run.edge().piece());
            Name edge = run.edge().edge();
            Name beside = (run.cornerAt(end) == End.START ? piece.before(edge) : piece.after(edge)).name();
            return piece.cut() instanceof Cut.OnFold fold && fold.edge().equals(beside);
        }

        List<SeamSide.Run> runs() {
            return List.of(a, b);
        }

        Name notch() {
            return seam.name().with("match");
        }

        Garment notched(Garment garment, MatchingNotch choice) {
            double at = choice.share() * length(garment, a);
            Garment onA = notched(garment, a, at, choice.count());
            return notched(onA, b, at, choice.count());
        }

        private Garment notched(Garment garment, SeamSide.Run run, double at, int count) {
            Piece piece = garment.piece(run.edge().piece());
            return garment.withPiece(
                    piece.withNotch(new Notch(notch(), run.edge().edge(), run.cornerAt(from), at, count)));
        }
    }

    @Override
    public String name() {
        return "notch the seams";
    }

    @Override
    public List<Amount> amounts() {
        return List.of();
    }

    @Override
    public Reshaped reshape(Garment garment) {
        Garment notched = garment;
        List<Note> notes = new ArrayList<>();
        List<String> seams = new ArrayList<>();
        for (Seam seam : garment.seams()) {
            Optional<Sewn> sewn = Sewn.of(garment, seam);
            if (sewn.isEmpty()
                    || sewn.get().isFolded(garment)
                    || length(garment, sewn.get().a()) < SHORTEST) {
                continue;
            }
            Garment before = notched;
            List<List<EdgePattern>> strangers = strangers(before, sewn.get());
            if (isDistinct(before, sewn.get(), strangers)) {
                continue;
            }
            Optional<MatchingNotch> choice = MatchingNotch.first(cuts(seam), each -> {
                Garment tried = sewn.get().notched(before, each);
                return isClear(tried, sewn.get()) && isDistinct(tried, sewn.get(), strangers);
            });
            if (choice.isPresent()) {
                notched = sewn.get().notched(before, choice.get());
                seams.add(seam.name().value());
            } else {
                notes.add(Note.done("no notch tells '" + seam.name() + "' from every other seam: mark it by hand"));
            }
        }
        for (Seam seam : garment.seams()) {
            Garment before = notched;
            notched = Sewn.of(garment, seam)
                    .filter(each -> each.isFolded(garment))
                    .map(each -> each.carried(before))
                    .orElse(before);
        }
        notes.add(
                0,
                Note.rule("edges within " + Length.mm(EdgePattern.ALIKE_LENGTH).text()
                        + " of each other in length are told apart by their notches; "
                        + (seams.isEmpty() ? "no seam needed one more" : "one more on: " + String.join(", ", seams))));
        return new Reshaped(notched, notes, List.of());
    }

    private static double length(Garment garment, SeamSide.Run run) {
        return garment.edge(run.edge()).path().length();
    }

    /** One cut tells a front, two a back. */
    private static int cuts(Seam seam) {
        String words =
                " " + seam.name() + " " + seam.a().text() + " " + seam.b().text() + " ";
        return words.matches(".*\\bback\\b.*") && !words.matches(".*\\bfront\\b.*") ? 2 : 1;
    }

    /** Tells whether the new notch lies off the other notches of both edges. */
    private static boolean isClear(Garment garment, Sewn sewn) {
        Name own = sewn.notch();
        return sewn.runs().stream().allMatch(run -> {
            Piece piece = garment.piece(run.edge().piece());
            Point at = piece.pointOf(piece.notch(run.edge().edge(), own).orElseThrow());
            return piece.notches().stream()
                    .filter(each -> !each.name().equals(own))
                    .allMatch(each -> piece.pointOf(each).distanceTo(at) >= CLEAR);
        });
    }

    /** Returns for each edge of a seam the edges to which it is not sewn; a notch on the seam alters none of them. */
    private static List<List<EdgePattern>> strangers(Garment garment, Sewn sewn) {
        List<List<EdgePattern>> strangers = new ArrayList<>();
        for (SeamSide.Run run : sewn.runs()) {
            Set<EdgeRef> partners = partners(garment, run.edge());
            strangers.add(garment.seams().stream()
                    .flatMap(seam -> Stream.of(seam.a(), seam.b()))
                    .flatMap(side -> side.runs().stream())
                    .map(SeamSide.Run::edge)
                    .filter(edge -> !partners.contains(edge))
                    .distinct()
                    .map(edge -> pattern(garment, edge))
                    .toList());
        }
        return strangers;
    }

    /** Tells whether neither edge could be taken for one to which its partner is not sewn. */
    private static boolean isDistinct(Garment garment, Sewn sewn, List<List<EdgePattern>> strangers) {
        for (int i = 0; i < strangers.size(); i++) {
            EdgePattern edge = pattern(garment, sewn.runs().get(i).edge());
            if (!MatchingNotch.fitsNone(edge, strangers.get(i))) {
                return false;
            }
        }
        return true;
    }

    /** Returns the edge itself and all that some seam joins to it. */
    private static Set<EdgeRef> partners(Garment garment, EdgeRef edge) {
        Set<EdgeRef> partners = new HashSet<>();
        for (Seam seam : garment.seams()) {
            if (seam.has(edge)) {
                seam.a().runs().forEach(run -> partners.add(run.edge()));
                seam.b().runs().forEach(run -> partners.add(run.edge()));
            }
        }
        return partners;
    }

    private static EdgePattern pattern(Garment garment, EdgeRef edge) {
        return EdgePattern.of(garment.piece(edge.piece()), garment.edge(edge));
    }
}
