package org.oaktag.adjust;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.oaktag.PatternException;
import org.oaktag.garment.Amount;
import org.oaktag.garment.Dimension;
import org.oaktag.garment.Edge;
import org.oaktag.garment.End;
import org.oaktag.garment.Garment;
import org.oaktag.garment.Name;
import org.oaktag.garment.Note;
import org.oaktag.garment.Piece;
import org.oaktag.garment.Seam;
import org.oaktag.garment.SeamSide;
import org.oaktag.geometry.Path;
import org.oaktag.geometry.Vector;
import org.oaktag.measure.Angle;
import org.oaktag.measure.Length;

/**
 * Trues the two corners at one end of a seam, so that the edges beside it run on smoothly across the seam when it is
 * closed. Each of the two is turned by half of what is missing to 180 degrees, within reach of the corner; the corners
 * themselves and the sewn edges stay as they are.
 *
 * <pre>{@code
 * Garment trued = block.adjust(trueCorner(SHOULDER_SEAM, End.START, mm(60)));
 * }</pre>
 *
 * @param seam the seam
 * @param end the end of the seam
 * @param reach how much of the edge beside the seam is redrawn on either side
 */
record TrueCorner(Name seam, End end, Length reach) implements Step {

    private static final double SMOOTH = 1e-12;
    private static final double MOST = Math.toRadians(60);

    /** Refuses null. */
    public TrueCorner {
        Objects.requireNonNull(seam, "seam");
        Objects.requireNonNull(end, "end");
        Objects.requireNonNull(reach, "reach");
    }

    @Override
    public String name() {
        return "true the corner at the " + (end == End.START ? "start" : "end") + " of seam '" + seam + "'";
    }

    @Override
    public List<Amount> amounts() {
        return List.of(Amount.of("reach", reach));
    }

    /**
     * {@inheritDoc}
     *
     * @throws PatternException if the garment has no such seam, more than 60 degrees are missing, or the reach is not
     *     above zero and inside the edges beside the seam
     */
    @Override
    public Reshaped reshape(Garment garment) {
        Seam found = garment.seam(seam);
        SeamSide.Run a = found.a().runAt(end);
        SeamSide.Run b = found.b().runAt(end);
        Angle before = Angle.degrees(angle(garment, a) + angle(garment, b));
        double missing = Math.PI - before.radians();
        if (Math.abs(missing) > MOST) {
            throw PatternException.of(
                    name(),
                    "must lack no more than " + Angle.radians(MOST).text() + " to 180°",
                    "angles of " + before.text() + " in all",
                    "redraw one of the edges first");
        }
        Garment trued = garment;
        List<Dimension> dimensions = new ArrayList<>();
        if (Math.abs(missing) > SMOOTH) {
            for (SeamSide.Run run : List.of(a, b)) {
                Piece piece = trued(trued.piece(run.edge().piece()), run, missing / 2);
                trued = trued.withPiece(piece);
                dimensions.add(new Dimension(
                        piece.name(),
                        piece.corner(run.edge().edge(), run.cornerAt(end)),
                        piece.corner(run.edge().edge(), run.cornerAt(end)),
                        Angle.radians(missing / 2).text()));
            }
        }
        Note rule = Note.rule(
                "the corners make " + before.text() + " when the seam is closed; each is turned by half of the "
                        + Angle.radians(missing).text() + " missing to 180°");
        return new Reshaped(trued, List.of(rule), dimensions);
    }

    private double angle(Garment garment, SeamSide.Run run) {
        return garment.piece(run.edge().piece())
                .cornerAngle(run.edge().edge(), run.cornerAt(end))
                .degrees();
    }

    private Piece trued(Piece piece, SeamSide.Run run, double wider) {
        boolean arrives = run.cornerAt(end) == End.START;
        Edge beside = arrives
                ? piece.before(run.edge().edge())
                : piece.after(run.edge().edge());
        double most = beside.path().length() / 2;
        if (!(reach.mm() > 0) || reach.mm() > most) {
            throw PatternException.of(
                    name(),
                    "must reach above 0 mm and up to half of edge '" + beside.name() + "' of '" + piece.name() + "', "
                            + Length.mm(most).text(),
                    reach.text(),
                    "");
        }
        // Turned this way at its end, an edge that arrives at the corner opens it, as one that leaves does mirrored.
        Path turned = arrives
                ? turned(beside.path(), wider)
                : turned(beside.path().reversed(), -wider).reversed();
        Piece trued = Redrawn.of(piece, Map.of(beside.name(), turned));
        StraightFold.require(trued);
        return trued;
    }

    private Path turned(Path path, double by) {
        Vector direction = path.endDirection();
        Vector change = direction.rotated(by).minus(direction).times(reach.mm());
        return Displaced.end(path, reach.mm(), Displaced.Profile.TURN, change);
    }
}
