package org.oaktag.export.drawing;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/**
 * Colours as seen in grey and by colour-blind readers.
 *
 * <p>Lightness is CIELAB L* (CIE 15:2004; sRGB by IEC 61966-2-1). Colour-blind vision is simulated with the matrices
 * for full protanopia, deuteranopia and tritanopia of Machado, Oliveira and Fernandes, "A Physiologically-based Model
 * for Simulation of Color Vision Deficiency" (2009), applied to linear RGB; the figures are from memory.
 */
class ClothPaintTest {

    /** What a kind of vision makes of red, green and blue. */
    enum Vision {
        FULL(1, 0, 0, 0, 1, 0, 0, 0, 1),
        PROTANOPIA(0.152286, 1.052583, -0.204868, 0.114503, 0.786281, 0.099216, -0.003882, -0.048116, 1.051998),
        DEUTERANOPIA(0.367322, 0.860646, -0.227968, 0.280085, 0.672501, 0.047413, -0.011820, 0.042940, 0.968881),
        TRITANOPIA(1.255528, -0.076749, -0.178779, -0.078411, 0.930809, 0.147602, 0.004733, 0.691367, 0.303900);

        @SuppressWarnings("ImmutableEnumChecker") // never written to
        private final double[] matrix;

        Vision(double... matrix) {
            this.matrix = matrix;
        }

        double[] see(double[] rgb) {
            double[] seen = new double[3];
            for (int i = 0; i < 3; i++) {
                double sum = 0;
                for (int j = 0; j < 3; j++) {
                    sum += matrix[3 * i + j] * rgb[j];
                }
                seen[i] = Math.min(Math.max(sum, 0), 1);
            }
            return seen;
        }
    }

    @Test
    void the_paints_stay_apart_in_grey() {
        double[] lightness = Arrays.stream(ClothPaint.values())
                .mapToDouble(paint -> lab(linear(paint.colour()))[0])
                .sorted()
                .toArray();
        for (int i = 1; i < lightness.length; i++) {
            assertThat(lightness[i] - lightness[i - 1]).isGreaterThanOrEqualTo(8);
        }
    }

    @ParameterizedTest
    @EnumSource
    void the_paints_stay_apart_for_every_kind_of_colour_vision(Vision vision) {
        List<ClothPaint> paints = List.of(ClothPaint.values());
        for (int i = 0; i < paints.size(); i++) {
            for (int j = i + 1; j < paints.size(); j++) {
                double[] a = lab(vision.see(linear(paints.get(i).colour())));
                double[] b = lab(vision.see(linear(paints.get(j).colour())));
                double difference =
                        Math.sqrt(Math.pow(a[0] - b[0], 2) + Math.pow(a[1] - b[1], 2) + Math.pow(a[2] - b[2], 2));
                assertThat(difference)
                        .as("%s and %s by %s", paints.get(i), paints.get(j), vision)
                        .isGreaterThanOrEqualTo(12);
            }
        }
    }

    @Test
    void a_seam_line_shows_on_every_paint() {
        double ink = lab(linear(Colours.INK))[0];
        for (ClothPaint paint : ClothPaint.values()) {
            assertThat(lab(linear(paint.colour()))[0] - ink)
                    .as(paint.toString())
                    .isGreaterThan(25);
        }
    }

    @Test
    void before_is_lighter_than_after_and_still_shows_on_paper() {
        double before = lab(linear(Colours.BEFORE))[0];
        assertThat(before).isBetween(lab(linear(Colours.INK))[0] + 40, lab(linear(Colours.PAPER))[0] - 25);
    }

    @Test
    void every_paint_but_the_plain_one_has_a_texture_too() {
        assertThat(ClothPaint.values())
                .filteredOn(paint -> !paint.paint().startsWith("url(#"))
                .containsExactly(ClothPaint.PLAIN);
    }

    private static double[] linear(String colour) {
        double[] rgb = new double[3];
        for (int i = 0; i < 3; i++) {
            double v = Integer.parseInt(colour.substring(1 + 2 * i, 3 + 2 * i), 16) / 255.0;
            rgb[i] = v <= 0.04045 ? v / 12.92 : Math.pow((v + 0.055) / 1.055, 2.4);
        }
        return rgb;
    }

    private static double[] lab(double[] rgb) {
        double x = (0.4124564 * rgb[0] + 0.3575761 * rgb[1] + 0.1804375 * rgb[2]) / 0.95047;
        double y = 0.2126729 * rgb[0] + 0.7151522 * rgb[1] + 0.0721750 * rgb[2];
        double z = (0.0193339 * rgb[0] + 0.1191920 * rgb[1] + 0.9503041 * rgb[2]) / 1.08883;
        return new double[] {116 * f(y) - 16, 500 * (f(x) - f(y)), 200 * (f(y) - f(z))};
    }

    private static double f(double t) {
        return t > 216.0 / 24389 ? Math.cbrt(t) : (24389.0 / 27 * t + 16) / 116;
    }
}
