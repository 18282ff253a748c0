package org.oaktag.lay;

import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;

/**
 * What is to be laid, in which ways, on which width, and where no two shapes may lie beside each other. Not
 * thread-safe; the tables fill as they are asked for.
 */
final class Nesting {

    /** How far apart the places across the cloth are that are tried, mm. */
    static final double PITCH = 2;

    private static final double ROUNDING = 1e-9;

    private final List<Part> parts;
    private final List<Shape> shapes;
    private final int[][] ways;
    private final int[] lastColumn;
    private final double width;
    private final double gap;
    private final @Nullable NoFit[][] along;
    private final @Nullable NoFit[][] across;

    private Nesting(Nesting other, int[][] ways) {
        this.parts = other.parts;
        this.shapes = other.shapes;
        this.ways = ways;
        this.lastColumn = other.lastColumn;
        this.width = other.width;
        this.gap = other.gap;
        this.along = other.along;
        this.across = other.across;
    }

    /**
     * Prepares the shapes of all parts.
     *
     * @param parts what is to be laid; every shape fits into the width
     * @param width the width of the table that the cloth covers, mm
     * @param gap the room between two shapes, mm
     */
    Nesting(List<Part> parts, double width, double gap) {
        this.parts = List.copyOf(parts);
        this.width = width;
        this.gap = gap;
        this.shapes = parts.stream()
                .flatMap(part -> part.shapes().stream())
                .distinct()
                .toList();
        this.ways = parts.stream()
                .map(part -> part.shapes().stream().mapToInt(shapes::indexOf).toArray())
                .toArray(int[][]::new);
        this.lastColumn = shapes.stream()
                .mapToInt(shape -> shape.onFold() ? 0 : (int) Math.floor((width - shape.width()) / PITCH + ROUNDING))
                .toArray();
        this.along = new NoFit[shapes.size()][shapes.size()];
        this.across = new NoFit[shapes.size()][shapes.size()];
    }

    /** Returns the same with every part laid in the first of its ways alone, top up; the tables are shared. */
    Nesting upright() {
        return new Nesting(
                this, Arrays.stream(ways).map(each -> new int[] {each[0]}).toArray(int[][]::new));
    }

    /** Tells whether a part may be laid in more than one way. */
    boolean isTurnable() {
        return Arrays.stream(ways).anyMatch(each -> each.length > 1);
    }

    List<Part> parts() {
        return parts;
    }

    List<Shape> shapes() {
        return shapes;
    }

    double width() {
        return width;
    }

    double gap() {
        return gap;
    }

    /** Returns the parts with the greatest measure first; of equals, as they come. */
    int[] greatestFirst(ToDoubleFunction<Part> measure) {
        return IntStream.range(0, parts.size())
                .boxed()
                .sorted(Comparator.comparingDouble(i -> -measure.applyAsDouble(parts.get(i))))
                .mapToInt(i -> i)
                .toArray();
    }

    /** Returns the height of a shape, mm. */
    double height(int shape) {
        return shapes.get(shape).height();
    }

    /** Returns the height of the tallest part, mm: no layout is shorter. */
    double tallest() {
        return parts.stream()
                .mapToDouble(part -> part.shapes().get(0).height())
                .max()
                .orElseThrow();
    }

    /** Returns the shapes in which a part may be laid; not to be changed. */
    int[] ways(int part) {
        return ways[part];
    }

    /** Returns how many pitches from the left a shape may lie at the most. */
    int lastColumn(int shape) {
        return lastColumn[shape];
    }

    /** Returns the forbidden distances along the cloth, for each number of pitches across it. */
    NoFit along(int fixed, int moving) {
        NoFit known = along[fixed][moving];
        if (known == null) {
            Shape a = shapes.get(fixed);
            Shape b = shapes.get(moving);
            known = NoFit.of(a.slabs(), b.slabs(), PITCH, room(a, b));
            keep(along, fixed, moving, known);
        }
        return known;
    }

    /** Returns the forbidden distances across the cloth, for each number of pitches along it. */
    NoFit across(int fixed, int moving) {
        NoFit known = across[fixed][moving];
        if (known == null) {
            Shape a = shapes.get(fixed);
            Shape b = shapes.get(moving);
            known = NoFit.of(a.sideways(), b.sideways(), PITCH, room(a, b));
            keep(across, fixed, moving, known);
        }
        return known;
    }

    private static void keep(@Nullable NoFit[][] table, int fixed, int moving, NoFit noFit) {
        table[fixed][moving] = noFit;
        if (fixed != moving) {
            table[moving][fixed] = noFit.reversed();
        }
    }

    private double room(Shape a, Shape b) {
        return gap + a.error() + b.error();
    }
}
