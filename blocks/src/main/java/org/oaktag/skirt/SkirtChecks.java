package org.oaktag.skirt;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.oaktag.body.BodyMeasure;
import org.oaktag.garment.Fit;
import org.oaktag.garment.FitCheck;
import org.oaktag.garment.Garment;
import org.oaktag.garment.Name;
import org.oaktag.garment.Opening;
import org.oaktag.garment.Passage;
import org.oaktag.garment.TakenMeasure;
import org.oaktag.measure.Length;

/**
 * What is asked of the fit of a skirt at every step: the waist and the hip in it, the hip through its waist or its
 * opening, and whether its wearer can walk.
 *
 * <pre>{@code
 * block.checks();   // what is asked of any garment
 * SkirtChecks.STRIDE.value();   // = stride
 * }</pre>
 */
public final class SkirtChecks {

    /** The waist of the body in that of the skirt. */
    public static final Name WAIST = Name.of("waist");

    /** The hip of the body in that of the skirt. */
    public static final Name HIP = Name.of("hip");

    /** The hip through the waist, as wide as it opens. */
    public static final Name GETTING_IN = Name.of("getting in");

    /** The hem round a full step. */
    public static final Name STRIDE = Name.of("stride");

    private SkirtChecks() {}

    static List<FitCheck> ofBlock() {
        return List.of(
                worn(WAIST, BodyMeasure.WAIST_GIRTH, "waist", SkirtNames.WAIST_GIRTH),
                worn(HIP, BodyMeasure.HIP_GIRTH, "hip", SkirtNames.HIP_GIRTH),
                new GettingIn(Length.ZERO),
                new Walking(Length.ZERO));
    }

    private static Opening worn(Name name, BodyMeasure body, String part, Name ring) {
        return Opening.worn(name, body.asName(), part, ring);
    }

    /**
     * The hip through the waist of the skirt and its opening.
     *
     * @param opening how long the opening at the waist is
     */
    record GettingIn(Length opening) implements FitCheck {

        @Override
        public Name name() {
            return GETTING_IN;
        }

        @Override
        public Optional<Fit> of(Garment garment) {
            Optional<Passage> closed = Opening.passing(
                            GETTING_IN, BodyMeasure.HIP_GIRTH.asName(), "hip", SkirtNames.WAIST_GIRTH)
                    .measured(garment);
            return closed.map(passage -> {
                Length reach = passage.reach().plus(opening.times(2));
                Length lacks = passage.mustPass().minus(reach);
                if (lacks.mm() <= 1e-6) {
                    return new Fit(
                            GETTING_IN,
                            Fit.Verdict.FITS,
                            "the waist opens to " + reach.text() + ", and passes the hip ("
                                    + passage.mustPass().text() + ")");
                }
                return new Fit(
                        GETTING_IN,
                        Fit.Verdict.FAILS,
                        "the waist opens to " + reach.text() + " and does not pass the hip ("
                                + passage.mustPass().text() + "): give it an opening of "
                                + lacks.times(0.5).plus(opening).roundedUp().text() + " at least");
            });
        }
    }

    /**
     * The hem round a step.
     *
     * @param freed how far above the hem a vent or a pleat opens
     */
    record Walking(Length freed) implements FitCheck {

        @Override
        public Name name() {
            return STRIDE;
        }

        @Override
        public Optional<Fit> of(Garment garment) {
            return Stride.of(garment.wearer()).flatMap(stride -> of(garment, stride));
        }

        private Optional<Fit> of(Garment garment, Stride stride) {
            return Hanging.of(garment, stride).map(hanging -> {
                Length needed = hanging.needed();
                if (needed.mm() <= freed.mm() + 0.1) {
                    return new Fit(STRIDE, Fit.Verdict.FITS, "a full step is free");
                }
                return new Fit(
                        STRIDE,
                        Fit.Verdict.STRAINS,
                        String.format(
                                Locale.ROOT,
                                "the hem (%s) frees %.0f %% of a full step, which needs %s there: a vent or pleat must open"
                                        + " from %s above the hem at least",
                                hanging.hem().text(),
                                100 * stride.shareOfStep(hanging.hem(), hanging.hemLevel()),
                                stride.girthAt(hanging.hemLevel()).text(),
                                needed.roundedUp().text()));
            });
        }
    }

    /** Returns how far above the hem a vent must open for a full step; empty where that cannot be told. */
    static Optional<Length> freedForStep(Garment garment) {
        return Stride.of(garment.wearer())
                .flatMap(stride -> Hanging.of(garment, stride))
                .map(Hanging::needed);
    }

    /** Returns by how much the hem is narrower than a full step needs, nothing where it is not. */
    static Optional<Length> lackingForStep(Garment garment) {
        return Stride.of(garment.wearer())
                .flatMap(stride -> Hanging.of(garment, stride))
                .map(hanging -> Length.mm(Math.max(
                        0,
                        hanging.stride().girthAt(hanging.hemLevel()).mm()
                                - hanging.hem().mm())));
    }

    /**
     * A skirt as it hangs above the floor.
     *
     * @param stride the step of its wearer
     * @param hip its girth at the hip
     * @param hipLevel how far that lies above the floor
     * @param hem its girth at the hem
     * @param hemLevel how far that lies above the floor
     */
    private record Hanging(Stride stride, Length hip, Length hipLevel, Length hem, Length hemLevel) {

        static Optional<Hanging> of(Garment garment, Stride stride) {
            Optional<Length> hip = taken(garment, SkirtNames.HIP_GIRTH);
            Optional<Length> hem = taken(garment, SkirtNames.HEM_GIRTH);
            Optional<Length> length = taken(garment, SkirtNames.LENGTH);
            Length toHip = garment.wearer().measures().get(BodyMeasure.WAIST_TO_HIP.asName());
            if (hip.isEmpty() || hem.isEmpty() || length.isEmpty() || toHip == null) {
                return Optional.empty();
            }
            Length waistLevel = stride.height().times(Stride.WAIST_SHARE);
            return Optional.of(
                    new Hanging(stride, hip.get(), waistLevel.minus(toHip), hem.get(), waistLevel.minus(length.get())));
        }

        Length needed() {
            return stride.freeFrom(hipLevel, hip, hemLevel, hem).minus(hemLevel);
        }

        private static Optional<Length> taken(Garment garment, Name measure) {
            return garment.findMeasure(measure).flatMap(TakenMeasure::length);
        }
    }
}
