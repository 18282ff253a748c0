package org.oaktag.adjust;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.oaktag.PatternException;
import org.oaktag.garment.Amount;
import org.oaktag.garment.Dart;
import org.oaktag.garment.Dimension;
import org.oaktag.garment.Edge;
import org.oaktag.garment.EdgeRef;
import org.oaktag.garment.Garment;
import org.oaktag.garment.Name;
import org.oaktag.garment.Notch;
import org.oaktag.garment.Note;
import org.oaktag.garment.Piece;
import org.oaktag.garment.Seam;
import org.oaktag.geometry.Path;
import org.oaktag.geometry.Point;
import org.oaktag.geometry.Vector;
import org.oaktag.measure.Length;

/**
 * Opens a dart at an edge: takes a wedge of cloth out of it, its mouth half on either side of the place, its apex on
 * the middle line of the mouth, so that its legs are equal. The sewn edge is shorter by what lay across the mouth.
 *
 * <pre>{@code
 * Garment darted = block.adjust(openDart(FRONT, Name.of("bust"), Place.share(SIDE, 0.2), mm(25), mm(110)));
 * }</pre>
 *
 * @param piece the piece
 * @param place the middle of the mouth
 * @param width how wide the mouth is along the edge
 * @param depth how far the apex lies from the mouth, straight in
 * @param dart the dart's name
 */
record OpenDart(Name piece, Place place, Length width, Length depth, Name dart) implements PieceStep {

    private static final double ROUNDING = 1e-6;

    /** Refuses null. */
    public OpenDart {
        Objects.requireNonNull(piece, "piece");
        Objects.requireNonNull(place, "place");
        Objects.requireNonNull(width, "width");
        Objects.requireNonNull(depth, "depth");
        Objects.requireNonNull(dart, "dart");
    }

    @Override
    public String name() {
        return "open the " + dart + " of the " + piece;
    }

    @Override
    public List<Amount> amounts() {
        return List.of(Amount.of("at", place.text()), Amount.of("width", width), Amount.of("depth", depth));
    }

    /**
     * Opens the dart in a piece by itself.
     *
     * @throws PatternException if the mouth does not lie on the edge, the edge lies on the fold, the dart has the name
     *     of another, it swallows a notch or its apex does not lie inside the piece
     */
    @Override
    public Piece on(Piece before) {
        Path path = before.path(place.edge());
        double at = place.distanceOn(before);
        double half = width.mm() / 2;
        requireRoom(before, at, path.length());
        double from = at - half;
        double to = at + half;
        requireNoNotch(before, from, to);
        Point mouthA = from <= ROUNDING ? path.start() : path.sub(0, from).end();
        Point mouthB = to >= path.length() - ROUNDING
                ? path.end()
                : path.sub(to, path.length()).start();
        Vector inward = mouthB.minus(mouthA).unit().rightNormal();
        Point apex = mouthA.midpoint(mouthB).plus(inward.times(depth.mm()));
        List<Edge> edges = new ArrayList<>();
        for (Edge edge : before.edges()) {
            if (!edge.name().equals(place.edge())) {
                edges.add(edge);
                continue;
            }
            if (from > ROUNDING) {
                edges.add(edge.withPath(path.sub(0, from)));
            }
            edges.add(Edge.straight(Dart.legA(dart), mouthA, apex));
            edges.add(Edge.straight(Dart.legB(dart), apex, mouthB));
            if (to < path.length() - ROUNDING) {
                edges.add(edge.withName(from > ROUNDING ? Dart.past(edge.name(), dart) : edge.name())
                        .withPath(path.sub(to, path.length())));
            }
        }
        List<CarriedNotches.Carried> notches = before.notches().stream()
                .map(notch -> CarriedNotches.Carried.of(before, notch, before.pointOf(notch)))
                .toList();
        Piece opened = before.withNotches(List.of())
                .withEdges(edges)
                .withNotches(CarriedNotches.on(notches, edges, edge -> List.of(edge, Dart.past(edge, dart))));
        if (!before.outline().contains(apex) || opened.outline().meetsItself()) {
            throw PatternException.of(
                    name(),
                    "must have its apex and legs inside the piece",
                    "an apex " + depth.text() + " from the edge",
                    "make the dart shallower or open it elsewhere");
        }
        return opened;
    }

    private void requireRoom(Piece before, double at, double length) {
        if (before.isOnFold(place.edge())) {
            throw PatternException.of(
                    name(), "must not lie on the fold of the cloth", "edge '" + place.edge() + "'", "");
        }
        if (before.hasEdge(Dart.legA(dart))) {
            throw PatternException.of(name(), "must have a name of its own", "'" + dart + "' twice", "");
        }
        double most = 2 * Math.min(at, length - at);
        if (!(width.mm() > 0) || width.mm() > most + ROUNDING || width.mm() > length - 1) {
            throw PatternException.of(
                    name(),
                    "must have a mouth above 0 mm and up to "
                            + Length.mm(Math.max(0, Math.min(most, length - 1))).text() + " wide there",
                    width.text(),
                    "");
        }
        if (!(depth.mm() > 0)) {
            throw PatternException.of(name(), "must be deeper than 0 mm", depth.text(), "");
        }
    }

    private void requireNoNotch(Piece before, double from, double to) {
        for (Notch notch : before.notches()) {
            double at = notch.fromStart(before.path(notch.edge()).length());
            if (notch.edge().equals(place.edge()) && at > from && at < to) {
                throw PatternException.of(
                        name(),
                        "must not swallow a notch",
                        "notch '" + notch.name() + "' at " + Length.mm(at).text(),
                        "open the dart beside it");
            }
        }
    }

    @Override
    public Reshaped reshape(Garment garment) {
        Piece before = garment.piece(piece);
        Piece after = on(before);
        EdgeChanges changes = new EdgeChanges();
        EdgeRef host = EdgeRef.of(piece, place.edge());
        Name past = Dart.past(place.edge(), dart);
        if (after.hasEdge(past)) {
            changes.became(host, List.of(host, EdgeRef.of(piece, past)));
        }
        List<Seam> seams =
                new ArrayList<>(garment.seams().stream().map(changes::on).toList());
        seams.add(DartSeam.of(piece, dart));
        Garment opened = garment.with(
                garment.pieces().stream()
                        .map(each -> each.name().equals(piece) ? after : each)
                        .toList(),
                seams,
                changes.on(garment.measures()));
        Dart made = Dart.in(after, dart);
        Note rule = Note.rule("a mouth of " + made.width().text() + " and an apex " + depth.text()
                + " in: two legs of " + made.leg().text() + " at "
                + made.angle().text()
                + "; the sewn edge is shorter by " + width.text());
        return new Reshaped(
                opened,
                List.of(rule),
                List.of(new Dimension(
                        piece, made.mouthA(), made.mouthB(), made.width().text())));
    }
}
