package org.oaktag.adjust;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.oaktag.PatternException;
import org.oaktag.garment.Amount;
import org.oaktag.garment.Dart;
import org.oaktag.garment.Dimension;
import org.oaktag.garment.End;
import org.oaktag.garment.FoldedDart;
import org.oaktag.garment.Garment;
import org.oaktag.garment.InnerLine;
import org.oaktag.garment.Name;
import org.oaktag.garment.Note;
import org.oaktag.garment.Piece;
import org.oaktag.measure.Length;

/**
 * Trues the fold of a dart: draws the line at which its cloth is folded and, across its mouth, the peak to which the
 * cloth is cut so that it meets the edge when it is folded and laid to one side.
 *
 * <pre>{@code
 * block.adjust(openDart(FRONT, Name.of("bust"), Place.share(SIDE, 0.2), mm(25), mm(110)))
 *         .adjust(trueDartFold(FRONT, Name.of("bust"), End.END));
 * }</pre>
 *
 * @param piece the piece
 * @param dart the dart
 * @param towards the leg towards which the cloth is laid: leg a at the start, leg b at the end
 */
record TrueDartFold(Name piece, Name dart, End towards) implements PieceStep {
    /** Refuses null. */
    public TrueDartFold {
        Objects.requireNonNull(piece, "piece");
        Objects.requireNonNull(dart, "dart");
        Objects.requireNonNull(towards, "towards");
    }

    @Override
    public String name() {
        return "true the fold of the " + dart + " of the " + piece;
    }

    @Override
    public List<Amount> amounts() {
        return List.of(Amount.of("laid towards", towards == End.START ? "leg a" : "leg b"));
    }

    /**
     * Trues the fold in a piece by itself: adds the inner lines {@code "<dart> fold"} and {@code "<dart> peak"}, or
     * draws them anew.
     *
     * @throws PatternException if the piece has no such dart, or no peak can meet the edge beside that leg
     */
    @Override
    public Piece on(Piece before) {
        FoldedDart folded = FoldedDart.of(before, Dart.in(before, dart), towards);
        List<InnerLine> lines = new ArrayList<>(linesWithout(before, dart));
        lines.add(new InnerLine(FoldedDart.foldLine(dart), InnerLine.Use.FOLD, folded.fold()));
        lines.add(new InnerLine(FoldedDart.peakLine(dart), InnerLine.Use.PLACEMENT, folded.peak()));
        return before.withLines(lines);
    }

    /** Returns the inner lines of a piece but for the fold and the peak of a dart. */
    static List<InnerLine> linesWithout(Piece piece, Name dart) {
        return piece.lines().stream()
                .filter(line -> !line.name().equals(FoldedDart.foldLine(dart))
                        && !line.name().equals(FoldedDart.peakLine(dart)))
                .toList();
    }

    @Override
    public Reshaped reshape(Garment garment) {
        Piece after = on(garment.piece(piece));
        Dart found = Dart.in(after, dart);
        InnerLine fold = after.lines().stream()
                .filter(line -> line.name().equals(FoldedDart.foldLine(dart)))
                .findFirst()
                .orElseThrow();
        Length beyond = Length.mm(
                fold.path().length() - found.mouthA().midpoint(found.mouthB()).distanceTo(found.apex()));
        return new Reshaped(
                garment.withPiece(after),
                List.of(Note.rule("the edge turned over along the leg, up to the fold, and from there turned over along"
                        + " the fold: the peak stands " + beyond.text() + " beyond the mouth")),
                List.of(new Dimension(
                        piece,
                        found.mouthA().midpoint(found.mouthB()),
                        fold.path().end(),
                        beyond.text())));
    }
}
