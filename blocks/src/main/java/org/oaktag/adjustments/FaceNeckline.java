package org.oaktag.adjustments;

import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import org.oaktag.adjust.Range;
import org.oaktag.adjust.Reshaped;
import org.oaktag.adjust.SeparateFacing;
import org.oaktag.adjust.Step;
import org.oaktag.blocks.FinishNames;
import org.oaktag.blocks.Redraw;
import org.oaktag.blocks.TopEdges;
import org.oaktag.blocks.TopNames;
import org.oaktag.blocks.TopPieces;
import org.oaktag.garment.Amount;
import org.oaktag.garment.Cloth;
import org.oaktag.garment.Dimension;
import org.oaktag.garment.EdgeNames;
import org.oaktag.garment.EdgeRef;
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
 * Draws facings for the neckline of front and back: the strip of the shell beside it, of an even width, joined at the
 * shoulder. Facings that are there already are replaced. Immutable.
 *
 * <pre>{@code
 * Garment faced = top.adjust(faceNeckline(cm(6), shell));
 * faced.walkSeams().seam(FinishNames.FRONT_FACING_SEAM).isTrue();   // = true
 * }</pre>
 *
 * <p>Where both strips do not run out at quite the same place on the shoulder, both are led to the middle between them,
 * so that the inner edge runs on across the shoulder seam.
 *
 * @param width how wide the facing is, 25 to 120 mm
 * @param cloth what it is cut from
 */
record FaceNeckline(Length width, Cloth cloth) implements Step {

    static final Name INNER = TopEdges.NECKLINE.with("facing");

    private static final double LEAST = 25;
    private static final double MOST = 120;
    private static final String REFIT = "face the neckline again";

    /**
     * Checks the width.
     *
     * @throws org.oaktag.PatternException if it is out of its range
     */
    public FaceNeckline {
        Objects.requireNonNull(cloth, "cloth");
        Range.check("facing of the neckline", "must have a width of", width, Length.mm(LEAST), Length.mm(MOST));
    }

    @Override
    public String name() {
        return "face the neckline";
    }

    @Override
    public List<Amount> amounts() {
        return List.of(Amount.of("width", width), Amount.of("cloth", cloth.description()));
    }

    /**
     * {@inheritDoc}
     *
     * @throws org.oaktag.PatternException if the strip does not meet centre and shoulder
     */
    @Override
    public Reshaped reshape(Garment garment) {
        Piece front = facing(garment, TopNames.FRONT, FinishNames.FRONT_FACING);
        Piece back = facing(garment, TopNames.BACK, FinishNames.BACK_FACING);
        double shoulder = (front.path(TopEdges.SHOULDER).length()
                        + back.path(TopEdges.SHOULDER).length())
                / 2;
        front = endingOnShoulder(front, garment.piece(TopNames.FRONT), shoulder);
        back = endingOnShoulder(back, garment.piece(TopNames.BACK), shoulder);
        Garment faced = Assembly.of(garment)
                .takeOff(Set.of(FinishNames.FRONT_FACING, FinishNames.BACK_FACING))
                .put(front)
                .put(back)
                .sew(neckSeam(FinishNames.FRONT_FACING_SEAM, TopNames.FRONT, front.name()))
                .sew(neckSeam(FinishNames.BACK_FACING_SEAM, TopNames.BACK, back.name()))
                .sew(Seam.flat(
                                FinishNames.FACING_SHOULDER_SEAM,
                                SeamSide.along(front.name(), TopEdges.SHOULDER),
                                SeamSide.along(back.name(), TopEdges.SHOULDER),
                                REFIT)
                        .smoothAt(End.START))
                .done();
        return new Reshaped(
                faced,
                List.of(Note.rule("the facing is the shell's strip of " + width.text() + " beside the neckline; at the"
                        + " shoulder it is " + Length.mm(shoulder).text() + " wide")),
                List.of(dimension(front)));
    }

    private Piece facing(Garment garment, Name shell, Name facing) {
        return new SeparateFacing(EdgeRef.of(shell, TopEdges.NECKLINE), width, facing, cloth)
                .facing(TopPieces.half(garment, shell, EdgeNames.CENTRE, TopEdges.NECKLINE, TopEdges.SHOULDER));
    }

    private static Piece endingOnShoulder(Piece facing, Piece shell, double along) {
        Path whole = shell.path(TopEdges.SHOULDER);
        Range.check(
                "facing of the neckline",
                "runs out on a shoulder at",
                Length.mm(along),
                Length.mm(0),
                Length.mm(whole.length() - 1));
        Path shoulder = Redraw.between(whole.sub(0, along), whole.start(), whole.pointAt(along));
        Path inner = facing.path(INNER);
        return facing.redrawn(
                Map.of(TopEdges.SHOULDER, shoulder, INNER, Redraw.between(inner, shoulder.end(), inner.end())));
    }

    private static Seam neckSeam(Name seam, Name shell, Name facing) {
        return Seam.flat(
                seam, SeamSide.along(shell, TopEdges.NECKLINE), SeamSide.along(facing, TopEdges.NECKLINE), REFIT);
    }

    private Dimension dimension(Piece facing) {
        Path neckline = facing.path(TopEdges.NECKLINE);
        Point middle = neckline.pointAt(neckline.length() / 2);
        return new Dimension(
                facing.name(), middle, facing.path(INNER).nearest(middle).point(), "width " + width.text());
    }
}
