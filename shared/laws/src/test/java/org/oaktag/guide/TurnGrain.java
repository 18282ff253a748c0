package org.oaktag.guide;

import java.util.List;
import org.oaktag.adjust.Range;
import org.oaktag.adjust.Reshaped;
import org.oaktag.adjust.Step;
import org.oaktag.garment.Amount;
import org.oaktag.garment.Garment;
import org.oaktag.garment.Grainline;
import org.oaktag.garment.Name;
import org.oaktag.garment.Note;
import org.oaktag.garment.Piece;
import org.oaktag.geometry.Point;
import org.oaktag.geometry.Transform;
import org.oaktag.measure.Angle;

/**
 * Turns the grainline of a piece about its upper end, clockwise on paper where the angle is positive.
 *
 * @param name the step as a phrase
 * @param piece the piece whose grainline is turned
 * @param by the angle, at most a right angle either way: more is the same grain, named the other way round
 */
record TurnGrain(String name, Name piece, Angle by) implements Step {
    TurnGrain {
        Range.check("turn of the grainline of '" + piece + "'", "must be", by, Angle.degrees(-90), Angle.degrees(90));
    }

    static TurnGrain turnGrain(Name piece, Angle by) {
        return new TurnGrain("turn the grain of the " + piece, piece, by);
    }

    @Override
    public List<Amount> amounts() {
        return List.of(Amount.of("by", by.text()));
    }

    @Override
    public Reshaped reshape(Garment garment) {
        Piece old = garment.piece(piece);
        Point top = old.grainline().top();
        Transform turn = Transform.rotation(by.radians(), top);
        Point bottom = turn.apply(old.grainline().bottom());
        Piece turned = old.withGrainline(new Grainline(top, bottom));
        Note hang = Note.caution("let the " + piece + " hang before it is hemmed: off the grain it grows longer");
        return Reshaped.of(garment.withPiece(turned), hang);
    }
}
