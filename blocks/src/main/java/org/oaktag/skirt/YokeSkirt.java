package org.oaktag.skirt;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.oaktag.adjust.Range;
import org.oaktag.adjust.Reshaped;
import org.oaktag.adjust.Step;
import org.oaktag.garment.Amount;
import org.oaktag.garment.Dart;
import org.oaktag.garment.Dimension;
import org.oaktag.garment.EdgeNames;
import org.oaktag.garment.EdgeRef;
import org.oaktag.garment.End;
import org.oaktag.garment.FinishedMeasure;
import org.oaktag.garment.FinishedMeasure.Term;
import org.oaktag.garment.Garment;
import org.oaktag.garment.Name;
import org.oaktag.garment.Note;
import org.oaktag.garment.Piece;
import org.oaktag.garment.Quantity;
import org.oaktag.garment.Seam;
import org.oaktag.garment.SeamSide;
import org.oaktag.measure.Length;

/**
 * Cuts a yoke off the skirt, front and back, as deep at the centre as at the side, its darts closed.
 *
 * <pre>{@code
 * Garment skirt = StraightSkirt.BLOCK.draft(mira, SkirtEase.standard(), Cloth.woven("tweed, moss"));
 * skirt.adjust(yokeSkirt(mm(90)));
 * }</pre>
 *
 * <p>The lower edge of the yoke is as long as the upper edge of what hangs from it, sewn; its waist as long as it was.
 * So the yoke is a piece of a ring, whose angle is the difference of the two lengths divided by the depth. What is left
 * of a dart below the line stays a dart where it is worth sewing, 8 mm wide and 25 mm deep; less is taken in at the
 * side. A dart that ends above the line is gone.
 *
 * @param depth how deep, from 40 mm to 40 mm above the hip
 */
record YokeSkirt(Length depth) implements Step {

    private static final Length LEAST = Length.mm(40);

    /** Refuses null. */
    public YokeSkirt {
        Objects.requireNonNull(depth, "depth");
    }

    @Override
    public String name() {
        return "cut a yoke";
    }

    @Override
    public List<Amount> amounts() {
        return List.of(Amount.of("depth", depth));
    }

    /**
     * {@inheritDoc}
     *
     * @throws org.oaktag.PatternException if the yoke would be less than 40 mm deep or end less than 40 mm above the
     *     hip, the skirt is gathered, pleated or a circle, or has pieces other than front and back already
     */
    @Override
    public Reshaped reshape(Garment garment) {
        NewSkirt skirt = NewSkirt.of(garment);
        SkirtBody.requireFolds(garment);
        skirt.requireFitted();
        List<Piece> halves = SkirtBody.halves(garment);
        double hip = halves.stream()
                .mapToDouble(half -> SkirtBody.side(half).hip())
                .min()
                .orElseThrow();
        Range.check(
                "depth of the yoke",
                "with the hip " + Length.mm(hip).text() + " down the side it must be",
                depth,
                LEAST,
                Length.mm(hip).minus(LEAST));
        List<Piece> pieces = new ArrayList<>();
        List<Piece> yokes = new ArrayList<>();
        List<Seam> seams = new ArrayList<>();
        List<Note> notes = new ArrayList<>();
        for (Piece half : halves) {
            YokedHalf parted = YokedHalf.of(half, depth.mm());
            pieces.add(parted.lower());
            yokes.add(parted.yoke());
            seams.addAll(parted.seams());
            notes.addAll(parted.notes());
        }
        seams.add(Seam.flat(
                        SkirtShapeNames.YOKE_SIDE_SEAM,
                        SeamSide.along(yokes.get(0).name(), EdgeNames.SIDE),
                        SeamSide.along(yokes.get(1).name(), EdgeNames.SIDE),
                        "cut the yoke again")
                .smooth());
        garment.seams().stream().filter(seam -> !isDart(halves, seam)).forEach(seams::add);
        pieces.addAll(yokes);
        Garment made = skirt.made(pieces, seams, measures(yokes));
        Piece yoke = yokes.get(0);
        return new Reshaped(
                made,
                notes,
                List.of(new Dimension(
                        yoke.name(),
                        yoke.corner(EdgeNames.CENTRE, End.END),
                        yoke.corner(EdgeNames.CENTRE, End.START),
                        depth.text())));
    }

    private static boolean isDart(List<Piece> halves, Seam seam) {
        return halves.stream()
                .anyMatch(half -> Dart.all(half).stream()
                        .anyMatch(dart -> seam.has(EdgeRef.of(half.name(), Dart.legA(dart.name())))));
    }

    private static Map<Name, List<Term>> measures(List<Piece> yokes) {
        List<Term> waist = new ArrayList<>();
        for (Piece yoke : yokes) {
            waist.add(FinishedMeasure.times(2, Quantity.lengthOf(yoke.name(), SkirtNames.WAIST)));
        }
        Map<Name, List<Term>> terms = new LinkedHashMap<>();
        terms.put(SkirtNames.WAIST_GIRTH, waist);
        terms.put(SkirtNames.LENGTH, down(yokes.get(0).name(), EdgeNames.CENTRE));
        terms.put(SkirtNames.SIDE_LENGTH, down(yokes.get(0).name(), EdgeNames.SIDE));
        return terms;
    }

    private static List<Term> down(Name yoke, Name edge) {
        return List.of(
                FinishedMeasure.times(1, Quantity.lengthOf(yoke, edge)),
                FinishedMeasure.times(1, Quantity.lengthOf(SkirtNames.FRONT, edge)));
    }
}
