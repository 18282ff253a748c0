package org.oaktag.skirt;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.oaktag.PatternException;
import org.oaktag.adjust.Reshaped;
import org.oaktag.adjust.Step;
import org.oaktag.garment.Amount;
import org.oaktag.garment.Dimension;
import org.oaktag.garment.EdgeNames;
import org.oaktag.garment.FinishedMeasure.Term;
import org.oaktag.garment.Garment;
import org.oaktag.garment.Name;
import org.oaktag.garment.Note;
import org.oaktag.garment.Piece;
import org.oaktag.garment.Seam;
import org.oaktag.garment.SeamRule;
import org.oaktag.garment.SeamSide;
import org.oaktag.geometry.Point;
import org.oaktag.measure.Length;

/**
 * Draws a gathered skirt with the waist and the length that the skirt has: two oblongs, each a multiple of half the
 * waist wide, gathered to it; or, where the skirt has a yoke, to that.
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
record GatherSkirt(double ratio) implements Step {

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
     * @throws PatternException if the skirt has pieces other than front and back already, and they are not its yokes
     */
    @Override
    public Reshaped reshape(Garment garment) {
        Optional<NewSkirt> yoked = NewSkirt.underYoke(garment);
        return yoked.isPresent() ? toYokes(yoked.get()) : toWaist(NewSkirt.of(garment));
    }

    private Reshaped toWaist(NewSkirt skirt) {
        double width = skirt.waist() * ratio / 4;
        Garment made = skirt.made(
                SkirtBody.HALVES.stream()
                        .map(half -> SkirtPanel.oblong(half, SkirtNames.WAIST, 0, width, skirt)
                                .withAspect(SkirtBody.aspect(half)))
                        .toList(),
                List.of(SkirtBody.sideSeam()),
                NewSkirt.measures(1 / ratio, skirt.acrossHip()));
        return told(made, "waist", skirt.waist());
    }

    private Reshaped toYokes(NewSkirt skirt) {
        List<Piece> pieces = new ArrayList<>();
        List<Seam> seams = new ArrayList<>();
        double lines = 0;
        for (Name half : SkirtBody.HALVES) {
            Piece yoke = skirt.garment().piece(SkirtShapeNames.yoke(half));
            double line = yoke.path(SkirtShapeNames.YOKE_LINE).length();
            double level = yoke.path(EdgeNames.CENTRE).length();
            lines += 2 * line;
            pieces.add(SkirtPanel.oblong(half, SkirtShapeNames.YOKE_LINE, level, line * ratio, skirt)
                    .withAspect(SkirtBody.aspect(half)));
            seams.add(Seam.of(
                    SkirtShapeNames.yokeSeam(half),
                    SeamSide.against(yoke.name(), SkirtShapeNames.YOKE_LINE),
                    SeamSide.along(half, SkirtShapeNames.YOKE_LINE),
                    SeamRule.gathered(ratio),
                    "gather the skirt again"));
        }
        for (Name half : SkirtBody.HALVES) {
            pieces.add(skirt.garment().piece(SkirtShapeNames.yoke(half)));
        }
        seams.add(skirt.garment().seam(SkirtShapeNames.YOKE_SIDE_SEAM));
        seams.add(SkirtBody.sideSeam());
        Map<Name, List<Term>> terms =
                Map.of(SkirtNames.HIP_GIRTH, skirt.acrossHip(), SkirtNames.HEM_GIRTH, NewSkirt.both(2, EdgeNames.HEM));
        return told(skirt.made(pieces, seams, terms), "yoke line", lines);
    }

    private Reshaped told(Garment made, String what, double length) {
        Note rule = Note.rule(String.format(
                Locale.ROOT,
                "cloth = %s %s x %.2f = %s, gathered to the %s again",
                what,
                Length.mm(length).text(),
                ratio,
                Length.mm(length * ratio).text(),
                what));
        Point end = made.piece(SkirtNames.FRONT).path(EdgeNames.SIDE).start();
        return new Reshaped(
                made,
                List.of(rule),
                List.of(new Dimension(
                        SkirtNames.FRONT,
                        Point.of(0, end.y()),
                        end,
                        Length.mm(end.x()).text())));
    }
}
