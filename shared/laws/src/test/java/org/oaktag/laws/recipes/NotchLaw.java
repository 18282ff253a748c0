package org.oaktag.laws.recipes;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.oaktag.adjust.Pieces;
import org.oaktag.garment.Cloth;
import org.oaktag.garment.EdgeRef;
import org.oaktag.garment.End;
import org.oaktag.garment.Garment;
import org.oaktag.garment.InnerLine;
import org.oaktag.garment.Name;
import org.oaktag.garment.Notch;
import org.oaktag.garment.Piece;
import org.oaktag.garment.Seam;
import org.oaktag.garment.SeamRule;
import org.oaktag.garment.SeamSide;
import org.oaktag.garment.WalkedSeam;
import org.oaktag.garment.WalkedSpan;

/** What holds of any garment after its seams were notched. */
final class NotchLaw {

    /** Like lengths: a knit gives 10 mm without a thought. Notches 4 mm apart are seen not to meet. Common practice. */
    private static final double LENGTH = 10;

    private static final double APART = 4;

    /** Allowances of the trade are 10 mm, those of home patterns 15 mm (common practice). */
    private static final double FROM_CORNER = 10;

    private static final double FROM_HOLLOW = 15;

    private static final String UNTOLD = "no notch tells '";

    private static final double ROUNDING = 1e-9;

    private final Garment before;
    private final Garment after;
    private final Set<String> named = new HashSet<>();

    private NotchLaw(Garment before, Garment after) {
        this.before = before;
        this.after = after;
        after.history().get(after.history().size() - 1).notes().forEach(note -> {
            if (note.text().startsWith(UNTOLD)) {
                named.add(note.text().substring(UNTOLD.length(), note.text().indexOf('\'', UNTOLD.length())));
            }
        });
    }

    /**
     * Notches the seams of a garment, checks what came of it, and returns how many notches were set.
     *
     * @throws org.oaktag.PatternException if a seam that needs a notch has sides of unlike lengths
     */
    static int check(Garment before) {
        Garment after = before.adjust(Pieces.notchSeams());
        NotchLaw law = new NotchLaw(before, after);
        law.checkPairs();
        law.checkPlaces();
        law.checkCounts();
        if (law.named.isEmpty()) {
            assertThat(notches(after.adjust(Pieces.notchSeams()))).isEqualTo(notches(after));
        }
        for (WalkedSeam walked : before.walkSeams().seams()) {
            if (walked.isTrue()) {
                assertThat(after.walkSeams().seam(walked.seam().name()).isTrue())
                        .as(walked.text())
                        .isTrue();
            }
        }
        return law.set().size();
    }

    private static List<List<Notch>> notches(Garment garment) {
        return garment.pieces().stream().map(Piece::notches).toList();
    }

    /** A notch of a piece. */
    private record Placed(Piece piece, Notch notch) {
        double length() {
            return piece.path(notch.edge()).length();
        }

        EdgeRef edge() {
            return EdgeRef.of(piece.name(), notch.edge());
        }
    }

    private List<Placed> set() {
        List<Placed> set = new ArrayList<>();
        for (Piece piece : after.pieces()) {
            List<Notch> old = before.piece(piece.name()).notches();
            piece.notches().stream()
                    .filter(notch -> !old.contains(notch))
                    .forEach(notch -> set.add(new Placed(piece, notch)));
        }
        return set;
    }

    /** What is pinned in one go: edges of one piece that follow one another on one side of a seam. */
    private record Stretch(Seam seam, List<EdgeRef> edges, double length, List<double[]> notches) {

        /** Tells whether the other could be pinned in the place of this one, either way round. */
        boolean meets(Stretch other) {
            return notches.size() == other.notches.size() && (meets(other.notches) || meets(other.reversed()));
        }

        private boolean meets(List<double[]> others) {
            for (int i = 0; i < notches.size(); i++) {
                double[] own = notches.get(i);
                if (own[1] != others.get(i)[1] || Math.abs(own[0] - others.get(i)[0]) > APART) {
                    return false;
                }
            }
            return true;
        }

        private List<double[]> reversed() {
            List<double[]> reversed = new ArrayList<>();
            for (int i = notches.size() - 1; i >= 0; i--) {
                reversed.add(new double[] {length - notches.get(i)[0], notches.get(i)[1]});
            }
            return reversed;
        }
    }

    private void checkPairs() {
        List<Stretch> all = new ArrayList<>();
        for (Seam seam : after.seams()) {
            if (!isFold(seam) && !isLaidOn(seam)) {
                for (SeamSide side : List.of(seam.a(), seam.b())) {
                    all.addAll(stretches(seam, side));
                }
            }
        }
        for (Stretch one : all) {
            for (Stretch other : all) {
                boolean known = named.contains(one.seam.name().value())
                        || named.contains(other.seam.name().value());
                if (!known && Math.abs(one.length - other.length) < LENGTH && !areSewn(one, other)) {
                    assertThat(one.notches)
                            .as("%s, as long as %s", one.edges, other.edges)
                            .isNotEmpty();
                    assertThat(one.meets(other))
                            .as("%s fits %s", one.edges, other.edges)
                            .isFalse();
                }
            }
        }
    }

    private boolean areSewn(Stretch one, Stretch other) {
        return after.seams().stream()
                .anyMatch(seam -> one.edges.stream().anyMatch(seam::has)
                        && other.edges.stream().anyMatch(seam::has));
    }

    private List<Stretch> stretches(Seam seam, SeamSide side) {
        List<Stretch> stretches = new ArrayList<>();
        int first = 0;
        for (int i = 1; i <= side.runs().size(); i++) {
            if (i == side.runs().size()
                    || !runsOn(side.runs().get(i - 1), side.runs().get(i))) {
                stretches.add(stretch(seam, side.runs().subList(first, i)));
                first = i;
            }
        }
        return stretches;
    }

    private boolean runsOn(SeamSide.Run run, SeamSide.Run next) {
        Piece piece = after.piece(run.edge().piece());
        return next.edge().piece().equals(piece.name())
                && run.backwards() == next.backwards()
                && (run.backwards()
                                ? piece.before(run.edge().edge())
                                : piece.after(run.edge().edge()))
                        .name()
                        .equals(next.edge().edge());
    }

    private Stretch stretch(Seam seam, List<SeamSide.Run> runs) {
        List<EdgeRef> edges = new ArrayList<>();
        List<double[]> notches = new ArrayList<>();
        double begin = 0;
        for (SeamSide.Run run : runs) {
            Piece piece = after.piece(run.edge().piece());
            double length = piece.path(run.edge().edge()).length();
            for (Notch notch : piece.notches()) {
                if (notch.edge().equals(run.edge().edge())) {
                    double fromStart = notch.fromStart(length);
                    notches.add(
                            new double[] {begin + (run.backwards() ? length - fromStart : fromStart), notch.count()});
                }
            }
            edges.add(run.edge());
            begin += length;
        }
        notches.sort((a, b) -> Double.compare(a[0], b[0]));
        return new Stretch(seam, edges, begin, notches);
    }

    /** The edges of a folded band are sewn on together, the second with the notches of the first. */
    private boolean isFold(Seam seam) {
        EdgeRef a = seam.a().runs().get(0).edge();
        EdgeRef b = seam.b().runs().get(0).edge();
        Piece piece = after.piece(a.piece());
        return a.piece().equals(b.piece())
                && piece.edges().size() == 4
                && !a.equals(b)
                && !piece.after(a.edge()).name().equals(b.edge())
                && piece.lines().stream()
                        .anyMatch(line -> line.use() == InnerLine.Use.FOLD
                                && piece.path(a.edge())
                                                .nearest(line.path().start())
                                                .distance()
                                        > 1
                                && piece.path(a.edge())
                                                .nearest(line.path().end())
                                                .distance()
                                        > 1);
    }

    private static boolean isLaidOn(Seam seam) {
        return seam.name().value().endsWith("interfacing");
    }

    private void checkPlaces() {
        for (Placed placed : set()) {
            Notch notch = placed.notch;
            if (after.seams().stream().anyMatch(seam -> seam.has(placed.edge()) && isFold(seam))) {
                continue;
            }
            double at = notch.fromStart(placed.length());
            assertThat(at).as("%s on %s", notch, placed.edge()).isGreaterThanOrEqualTo(reach(placed, End.START));
            assertThat(placed.length() - at)
                    .as("%s on %s", notch, placed.edge())
                    .isGreaterThanOrEqualTo(reach(placed, End.END));
        }
        for (Seam seam : after.seams()) {
            checkTogether(seam);
        }
    }

    private static double reach(Placed placed, End end) {
        double angle = placed.piece.cornerAngle(placed.notch.edge(), end).degrees();
        return (angle > 182 ? FROM_HOLLOW : FROM_CORNER) - ROUNDING;
    }

    /**
     * Every notch that a seam has gained lies where its like is sewn to it: as far along both sides where they are sewn
     * flat, as far from one end where they lap, at the same share of the part between two notches that were there where
     * there is fullness.
     */
    private void checkTogether(Seam seam) {
        Set<Name> gained = new HashSet<>();
        set().stream().filter(placed -> seam.has(placed.edge())).forEach(placed -> gained.add(placed.notch.name()));
        List<double[]> places = new ArrayList<>();
        double[] begin = {0, 0};
        double[] end = {0, 0};
        for (WalkedSpan span : after.walkSeams().seam(seam.name()).spans()) {
            end = new double[] {
                end[0] + span.lengthA().mm(), end[1] + span.lengthB().mm()
            };
            if (gained.contains(Name.of(span.to()))) {
                places.add(end);
            } else {
                for (double[] place : places) {
                    checkTogether(seam, place, begin, end);
                }
                places.clear();
                begin = end;
            }
        }
    }

    private void checkTogether(Seam seam, double[] place, double[] begin, double[] end) {
        if (seam.rule() instanceof SeamRule.Flat) {
            assertThat(place[1]).as(seam.name().value()).isCloseTo(place[0], within(ROUNDING));
        } else if (seam.rule() instanceof SeamRule.Lapped) {
            WalkedSeam walked = after.walkSeams().seam(seam.name());
            double fromEnd = walked.difference().mm() - (place[1] - place[0]);
            assertThat(Math.min(Math.abs(place[1] - place[0]), Math.abs(fromEnd)))
                    .as(seam.name().value())
                    .isLessThan(ROUNDING);
        } else {
            assertThat((place[1] - begin[1]) / (end[1] - begin[1]))
                    .as("%s at %s between %s and %s", seam.name(), place, begin, end)
                    .isCloseTo((place[0] - begin[0]) / (end[0] - begin[0]), within(ROUNDING));
        }
    }

    /**
     * One cut is front, two are back (common practice); what joins front to back is never marked as a back. An
     * interfacing has the notches of what it is laid on.
     */
    private void checkCounts() {
        for (Piece piece : after.pieces()) {
            for (Notch notch : piece.cloth().use().equals(Cloth.INTERFACING) ? List.<Notch>of() : piece.notches()) {
                Placed placed = new Placed(piece, notch);
                boolean front = says(placed.edge(), "front");
                boolean back = says(placed.edge(), "back");
                if (front == back || after.seams().stream().noneMatch(seam -> seam.has(placed.edge()))) {
                    continue;
                }
                boolean joins = after.seams().stream()
                        .filter(seam -> seam.has(placed.edge()))
                        .anyMatch(seam -> joins(seam, placed.edge(), front ? "back" : "front"));
                int barred = front || joins ? 2 : 1;
                assertThat(notch.count()).as("%s on %s", notch, placed.edge()).isNotEqualTo(barred);
            }
        }
    }

    private static boolean joins(Seam seam, EdgeRef edge, String word) {
        SeamSide other = seam.a().has(edge) ? seam.b() : seam.a();
        return other.runs().stream().anyMatch(run -> says(run.edge(), word));
    }

    private static boolean says(EdgeRef edge, String word) {
        String words = " " + edge.piece().value() + " " + edge.edge().value() + " ";
        return words.contains(" " + word + " ");
    }
}
