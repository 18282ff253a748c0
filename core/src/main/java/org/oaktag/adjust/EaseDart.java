package org.oaktag.adjust;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.oaktag.PatternException;
import org.oaktag.garment.Amount;
import org.oaktag.garment.Dart;
import org.oaktag.garment.Edge;
import org.oaktag.garment.EdgeRef;
import org.oaktag.garment.Garment;
import org.oaktag.garment.Name;
import org.oaktag.garment.Note;
import org.oaktag.garment.Piece;
import org.oaktag.garment.Seam;
import org.oaktag.garment.SeamRule;
import org.oaktag.measure.Length;

/**
 * Closes a dart into ease: its mouth becomes part of the edge again, and the seam along the edge eases in what the dart
 * took out. A flat seam becomes an eased one with the edge on its longer side; the walk says what another rule makes of
 * it.
 *
 * <pre>{@code
 * block.adjust(openDart(FRONT, Name.of("bust"), Place.share(SIDE, 0.2), mm(12), mm(110)))
 *         .adjust(easeDart(FRONT, Name.of("bust")));   // the side seam eases 12 mm in
 * }</pre>
 *
 * @param piece the piece
 * @param dart the dart
 * @param closing how the mouth is closed
 */
record EaseDart(Name piece, Name dart, Closing closing) implements PieceStep {
    /** Refuses null. */
    public EaseDart {
        Objects.requireNonNull(piece, "piece");
        Objects.requireNonNull(dart, "dart");
        Objects.requireNonNull(closing, "closing");
    }

    @Override
    public String name() {
        return "ease in the " + dart + " of the " + piece;
    }

    @Override
    public List<Amount> amounts() {
        return List.of(Amount.of("closed", closing.text()));
    }

    /**
     * Closes the dart of a piece by itself.
     *
     * @throws PatternException if the piece has no such dart, or the dart lies at a corner
     */
    @Override
    public Piece on(Piece before) {
        Dart.in(before, dart);
        Edge host = before.before(Dart.legA(dart));
        Edge past = before.after(Dart.legB(dart));
        if (!past.name().equals(Dart.past(host.name(), dart))) {
            throw PatternException.of(
                    name(),
                    "must lie inside an edge to be eased in",
                    "a dart between '" + host.name() + "' and '" + past.name() + "'",
                    "move it into an edge first");
        }
        Closing.Bridged bridged = closing.across(host.path(), past.path());
        List<Edge> edges = new ArrayList<>();
        for (Edge edge : before.edges()) {
            if (edge.name().equals(host.name())) {
                edges.add(edge.withPath(bridged.before().then(bridged.gap()).then(bridged.after())));
            } else if (!edge.name().equals(Dart.legA(dart))
                    && !edge.name().equals(Dart.legB(dart))
                    && !edge.name().equals(past.name())) {
                edges.add(edge);
            }
        }
        List<CarriedNotches.Carried> notches = before.notches().stream()
                .map(notch -> CarriedNotches.Carried.of(before, notch, before.pointOf(notch)))
                .toList();
        return before.withNotches(List.of())
                .withEdges(edges)
                .withLines(TrueDartFold.linesWithout(before, dart))
                .withNotches(CarriedNotches.on(
                        notches, edges, edge -> List.of(edge.equals(past.name()) ? host.name() : edge)));
    }

    @Override
    public Reshaped reshape(Garment garment) {
        Piece before = garment.piece(piece);
        Piece after = on(before);
        Name host = before.before(Dart.legA(dart)).name();
        EdgeRef hostRef = EdgeRef.of(piece, host);
        EdgeRef pastRef = EdgeRef.of(piece, Dart.past(host, dart));
        Length ease = Length.mm(after.path(host).length()
                - before.path(host).length()
                - before.path(pastRef.edge()).length());
        EdgeChanges changes = new EdgeChanges();
        changes.became(hostRef, List.of(hostRef));
        changes.became(pastRef, List.of(hostRef));
        List<Seam> seams = new ArrayList<>();
        for (Seam seam : garment.seams()) {
            if (!seam.has(EdgeRef.of(piece, Dart.legA(dart)))) {
                Seam now = changes.on(seam);
                seams.add(now.has(hostRef) ? eased(now, hostRef, ease) : now);
            }
        }
        Garment eased = garment.with(
                garment.pieces().stream()
                        .map(each -> each.name().equals(piece) ? after : each)
                        .toList(),
                seams,
                changes.on(garment.measures()));
        return Reshaped.of(
                eased,
                Note.rule("the mouth of the dart is edge again: " + ease.text() + " to be eased in along '" + host
                        + "'"));
    }

    private static Seam eased(Seam seam, EdgeRef host, Length ease) {
        if (!(seam.rule() instanceof SeamRule.Flat)) {
            return seam;
        }
        boolean onB = seam.b().has(host);
        return new Seam(
                seam.name(),
                onB ? seam.a() : seam.b(),
                onB ? seam.b() : seam.a(),
                SeamRule.eased(ease),
                seam.smoothAt(),
                seam.refit());
    }
}
