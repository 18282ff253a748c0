package org.oaktag.adjust;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.oaktag.PatternException;
import org.oaktag.garment.Cut;
import org.oaktag.garment.Edge;
import org.oaktag.garment.EdgeRef;
import org.oaktag.garment.End;
import org.oaktag.garment.InnerLine;
import org.oaktag.garment.Mark;
import org.oaktag.garment.Name;
import org.oaktag.garment.Notch;
import org.oaktag.garment.Piece;
import org.oaktag.geometry.Path;
import org.oaktag.geometry.Point;

/** Makes two pieces of one that was cut along a line. */
final class Splitting {

    private final Divided divided;
    private final Part left;
    private final Part right;
    private final List<Fragment> leftEdges;
    private final List<Fragment> rightEdges;

    private Splitting(Divided divided, Part left, Part right) {
        this.divided = divided;
        this.left = left;
        this.right = right;
        leftEdges = named(divided.left());
        rightEdges = named(divided.right());
    }

    static Splitting of(Piece piece, LineAcross line, Part left, Part right) {
        return new Splitting(Divided.of(piece, line.on(piece)), left, right);
    }

    /** An edge that was cut twice comes back at the end of the chain; its second stretch gets a name of its own. */
    private static List<Fragment> named(List<Fragment> chain) {
        int last = chain.size() - 1;
        boolean twice = last > 0 && chain.get(0).edge().equals(chain.get(last).edge());
        if (!twice) {
            return chain;
        }
        List<Fragment> named = new ArrayList<>(chain);
        named.set(0, chain.get(0).renamed(chain.get(0).edge().with("beyond")));
        return named;
    }

    Piece left() {
        return part(left, leftEdges, divided.cut().reversed(), true);
    }

    Piece right() {
        return part(right, rightEdges, divided.cut(), false);
    }

    private Piece part(Part part, List<Fragment> chain, Path closing, boolean isLeft) {
        Piece whole = divided.piece();
        List<Fragment> ring = new ArrayList<>(chain);
        ring.add(Fragment.drawn(new Edge(part.edge(), closing)));
        Name first = whole.edges().get(0).name();
        boolean hasFirst = chain.stream().anyMatch(fragment -> fragment.edge().equals(first));
        List<Edge> edges = Ring.edges(ring, hasFirst ? first : part.edge());
        List<CarriedNotches.Carried> notches = new ArrayList<>();
        for (Notch notch : whole.notches()) {
            if (divided.isLeft(notch) == isLeft) {
                notches.add(CarriedNotches.Carried.of(whole, notch, whole.pointOf(notch)));
            }
        }
        List<InnerLine> lines = new ArrayList<>();
        for (InnerLine line : whole.lines()) {
            divided.parts(line).stream()
                    .filter(stretch -> stretch.left() == isLeft)
                    .forEach(stretch -> lines.add(new InnerLine(line.name(), line.use(), stretch.path())));
        }
        List<Mark> marks = whole.marks().stream()
                .filter(mark -> divided.isLeft(mark.point()) == isLeft)
                .toList();
        Piece made = whole.remade(
                        edges,
                        lines,
                        marks,
                        CarriedNotches.on(notches, edges, edge -> List.of(edge, edge.with("beyond"))),
                        whole.grainline(),
                        cut(chain))
                .renamed(part.piece())
                .withCloth(part.cloth().orElse(whole.cloth()));
        return made.withGrainline(PartGrain.of(whole.grainline(), made.outline()));
    }

    /** A part that is not on the fold comes out twice, once on either side of it. */
    private Cut cut(List<Fragment> chain) {
        if (!(divided.piece().cut() instanceof Cut.OnFold fold)) {
            return divided.piece().cut();
        }
        boolean onFold = chain.stream().anyMatch(fragment -> fragment.edge().equals(fold.edge()));
        boolean cutOff = chain.stream()
                .anyMatch(fragment -> fragment.edge().equals(fold.edge().with("beyond")));
        if (onFold && cutOff) {
            throw PatternException.of(
                    "line across piece '" + divided.piece().name() + "'",
                    "must cut the fold '" + fold.edge() + "' at most once",
                    "twice",
                    "let one end of the line lie on another edge");
        }
        return onFold ? fold : new Cut.MirroredPair(fold.count());
    }

    /** Says what became of the edges of the whole. */
    EdgeChanges changes() {
        EdgeChanges changes = new EdgeChanges();
        Piece whole = divided.piece();
        for (Edge edge : whole.edges()) {
            List<Fragment> stretches = new ArrayList<>();
            List<EdgeRef> now = new ArrayList<>();
            collect(edge.name(), leftEdges, divided.left(), left, stretches, now);
            collect(edge.name(), rightEdges, divided.right(), right, stretches, now);
            changes.became(EdgeRef.of(whole.name(), edge.name()), inOrder(stretches, now));
        }
        return changes;
    }

    private static void collect(
            Name edge,
            List<Fragment> named,
            List<Fragment> chain,
            Part part,
            List<Fragment> stretches,
            List<EdgeRef> now) {
        for (int i = 0; i < chain.size(); i++) {
            if (chain.get(i).edge().equals(edge)) {
                stretches.add(chain.get(i));
                now.add(EdgeRef.of(part.piece(), named.get(i).edge()));
            }
        }
    }

    private static List<EdgeRef> inOrder(List<Fragment> stretches, List<EdgeRef> now) {
        List<Integer> order = new ArrayList<>();
        for (int i = 0; i < now.size(); i++) {
            order.add(i);
        }
        order.sort((a, b) ->
                Double.compare(stretches.get(a).from(), stretches.get(b).from()));
        return order.stream().map(now::get).toList();
    }

    /** Tells at which ends the line meets the inside of an edge, so that the outlines run on smoothly across it. */
    Set<End> smoothEnds() {
        Set<End> smooth = new HashSet<>();
        if (divided.left().get(0).edge().equals(last(divided.right()).edge())) {
            smooth.add(End.START);
        }
        if (divided.right().get(0).edge().equals(last(divided.left()).edge())) {
            smooth.add(End.END);
        }
        return smooth;
    }

    private static Fragment last(List<Fragment> chain) {
        return chain.get(chain.size() - 1);
    }

    Point start() {
        return divided.cut().start();
    }

    double length() {
        return divided.cut().length();
    }
}
