package org.oaktag.skirt;

import java.util.List;
import java.util.Objects;
import org.oaktag.adjust.CutOnFacing;
import org.oaktag.adjust.Range;
import org.oaktag.adjust.Reshaped;
import org.oaktag.adjust.Step;
import org.oaktag.garment.Amount;
import org.oaktag.garment.Cloth;
import org.oaktag.garment.Cut;
import org.oaktag.garment.Dimension;
import org.oaktag.garment.Edge;
import org.oaktag.garment.EdgeNames;
import org.oaktag.garment.End;
import org.oaktag.garment.Garment;
import org.oaktag.garment.Name;
import org.oaktag.garment.Note;
import org.oaktag.garment.Piece;
import org.oaktag.garment.Seam;
import org.oaktag.garment.SeamSide;
import org.oaktag.geometry.Point;
import org.oaktag.measure.Length;

/**
 * Faces the hem instead of turning it up, as a curved one is: the strip of front and back along it, joined at the
 * sides.
 *
 * <pre>{@code
 * skirt.adjust(flareSides(mm(40))).adjust(faceHem(mm(50), shell));
 * }</pre>
 *
 * @param width how wide the facing is, 20 to 100 mm
 * @param cloth what it is cut from
 */
record FaceHem(Length width, Cloth cloth) implements Step {

    static final Name UPPER = CutOnFacing.facing(EdgeNames.HEM);
    private static final String REFIT = "face the hem again";

    /**
     * Checks the width.
     *
     * @throws org.oaktag.PatternException if it is not 20 to 100 mm
     */
    public FaceHem {
        Objects.requireNonNull(cloth, "cloth");
        Range.check("facing of the hem", "must be as wide as", width, Length.mm(20), Length.mm(100));
    }

    @Override
    public String name() {
        return "face the hem";
    }

    @Override
    public List<Amount> amounts() {
        return List.of(Amount.of("width", width), Amount.of("cloth", cloth.description()));
    }

    @Override
    public Reshaped reshape(Garment garment) {
        Piece front = Shell.plain(garment, SkirtNames.FRONT);
        Piece back = Shell.plain(garment, SkirtNames.BACK);
        List<HemStrip> strips = HemStrip.of(front, back, width.mm());
        boolean vented = Shell.of(garment, SkirtNames.BACK).hasEdge(EdgeNames.VENT);
        Piece frontFacing = facing(front, strips.get(0), Shell.isButtoned(garment));
        Piece backFacing = facing(back, strips.get(1), vented);
        Finishing finishing = Finishing.of(garment).put(frontFacing).put(backFacing);
        finishing
                .sew(Seam.flat(
                        Name.of("hem facing side"),
                        SeamSide.along(frontFacing.name(), EdgeNames.SIDE),
                        SeamSide.along(backFacing.name(), EdgeNames.SIDE),
                        REFIT))
                .sew(Seam.flat(
                        SkirtFinishNames.HEM_FACING_SEAM,
                        halfRound(SkirtNames.FRONT, SkirtNames.BACK),
                        halfRound(frontFacing.name(), backFacing.name()),
                        REFIT));
        Point corner = frontFacing.corner(EdgeNames.CENTRE, End.START);
        return new Reshaped(
                finishing.done(),
                List.of(Note.rule("the facing is the strip of " + width.text() + " along the hem, half front "
                        + frontFacing.edge(EdgeNames.HEM).length().text() + ", half back "
                        + backFacing.edge(EdgeNames.HEM).length().text()
                        + (vented ? "; it ends at the fold of the vent" : ""))),
                List.of(new Dimension(
                        frontFacing.name(),
                        corner,
                        frontFacing.corner(EdgeNames.CENTRE, End.END),
                        "width " + width.text())));
    }

    private static SeamSide halfRound(Name front, Name back) {
        return SeamSide.against(front, EdgeNames.HEM).then(SeamSide.along(back, EdgeNames.HEM));
    }

    /**
     * A facing that ends at the centre is cut as a pair; one that runs on is cut on the fold, even of a seamed back.
     */
    private Piece facing(Piece half, HemStrip strip, boolean ends) {
        return Piece.of(
                        SkirtFinishNames.hemFacing(half.name()),
                        List.of(
                                new Edge(UPPER, strip.upper()),
                                new Edge(EdgeNames.SIDE, strip.side()),
                                half.edge(EdgeNames.HEM),
                                new Edge(EdgeNames.CENTRE, strip.centre())),
                        strip.grain(),
                        ends ? Cut.pair() : Cut.onFold(EdgeNames.CENTRE),
                        cloth)
                .withAspectOf(half);
    }
}
