package org.oaktag.geometry;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Trims a run of parallels: cuts it at all its self-crossings, drops the fragments that do not keep their distance from
 * the source, and joins the rest into loops, or into open runs. The fragments are found by their ends, so that n of
 * them cost about n steps.
 */
final class OffsetTrim {
    /** Of several open runs one no longer than so many slacks is what two that cross leave beyond their crossing. */
    private static final double SCRAP = 30;

    private final List<Fragment> fragments;
    private final double slack;
    private final boolean closed;

    /** Whether of a thin loop only the curve that led back is given up, and the others are tried again. */
    private final boolean thorough;

    private final boolean[] left;
    private final Map<Point, List<Integer>> leaving = new HashMap<>();
    private final List<RawCurve> twins = new ArrayList<>();

    /**
     * What is left of an open run.
     *
     * @param runs in order
     * @param twins what lies on a run all along, and is not part of one
     */
    record Open(List<List<RawCurve>> runs, List<RawCurve> twins) {}

    private OffsetTrim(List<Fragment> fragments, double slack, boolean closed, boolean thorough) {
        this.thorough = thorough;
        this.fragments = fragments;
        this.slack = slack;
        this.closed = closed;
        this.left = new boolean[fragments.size()];
        for (int i = 0; i < left.length; i++) {
            left[i] = fragments.get(i).kept();
            List<Integer> beside = leaving.computeIfAbsent(fragments.get(i).start(), none -> new ArrayList<>(2));
            if (!closed && left[i] && isAgain(fragments.get(i), beside)) {
                left[i] = false;
                twins.add(fragments.get(i).raw());
            }
            beside.add(i);
        }
    }

    /** Tells whether one of the fragments runs the same way already, as where parallels lie on each other. */
    private boolean isAgain(Fragment fragment, List<Integer> others) {
        Point middle = fragment.raw().curve().pointAt(0.5);
        return !fragment.start().isCloseTo(fragment.end(), slack)
                && others.stream().anyMatch(k -> {
                    Fragment other = fragments.get(k);
                    return left[k]
                            && other.end().equals(fragment.end())
                            && other.raw().curve().nearest(middle).distance() <= Anchors.SAME;
                });
    }

    /**
     * Returns the loops that are left of a closed run, each a run of curves that ends where it starts; see {@link
     * OffsetFragments#ofClosed}.
     */
    static List<List<RawCurve>> loops(List<RawCurve> raw, Clearance clearance, boolean bridged) {
        List<Fragment> fragments = OffsetFragments.ofClosed(raw, clearance, bridged);
        return new OffsetTrim(fragments, clearance.slack(), true, bridged).chained();
    }

    /** Returns the open runs that are left of an open run. */
    static Open runs(List<RawCurve> raw, OffsetCutters cutters, Clearance clearance) {
        OffsetTrim trim =
                new OffsetTrim(OffsetFragments.ofOpen(raw, cutters, clearance), clearance.slack(), false, false);
        List<List<RawCurve>> runs = trim.chained();
        List<List<RawCurve>> whole = runs.stream()
                .filter(run ->
                        run.stream().mapToDouble(each -> each.curve().length()).sum() > SCRAP * clearance.slack())
                .toList();
        return new Open(whole.isEmpty() ? runs : whole, trim.twins);
    }

    /**
     * Follows the fragments from end to start. Where the way comes back to a point that it has passed, the loop between
     * is taken out, and the rest goes on from there; a loop that is thinner than the slack is none, and a way of a
     * closed run that leads only to such is gone back. Of an open run only a loop is left that nothing leads to but a
     * scrap.
     */
    private List<List<RawCurve>> chained() {
        if (closed) {
            dropDeadEnds();
        }
        List<List<RawCurve>> chains = new ArrayList<>();
        Set<Point> onRuns = new HashSet<>();
        for (int first = 0; first < fragments.size(); first++) {
            if (!left[first]) {
                continue;
            }
            List<Integer> chain = new ArrayList<>();
            Map<Point, Integer> passed = new HashMap<>();
            int at = first;
            while (at >= 0) {
                left[at] = false;
                passed.putIfAbsent(fragments.get(at).start(), chain.size());
                chain.add(at);
                Point end = fragments.get(at).end();
                List<Integer> loop = chain.subList(passed.getOrDefault(end, chain.size()), chain.size());
                if ((closed || isAlone(loop, chain, onRuns)) && isThick(loop)) {
                    chains.add(curves(loop));
                }
                if (thorough && !loop.isEmpty() && !isThick(loop)) {
                    loop.subList(0, loop.size() - 1).forEach(i -> left[i] = true);
                }
                loop.forEach(i -> passed.remove(fragments.get(i).start()));
                loop.clear();
                at = chain.isEmpty() ? -1 : next(at, end);
                while (closed && at < 0 && !chain.isEmpty()) {
                    int back = chain.remove(chain.size() - 1);
                    passed.remove(fragments.get(back).start());
                    at = next(back, fragments.get(back).start());
                }
            }
            if (!closed && !chain.isEmpty()) {
                if (length(chain) > SCRAP * slack) {
                    chain.forEach(i -> onRuns.add(fragments.get(i).end()));
                }
                chains.add(curves(chain));
            }
        }
        return chains;
    }

    /** Drops, as long as there are any, fragments that nothing leads to or that lead to nothing. */
    private void dropDeadEnds() {
        Map<Point, List<Integer>> arriving = new HashMap<>();
        Map<Point, int[]> degree = new HashMap<>();
        for (int i = 0; i < left.length; i++) {
            if (left[i]) {
                arriving.computeIfAbsent(fragments.get(i).end(), none -> new ArrayList<>(2))
                        .add(i);
                degree.computeIfAbsent(fragments.get(i).end(), none -> new int[2])[0]++;
                degree.computeIfAbsent(fragments.get(i).start(), none -> new int[2])[1]++;
            }
        }
        Deque<Point> dead = new ArrayDeque<>();
        for (Fragment fragment : fragments) {
            dead.add(fragment.start());
            dead.add(fragment.end());
        }
        while (!dead.isEmpty()) {
            Point point = dead.remove();
            int[] count = degree.getOrDefault(point, new int[2]);
            List<Integer> ending = List.of();
            if (count[0] == 0 && count[1] > 0) {
                ending = leaving.getOrDefault(point, List.of());
            } else if (count[1] == 0 && count[0] > 0) {
                ending = arriving.getOrDefault(point, List.of());
            }
            for (int i : ending) {
                if (left[i]) {
                    left[i] = false;
                    degree.getOrDefault(fragments.get(i).end(), new int[2])[0]--;
                    degree.getOrDefault(fragments.get(i).start(), new int[2])[1]--;
                    dead.add(fragments.get(i).start());
                    dead.add(fragments.get(i).end());
                }
            }
        }
    }

    private boolean isThick(List<Integer> loop) {
        if (loop.isEmpty()) {
            return false;
        }
        Path path = Path.of(curves(loop).stream().map(RawCurve::curve).toList());
        return Math.abs(Area.signed(path)) > slack * path.length();
    }

    /** Tells whether no more than a scrap of the chain leads to a loop at its end, and no run passes it. */
    private boolean isAlone(List<Integer> loop, List<Integer> chain, Set<Point> onRuns) {
        return !loop.isEmpty()
                && !onRuns.contains(fragments.get(loop.get(0)).start())
                && length(chain.subList(0, chain.size() - loop.size())) <= SCRAP * slack;
    }

    private double length(List<Integer> chain) {
        return chain.stream()
                .mapToDouble(i -> fragments.get(i).raw().curve().length())
                .sum();
    }

    private List<RawCurve> curves(List<Integer> chain) {
        return chain.stream().map(i -> fragments.get(i).raw()).toList();
    }

    /**
     * The next fragment in order, round from the last to the first, that goes on from the point; -1 if there is none.
     * An open run changes over where it crosses itself, even if it might go on for a little.
     */
    private int next(int at, Point end) {
        int best = -1;
        for (int i : leaving.getOrDefault(end, List.of())) {
            if (left[i] && (best < 0 || wait(at, i) < wait(at, best))) {
                best = i;
            }
        }
        return best;
    }

    private int wait(int at, int next) {
        return !closed && next == at + 1 ? left.length : Math.floorMod(next - at, left.length);
    }
}
