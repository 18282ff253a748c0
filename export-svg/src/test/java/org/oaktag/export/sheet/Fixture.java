package org.oaktag.export.sheet;

import static org.oaktag.measure.Length.mm;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.oaktag.blocks.TopEdges;
import org.oaktag.garment.Cloth;
import org.oaktag.garment.Cut;
import org.oaktag.garment.Edge;
import org.oaktag.garment.EdgeFinish;
import org.oaktag.garment.EdgeNames;
import org.oaktag.garment.End;
import org.oaktag.garment.Garment;
import org.oaktag.garment.Grainline;
import org.oaktag.garment.InnerLine;
import org.oaktag.garment.Mark;
import org.oaktag.garment.Name;
import org.oaktag.garment.Notch;
import org.oaktag.garment.Piece;
import org.oaktag.garment.Seam;
import org.oaktag.garment.SeamRule;
import org.oaktag.garment.SeamSide;
import org.oaktag.garment.Wearer;
import org.oaktag.geometry.Path;
import org.oaktag.geometry.Point;
import org.oaktag.measure.Length;
import org.oaktag.measure.Percent;

/** A small top drawn by hand: it fits nobody, but has a piece of every kind that a sheet must show. */
public final class Fixture {

    public static final Cloth SHELL = Cloth.knit("brushed sweatshirt, night blue", Percent.percent(20));
    public static final Cloth RIB = Cloth.rib("2 x 2 rib", Percent.percent(60));
    public static final Name FRONT = Name.of("front");
    public static final Name BACK = Name.of("back");
    public static final Name SLEEVE = Name.of("sleeve");
    public static final Name BAND = Name.of("hem band");
    public static final Name TAB = Name.of("tab");

    private Fixture() {}

    public static Garment top() {
        return top("Ines");
    }

    public static Garment top(String wearer) {
        Map<Name, Length> measures = new TreeMap<>();
        measures.put(Name.of("bust girth"), mm(940));
        return Garment.of(
                "trial top",
                Wearer.of(wearer, false, measures),
                List.of(half(FRONT, 90), half(BACK, 25), sleeve(), band(), tab()),
                List.of(
                        Seam.flat(
                                Name.of("side"),
                                SeamSide.along(FRONT, EdgeNames.SIDE),
                                SeamSide.along(BACK, EdgeNames.SIDE),
                                "straighten the side seams"),
                        Seam.of(
                                Name.of("hem band"),
                                SeamSide.along(FRONT, EdgeNames.HEM).then(SeamSide.along(BACK, EdgeNames.HEM)),
                                SeamSide.along(BAND, EdgeNames.TOP),
                                SeamRule.stretchedOn(0.9),
                                "fit the band to the hem")),
                List.of());
    }

    public static Piece half(Name name, double neckDepth) {
        Path neckline = Path.from(Point.of(0, neckDepth))
                .curveTo(Point.of(45, neckDepth), Point.of(70, neckDepth * 0.6), Point.of(75, 0))
                .build();
        Path shoulder = Path.polyline(Point.of(75, 0), Point.of(210, 45));
        Path armhole = Path.from(Point.of(210, 45))
                .curveTo(Point.of(195, 90), Point.of(190, 130), Point.of(190, 160))
                .curveTo(Point.of(190, 215), Point.of(215, 260), Point.of(260, 262))
                .build();
        Path side = Path.polyline(Point.of(260, 262), Point.of(255, 650));
        Path hem = Path.polyline(Point.of(255, 650), Point.of(0, 650));
        Path centre = Path.polyline(Point.of(0, 650), Point.of(0, neckDepth));
        return Piece.of(
                        name,
                        List.of(
                                new Edge(TopEdges.NECKLINE, neckline),
                                new Edge(TopEdges.SHOULDER, shoulder),
                                new Edge(TopEdges.ARMHOLE, armhole),
                                new Edge(EdgeNames.SIDE, side),
                                new Edge(EdgeNames.HEM, hem, EdgeFinish.TURNED_BACK),
                                new Edge(EdgeNames.CENTRE, centre)),
                        new Grainline(Point.of(110, 200), Point.of(110, 560)),
                        Cut.onFold(EdgeNames.CENTRE),
                        SHELL)
                .withNotches(List.of(
                        name.equals(BACK)
                                ? Notch.paired(Name.of("back armhole"), TopEdges.ARMHOLE, End.END, 90)
                                : Notch.single(Name.of("front armhole"), TopEdges.ARMHOLE, End.END, 90)));
    }

    public static Piece sleeve() {
        Path capBack = Path.from(Point.of(-175, 120))
                .curveTo(Point.of(-110, 118), Point.of(-75, 0), Point.of(0, 0))
                .build();
        Path capFront = Path.from(Point.of(0, 0))
                .curveTo(Point.of(75, 0), Point.of(105, 122), Point.of(175, 120))
                .build();
        Point frontHem = Point.of(120, 560);
        Point backHem = Point.of(-120, 560);
        return Piece.of(
                        SLEEVE,
                        List.of(
                                new Edge(TopEdges.CAP_BACK, capBack),
                                new Edge(TopEdges.CAP_FRONT, capFront),
                                Edge.straight(TopEdges.UNDERARM_FRONT, Point.of(175, 120), frontHem),
                                Edge.straight(EdgeNames.HEM, frontHem, backHem).withFinish(EdgeFinish.TURNED_BACK),
                                Edge.straight(TopEdges.UNDERARM_BACK, backHem, Point.of(-175, 120))),
                        new Grainline(Point.of(0, 60), Point.of(0, 500)),
                        Cut.pair(),
                        SHELL)
                .withLines(List.of(new InnerLine(
                        Name.of("style line"),
                        InnerLine.Use.STYLE,
                        Path.polyline(Point.of(-130, 420), Point.of(130, 420)))))
                .withMarks(List.of(Mark.of(Name.of("patch corner"), Point.of(60, 300))));
    }

    public static Piece band() {
        Point a = Point.of(0, 0);
        Point b = Point.of(900, 0);
        Point c = Point.of(900, 70);
        Point d = Point.of(0, 70);
        return Piece.of(
                BAND,
                List.of(
                        Edge.straight(EdgeNames.TOP, a, b),
                        Edge.straight(Name.of("right end"), b, c),
                        Edge.straight(EdgeNames.BOTTOM, c, d),
                        Edge.straight(Name.of("left end"), d, a)),
                new Grainline(Point.of(450, 8), Point.of(450, 62)),
                Cut.single(),
                RIB);
    }

    /** A piece almost too small to write on. */
    public static Piece tab() {
        Point a = Point.of(0, 0);
        Point b = Point.of(40, 0);
        Point c = Point.of(40, 18);
        Point d = Point.of(0, 18);
        return Piece.of(
                TAB,
                List.of(
                        Edge.straight(EdgeNames.TOP, a, b),
                        Edge.straight(Name.of("right end"), b, c),
                        Edge.straight(EdgeNames.BOTTOM, c, d),
                        Edge.straight(Name.of("left end"), d, a)),
                new Grainline(Point.of(35, 3), Point.of(35, 15)),
                Cut.pair(),
                SHELL.as(Cloth.CONTRAST));
    }
}
