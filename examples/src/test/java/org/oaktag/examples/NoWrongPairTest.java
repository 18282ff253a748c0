package org.oaktag.examples;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.oaktag.blocks.TopEdges;
import org.oaktag.blocks.TopNames;
import org.oaktag.garment.EdgeRef;
import org.oaktag.garment.Garment;
import org.oaktag.garment.Name;
import org.oaktag.garment.Notch;
import org.oaktag.garment.Piece;
import org.oaktag.garment.Seam;
import org.oaktag.garment.SeamSide;
import org.oaktag.garment.WalkedSeam;

/**
 * Every wrong pair of edges of the hooded top is tried: whoever pins an edge in the place of one of like length sees it
 * by the notches, either way round.
 */
class NoWrongPairTest {

    /** Like lengths: a knit gives 10 mm without a thought. Notches 4 mm apart are seen not to meet. Common practice. */
    private static final double LENGTH = 10;

    private static final double APART = 4;

    /** A notch is not worth its cut on an edge as short as this. */
    private static final double SHORT = 25;

    private static Garment block() {
        return HoodedTop.block(BodyFile.nightCrew().bodies().get(0));
    }

    private static Garment top(boolean drawstring) {
        var played = HoodedTop.recipe(drawstring).play(block());
        return played.get(played.size() - 1).after();
    }

    private static Map<EdgeRef, Set<EdgeRef>> partners(Garment garment) {
        Map<EdgeRef, Set<EdgeRef>> partners = new LinkedHashMap<>();
        for (Seam seam : garment.seams()) {
            Set<EdgeRef> all = new TreeSet<>();
            for (SeamSide side : List.of(seam.a(), seam.b())) {
                side.runs().forEach(run -> all.add(run.edge()));
            }
            all.forEach(edge ->
                    partners.computeIfAbsent(edge, each -> new TreeSet<>()).addAll(all));
        }
        return partners;
    }

    /** Each notch as its distance from the start, and the number of its cuts, in order along the edge. */
    private static List<double[]> notches(Garment garment, EdgeRef edge, boolean reversed) {
        Piece piece = garment.piece(edge.piece());
        double length = piece.path(edge.edge()).length();
        List<double[]> notches = new ArrayList<>();
        for (Notch notch : piece.notches()) {
            if (notch.edge().equals(edge.edge())) {
                double at = notch.fromStart(length);
                notches.add(new double[] {reversed ? length - at : at, notch.count()});
            }
        }
        notches.sort((a, b) -> Double.compare(a[0], b[0]));
        return notches;
    }

    private static boolean meet(List<double[]> a, List<double[]> b) {
        if (a.size() != b.size()) {
            return false;
        }
        for (int i = 0; i < a.size(); i++) {
            if (a.get(i)[1] != b.get(i)[1] || Math.abs(a.get(i)[0] - b.get(i)[0]) > APART) {
                return false;
            }
        }
        return true;
    }

    private static List<String> wrongPairs(Garment garment) {
        List<String> wrong = new ArrayList<>();
        Map<EdgeRef, Set<EdgeRef>> partners = partners(garment);
        for (EdgeRef edge : partners.keySet()) {
            double length = garment.edge(edge).path().length();
            for (EdgeRef other : partners.keySet()) {
                double theirs = garment.edge(other).path().length();
                if (edge.compareTo(other) >= 0
                        || partners.get(edge).contains(other)
                        || Math.abs(length - theirs) > LENGTH
                        || Math.min(length, theirs) < SHORT) {
                    continue;
                }
                List<double[]> own = notches(garment, edge, false);
                if (meet(own, notches(garment, other, false)) || meet(own, notches(garment, other, true))) {
                    wrong.add(edge + " and " + other);
                }
            }
        }
        return wrong;
    }

    @ParameterizedTest
    @ValueSource(booleans = {false, true})
    void no_wrong_pair_of_edges_of_like_length_has_notches_that_meet(boolean drawstring) {
        assertThat(wrongPairs(top(drawstring))).isEmpty();
    }

    @Test
    void without_its_notches_the_top_has_wrong_pairs_that_fit() {
        Garment top = top(false);
        Garment bare = top.withPieces(
                top.pieces().stream().map(piece -> piece.withNotches(List.of())).toList());
        assertThat(wrongPairs(bare)).hasSizeGreaterThan(10);
    }

    @Test
    void notches_of_a_seam_meet() {
        assertThat(top(false).walkSeams().seams()).allMatch(WalkedSeam::isTrue);
    }

    /** How many cuts each notch of a side has, by its name. */
    private static Map<Name, Integer> cuts(Garment garment, SeamSide side) {
        Map<Name, Integer> cuts = new TreeMap<>();
        for (SeamSide.Run run : side.runs()) {
            garment.piece(run.edge().piece()).notches().stream()
                    .filter(notch -> notch.edge().equals(run.edge().edge()))
                    .forEach(notch -> cuts.put(notch.name(), notch.count()));
        }
        return cuts;
    }

    static Stream<Garment> drafted() {
        return Stream.of(block(), top(false), top(true));
    }

    @ParameterizedTest
    @MethodSource("drafted")
    void notches_that_meet_have_as_many_cuts(Garment top) {
        int met = 0;
        for (Seam seam : top.seams()) {
            Map<Name, Integer> a = cuts(top, seam.a());
            Map<Name, Integer> b = cuts(top, seam.b());
            a.keySet().retainAll(b.keySet());
            b.keySet().retainAll(a.keySet());
            assertThat(a).as("%s", seam.name()).isEqualTo(b);
            met += a.size();
        }
        assertThat(met).isGreaterThanOrEqualTo(2);
    }

    /** One cut says front and two say back, on the sleeve as on the body: common practice. */
    @ParameterizedTest
    @MethodSource("drafted")
    void the_armhole_has_a_single_notch_in_front_and_a_double_one_behind(Garment top) {
        for (SeamSide front : List.of(
                SeamSide.along(TopNames.FRONT, TopEdges.ARMHOLE),
                SeamSide.along(TopNames.SLEEVE, TopEdges.CAP_FRONT))) {
            assertThat(cuts(top, front)).containsEntry(TopNames.FRONT_NOTCH, 1);
        }
        for (SeamSide back : List.of(
                SeamSide.along(TopNames.BACK, TopEdges.ARMHOLE), SeamSide.along(TopNames.SLEEVE, TopEdges.CAP_BACK))) {
            assertThat(cuts(top, back)).containsEntry(TopNames.BACK_NOTCH, 2);
        }
    }
}
