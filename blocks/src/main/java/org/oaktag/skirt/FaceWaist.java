package org.oaktag.skirt;

import java.util.List;
import java.util.Objects;
import org.oaktag.PatternException;
import org.oaktag.adjust.CutOnFacing;
import org.oaktag.adjust.Range;
import org.oaktag.adjust.Reshaped;
import org.oaktag.adjust.Step;
import org.oaktag.garment.Amount;
import org.oaktag.garment.Cloth;
import org.oaktag.garment.Dimension;
import org.oaktag.garment.EdgeNames;
import org.oaktag.garment.End;
import org.oaktag.garment.Garment;
import org.oaktag.garment.Name;
import org.oaktag.garment.Note;
import org.oaktag.garment.Piece;
import org.oaktag.garment.Seam;
import org.oaktag.garment.SeamSide;
import org.oaktag.geometry.Path;
import org.oaktag.geometry.Point;
import org.oaktag.measure.Length;

/**
 * Faces the waist of a skirt instead of a band: front and back facing are its top with the darts closed, interfaced and
 * joined at the sides.
 *
 * <pre>{@code
 * skirt.adjust(zip(mm(180), SkirtOpening.LEFT_SIDE)).adjust(faceWaist(mm(60), shell));
 * }</pre>
 *
 * @param width how wide the facing is, 30 to 90 mm
 * @param cloth what it is cut from
 */
record FaceWaist(Length width, Cloth cloth) implements Step {

    /** The lower edge of a facing. */
    static final Name LOWER = CutOnFacing.facing(SkirtNames.WAIST);

    private static final String REFIT = "face the waist again";

    /**
     * Checks the width.
     *
     * @throws PatternException if it is not 30 to 90 mm
     */
    public FaceWaist {
        Objects.requireNonNull(cloth, "cloth");
        Range.check("facing of the waist", "must be as wide as", width, Length.mm(30), Length.mm(90));
    }

    @Override
    public String name() {
        return "face the waist";
    }

    @Override
    public List<Amount> amounts() {
        return List.of(Amount.of("width", width), Amount.of("cloth", cloth.description()));
    }

    /**
     * {@inheritDoc}
     *
     * @throws PatternException if the waist is finished or lined already
     */
    @Override
    public Reshaped reshape(Garment garment) {
        boolean taken = Shell.isFinishedAtWaist(garment) || garment.hasPiece(SkirtFinishNames.lining(SkirtNames.FRONT));
        Shell.requireFree(garment, "facing of the waist", taken, "a waist that is finished or lined");
        Shell.requireFlatWaist(garment, "facing of the waist");
        Piece front = Shell.plain(garment, SkirtNames.FRONT);
        Piece back = Shell.plain(garment, SkirtNames.BACK);
        List<ClosedTop.Strip> strips = ClosedTop.strips(ClosedTop.of(front), ClosedTop.of(back), width.mm());
        Piece frontFacing = facing(strips.get(0), front);
        Piece backFacing = facing(strips.get(1), back);
        Finishing finishing = Finishing.of(garment).put(frontFacing).put(backFacing);
        finishing.sew(Seam.flat(
                        SkirtFinishNames.WAIST_FACING_SIDE_SEAM,
                        SeamSide.along(frontFacing.name(), EdgeNames.SIDE),
                        SeamSide.along(backFacing.name(), EdgeNames.SIDE),
                        REFIT)
                .smooth());
        finishing.sew(Seam.flat(
                SkirtFinishNames.WAIST_FACING_SEAM,
                Shell.halfRound(garment),
                SeamSide.along(frontFacing.name(), SkirtNames.WAIST)
                        .then(SeamSide.against(backFacing.name(), SkirtNames.WAIST)),
                REFIT));
        Interfacing.of(finishing, frontFacing);
        Interfacing.of(finishing, backFacing);
        Path waist = frontFacing.path(SkirtNames.WAIST);
        Point middle = waist.pointAt(waist.length() / 2);
        return new Reshaped(
                finishing.done(),
                List.of(Note.rule("the facing is the strip of " + width.text()
                        + " along the waist, its darts closed: half front "
                        + Length.mm(waist.length()).text() + ", half back "
                        + backFacing.edge(SkirtNames.WAIST).length().text()
                        + "; its ends are turned in at the opening")),
                List.of(new Dimension(
                        frontFacing.name(),
                        middle,
                        frontFacing.path(LOWER).nearest(middle).point(),
                        "width " + width.text())));
    }

    private Piece facing(ClosedTop.Strip strip, Piece half) {
        return strip.piece(SkirtFinishNames.waistFacing(half.name()), half, SkirtNames.WAIST, LOWER, cloth);
    }

    /** Tells whether the waist is faced. */
    static boolean isOn(Garment garment) {
        return garment.hasPiece(SkirtFinishNames.waistFacing(SkirtNames.FRONT));
    }

    /** Returns the strip that a facing is. */
    static ClosedTop.Strip strip(Piece facing) {
        return new ClosedTop.Strip(
                facing.path(SkirtNames.WAIST),
                facing.path(EdgeNames.SIDE),
                facing.path(LOWER),
                facing.path(EdgeNames.CENTRE)
                        .withEnds(facing.corner(EdgeNames.CENTRE, End.START), facing.corner(EdgeNames.CENTRE, End.END)),
                facing.grainline());
    }
}
