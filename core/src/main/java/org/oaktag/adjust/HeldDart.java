package org.oaktag.adjust;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.oaktag.PatternException;
import org.oaktag.garment.Dart;
import org.oaktag.garment.Dimension;
import org.oaktag.garment.Edge;
import org.oaktag.garment.EdgeRef;
import org.oaktag.garment.End;
import org.oaktag.garment.FoldedDart;
import org.oaktag.garment.Garment;
import org.oaktag.garment.Name;
import org.oaktag.garment.Note;
import org.oaktag.garment.Piece;
import org.oaktag.garment.Seam;
import org.oaktag.geometry.Crossing;
import org.oaktag.geometry.Crossings;
import org.oaktag.geometry.Path;
import org.oaktag.geometry.Point;
import org.oaktag.measure.Length;

/**
 * A dart that waits in another edge of its piece while a step is taken.
 *
 * @param piece the piece before the step, the dart where it belongs
 * @param dart its name
 */
record HeldDart(Piece piece, Name dart) {

    /** A place nearer than this, in millimetres, to where the dart was is the same place. */
    private static final double SAME = 1e-6;

    boolean isSameDart(HeldDart other) {
        return piece.name().equals(other.piece.name()) && dart.equals(other.dart);
    }

    private Edge host() {
        return piece.before(Dart.legA(dart));
    }

    boolean canBeHeldIn(Name edge) {
        return !piece.isOnFold(edge)
                && !isLeg(piece, edge)
                && !Dart.whole(edge).equals(Dart.whole(host().name()))
                && !Dart.whole(edge)
                        .equals(Dart.whole(piece.after(Dart.legB(dart)).name()));
    }

    private static boolean isLeg(Piece piece, Name edge) {
        return Dart.all(piece).stream()
                .anyMatch(each -> edge.equals(Dart.legA(each.name())) || edge.equals(Dart.legB(each.name())));
    }

    MoveDart into(Place place) {
        return new MoveDart(piece.name(), dart, place, 1, dart);
    }

    /** Returns the piece that has the dart. */
    Piece in(Garment garment) {
        return Stream.concat(garment.findPiece(piece.name()).stream(), garment.pieces().stream())
                .filter(each -> each.hasEdge(Dart.legA(dart)) && each.hasEdge(Dart.legB(dart)))
                .findFirst()
                .orElseThrow(() -> PatternException.of(
                        "dart '" + dart + "' of the " + piece.name(),
                        "must be there after a step",
                        "no piece with both its legs",
                        "close it or take this step before it is opened"));
    }

    /**
     * Turns the dart back.
     *
     * @param waiting the piece before the step, the dart held elsewhere
     * @param reshaped the piece after the step, the dart held elsewhere
     */
    Reshaped back(Garment before, Piece waiting, Piece reshaped, Reshaped made) {
        MoveDart turn = new MoveDart(reshaped.name(), dart, home(waiting, reshaped), 1, dart);
        DartRotation rotation = turn.rotation(reshaped);
        Garment turned = inOrder(before, turn.reshape(made.garment()).garment());
        Garment garment = folded().map(
                        end -> new TrueDartFold(reshaped.name(), dart, end).on(turned.piece(reshaped.name())))
                .map(turned::withPiece)
                .orElse(turned);
        List<Note> notes = new ArrayList<>(made.notes());
        notes.add(told(Dart.in(garment.piece(reshaped.name()), dart)));
        List<Dimension> dimensions = made.dimensions().stream()
                .map(each -> !each.piece().equals(reshaped.name())
                        ? each
                        : new Dimension(
                                each.piece(), rotation.moved(each.from()), rotation.moved(each.to()), each.text()))
                .toList();
        return new Reshaped(garment, notes, dimensions);
    }

    private Optional<End> folded() {
        boolean trued = piece.lines().stream().anyMatch(line -> line.name().equals(FoldedDart.peakLine(dart)));
        return trued ? Optional.of(FoldedDart.in(piece, dart).towards()) : Optional.empty();
    }

    private Note told(Dart now) {
        Length was = Dart.in(piece, dart).width();
        boolean same = Math.abs(was.mm() - now.width().mm()) < SAME;
        return Note.done("the " + dart + " was turned out of the way and back, its angle kept: its mouth is "
                + now.width().text() + (same ? ", as it was" : ", where it was " + was.text()));
    }

    /**
     * Where the line from the apex through the closed mouth meets the edge in which the dart was, or one that the step
     * has drawn there; the middle of what is left of the edge where the line meets another that was there before.
     */
    private Place home(Piece waiting, Piece reshaped) {
        Name host = host().name();
        Path edge = waiting.path(host);
        double at = Math.min(host().path().length(), edge.length());
        if (reshaped.hasEdge(host) && reshaped.path(host).equals(edge)) {
            return Place.along(host, End.START, Length.mm(at));
        }
        Point mouth = edge.pointAt(at);
        Point apex = Dart.in(reshaped, dart).apex();
        Met met = reshaped.edges().stream()
                .filter(each -> !isLeg(reshaped, each.name()))
                .flatMap(each -> Crossings.ofLine(
                                each.path(), apex, mouth.minus(apex).unit())
                        .stream()
                        .filter(crossing -> crossing.second() > SAME)
                        .map(crossing -> new Met(each, crossing)))
                .min(Comparator.comparingDouble(each -> each.crossing.second()))
                .orElseThrow(() -> lost("no edge"));
        if (piece.hasEdge(met.edge.name()) && !isSameHost(met.edge.name(), host)) {
            return reshaped.edges().stream()
                    .filter(each -> isSameHost(each.name(), host))
                    .findFirst()
                    .map(each -> Place.share(each.name(), 0.5))
                    .orElseThrow(() -> lost("the " + met.edge.name()));
        }
        double length = met.edge.path().length();
        return Place.along(met.edge.name(), End.START, Length.mm(Math.min(met.crossing.first(), length)));
    }

    private record Met(Edge edge, Crossing crossing) {}

    private static boolean isSameHost(Name edge, Name host) {
        return Dart.whole(edge).equals(Dart.whole(host));
    }

    private PatternException lost(String instead) {
        return PatternException.of(
                "dart '" + dart + "' of the " + piece.name(),
                "must have its line meet the " + Dart.whole(host().name()) + " after a step",
                instead + " in its way",
                "move the dart first, or take a smaller amount");
    }

    /** The seam of the legs stands where it stood, so that what is told in the order of the seams stays in it. */
    private Garment inOrder(Garment before, Garment after) {
        List<Seam> seams = new ArrayList<>(after.seams());
        EdgeRef leg = EdgeRef.of(piece.name(), Dart.legA(dart));
        for (int i = 0; i < before.seams().size(); i++) {
            Seam seam = before.seams().get(i);
            if (seam.has(leg) && seams.removeIf(each -> each.has(leg))) {
                seams.add(Math.min(i, seams.size()), seam);
            }
        }
        return after.with(after.pieces(), seams, after.measures());
    }
}
