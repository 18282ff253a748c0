package org.oaktag.skirt;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.oaktag.PatternException;
import org.oaktag.adjust.Reshaped;
import org.oaktag.adjust.Step;
import org.oaktag.garment.Amount;
import org.oaktag.garment.Dart;
import org.oaktag.garment.Dimension;
import org.oaktag.garment.Garment;
import org.oaktag.garment.Note;
import org.oaktag.garment.Piece;
import org.oaktag.measure.Angle;

/**
 * Draws an A-line: closes the darts, or a share of each, into the hem. From the apex of each dart the half is cut
 * straight down, and what lies beyond is turned about the apex until the dart is closed; the gap at the hem becomes
 * cloth.
 *
 * <pre>{@code
 * Garment skirt = StraightSkirt.BLOCK.draft(mira, SkirtEase.standard(), Cloth.woven("tweed, moss"));
 * skirt.adjust(aLine(0.5));   // the darts half as wide
 * skirt.adjust(aLine(1));     // no darts
 * }</pre>
 *
 * <p>A dart closed by the angle t at the distance L above the hem opens it by 2 L sin(t/2). The waist stays as long as
 * it was and the side seams too. Where front and back are turned by different angles, the side seam of the one that is
 * turned by less is drawn out below the hip by the difference, so that it hangs straight between them.
 *
 * @param share how much of each dart is closed, above 0 and up to 1
 */
record FlareFromDarts(double share) implements Step {

    /** Sides whose leans differ by less, radians, are alike. */
    private static final double ALIKE = 1e-7;

    /**
     * Checks the share.
     *
     * @throws PatternException if it is not above 0 and up to 1
     */
    public FlareFromDarts {
        if (!(share > 0 && share <= 1)) {
            throw PatternException.of(
                    "share of the darts that is closed", "must be above 0 and at most 1", "" + share, "1 for all");
        }
    }

    @Override
    public String name() {
        return "draw an A-line";
    }

    @Override
    public List<Amount> amounts() {
        return List.of(Amount.of("of each dart", String.format(Locale.ROOT, "%.1f %%", share * 100)));
    }

    /**
     * {@inheritDoc}
     *
     * @throws PatternException if neither half has a dart, or a hem would bend both ways
     */
    @Override
    public Reshaped reshape(Garment garment) {
        List<Piece> halves = SkirtBody.halves(garment);
        if (halves.stream().allMatch(half -> Dart.all(half).isEmpty())) {
            throw PatternException.of(
                    "A-line of the skirt", "must have darts to close", "front and back without one", "flare the sides");
        }
        List<Note> notes = new ArrayList<>();
        List<Dimension> dimensions = new ArrayList<>();
        List<SideLine> sides = new ArrayList<>();
        Garment turned = garment;
        for (Piece half : halves) {
            ClosedDarts closed = ClosedDarts.of(half, share);
            notes.addAll(closed.notes());
            turned = closed.on(turned);
            sides.add(SkirtBody.side(closed.piece()));
            dimensions.addAll(closed.dimensions());
        }
        balance(sides, notes);
        SkirtBody.Hemmed hemmed = SkirtBody.withSides(turned, turned, sides);
        SkirtShapes.tellLonger(notes, hemmed.longer());
        notes.add(Note.rule("the hem is drawn square from the centres to the side seams: its girth is "
                + garment.finished(SkirtNames.HEM_GIRTH).text() + " before and "
                + hemmed.garment().finished(SkirtNames.HEM_GIRTH).text() + " after"));
        return new Reshaped(hemmed.garment(), notes, dimensions);
    }

    /** Draws the side that leans by less out below the hip, until both lean alike. */
    private static void balance(List<SideLine> sides, List<Note> notes) {
        SideLine front = sides.get(0);
        SideLine back = sides.get(1);
        double more = back.path().endDirection().angleTo(front.path().endDirection());
        if (Math.abs(more) < ALIKE) {
            return;
        }
        int lesser = more > 0 ? 0 : 1;
        SideLine side = sides.get(lesser);
        sides.set(lesser, side.leaning(side.lean() + Math.abs(more), false));
        notes.add(Note.done("the side of the " + SkirtBody.HALVES.get(lesser) + " leans by "
                + Angle.radians(Math.abs(more)).text() + " less than that of the "
                + SkirtBody.HALVES.get(1 - lesser)
                + ": it is drawn out by as much below the hip, so that the seam hangs straight between them"));
    }
}
