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

    private record Fragment(RawCurve raw, boolean kept, boolean negligible) {
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
        boolean kept = !source.link() && clearance.isKeptBy(piece.pointAt(0.5));
        boolean negligible = !source.link() && piece.start().isCloseTo(piece.end(), 4 * clearance.slack());
        return new Fragment(source.with(piece), kept, negligible);
    }

    private List<List<RawCurve>> chained(List<Fragment> fragments) {
        boolean[] used = new boolean[fragments.size()];
        List<List<RawCurve>> chains = new ArrayList<>();
        for (int first = 0; first < fragments.size(); first++) {
            if (used[first] || !fragments.get(first).kept()) {
                continue;
            }
            List<Integer> chain = new ArrayList<>();
            int at = first;
            while (at >= 0) {
                used[at] = true;
                chain.add(at);
                if (closed
                        && fragments.get(at).end().equals(fragments.get(first).start())) {
                    break;
                }
                at = next(fragments, used, at, fragments.get(at).end());
                // A loop smaller than the slack may be kept in part: back out of it to where the run crossed itself.
                while (at < 0 && closed && chain.size() > 1) {
                    chain.remove(chain.size() - 1);
                    int last = chain.get(chain.size() - 1);
                    at = next(fragments, used, last, fragments.get(last).end());
                }
            }
            if (at >= 0 || !closed) {
                chains.add(withoutSlivers(
                        chain.stream().map(i -> fragments.get(i).raw()).toList()));
            }
        }
        return chains;
    }

    /** Leaves out the loops within a run that are thinner than the slack, and so were kept whole. */
    private List<RawCurve> withoutSlivers(List<RawCurve> run) {
        List<RawCurve> left = new ArrayList<>(run);
        for (int i = 0; i < left.size(); i++) {
            for (int j = i; j < left.size(); j++) {
                boolean whole = i == 0 && j == left.size() - 1;
                if (!whole
                        && left.get(j).curve().end().equals(left.get(i).curve().start())) {
                    Path loop = Path.of(
                            left.subList(i, j + 1).stream().map(RawCurve::curve).toList());
                    if (Math.abs(Area.signed(loop)) <= clearance.slack() * loop.length()) {
                        left.subList(i, j + 1).clear();
                        j = i - 1;
                    }
                }
                if (i >= left.size()) {
                    break;
                }
            }
        }
        return left;
    }

    /** The fragment that goes on from the point: the next in order if it is kept, else any that is; a negligible one in need. */
    private static int next(List<Fragment> fragments, boolean[] used, int at, Point end) {
        int inNeed = -1;
        for (int step = 1; step < fragments.size(); step++) {
            int i = (at + step) % fragments.size();
            if (!used[i] && fragments.get(i).start().equals(end)) {
                if (fragments.get(i).kept()) {
                    return i;
                }
                if (inNeed < 0 && fragments.get(i).negligible()) {
                    inNeed = i;
                }
            }
        }
        return inNeed;
    }
}
