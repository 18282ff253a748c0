package org.oaktag.blocks;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.oaktag.body.BodyMeasure;
import org.oaktag.garment.Edge;
import org.oaktag.garment.Fit;
import org.oaktag.garment.FitCheck;
import org.oaktag.garment.Garment;
import org.oaktag.garment.Name;
import org.oaktag.garment.Opening;
import org.oaktag.garment.TakenMeasure;
import org.oaktag.measure.Length;

/**
 * What is asked of the fit of a top at every step: the head through the neckline, waist and hip in the body, the upper
 * arm in the sleeve, the hand through its hem or cuff, and whether the cap is as high as is usual for its kind of
 * sleeve.
 *
 * <pre>{@code
 * block.checks().contains(TopChecks.neck(TopNames.NECKLINE_GIRTH));   // = true
 * }</pre>
 */
public final class TopChecks {

    /** The neckline, or the band on it, over the head. */
    public static final Name NECK = Name.of("neck opening");

    /** The body at the waist. */
    public static final Name WAIST = Name.of("waist");

    /** The hem round the hip, or round the body where it ends above that. */
    public static final Name HEM = Name.of("hem");

    /** The sleeve round the upper arm. */
    public static final Name UPPER_ARM = Name.of("upper arm");

    /** The hem of the sleeve, or the cuff on it, over the hand. */
    public static final Name HAND = Name.of("hand");

    /** The body over the outer corners of a gusset. */
    public static final Name CHEST = Name.of("chest");

    /** The height of the cap. */
    public static final Name CAP = Name.of("cap height");

    private TopChecks() {}

    static List<FitCheck> ofBlock() {
        return List.of(
                neck(TopNames.NECKLINE_GIRTH),
                worn(WAIST, BodyMeasure.WAIST_GIRTH, "waist", TopNames.WAIST_GIRTH),
                new HemRoom(),
                upperArm(TopNames.SLEEVE_WIDTH),
                hand(TopNames.SLEEVE_HEM),
                new CapHeight());
    }

    /** Returns the check of the neck over these girths. */
    public static FitCheck neck(Name... rings) {
        return Opening.passing(NECK, BodyMeasure.HEAD_GIRTH.asName(), "head", rings);
    }

    /** Returns the check of the hand over these girths, its thumb laid in. */
    public static FitCheck hand(Name... rings) {
        return Opening.passing(HAND, BodyMeasure.HAND_GIRTH_WITH_THUMB.asName(), "hand", rings);
    }

    /** Returns the check of the upper arm in this girth. */
    public static FitCheck upperArm(Name ring) {
        return worn(UPPER_ARM, BodyMeasure.UPPER_ARM_GIRTH, "upper arm", ring);
    }

    /** Returns the check of the chest in this girth. */
    public static FitCheck chest(Name ring) {
        return worn(CHEST, BodyMeasure.BUST_GIRTH, "chest", ring);
    }

    /** Returns the checks with this one in the place of the one of its name, or as the last where there is none. */
    public static List<FitCheck> with(List<FitCheck> checks, FitCheck check) {
        List<FitCheck> all = new ArrayList<>(checks);
        for (int i = 0; i < all.size(); i++) {
            if (all.get(i).name().equals(check.name())) {
                all.set(i, check);
                return all;
            }
        }
        all.add(check);
        return all;
    }

    private static Opening worn(Name name, BodyMeasure body, String part, Name ring) {
        return Opening.worn(name, body.asName(), part, ring);
    }

    /** The hem round the body at its level: the girth between waist and hip goes from the one to the other evenly. */
    private record HemRoom() implements FitCheck {

        private static final Name HIP = BodyMeasure.HIP_GIRTH.asName();
        private static final Name WAIST_OF_BODY = BodyMeasure.WAIST_GIRTH.asName();
        private static final Name TO_WAIST = BodyMeasure.BACK_WAIST_LENGTH.asName();
        private static final Name TO_HIP = BodyMeasure.WAIST_TO_HIP.asName();
        private static final Opening ROUND_HIP = round("hip");

        @Override
        public Name name() {
            return HEM;
        }

        @Override
        public Optional<Fit> of(Garment garment) {
            Map<Name, Length> body = garment.wearer().measures();
            Length hip = body.get(HIP);
            Length waist = body.get(WAIST_OF_BODY);
            Length toWaist = body.get(TO_WAIST);
            Length toHip = body.get(TO_HIP);
            if (hip == null || waist == null || toWaist == null || toHip == null) {
                return Optional.empty();
            }
            return garment.findMeasure(TopNames.BACK_LENGTH)
                    .flatMap(TakenMeasure::length)
                    .flatMap(length -> {
                        double share = length.minus(toWaist).mm() / toHip.mm();
                        if (share <= 0) {
                            return Optional.empty();
                        }
                        return share < 1
                                ? fit(
                                        garment,
                                        waist.plus(hip.minus(waist).times(share)),
                                        "body at its level",
                                        WAIST_OF_BODY,
                                        HIP,
                                        TO_WAIST,
                                        TO_HIP)
                                : fit(garment, hip, "hip", HIP);
                    });
        }

        private static Optional<Fit> fit(Garment garment, Length girth, String part, Name... rests) {
            String derived = garment.wearer().saysDerived(rests);
            return round(part)
                    .around(garment, girth)
                    .map(passage -> new Fit(HEM, passage.verdict(), passage.text() + derived));
        }

        @Override
        public boolean standsSince(Garment earlier, Garment garment) {
            return garment.findMeasure(TopNames.BACK_LENGTH).equals(earlier.findMeasure(TopNames.BACK_LENGTH))
                    && ROUND_HIP.standsSince(earlier, garment);
        }

        private static Opening round(String part) {
            return worn(HEM, BodyMeasure.HIP_GIRTH, part, TopNames.HEM_GIRTH);
        }
    }

    /** The cap of a sleeve set in, beside the band of its kind. */
    private record CapHeight() implements FitCheck {

        @Override
        public Name name() {
            return CAP;
        }

        @Override
        public Optional<Fit> of(Garment garment) {
            return CapShare.of(garment)
                    .map(cap -> new Fit(CAP, cap.isUsual() ? Fit.Verdict.FITS : Fit.Verdict.STRAINS, cap.text()));
        }

        @Override
        public boolean standsSince(Garment earlier, Garment garment) {
            return earlier.wearer().equals(garment.wearer())
                    && hasEdges(earlier, garment, TopNames.FRONT, TopEdges.SHOULDER, TopEdges.ARMHOLE)
                    && hasEdges(earlier, garment, TopNames.BACK, TopEdges.SHOULDER, TopEdges.ARMHOLE)
                    && hasEdges(earlier, garment, TopNames.SLEEVE, TopEdges.CAP_FRONT, TopEdges.CAP_BACK);
        }

        private static boolean hasEdges(Garment earlier, Garment garment, Name piece, Name... edges) {
            for (Name edge : edges) {
                if (!find(garment, piece, edge).equals(find(earlier, piece, edge))) {
                    return false;
                }
            }
            return true;
        }

        private static Optional<Edge> find(Garment garment, Name piece, Name edge) {
            return garment.findPiece(piece).flatMap(each -> each.findEdge(edge));
        }
    }
}
