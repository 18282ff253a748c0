package org.oaktag.body;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.oaktag.measure.Length;

/**
 * The rules that derive what was not taken: straight lines through the bodies of a survey.
 *
 * <p>Each is the least-squares regression that follows from the means, standard deviations and correlations of the 2012
 * US Army survey (Gordon et al., NATICK/TR-15/007), the women and the men apart. For a measure y and predictors x with
 * covariances S, the coefficients are S<sub>xx</sub><sup>-1</sup> S<sub>xy</sub>, and what is left over has the variance
 * S<sub>yy</sub> - S<sub>yx</sub> S<sub>xx</sub><sup>-1</sup> S<sub>xy</sub>.
 *
 * <p>What the survey took is not always what the trade takes. Its waist is at the navel: the derived waist girth is the
 * girth there; for back waist length and waist to hip the waist is moved up by {@value #WAIST_ABOVE_NAVEL} mm, which is
 * the difference of both waist back lengths among the 1988 men (Gordon et al., NATICK/TR-89/044). Its upper arm is
 * flexed, which errs on the side of room. Its across back is interscye II, its arm length the sleeve outseam.
 *
 * <p>No such survey of children is at hand, so nothing is derived for a child.
 */
final class Derivations {

    /** How far the natural waist lies above the navel, down the back: 478.5 - 412.0 mm, rounded. */
    static final int WAIST_ABOVE_NAVEL = 66;

    /**
     * The girth of the hand with the thumb laid in, in wrists: the mean of the surveyed bodies, of whom all but one in
     * fifty lie between 1.36 and 1.56. Reckoned from single bodies; the survey's tables do not print it.
     */
    static final double THUMBED_HAND_IN_WRISTS = 1.466;

    private Derivations() {}

    /**
     * Derives a measure of a grown body.
     *
     * @param taken the measures that are known, bust girth and height among them
     * @return the derived measure, or empty where there is no rule
     */
    static Optional<Derived> derive(BodyMeasure wanted, Figure figure, Map<BodyMeasure, Length> taken) {
        return switch (figure) {
            case WOMAN -> womansRule(wanted).map(rule -> rule.apply(wanted, taken));
            case MAN -> mansRule(wanted).map(rule -> rule.apply(wanted, taken));
            case GIRL, BOY -> Optional.empty();
        };
    }

    static Optional<Rule> womansRule(BodyMeasure wanted) {
        return switch (wanted) {
            case BUST_GIRTH, HEIGHT -> Optional.empty();
            case WAIST_GIRTH -> rule(-104.5, bust(1.0195), 53.6);
            case HIP_GIRTH -> rule(36.8, bust(0.6344), height(0.2356), 48.7);
            case NECK_BASE_GIRTH -> rule(223.0, bust(0.1565), 14.9);
            case UPPER_ARM_GIRTH -> rule(42.5, bust(0.2778), 20.5);
            case WRIST_GIRTH -> rule(31.8, bust(0.0388), height(0.0530), 5.8);
            case HAND_GIRTH -> rule(57.9, wrist(0.8315), 5.9);
            case HAND_GIRTH_WITH_THUMB -> rule(0, wrist(THUMBED_HAND_IN_WRISTS), 6.7);
            case HEAD_GIRTH -> rule(393.4, bust(0.0317), height(0.0846), 18.2);
            case SHOULDER_LENGTH -> rule(31.9, height(0.0635), 9.5);
            case ACROSS_BACK -> rule(97.1, bust(0.1348), height(0.1050), 21.3);
            case BACK_WAIST_LENGTH -> rule(41.3 - WAIST_ABOVE_NAVEL, bust(0.1160), height(0.1684), 20.8);
            case WAIST_TO_HIP -> rule(-32.7 + WAIST_ABOVE_NAVEL, height(0.1100), 23.8);
            case NAPE_TO_ARMPIT -> rule(34.7, bust(0.0174), height(0.0648), 13.6);
            case ARM_LENGTH -> rule(-48.5, height(0.3636), 17.9);
        };
    }

    static Optional<Rule> mansRule(BodyMeasure wanted) {
        return switch (wanted) {
            case BUST_GIRTH, HEIGHT -> Optional.empty();
            case WAIST_GIRTH -> rule(-258.2, bust(1.1323), 51.8);
            case HIP_GIRTH -> rule(-3.8, bust(0.7028), height(0.1590), 40.7);
            case NECK_BASE_GIRTH -> rule(201.4, bust(0.2202), 17.0);
            case UPPER_ARM_GIRTH -> rule(28.7, bust(0.3112), 21.4);
            case WRIST_GIRTH -> rule(36.1, bust(0.0531), height(0.0476), 6.4);
            case HAND_GIRTH -> rule(58.4, wrist(0.8749), 6.5);
            case HAND_GIRTH_WITH_THUMB -> rule(0, wrist(THUMBED_HAND_IN_WRISTS), 7.6);
            case HEAD_GIRTH -> rule(401.0, bust(0.0650), height(0.0596), 14.0);
            case SHOULDER_LENGTH -> rule(39.9, height(0.0626), 9.6);
            case ACROSS_BACK -> rule(116.4, bust(0.2076), height(0.0649), 23.3);
            case BACK_WAIST_LENGTH -> rule(35.7 - WAIST_ABOVE_NAVEL, bust(0.1235), height(0.1772), 20.9);
            case WAIST_TO_HIP -> rule(10.4 + WAIST_ABOVE_NAVEL, height(0.0901), 25.6);
            case NAPE_TO_ARMPIT -> rule(44.5, bust(0.0497), height(0.0519), 13.1);
            case ARM_LENGTH -> rule(-40.1, height(0.3605), 18.4);
        };
    }

    private static Term bust(double factor) {
        return new Term(factor, BodyMeasure.BUST_GIRTH);
    }

    private static Term height(double factor) {
        return new Term(factor, BodyMeasure.HEIGHT);
    }

    private static Term wrist(double factor) {
        return new Term(factor, BodyMeasure.WRIST_GIRTH);
    }

    private static Optional<Rule> rule(double constant, Term term, double spread) {
        return Optional.of(new Rule(List.of(term), constant, spread));
    }

    private static Optional<Rule> rule(double constant, Term first, Term second, double spread) {
        return Optional.of(new Rule(List.of(first, second), constant, spread));
    }

    /** A measure and what it is multiplied by. */
    record Term(double factor, BodyMeasure measure) {}

    /** A weighted sum of measures, in mm, and the spread of real bodies about it. */
    record Rule(List<Term> terms, double constant, double spread) {

        Derived apply(BodyMeasure wanted, Map<BodyMeasure, Length> known) {
            double sum = constant;
            StringBuilder words = new StringBuilder();
            StringBuilder beyond = new StringBuilder();
            for (Term term : terms) {
                Length value = known.get(term.measure());
                if (value == null) {
                    throw new IllegalStateException(wanted + " needs " + term.measure() + ", which comes later");
                }
                sum += term.factor() * value.mm();
                words.append(words.isEmpty() ? "" : " + ")
                        .append(String.format(Locale.ROOT, "%.4f x ", term.factor()))
                        .append(term.measure().label())
                        .append(' ')
                        .append(value.text());
                PlausibleRange surveyed = PlausibleRange.surveyed(term.measure());
                if (!surveyed.includes(value)) {
                    beyond.append(" (beyond the surveyed ")
                            .append(term.measure().label())
                            .append(" of ")
                            .append(surveyed.text(LengthUnit.MM))
                            .append(')');
                }
            }
            if (constant != 0) {
                words.append(constant < 0 ? " - " : " + ")
                        .append(Length.mm(Math.abs(constant)).text());
            }
            return new Derived(wanted, Length.mm(sum), words.append(beyond).toString(), Length.mm(spread));
        }
    }
}
