package org.oaktag.export.layout;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.oaktag.export.drawing.Box;
import org.oaktag.geometry.Bounds;
import org.oaktag.geometry.Outline;
import org.oaktag.geometry.Path;
import org.oaktag.geometry.Point;

class LabelPlacerTest {

    private static final Outline SQUARE = Outline.of(
            Path.polyline(Point.of(0, 0), Point.of(100, 0), Point.of(100, 100), Point.of(0, 100), Point.of(0, 0)));

    @Test
    void labels_fill_a_region_without_touching_until_there_is_no_room() {
        LabelPlacer placer = LabelPlacer.inside(SQUARE);
        Path diagonal = Path.polyline(Point.of(0, 0), Point.of(100, 100));
        placer.avoid(diagonal);
        List<Box> placed = new ArrayList<>();
        for (int i = 0; i < 150; i++) {
            placer.nearest(Point.of(50, 50), SQUARE.bounds(), 17, 5, 0).ifPresent(placed::add);
        }
        assertThat(placed).hasSizeBetween(30, 149);
        for (int i = 0; i < placed.size(); i++) {
            Box box = placed.get(i);
            assertThat(box.meets(Point.of(0, 0), Point.of(100, 100))).isFalse();
            assertThat(box.corners()).allMatch(SQUARE::contains);
            for (Box other : placed.subList(i + 1, placed.size())) {
                assertThat(box.expanded(0.4).overlaps(other.expanded(0.4))).isFalse();
            }
        }
    }

    @Test
    void the_nearest_place_is_taken_first() {
        LabelPlacer placer = LabelPlacer.inside(SQUARE);
        assertThat(placer.nearest(Point.of(30, 40), SQUARE.bounds(), 10, 4, 0).map(Box::center))
                .contains(Point.of(30, 40));
    }

    @Test
    void a_label_that_is_larger_than_its_region_finds_no_place() {
        assertThat(LabelPlacer.inside(SQUARE).nearest(Point.of(50, 50), SQUARE.bounds(), 99, 4, 0))
                .isEmpty();
    }

    @Test
    void of_several_places_the_first_free_one_is_taken() {
        LabelPlacer placer = LabelPlacer.on(new Bounds(0, 0, 100, 100));
        placer.avoid(new Box(Point.of(20, 20), 10, 4, 0));
        Box taken = new Box(Point.of(22, 21), 10, 4, 0);
        Box offThePage = new Box(Point.of(98, 50), 10, 4, 0);
        Box free = new Box(Point.of(50, 50), 10, 4, 0);
        assertThat(placer.first(Stream.of(taken, offThePage, free))).contains(free);
        assertThat(placer.first(Stream.of(free))).isEqualTo(Optional.empty());
    }

    @Test
    void a_curve_is_kept_clear_of_along_its_whole_bend() {
        Path arc = Path.from(Point.of(10, 90))
                .curveTo(Point.of(10, -20), Point.of(90, -20), Point.of(90, 90))
                .build();
        LabelPlacer placer = LabelPlacer.inside(SQUARE);
        placer.avoid(arc);
        for (int i = 0; i < 15; i++) {
            Optional<Box> box = placer.nearest(Point.of(50, 8), SQUARE.bounds(), 12, 4, 0.4);
            if (box.isPresent()) {
                for (int k = 0; k <= 1_000; k++) {
                    Point point = arc.pointAt(arc.length() * k / 1_000);
                    assertThat(box.get().meets(point, point)).isFalse();
                }
            }
        }
    }
}
