package org.oaktag.export.sheet;

import java.util.List;
import java.util.Optional;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;
import org.oaktag.export.drawing.Box;
import org.oaktag.export.drawing.TextBlock;
import org.oaktag.export.layout.LabelPlacer;
import org.oaktag.geometry.Bounds;
import org.oaktag.geometry.Point;
import org.oaktag.geometry.Vector;

/**
 * Finds where along a joint its diamond and its two numbers can be read.
 *
 * @param offAll keeps off the lines and the lettering of the pieces
 * @param offLettering keeps off their lettering
 * @param overlap how far beyond the joint the first sheet goes on, mm; zero where they are laid edge to edge
 */
record JointPlaces(LabelPlacer offAll, LabelPlacer offLettering, double overlap) {

    /** How far a diamond keeps off the ends of its joint, where others cross it, mm. */
    private static final double OFF_ENDS = 16;

    /** The distance between places tried, mm. */
    private static final double STEP = 3;

    /** How far from the joint a number stands, mm. */
    private static final double USUAL = 1;

    /** How near to it a number may stand and how far from it, and the distance between places tried, mm. */
    private static final double NEAREST = 0.5;

    private static final double FURTHEST = 6;

    private static final double FINE = 0.25;

    /** How high the figures of a number are, in lines of text. */
    private static final double FIGURES = 0.6;

    /**
     * Where a mark goes.
     *
     * @param middle the middle of the diamond
     * @param numbers the boxes of the numbers, on the first sheet and on the second
     */
    record Place(Point middle, List<Box> numbers) {}

    static JointPlaces of(TilePlan plan) {
        TileGrid grid = plan.grid();
        Bounds plane = new Bounds(0, 0, grid.width(), grid.rows() * grid.stepY() + grid.overlap());
        JointPlaces places = new JointPlaces(LabelPlacer.on(plane), LabelPlacer.on(plane), grid.overlap());
        for (TilePlan.Seated seated : plan.pieces()) {
            TileMarks.avoid(seated.placement(), plane, places.offAll, true);
            TileMarks.avoid(seated.placement(), plane, places.offLettering, false);
        }
        return places;
    }

    /**
     * Returns the place nearest to the middle that is clear of all, else one whose numbers are, else one off lettering.
     */
    Place best(Point from, Point to, TextBlock number) {
        Vector along = to.minus(from).unit();
        return Stream.<Optional<Place>>of(
                        places(from, to, number).filter(this::isClear).findFirst(),
                        middles(from, to)
                                .flatMap(middle -> readable(middle, along, number).stream())
                                .findFirst(),
                        places(from, to, number).filter(this::isOffLettering).findFirst())
                .flatMap(Optional::stream)
                .findFirst()
                .orElseGet(() -> place(from.midpoint(to), along, number));
    }

    private Stream<Place> places(Point from, Point to, TextBlock number) {
        Vector along = to.minus(from).unit();
        return middles(from, to).map(middle -> place(middle, along, number));
    }

    /** The points along a joint, its middle first. */
    private static Stream<Point> middles(Point from, Point to) {
        double half = from.distanceTo(to) / 2 - OFF_ENDS;
        Point middle = from.midpoint(to);
        Vector along = to.minus(from).unit();
        return Stream.iterate(0.0, aside -> aside <= half, aside -> aside + STEP)
                .flatMap(aside -> Stream.of(aside, -aside))
                .map(aside -> middle.plus(along.times(aside)));
    }

    private static Place place(Point middle, Vector along, TextBlock number) {
        return new Place(middle, List.of(box(middle, along, number, -1, USUAL), box(middle, along, number, 1, USUAL)));
    }

    /** A place whose diamond lies off lettering and whose numbers lie off all, each as near to the joint as it can. */
    private Optional<Place> readable(Point middle, Vector along, TextBlock number) {
        if (!offLettering.isFree(diamond(middle))) {
            return Optional.empty();
        }
        return readable(middle, along, number, -1)
                .flatMap(first ->
                        readable(middle, along, number, 1).map(second -> new Place(middle, List.of(first, second))));
    }

    private Optional<Box> readable(Point middle, Vector along, TextBlock number, int side) {
        double size = Math.abs(along.y()) > 0.5 ? number.width() : FIGURES * number.height();
        double shown = overlap > 0 ? overlap - size : FURTHEST;
        double furthest = Math.max(NEAREST, Math.min(FURTHEST, shown));
        return DoubleStream.iterate(NEAREST, off -> off <= furthest, off -> off + FINE)
                .mapToObj(off -> box(middle, along, number, side, off))
                .filter(box -> offAll.isFree(bare(box)))
                .findFirst();
    }

    /** A number beside the diamond, on one side of the joint, so far from it. */
    private static Box box(Point middle, Vector along, TextBlock number, int side, double off) {
        boolean upright = Math.abs(along.y()) > 0.5;
        Vector aside = upright
                ? Vector.of(side * (number.width() / 2 + off), -TileMarks.DIAMOND - number.height() / 2 + 1)
                : Vector.of(TileMarks.DIAMOND + number.width() / 2, side * (FIGURES * number.height() / 2 + off));
        return new Box(middle.plus(aside), number.width(), number.height(), 0);
    }

    private boolean isClear(Place place) {
        return offAll.isFree(diamond(place.middle)) && place.numbers.stream().allMatch(offAll::isFree);
    }

    private boolean isOffLettering(Place place) {
        return offLettering.isFree(diamond(place.middle))
                && place.numbers.stream().allMatch(offLettering::isFree);
    }

    private static Box diamond(Point middle) {
        return new Box(middle, 2 * TileMarks.DIAMOND, 2 * TileMarks.DIAMOND, 0);
    }

    /** The figures of a number, which may lie next to a line but not on one. */
    private static Box bare(Box box) {
        return new Box(box.center(), box.width(), FIGURES * box.height(), 0).expanded(-LabelPlacer.CLEARANCE);
    }
}
