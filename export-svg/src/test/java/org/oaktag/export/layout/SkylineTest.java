package org.oaktag.export.layout;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.RepeatedTest;
import org.junit.jupiter.api.RepetitionInfo;
import org.junit.jupiter.api.Test;
import org.oaktag.geometry.Bounds;

class SkylineTest {

    private static final double WIDTH = 300;
    private static final double GAP = 5;

    private static List<Bounds> random(long seed) {
        Random random = new Random(seed);
        List<Bounds> sizes = new ArrayList<>();
        for (int i = 0; i < 40; i++) {
            sizes.add(new Bounds(0, 0, 1 + random.nextDouble() * 299, 1 + random.nextDouble() * 200));
        }
        return sizes;
    }

    @RepeatedTest(50)
    void boxes_keep_their_size_and_their_distance_and_stay_on_the_strip(RepetitionInfo info) {
        List<Bounds> sizes = random(info.getCurrentRepetition());
        List<Bounds> places = Skyline.pack(sizes, WIDTH, GAP);
        assertThat(places).hasSameSizeAs(sizes);
        for (int i = 0; i < places.size(); i++) {
            Bounds place = places.get(i);
            assertThat(Math.abs(place.width() - sizes.get(i).width())).isLessThan(1e-9);
            assertThat(Math.abs(place.height() - sizes.get(i).height())).isLessThan(1e-9);
            assertThat(place.minX()).isGreaterThanOrEqualTo(0);
            assertThat(place.minY()).isGreaterThanOrEqualTo(0);
            assertThat(place.maxX()).isLessThanOrEqualTo(WIDTH + 1e-9);
            for (int j = i + 1; j < places.size(); j++) {
                assertThat(place.expanded(GAP / 2 - 1e-6).overlaps(places.get(j).expanded(GAP / 2 - 1e-6)))
                        .isFalse();
            }
        }
    }

    @Test
    void no_paper_is_wasted_on_boxes_that_fit_side_by_side() {
        Bounds third = new Bounds(0, 0, (WIDTH - 2 * GAP) / 3, 70);
        assertThat(Skyline.pack(List.of(third, third, third), WIDTH, GAP))
                .allSatisfy(place -> assertThat(place.minY()).isZero());
    }

    @Test
    void a_box_that_is_too_wide_is_refused() {
        assertThatThrownBy(() -> Skyline.pack(List.of(new Bounds(0, 0, 301, 10)), WIDTH, GAP))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("at most as wide as the strip");
    }
}
