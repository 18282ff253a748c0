package org.oaktag.geometry;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * Cuts a run of parallels at all its self-crossings, and at what else is given to cut it, into fragments that keep
 * their distance from the source or do not.
 *
 * <p>Whether a point keeps its distance changes only at a cut, so one point inside a fragment decides for all of it. Of
 * an open run seven and its ends are asked, and where they disagree it is cut where they begin to. A cut that parts two
 * fragments that are both kept, and at which the run does not cross itself, is let be.
 */
final class OffsetFragments {
    /** Cuts nearer than this, mm, are at one point; more where the coordinates are so large that a double is coarser. */
    static final double SAME = 1e-7;

    private static final int PLACES = 7;

    /** After so many halvings a place is known to more digits than the tolerance asks for. */
    private static final int HALVINGS = 40;

    private final List<RawCurve> raw;
    private final Clearance clearance;
    private final boolean closed;
    private final boolean bridged;
    private final CurveTree tree;
    private final Vertices vertices;
    private final List<List<Cut>> cuts = new ArrayList<>();

    /** A place on a curve; a soft one is there for the distance only. */
    private record Cut(double t, Point point, boolean soft) {}

    /** What lies between two cuts, and whether it keeps its distance. */
    private record Judged(Cut from, Cut to, boolean kept) {}

    private OffsetFragments(List<RawCurve> raw, Clearance clearance, boolean closed, boolean bridged) {
        this.bridged = bridged;
        this.raw = raw;
        this.clearance = clearance;
        this.closed = closed;
        this.tree = CurveTree.of(raw.stream().map(RawCurve::curve).toList());
        this.vertices = new Vertices(Math.max(SAME, CurveContacts.near(tree, tree)));
    }

    /** Returns the fragments of an open run. */
    static List<Fragment> ofOpen(List<RawCurve> raw, OffsetCutters cutters, Clearance clearance) {
        OffsetFragments fragments = new OffsetFragments(raw, clearance, false, false);
        fragments.cutItself();
        fragments.cutBy(cutters);
        return fragments.all();
    }

    /**
     * Returns the fragments of a closed run.
     *
     * @param bridged whether a part of a link is kept that is no longer than the slack, as between parallels that miss
     *     each other by it
     */
    static List<Fragment> ofClosed(List<RawCurve> raw, OffsetCutters cutters, Clearance clearance, boolean bridged) {
        OffsetFragments fragments = new OffsetFragments(raw, clearance, true, bridged);
        fragments.cutItself();
        fragments.cutBy(cutters);
        return fragments.all();
    }

    private void cutItself() {
        List<Curve> curves = raw.stream().map(RawCurve::curve).toList();
        for (Curve curve : curves) {
            cuts.add(new ArrayList<>(List.of(
                    new Cut(0, vertices.pointAt(curve.start()), false),
                    new Cut(1, vertices.pointAt(curve.end()), false))));
        }
        List<CurvePair> pairs = tree.pairsWithin(CurveContacts.near(tree, tree));
        int pair = 0;
        for (int i = 0; i < curves.size(); i++) {
            if (curves.get(i) instanceof Cubic cubic) {
                cut(i, i, SelfContacts.of(cubic));
            }
            while (pair < pairs.size() && pairs.get(pair).first() == i) {
                int j = pairs.get(pair).second();
                boolean joinedBack = closed && i == 0 && j == curves.size() - 1;
                cut(i, j, SelfContacts.between(curves.get(i), curves.get(j), j == i + 1, joinedBack));
                pair++;
            }
        }
    }

    private void cut(int i, int j, List<Contact> contacts) {
        Curve curve = raw.get(i).curve();
        for (Contact contact : contacts) {
            Point start = vertices.pointAt(curve.pointAt(contact.t0()));
            cuts.get(i).add(new Cut(contact.t0(), start, false));
            cuts.get(j).add(new Cut(contact.u0(), start, false));
            if (!contact.isPoint()) {
                Point end = vertices.pointAt(curve.pointAt(contact.t1()));
                cuts.get(i).add(new Cut(contact.t1(), end, false));
                cuts.get(j).add(new Cut(contact.u1(), end, false));
            }
        }
    }

    private void cutBy(OffsetCutters cutters) {
        if (!cutters.curves().isEmpty()) {
            CurveTree other = CurveTree.of(cutters.curves());
            for (CurvePair pair : tree.pairsWith(other, CurveContacts.near(tree, other))) {
                Curve curve = raw.get(pair.first()).curve();
                for (Contact contact :
                        CurveContacts.between(curve, cutters.curves().get(pair.second()))) {
                    softly(pair.first(), contact.t0());
                    softly(pair.first(), contact.t1());
                }
            }
        }
        for (int i = 0; i < raw.size(); i++) {
            for (double t : cutters.onCircles(raw.get(i).curve())) {
                softly(i, t);
            }
        }
    }

    private void softly(int i, double t) {
        cuts.get(i).add(new Cut(t, vertices.pointAt(raw.get(i).curve().pointAt(t)), true));
    }

    private List<Fragment> all() {
        List<Fragment> fragments = new ArrayList<>();
        for (int i = 0; i < raw.size(); i++) {
            RawCurve curve = raw.get(i);
            for (Judged each : merged(stretches(i))) {
                fragments.add(new Fragment(curve.with(piece(curve, each.from(), each.to())), each.kept()));
            }
        }
        return fragments;
    }

    private List<Judged> stretches(int i) {
        List<Cut> along = cuts.get(i);
        along.sort(Comparator.comparingDouble(Cut::t));
        List<Judged> stretches = new ArrayList<>();
        for (int k = 1; k < along.size(); k++) {
            Cut from = along.get(k - 1);
            Cut to = along.get(k);
            if (to.t() > from.t() && (!from.point().equals(to.point()) || to.t() - from.t() > 0.01)) {
                addStretches(raw.get(i), from, to, stretches);
            }
        }
        return stretches;
    }

    private void addStretches(RawCurve source, Cut from, Cut to, List<Judged> stretches) {
        boolean bridge = bridged && from.point().isCloseTo(to.point(), clearance.slack());
        boolean kept = (!source.link() || bridge)
                && clearance.isKeptBy(piece(source, from, to).pointAt(0.5), source.edge());
        if (closed || source.link()) {
            stretches.add(new Judged(from, to, kept));
            return;
        }
        boolean[] verdicts = verdicts(source, from, to);
        Cut last = from;
        for (int k = 1; k < verdicts.length; k++) {
            if (verdicts[k] != verdicts[k - 1]) {
                double t = change(source, at(from, to, k - 1), at(from, to, k), verdicts[k - 1]);
                Cut cut = new Cut(t, vertices.pointAt(source.curve().pointAt(t)), true);
                stretches.add(new Judged(last, cut, verdicts[k - 1]));
                last = cut;
            }
        }
        stretches.add(new Judged(last, to, verdicts[verdicts.length - 1]));
    }

    /**
     * Tells of places along a stretch and of its ends whether they keep their distance. An end that alone does so is a
     * crossing, just beyond which nothing runs.
     */
    private boolean[] verdicts(RawCurve source, Cut from, Cut to) {
        boolean[] verdicts = new boolean[PLACES + 2];
        for (int k = 1; k <= PLACES; k++) {
            verdicts[k] = isKept(source, at(from, to, k));
        }
        verdicts[0] = verdicts[1] && isKept(source, from.t());
        verdicts[PLACES + 1] = verdicts[PLACES] && isKept(source, to.t());
        return verdicts;
    }

    private static double at(Cut from, Cut to, int k) {
        double share = Math.min(Math.max((k - 0.5) / PLACES, 0), 1);
        return from.t() + share * (to.t() - from.t());
    }

    private boolean isKept(RawCurve source, double t) {
        return clearance.isKeptBy(source.curve().pointAt(t), source.edge());
    }

    /** Returns where it is no longer as it is at the lower place, on the side on which the distance is kept. */
    private double change(RawCurve source, double low, double high, boolean keptBefore) {
        double from = low;
        double to = high;
        for (int k = 0; k < HALVINGS; k++) {
            double middle = 0.5 * (from + to);
            if (isKept(source, middle) == keptBefore) {
                from = middle;
            } else {
                to = middle;
            }
        }
        return keptBefore ? from : to;
    }

    private static List<Judged> merged(List<Judged> stretches) {
        List<Judged> merged = new ArrayList<>();
        for (Judged each : stretches) {
            int end = merged.size() - 1;
            if (end >= 0
                    && each.kept()
                    && merged.get(end).kept()
                    && isSoft(merged.get(end).to(), each.from())) {
                merged.set(end, new Judged(merged.get(end).from(), each.to(), true));
            } else {
                merged.add(each);
            }
        }
        return merged;
    }

    private static boolean isSoft(Cut to, Cut from) {
        return to.soft() && from.soft() && to.point().equals(from.point());
    }

    private static Curve piece(RawCurve source, Cut from, Cut to) {
        return Joined.withEnds(source.curve().sub(from.t(), to.t()), from.point(), to.point());
    }
}
