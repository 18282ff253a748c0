package org.oaktag.geometry;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * Trims a run of parallels: cuts it at all its self-crossings, drops the fragments that do not keep their distance from the source,
 * and joins the rest into loops, or into open runs.
 *
 * <p>Whether a point keeps its distance changes only where the run crosses itself, so one point inside a fragment decides for all of it.
 */
final class OffsetTrim {
    /** Cuts nearer than this, mm, are at one point. */
    private static final double SAME = 1e-7;

    private final List<RawCurve> raw;
    private final Clearance clearance;
    private final boolean closed;
    private final List<Point> anchors = new ArrayList<>();
    private final List<List<Cut>> cuts = new ArrayList<>();

    private record Cut(double t, Point point) {}

    private record Fragment(RawCurve raw, boolean kept) {
        Point start() {
            return raw.curve().start();
        }

        Point end() {
            return raw.curve().end();
        }
    }

    private OffsetTrim(List<RawCurve> raw, Clearance clearance, boolean closed) {
        this.raw = raw;
        this.clearance = clearance;
        this.closed = closed;
    }

    /** Returns the loops that are left of a closed run, each a run of curves that ends where it starts. */
    static List<List<RawCurve>> loops(List<RawCurve> raw, Clearance clearance) {
        return new OffsetTrim(raw, clearance, true).trimmed();
    }

    /** Returns the open runs that are left of an open run. */
    static List<List<RawCurve>> runs(List<RawCurve> raw, Clearance clearance) {
        return new OffsetTrim(raw, clearance, false).trimmed();
    }

    private List<List<RawCurve>> trimmed() {
        for (RawCurve curve : raw) {
            cuts.add(new ArrayList<>(List.of(
                    new Cut(0, anchor(curve.curve().start())),
                    new Cut(1, anchor(curve.curve().end())))));
        }
        for (int i = 0; i < raw.size(); i++) {
            if (raw.get(i).curve() instanceof Cubic cubic) {
                cut(i, i, SelfContacts.of(cubic));
            }
            for (int j = i + 1; j < raw.size(); j++) {
                boolean joinedBack = closed && i == 0 && j == raw.size() - 1;
                cut(i, j, SelfContacts.between(raw.get(i).curve(), raw.get(j).curve(), j == i + 1, joinedBack));
            }
        }
        return chained(fragments());
    }

    private void cut(int i, int j, List<Contact> contacts) {
        Curve curve = raw.get(i).curve();
        for (Contact contact : contacts) {
            Point start = anchor(curve.pointAt(contact.t0()));
            cuts.get(i).add(new Cut(contact.t0(), start));
            cuts.get(j).add(new Cut(contact.u0(), start));
            if (!contact.isPoint()) {
                Point end = anchor(curve.pointAt(contact.t1()));
                cuts.get(i).add(new Cut(contact.t1(), end));
                cuts.get(j).add(new Cut(contact.u1(), end));
            }
        }
    }

    /** Returns the first known point this near, so that all that meets there meets exactly. */
    private Point anchor(Point point) {
        for (Point anchor : anchors) {
            if (anchor.isCloseTo(point, SAME)) {
                return anchor;
            }
        }
        anchors.add(point);
        return point;
    }

    private List<Fragment> fragments() {
        List<Fragment> fragments = new ArrayList<>();
        for (int i = 0; i < raw.size(); i++) {
            List<Cut> along = cuts.get(i);
            along.sort(Comparator.comparingDouble(Cut::t));
            for (int k = 1; k < along.size(); k++) {
                Cut from = along.get(k - 1);
                Cut to = along.get(k);
                if (to.t() > from.t() && (!from.point().equals(to.point()) || to.t() - from.t() > 0.01)) {
                    fragments.add(fragment(raw.get(i), from, to));
                }
            }
        }
        return fragments;
    }

    private Fragment fragment(RawCurve source, Cut from, Cut to) {
        Curve piece = Joined.withEnds(source.curve().sub(from.t(), to.t()), from.point(), to.point());
        boolean kept = !source.link() && clearance.isKeptBy(piece.pointAt(0.5), source.edge());
        return new Fragment(source.with(piece), kept);
    }

    /**
     * Follows the fragments from end to start. Where the way comes back to a point that it has passed, the loop between is taken out, and
     * the rest goes on from there; a loop that is thinner than the slack is none. Of an open run only a loop is left that nothing leads to.
     */
    private List<List<RawCurve>> chained(List<Fragment> fragments) {
        boolean[] left = closed ? withoutDeadEnds(fragments) : kept(fragments);
        List<List<RawCurve>> chains = new ArrayList<>();
        for (int first = 0; first < fragments.size(); first++) {
            if (!left[first]) {
                continue;
            }
            List<Integer> chain = new ArrayList<>();
            int at = first;
            while (at >= 0) {
                left[at] = false;
                chain.add(at);
                Point end = fragments.get(at).end();
                List<Integer> loop = loopBackTo(end, chain, fragments);
                if ((closed || loop.size() == chain.size()) && isThick(loop, fragments)) {
                    chains.add(curves(loop, fragments));
                }
                loop.clear();
                at = chain.isEmpty() ? -1 : next(fragments, left, at, end);
            }
            if (!closed && !chain.isEmpty()) {
                chains.add(curves(chain, fragments));
            }
        }
        return chains;
    }

    private static boolean[] kept(List<Fragment> fragments) {
        boolean[] kept = new boolean[fragments.size()];
        for (int i = 0; i < kept.length; i++) {
            kept[i] = fragments.get(i).kept();
        }
        return kept;
    }

    /** Drops, as long as there are any, fragments that nothing leads to or that lead to nothing. */
    private static boolean[] withoutDeadEnds(List<Fragment> fragments) {
        boolean[] left = kept(fragments);
        boolean changed = true;
        while (changed) {
            changed = false;
            for (int i = 0; i < left.length; i++) {
                if (left[i] && !(isReached(i, fragments, left) && isLeft(i, fragments, left))) {
                    left[i] = false;
                    changed = true;
                }
            }
        }
        return left;
    }

    private static boolean isReached(int i, List<Fragment> fragments, boolean[] left) {
        for (int k = 0; k < left.length; k++) {
            if (left[k] && fragments.get(k).end().equals(fragments.get(i).start())) {
                return true;
            }
        }
        return false;
    }

    private static boolean isLeft(int i, List<Fragment> fragments, boolean[] left) {
        for (int k = 0; k < left.length; k++) {
            if (left[k] && fragments.get(k).start().equals(fragments.get(i).end())) {
                return true;
            }
        }
        return false;
    }

    /** Returns a view of the end of the chain from where it first left the point; empty if it did not. */
    private static List<Integer> loopBackTo(Point point, List<Integer> chain, List<Fragment> fragments) {
        for (int k = 0; k < chain.size(); k++) {
            if (fragments.get(chain.get(k)).start().equals(point)) {
                return chain.subList(k, chain.size());
            }
        }
        return chain.subList(chain.size(), chain.size());
    }

    private boolean isThick(List<Integer> loop, List<Fragment> fragments) {
        if (loop.isEmpty()) {
            return false;
        }
        Path path =
                Path.of(curves(loop, fragments).stream().map(RawCurve::curve).toList());
        return Math.abs(Area.signed(path)) > clearance.slack() * path.length();
    }

    private static List<RawCurve> curves(List<Integer> chain, List<Fragment> fragments) {
        return chain.stream().map(i -> fragments.get(i).raw()).toList();
    }

    /** The next fragment in order that goes on from the point; -1 if there is none. */
    private static int next(List<Fragment> fragments, boolean[] left, int at, Point end) {
        for (int step = 1; step < fragments.size(); step++) {
            int i = (at + step) % fragments.size();
            if (left[i] && fragments.get(i).start().equals(end)) {
                return i;
            }
        }
        return -1;
    }
}
