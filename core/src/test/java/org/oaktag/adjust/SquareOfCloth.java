package org.oaktag.adjust;

import static org.oaktag.measure.Percent.percent;

import java.util.List;
import org.oaktag.garment.Cloth;
import org.oaktag.garment.Cut;
import org.oaktag.garment.Edge;
import org.oaktag.garment.Grainline;
import org.oaktag.garment.Name;
import org.oaktag.garment.Piece;
import org.oaktag.geometry.Path;
import org.oaktag.geometry.Point;

/** A square of cloth, 200 mm each way, of which every figure can be reckoned in the head. */
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
                        new Edge(UPPER, Path.polyline(a, b)),
                        new Edge(RIGHT, Path.polyline(b, c)),
                        new Edge(LOWER, Path.polyline(c, d)),
                        new Edge(LEFT, Path.polyline(d, a))),
                new Grainline(Point.of(50, 50), Point.of(50, 150)),
                cut,
                Cloth.knit("any cloth", percent(20)));
    }
}
