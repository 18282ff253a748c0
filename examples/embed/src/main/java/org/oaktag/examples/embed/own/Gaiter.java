package org.oaktag.examples.embed.own;

import java.util.List;
import java.util.stream.Stream;
import org.oaktag.adjust.Comparison;
import org.oaktag.adjust.Reshaped;
import org.oaktag.body.BodyMeasurements;
import org.oaktag.garment.Amount;
import org.oaktag.garment.Cloth;
import org.oaktag.garment.Cut;
import org.oaktag.garment.Edge;
import org.oaktag.garment.EdgeRef;
import org.oaktag.garment.End;
import org.oaktag.garment.FinishedMeasure;
import org.oaktag.garment.Garment;
import org.oaktag.garment.Grainline;
import org.oaktag.garment.Name;
import org.oaktag.garment.Note;
import org.oaktag.garment.Piece;
import org.oaktag.garment.Quantity;
import org.oaktag.garment.Seam;
import org.oaktag.garment.SeamRule;
import org.oaktag.garment.SeamSide;
import org.oaktag.geometry.Cubic;
import org.oaktag.geometry.Line;
import org.oaktag.geometry.Path;
import org.oaktag.geometry.Point;
import org.oaktag.geometry.Vector;
import org.oaktag.measure.Length;

/** A block of one's own: a tube for the neck that is drawn on over the head, closed by one seam at the back. */
final class Gaiter {
    static final Name PIECE = Name.of("gaiter");
    static final Name TOP = Name.of("top");
    static final Name RIGHT = Name.of("right");
    static final Name BOTTOM = Name.of("bottom");
    static final Name LEFT = Name.of("left");

    private Gaiter() {}

    static Garment draft(BodyMeasurements body, Length height, Cloth cloth) {
        double girth = body.headGirth().mm() / (1 + cloth.stretch().fraction());
        Grainline grain = new Grainline(new Point(girth / 2, 20), new Point(girth / 2, height.mm() - 20));
        Piece piece = Piece.of(PIECE, edges(girth, girth, height.mm()), grain, Cut.single(), cloth);
        SeamSide right = SeamSide.along(PIECE, RIGHT);
        SeamSide left = SeamSide.against(PIECE, LEFT);
        Seam back = Seam.of(Name.of("back"), right, left, SeamRule.flat(), "draft the gaiter anew")
                .smoothAt(End.START, End.END);
        List<FinishedMeasure> girths = Stream.of(TOP, BOTTOM).map(Gaiter::girth).toList();
        Garment gaiter = Garment.of("gaiter", body.wearer(), List.of(piece), List.of(back), girths);
        Note rule = Note.rule("girth = head girth " + body.headGirth().text() + " / (1 + stretch "
                + cloth.stretch().text() + ") = " + Length.mm(girth).text());
        Reshaped drafted = new Reshaped(gaiter, List.of(rule), List.of());
        List<Amount> amounts = List.of(Amount.of("height", height));
        return gaiter.recording(Comparison.beginning("draft the gaiter", amounts, drafted));
    }

    /** Top and bottom are curves that meet the seam square, so that they run on smoothly once it is closed. */
    static List<Edge> edges(double top, double bottom, double height) {
        Point[] p = {new Point(0, 0), new Point(top, 0)};
        Point[] q = {new Point((top + bottom) / 2, height), new Point((top - bottom) / 2, height)};
        return List.of(
                square(TOP, q[1], p[0], p[1], q[0]),
                edge(RIGHT, p[1], q[0]),
                square(BOTTOM, p[1], q[0], q[1], p[0]),
                edge(LEFT, q[1], p[0]));
    }

    private static Edge square(Name name, Point before, Point from, Point to, Point after) {
        double handle = from.distanceTo(to) / 3;
        Vector leaving = from.minus(before).unit().rightNormal().times(handle);
        Vector arriving = after.minus(to).unit().leftNormal().times(handle);
        return new Edge(name, Path.of(Cubic.hermite(from, leaving, to, arriving)));
    }

    private static Edge edge(Name name, Point from, Point to) {
        return new Edge(name, Path.of(new Line(from, to)));
    }

    private static FinishedMeasure girth(Name edge) {
        Quantity length = new Quantity.EdgeLength(EdgeRef.of(PIECE, edge));
        return FinishedMeasure.of(Name.of(edge.value() + " girth"), FinishedMeasure.times(1, length));
    }
}
