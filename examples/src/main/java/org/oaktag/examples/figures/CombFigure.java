package org.oaktag.examples.figures;

import java.util.Locale;
import java.util.Map;
import org.oaktag.blocks.TopEdges;
import org.oaktag.blocks.TopNames;
import org.oaktag.export.drawing.Label.Align;
import org.oaktag.export.drawing.LineType;
import org.oaktag.export.svg.SvgSheet;
import org.oaktag.garment.EdgeNames;
import org.oaktag.garment.Garment;
import org.oaktag.garment.Piece;
import org.oaktag.geometry.Curvature;
import org.oaktag.geometry.Outline;
import org.oaktag.geometry.Path;
import org.oaktag.geometry.Point;
import org.oaktag.geometry.Vector;
import org.oaktag.measure.Length;

/**
 * The lines of a block that a curve ruler is laid to, each with its curvature comb and the circle of its sharpest bend.
 */
final class CombFigure {

    private static final double REDUCTION = 1.5;

    /** The length of a tooth times the radius that it stands for, mm². */
    private static final double SCALE = 900;

    private static final double SPACING = 3;
    private static final double LONGEST = 60;
    private static final double STUB = 36;
    private static final double NAME_ABOVE = 14;
    private static final double ABOVE = 5;

    /** The radius on paper from which a circle has room for the text of its radius, mm. */
    private static final double ROOM_FOR_TEXT = 20;

    private static final double LEGEND_LINE = 8;
    private static final double LEGEND_SAMPLE = 24;
    private static final double SAMPLE = 78;
    private static final double[] RADII = {25.4, 50.8, 101.6};

    private final Garment block;
    private final Sketch sketch = Sketch.reduced(REDUCTION);

    private CombFigure(Garment block) {
        this.block = block;
    }

    static Map<String, SvgSheet> of(Garment block) {
        return Map.of("lines-combs", new CombFigure(block).drawn());
    }

    private SvgSheet drawn() {
        neck(block.piece(TopNames.BACK), "Back neck", 0, 0);
        neck(block.piece(TopNames.FRONT), "Front neck", 0, 92);
        armhole(block.piece(TopNames.BACK), "Back armhole", 150, 0);
        legend(-28, 176);
        return sketch.sheet(
                "Curvature combs",
                "Back neck, front neck and back armhole of a block, each with teeth that are the longer the sharper it bends.");
    }

    /** A neckline with what lies beside it: the fold at the centre and the shoulder. */
    private void neck(Piece piece, String name, double right, double down) {
        Path neckline = piece.path(TopEdges.NECKLINE);
        sketch.seated(Point.of(neckline.start().x(), neckline.end().y()), right, down);
        Path shoulder = piece.path(TopEdges.SHOULDER).sub(0, STUB);
        Point onFold = neckline.start().plus(Vector.of(0, STUB));
        Path beside = Path.polyline(shoulder.end(), Point.of(shoulder.end().x(), onFold.y()), onFold, neckline.start());
        sketch.cloth(new Outline(neckline.then(shoulder).then(beside)));
        sketch.line(LineType.FOLD, Path.polyline(neckline.start(), onFold));
        sketch.line(LineType.SEAM, shoulder);
        combed(neckline);
        sketch.text(name, neckline.end(), 3, -NAME_ABOVE, Align.START);
    }

    /** An armhole with what lies beside it: the shoulder and the side. */
    private void armhole(Piece piece, String name, double right, double down) {
        Path armhole = piece.path(TopEdges.ARMHOLE);
        Path whole = piece.path(TopEdges.SHOULDER);
        Path shoulder = whole.sub(whole.length() - STUB, whole.length());
        Path side = piece.path(EdgeNames.SIDE).sub(0, STUB);
        sketch.seated(armhole.start(), right, down);
        Path beside = Path.polyline(
                side.end(), Point.of(shoulder.start().x(), side.end().y()), shoulder.start());
        sketch.cloth(new Outline(shoulder.then(armhole).then(side).then(beside)));
        sketch.line(LineType.SEAM, shoulder);
        sketch.line(LineType.SEAM, side);
        combed(armhole);
        sketch.text(name, armhole.start(), 4, -NAME_ABOVE, Align.MIDDLE);
    }

    private void combed(Path path) {
        Curvature curvature = Curvature.of(path);
        Curvature.Comb comb = curvature.comb(SCALE, SPACING, LONGEST);
        comb.teeth().forEach(tooth -> sketch.line(LineType.DIMENSION, Path.of(tooth)));
        sketch.line(LineType.DIMENSION, comb.rim());
        Curvature.Bend sharpest = curvature.leastRadius();
        Vector across = path.directionAt(sharpest.distanceAlong())
                .rightNormal()
                .times(Math.signum(sharpest.curvature()) * sharpest.radius());
        Point middle = sharpest.point().plus(across);
        sketch.line(LineType.PLACEMENT, circle(middle, sharpest.radius()));
        sketch.subject(path);
        sketch.arrow(middle, sharpest.point()).dot(middle);
        double up = sharpest.radius() / REDUCTION < ROOM_FOR_TEXT ? sharpest.radius() / REDUCTION : 0;
        sketch.text(bothUnits(sharpest.radius()), middle, 0, -up - ABOVE, Align.MIDDLE);
    }

    /** What the lines mean, and the teeth of three radii. */
    private void legend(double right, double down) {
        sketch.at(right, down);
        meaning(0, "the seam line that is looked at", LineType.SUBJECT);
        meaning(1, "seam line beside it", LineType.SEAM);
        meaning(2, "fold of the cloth", LineType.FOLD);
        meaning(3, "circle in the sharpest bend, its radius lettered", LineType.PLACEMENT);
        meaning(4, "teeth: the sharper the bend, the longer; their tips are joined", LineType.DIMENSION);
        double across = 0;
        for (double radius : RADII) {
            Point foot = onPaper(across, 5 * LEGEND_LINE);
            Point tip = foot.plus(Vector.of(SCALE / radius, 0));
            sketch.line(LineType.DIMENSION, Path.polyline(foot, tip));
            sketch.dot(foot);
            sketch.text("radius " + bothUnits(radius), tip, 3, 0, Align.START);
            across += SAMPLE;
        }
    }

    private void meaning(int row, String text, LineType type) {
        Point from = onPaper(0, row * LEGEND_LINE);
        Point to = onPaper(LEGEND_SAMPLE, row * LEGEND_LINE);
        sketch.line(type, Path.polyline(from, to));
        sketch.text(text, to, 3, 0, Align.START);
    }

    private static Point onPaper(double right, double down) {
        return Point.of(right * REDUCTION, down * REDUCTION);
    }

    private static Path circle(Point middle, double radius) {
        Point[] corners = new Point[121];
        for (int i = 0; i < corners.length; i++) {
            corners[i] = middle.plus(Vector.polar(radius, i * 2 * Math.PI / (corners.length - 1)));
        }
        corners[corners.length - 1] = corners[0];
        return Path.polyline(corners);
    }

    private static String bothUnits(double mm) {
        return String.format(Locale.ROOT, "%.1f cm (%s)", mm / 10, Length.mm(mm).textInInches());
    }
}
