package org.oaktag.adjustments;

import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.oaktag.PatternException;
import org.oaktag.adjust.Reshaped;
import org.oaktag.adjust.Step;
import org.oaktag.blocks.ShoulderStrip;
import org.oaktag.blocks.TopEdges;
import org.oaktag.blocks.TopNames;
import org.oaktag.blocks.TopPieces;
import org.oaktag.garment.Amount;
import org.oaktag.garment.Dimension;
import org.oaktag.garment.Garment;
import org.oaktag.garment.Name;
import org.oaktag.garment.Note;
import org.oaktag.garment.Piece;
import org.oaktag.garment.WalkedSeam;
import org.oaktag.geometry.Path;
import org.oaktag.measure.Length;

/**
 * Moves the shoulder seam forward: a strip of the front along the seam is cut off and put to the back, so that neckline
 * and armhole keep their shape and length on the whole. On the sleeve the shoulder point moves forward along the cap by
 * as much as the front armhole loses, so that its notch still meets the seam.
 *
 * <pre>{@code
 * Garment forward = block.adjust(moveShoulderForward(mm(15)));
 * forward.finished(NECKLINE_GIRTH).minus(block.finished(NECKLINE_GIRTH)).text();   // = 0.0 mm
 * }</pre>
 *
 * @param forward how far, square to the seam; negative to move it back
 */
record MoveShoulderSeam(Length forward) implements Step {
    /** Refuses null. */
    public MoveShoulderSeam {
        Objects.requireNonNull(forward, "forward");
    }

    @Override
    public String name() {
        return forward.mm() < 0 ? "move the shoulder seam back" : "move the shoulder seam forward";
    }

    @Override
    public List<Amount> amounts() {
        return List.of(Amount.of("square to the seam", forward));
    }

    @Override
    public Reshaped reshape(Garment garment) {
        if (forward.mm() == 0) {
            return Reshaped.of(garment);
        }
        boolean ahead = forward.mm() > 0;
        Piece giver = half(garment, ahead ? TopNames.FRONT : TopNames.BACK);
        Piece taker = half(garment, ahead ? TopNames.BACK : TopNames.FRONT);
        checkEqual(giver, taker);
        ShoulderStrip strip = ShoulderStrip.of(giver, Math.abs(forward.mm()));
        Piece left = strip.left();
        Piece grown = strip.putTo(taker);
        Garment moved = garment.withPiece(left).withPiece(grown);
        if (garment.hasPiece(TopNames.SLEEVE)) {
            Piece sleeve = TopPieces.sleeve(garment, TopNames.SLEEVE, TopEdges.CAP_BACK, TopEdges.CAP_FRONT);
            moved = moved.withPiece(sleeve(sleeve, strip.alongArmhole(), ahead));
        }
        Note rule = Note.rule("the " + giver.name() + " loses "
                + Length.mm(strip.alongNeckline()).text() + " of its neckline and "
                + Length.mm(strip.alongArmhole()).text() + " of its armhole, the " + taker.name()
                + " gains as much: the whole neckline stays "
                + moved.finished(TopNames.NECKLINE_GIRTH).text() + ", the armhole "
                + moved.finished(TopNames.ARMHOLE_GIRTH).text()
                + "; the shoulder point of the sleeve moves "
                + (ahead ? "forward" : "back") + " along the cap by the same");
        Reshaped done = new Reshaped(moved, List.of(rule), List.of(dimension(giver, left), dimension(taker, grown)));
        return FairLines.told(garment, done);
    }

    private static Piece half(Garment garment, Name name) {
        TopPieces.withArmhole(garment, name);
        return TopPieces.half(garment, name, TopEdges.NECKLINE, TopEdges.SHOULDER);
    }

    private Dimension dimension(Piece before, Piece after) {
        return new Dimension(
                before.name(),
                before.path(TopEdges.SHOULDER).end(),
                after.path(TopEdges.SHOULDER).end(),
                Length.mm(Math.abs(forward.mm())).text());
    }

    private static Piece sleeve(Piece sleeve, double along, boolean ahead) {
        Path front = sleeve.path(TopEdges.CAP_FRONT);
        Path back = sleeve.path(TopEdges.CAP_BACK);
        Name longest = ahead ? TopEdges.CAP_FRONT : TopEdges.CAP_BACK;
        if (along >= sleeve.path(longest).length()) {
            throw PatternException.of(
                    "sleeve cap",
                    "must be longer on its " + longest + " than the armhole that moves, "
                            + Length.mm(along).text(),
                    sleeve.edge(longest).length().text(),
                    "fit the cap to the armhole first");
        }
        Path.Split split = ahead ? front.splitAt(along) : back.splitAt(back.length() - along);
        return sleeve.redrawn(
                ahead
                        ? Map.of(TopEdges.CAP_BACK, back.then(split.before()), TopEdges.CAP_FRONT, split.after())
                        : Map.of(
                                TopEdges.CAP_BACK,
                                split.before(),
                                TopEdges.CAP_FRONT,
                                split.after().then(front)));
    }

    private static void checkEqual(Piece giver, Piece taker) {
        Length a = giver.edge(TopEdges.SHOULDER).length();
        Length b = taker.edge(TopEdges.SHOULDER).length();
        if (!a.isCloseTo(b, WalkedSeam.TOLERANCE)) {
            throw PatternException.of(
                    "shoulder seam",
                    "must be of one length on front and back to be moved, " + a.text() + " on the " + giver.name(),
                    b.text() + " on the " + taker.name(),
                    "adjust both shoulders by the same amount first");
        }
    }
}
