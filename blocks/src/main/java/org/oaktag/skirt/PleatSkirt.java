package org.oaktag.skirt;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import org.oaktag.PatternException;
import org.oaktag.adjust.Range;
import org.oaktag.adjust.Reshaped;
import org.oaktag.adjust.Step;
import org.oaktag.garment.Amount;
import org.oaktag.garment.Dimension;
import org.oaktag.garment.Garment;
import org.oaktag.garment.InnerLine;
import org.oaktag.garment.Name;
import org.oaktag.garment.Note;
import org.oaktag.garment.Piece;
import org.oaktag.geometry.Path;
import org.oaktag.geometry.Point;
import org.oaktag.measure.Length;

/**
 * Draws a pleated skirt with the waist and the length that the skirt has: two oblongs with pleats all round, alike in
 * all four quarters, that hang open from the waist.
 *
 * <pre>{@code
 * Garment skirt = StraightSkirt.BLOCK.draft(mira, SkirtEase.standard(), Cloth.woven("tweed, moss"));
 * skirt.adjust(pleatSkirt(PleatKind.KNIFE, 16, mm(30)));
 * }</pre>
 *
 * <p>Each fold takes twice its depth of cloth: cut = finished + 2 x depth x number for knife pleats, and twice as much
 * for box and inverted ones, which have two folds each. Where the folds meet underneath, the depth is as great as can
 * be, and the cloth three times the waist. Knife pleats turn away from the centres and end at the side seams, which lie
 * under the last of them; box pleats meet at the centres; inverted ones leave them plain. The waist girth is measured
 * as it is pleated.
 *
 * @param kind how they are folded
 * @param number how many there are round the waist, a multiple of 4, up to 80
 * @param depth how deep each fold is, at least 8 mm
 */
record PleatSkirt(PleatKind kind, int number, Length depth) implements Step {

    private static final int QUARTERS = 4;
    private static final int MOST = 80;
    /** A line as near to an edge as this, mm, is the edge. */
    private static final double ON_EDGE = 1e-6;

    private static final Length SHALLOWEST = Length.mm(8);

    /**
     * Checks the number.
     *
     * @throws PatternException if it is not a multiple of 4, 4 to 80
     */
    public PleatSkirt {
        Objects.requireNonNull(kind, "kind");
        Objects.requireNonNull(depth, "depth");
        if (number < QUARTERS || number > MOST || number % QUARTERS != 0) {
            throw PatternException.of(
                    "pleats of the skirt",
                    "must be as many in each quarter, so a multiple of 4 from 4 to 80",
                    "" + number,
                    "");
        }
    }

    @Override
    public String name() {
        return "draw a pleated skirt";
    }

    @Override
    public List<Amount> amounts() {
        return List.of(Amount.of("pleats", number + " " + word()), Amount.of("depth", depth));
    }

    /**
     * {@inheritDoc}
     *
     * @throws PatternException if the pleats would be so deep that they lie on each other, or the skirt has pieces
     *     other than front and back already
     */
    @Override
    public Reshaped reshape(Garment garment) {
        NewSkirt skirt = NewSkirt.of(garment);
        Length meets = Length.mm(skirt.waist() / number / kind.folds());
        Range.check(
                "depth of the pleats",
                "with " + number + " " + word() + " in a waist of "
                        + Length.mm(skirt.waist()).text() + " it must be",
                depth,
                SHALLOWEST,
                meets);
        double taken = 2 * depth.mm() * kind.folds() * number;
        double width = (skirt.waist() + taken) / QUARTERS;
        List<Piece> pieces = SkirtBody.HALVES.stream()
                .map(half -> SkirtPanel.oblong(half, SkirtNames.WAIST, 0, width, skirt)
                        .withAspect(SkirtBody.aspect(half))
                        .withLines(lines(skirt, width)))
                .toList();
        Garment made = skirt.made(
                pieces,
                List.of(SkirtBody.sideSeam()),
                NewSkirt.measures(skirt.waist() / (skirt.waist() + taken), skirt.acrossHip()));
        Note rule = Note.rule("cut = finished " + Length.mm(skirt.waist()).text() + " + 2 x depth " + depth.text()
                + " x " + (kind.folds() == 1 ? "" : "2 folds x ") + number + " pleats = "
                + Length.mm(skirt.waist() + taken).text() + ", "
                + String.format(Locale.ROOT, "%.2f", (skirt.waist() + taken) / skirt.waist())
                + " times the waist; where the folds meet underneath, at a depth of " + meets.text()
                + ", it is 3 times");
        return new Reshaped(
                made,
                List.of(rule),
                List.of(new Dimension(
                        SkirtNames.FRONT,
                        Point.ORIGIN,
                        Point.of(width, 0),
                        Length.mm(width).text())));
    }

    private String word() {
        return switch (kind) {
            case KNIFE -> "knife pleats";
            case BOX -> "box pleats";
            case INVERTED -> "inverted pleats";
        };
    }

    /** The lines of the pleats of a quarter: where the cloth is folded out and in, and where the fold is laid. */
    private List<InnerLine> lines(NewSkirt skirt, double width) {
        int count = number / QUARTERS;
        double face = skirt.waist() / number;
        double deep = depth.mm();
        List<InnerLine> lines = new ArrayList<>();
        double x = 0;
        for (int pleat = 1; pleat <= count; pleat++) {
            switch (kind) {
                case KNIFE -> {
                    x += face;
                    fold(lines, skirt, pleat, "", x, deep);
                    x += 2 * deep;
                }
                case BOX -> {
                    fold(lines, skirt, pleat, "near ", x + 2 * deep, -deep);
                    x += 2 * deep + face;
                    fold(lines, skirt, pleat, "far ", x, deep);
                    x += 2 * deep;
                }
                case INVERTED -> {
                    x += face / 2;
                    fold(lines, skirt, pleat, "near ", x, deep);
                    fold(lines, skirt, pleat, "far ", x + QUARTERS * deep, -deep);
                    x += QUARTERS * deep + face / 2;
                }
            }
        }
        lines.removeIf(
                line -> line.path().start().x() < ON_EDGE || line.path().start().x() > width - ON_EDGE);
        return lines;
    }

    /** A fold that is laid twice its depth to the right, or to the left. */
    private static void fold(List<InnerLine> lines, NewSkirt skirt, int pleat, String which, double x, double deep) {
        lines.add(down(which + "fold of pleat " + pleat, InnerLine.Use.FOLD, x, skirt));
        lines.add(down(which + "inner fold of pleat " + pleat, InnerLine.Use.FOLD, x + deep, skirt));
        lines.add(down(which + "fold laid of pleat " + pleat, InnerLine.Use.PLACEMENT, x + 2 * deep, skirt));
    }

    private static InnerLine down(String name, InnerLine.Use use, double x, NewSkirt skirt) {
        return new InnerLine(Name.of(name), use, Path.polyline(Point.of(x, 0), Point.of(x, skirt.length())));
    }
}
