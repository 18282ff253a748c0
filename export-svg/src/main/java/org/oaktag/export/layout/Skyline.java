package org.oaktag.export.layout;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import org.oaktag.geometry.Bounds;

/**
 * Packs upright boxes on a strip of fixed width, each as high up as it goes and then as far left, tallest first.
 *
 * <pre>{@code
 * List<Bounds> pieces = block.pieces().stream().map(piece -> piece.outline().bounds()).toList();
 * List<Bounds> packed = Skyline.pack(pieces, 900, 20);   // on paper 900 mm wide, 20 mm apart
 * }</pre>
 *
 * <p>The line below what is packed so far is a flight of steps, the skyline; a box rests against the lowest stretch
 * that is wide enough. No box is turned, so that grainlines stay upright. The result depends on nothing but the sizes
 * and their order.
 */
public final class Skyline {

    private final double width;
    private final List<Step> steps = new ArrayList<>();

    private record Step(double x, double width, double bottom) {
        double end() {
            return x + width;
        }
    }

    private record Seat(double x, double y) {}

    private Skyline(double width) {
        this.width = width;
        steps.add(new Step(0, width, 0));
    }

    /**
     * Returns the place of each box, in the order in which they were given.
     *
     * @param sizes boxes of which only width and height matter
     * @param width the width of the strip, mm
     * @param gap the room between boxes, mm
     * @throws IllegalArgumentException if a box is wider than the strip
     */
    public static List<Bounds> pack(List<Bounds> sizes, double width, double gap) {
        Skyline skyline = new Skyline(width + gap);
        Bounds[] placed = new Bounds[sizes.size()];
        IntStream.range(0, sizes.size())
                .boxed()
                .sorted(Comparator.comparingDouble(i -> -sizes.get(i).height()))
                .forEach(i -> placed[i] =
                        skyline.seat(sizes.get(i).width(), sizes.get(i).height(), gap));
        return List.of(placed);
    }

    private Bounds seat(double boxWidth, double boxHeight, double gap) {
        double wide = boxWidth + gap;
        Seat best = new Seat(0, Double.POSITIVE_INFINITY);
        for (Step step : steps) {
            double y = restingOn(step.x(), wide);
            if (y < best.y()) {
                best = new Seat(step.x(), y);
            }
        }
        if (Double.isInfinite(best.y())) {
            throw new IllegalArgumentException(
                    "a box must be at most as wide as the strip, " + width + " mm, got " + wide + " mm");
        }
        raise(best.x(), wide, best.y() + boxHeight + gap);
        return new Bounds(best.x(), best.y(), best.x() + boxWidth, best.y() + boxHeight);
    }

    /** Returns how low a box at x would lie, or infinity where it would stick out of the strip. */
    private double restingOn(double x, double wide) {
        if (x + wide > width + 1e-9) {
            return Double.POSITIVE_INFINITY;
        }
        return steps.stream()
                .filter(step -> step.x() < x + wide && step.end() > x)
                .mapToDouble(Step::bottom)
                .max()
                .orElse(0);
    }

    private void raise(double x, double wide, double bottom) {
        double end = x + wide;
        List<Step> raised = new ArrayList<>();
        for (Step step : steps) {
            if (step.x() < x) {
                raised.add(new Step(step.x(), Math.min(step.end(), x) - step.x(), step.bottom()));
            }
        }
        raised.add(new Step(x, wide, bottom));
        for (Step step : steps) {
            if (step.end() > end) {
                double from = Math.max(step.x(), end);
                raised.add(new Step(from, step.end() - from, step.bottom()));
            }
        }
        steps.clear();
        steps.addAll(raised);
    }
}
