package org.oaktag.export.layout;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.PriorityQueue;
import java.util.function.Predicate;
import org.oaktag.export.drawing.Box;
import org.oaktag.geometry.Bounds;
import org.oaktag.geometry.Outline;
import org.oaktag.geometry.Path;
import org.oaktag.geometry.Point;

/**
 * Finds room for labels: inside a region, off every line and off every label that it placed before.
 *
 * <p>It is greedy and never moves a label again, so what matters most is to be placed first. Not thread-safe.
 */
public final class LabelPlacer {

    /** The room left between a label and anything else, mm. */
    public static final double CLEARANCE = 1;

    /** The distance between places tried in a region, mm. */
    private static final double STEP = 3;

    private final Optional<Outline> region;
    private final Optional<Bounds> page;
    private final List<Obstacle> lines = new ArrayList<>();
    private final List<Taken> taken = new ArrayList<>();

    private record Obstacle(Bounds bounds, Polyline line) {}

    private record Taken(Bounds bounds, Box box) {}

    /** A place tried for the middle of a label; of two equally near the one that came first is tried first. */
    private record Candidate(Point middle, double distance, int index) implements Comparable<Candidate> {
        @Override
        public int compareTo(Candidate other) {
            int byDistance = Double.compare(distance, other.distance);
            return byDistance != 0 ? byDistance : Integer.compare(index, other.index);
        }
    }

    private LabelPlacer(Optional<Outline> region, Optional<Bounds> page) {
        this.region = region;
        this.page = page;
    }

    /** Returns a placer of labels that must lie inside the outline and off it. */
    public static LabelPlacer inside(Outline region) {
        LabelPlacer placer = new LabelPlacer(Optional.of(region), Optional.empty());
        placer.avoid(region.path());
        return placer;
    }

    /** Returns a placer of labels that may lie anywhere on a page. */
    public static LabelPlacer on(Bounds page) {
        return new LabelPlacer(Optional.empty(), Optional.of(page));
    }

    /** Keeps labels off a line. */
    public void avoid(Path path) {
        lines.add(new Obstacle(path.bounds().expanded(CLEARANCE), Polyline.of(path)));
    }

    /** Keeps labels off a box. */
    public void avoid(Box box) {
        taken.add(new Taken(box.bounds(), box));
    }

    /** Tells whether a label could lie there. */
    public boolean isFree(Box box) {
        Box roomy = box.expanded(CLEARANCE);
        if (region.isPresent() && !region.get().contains(box.center())) {
            return false;
        }
        if (page.isPresent() && !box.corners().stream().allMatch(page.get()::contains)) {
            return false;
        }
        Bounds around = roomy.bounds();
        if (taken.stream().anyMatch(each -> each.bounds.overlaps(around) && roomy.overlaps(each.box))) {
            return false;
        }
        return lines.stream().noneMatch(each -> each.bounds.overlaps(around) && each.line.meets(roomy));
    }

    /** Takes and returns the first of the boxes that is free, or empty where none is. */
    public Optional<Box> first(List<Box> candidates) {
        Optional<Box> free = candidates.stream().filter(this::isFree).findFirst();
        free.ifPresent(this::avoid);
        return free;
    }

    /** Takes and returns the free box of that size and turn nearest to a point, or empty where there is none. */
    public Optional<Box> nearest(Point wanted, Bounds within, double width, double height, double angle) {
        return nearest(wanted, within, width, height, angle, point -> true);
    }

    /**
     * Takes and returns the free box of that size and turn nearest to a point, or empty where there is none.
     *
     * @param within where its middle may lie
     * @param allowed whether its middle may lie there, which is asked only where the box is free
     */
    public Optional<Box> nearest(
            Point wanted, Bounds within, double width, double height, double angle, Predicate<Point> allowed) {
        List<Candidate> candidates = new ArrayList<>();
        candidates.add(new Candidate(wanted, 0, 0));
        for (double y = within.minY(); y <= within.maxY(); y += STEP) {
            for (double x = within.minX(); x <= within.maxX(); x += STEP) {
                Point middle = Point.of(x, y);
                candidates.add(new Candidate(middle, wanted.distanceTo(middle), candidates.size()));
            }
        }
        // A heap and not a sorted list: of thousands of places the first few are looked at.
        PriorityQueue<Candidate> nearestFirst = new PriorityQueue<>(candidates);
        while (!nearestFirst.isEmpty()) {
            Point middle = nearestFirst.remove().middle();
            Box box = new Box(middle, width, height, angle);
            if (isFree(box) && allowed.test(middle)) {
                taken.add(new Taken(box.bounds(), box));
                return Optional.of(box);
            }
        }
        return Optional.empty();
    }
}
