package org.oaktag.laws.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.locationtech.jts.algorithm.distance.DiscreteHausdorffDistance;
import org.locationtech.jts.geom.LineString;
import org.oaktag.geometry.Distances;
import org.oaktag.geometry.Path;
import org.oaktag.testkit.curves.Scribbles;

/** Distances of two paths, beside those of fine chords in JTS. */
class DistanceProperties {
    private static final int CHORDS = 200;

    /** Chords of curves up to 450 mm long are off by up to some hundredths of a millimetre. */
    private static final double CHORD_ERROR = 0.1;

    @Provide
    Arbitrary<Scribbles.Pair> pairs() {
        return Scribbles.pairs();
    }

    @Property(tries = 150)
    void least_and_hausdorff_distances_are_those_of_fine_chords(@ForAll("pairs") Scribbles.Pair pair) {
        Path first = pair.first().path();
        Path second = pair.second().path();
        LineString one = Flattened.line(first, CHORDS);
        LineString other = Flattened.line(second, CHORDS);
        assertThat(Distances.least(first, second, 1e-6).distance()).isCloseTo(one.distance(other), within(CHORD_ERROR));
        double corners = DiscreteHausdorffDistance.distance(one, other);
        assertThat(Distances.hausdorff(first, second, 1e-6).distance()).isGreaterThan(corners - CHORD_ERROR);
    }

    @Property(tries = 300)
    void distances_are_ordered_and_the_same_from_both_sides(@ForAll("pairs") Scribbles.Pair pair) {
        Path first = pair.first().path();
        Path second = pair.second().path();
        double least = Distances.least(first, second, 1e-6).distance();
        double hausdorff = Distances.hausdorff(first, second, 1e-6).distance();
        double greatest = Distances.greatest(first, second, 1e-3).distance();
        assertThat(least).isLessThanOrEqualTo(hausdorff + 1e-6);
        assertThat(hausdorff).isLessThanOrEqualTo(greatest + 1e-3);
        assertThat(Distances.least(second, first, 1e-6).distance()).isCloseTo(least, within(1e-6));
        assertThat(Distances.hausdorff(second, first, 1e-6).distance()).isCloseTo(hausdorff, within(1e-6));
        assertThat(Distances.greatest(second, first, 1e-3).distance()).isCloseTo(greatest, within(1e-3));
    }
}
