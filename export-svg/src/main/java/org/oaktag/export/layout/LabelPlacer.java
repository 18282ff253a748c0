package org.oaktag.export.layout;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.oaktag.export.drawing.Box;
import org.oaktag.geometry.Bounds;
import org.oaktag.geometry.Outline;
import org.oaktag.geometry.Path;
import org.oaktag.geometry.Point;
import org.oaktag.geometry.Vector;

/**
 * Finds room for labels: inside a region, off every line and off every label that it placed before.
 *
 * <pre>{@code
 * LabelPlacer room = LabelPlacer.inside(front.outline());
 * room.avoid(front.path(CENTRE));
 * Optional<Box> free = room.nearest(Point.of(120, 300), front.outline().bounds(), 60, 8, 0);
 * }</pre>
 *
 * <p>It is greedy and never moves a label again, so what matters most is to be placed first. Not thread-safe.
 */
public final class LabelPlacer {

    /** The room left between a label and anything else, mm. */
    public static final double CLEARANCE = 1;

    /** The distance between places tried in a region, mm. */
    private static final double STEP = 3;

    private final List<Outline> regions;
    private final Optional<Bounds> page;
    private final List<Obstacle> lines = new ArrayList<>();
    private final List<Taken> taken = new ArrayList<>();

    private record Obstacle(Bounds bounds, Polyline line) {}

    private record Taken(Bounds bounds, Box box) {}

    private LabelPlacer(List<Outline> regions, Optional<Bounds> page) {
        this.regions = List.copyOf(regions);
        this.page = page;
    }

    /** Returns a placer of labels that must lie inside the outline and off it. */
    public static LabelPlacer inside(Outline region) {
        return inside(List.of(region));
    }

    /** Returns a placer of labels that must lie inside every outline and off it. */
    public static LabelPlacer inside(List<Outline> regions) {
        LabelPlacer placer = new LabelPlacer(regions, Optional.empty());
        regions.forEach(region -> placer.avoid(region.path()));
        return placer;
    }

    /** Returns a placer of labels that may lie anywhere on a page. */
    public static LabelPlacer on(Bounds page) {
        return new LabelPlacer(List.of(), Optional.of(page));
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
        if (page.isPresent() && !page.get().contains(box.bounds())) {
            return false;
        }
        Bounds around = roomy.bounds();
        for (Taken each : taken) {
            if (each.bounds.overlaps(around) && roomy.overlaps(each.box)) {
                return false;
            }
        }
        for (int i = 0; i < lines.size(); i++) {
            Obstacle each = lines.get(i);
            if (each.bounds.overlaps(around) && roomy.meets(each.line.points())) {
                // What was in the way here is most likely in the way a step further on: it is asked first next time.
                Collections.swap(lines, 0, i);
                return false;
            }
        }
        // Off every line of its rim, a box lies in the region if its middle does.
        return regions.stream().allMatch(region -> region.contains(box.center()));
    }

    /** Takes and returns the first of the boxes that is free, or empty where none is. */
    public Optional<Box> first(Stream<Box> candidates) {
        Optional<Box> free = candidates.filter(this::isFree).findFirst();
        free.ifPresent(this::avoid);
        return free;
    }

    /** Takes and returns the free box of that size and turn nearest to a point, or empty where there is none. */
    public Optional<Box> nearest(Point wanted, Bounds within, double width, double height, double angle) {
        return nearest(wanted, within, width, height, angle, point -> true);
    }

    /**
     * Takes and returns the free box of that size and turn nearest to a point, or empty where there is none. Places are
     * tried in square rings round the point; of those free in the first such ring the nearest is taken.
     *
     * @param within where its middle may lie
     * @param allowed whether its middle may lie there, which is asked only where the box is free
     */
    public Optional<Box> nearest(
            Point wanted, Bounds within, double width, double height, double angle, Predicate<Point> allowed) {
        Bounds box = new Box(Point.ORIGIN, width, height, angle).bounds();
        if (!regions.stream().allMatch(region -> fits(box, region.bounds()))) {
            return Optional.empty();
        }
        int rings = (int) Math.ceil(Math.max(
                        Math.max(wanted.x() - within.minX(), within.maxX() - wanted.x()),
                        Math.max(wanted.y() - within.minY(), within.maxY() - wanted.y()))
                / STEP);
        for (int ring = 0; ring <= rings; ring++) {
            Optional<Box> free = ring(wanted, ring)
                    .filter(within::contains)
                    .map(middle -> new Box(middle, width, height, angle))
                    .filter(each -> isFree(each) && allowed.test(each.center()))
                    .min(Comparator.comparingDouble(each -> wanted.distanceTo(each.center())));
            if (free.isPresent()) {
                avoid(free.get());
                return free;
            }
        }
        return Optional.empty();
    }

    private static boolean fits(Bounds inner, Bounds outer) {
        return inner.width() < outer.width() && inner.height() < outer.height();
    }

    /** The places on the rim of a square of so many steps round the middle. */
    private static Stream<Point> ring(Point middle, int steps) {
        if (steps == 0) {
            return Stream.of(middle);
        }
        return IntStream.range(-steps, steps)
                .boxed()
                .flatMap(i -> Stream.of(
                        middle.plus(Vector.of(i * STEP, -steps * STEP)),
                        middle.plus(Vector.of(steps * STEP, i * STEP)),
                        middle.plus(Vector.of(-i * STEP, steps * STEP)),
                        middle.plus(Vector.of(-steps * STEP, -i * STEP))));
    }
}
