package org.oaktag.blocks;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.oaktag.body.BodyMeasure;
import org.oaktag.garment.EdgeNames;
import org.oaktag.garment.EdgeRef;
import org.oaktag.garment.Garment;
import org.oaktag.garment.Name;
import org.oaktag.garment.Piece;
import org.oaktag.garment.Seam;
import org.oaktag.garment.SeamSide;
import org.oaktag.measure.Length;
import org.oaktag.measure.Percent;

/**
 * Compares the openings of a top with the parts of the body that go through them: the neckline with the head, the hem
 * with the hip, the sleeve with the upper arm and the cuff with the hand.
 *
 * <pre>{@code
 * for (FitCheck check : FitChecks.of(hooded)) {
 *     String line = check.text() + (check.passes() ? "" : ": " + check.advice());
 * }
 * }</pre>
 */
public final class FitChecks {

    private FitChecks() {}

    /** Returns the checks for which the garment has the opening and the wearer was measured. */
    public static List<FitCheck> of(Garment garment) {
        return Stream.of(neck(garment), hem(garment), sleeve(garment), cuff(garment))
                .flatMap(Optional::stream)
                .toList();
    }

    /**
     * Compares the neckline with the head; a hood, its lining or a facing stretches with it or holds it back. A neckband
     * opens until it or the neckline, which is longer, is at its end.
     */
    public static Optional<FitCheck> neck(Garment garment) {
        Percent shell = neckStretch(garment);
        return garment.findPiece(FinishNames.NECKBAND)
                .map(band -> check(
                        garment,
                        "neckband",
                        FinishNames.NECKBAND_GIRTH,
                        "head",
                        BodyMeasure.HEAD_GIRTH,
                        bandStretch(garment, band, shell)))
                .orElseGet(() ->
                        check(garment, "neck opening", TopNames.NECKLINE_GIRTH, "head", BodyMeasure.HEAD_GIRTH, shell));
    }

    private static Percent bandStretch(Garment garment, Piece band, Percent shell) {
        double girth = 2 * band.path(EdgeNames.TOP).length();
        double neckline = garment.finished(TopNames.NECKLINE_GIRTH).mm();
        double reach = Math.min(girth * (1 + band.cloth().stretch().fraction()), neckline * (1 + shell.fraction()));
        return Percent.percent(Math.max(0, (reach / girth - 1) * 100));
    }

    /** Sleeves that reach the neckline, as a raglan's do, are part of it. */
    private static Percent neckStretch(Garment garment) {
        return leastStretch(
                garment,
                Stream.of(TopNames.FRONT, TopNames.BACK, TopNames.SLEEVE_FRONT, TopNames.SLEEVE_BACK)
                        .map(garment::findPiece)
                        .flatMap(Optional::stream)
                        .filter(piece -> piece.hasEdge(EdgeNames.NECKLINE))
                        .map(piece -> EdgeRef.of(piece.name(), EdgeNames.NECKLINE))
                        .toArray(EdgeRef[]::new));
    }

    /** Compares the hem with the hip. */
    public static Optional<FitCheck> hem(Garment garment) {
        return check(
                garment,
                "hem",
                TopNames.HEM_GIRTH,
                "hip",
                BodyMeasure.HIP_GIRTH,
                leastStretch(
                        garment, EdgeRef.of(TopNames.FRONT, EdgeNames.HEM), EdgeRef.of(TopNames.BACK, EdgeNames.HEM)));
    }

    /** Compares the sleeve, set in, in halves or grown on to the body, with the upper arm. */
    public static Optional<FitCheck> sleeve(Garment garment) {
        return check(
                garment,
                "sleeve",
                TopNames.SLEEVE_WIDTH,
                "upper arm",
                BodyMeasure.UPPER_ARM_GIRTH,
                roundTheArm(garment).stream()
                        .map(piece -> piece.cloth().stretch())
                        .min(Percent::compareTo)
                        .orElse(Percent.percent(0)));
    }

    private static List<Piece> roundTheArm(Garment garment) {
        return Stream.of(
                        List.of(TopNames.SLEEVE),
                        List.of(TopNames.SLEEVE_FRONT, TopNames.SLEEVE_BACK),
                        List.of(TopNames.FRONT, TopNames.BACK))
                .map(names -> names.stream()
                        .map(garment::findPiece)
                        .flatMap(Optional::stream)
                        .toList())
                .filter(pieces -> !pieces.isEmpty())
                .findFirst()
                .orElse(List.of());
    }

    /** Compares the cuff with the hand, its thumb laid in. The gathered sleeve opens as far as its own length allows. */
    public static Optional<FitCheck> cuff(Garment garment) {
        return garment.findPiece(TopNames.CUFF)
                .flatMap(cuff -> check(
                        garment,
                        "cuff",
                        TopNames.CUFF_GIRTH,
                        "hand",
                        BodyMeasure.HAND_GIRTH_WITH_THUMB,
                        gatheredStretch(garment, cuff)));
    }

    private static Optional<FitCheck> check(
            Garment garment, String name, Name opening, String body, BodyMeasure measure, Percent stretch) {
        Optional<Length> mustPass =
                Optional.ofNullable(garment.wearer().measures().get(measure.asName()));
        return garment.measures().stream()
                .filter(finished -> finished.name().equals(opening))
                .findFirst()
                .flatMap(finished -> finished.taken(garment))
                .flatMap(finished -> mustPass.map(girth -> new FitCheck(name, finished, body, girth, stretch)));
    }

    private static Percent gatheredStretch(Garment garment, Piece cuff) {
        double girth = cuff.path(EdgeNames.TOP).length();
        double reach = girth * (1 + cuff.cloth().stretch().fraction());
        Piece sleeve = garment.findPiece(TopNames.SLEEVE_LOWER).orElseGet(() -> garment.piece(TopNames.SLEEVE));
        double sleeveReach = sleeve.path(EdgeNames.HEM).length()
                * (1 + sleeve.cloth().stretch().fraction());
        return Percent.percent((Math.min(reach, sleeveReach) / girth - 1) * 100);
    }

    /** The stretch of the least stretchy cloth among all that is sewn to these edges, and to what is sewn to them. */
    private static Percent leastStretch(Garment garment, EdgeRef... edges) {
        Set<EdgeRef> sewn = new LinkedHashSet<>(List.of(edges));
        boolean grown = true;
        while (grown) {
            grown = false;
            for (Seam seam : garment.seams()) {
                List<EdgeRef> joined = joined(seam);
                if (joined.stream().anyMatch(sewn::contains)) {
                    grown |= sewn.addAll(joined);
                }
            }
        }
        return sewn.stream()
                .map(edge -> garment.piece(edge.piece()).cloth().stretch())
                .min(Percent::compareTo)
                .orElseThrow();
    }

    private static List<EdgeRef> joined(Seam seam) {
        List<EdgeRef> edges = new ArrayList<>();
        for (SeamSide side : List.of(seam.a(), seam.b())) {
            side.runs().forEach(run -> edges.add(run.edge()));
        }
        return edges;
    }
}
