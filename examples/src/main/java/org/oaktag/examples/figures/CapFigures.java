package org.oaktag.examples.figures;

import static org.oaktag.adjustments.Armholes.lowerArmhole;
import static org.oaktag.adjustments.Bodies.straightenSideSeams;
import static org.oaktag.adjustments.Shoulders.dropShoulder;
import static org.oaktag.adjustments.Sleeves.fitCapToArmhole;
import static org.oaktag.measure.Length.mm;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.oaktag.blocks.ArmholeShape;
import org.oaktag.blocks.TopEdges;
import org.oaktag.blocks.TopNames;
import org.oaktag.export.drawing.Label.Align;
import org.oaktag.export.drawing.LineType;
import org.oaktag.export.svg.SvgSheet;
import org.oaktag.garment.EdgeNames;
import org.oaktag.garment.Garment;
import org.oaktag.garment.Name;
import org.oaktag.garment.Notch;
import org.oaktag.garment.Piece;
import org.oaktag.garment.WalkedSeam;
import org.oaktag.garment.WalkedSpan;
import org.oaktag.geometry.Path;
import org.oaktag.geometry.Point;
import org.oaktag.geometry.Transform;
import org.oaktag.measure.Length;

/** How a cap is fitted, from the armhole to the walk. */
final class CapFigures {

    private static final Length EASE = mm(6);
    private static final double SMALL_STEP = 0.5;
    private static final double EXACT = 1e-6;
    private static final double HEIGHT = 110;
    private static final double[] HEIGHTS = {70, 90, 110, 130};
    private static final double STUB = 60;

    private final Garment opened;
    private final Garment fitted;

    private CapFigures(Garment block) {
        this.opened =
                block.adjust(dropShoulder(mm(25))).adjust(lowerArmhole(mm(12))).adjust(straightenSideSeams());
        this.fitted = capAt(HEIGHT);
    }

    static Map<String, SvgSheet> of(Garment block) {
        CapFigures figures = new CapFigures(block);
        Map<String, SvgSheet> all = new LinkedHashMap<>();
        all.put("cap-1-armhole", figures.armhole());
        all.put("cap-2-underarm", figures.underarm());
        all.put("cap-3-crown", figures.crown());
        all.put("cap-4-heights", figures.heights());
        all.put("cap-5-trade", figures.trade());
        all.put("cap-6-walk", figures.walk());
        return all;
    }

    private Garment capAt(double height) {
        return opened.adjust(fitCapToArmhole(EASE).atHeight(mm(height)));
    }

    private static Path edge(Garment garment, Name piece, Name edge) {
        return garment.piece(piece).path(edge);
    }

    /** The two armholes, each with what the cap takes from it. */
    private SvgSheet armhole() {
        Sketch sketch = Sketch.reduced(2.5);
        double right = 0;
        for (Name name : List.of(TopNames.BACK, TopNames.FRONT)) {
            Piece piece = opened.piece(name);
            Path armhole = piece.path(TopEdges.ARMHOLE);
            Path shoulder = piece.path(TopEdges.SHOULDER);
            Path side = piece.path(EdgeNames.SIDE);
            sketch.seated(armhole.start(), right, 0);
            sketch.line(LineType.SEAM, shoulder.sub(shoulder.length() - STUB, shoulder.length()));
            sketch.line(LineType.SEAM, side.sub(0, STUB / 2));
            sketch.line(LineType.SEAM, armhole);
            double notch = notch(name.equals(TopNames.FRONT) ? TopEdges.CAP_FRONT : TopEdges.CAP_BACK);
            Path scoop = armhole.sub(armhole.length() - notch, armhole.length());
            sketch.subject(scoop);
            sketch.dot(armhole.start())
                    .dot(ArmholeShape.pitch(armhole))
                    .dot(scoop.start())
                    .dot(armhole.end());
            sketch.text("shoulder point", armhole.start(), 3, -2, Align.START);
            sketch.text("pitch point", ArmholeShape.pitch(armhole), -3, 0, Align.END);
            sketch.text("notch", scoop.start(), -3, 3, Align.END);
            sketch.text("underarm point", armhole.end(), 3, 0, Align.START);
            sketch.text(name + " armhole " + mm(armhole.length()).text(), armhole.end(), -6, 16, Align.MIDDLE);
            sketch.text("of it below the notch " + mm(notch).text(), armhole.end(), -6, 22, Align.MIDDLE);
            right += 105;
        }
        return sketch.sheet(
                "The armhole", "Back and front armhole; the part below the notch, where no ease lies, is wide.");
    }

    private double notch(Name half) {
        Piece sleeve = fitted.piece(TopNames.SLEEVE);
        Notch notch = sleeve.notches().stream()
                .filter(each -> each.edge().equals(half) && !each.name().equals(TopNames.SHOULDER_NOTCH))
                .findFirst()
                .orElseThrow();
        double length = sleeve.path(half).length();
        double fromStart = notch.fromStart(length);
        return half.equals(TopEdges.CAP_FRONT) ? length - fromStart : fromStart;
    }

    /** The armholes laid on the cap at its underarm points. */
    private SvgSheet underarm() {
        Sketch sketch = Sketch.reduced(2);
        Path capFront = edge(fitted, TopNames.SLEEVE, TopEdges.CAP_FRONT);
        Path capBack = edge(fitted, TopNames.SLEEVE, TopEdges.CAP_BACK);
        sketch.line(LineType.SEAM, capBack).line(LineType.SEAM, capFront);
        Path laidFront = laid(edge(opened, TopNames.FRONT, TopEdges.ARMHOLE), capFront.end(), false);
        Path laidBack = laid(edge(opened, TopNames.BACK, TopEdges.ARMHOLE), capBack.start(), true);
        sketch.before(laidFront).before(laidBack);
        double front = notch(TopEdges.CAP_FRONT);
        double back = notch(TopEdges.CAP_BACK);
        sketch.subject(capFront.reversed().sub(0, copied(capFront.reversed(), laidFront)));
        sketch.subject(capBack.sub(0, copied(capBack, laidBack)));
        Point topFront = capFront.pointAt(capFront.length() - front);
        Point topBack = capBack.pointAt(back);
        sketch.dot(topFront).dot(topBack);
        sketch.text("front notch", topFront, -4, 4, Align.END);
        sketch.text("back notch", topBack, 4, 4, Align.START);
        sketch.text("front armhole", capFront.end(), -11, -58, Align.START);
        sketch.text("back armhole", capBack.start(), 11, -58, Align.END);
        return sketch.sheet(
                "The underarm curves",
                "The armholes, dashed, laid on the cap: where it is wide, the cap is the armhole's own curve.");
    }

    /** How far from its underarm point a cap lies on the armhole that is laid on it. */
    private static double copied(Path cap, Path armhole) {
        double along = 0;
        while (armhole.nearest(cap.pointAt(along + SMALL_STEP)).distance() < EXACT) {
            along += SMALL_STEP;
        }
        return along;
    }

    /** Places an armhole with its underarm point there and level, as the cap has it. */
    private static Path laid(Path armhole, Point underarm, boolean mirrored) {
        Transform level = Transform.rotation(-armhole.endDirection().angle(), armhole.end());
        Transform turned = mirrored ? level.then(Transform.mirrorX(armhole.end().x())) : level;
        return armhole.transformed(turned.then(Transform.translation(underarm.minus(armhole.end()))));
    }

    /** The finished cap with its height and widths. */
    private SvgSheet crown() {
        Sketch sketch = Sketch.reduced(2);
        Path front = edge(fitted, TopNames.SLEEVE, TopEdges.CAP_FRONT);
        Path back = edge(fitted, TopNames.SLEEVE, TopEdges.CAP_BACK);
        sketch.line(LineType.SEAM, back.sub(0, notch(TopEdges.CAP_BACK)));
        sketch.subject(back.sub(notch(TopEdges.CAP_BACK), back.length()));
        sketch.subject(front.sub(0, front.length() - notch(TopEdges.CAP_FRONT)));
        sketch.line(LineType.SEAM, front.sub(front.length() - notch(TopEdges.CAP_FRONT), front.length()));
        Point top = front.start();
        Point foot = Point.of(top.x(), front.end().y());
        sketch.dimension(foot, top, "height " + mm(foot.y() - top.y()).text(), 0);
        sketch.dimension(
                back.start(), foot, "back " + mm(foot.x() - back.start().x()).text(), -7);
        sketch.dimension(
                foot, front.end(), "front " + mm(front.end().x() - foot.x()).text(), -7);
        sketch.dot(top);
        sketch.text("shoulder notch", top, 0, -4.5, Align.MIDDLE);
        return sketch.sheet(
                "The crown", "The crown joins the two notches, level at the top; the two widths are what is solved.");
    }

    /** Caps of several heights on the same armhole. */
    private SvgSheet heights() {
        Sketch sketch = Sketch.reduced(2.5);
        List<Path> backs = new ArrayList<>();
        for (double height : HEIGHTS) {
            Garment garment = capAt(height);
            Path front = edge(garment, TopNames.SLEEVE, TopEdges.CAP_FRONT);
            Path back = edge(garment, TopNames.SLEEVE, TopEdges.CAP_BACK);
            sketch.seated(Point.of(front.start().x(), front.end().y()), 0, 0);
            if (height == HEIGHT) {
                sketch.subject(back).subject(front);
            } else {
                sketch.line(LineType.SEAM, back).line(LineType.SEAM, front);
            }
            sketch.text(mm(height).text(), front.start(), 0, -2.6, Align.MIDDLE);
            backs.add(back);
        }
        double down = 7;
        for (int i = HEIGHTS.length - 1; i >= 0; i--) {
            Path front = edge(capAt(HEIGHTS[i]), TopNames.SLEEVE, TopEdges.CAP_FRONT);
            Point foot = Point.of(front.start().x(), front.end().y());
            sketch.seated(foot, 0, 0);
            Point left =
                    Point.of(foot.x() + backs.get(i).start().x() - front.start().x(), foot.y());
            sketch.dimension(left, front.end(), mm(front.end().x() - left.x()).text(), -down);
            down += 8;
        }
        return sketch.sheet(
                "Caps of four heights",
                "All of them walk round the same armhole: the lower the cap, the wider the sleeve.");
    }

    /** The width of the sleeve over the height of the cap, and what the triangle promises. */
    private SvgSheet trade() {
        Sketch sketch = Sketch.reduced(1);
        List<Point> solved = new ArrayList<>();
        List<Point> triangle = new ArrayList<>();
        for (double height = 60; height <= 150; height += 5) {
            Garment garment = capAt(height);
            double front = edge(garment, TopNames.SLEEVE, TopEdges.CAP_FRONT).length();
            double back = edge(garment, TopNames.SLEEVE, TopEdges.CAP_BACK).length();
            solved.add(onGraph(height, garment.finished(TopNames.SLEEVE_WIDTH).mm()));
            triangle.add(onGraph(
                    height, Math.sqrt(front * front - height * height) + Math.sqrt(back * back - height * height)));
        }
        for (int width = 220; width <= 400; width += 20) {
            sketch.line(LineType.DIMENSION, Path.polyline(onGraph(60, width), onGraph(150, width)));
            sketch.text(width + " mm", onGraph(60, width), -2, 0, Align.END);
        }
        for (int height = 60; height <= 150; height += 15) {
            sketch.line(LineType.DIMENSION, Path.polyline(onGraph(height, 220), onGraph(height, 400)));
            sketch.text(height + " mm", onGraph(height, 220), 0, 4.5, Align.MIDDLE);
        }
        sketch.before(Path.polyline(triangle.toArray(new Point[0])));
        sketch.subject(Path.polyline(solved.toArray(new Point[0])));
        sketch.text("width as solved", solved.get(6), -4, 6, Align.END);
        sketch.text("width of the triangle", triangle.get(9), 3, -4, Align.START);
        sketch.text("height of the cap", onGraph(105, 220), 0, 11, Align.MIDDLE);
        sketch.text("width of the sleeve", onGraph(60, 400), -18, -7, Align.START);
        return sketch.sheet(
                "Height against width", "For one armhole, the width of the sleeve at each height of its cap.");
    }

    private static Point onGraph(double height, double width) {
        return Point.of((height - 60) * 1.5, (400 - width) * 0.55);
    }

    /** Both seams of the armhole laid out straight. */
    private SvgSheet walk() {
        Sketch sketch = Sketch.reduced(1.15);
        double down = 0;
        for (Name name : List.of(TopNames.FRONT_ARMHOLE_SEAM, TopNames.BACK_ARMHOLE_SEAM)) {
            WalkedSeam seam = fitted.walkSeams().seam(name);
            sketch.at(0, down);
            Point startA = Point.of(0, 0);
            Point startB = Point.of(0, 22);
            sketch.strong(Path.polyline(startA, Point.of(seam.lengthA().mm(), 0)));
            sketch.strong(Path.polyline(startB, Point.of(seam.lengthB().mm(), 22)));
            double a = 0;
            double b = 0;
            sketch.line(LineType.SEAM, Path.polyline(startA, startB));
            for (WalkedSpan span : seam.spans()) {
                Point middle = Point.of(a + span.lengthA().mm() / 2, 11);
                a += span.lengthA().mm();
                b += span.lengthB().mm();
                sketch.line(LineType.SEAM, Path.polyline(Point.of(a, 0), Point.of(b, 22)));
                String ease = span.difference().mm() < 0.05
                        ? "none"
                        : "ease " + span.difference().text();
                sketch.text(ease, middle, 0, 0, Align.MIDDLE);
            }
            sketch.text("armhole " + seam.lengthA().text(), startA, 0, -4, Align.START);
            sketch.text("cap " + seam.lengthB().text(), startB, 0, 4.2, Align.START);
            sketch.text(
                    name + ", from the shoulder down", Point.of(seam.lengthA().mm(), 0), 0, -4, Align.END);
            down += 38;
        }
        return sketch.sheet("The walk", "Armhole and cap laid out straight: the ease lies between shoulder and notch.");
    }
}
