package org.oaktag.garment;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import org.oaktag.geometry.Curvature;
import org.oaktag.geometry.Curvature.Bend;
import org.oaktag.geometry.Curvature.Join;
import org.oaktag.geometry.Line;
import org.oaktag.geometry.Path;
import org.oaktag.measure.Angle;

/**
 * How fair an edge is: the figures by which a cutter judges a line that a curve ruler was laid to. It says what the
 * line does, not what it should do: a cap bends both ways, an armhole must not. Immutable.
 *
 * <pre>{@code
 * Fairness armhole = Fairness.of(block.piece(FRONT), ARMHOLE);
 * armhole.changes();       // = 0
 * armhole.leastRadius();   // in mm
 * }</pre>
 *
 * @param edge the edge
 * @param leastRadius the radius where it bends most, in millimetres; infinite where it is straight
 * @param at how far along the edge that is, in millimetres
 * @param changes how often it changes the way it bends; a swing of less than half a degree is no change
 * @param greatestCorner the greatest turn at a joint of its curves; 0 degrees where it runs on smoothly
 */
public record Fairness(EdgeRef edge, double leastRadius, double at, int changes, Angle greatestCorner) {

    /** The eye does not see a line swing by less. */
    private static final double SWING = Math.toRadians(0.5);

    /** Refuses null. */
    public Fairness {
        Objects.requireNonNull(edge, "edge");
        Objects.requireNonNull(greatestCorner, "greatestCorner");
    }

    /**
     * Measures an edge of a piece.
     *
     * @throws org.oaktag.PatternException if the piece has no such edge
     */
    public static Fairness of(Piece piece, Name edge) {
        return of(EdgeRef.of(piece.name(), edge), piece.path(edge));
    }

    /** Measures every edge of a piece that is not one straight line. */
    public static List<Fairness> of(Piece piece) {
        List<Fairness> all = new ArrayList<>();
        for (Edge edge : piece.edges()) {
            if (!isStraight(edge.path())) {
                all.add(of(piece, edge.name()));
            }
        }
        return all;
    }

    private static Fairness of(EdgeRef edge, Path path) {
        Curvature curvature = Curvature.of(path);
        Bend sharpest = curvature.leastRadius();
        double corner = 0;
        for (Join join : curvature.joins()) {
            corner = Math.max(corner, Math.abs(join.turn()));
        }
        return new Fairness(
                edge, sharpest.radius(), sharpest.distanceAlong(), curvature.signChanges(SWING), Angle.radians(corner));
    }

    private static boolean isStraight(Path path) {
        return path.curves().size() == 1 && path.curves().get(0) instanceof Line;
    }

    /** Returns the figures as a sentence: {@code "front.armhole: least radius 38.2 mm, bends one way"}. */
    public String text() {
        String bends = switch (changes) {
            case 0 -> "bends one way";
            case 1 -> "changes the way it bends once";
            default -> "changes the way it bends " + changes + " times";
        };
        String radius = Double.isInfinite(leastRadius)
                ? "straight"
                : String.format(Locale.ROOT, "least radius %.1f mm, %s", leastRadius, bends);
        return edge + ": " + radius
                + (greatestCorner.radians() > SWING ? ", with a corner of " + greatestCorner.text() : "");
    }

    @Override
    public String toString() {
        return text();
    }
}
