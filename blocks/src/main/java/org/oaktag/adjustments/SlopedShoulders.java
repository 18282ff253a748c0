package org.oaktag.adjustments;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.oaktag.PatternException;
import org.oaktag.adjust.Reshaped;
import org.oaktag.blocks.ShoulderSeam;
import org.oaktag.blocks.TopArmhole;
import org.oaktag.blocks.TopBody;
import org.oaktag.blocks.TopEdges;
import org.oaktag.blocks.TopNames;
import org.oaktag.blocks.TopNeckline;
import org.oaktag.blocks.TopPieces;
import org.oaktag.garment.Dimension;
import org.oaktag.garment.Garment;
import org.oaktag.garment.Name;
import org.oaktag.garment.Note;
import org.oaktag.garment.Piece;
import org.oaktag.geometry.Path;
import org.oaktag.geometry.Vector;
import org.oaktag.measure.Angle;

/**
 * The shoulders of front and back turned about their side neck points, and the armholes and necklines that meet them.
 */
final class SlopedShoulders {

    /** How little and how much a shoulder may fall. */
    static final Angle LEAST = Angle.degrees(0);

    static final Angle MOST = Angle.degrees(45);

    /** By how much the shoulder of a piece is to be turned downwards, in radians. */
    interface Turn {
        double of(Piece piece);
    }

    private SlopedShoulders() {}

    /**
     * Turns both shoulders, after the step has checked that none rises outwards or falls by more than 45 degrees.
     *
     * @throws PatternException if a half has no shoulder between neckline and armhole
     */
    static Reshaped turned(Garment garment, Turn turn, String amount) {
        List<Dimension> dimensions = new ArrayList<>();
        Garment turned = garment;
        for (Name name : TopBody.HALVES) {
            Piece piece = TopPieces.half(garment, name, TopEdges.NECKLINE, TopEdges.SHOULDER);
            TopPieces.withArmhole(garment, name);
            Path old = piece.path(TopEdges.SHOULDER);
            Path shoulder = ShoulderSeam.turned(old, turn.of(piece));
            dimensions.add(new Dimension(name, old.end(), shoulder.end(), amount));
            turned = turned.withPiece(piece.redrawn(Map.of(
                    TopEdges.NECKLINE,
                    TopNeckline.path(piece, piece.path(TopEdges.NECKLINE).start(), shoulder),
                    TopEdges.SHOULDER,
                    shoulder,
                    TopEdges.ARMHOLE,
                    TopArmhole.withShoulder(piece, shoulder))));
        }
        Note rule = Note.rule("the shoulders turn about the side neck points by " + amount + ", from "
                + slope(garment.piece(TopNames.FRONT).path(TopEdges.SHOULDER)).text() + " to "
                + slope(turned.piece(TopNames.FRONT).path(TopEdges.SHOULDER)).text()
                + ", and keep their length; the armhole changes by "
                + turned.finished(TopNames.ARMHOLE_GIRTH)
                        .minus(garment.finished(TopNames.ARMHOLE_GIRTH))
                        .text());
        return new Reshaped(turned, List.of(rule), dimensions);
    }

    /** Returns how far a shoulder falls, from its start straight to its end. */
    static Angle slope(Path shoulder) {
        Vector chord = shoulder.end().minus(shoulder.start());
        return Angle.radians(chord.angle());
    }
}
