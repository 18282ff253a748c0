package org.oaktag.geometry;

import java.util.ArrayList;
import java.util.List;

/**
 * Links edges, each with the inside on its right, to loops. At a place where several leave, the next is the first that
 * is met turning from the edge that arrives through the inside; so pieces that touch there stay apart.
 */
final class OverlayLinks {
    /** How far from a place its edges are looked at, mm, if they are that long. */
    private static final double LOOK = 0.01;

    /** Edges that are further than this from each other, mm, are told apart. */
    private static final double PARTED = 1e-6;

    private final List<OverlayPiece> edges;
    private final List<List<Integer>> leaving = new ArrayList<>();
    private final boolean[] used;
    private final double thin;

    OverlayLinks(List<OverlayPiece> edges, List<Point> vertices) {
        this.edges = edges;
        this.used = new boolean[edges.size()];
        vertices.forEach(vertex -> leaving.add(new ArrayList<>()));
        double reach = 0;
        for (int i = 0; i < edges.size(); i++) {
            leaving.get(edges.get(i).start()).add(i);
            Point start = edges.get(i).curve().start();
            reach = Math.max(reach, Math.max(Math.abs(start.x()), Math.abs(start.y())));
        }
        thin = Math.max(Overlay.BESIDE / 4, 1000 * Math.ulp(reach));
    }

    List<Region.Loop> loops() {
        List<Region.Loop> loops = new ArrayList<>();
        for (int i = 0; i < edges.size(); i++) {
            if (!used[i]) {
                List<OverlayPiece> loop = rejoined(loopFrom(i));
                Path path = Path.of(loop.stream().map(OverlayPiece::curve).toList());
                if (Math.abs(Area.signed(path)) > thin * path.length()) {
                    loops.add(new Region.Loop(
                            loop.stream().map(OverlayPiece::edge).toList()));
                }
            }
        }
        return loops;
    }

    private List<OverlayPiece> loopFrom(int first) {
        List<OverlayPiece> loop = new ArrayList<>();
        int at = first;
        do {
            used[at] = true;
            loop.add(edges.get(at));
            at = next(edges.get(at), first);
        } while (at != first);
        return loop;
    }

    /** Returns the edge that goes on from this one. */
    private int next(OverlayPiece arriving, int first) {
        List<Integer> candidates = leaving.get(arriving.end()).stream()
                .filter(i -> !used[i] || i == first)
                .toList();
        if (candidates.isEmpty()) {
            throw new IllegalStateException("the edge of a region must go on from "
                    + arriving.curve().end() + ", where none leaves: outlines that nearly run along each other there");
        }
        int next = candidates.get(0);
        for (int other : candidates.subList(1, candidates.size())) {
            if (comesFirst(edges.get(other).curve(), edges.get(next).curve(), arriving.curve())) {
                next = other;
            }
        }
        return next;
    }

    /** Tells whether, turning anticlockwise from the edge that arrives, the one that leaves is met before the other. */
    private static boolean comesFirst(Curve one, Curve other, Curve arriving) {
        Curve back = arriving.reversed();
        double most = 0.5 * Math.min(Math.min(one.length(), other.length()), back.length());
        double look = Math.min(LOOK, most);
        while (true) {
            Vector from = seen(back, look);
            double turnOfOne = turn(seen(one, look), from);
            double turnOfOther = turn(seen(other, look), from);
            boolean apart = Math.abs(turnOfOne - turnOfOther) * look > PARTED
                    && isOff(turnOfOne, look)
                    && isOff(turnOfOther, look);
            if (apart || look >= most) {
                return turnOfOne < turnOfOther;
            }
            look = Math.min(2 * look, most);
        }
    }

    private static boolean isOff(double turn, double look) {
        return Math.min(turn, 2 * Math.PI - turn) * look > PARTED;
    }

    private static Vector seen(Curve curve, double look) {
        return curve.pointAt(curve.parameterAt(look)).minus(curve.start());
    }

    /** The angle, anticlockwise on the table, from one to the other, more than 0 and up to a turn. */
    private static double turn(Vector to, Vector from) {
        double turn = to.angleTo(from);
        return turn > 0 ? turn : turn + 2 * Math.PI;
    }

    /** Joins what was cut where nothing leaves or arrives any more. */
    private static List<OverlayPiece> rejoined(List<OverlayPiece> loop) {
        List<OverlayPiece> joined = new ArrayList<>();
        for (OverlayPiece piece : loop) {
            int last = joined.size() - 1;
            if (last >= 0 && joined.get(last).goesOnWith(piece)) {
                joined.set(last, joined.get(last).joinedWith(piece));
            } else {
                joined.add(piece);
            }
        }
        int last = joined.size() - 1;
        if (last > 0 && joined.get(last).goesOnWith(joined.get(0))) {
            joined.set(0, joined.get(last).joinedWith(joined.get(0)));
            joined.remove(last);
        }
        return joined;
    }
}
