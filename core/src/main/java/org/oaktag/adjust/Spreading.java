package org.oaktag.adjust;

import java.util.ArrayList;
import java.util.List;
import org.oaktag.garment.Edge;
import org.oaktag.garment.Grainline;
import org.oaktag.garment.InnerLine;
import org.oaktag.garment.Mark;
import org.oaktag.garment.Notch;
import org.oaktag.garment.Piece;
import org.oaktag.geometry.Curve;
import org.oaktag.geometry.Path;
import org.oaktag.geometry.Point;
import org.oaktag.geometry.Transform;

/** One slash: the piece is cut along a line, one part is moved away, and both gaps are closed. */
final class Spreading {

    /** A gap narrower than this, in millimetres, is none. */
    private static final double SHUT = 1e-9;

    private final Divided divided;
    private final boolean leftMoves;
    private final Transform motion;
    private final Closing closing;

    private Spreading(Divided divided, boolean leftMoves, Transform motion, Closing closing) {
        this.divided = divided;
        this.leftMoves = leftMoves;
        this.motion = motion;
        this.closing = closing;
    }

    static Spreading of(Piece piece, LaidLine line, Spread spread, Closing closing) {
        Divided divided = Divided.of(piece, line);
        boolean leftMoves = !divided.leftStays();
        return new Spreading(divided, leftMoves, spread.motion(line, leftMoves), closing);
    }

    private Point moved(Point point, boolean left) {
        return left == leftMoves ? motion.apply(point) : point;
    }

    /** A line that lies on one side of the slash, after it was opened. */
    Path moved(Path path) {
        return divided.isLeft(path.pointAt(path.length() / 2)) == leftMoves ? path.transformed(motion) : path;
    }

    Piece piece() {
        Piece piece = divided.piece();
        List<Fragment> left = new ArrayList<>(moved(divided.left(), leftMoves));
        List<Fragment> right = new ArrayList<>(moved(divided.right(), !leftMoves));
        List<Fragment> ring = new ArrayList<>();
        List<Fragment> atTo = bridge(left, right, leftMoves, divided.line().to());
        List<Fragment> atFrom = bridge(right, left, !leftMoves, divided.line().from());
        ring.addAll(left);
        ring.addAll(atTo);
        ring.addAll(right);
        ring.addAll(atFrom);
        List<Edge> edges = Ring.edges(ring, piece.edges().get(0).name());
        List<CarriedNotches.Carried> notches = new ArrayList<>();
        for (Notch notch : piece.notches()) {
            notches.add(CarriedNotches.Carried.of(piece, notch, moved(piece.pointOf(notch), divided.isLeft(notch))));
        }
        Piece spread = piece.remade(
                edges,
                piece.lines().stream().map(this::spread).toList(),
                piece.marks().stream().map(this::moved).toList(),
                CarriedNotches.on(notches, edges, List::of),
                grainline(piece.grainline()),
                piece.cut());
        StraightFold.require(spread);
        return spread;
    }

    private List<Fragment> moved(List<Fragment> chain, boolean moves) {
        return moves ? chain.stream().map(fragment -> fragment.moved(motion)).toList() : chain;
    }

    /**
     * Closes the gap between the end of one chain and the start of the next, of which the last and the first may be
     * cut.
     */
    private List<Fragment> bridge(List<Fragment> before, List<Fragment> after, boolean beforeMoves, Place at) {
        int last = before.size() - 1;
        Fragment one = before.get(last);
        Fragment other = after.get(0);
        if (one.path().end().isCloseTo(other.path().start(), SHUT)) {
            // What lay still stays as it is to the last bit.
            if (beforeMoves) {
                before.set(last, one.endingAt(other.path().start()));
            } else {
                after.set(0, other.startingAt(one.path().end()));
            }
            return List.of();
        }
        if (!one.edge().equals(at.edge()) || !other.edge().equals(at.edge())) {
            return List.of(gap(at, Path.polyline(one.path().end(), other.path().start())));
        }
        Closing.Bridged bridged = closing.across(one.path(), other.path());
        before.set(last, one.along(bridged.before()));
        after.set(0, other.along(bridged.after()));
        return List.of(gap(at, bridged.gap()));
    }

    private Fragment gap(Place at, Path path) {
        return Fragment.drawn(divided.piece().edge(at.edge()).withPath(path));
    }

    /** An inner line that the slash cuts is bridged straight. */
    private InnerLine spread(InnerLine inner) {
        List<Curve> curves = new ArrayList<>();
        for (Divided.LinePart part : divided.parts(inner)) {
            Path path = part.left() == leftMoves ? part.path().transformed(motion) : part.path();
            if (!curves.isEmpty()) {
                Point end = curves.get(curves.size() - 1).end();
                if (end.isCloseTo(path.start(), SHUT)) {
                    path = path.withEnds(end, path.end());
                } else {
                    Ring.append(curves, Path.polyline(end, path.start()));
                }
            }
            Ring.append(curves, path);
        }
        return new InnerLine(inner.name(), inner.use(), Path.of(curves));
    }

    private Mark moved(Mark mark) {
        return mark.at(moved(mark.point(), divided.isLeft(mark.point())));
    }

    /** The grainline keeps its direction and goes with the part that holds its middle. */
    private Grainline grainline(Grainline grain) {
        Point middle = grain.top().midpoint(grain.bottom());
        return divided.isLeft(middle) == leftMoves
                ? grain.transformed(Transform.translation(motion.apply(middle).minus(middle)))
                : grain;
    }
}
