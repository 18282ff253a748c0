package org.oaktag.examples.embed.slider;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.awt.Color;
import java.awt.geom.FlatteningPathIterator;
import java.awt.geom.PathIterator;
import java.awt.image.BufferedImage;
import org.junit.jupiter.api.Test;
import org.oaktag.garment.Garment;
import org.oaktag.garment.Piece;

class DragArmholeTest {
    private final DragArmhole drag = new DragArmhole();

    @Test
    void the_cap_follows_the_armhole_at_every_place_of_the_slider() {
        for (int lowered = 0; lowered <= 40; lowered++) {
            assertThat(drag.at(lowered).walkSeams().isTrue())
                    .as("at %d", lowered)
                    .isTrue();
        }
    }

    @Test
    void the_shapes_handed_to_java_2d_enclose_the_area_of_the_pieces() {
        Garment garment = drag.at(20);
        for (Piece piece : garment.pieces()) {
            // java.awt.geom flattens on its own; the area of a polygon by the shoelace formula.
            PathIterator flat = new FlatteningPathIterator(Shapes.of(piece).getPathIterator(null), 1e-3, 20);
            double[] at = new double[6];
            double x = 0;
            double y = 0;
            double twice = 0;
            for (; !flat.isDone(); flat.next()) {
                if (flat.currentSegment(at) == PathIterator.SEG_LINETO) {
                    twice += x * at[1] - at[0] * y;
                }
                x = at[0];
                y = at[1];
            }
            assertThat(Math.abs(twice) / 2).isCloseTo(piece.outline().area(), within(1.0));
        }
    }

    @Test
    void a_frame_shows_pieces_on_paper_and_changes_as_the_slider_moves() {
        BufferedImage before = drag.frame(5);
        BufferedImage after = drag.frame(30);
        assertThat(count(before, new Color(0xE9DFC8))).isGreaterThan(before.getWidth() * before.getHeight() / 10);
        int moved = 0;
        for (int y = 0; y < before.getHeight(); y++) {
            for (int x = 0; x < before.getWidth(); x++) {
                moved += before.getRGB(x, y) == after.getRGB(x, y) ? 0 : 1;
            }
        }
        assertThat(moved).isGreaterThan(1000);
    }

    @Test
    void the_times_are_told_for_the_garment_and_for_the_frame() {
        assertThat(drag.measured(3))
                .containsPattern("garment alone  median \\d+\\.\\d\\d ms")
                .contains("\nwhole frame");
    }

    private static int count(BufferedImage image, Color colour) {
        int count = 0;
        for (int y = 0; y < image.getHeight(); y++) {
            for (int x = 0; x < image.getWidth(); x++) {
                count += image.getRGB(x, y) == colour.getRGB() ? 1 : 0;
            }
        }
        return count;
    }
}
