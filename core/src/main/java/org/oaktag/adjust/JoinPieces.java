package org.oaktag.adjust;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.oaktag.PatternException;
import org.oaktag.garment.Amount;
import org.oaktag.garment.EdgeRef;
import org.oaktag.garment.FinishedMeasure;
import org.oaktag.garment.FinishedMeasure.Term;
import org.oaktag.garment.Garment;
import org.oaktag.garment.Name;
import org.oaktag.garment.Note;
import org.oaktag.garment.Piece;
import org.oaktag.garment.Quantity;
import org.oaktag.garment.Quantity.Across;
import org.oaktag.garment.Quantity.Corner;
import org.oaktag.garment.Quantity.Distance;
import org.oaktag.garment.Quantity.Drop;
import org.oaktag.garment.Quantity.EdgeLength;
import org.oaktag.garment.Quantity.Fall;
import org.oaktag.garment.Seam;
import org.oaktag.garment.SeamSide;
import org.oaktag.geometry.Path;
import org.oaktag.geometry.Point;
import org.oaktag.measure.Length;

/**
 * Joins two pieces along an edge of each to one piece, cut as the first from the cloth of the first: the second is
 * moved to it without being bent. The seam between them is gone.
 *
 * <pre>{@code
 * Name yoke = Name.of("yoke");
 * Name joint = Name.of("yoke seam");
 * LineAcross line = LineAcross.straight(Place.share(ARMHOLE, 0.5), Place.share(CENTRE, 0.8));
 * block.adjust(splitPiece(FRONT, line, Part.of(yoke, joint), Part.of(FRONT, joint), yoke))
 *         .adjust(joinPieces(EdgeRef.of(FRONT, joint), EdgeRef.of(yoke, joint), FRONT));   // whole again
 * }</pre>
 *
 * <p>Edges that meet at the joint and have one name are one edge again, where every seam and every finished measure
 * speaks of both or of neither; else an edge of the second piece whose name is taken is named {@code "<piece> <edge>"}.
 *
 * @param first an edge of the piece that lies still
 * @param second an edge of the piece that is moved
 * @param joined the name of the piece that they become
 */
public record JoinPieces(EdgeRef first, EdgeRef second, Name joined) implements Step {

    /** Nearer than this, in millimetres, a length is that of a straight line. */
    private static final double STRAIGHT = 1e-6;

    /**
     * Checks the edges.
     *
     * @throws PatternException if both are edges of one piece
     */
    public JoinPieces {
        Objects.requireNonNull(first, "first");
        Objects.requireNonNull(second, "second");
        Objects.requireNonNull(joined, "joined");
        if (first.piece().equals(second.piece())) {
            throw PatternException.of(
                    "pieces to join", "must be two", "'" + first + "' and '" + second + "'", "sew the edges instead");
        }
    }

    @Override
    public String name() {
        return "join the " + second.piece() + " to the " + first.piece();
    }

    @Override
    public List<Amount> amounts() {
        return List.of(Amount.of("along", first + " and " + second), Amount.of("as", joined.value()));
    }

    /**
     * Joins two pieces by themselves. Edges of one name that meet at the joint become one edge.
     *
     * @throws PatternException if the edges are not congruent within 0.01 mm, or the pieces are cut in ways that do not
     *     go together; the message says by how much the edges differ
     */
    public Piece join(Piece one, Piece other) {
        return new Joining(one, first.edge(), other, second.edge(), joined, (a, b) -> true).piece();
    }

    @Override
    public Reshaped reshape(Garment garment) {
        Piece one = garment.piece(first.piece());
        Piece other = garment.piece(second.piece());
        List<Seam> seams = new ArrayList<>(
                garment.seams().stream().filter(seam -> !isJoint(seam)).toList());
        List<List<Corner>> joints = Joining.joints(one, first.edge(), other, second.edge());
        List<FinishedMeasure> measures = garment.measures().stream()
                .map(measure -> shortened(measure, joints))
                .toList();
        measures.forEach(measure -> requireNotAlong(garment, measure));
        Garment apart = garment.with(garment.pieces(), seams, measures);
        Joining joining =
                new Joining(one, first.edge(), other, second.edge(), joined, (a, b) -> isOneEdge(apart, a, b, joints));
        EdgeChanges changes = joining.changes();
        List<Piece> pieces = new ArrayList<>();
        for (Piece piece : garment.pieces()) {
            if (piece.name().equals(one.name())) {
                pieces.add(joining.piece());
            } else if (!piece.name().equals(other.name())) {
                pieces.add(piece);
            }
        }
        List<FinishedMeasure> onPaper = joining.isTurned()
                ? measures.stream().map(measure -> turned(garment, measure)).toList()
                : measures;
        Garment whole = garment.with(pieces, seams.stream().map(changes::on).toList(), changes.on(onPaper));
        List<Note> notes = new ArrayList<>();
        notes.add(Note.rule("laid together along edges of "
                + Length.mm(one.path(first.edge()).length()).text()));
        if (!one.cloth().equals(other.cloth())) {
            notes.add(Note.done("the whole is cut from " + one.cloth().description() + ", the cloth of '" + one.name()
                    + "'; '" + other.name() + "' was " + other.cloth().description()));
        }
        return new Reshaped(whole, notes, List.of());
    }

    private boolean isJoint(Seam seam) {
        if (!seam.has(first) && !seam.has(second)) {
            return false;
        }
        List<EdgeRef> sewn = new ArrayList<>();
        seam.a().runs().forEach(run -> sewn.add(run.edge()));
        seam.b().runs().forEach(run -> sewn.add(run.edge()));
        if (sewn.size() == 2 && sewn.contains(first) && sewn.contains(second)) {
            return true;
        }
        throw PatternException.of(
                name(),
                "must join edges that are sewn to each other alone",
                "seam '" + seam.name() + "' of " + seam.a().text() + " and "
                        + seam.b().text(),
                "take that seam out first");
    }

    /** Two ways down of which the one ends where the other begins, at the joint, are one. */
    private static FinishedMeasure shortened(FinishedMeasure measure, List<List<Corner>> joints) {
        List<Term> terms = new ArrayList<>(measure.terms());
        for (int i = 0; i < terms.size(); i++) {
            for (int j = 0; j < terms.size(); j++) {
                Optional<Quantity> through =
                        i == j || terms.get(i).times() != terms.get(j).times()
                                ? Optional.empty()
                                : through(terms.get(i).quantity(), terms.get(j).quantity(), joints);
                if (through.isPresent()) {
                    terms.set(i, FinishedMeasure.times(terms.get(i).times(), through.get()));
                    terms.remove(j);
                    return shortened(new FinishedMeasure(measure.name(), terms, measure.body()), joints);
                }
            }
        }
        return measure;
    }

    private static Optional<Quantity> through(Quantity upper, Quantity lower, List<List<Corner>> joints) {
        if (!(upper instanceof Drop above)) {
            return Optional.empty();
        }
        if (lower instanceof Drop below && meet(above.to(), below.from(), joints)) {
            return Optional.of(new Drop(above.from(), below.to()));
        }
        return lower instanceof Fall below && meet(above.to(), below.from(), joints)
                ? Optional.of(new Fall(above.from(), below.to()))
                : Optional.empty();
    }

    private static boolean meet(Corner one, Corner other, List<List<Corner>> joints) {
        return joints.stream().anyMatch(joint -> joint.contains(one) && joint.contains(other));
    }

    /** The length of a straight edge can still be measured between its corners. */
    private void requireNotAlong(Garment garment, FinishedMeasure measure) {
        for (Term term : measure.terms()) {
            if (measured(term).stream()
                    .anyMatch(edge -> (edge.equals(first) || edge.equals(second)) && !isStraight(garment, edge))) {
                throw PatternException.of(
                        name(),
                        "must not take away a bent edge that is measured",
                        "finished measure '" + measure.name() + "'",
                        "take the measure elsewhere first");
            }
        }
    }

    private static boolean isStraight(Garment garment, EdgeRef edge) {
        Path path = garment.edge(edge).path();
        return path.length() - path.chord() <= STRAIGHT;
    }

    /**
     * A length that was measured down on paper is measured between its corners where its piece is turned, as long as
     * the one lies straight below the other.
     */
    private FinishedMeasure turned(Garment garment, FinishedMeasure measure) {
        List<Term> terms = new ArrayList<>();
        for (Term term : measure.terms()) {
            if (term.quantity() instanceof Drop drop && isOf(second.piece(), drop.from(), drop.to())) {
                Point from = drop.from().point(garment);
                Point to = drop.to().point(garment);
                if (Math.abs(to.x() - from.x()) > STRAIGHT || to.y() < from.y()) {
                    throw turnsWhatIsMeasured(measure);
                }
                terms.add(FinishedMeasure.times(term.times(), new Distance(drop.from(), drop.to())));
            } else if (term.quantity().corners().stream().anyMatch(corner -> isOf(second.piece(), corner))
                    && (term.quantity() instanceof Drop || term.quantity() instanceof Fall)) {
                throw turnsWhatIsMeasured(measure);
            } else {
                terms.add(term);
            }
        }
        return new FinishedMeasure(measure.name(), terms, measure.body());
    }

    private PatternException turnsWhatIsMeasured(FinishedMeasure measure) {
        return PatternException.of(
                name(),
                "must not turn a piece on which a length is measured down",
                "finished measure '" + measure.name() + "' on the " + second.piece(),
                "join the " + first.piece() + " to the " + second.piece() + ", which then lies still");
    }

    private static boolean isOf(Name piece, Corner... corners) {
        return Arrays.stream(corners).allMatch(corner -> corner.edge().piece().equals(piece));
    }

    private static List<EdgeRef> measured(Term term) {
        if (term.quantity() instanceof EdgeLength length) {
            return List.of(length.edge());
        }
        return term.quantity() instanceof Fall fall ? fall.to() : List.of();
    }

    private boolean isOneEdge(Garment garment, Name a, Name b, List<List<Corner>> joints) {
        EdgeRef one = EdgeRef.of(first.piece(), a);
        EdgeRef other = EdgeRef.of(second.piece(), b);
        for (Seam seam : garment.seams()) {
            if (!togetherOrNot(seam.a(), one, other) || !togetherOrNot(seam.b(), one, other)) {
                return false;
            }
        }
        for (FinishedMeasure measure : garment.measures()) {
            if (measured(measure, one) != measured(measure, other)
                    || endsAtOneOnly(measure, one, other)
                    || measure.terms().stream()
                            .anyMatch(term -> joints.stream()
                                    .flatMap(List::stream)
                                    .anyMatch(
                                            corner -> term.quantity().corners().contains(corner)))) {
                return false;
            }
        }
        return true;
    }

    private static boolean togetherOrNot(SeamSide side, EdgeRef one, EdgeRef other) {
        List<EdgeRef> sewn = side.runs().stream().map(SeamSide.Run::edge).toList();
        int at = sewn.indexOf(one);
        int next = sewn.indexOf(other);
        return (at < 0 && next < 0) || (at >= 0 && next >= 0 && Math.abs(at - next) == 1);
    }

    private static boolean endsAtOneOnly(FinishedMeasure measure, EdgeRef one, EdgeRef other) {
        return measure.terms().stream()
                .anyMatch(term -> term.quantity() instanceof Across across
                        && across.edges().contains(one) != across.edges().contains(other));
    }

    private static double measured(FinishedMeasure measure, EdgeRef edge) {
        return measure.terms().stream()
                .filter(term -> term.quantity().equals(new EdgeLength(edge)))
                .mapToDouble(Term::times)
                .sum();
    }
}
