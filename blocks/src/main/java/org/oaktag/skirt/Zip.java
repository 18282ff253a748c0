package org.oaktag.skirt;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.oaktag.PatternException;
import org.oaktag.adjust.Range;
import org.oaktag.adjust.Reshaped;
import org.oaktag.adjust.Step;
import org.oaktag.garment.Amount;
import org.oaktag.garment.Dimension;
import org.oaktag.garment.EdgeFinish;
import org.oaktag.garment.EdgeNames;
import org.oaktag.garment.EdgeRef;
import org.oaktag.garment.End;
import org.oaktag.garment.Garment;
import org.oaktag.garment.Notch;
import org.oaktag.garment.Note;
import org.oaktag.garment.Piece;
import org.oaktag.garment.Quantity;
import org.oaktag.garment.Quantity.Corner;
import org.oaktag.measure.Length;

/**
 * Opens a skirt from its waist down with a zip. A notch marks its lower end, from which the seam is sewn.
 *
 * <pre>{@code
 * skirt.adjust(centreBackSeam()).adjust(zip(mm(180), SkirtOpening.CENTRE_BACK));
 * }</pre>
 *
 * <p>At centre back the part of the edge that the zip takes is one of its own, {@link SkirtFinishNames#ZIP}. The left
 * side is drawn together with the right, which is sewn whole: there only the notch tells.
 *
 * @param length from the seam line of the waist to where the seam begins, 100 mm or more
 * @param at where the skirt opens
 */
record Zip(Length length, SkirtOpening at) implements Step {

    private static final double LEAST = 100;

    /** The least of a seam that is left to be sewn, mm. */
    private static final double LEAST_SEWN = 30;

    /** Refuses null. */
    public Zip {
        Objects.requireNonNull(length, "length");
        Objects.requireNonNull(at, "at");
    }

    @Override
    public String name() {
        return "set a zip at the " + at.text();
    }

    @Override
    public List<Amount> amounts() {
        return List.of(Amount.of("length", length), Amount.of("at", at.text()));
    }

    /**
     * {@inheritDoc}
     *
     * @throws PatternException if there is no such seam, or the zip would end below it; the message says how long it
     *     may be
     */
    @Override
    public Reshaped reshape(Garment garment) {
        Shell.requireFree(garment, "zip", Shell.isFinishedAtWaist(garment), "a waist that is finished");
        Finishing finishing = at == SkirtOpening.CENTRE_BACK ? atBack(garment) : atSide(garment);
        Garment zipped = finishing.check(new SkirtChecks.GettingIn(length)).done();
        Piece back = zipped.piece(SkirtNames.BACK);
        boolean centre = at == SkirtOpening.CENTRE_BACK;
        return new Reshaped(zipped, notes(garment), List.of(dimension(back, centre)));
    }

    private Finishing atBack(Garment garment) {
        Piece back = Shell.of(garment, SkirtNames.BACK);
        if (!Shell.isPair(back) || !back.hasEdge(EdgeNames.CENTRE)) {
            throw PatternException.of(
                    "zip at the centre back",
                    "needs a seam there",
                    "a back that is to be " + back.cut().instruction(),
                    "seam the centre back first, or set it at the left side");
        }
        if (back.hasEdge(SkirtFinishNames.ZIP)) {
            throw PatternException.of("zip at the centre back", "can be set once", "a zip there", "");
        }
        double seam = back.path(EdgeNames.CENTRE).length();
        check(seam);
        Piece zipped = Shell.parted(
                        back,
                        EdgeNames.CENTRE,
                        List.of(EdgeNames.CENTRE, SkirtFinishNames.ZIP),
                        List.of(seam - length.mm()))
                .withFinish(SkirtFinishNames.ZIP, EdgeFinish.FASTENED)
                .withNotch(Notch.paired(SkirtFinishNames.ZIP_END, EdgeNames.CENTRE, End.END, 0));
        return Finishing.of(garment)
                .put(zipped)
                .cornerAt(
                        Corner.at(SkirtNames.BACK, EdgeNames.CENTRE, End.END),
                        Corner.at(SkirtNames.BACK, SkirtFinishNames.ZIP, End.END))
                .lengthAs(
                        EdgeRef.of(SkirtNames.BACK, EdgeNames.CENTRE),
                        Quantity.lengthOf(SkirtNames.BACK, EdgeNames.CENTRE),
                        Quantity.lengthOf(SkirtNames.BACK, SkirtFinishNames.ZIP));
    }

    private Finishing atSide(Garment garment) {
        if (Shell.hasPocketInSide(garment)) {
            throw PatternException.of(
                    "zip at the left side",
                    "needs a side seam without a pocket",
                    "a pocket in it",
                    "set the zip at the centre back");
        }
        Finishing finishing = Finishing.of(garment);
        for (Piece half : List.of(Shell.of(garment, SkirtNames.FRONT), Shell.of(garment, SkirtNames.BACK))) {
            check(half.path(EdgeNames.SIDE).length());
            boolean front = half.name().equals(SkirtNames.FRONT);
            finishing.put(half.withNotch(
                    new Notch(SkirtFinishNames.ZIP_END, EdgeNames.SIDE, End.START, length.mm(), front ? 1 : 2)));
        }
        return finishing;
    }

    private void check(double seam) {
        Range.check(
                "zip at the " + at.text(),
                "in a seam of " + Length.mm(seam).text() + ", of which at least "
                        + Length.mm(LEAST_SEWN).text() + " are sewn below it, it must be as long as",
                length,
                Length.mm(LEAST),
                Length.mm(seam - LEAST_SEWN));
    }

    private List<Note> notes(Garment garment) {
        List<Note> notes = new ArrayList<>();
        garment.findMeasure(SkirtNames.WAIST_GIRTH)
                .flatMap(taken -> taken.length())
                .ifPresent(waist -> notes.add(Note.rule("the waist opens to " + waist.text() + " + 2 x " + length.text()
                        + " = " + waist.plus(length.times(2)).text())));
        if (at == SkirtOpening.LEFT_SIDE) {
            notes.add(Note.rule("the left side seam is sewn from the notch down, the right one from the waist: cut the"
                    + " notch on the left alone"));
        }
        return notes;
    }

    private Dimension dimension(Piece back, boolean centre) {
        return centre
                ? new Dimension(
                        back.name(),
                        back.corner(SkirtFinishNames.ZIP, End.END),
                        back.corner(SkirtFinishNames.ZIP, End.START),
                        "zip " + length.text())
                : new Dimension(
                        back.name(),
                        back.corner(EdgeNames.SIDE, End.START),
                        back.path(EdgeNames.SIDE).pointAt(length.mm()),
                        "zip " + length.text());
    }
}
