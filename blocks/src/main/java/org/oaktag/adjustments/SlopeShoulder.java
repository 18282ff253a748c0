package org.oaktag.adjustments;

import java.util.List;
import org.oaktag.PatternException;
import org.oaktag.adjust.Reshaped;
import org.oaktag.adjust.Step;
import org.oaktag.garment.Amount;
import org.oaktag.garment.EdgeNames;
import org.oaktag.garment.Garment;
import org.oaktag.garment.Piece;
import org.oaktag.geometry.Path;
import org.oaktag.geometry.Vector;
import org.oaktag.measure.Length;

/**
 * Squares or slopes the shoulders by so much at the shoulder point: front and back alike turn about their side neck
 * points, until their outer ends lie that much lower, and keep their length; neckline and armhole stay square to them.
 * The sleeve stays, so that its cap has to be refitted.
 *
 * @param down how far down, straight; negative to square them
 */
public record SlopeShoulder(Length down) implements Step {

    @Override
    public String name() {
        return down.mm() < 0 ? "square the shoulder" : "slope the shoulder";
    }

    @Override
    public List<Amount> amounts() {
        return List.of(Amount.of("down at the shoulder point", down));
    }

    @Override
    public Reshaped reshape(Garment garment) {
        return SlopedShoulders.turned(garment, this::turn, down.text());
    }

    private double turn(Piece piece) {
        Path shoulder = piece.path(EdgeNames.SHOULDER);
        Vector chord = shoulder.end().minus(shoulder.start());
        double level = (chord.y() + down.mm()) / chord.length();
        if (Math.abs(level) > 1) {
            throw PatternException.of(
                    "shoulder of the " + piece.name(),
                    "is " + Length.mm(chord.length()).text() + " long and cannot fall by more",
                    Length.mm(chord.y() + down.mm()).text(),
                    "");
        }
        return Math.asin(level) - chord.angle();
    }
}
