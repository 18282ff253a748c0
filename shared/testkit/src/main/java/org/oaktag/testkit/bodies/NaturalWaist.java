package org.oaktag.testkit.bodies;

import org.oaktag.body.Figure;

/**
 * Where the natural waist lies on a body whose waist was taken at the navel, as in the 2012 survey: by the means and
 * standard deviations of both among the bodies of the 1988 survey, which took both (Gordon et al., NATICK/TR-89/044).
 *
 * @param navelGirth the mean girth at the navel, in mm
 * @param navelGirthSd its standard deviation
 * @param girth the mean girth of the natural waist
 * @param girthSd its standard deviation
 * @param backLength the mean length from the nape down the back to the natural waist
 * @param aboveSeat the mean height of the natural waist above that of the seat
 * @param chest the mean chest girth
 */
public record NaturalWaist(
        double navelGirth,
        double navelGirthSd,
        double girth,
        double girthSd,
        double backLength,
        double aboveSeat,
        double chest) {

    private static final NaturalWaist WOMEN = new NaturalWaist(791.9, 82.7, 725.5, 63.0, 367.3, 218, 907.1);
    private static final NaturalWaist MEN = new NaturalWaist(862.4, 86.4, 839.9, 74.0, 412.0, 240, 991.4);

    /**
     * Returns the figures of the women or of the men.
     *
     * @throws IllegalArgumentException for a child: the survey measured none
     */
    public static NaturalWaist of(Figure figure) {
        return switch (figure) {
            case WOMAN -> WOMEN;
            case MAN -> MEN;
            case GIRL, BOY -> throw new IllegalArgumentException("the survey measured no " + figure.label());
        };
    }

    /** Returns the girth that lies as many standard deviations from its mean as one at the navel, both in mm. */
    public double girthOf(double atNavel) {
        return girth + girthSd / navelGirthSd * (atNavel - navelGirth);
    }

    /**
     * Returns how much shorter the back is to the natural waist than to the navel, in mm: to the latter the survey of
     * 2012 has it 425.4 and 477.6 mm in bodies of its mean chest, 946.9 and 1058.7 mm, and 0.1160 and 0.1235 mm more
     * for each mm of chest; in bodies of the mean chest of 1988 that is 420.8 and 469.3 mm.
     */
    public double shorterBack() {
        return (this.equals(WOMEN) ? 420.8 : 469.3) - backLength;
    }

    /**
     * Returns how far it lies above the navel, in mm: the navel of the survey of 2012 is 146.4 and 168.6 mm above the
     * seat.
     */
    public double aboveNavel() {
        return aboveSeat - (this.equals(WOMEN) ? 146.4 : 168.6);
    }
}
