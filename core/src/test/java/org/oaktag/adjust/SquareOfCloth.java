package org.oaktag.adjust;

import static org.oaktag.measure.Percent.percent;

import java.util.List;
import org.oaktag.garment.Cloth;
import org.oaktag.garment.Cut;
import org.oaktag.garment.Edge;
import org.oaktag.garment.Grainline;
import org.oaktag.garment.Name;
import org.oaktag.garment.Piece;
import org.oaktag.geometry.Point;

/** A square of cloth, 200 mm each way, of which every figure can be found in the head. */
final class SquareOfCloth {

    static final Name NAME = Name.of("square");
    static final Name UPPER = Name.of("upper");
    static final Name RIGHT = Name.of("right");
    static final Name LOWER = Name.of("lower");
    static final Name LEFT = Name.of("left");

    private SquareOfCloth() {}

    static Piece cut(Cut cut) {
        Point a = Point.of(0, 0);
        Point b = Point.of(200, 0);
        Point c = Point.of(200, 200);
        Point d = Point.of(0, 200);
        return Piece.of(
                NAME,
                List.of(
                        Edge.straight(UPPER, a, b),
                        Edge.straight(RIGHT, b, c),
                        Edge.straight(LOWER, c, d),
                        Edge.straight(LEFT, d, a)),
                new Grainline(Point.of(50, 50), Point.of(50, 150)),
                cut,
                Cloth.knit("any cloth", percent(20)));
    }
}
