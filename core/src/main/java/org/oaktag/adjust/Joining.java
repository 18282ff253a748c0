package org.oaktag.adjust;

import java.util.ArrayList;
import java.util.List;
import java.util.function.BiPredicate;
import org.oaktag.PatternException;
import org.oaktag.garment.Cut;
import org.oaktag.garment.Edge;
import org.oaktag.garment.EdgeRef;
import org.oaktag.garment.End;
import org.oaktag.garment.InnerLine;
import org.oaktag.garment.Mark;
import org.oaktag.garment.Name;
import org.oaktag.garment.Piece;
import org.oaktag.garment.Quantity.Corner;
import org.oaktag.garment.WalkedSeam;
import org.oaktag.geometry.Path;
import org.oaktag.geometry.Point;
import org.oaktag.geometry.Transform;
import org.oaktag.geometry.Vector;
import org.oaktag.measure.Length;

/** Lays one piece against another along an edge of each and makes them one. */
final class Joining {

    private static final int PLACES = 32;

    /** The sine of a turn smaller than this is rounding. */
    private static final double TURNED = 1e-9;

    private final Piece first;
    private final Piece second;
    private final Name joined;
    private final Transform motion;
    private final List<Fragment> ring = new ArrayList<>();
    private final List<Name> secondNames = new ArrayList<>();
    private final List<Edge> firstChain;
    private final List<Edge> secondChain;
    private final Name firstEdge;
    private final Name secondEdge;

    /**
     * Lays them together.
     *
     * @param sameEdge tells whether an edge of the first piece and one of the second that meet at the joint and have
     *     one name are to be one edge
     */
    Joining(Piece first, Name firstEdge, Piece second, Name secondEdge, Name joined, BiPredicate<Name, Name> sameEdge) {
        this.first = first;
        this.second = second;
        this.joined = joined;
        this.firstEdge = firstEdge;
        this.secondEdge = secondEdge;
        motion = motion(first.path(firstEdge), second.path(secondEdge));
        requireCongruent();
        firstChain = Chain.without(first, firstEdge);
        secondChain = Chain.without(second, secondEdge);
        firstChain.forEach(edge -> ring.add(Fragment.of(edge, edge.path(), 0)));
        Name last = firstChain.get(firstChain.size() - 1).name();
        Name next = firstChain.get(0).name();
        for (int i = 0; i < secondChain.size(); i++) {
            Edge edge = secondChain.get(i);
            boolean continues = (i == 0 && edge.name().equals(last))
                    || (i == secondChain.size() - 1 && edge.name().equals(next));
            boolean keeps = continues ? sameEdge.test(edge.name(), edge.name()) : !first.hasEdge(edge.name());
            Name name = keeps ? edge.name() : Name.of(second.name() + " " + edge.name());
            secondNames.add(name);
            Point start = i == 0
                    ? last(firstChain).path().end()
                    : ring.get(ring.size() - 1).path().end();
            Path moved = edge.path().transformed(motion);
            Point end = i == secondChain.size() - 1 ? firstChain.get(0).path().start() : moved.end();
            ring.add(Fragment.drawn(edge.withName(name).withPath(moved.withEnds(start, end))));
        }
    }

    private static Edge last(List<Edge> chain) {
        return chain.get(chain.size() - 1);
    }

    private static Transform motion(Path first, Path second) {
        Vector along = first.end().minus(first.start());
        Vector against = second.start().minus(second.end());
        return Transform.translation(first.start().minus(second.end()))
                .then(Transform.rotation(against.angleTo(along), first.start()));
    }

    private void requireCongruent() {
        Path one = first.path(firstEdge);
        Path other = second.path(secondEdge).transformed(motion).reversed();
        double shorter = Math.min(one.length(), other.length());
        double apart = 0;
        for (int i = 0; i <= PLACES; i++) {
            double at = shorter * i / PLACES;
            apart = Math.max(apart, one.pointAt(at).distanceTo(other.pointAt(at)));
        }
        double longer = other.length() - one.length();
        if (Math.abs(longer) > WalkedSeam.TOLERANCE.mm() || apart > WalkedSeam.TOLERANCE.mm()) {
            throw PatternException.of(
                    "edges '" + EdgeRef.of(first.name(), firstEdge) + "' and '" + EdgeRef.of(second.name(), secondEdge)
                            + "'",
                    "must be congruent to be joined",
                    "lengths of " + Length.mm(one.length()).text() + " and "
                            + Length.mm(other.length()).text() + ", and up to "
                            + Length.mm(apart).text() + " between them when they are laid together",
                    "sew them, or redraw one to the other first");
        }
    }

    /** Tells whether the second piece is turned to lie against the first. */
    boolean isTurned() {
        return motion.a() < 0 || Math.abs(motion.b()) > TURNED;
    }

    Piece piece() {
        List<Edge> edges = Ring.edges(ring, first.edges().get(0).name());
        List<InnerLine> lines = new ArrayList<>(first.lines());
        second.lines()
                .forEach(line -> lines.add(
                        new InnerLine(line.name(), line.use(), line.path().transformed(motion))));
        List<Mark> marks = new ArrayList<>(first.marks());
        second.marks().forEach(mark -> marks.add(mark.at(motion.apply(mark.point()))));
        List<CarriedNotches.Carried> notches = new ArrayList<>();
        first.notches().stream()
                .filter(notch -> !notch.edge().equals(firstEdge))
                .forEach(notch -> notches.add(CarriedNotches.Carried.of(first, notch, first.pointOf(notch))));
        second.notches().stream()
                .filter(notch -> !notch.edge().equals(secondEdge))
                .forEach(notch -> notches.add(new CarriedNotches.Carried(
                        notch.on(now(notch.edge())), second.path(notch.edge()), motion.apply(second.pointOf(notch)))));
        Piece piece = first.remade(
                        edges, lines, marks, CarriedNotches.on(notches, edges, List::of), first.grainline(), cut())
                .renamed(joined);
        StraightFold.require(piece);
        return piece;
    }

    private Name now(Name edge) {
        for (int i = 0; i < secondChain.size(); i++) {
            if (secondChain.get(i).name().equals(edge)) {
                return secondNames.get(i);
            }
        }
        throw new IllegalStateException("edge '" + edge + "' is joined and gone");
    }

    /** A part on the fold and one that comes out twice make a piece on the fold. */
    private Cut cut() {
        Cut one = first.cut();
        Cut other = second.cut();
        if (one.equals(other) && !(one instanceof Cut.OnFold)) {
            return one;
        }
        if (one instanceof Cut.OnFold fold
                && other instanceof Cut.OnFold beyond
                && fold.count() == beyond.count()
                && !fold.edge().equals(firstEdge)
                && !beyond.edge().equals(secondEdge)
                && now(beyond.edge()).equals(fold.edge())) {
            return fold;
        }
        boolean sameCount = one.count() * (one instanceof Cut.OnFold ? 2 : 1)
                == other.count() * (other instanceof Cut.OnFold ? 2 : 1);
        if (sameCount
                && one instanceof Cut.OnFold fold
                && other instanceof Cut.MirroredPair
                && !fold.edge().equals(firstEdge)) {
            return fold;
        }
        if (sameCount
                && other instanceof Cut.OnFold fold
                && one instanceof Cut.MirroredPair
                && !fold.edge().equals(secondEdge)) {
            return new Cut.OnFold(now(fold.edge()), fold.count());
        }
        throw PatternException.of(
                "pieces '" + first.name() + "' and '" + second.name() + "'",
                "must be cut alike to be joined, on one fold that runs on through both, or the one on the fold and the"
                        + " other as a mirrored pair",
                one.instruction() + " and " + other.instruction(),
                "unfold the piece, or cut both alike");
    }

    EdgeChanges changes() {
        EdgeChanges changes = new EdgeChanges();
        changes.laid(second.name(), motion);
        for (Edge edge : firstChain) {
            changes.became(EdgeRef.of(first.name(), edge.name()), List.of(EdgeRef.of(joined, edge.name())));
        }
        for (Edge edge : secondChain) {
            changes.became(EdgeRef.of(second.name(), edge.name()), List.of(EdgeRef.of(joined, now(edge.name()))));
        }
        EdgeRef one = EdgeRef.of(first.name(), firstEdge);
        EdgeRef other = EdgeRef.of(second.name(), secondEdge);
        Corner lastOfFirst = Corner.at(joined, last(firstChain).name(), End.END);
        Corner firstOfFirst = Corner.at(joined, firstChain.get(0).name(), End.START);
        changes.became(one, List.of());
        changes.became(other, List.of());
        changes.moved(new Corner(one, End.START), lastOfFirst);
        changes.moved(new Corner(one, End.END), firstOfFirst);
        changes.moved(new Corner(other, End.END), lastOfFirst);
        changes.moved(new Corner(other, End.START), firstOfFirst);
        return changes;
    }

    /** The corners of either piece that come to lie at the start of the first piece's edge, and those at its end. */
    static List<List<Corner>> joints(Piece first, Name firstEdge, Piece second, Name secondEdge) {
        return List.of(
                List.of(
                        Corner.at(first.name(), firstEdge, End.START),
                        Corner.at(first.name(), first.before(firstEdge).name(), End.END),
                        Corner.at(second.name(), secondEdge, End.END),
                        Corner.at(second.name(), second.after(secondEdge).name(), End.START)),
                List.of(
                        Corner.at(first.name(), firstEdge, End.END),
                        Corner.at(first.name(), first.after(firstEdge).name(), End.START),
                        Corner.at(second.name(), secondEdge, End.START),
                        Corner.at(second.name(), second.before(secondEdge).name(), End.END)));
    }
}
