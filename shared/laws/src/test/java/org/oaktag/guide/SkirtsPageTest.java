package org.oaktag.guide;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.oaktag.body.BodyMeasure;
import org.oaktag.body.Ease;
import org.oaktag.measure.Length;
import org.oaktag.skirt.SkirtEase;
import org.oaktag.skirt.SkirtLength;
import org.oaktag.skirt.Stride;

/** The table of strides on the page of skirts is what the library computes. */
class SkirtsPageTest {

    /** Natural waist, as a share of the height, in the survey of 1988 (Gordon et al., NATICK/TR-89/044). */
    private static final double WAIST = 0.649;

    /**
     * Means of the 2012 survey (Gordon et al., NATICK/TR-15/007): height, hip girth, and hip below the natural waist.
     */
    static Stream<Arguments> rows() {
        return Stream.of(SkirtLength.values())
                .flatMap(length -> Stream.of(
                        Arguments.of("woman", length, 1629.0, 1021.0, 218.0),
                        Arguments.of("man", length, 1756.0, 1024.0, 240.0)));
    }

    @ParameterizedTest
    @MethodSource("rows")
    void a_row_says_what_a_step_needs(String who, SkirtLength length, double height, double hip, double toHip)
            throws IOException {
        Stride stride = Stride.of(Length.mm(height), Length.mm(hip));
        Ease ease = SkirtEase.standard();
        Length girth = Length.mm(hip).plus(ease.at(BodyMeasure.HIP_GIRTH));
        Length hem = Length.mm(height * (WAIST - length.shareOfHeight()));
        Length free = stride.freeFrom(Length.mm(height * WAIST - toHip), girth, hem, girth);
        Length vent = free.minus(hem);
        String row = String.format(
                "| %s, %s | %s | %s | %s | %s |",
                who,
                length.text(),
                whole(hem),
                whole(stride.girthAt(hem)),
                whole(girth),
                vent.mm() < 0.1 ? "none is needed" : whole(vent) + " above the hem");
        assertThat(Files.readString(Path.of("../../docs/skirts.md"))).contains(row);
    }

    private static String whole(Length length) {
        return Math.round(length.mm()) + " mm";
    }
}
