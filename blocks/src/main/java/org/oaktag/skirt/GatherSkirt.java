package org.oaktag.skirt;

import java.util.List;
import java.util.Locale;
import org.oaktag.PatternException;
import org.oaktag.adjust.Reshaped;
import org.oaktag.adjust.Step;
import org.oaktag.garment.Amount;
import org.oaktag.garment.Dimension;
import org.oaktag.garment.Garment;
import org.oaktag.garment.Note;
import org.oaktag.geometry.Point;
import org.oaktag.measure.Length;

/**
 * Draws a gathered skirt with the waist and the length that the skirt has: two oblongs, each a multiple of half the waist
 * wide, gathered to it.
 *
 * <pre>{@code
 * Garment skirt = StraightSkirt.BLOCK.draft(mira, SkirtEase.standard(), Cloth.woven("tweed, moss"));
 * skirt.adjust(gatherSkirt(2));
 * }</pre>
 *
 * <p>Light gathers take 1.5 times the length, usual ones 2, those of sheer cloth 2.5 to 3 (common practice). The waist
 * girth is measured as it is gathered.
 *
 * @param ratio how many times the waist the cloth is wide, 1.1 to 4
 */
public record GatherSkirt(double ratio) implements Step {

    private static final double LEAST = 1.1;
    private static final double MOST = 4;

    /**
     * Checks the ratio.
     *
     * @throws PatternException if it is not 1.1 to 4
     */
    public GatherSkirt {
        if (!(ratio >= LEAST && ratio <= MOST)) {
            throw PatternException.of(
                    "gathers of the skirt",
                    "must be 1.1 to 4 times the waist",
                    "" + ratio,
                    "1.5 is light, 2 usual, 3 for sheer cloth");
        }
    }

    @Override
    public String name() {
        return "draw a gathered skirt";
    }

    @Override
    public List<Amount> amounts() {
        return List.of(Amount.of("gathered", String.format(Locale.ROOT, "%.2f to 1", ratio)));
    }

    /**
     * {@inheritDoc}
     *
     * @throws PatternException if the skirt has pieces other than front and back already
     */
    @Override
    public Reshaped reshape(Garment garment) {
        NewSkirt skirt = NewSkirt.of(garment);
        double width = skirt.waist() * ratio / 4;
        Garment made = skirt.made(
                SkirtBody.HALVES.stream()
                        .map(half -> SkirtPanel.oblong(half, width, skirt))
                        .toList(),
                List.of(NewSkirt.sideSeam()),
                NewSkirt.measures(1 / ratio, skirt.acrossHip()));
        Note rule = Note.rule(String.format(
                Locale.ROOT,
                "cloth = waist %s x %.2f = %s, half of it in front and half in back; gathered to the waist again",
                Length.mm(skirt.waist()).text(),
                ratio,
                Length.mm(4 * width).text()));
        return new Reshaped(
                made,
                List.of(rule),
                List.of(new Dimension(
                        SkirtNames.FRONT,
                        Point.ORIGIN,
                        Point.of(width, 0),
                        Length.mm(width).text())));
    }
}
