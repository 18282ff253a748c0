package org.oaktag.testkit.laws;

import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.Map;
import org.oaktag.garment.Edge;
import org.oaktag.garment.FinishedMeasure;
import org.oaktag.garment.Garment;
import org.oaktag.garment.Piece;
import org.oaktag.garment.Quantity;
import org.oaktag.garment.Seam;
import org.oaktag.garment.SeamSide;
import org.oaktag.geometry.Curve;
import org.oaktag.geometry.Line;
import org.oaktag.geometry.Path;

/**
 * Measures a garment anew by Simpson's rule on the derivative of its curves: another way than the library's own, and
 * from nothing that it keeps. What is measured goes by the words that the history has for it.
 */
final class Measured {

    private static final int STEPS = 512;

    /** A step redraws few edges; what was measured once is the same line still. */
    private final IdentityHashMap<Path, Double> known = new IdentityHashMap<>();

    /** Returns every edge length, finished measure and seam error of a garment, in mm. */
    Map<String, Double> all(Garment garment) {
        Map<String, Double> found = new LinkedHashMap<>();
        for (Piece piece : garment.pieces()) {
            for (Edge edge : piece.edges()) {
                found.put(
                        hyphened(piece.name().value()) + "."
                                + hyphened(edge.name().value()),
                        length(edge.path()));
            }
        }
        for (FinishedMeasure measure : garment.measures()) {
            double sum = 0;
            for (FinishedMeasure.Term term : measure.terms()) {
                sum += term.times() * quantity(garment, term.quantity());
            }
            if (!Double.isNaN(sum)) {
                found.put(measure.name().value(), sum);
            }
        }
        for (Seam seam : garment.seams()) {
            double a = length(garment, seam.a());
            double difference = length(garment, seam.b()) - a;
            found.put(
                    "seam " + seam.name().value() + ", error",
                    difference - seam.rule().expectedDifference(a, difference));
        }
        return found;
    }

    private double quantity(Garment garment, Quantity quantity) {
        if (quantity instanceof Quantity.Across across) {
            return BisectedWidth.of(garment, across);
        }
        return quantity instanceof Quantity.EdgeLength edge
                ? length(garment.edge(edge.edge()).path())
                : quantity.of(garment);
    }

    private double length(Garment garment, SeamSide side) {
        double sum = 0;
        for (SeamSide.Run run : side.runs()) {
            sum += length(garment.edge(run.edge()).path());
        }
        return sum;
    }

    private double length(Path path) {
        return known.computeIfAbsent(path, each -> {
            double sum = 0;
            for (Curve curve : each.curves()) {
                sum += curve instanceof Line line ? line.start().distanceTo(line.end()) : simpson(curve);
            }
            return sum;
        });
    }

    private static double simpson(Curve curve) {
        double sum = curve.derivativeAt(0).length() + curve.derivativeAt(1).length();
        for (int i = 1; i < STEPS; i++) {
            sum += (i % 2 == 1 ? 4 : 2) * curve.derivativeAt((double) i / STEPS).length();
        }
        return sum / (3 * STEPS);
    }

    private static String hyphened(String words) {
        return words.replace(' ', '-');
    }
}
