package org.oaktag.blocks;

import java.util.Objects;
import java.util.Optional;
import org.oaktag.body.BodyMeasure;
import org.oaktag.garment.Garment;
import org.oaktag.garment.Name;
import org.oaktag.garment.Piece;
import org.oaktag.geometry.Path;
import org.oaktag.geometry.Point;
import org.oaktag.measure.Length;

/**
 * How high the cap of a sleeve set in is beside its armhole, and the band in which it should be. Immutable.
 *
 * <pre>{@code
 * CapShare cap = CapShare.of(block).orElseThrow();
 * cap.isUsual();   // = true
 * }</pre>
 *
 * @param height the height of the cap, from its underarm line to its top
 * @param depth the depth of the armhole: the mean of both shoulder points above the underarm points
 * @param band the band of its kind of sleeve
 */
public record CapShare(Length height, Length depth, CapBand band) {

    /** Refuses null. */
    public CapShare {
        Objects.requireNonNull(height, "height");
        Objects.requireNonNull(depth, "depth");
        Objects.requireNonNull(band, "band");
    }

    /** Returns the share of a top with a sleeve set in and both armholes whole; empty for any other. */
    public static Optional<CapShare> of(Garment garment) {
        boolean setIn =
                TopBody.HALVES.stream().allMatch(name -> has(garment, name, TopEdges.SHOULDER, TopEdges.ARMHOLE))
                        && has(garment, TopNames.SLEEVE, TopEdges.CAP_FRONT, TopEdges.CAP_BACK)
                        && TopBody.HALVES.stream().allMatch(name -> isUpright(garment, name));
        return setIn
                ? Optional.of(
                        of(garment, SleeveCap.of(garment.piece(TopNames.SLEEVE)).height()))
                : Optional.empty();
    }

    /** Returns the share that a cap of another height would be, where front and back have their armholes. */
    public static CapShare of(Garment garment, Length height) {
        double depth = (depth(garment.piece(TopNames.FRONT)) + depth(garment.piece(TopNames.BACK))) / 2;
        return new CapShare(height, Length.mm(depth), CapBand.dropped(drop(garment)));
    }

    private static boolean has(Garment garment, Name name, Name... edges) {
        return garment.findPiece(name)
                .filter(piece -> {
                    for (Name edge : edges) {
                        if (!piece.hasEdge(edge)) {
                            return false;
                        }
                    }
                    return true;
                })
                .isPresent();
    }

    /** Tells whether a half lies as it was drafted, its shoulder above its underarm point, and was not turned over. */
    private static boolean isUpright(Garment garment, Name name) {
        return depth(garment.piece(name)) > 0;
    }

    private static double depth(Piece half) {
        Path armhole = half.path(TopEdges.ARMHOLE);
        return armhole.end().y() - armhole.start().y();
    }

    /** How far past the body's shoulder point the shoulder ends, in millimetres; 0 where the body is not known. */
    private static double drop(Garment garment) {
        Optional<Length> neck = measure(garment, BodyMeasure.NECK_BASE_GIRTH);
        Optional<Length> shoulder = measure(garment, BodyMeasure.SHOULDER_LENGTH);
        if (neck.isEmpty() || shoulder.isEmpty()) {
            return 0;
        }
        Point sideNeck = NeckShape.sideNeck(neck.get());
        Point end = garment.piece(TopNames.FRONT).path(TopEdges.SHOULDER).end();
        return sideNeck.distanceTo(end) - shoulder.get().mm();
    }

    private static Optional<Length> measure(Garment garment, BodyMeasure measure) {
        return Optional.ofNullable(garment.wearer().measures().get(measure.asName()));
    }

    /** Returns the height of the cap as a share of the armhole's depth. */
    public double share() {
        return height.mm() / depth.mm();
    }

    /** Tells whether the share lies in its band. */
    public boolean isUsual() {
        return band.includes(share());
    }

    /** Returns the height in the band that lies nearest to the one that the cap has. */
    public Length nearestInBand() {
        double share = Math.min(Math.max(share(), band.least()), band.most());
        return Length.mm(share * depth.mm());
    }

    /** Returns the share as a sentence, and what comes of it where it leaves its band. */
    public String text() {
        String fact = "the cap, " + height.text() + " high, is " + CapBand.text(share()) + " of the armhole's depth ("
                + band.text() + " is usual)";
        if (isUsual()) {
            return fact;
        }
        return fact
                + (share() < band.least()
                        ? ": so low a cap folds when the arm hangs"
                        : ": so high a cap binds when the arm is raised");
    }
}
