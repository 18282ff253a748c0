package org.oaktag.body;

import java.util.List;
import java.util.Optional;
import org.oaktag.body.DerivationRule.Term;

/**
 * The rules that derive what was not taken, and that say what a measure that was taken is expected to be: straight
 * lines through the bodies of a survey.
 *
 * <p>Each is the least-squares regression that follows from the means, standard deviations and correlations of the 2012
 * US Army survey (Gordon et al., NATICK/TR-15/007), the women and the men apart. For a measure y and predictors x with
 * covariances S, the coefficients are S<sub>xx</sub><sup>-1</sup> S<sub>xy</sub>, and what is left over has the
 * variance S<sub>yy</sub> - S<sub>yx</sub> S<sub>xx</sub><sup>-1</sup> S<sub>xy</sub>. A larger body varies more: above
 * the mean body of the survey the spread grows in proportion with the measure, which the tables do not print but the
 * single bodies of the survey show.
 *
 * <p>What the survey took is not always what the trade takes. Its waist is at the navel, and the trade's is the natural
 * waist, which only the 1988 survey measured beside it (Gordon et al., NATICK/TR-89/044): girths of 725.5 (standard
 * deviation 63.0) against 791.9 (82.7) mm in women and 839.9 (74.0) against 862.4 (86.4) mm in men; 367.3 and 412.0 mm
 * from the nape down the back; 218 and 240 mm above the seat. So a body's natural waist is derived to lie as many
 * standard deviations from its mean as the waist at the navel does, and both lengths keep what height and bust girth do
 * to them and are moved to these means. The tenth rib of the 2012 survey, above which the natural waist lies 12 mm in
 * women and 6 mm in men of 1988, puts the waist 17 mm higher above the seat in women and 1 mm lower in men.
 *
 * <p>The upper arm is flexed, which errs on the side of room. The across back is interscye II, the arm length the
 * sleeve outseam.
 *
 * <p>The bodies are soldiers', whose girths their service limits. Above a bust of {@value #SERVICE_BUST_MM} mm a
 * woman's waist and hip therefore grow as in the size tables for everybody: the waist 1.048 mm for each mm of bust
 * (ASTM D5585-11, misses, sizes 2 to 20), the hip 50 mm for 60 mm (EN 13402-3 above a bust of 104 cm, from memory). A
 * man's grow in the survey nearly as they do there. Whoever has a bust above it is asked for their hip.
 *
 * <p>No such survey of children is at hand, so nothing is derived for a child.
 */
final class Derivations {

    /** The bust girth above which a soldier's hip says little of other people's, so that it is asked for. */
    static final int SERVICE_BUST_MM = 1050;

    /**
     * The girth of the hand with the thumb laid in, in wrists: the mean of the surveyed bodies, of whom all but one in
     * fifty lie between 1.36 and 1.56. Computed from single bodies; the survey's tables do not print it.
     */
    static final double THUMBED_HAND_IN_WRISTS = 1.466;

    private static final double HIP_OF_BUST_IN_SIZE_TABLES = 0.8333;
    private static final double WAIST_OF_BUST_IN_SIZE_TABLES = 1.048;

    private Derivations() {}

    /** Returns the rule by which a measure of a grown body is derived, or empty where there is none. */
    static Optional<DerivationRule> rule(BodyMeasure wanted, Figure figure) {
        return switch (figure) {
            case WOMAN -> womansRule(wanted);
            case MAN -> mansRule(wanted);
            case GIRL, BOY -> Optional.empty();
        };
    }

    /**
     * Returns what the height alone leads to expect of a grown body's bust girth. It is much too loose to derive one,
     * but a girth far below it is a slip.
     */
    static Optional<DerivationRule> bustFromHeight(Figure figure) {
        return switch (figure) {
            case WOMAN -> rule(401.5, height(0.3349), 79.9);
            case MAN -> rule(506.0, height(0.3147), 84.7);
            case GIRL, BOY -> Optional.empty();
        };
    }

    private static Optional<DerivationRule> womansRule(BodyMeasure wanted) {
        return switch (wanted) {
            case BUST_GIRTH, HEIGHT -> Optional.empty();
            case WAIST_GIRTH -> rule(42.6, bust(0.7767), aboveService(WAIST_OF_BUST_IN_SIZE_TABLES - 0.7767), 40.8);
            case HIP_GIRTH ->
                rule(36.8, bust(0.6344), height(0.2356), aboveService(HIP_OF_BUST_IN_SIZE_TABLES - 0.6344), 48.7);
            case NECK_BASE_GIRTH -> rule(223.0, bust(0.1565), 14.9);
            case UPPER_ARM_GIRTH -> rule(42.5, bust(0.2778), 20.5);
            case WRIST_GIRTH -> rule(31.8, bust(0.0388), height(0.0530), 5.8);
            case HAND_GIRTH -> rule(57.9, wrist(0.8315), 5.9);
            case HAND_GIRTH_WITH_THUMB -> rule(0, wrist(THUMBED_HAND_IN_WRISTS), 6.7);
            case HEAD_GIRTH -> rule(393.4, bust(0.0317), height(0.0846), 18.2);
            case SHOULDER_LENGTH -> rule(31.9, height(0.0635), 9.5);
            case ACROSS_BACK -> rule(97.1, bust(0.1348), height(0.1050), 21.3);
            case BACK_WAIST_LENGTH -> rule(-12.2, bust(0.1160), height(0.1684), 20.8);
            case WAIST_TO_HIP -> rule(38.9, height(0.1100), 23.8);
            case NAPE_TO_ARMPIT -> rule(34.7, bust(0.0174), height(0.0648), 13.6);
            case ARM_LENGTH -> rule(-48.5, height(0.3636), 17.9);
        };
    }

    private static Optional<DerivationRule> mansRule(BodyMeasure wanted) {
        return switch (wanted) {
            case BUST_GIRTH, HEIGHT -> Optional.empty();
            case WAIST_GIRTH -> rule(-119.9, bust(0.9698), 44.4);
            case HIP_GIRTH -> rule(-3.8, bust(0.7028), height(0.1590), 40.7);
            case NECK_BASE_GIRTH -> rule(201.4, bust(0.2202), 17.0);
            case UPPER_ARM_GIRTH -> rule(28.7, bust(0.3112), 21.4);
            case WRIST_GIRTH -> rule(36.1, bust(0.0531), height(0.0476), 6.4);
            case HAND_GIRTH -> rule(58.4, wrist(0.8749), 6.5);
            case HAND_GIRTH_WITH_THUMB -> rule(0, wrist(THUMBED_HAND_IN_WRISTS), 7.6);
            case HEAD_GIRTH -> rule(401.0, bust(0.0650), height(0.0596), 14.0);
            case SHOULDER_LENGTH -> rule(39.9, height(0.0626), 9.6);
            case ACROSS_BACK -> rule(116.4, bust(0.2076), height(0.0649), 23.3);
            case BACK_WAIST_LENGTH -> rule(-21.6, bust(0.1235), height(0.1772), 20.9);
            case WAIST_TO_HIP -> rule(81.8, height(0.0901), 25.6);
            case NAPE_TO_ARMPIT -> rule(44.5, bust(0.0497), height(0.0519), 13.1);
            case ARM_LENGTH -> rule(-40.1, height(0.3605), 18.4);
        };
    }

    private static Term bust(double factor) {
        return new Term(factor, BodyMeasure.BUST_GIRTH, 0);
    }

    private static Term aboveService(double factor) {
        return new Term(factor, BodyMeasure.BUST_GIRTH, SERVICE_BUST_MM);
    }

    private static Term height(double factor) {
        return new Term(factor, BodyMeasure.HEIGHT, 0);
    }

    private static Term wrist(double factor) {
        return new Term(factor, BodyMeasure.WRIST_GIRTH, 0);
    }

    private static Optional<DerivationRule> rule(double constant, Term term, double spread) {
        return Optional.of(new DerivationRule(List.of(term), constant, spread));
    }

    private static Optional<DerivationRule> rule(double constant, Term first, Term second, double spread) {
        return Optional.of(new DerivationRule(List.of(first, second), constant, spread));
    }

    private static Optional<DerivationRule> rule(double constant, Term first, Term second, Term third, double spread) {
        return Optional.of(new DerivationRule(List.of(first, second, third), constant, spread));
    }
}
