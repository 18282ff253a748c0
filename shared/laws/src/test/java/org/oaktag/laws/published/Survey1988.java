package org.oaktag.laws.published;

import java.util.stream.Stream;
import org.oaktag.body.BodyMeasurements;
import org.oaktag.body.Figure;
import org.oaktag.measure.Length;

/**
 * Figures of the 1988 Anthropometric Survey of U.S. Army Personnel (Gordon et al., NATICK/TR-89/044): means and
 * standard deviations in mm. A survey apart from that of 2012, on which the library's rules rest.
 *
 * @param scyeDepth from the nape down the back
 */
record Survey1988(
        Figure figure, Mean chest, Mean neckBase, Mean shoulder, Mean interscyeII, Mean scyeGirth, Mean scyeDepth) {

    static final Survey1988 WOMEN = new Survey1988(
            Figure.WOMAN,
            new Mean(907.1, 63.5),
            new Mean(346.2, 16.3),
            new Mean(144.7, 10.8),
            new Mean(376.2, 24.1),
            new Mean(371.3, 23.0),
            new Mean(185.7, 14.4));

    static final Survey1988 MEN = new Survey1988(
            Figure.MAN,
            new Mean(991.4, 69.0),
            new Mean(408.4, 20.5),
            new Mean(150.5, 11.0),
            new Mean(406.8, 27.4),
            new Mean(445.5, 27.1),
            new Mean(212.7, 15.5));

    /** A mean and its standard deviation in mm. */
    record Mean(double mm, double sd) {

        /** Within a standard deviation of the mean. */
        PublishedFigure.Band band() {
            return new PublishedFigure.Band(mm - sd, mm + sd);
        }
    }

    static Stream<Survey1988> both() {
        return Stream.of(WOMEN, MEN);
    }

    /** The mean height, which the figures at hand leave out: that of the 2012 survey, NATICK/TR-15/007. */
    private double height() {
        return figure == Figure.WOMAN ? 1628.5 : 1756.2;
    }

    /** The mean body with only its chest and height taken. */
    BodyMeasurements chestAndHeight() {
        return BodyMeasurements.builder()
                .name("mean of 1988")
                .figure(figure)
                .bustGirth(Length.mm(chest.mm()))
                .height(Length.mm(height()))
                .build();
    }

    /** The mean body. */
    BodyMeasurements body() {
        return chestAndHeight().toBuilder()
                .neckBaseGirth(Length.mm(neckBase.mm()))
                .shoulderLength(Length.mm(shoulder.mm()))
                .acrossBack(Length.mm(interscyeII.mm()))
                .build();
    }
}
