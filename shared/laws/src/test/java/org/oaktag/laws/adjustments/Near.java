package org.oaktag.laws.adjustments;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.oaktag.garment.Edge;
import org.oaktag.garment.Garment;
import org.oaktag.garment.Piece;
import org.oaktag.geometry.Curve;
import org.oaktag.geometry.Path;

/** Says of two garments that every edge of the one lies on the same edge of the other. */
final class Near {

    private static final double[] PLACES = {0, 0.17, 0.5, 0.83, 1};

    private Near() {}

    static void assertSame(Garment actual, Garment expected, double tolerance) {
        assertThat(actual.pieces()).hasSameSizeAs(expected.pieces());
        for (Piece piece : expected.pieces()) {
            for (Edge edge : piece.edges()) {
                assertSame(
                        piece.name() + "." + edge.name(),
                        actual.piece(piece.name()).path(edge.name()),
                        edge.path(),
                        tolerance);
            }
        }
    }

    static void assertSame(String what, Path actual, Path expected, double tolerance) {
        List<Curve> curves = actual.curves();
        assertThat(curves).as(what).hasSameSizeAs(expected.curves());
        for (int i = 0; i < curves.size(); i++) {
            for (double t : PLACES) {
                assertThat(curves.get(i)
                                .pointAt(t)
                                .distanceTo(expected.curves().get(i).pointAt(t)))
                        .as("%s, curve %d at %s", what, i, t)
                        .isLessThanOrEqualTo(tolerance);
            }
        }
    }
}
