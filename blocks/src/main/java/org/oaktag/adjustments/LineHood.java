package org.oaktag.adjustments;

import java.util.List;
import java.util.Optional;
import org.oaktag.PatternException;
import org.oaktag.adjust.Reshaped;
import org.oaktag.adjust.Step;
import org.oaktag.blocks.HoodNames;
import org.oaktag.blocks.TopNames;
import org.oaktag.garment.Amount;
import org.oaktag.garment.Cloth;
import org.oaktag.garment.Dimension;
import org.oaktag.garment.End;
import org.oaktag.garment.Garment;
import org.oaktag.garment.Name;
import org.oaktag.garment.Note;
import org.oaktag.garment.Piece;
import org.oaktag.garment.Seam;
import org.oaktag.garment.SeamSide;
import org.oaktag.geometry.Point;
import org.oaktag.geometry.Vector;
import org.oaktag.measure.Length;

/**
 * Lines a hood and gives its shell a cut-on facing: the strip of the shell beside the face, mirrored through the face,
 * is cut on to it and folded inwards, and the lining is what is left of the shell beyond that strip. Lining and facing
 * together are therefore the shell again. A hood that is lined already gets a new lining.
 *
 * <pre>{@code
 * Garment lined = top.adjust(hood(HoodShape.threePanel())).adjust(lineHood(cm(4), lining));
 * }</pre>
 *
 * <p>The strip over the middle is longer at the face, and its lining shorter, by the crown of the facing. Immutable.
 *
 * @param facing how wide the facing is, from 15 mm to half the depth of the hood at its neck edge
 * @param cloth what the lining is cut from
 */
record LineHood(Length facing, Cloth cloth) implements Step {

    private static final Length LEAST_FACING = Length.mm(15);
    private static final String REFIT = "line the hood again";

    /**
     * Checks the facing and takes the cloth as a lining.
     *
     * @throws PatternException if the facing is narrower than 15 mm
     */
    public LineHood {
        if (facing.compareTo(LEAST_FACING) < 0) {
            throw PatternException.of(
                    "facing of the hood", "must be at least " + LEAST_FACING.text() + " wide", facing.text(), "");
        }
        cloth = cloth.as(Cloth.LINING);
    }

    @Override
    public String name() {
        return "line the hood";
    }

    @Override
    public List<Amount> amounts() {
        return List.of(Amount.of("facing", facing), Amount.of("lining", cloth.description()));
    }

    /**
     * {@inheritDoc}
     *
     * @throws PatternException if there is no hood, or the facing is wider than half the hood is deep at its neck edge
     */
    @Override
    public Reshaped reshape(Garment garment) {
        if (!garment.hasPiece(TopNames.HOOD_SIDE)) {
            throw PatternException.of("lining of the hood", "needs a hood", "a top without one", "fit a hood first");
        }
        FacedPanel panel = FacedPanel.of(garment.piece(TopNames.HOOD_SIDE), facing);
        Optional<FacedStrip> strip =
                garment.findPiece(TopNames.HOOD_CENTRE).map(piece -> new FacedStrip(piece, panel.facingCrown()));
        Assembly assembly = Assembly.of(garment).put(panel.shell());
        strip.ifPresent(each -> assembly.put(each.shell()));
        assembly.put(panel.lining(cloth));
        strip.ifPresent(each -> assembly.put(each.lining(cloth)));
        assembly.sew(garment.seam(HoodNames.CROWN_SEAM).smoothAt(End.END));
        (strip.isPresent() ? seamsWithStrip() : seams()).forEach(assembly::sew);
        return new Reshaped(
                assembly.done(), List.of(rule(panel, strip.isPresent())), List.of(dimension(panel.shell())));
    }

    private Note rule(FacedPanel panel, boolean withStrip) {
        String side = "the facing is the shell beside the face, mirrored through it, " + facing.text()
                + " wide; the lining begins where the facing ends";
        return Note.rule(
                withStrip
                        ? side + ". On the strip over the middle the facing is as long as the crown of the side panel's"
                                + " facing, " + Length.mm(panel.facingCrown()).text()
                        : side);
    }

    private Dimension dimension(Piece shell) {
        Point crown = shell.corner(HoodNames.CROWN, End.START);
        Point middle = crown.midpoint(shell.corner(HoodNames.NECK, End.END));
        return new Dimension(shell.name(), middle, middle.plus(Vector.of(-facing.mm(), 0)), "facing " + facing.text());
    }

    private static List<Seam> seams() {
        return List.of(
                flat(
                        HoodNames.FACING_CROWN_SEAM,
                        SeamSide.along(TopNames.HOOD_SIDE, HoodNames.FACING_CROWN),
                        SeamSide.along(TopNames.HOOD_SIDE, HoodNames.FACING_CROWN)),
                liningSeam(HoodNames.FACING_SIDE_SEAM, TopNames.HOOD_SIDE, TopNames.HOOD_SIDE_LINING),
                flat(
                                HoodNames.LINING_CROWN_SEAM,
                                SeamSide.along(TopNames.HOOD_SIDE_LINING, HoodNames.CROWN),
                                SeamSide.along(TopNames.HOOD_SIDE_LINING, HoodNames.CROWN))
                        .smoothAt(End.END),
                flat(
                        HoodNames.LINING_NECK_SEAM,
                        SeamSide.against(TopNames.HOOD_SIDE, HoodNames.NECK),
                        SeamSide.along(TopNames.HOOD_SIDE, HoodNames.FACING_NECK)
                                .then(SeamSide.against(TopNames.HOOD_SIDE_LINING, HoodNames.NECK))));
    }

    private static List<Seam> seamsWithStrip() {
        return List.of(
                flat(
                        HoodNames.FACING_CROWN_SEAM,
                        SeamSide.along(TopNames.HOOD_SIDE, HoodNames.FACING_CROWN),
                        SeamSide.along(TopNames.HOOD_CENTRE, HoodNames.FACING_CROWN)),
                liningSeam(HoodNames.FACING_SIDE_SEAM, TopNames.HOOD_SIDE, TopNames.HOOD_SIDE_LINING),
                liningSeam(HoodNames.FACING_CENTRE_SEAM, TopNames.HOOD_CENTRE, TopNames.HOOD_CENTRE_LINING),
                flat(
                                HoodNames.LINING_CROWN_SEAM,
                                SeamSide.along(TopNames.HOOD_SIDE_LINING, HoodNames.CROWN),
                                SeamSide.along(TopNames.HOOD_CENTRE_LINING, HoodNames.CROWN))
                        .smoothAt(End.END),
                flat(
                        HoodNames.LINING_NECK_SEAM,
                        SeamSide.against(TopNames.HOOD_SIDE, HoodNames.NECK)
                                .then(SeamSide.along(TopNames.HOOD_CENTRE, HoodNames.NECK)),
                        SeamSide.along(TopNames.HOOD_SIDE, HoodNames.FACING_NECK)
                                .then(SeamSide.against(TopNames.HOOD_SIDE_LINING, HoodNames.NECK))
                                .then(SeamSide.along(TopNames.HOOD_CENTRE_LINING, HoodNames.NECK))));
    }

    private static Seam liningSeam(Name seam, Name shell, Name lining) {
        return flat(seam, SeamSide.along(shell, HoodNames.FACING_EDGE), SeamSide.along(lining, HoodNames.FACE));
    }

    private static Seam flat(Name name, SeamSide a, SeamSide b) {
        return Seam.flat(name, a, b, REFIT);
    }
}
