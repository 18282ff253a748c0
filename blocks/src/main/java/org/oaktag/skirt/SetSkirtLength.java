package org.oaktag.skirt;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.oaktag.adjust.Range;
import org.oaktag.adjust.Reshaped;
import org.oaktag.adjust.Step;
import org.oaktag.body.BodyMeasure;
import org.oaktag.garment.Amount;
import org.oaktag.garment.Dimension;
import org.oaktag.garment.EdgeNames;
import org.oaktag.garment.End;
import org.oaktag.garment.Garment;
import org.oaktag.garment.Note;
import org.oaktag.garment.Piece;
import org.oaktag.measure.Length;

/**
 * Makes a skirt so long at the centre front. The hem moves by the same length everywhere: down the centres, and along
 * the last direction of the side seams, or back along them; it is drawn anew, square to both.
 *
 * <pre>{@code
 * Garment skirt = StraightSkirt.BLOCK.draft(mira, SkirtEase.standard(), Cloth.woven("tweed, moss"));
 * skirt.adjust(skirtLength(mm(700))).finished(SkirtNames.LENGTH).text();   // = 700.0 mm
 * }</pre>
 *
 * @param length from the waist to the hem at the centre front
 */
record SetSkirtLength(Length length) implements Step {

    /** What must be left of the side below the hip, mm. */
    private static final double LEAST_BELOW_HIP = 100;

    /** How long a skirt may be where the height of the wearer is not known. */
    private static final Length MOST = Length.mm(1300);

    /** Refuses null. */
    public SetSkirtLength {
        Objects.requireNonNull(length, "length");
    }

    @Override
    public String name() {
        return "set the length of the skirt";
    }

    @Override
    public List<Amount> amounts() {
        return List.of(Amount.of("length", length));
    }

    /**
     * {@inheritDoc}
     *
     * @throws org.oaktag.PatternException if less than 100 mm would be left below the hip, or the skirt would reach
     *     further than the floor
     */
    @Override
    public Reshaped reshape(Garment garment) {
        List<Piece> halves = SkirtBody.halves(garment);
        Length now = garment.finished(SkirtNames.LENGTH);
        double below = halves.stream()
                .mapToDouble(half -> SkirtBody.side(half).below())
                .min()
                .orElseThrow();
        Length height = garment.wearer().measures().get(BodyMeasure.HEIGHT.asName());
        Length most = height == null ? MOST : height.times(Stride.WAIST_SHARE);
        Range.check(
                "length of the skirt",
                "from its waist to between the hip and the floor it must be",
                length,
                now.minus(Length.mm(below - LEAST_BELOW_HIP)),
                now.compareTo(most) > 0 ? now : most);
        double by = length.minus(now).mm();
        Garment moved = garment;
        List<SideLine> sides = new ArrayList<>();
        for (Piece half : halves) {
            moved = moved.withPiece(SkirtBody.withCentre(half, by));
            sides.add(SkirtBody.side(half).longer(by));
        }
        SkirtBody.Hemmed hemmed =
                SkirtBody.withSides(garment, CircleSkirt.hipKept(moved, now.mm() / length.mm()), sides);
        Piece front = hemmed.garment().piece(SkirtNames.FRONT);
        Note rule = Note.rule("the hem moves by " + length.text() + " - " + now.text() + " = "
                + length.minus(now).text() + " along centres and side seams: the hem girth is now "
                + hemmed.garment().finished(SkirtNames.HEM_GIRTH).text());
        return new Reshaped(
                hemmed.garment(),
                List.of(rule),
                List.of(new Dimension(
                        front.name(),
                        front.corner(EdgeNames.CENTRE, End.END),
                        front.corner(EdgeNames.CENTRE, End.START),
                        length.text())));
    }
}
