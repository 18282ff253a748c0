package org.oaktag.adjustments;

import java.util.List;
import org.oaktag.blocks.TopNames;
import org.oaktag.garment.Cloth;
import org.oaktag.garment.Cut;
import org.oaktag.garment.Edge;
import org.oaktag.garment.EdgeNames;
import org.oaktag.garment.Grainline;
import org.oaktag.garment.Name;
import org.oaktag.garment.Piece;
import org.oaktag.garment.Seam;
import org.oaktag.garment.SeamRule;
import org.oaktag.garment.SeamSide;
import org.oaktag.geometry.Line;
import org.oaktag.geometry.Path;
import org.oaktag.geometry.Point;

/**
 * A gusset of four equal sides, as wide from its upper to its lower corner as a side is long, and the seams that let it
 * into the slashes of front and back. Immutable.
 */
record Gusset(Piece piece) {

    private static final Name FRONT_UPPER = Name.of("front upper");
    private static final Name FRONT_LOWER = Name.of("front lower");
    private static final Name BACK_LOWER = Name.of("back lower");
    private static final Name BACK_UPPER = Name.of("back upper");
    private static final String REFIT = "grow the sleeve on again, with its gusset";

    static Gusset of(double side, Cloth cloth) {
        double half = side / 2;
        double across = Math.sqrt(side * side - half * half);
        Point upper = Point.of(across, 0);
        Point front = Point.of(2 * across, half);
        Point lower = Point.of(across, side);
        Point back = Point.of(0, half);
        return new Gusset(Piece.of(
                TopNames.GUSSET,
                List.of(
                        edge(FRONT_UPPER, upper, front),
                        edge(FRONT_LOWER, front, lower),
                        edge(BACK_LOWER, lower, back),
                        edge(BACK_UPPER, back, upper)),
                new Grainline(Point.of(across, side * 0.2), Point.of(across, side * 0.8)),
                Cut.pair(),
                cloth));
    }

    void letIn(Assembly assembly) {
        assembly.put(piece)
                .sew(seam(TopNames.FRONT, EdgeNames.GUSSET_UPPER, SeamSide.along(TopNames.GUSSET, FRONT_UPPER)))
                .sew(seam(TopNames.FRONT, EdgeNames.GUSSET_LOWER, SeamSide.along(TopNames.GUSSET, FRONT_LOWER)))
                .sew(seam(TopNames.BACK, EdgeNames.GUSSET_UPPER, SeamSide.against(TopNames.GUSSET, BACK_UPPER)))
                .sew(seam(TopNames.BACK, EdgeNames.GUSSET_LOWER, SeamSide.against(TopNames.GUSSET, BACK_LOWER)));
    }

    private static Seam seam(Name body, Name edge, SeamSide gusset) {
        return Seam.of(
                Name.of(body.value() + " " + edge.value()), SeamSide.along(body, edge), gusset, SeamRule.flat(), REFIT);
    }

    private static Edge edge(Name name, Point from, Point to) {
        return new Edge(name, Path.of(new Line(from, to)));
    }
}
