package org.oaktag.geometry;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Fits a smooth curve by a run of cubics with common tangents at their joins (G1), as few as the tolerance allows.
 *
 * <p>The error of one fit falls with the sixth power of its stretch, so the sixth root of the error, in that of the
 * tolerance, tells what part of the longest stretch that holds it is: its load. From the start on each stretch is made
 * about as long as holds, by what the loads of those tried before tell. If the loads of all together would fill fewer,
 * the run is tried with one stretch less, of equal loads.
 */
final class SmoothRun {
    private static final double ORDER = 1.0 / 6;

    /** Less of the tolerance than this tells no more than that there is next to no error. */
    private static final double LEAST = 1e-18;

    /** Between the normals the distance may exceed the greatest on them by a tenth. */
    static final double BETWEEN = 0.87;

    /** Aim a little lower still: the load is predicted to a few per cent only. */
    private static final double AIM = 0.98;

    /** A stretch of this load is not lengthened further. */
    private static final double FULL = 0.82;

    /** How often a stretch is tried from the first on that holds. */
    private static final int TRIES = 3;

    /** So many stretches or fewer are made equal from the start. */
    private static final int FEW = 3;

    /** More stretches than these are not worth being tried with one less. */
    private static final int MANY = 8;

    private static final int SPREADS = 3;

    /** Loads that would fill each of the equal stretches more than so are not spread. */
    private static final double PROSPECT = 1.05;

    /** A stretch of more than this load is too far off for its run to be spread again. */
    private static final double HOPELESS = 1.2;

    /**
     * A stretch of this share of the end's parameter is not shortened further: a quarter of it is still some steps of a
     * double.
     */
    private static final double SHORTEST = 0x1p-48;

    /** One cubic of the run, the stretch it is fitted to, and that one's load. */
    private record Part(double from, double to, double load, Cubic cubic) {
        double length() {
            return to - from;
        }
    }

    private final HermiteFit fit;
    private final double t1;
    private final double limit;
    private final double shortest;

    private SmoothRun(SmoothTarget target, double t1, double tolerance) {
        this.fit = new HermiteFit(target);
        this.t1 = t1;
        this.limit = BETWEEN * tolerance;
        this.shortest = SHORTEST * t1;
    }

    static List<Curve> of(SmoothTarget target, double t0, double t1, double tolerance) {
        return ofFewer(Integer.MAX_VALUE, target, t0, t1, tolerance).orElseThrow();
    }

    /** Returns the run, or nothing if it takes so many curves or more. */
    static Optional<List<Curve>> ofFewer(int most, SmoothTarget target, double t0, double t1, double tolerance) {
        SmoothRun run = new SmoothRun(target, t1, tolerance);
        List<Part> parts = run.spread(run.longStretches(t0, most));
        return parts.size() >= most
                ? Optional.empty()
                : Optional.of(
                        parts.stream().map(Part::cubic).map(Curve.class::cast).toList());
    }

    /** Returns stretches that are about as long as holds; not all of them if they are more than asked for. */
    private List<Part> longStretches(double t0, int most) {
        List<Part> parts = new ArrayList<>();
        double from = t0;
        double guess = t1 - t0;
        while (from < t1 && parts.size() <= most) {
            Part part = longStretch(parts, from, guess);
            parts.add(part);
            from = part.to();
            guess = Math.max(part.length() * Math.min(Math.max(AIM / part.load(), AIM), 4), shortest);
        }
        return parts;
    }

    private Part longStretch(List<Part> before, double from, double guess) {
        double rest = t1 - from;
        double count = count(rest, guess);
        double stretch = count <= FEW ? rest / count : guess;
        Part holds = fitted(before, from, end(from, stretch));
        double bad = 0;
        double badLoad = 0;
        while (!isEnough(holds)) {
            bad = holds.length();
            badLoad = holds.load();
            stretch = bad * Math.min(Math.max(AIM / badLoad, 0.25), 0.95);
            holds = fitted(before, from, end(from, stretch));
        }
        for (int tries = 1; tries < TRIES; tries++) {
            double aimed = bad > 0 ? between(holds, bad, badLoad) : holds.length() * Math.min(AIM / holds.load(), 4);
            if (holds.load() > FULL || holds.to() == t1 || count(rest, aimed) >= count(rest, holds.length())) {
                break;
            }
            Part longer = fitted(before, from, end(from, aimed));
            if (isEnough(longer)) {
                holds = longer;
            } else {
                bad = longer.length();
                badLoad = longer.load();
            }
        }
        return holds;
    }

    private boolean isEnough(Part part) {
        return part.load() <= 1 || part.length() <= shortest;
    }

    private static double count(double rest, double stretch) {
        return Math.max(Math.ceil(rest / stretch - 1e-6), 1);
    }

    private double end(double from, double stretch) {
        return from + stretch > t1 - 1e-9 * (t1 - from) ? t1 : from + stretch;
    }

    /** Returns a length between one that holds and one that does not, at which the load is likely to be the aim. */
    private static double between(Part holds, double bad, double badLoad) {
        double share = Math.log(AIM / holds.load()) / Math.log(badLoad / holds.load());
        return holds.length() * Math.pow(bad / holds.length(), Math.min(Math.max(share, 0.1), 0.9));
    }

    private Part fitted(List<Part> before, double from, double to) {
        double error = fit.fit(from, to, limit) / limit;
        double load = Math.pow(Math.min(Math.max(error, LEAST), 1 / LEAST), ORDER);
        Point start = before.isEmpty()
                ? fit.startPoint()
                : before.get(before.size() - 1).cubic().end();
        return new Part(from, to, load, fit.cubic(start, fit.endPoint()));
    }

    /** Returns a run of fewer parts if it holds, else these. */
    private List<Part> spread(List<Part> parts) {
        List<Part> held = parts;
        List<Part> last = parts;
        int tries = 0;
        while (held.size() > 2 && held.size() <= MANY && tries < SPREADS) {
            last = spread(last, held.size() - 1);
            if (last.isEmpty()) {
                break;
            }
            tries++;
            if (last.stream().allMatch(this::isEnough)) {
                held = last;
                tries = 0;
            }
        }
        return held;
    }

    /** Returns so many parts of equal loads, as far as these tell; or none if there is no hope that they hold. */
    private List<Part> spread(List<Part> parts, int count) {
        double total = parts.stream().mapToDouble(Part::load).sum();
        if (!(total < PROSPECT * count)) {
            return List.of();
        }
        List<Part> equal = new ArrayList<>();
        double from = parts.get(0).from();
        double done = 0;
        int k = 0;
        for (int i = 1; i <= count; i++) {
            double wanted = total * i / count;
            while (k + 1 < parts.size() && done + parts.get(k).load() < wanted) {
                done += parts.get(k).load();
                k++;
            }
            Part part = parts.get(k);
            double to = i == count ? t1 : part.from() + part.length() * Math.min((wanted - done) / part.load(), 1);
            Part fitted = fitted(equal, from, to);
            if (fitted.load() > HOPELESS) {
                return List.of();
            }
            equal.add(fitted);
            from = to;
        }
        return equal;
    }
}
