package org.oaktag.skirt;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.oaktag.adjust.Range;
import org.oaktag.adjust.Reshaped;
import org.oaktag.adjust.Step;
import org.oaktag.garment.Amount;
import org.oaktag.garment.Dimension;
import org.oaktag.garment.EdgeNames;
import org.oaktag.garment.Garment;
import org.oaktag.garment.Note;
import org.oaktag.garment.Piece;
import org.oaktag.measure.Angle;
import org.oaktag.measure.Length;

/**
 * Flares a skirt at its side seams from the hip down, or pegs it. Front and back get the same, and each side stays as
 * long as it was, so that the hem hangs level; it is drawn anew, square to the side.
 *
 * <pre>{@code
 * Garment skirt = StraightSkirt.BLOCK.draft(mira, SkirtEase.standard(), Cloth.woven("tweed, moss"));
 * skirt.adjust(flareSides(mm(40)));    // 40 mm more on each of the four edges at the hem
 * skirt.adjust(pegSides(mm(20)));
 * }</pre>
 *
 * <p>The side runs straight after a bend below the hip, or bends evenly down to the hem. Whether the wearer can walk in
 * a pegged skirt, the check of the stride says.
 *
 * @param out how far out the hem goes on each of the four edges, square to the side as it runs at the hip; negative to
 *     peg
 * @param curved whether the side bends down to the hem
 */
record FlareSkirt(Length out, boolean curved) implements Step {

    /** The furthest that a side goes out, as a share of its length below the hip. */
    private static final double MOST = 0.6;

    /** The furthest that it goes in, as such a share and as one of the half hem. */
    private static final double MOST_IN = 0.25;

    /** Refuses null. */
    public FlareSkirt {
        Objects.requireNonNull(out, "out");
    }

    @Override
    public String name() {
        return out.mm() < 0 ? "peg the skirt" : "flare the skirt at the sides";
    }

    @Override
    public List<Amount> amounts() {
        return List.of(Amount.of("out at the hem", out), Amount.of("side", curved ? "curved" : "straight"));
    }

    /**
     * {@inheritDoc}
     *
     * @throws org.oaktag.PatternException if a side would go out by more than 0.6 of its length below the hip, or in by
     *     more than a quarter of that or of the half hem
     */
    @Override
    public Reshaped reshape(Garment garment) {
        List<Piece> halves = SkirtBody.halves(garment);
        Range.checkAll("sides", halves, out, FlareSkirt::limits);
        List<SideLine> sides = new ArrayList<>();
        for (Piece half : halves) {
            SideLine side = SkirtBody.side(half);
            sides.add(side.reaching(side.out() + out.mm(), curved));
        }
        SkirtBody.Hemmed hemmed = SkirtBody.withSides(garment, garment, sides);
        List<Note> notes = new ArrayList<>();
        SideLine front = sides.get(0);
        notes.add(Note.rule("each side goes " + Length.mm(Math.abs(front.out())).text()
                + (front.out() < 0 ? " in over " : " out over ")
                + Length.mm(front.below()).text() + " below the hip, and leans by "
                + Angle.radians(Math.abs(front.lean())).text() + ": the hem girth is "
                + garment.finished(SkirtNames.HEM_GIRTH).text() + " before and "
                + hemmed.garment().finished(SkirtNames.HEM_GIRTH).text() + " after"));
        SkirtShapes.tellLonger(notes, hemmed.longer());
        List<Dimension> dimensions = new ArrayList<>();
        for (Piece half : halves) {
            dimensions.add(new Dimension(
                    half.name(),
                    half.path(EdgeNames.SIDE).end(),
                    hemmed.garment().piece(half.name()).path(EdgeNames.SIDE).end(),
                    out.text()));
        }
        return new Reshaped(hemmed.garment(), notes, dimensions);
    }

    private static Range.Limits limits(Piece half) {
        SideLine side = SkirtBody.side(half);
        double in = Math.min(
                MOST_IN * side.below(),
                MOST_IN
                        * half.path(EdgeNames.SIDE)
                                .end()
                                .distanceTo(half.path(EdgeNames.HEM).end()));
        return new Range.Limits(
                "with " + Length.mm(side.below()).text() + " below the hip they can go out at the hem by",
                Length.mm(-in - side.out()),
                Length.mm(MOST * side.below() - side.out()));
    }
}
