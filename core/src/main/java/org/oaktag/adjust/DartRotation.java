package org.oaktag.adjust;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.oaktag.PatternException;
import org.oaktag.garment.Dart;
import org.oaktag.garment.Edge;
import org.oaktag.garment.EdgeRef;
import org.oaktag.garment.End;
import org.oaktag.garment.Grainline;
import org.oaktag.garment.InnerLine;
import org.oaktag.garment.Mark;
import org.oaktag.garment.Name;
import org.oaktag.garment.Notch;
import org.oaktag.garment.Piece;
import org.oaktag.geometry.Path;
import org.oaktag.geometry.Point;
import org.oaktag.geometry.Transform;

/**
 * Cuts a piece from a place on its outline to the apex of a dart and turns one part about the apex until the dart, or a
 * share of it, is closed; it opens at the cut.
 */
final class DartRotation {

    private final Divided divided;
    private final Dart dart;
    private final Name opened;
    private final boolean closes;
    private final boolean leftTurns;
    private final Transform turn;
    private final List<Named> ring = new ArrayList<>();

    /** A stretch of the new outline and the edge from which it comes. */
    private record Named(Name source, Fragment fragment) {
        Named renamed(Name other) {
            return new Named(source, fragment.renamed(other));
        }
    }

    private DartRotation(Divided divided, Dart dart, double share, Name opened) {
        this.divided = divided;
        this.dart = dart;
        this.opened = opened;
        closes = share == 1;
        leftTurns = !divided.leftStays();
        turn = Transform.rotation((leftTurns ? -1 : 1) * share * closing(dart), dart.apex());
        build();
    }

    static DartRotation of(Piece piece, Dart dart, Place to, double share, Name opened) {
        for (Dart each : Dart.all(piece)) {
            if (to.edge().equals(Dart.legA(each.name())) || to.edge().equals(Dart.legB(each.name()))) {
                throw PatternException.of(
                        "new place of dart '" + dart.name() + "'",
                        "must lie on an edge that is no leg of a dart",
                        to.text(),
                        "");
            }
        }
        LaidLine line = new LaidLine(
                Path.polyline(to.on(piece), dart.apex()), to, Place.corner(Dart.legB(dart.name()), End.START));
        return new DartRotation(Divided.of(piece, line), dart, share, opened);
    }

    /** The signed angle by which leg b is turned about the apex to lie on leg a. */
    private static double closing(Dart dart) {
        return dart.mouthB().minus(dart.apex()).angleTo(dart.mouthA().minus(dart.apex()));
    }

    private void build() {
        List<Named> left = turned(divided.left(), leftTurns);
        List<Named> right = turned(divided.right(), !leftTurns);
        if (closes) {
            left.remove(left.size() - 1);
            right.remove(0);
            if (left.isEmpty() || right.isEmpty()) {
                throw PatternException.of(
                        "new place of dart '" + dart.name() + "'",
                        "must lie elsewhere than its mouth",
                        divided.line().from().text(),
                        "");
            }
            pin(left, right, leftTurns);
        } else {
            pinApex(left, right);
        }
        ring.addAll(left);
        ring.addAll(right);
        if (closes) {
            rejoinHost(left.get(left.size() - 1).fragment().edge());
        }
        partNewHost();
        Point end = ring.get(ring.size() - 1).fragment().path().end();
        Point start = ring.get(0).fragment().path().start();
        ring.add(drawn(Dart.legA(opened), end, dart.apex()));
        ring.add(drawn(Dart.legB(opened), dart.apex(), start));
    }

    private List<Named> turned(List<Fragment> chain, boolean turns) {
        List<Named> named = new ArrayList<>();
        for (Fragment fragment : chain) {
            named.add(new Named(fragment.edge(), turns ? fragment.moved(turn) : fragment));
        }
        return named;
    }

    private static void pin(List<Named> left, List<Named> right, boolean leftTurns) {
        int last = left.size() - 1;
        Named before = left.get(last);
        Named after = right.get(0);
        if (leftTurns) {
            left.set(
                    last,
                    new Named(
                            before.source(),
                            before.fragment().endingAt(after.fragment().path().start())));
        } else {
            right.set(
                    0,
                    new Named(
                            after.source(),
                            after.fragment().startingAt(before.fragment().path().end())));
        }
    }

    private void pinApex(List<Named> left, List<Named> right) {
        int last = left.size() - 1;
        Named legA = left.get(last);
        Named legB = right.get(0);
        left.set(last, new Named(legA.source(), legA.fragment().endingAt(dart.apex())));
        right.set(0, new Named(legB.source(), legB.fragment().startingAt(dart.apex())));
    }

    /** Where the closed dart parted an edge, both stretches are that edge again. */
    private void rejoinHost(Name host) {
        Name past = Dart.past(host, dart.name());
        ring.replaceAll(each -> each.fragment().edge().equals(past) ? each.renamed(host) : each);
    }

    /** Where the cut parts an edge, what follows the new dart is past it. */
    private void partNewHost() {
        Name host = ring.get(ring.size() - 1).fragment().edge();
        Name past = Dart.past(host, opened);
        for (int i = 0; i < ring.size() && ring.get(i).fragment().edge().equals(host); i++) {
            ring.set(i, ring.get(i).renamed(past));
        }
    }

    private static Named drawn(Name leg, Point from, Point to) {
        return new Named(leg, Fragment.drawn(Edge.straight(leg, from, to)));
    }

    Piece piece() {
        Piece before = divided.piece();
        List<Edge> edges = Ring.edges(
                ring.stream().map(Named::fragment).toList(),
                before.edges().get(0).name());
        List<CarriedNotches.Carried> notches = new ArrayList<>();
        for (Notch notch : before.notches()) {
            notches.add(CarriedNotches.Carried.of(before, notch, moved(before.pointOf(notch), divided.isLeft(notch))));
        }
        List<InnerLine> lines = new ArrayList<>();
        for (InnerLine line : TrueDartFold.linesWithout(before, dart.name())) {
            for (Divided.LinePart part : divided.parts(line)) {
                Path path = part.left() == leftTurns ? part.path().transformed(turn) : part.path();
                lines.add(new InnerLine(line.name(), line.use(), path));
            }
        }
        List<Mark> marks = before.marks().stream()
                .map(mark -> mark.at(moved(mark.point(), divided.isLeft(mark.point()))))
                .toList();
        List<Name> names = edges.stream().map(Edge::name).toList();
        return before.remade(
                edges,
                lines,
                marks,
                CarriedNotches.on(
                        notches,
                        edges,
                        edge -> names.stream()
                                .filter(now -> Dart.whole(now).equals(Dart.whole(edge)))
                                .toList()),
                grainline(before.grainline()),
                before.cut());
    }

    /** Returns where a point of the piece as it was lies now. */
    Point moved(Point point) {
        return moved(point, divided.isLeft(point));
    }

    private Point moved(Point point, boolean left) {
        return left == leftTurns ? turn.apply(point) : point;
    }

    private Grainline grainline(Grainline grain) {
        Point middle = grain.top().midpoint(grain.bottom());
        return grain.transformed(
                Transform.translation(moved(middle, divided.isLeft(middle)).minus(middle)));
    }

    /** Says what became of the edges. */
    EdgeChanges changes() {
        EdgeChanges changes = new EdgeChanges();
        Name piece = divided.piece().name();
        for (Edge edge : divided.piece().edges()) {
            List<EdgeRef> now = ring.stream()
                    .filter(each -> each.source().equals(edge.name()))
                    .map(Named::fragment)
                    .sorted(Comparator.comparingDouble(Fragment::from))
                    .map(fragment -> EdgeRef.of(piece, fragment.edge()))
                    .distinct()
                    .toList();
            if (!now.isEmpty()) {
                changes.became(EdgeRef.of(piece, edge.name()), now);
            }
        }
        return changes;
    }
}
