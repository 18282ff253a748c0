package org.oaktag.examples.embed.own;

import java.util.List;
import java.util.Set;
import org.oaktag.adjust.Comparison;
import org.oaktag.adjust.Reshaped;
import org.oaktag.block.Block;
import org.oaktag.body.BodyMeasure;
import org.oaktag.body.BodyMeasurements;
import org.oaktag.body.Ease;
import org.oaktag.garment.Amount;
import org.oaktag.garment.Cloth;
import org.oaktag.garment.Cut;
import org.oaktag.garment.Edge;
import org.oaktag.garment.EdgeNames;
import org.oaktag.garment.FinishedMeasure;
import org.oaktag.garment.Garment;
import org.oaktag.garment.Grainline;
import org.oaktag.garment.Name;
import org.oaktag.garment.Note;
import org.oaktag.garment.Piece;
import org.oaktag.garment.Quantity;
import org.oaktag.garment.Seam;
import org.oaktag.garment.SeamSide;
import org.oaktag.geometry.Cubic;
import org.oaktag.geometry.Path;
import org.oaktag.geometry.Point;
import org.oaktag.measure.Length;

/** A block of one's own: a tube for the neck that is drawn on over the head, closed by one seam at the back. */
record Gaiter(Length height) implements Block {
    static final Name NAME = Name.of("gaiter");
    static final Name RIGHT = Name.of("right");
    static final Name LEFT = Name.of("left");

    @Override
    public Name name() {
        return NAME;
    }

    @Override
    public Set<BodyMeasure> needs() {
        return Set.of(BodyMeasure.HEAD_GIRTH);
    }

    @Override
    public Garment draft(BodyMeasurements body, Ease ease, Cloth cloth) {
        double girth = body.headGirth().mm() / (1 + cloth.stretch().fraction());
        Grainline grain = new Grainline(Point.of(girth / 2, 20), Point.of(girth / 2, height.mm() - 20));
        Piece piece = Piece.of(NAME, edges(girth, girth, height.mm()), grain, Cut.single(), cloth);
        SeamSide right = SeamSide.along(NAME, RIGHT);
        SeamSide left = SeamSide.against(NAME, LEFT);
        Seam back =
                Seam.flat(Name.of("back"), right, left, "draft the gaiter anew").smooth();
        List<FinishedMeasure> girths = List.of(girth(EdgeNames.TOP), girth(EdgeNames.BOTTOM));
        Garment gaiter = Garment.of("gaiter", body.wearer(), List.of(piece), List.of(back), girths);
        Note rule = Note.rule("girth = head girth " + body.headGirth().text() + " / (1 + stretch "
                + cloth.stretch().text() + ") = " + Length.mm(girth).text());
        List<Amount> amounts = List.of(Amount.of("height", height));
        return gaiter.recording(Comparison.beginning("draft the gaiter", amounts, Reshaped.of(gaiter, rule)));
    }

    /** Top and bottom are curves that meet the seam square, so that they run on smoothly once it is closed. */
    static List<Edge> edges(double top, double bottom, double height) {
        Point topRight = Point.of(top, 0);
        Point right = Point.of((top + bottom) / 2, height);
        Point left = Point.of((top - bottom) / 2, height);
        return List.of(
                new Edge(EdgeNames.TOP, square(left, Point.ORIGIN, topRight, right)),
                Edge.straight(RIGHT, topRight, right),
                new Edge(EdgeNames.BOTTOM, square(topRight, right, left, Point.ORIGIN)),
                Edge.straight(LEFT, left, Point.ORIGIN));
    }

    private static Path square(Point before, Point from, Point to, Point after) {
        return Path.of(Cubic.between(
                from, from.minus(before).rightNormal(), to, after.minus(to).leftNormal()));
    }

    private static FinishedMeasure girth(Name edge) {
        return FinishedMeasure.of(Name.of(edge.value() + " girth"), Quantity.lengthOf(NAME, edge));
    }
}
