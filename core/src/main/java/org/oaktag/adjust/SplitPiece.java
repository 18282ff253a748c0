package org.oaktag.adjust;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.oaktag.PatternException;
import org.oaktag.garment.Amount;
import org.oaktag.garment.Dimension;
import org.oaktag.garment.EdgeRef;
import org.oaktag.garment.End;
import org.oaktag.garment.FinishedMeasure;
import org.oaktag.garment.FinishedMeasure.Term;
import org.oaktag.garment.Garment;
import org.oaktag.garment.Name;
import org.oaktag.garment.Notch;
import org.oaktag.garment.Note;
import org.oaktag.garment.Piece;
import org.oaktag.garment.Quantity.Corner;
import org.oaktag.garment.Quantity.Drop;
import org.oaktag.garment.Quantity.Fall;
import org.oaktag.garment.Seam;
import org.oaktag.garment.SeamRule;
import org.oaktag.garment.SeamSide;
import org.oaktag.measure.Length;

/**
 * Splits a piece along a style line into two pieces, straight or curved. Both new edges are one line, so that they are
 * equal by construction, and carry a notch that fits no other edge of the garment and not its partner turned round,
 * with two cuts on a back. The seam between them is added.
 *
 * <pre>{@code
 * Garment yoked = block.adjust(splitPiece(
 *         FRONT,
 *         LineAcross.straight(Place.share(ARMHOLE, 0.5), Place.share(CENTRE, 0.8)),
 *         Part.of(Name.of("yoke"), Name.of("yoke seam")).in(contrast),
 *         Part.of(FRONT, Name.of("yoke seam")),
 *         Name.of("yoke")));
 * }</pre>
 *
 * <p>An edge that the line cuts becomes two edges of its name, one in each part, and seams and finished measures that
 * spoke of it speak of both. A part that no longer lies on the fold is cut as a mirrored pair. Both parts lie on paper
 * where they lay in the whole, so that distances from the one to the other can still be measured.
 *
 * @param piece the piece
 * @param line the style line
 * @param left the part on the left of the line, as it runs
 * @param right the part on its right
 * @param seam the name of the new seam
 */
public record SplitPiece(Name piece, LineAcross line, Part left, Part right, Name seam) implements Step {

    private static final Name STYLE_NOTCH = Name.of("style line");

    /**
     * Checks the names.
     *
     * @throws PatternException if both parts have one name
     */
    public SplitPiece {
        Objects.requireNonNull(piece, "piece");
        Objects.requireNonNull(line, "line");
        Objects.requireNonNull(left, "left");
        Objects.requireNonNull(right, "right");
        Objects.requireNonNull(seam, "seam");
        if (left.piece().equals(right.piece())) {
            throw PatternException.of(
                    "parts of piece '" + piece + "'", "must have two names", "'" + left.piece() + "' twice", "");
        }
    }

    @Override
    public String name() {
        return "split the " + piece;
    }

    @Override
    public List<Amount> amounts() {
        return List.of(
                Amount.of("left of the line", left.piece().value()),
                Amount.of("right of it", right.piece().value()));
    }

    /**
     * Splits a piece by itself, without notches on the new edges.
     *
     * @throws PatternException if the line does not run inside the piece from outline to outline, or a new edge has the
     *     name of one that there is
     */
    public PieceSplit split(Piece whole) {
        Splitting splitting = Splitting.of(whole, line, left, right);
        return new PieceSplit(splitting.left(), splitting.right());
    }

    @Override
    public Reshaped reshape(Garment garment) {
        Piece whole = garment.piece(piece);
        Splitting splitting = Splitting.of(whole, line, left, right);
        NotchCuts cuts = NotchCuts.of(
                splitting.left().aspect(left.edge()), splitting.right().aspect(right.edge()));
        MatchingNotch notch = MatchingNotch.of(garment, splitting.length(), cuts);
        double at = notch.share() * splitting.length();
        Piece onLeft = splitting.left().withNotch(new Notch(STYLE_NOTCH, left.edge(), End.START, at, notch.count()));
        Piece onRight = splitting.right().withNotch(new Notch(STYLE_NOTCH, right.edge(), End.END, at, notch.count()));
        EdgeChanges changes = splitting.changes();
        List<Seam> seams = new ArrayList<>();
        garment.seams().forEach(each -> seams.add(changes.on(each)));
        seams.add(new Seam(
                seam,
                SeamSide.against(right.piece(), right.edge()),
                SeamSide.along(left.piece(), left.edge()),
                SeamRule.flat(),
                splitting.smoothEnds(),
                "split the " + piece + " after its shape is settled"));
        Garment split = garment.with(
                pieces(garment, onLeft, onRight),
                seams,
                changes.on(garment.measures()).stream().map(this::across).toList());
        Note rule = Note.rule("split along a line of "
                + Length.mm(splitting.length()).text() + ": both new edges are that line, notched at "
                + Length.mm(at).text() + " from one end");
        return new Reshaped(
                split,
                List.of(rule),
                List.of(new Dimension(
                        left.piece(),
                        onLeft.path(left.edge()).start(),
                        onLeft.path(left.edge()).end(),
                        Length.mm(splitting.length()).text())));
    }

    private List<Piece> pieces(Garment garment, Piece onLeft, Piece onRight) {
        boolean leftFirst = left.piece().equals(piece);
        List<Piece> pieces = new ArrayList<>();
        for (Piece each : garment.pieces()) {
            if (each.name().equals(piece)) {
                pieces.add(leftFirst ? onLeft : onRight);
                pieces.add(leftFirst ? onRight : onLeft);
            } else {
                pieces.add(each);
            }
        }
        return pieces;
    }

    /** A measure that ran down from one part to the other now runs to the line and from there on. */
    private FinishedMeasure across(FinishedMeasure measure) {
        if (!runsAcross(measure)) {
            return measure;
        }
        List<Term> terms = new ArrayList<>();
        Corner onLeft = Corner.at(left.piece(), left.edge(), End.END);
        Corner onRight = Corner.at(right.piece(), right.edge(), End.START);
        for (Term term : measure.terms()) {
            if (term.quantity() instanceof Drop drop && isAcross(drop)) {
                boolean fromLeft = drop.from().edge().piece().equals(left.piece());
                terms.add(FinishedMeasure.times(term.times(), new Drop(drop.from(), fromLeft ? onLeft : onRight)));
                terms.add(FinishedMeasure.times(term.times(), new Drop(fromLeft ? onRight : onLeft, drop.to())));
            } else if (term.quantity() instanceof Fall fall && isAcross(fall)) {
                boolean fromLeft = fall.from().edge().piece().equals(left.piece());
                terms.add(FinishedMeasure.times(term.times(), new Drop(fall.from(), fromLeft ? onLeft : onRight)));
                terms.add(FinishedMeasure.times(term.times(), new Fall(fromLeft ? onRight : onLeft, fall.to())));
            } else {
                terms.add(term);
            }
        }
        return new FinishedMeasure(measure.name(), terms, measure.body());
    }

    private boolean runsAcross(FinishedMeasure measure) {
        for (Term term : measure.terms()) {
            if ((term.quantity() instanceof Drop drop && isAcross(drop))
                    || (term.quantity() instanceof Fall fall && isAcross(fall))) {
                return true;
            }
        }
        return false;
    }

    private boolean isAcross(Drop drop) {
        return areParted(drop.from().edge(), drop.to().edge());
    }

    private boolean isAcross(Fall fall) {
        return fall.to().stream().allMatch(edge -> areParted(fall.from().edge(), edge));
    }

    private boolean areParted(EdgeRef one, EdgeRef other) {
        return (one.piece().equals(left.piece()) && other.piece().equals(right.piece()))
                || (one.piece().equals(right.piece()) && other.piece().equals(left.piece()));
    }
}
