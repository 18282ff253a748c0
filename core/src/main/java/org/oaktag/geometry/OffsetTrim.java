package org.oaktag.geometry;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/**
 * Trims a run of parallels: cuts it at all its self-crossings, drops the fragments that do not keep their distance from
 * the source, and joins the rest into loops, or into open runs. The fragments are found by their ends, so that n of
 * them cost about n steps.
 */
final class OffsetTrim {
    /** An open run no longer than so many slacks beside a longer one is what is left beyond a crossing. */
    private static final double SCRAP = 30;

    /** How near to the longer one it comes, in slacks. */
    private static final double BESIDE = 4;

    private final List<Fragment> fragments;
    private final double slack;
    private final boolean closed;

    /** Whether a loop of an open run is told: at no distance at all it goes where the path does, and is left out. */
    private final boolean loops;

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

    private OffsetTrim(List<Fragment> fragments, double slack, boolean closed, boolean loops, boolean thorough) {
        this.loops = loops;
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
                            && other.raw().curve().nearest(middle).distance() <= OffsetFragments.SAME;
                });
    }

    /**
     * Returns the loops that are left of a closed run, each a run of curves that ends where it starts; see {@link
     * OffsetFragments#ofClosed}.
     */
    static List<List<RawCurve>> loops(List<RawCurve> raw, OffsetCutters cutters, Clearance clearance, boolean bridged) {
        List<Fragment> fragments = OffsetFragments.ofClosed(raw, cutters, clearance, bridged);
        return new OffsetTrim(fragments, clearance.slack(), true, true, bridged).chained();
    }

    /** Returns the open runs that are left of an open run. */
    static Open runs(List<RawCurve> raw, OffsetCutters cutters, Clearance clearance) {
        List<Fragment> fragments = OffsetFragments.ofOpen(raw, cutters, clearance);
        boolean loops = clearance.greatest() > clearance.slack();
        OffsetTrim trim = new OffsetTrim(fragments, clearance.slack(), false, loops, false);
        List<List<RawCurve>> runs = trim.chained();
        List<RawCurve> whole = runs.stream()
                .filter(run -> !trim.isShort(run))
                .flatMap(List::stream)
                .toList();
        List<List<RawCurve>> told = runs.stream()
                .filter(run -> !trim.isShort(run) || !trim.isBeside(run, whole))
                .toList();
        return new Open(told, trim.twins);
    }

    private boolean isShort(List<RawCurve> run) {
        return run.stream().mapToDouble(each -> each.curve().length()).sum() <= SCRAP * slack;
    }

    private boolean isBeside(List<RawCurve> run, List<RawCurve> whole) {
        return Stream.concat(
                        run.stream().map(raw -> raw.curve().start()),
                        run.stream().map(raw -> raw.curve().end()))
                .anyMatch(end ->
                        whole.stream().anyMatch(raw -> raw.curve().nearest(end).distance() <= BESIDE * slack));
    }

    /**
     * Follows the fragments from end to start. Where the way comes back to a point that it has passed, the loop between
     * is taken out, and the rest goes on from there; a loop that is thinner than the slack is none, and a way of a
     * closed run that leads only to such is gone back.
     */
    private List<List<RawCurve>> chained() {
        if (closed) {
            dropDeadEnds();
        }
        List<List<RawCurve>> chains = new ArrayList<>();
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
                if (loops && isThick(loop)) {
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
