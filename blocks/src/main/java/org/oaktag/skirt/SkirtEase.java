package org.oaktag.skirt;

import org.oaktag.PatternException;
import org.oaktag.body.BodyMeasure;
import org.oaktag.body.BodyMeasurements;
import org.oaktag.body.Ease;
import org.oaktag.body.EaseCategory;
import org.oaktag.garment.Cloth;
import org.oaktag.measure.Length;

/**
 * The ease of skirts: over waist and hip girth.
 *
 * <pre>{@code
 * SkirtEase.standard().at(BodyMeasure.HIP_GIRTH).text();     // = 55.0 mm
 * SkirtEase.standard().at(BodyMeasure.WAIST_GIRTH).text();   // = 16.0 mm
 * }</pre>
 *
 * <p>Of a skirt of woven cloth the waist has 1/2 to 3/4 in and the hip 2 to 2 3/4 in (Central Washington University,
 * costume text, ch. 16), which is the standard here; the other categories are common practice. In a cloth that
 * stretches there may be less than none, as far as a third of its stretch goes.
 */
public final class SkirtEase {

    private static final Length LEAST = Length.mm(-200);
    private static final Length GREATEST = Length.mm(400);

    private SkirtEase() {}

    /** Returns the ease of a skirt that is neither close nor loose: 55 mm at the hip. */
    public static Ease standard() {
        return of(EaseCategory.STANDARD);
    }

    /** Returns the ease that goes with a category. */
    public static Ease of(EaseCategory category) {
        return switch (category) {
            case VERY_CLOSE -> inMm(0, 20);
            case CLOSE -> inMm(10, 35);
            case STANDARD -> inMm(16, 55);
            case LOOSE -> inMm(22, 90);
            case OVERSIZED -> inMm(30, 150);
        };
    }

    private static Ease inMm(double waist, double hip) {
        return Ease.none().with(BodyMeasure.WAIST_GIRTH, Length.mm(waist)).with(BodyMeasure.HIP_GIRTH, Length.mm(hip));
    }

    /** Refuses an ease that cannot be worn in the cloth. */
    static void check(Ease ease, BodyMeasurements body, Cloth cloth) {
        for (BodyMeasure measure : new BodyMeasure[] {BodyMeasure.WAIST_GIRTH, BodyMeasure.HIP_GIRTH}) {
            Length girth = body.measure(measure);
            Length stretched =
                    girth.times(1 / (1 + cloth.stretch().fraction() / 3)).minus(girth);
            Length least = LEAST.compareTo(stretched) > 0 ? LEAST : stretched;
            Length given = ease.at(measure);
            if (given.mm() < least.mm() - 1e-9 || given.compareTo(GREATEST) > 0) {
                throw PatternException.of(
                        "ease at the " + measure.label(),
                        "must be " + least.roundedUp().text() + " to " + GREATEST.text() + " in '"
                                + cloth.description() + "', which stretches by "
                                + cloth.stretch().text(),
                        given.text(),
                        "");
            }
        }
    }
}
