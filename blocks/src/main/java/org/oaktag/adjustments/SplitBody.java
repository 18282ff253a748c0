package org.oaktag.adjustments;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.oaktag.adjust.LineAcross;
import org.oaktag.adjust.Part;
import org.oaktag.adjust.Place;
import org.oaktag.adjust.Range;
import org.oaktag.adjust.Reshaped;
import org.oaktag.adjust.SplitPiece;
import org.oaktag.adjust.Step;
import org.oaktag.blocks.TopBody;
import org.oaktag.blocks.TopNames;
import org.oaktag.blocks.TopPieces;
import org.oaktag.garment.Amount;
import org.oaktag.garment.Cloth;
import org.oaktag.garment.Dimension;
import org.oaktag.garment.Edge;
import org.oaktag.garment.EdgeNames;
import org.oaktag.garment.End;
import org.oaktag.garment.Garment;
import org.oaktag.garment.Name;
import org.oaktag.garment.Note;
import org.oaktag.garment.Piece;
import org.oaktag.measure.Length;

/**
 * Cuts front and back in two along a style line as high above the hem at the side as at the centre, and square to both,
 * so that it runs on smoothly round the body. The upper parts keep their names and end in the edge {@code bottom}; the
 * lower parts begin with the edge {@code top} and carry the hem. Immutable.
 *
 * <pre>{@code
 * Garment coloured = block.adjust(splitBody(cm(22), contrast));
 * }</pre>
 *
 * @param aboveHem how far above the hem the line lies, measured along centre and side seam
 * @param below the cloth of the lower parts
 */
record SplitBody(Length aboveHem, Cloth below) implements Step {

    private static final double LEAST_PART = 20;

    /** Refuses null. */
    public SplitBody {
        Objects.requireNonNull(aboveHem, "aboveHem");
        Objects.requireNonNull(below, "below");
    }

    @Override
    public String name() {
        return "split the body";
    }

    @Override
    public List<Amount> amounts() {
        return List.of(Amount.of("above the hem", aboveHem), Amount.of("below in", below.description()));
    }

    /**
     * {@inheritDoc}
     *
     * @throws org.oaktag.PatternException if the body is split already, or the line does not lie between hem and
     *     underarm
     */
    @Override
    public Reshaped reshape(Garment garment) {
        Garment split = garment;
        List<Note> notes = new ArrayList<>();
        List<Dimension> dimensions = new ArrayList<>();
        for (Name half : TopBody.HALVES) {
            check(TopPieces.half(garment, half, EdgeNames.SIDE, EdgeNames.HEM, EdgeNames.CENTRE));
            Reshaped reshaped = split(half).reshape(split);
            split = reshaped.garment();
            notes.addAll(reshaped.notes());
            Edge line = split.piece(TopNames.lower(half)).edge(EdgeNames.TOP);
            dimensions.add(new Dimension(
                    TopNames.lower(half),
                    line.path().start(),
                    garment.piece(half).corner(EdgeNames.HEM, End.END),
                    aboveHem.text()));
        }
        return new Reshaped(split, notes, dimensions);
    }

    private SplitPiece split(Name half) {
        LineAcross line = LineAcross.square(
                Place.along(EdgeNames.SIDE, End.END, aboveHem), Place.along(EdgeNames.CENTRE, End.START, aboveHem));
        return new SplitPiece(
                half,
                line,
                Part.of(TopNames.lower(half), EdgeNames.TOP).in(below),
                Part.of(half, EdgeNames.BOTTOM),
                half.with("style line"));
    }

    private void check(Piece half) {
        Range.check(
                "style line of the " + half.name(),
                "between hem and underarm it can lie above the hem by",
                aboveHem,
                Length.mm(LEAST_PART),
                Length.mm(half.path(EdgeNames.SIDE).length() - LEAST_PART));
    }
}
