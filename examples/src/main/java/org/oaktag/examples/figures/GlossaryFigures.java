package org.oaktag.examples.figures;

import static org.oaktag.adjust.Darts.openDart;
import static org.oaktag.adjustments.Bands.hemBand;
import static org.oaktag.adjustments.Bands.ribCuff;
import static org.oaktag.adjustments.Finishes.faceNeckline;
import static org.oaktag.adjustments.Hoods.hood;
import static org.oaktag.adjustments.Sleeves.splitSleeve;
import static org.oaktag.adjustments.Sleeves.spreadSleeveAtHem;
import static org.oaktag.adjustments.Sleeves.straightenSleeve;
import static org.oaktag.measure.Length.mm;
import static org.oaktag.measure.Percent.percent;

import java.util.LinkedHashMap;
import java.util.Map;
import org.oaktag.adjust.Place;
import org.oaktag.blocks.ArmholeShape;
import org.oaktag.blocks.FinishNames;
import org.oaktag.blocks.HoodNames;
import org.oaktag.blocks.HoodShape;
import org.oaktag.blocks.KnitTop;
import org.oaktag.blocks.TopEdges;
import org.oaktag.blocks.TopNames;
import org.oaktag.export.drawing.LineType;
import org.oaktag.export.svg.SvgSheet;
import org.oaktag.garment.Cloth;
import org.oaktag.garment.CutLine;
import org.oaktag.garment.Dart;
import org.oaktag.garment.EdgeNames;
import org.oaktag.garment.Garment;
import org.oaktag.garment.Grainline;
import org.oaktag.garment.InnerLine;
import org.oaktag.garment.Name;
import org.oaktag.garment.Notch;
import org.oaktag.garment.Piece;
import org.oaktag.geometry.Path;
import org.oaktag.geometry.Point;

/** One small drawing for each term of the glossary. */
final class GlossaryFigures {

    private static final double REDUCTION = 10;
    private static final Name DART = Name.of("hem dart");

    private final Garment block;
    private final Piece front;
    private final Piece back;
    private final Piece sleeve;
    private final Map<String, SvgSheet> all = new LinkedHashMap<>();

    private GlossaryFigures(Garment block) {
        this.block = block;
        this.front = block.piece(TopNames.FRONT);
        this.back = block.piece(TopNames.BACK);
        this.sleeve = block.piece(TopNames.SLEEVE);
    }

    static Map<String, SvgSheet> of(Garment block) {
        GlossaryFigures figures = new GlossaryFigures(block);
        figures.edges();
        figures.points();
        figures.sleeves();
        figures.linesAndMarks();
        figures.parts();
        return figures.all;
    }

    private void add(String term, String shows, Sketch sketch) {
        all.put(term.replace(' ', '-'), sketch.sheet(term, shows));
    }

    private void edge(String term, Piece piece, Name edge) {
        add(
                term,
                "The " + term + " is the wide line.",
                Sketch.reduced(REDUCTION).piece(piece).subject(piece.path(edge)));
    }

    private void edges() {
        edge("neckline", front, TopEdges.NECKLINE);
        edge("shoulder seam", front, TopEdges.SHOULDER);
        edge("armhole", front, TopEdges.ARMHOLE);
        edge("side seam", front, EdgeNames.SIDE);
        edge("hem", front, EdgeNames.HEM);
        edge("centre front", front, EdgeNames.CENTRE);
        edge("centre back", back, EdgeNames.CENTRE);
        Sketch pieces = Sketch.reduced(REDUCTION);
        double right = 0;
        for (Piece piece : block.pieces()) {
            pieces.seated(
                    Point.of(
                            piece.outline().bounds().minX(),
                            piece.outline().bounds().maxY()),
                    right,
                    0);
            pieces.piece(piece);
            right += piece.outline().bounds().width() / REDUCTION + 6;
        }
        add("block", "Front, back and sleeve of a block.", pieces);
    }

    private void point(String term, Piece piece, Point point) {
        add(
                term,
                "The " + term + " is the dot.",
                Sketch.reduced(REDUCTION).piece(piece).dot(point));
    }

    private void points() {
        point("side neck point", front, front.path(TopEdges.SHOULDER).start());
        point("shoulder point", front, front.path(TopEdges.SHOULDER).end());
        point("pitch point", front, ArmholeShape.pitch(front.path(TopEdges.ARMHOLE)));
        point("underarm point", front, front.path(TopEdges.ARMHOLE).end());
        Point nape = back.path(TopEdges.NECKLINE).start();
        Point underarm = back.path(TopEdges.ARMHOLE).end();
        Point level = Point.of(nape.x(), underarm.y());
        add(
                "scye depth",
                "From the back neck point down to the level of the underarm points.",
                Sketch.reduced(REDUCTION)
                        .piece(back)
                        .line(LineType.PLACEMENT, Path.polyline(level, underarm))
                        .dimension(level, nape, mm(underarm.y() - nape.y()).text(), 6));
    }

    private void sleeves() {
        Path capBack = sleeve.path(TopEdges.CAP_BACK);
        Path capFront = sleeve.path(TopEdges.CAP_FRONT);
        add(
                "cap",
                "The cap is the wide line.",
                Sketch.reduced(REDUCTION).piece(sleeve).subject(capBack).subject(capFront));
        Notch notch = sleeve.notches().stream()
                .filter(each -> each.name().equals(TopNames.FRONT_NOTCH))
                .findFirst()
                .orElseThrow();
        double at = notch.fromStart(capFront.length());
        add(
                "crown",
                "The front half of the crown, from the top to the notch, is the wide line.",
                Sketch.reduced(REDUCTION).piece(sleeve).subject(capFront.sub(0, at)));
        Point foot = Point.of(capFront.start().x(), capFront.end().y());
        add(
                "cap height",
                "From the top of the cap straight down to the level of the underarm points.",
                Sketch.reduced(REDUCTION)
                        .piece(sleeve)
                        .line(LineType.PLACEMENT, Path.polyline(capBack.start(), capFront.end()))
                        .dimension(
                                capFront.start(),
                                foot,
                                mm(foot.y() - capFront.start().y()).text(),
                                0));
        add(
                "sleeve width",
                "From underarm point to underarm point.",
                Sketch.reduced(REDUCTION)
                        .piece(sleeve)
                        .dimension(
                                capBack.start(),
                                capFront.end(),
                                block.finished(TopNames.SLEEVE_WIDTH).text(),
                                0));
        Piece spread = block.adjust(spreadSleeveAtHem(mm(60))).piece(TopNames.SLEEVE);
        add(
                "slash and spread",
                "A sleeve opened at its hem; before, dashed.",
                Sketch.reduced(REDUCTION)
                        .piece(spread)
                        .before(sleeve.outline().path())
                        .subject(spread.path(EdgeNames.HEM)));
        Garment split = block.adjust(straightenSleeve()).adjust(splitSleeve(mm(140), cloth("amber", Cloth.CONTRAST)));
        Piece upper = split.piece(TopNames.SLEEVE);
        add(
                "style line",
                "The wide line parts the sleeve.",
                Sketch.reduced(REDUCTION)
                        .piece(upper)
                        .piece(split.piece(TopNames.SLEEVE_LOWER))
                        .subject(upper.path(EdgeNames.BOTTOM)));
    }

    private void linesAndMarks() {
        CutLine cut = CutLine.of(front, KnitTop.allowances(block));
        add(
                "cut line",
                "The wide line, round the narrow seam line.",
                Sketch.reduced(REDUCTION)
                        .cloth(cut.outline())
                        .piece(front)
                        .subject(cut.outline().path()));
        Point side = front.path(EdgeNames.SIDE).pointAt(150);
        add(
                "allowance",
                "What lies between the seam line and the cut line.",
                Sketch.reduced(REDUCTION)
                        .cloth(cut.outline())
                        .line(LineType.CUT, cut.outline().path())
                        .piece(front)
                        .arrow(Point.of(side.x() + 90, side.y() - 60), Point.of(side.x() + 5, side.y())));
        add(
                "seam line",
                "The wide line, on which everything is measured.",
                Sketch.reduced(REDUCTION)
                        .line(LineType.SEAM, cut.outline().path())
                        .piece(front)
                        .subject(front.outline().path()));
        Path fold = front.path(EdgeNames.CENTRE);
        add(
                "fold",
                "The long-dashed dotted line lies on the fold of the cloth; dashed, the half that is not drawn.",
                Sketch.reduced(REDUCTION)
                        .before(front.mirrored().outline().path())
                        .piece(front)
                        .line(LineType.FOLD, fold));
        Grainline grain = front.grainline();
        add(
                "grainline",
                "The arrow runs with the wales.",
                Sketch.reduced(REDUCTION)
                        .piece(front)
                        .arrow(grain.top(), grain.bottom())
                        .arrow(grain.bottom(), grain.top()));
        Path armhole = back.path(TopEdges.ARMHOLE);
        Notch paired = back.notches().stream()
                .filter(each -> each.edge().equals(TopEdges.ARMHOLE))
                .findFirst()
                .orElseThrow();
        Point there = armhole.pointAt(paired.fromStart(armhole.length()));
        add(
                "notch",
                "A double notch, as on a back.",
                Sketch.reduced(4)
                        .line(LineType.SEAM, armhole)
                        .notches(back, TopEdges.ARMHOLE)
                        .arrow(Point.of(there.x() - 70, there.y() + 40), Point.of(there.x() - 6, there.y() + 4)));
        Garment darted = block.adjust(openDart(TopNames.FRONT, DART, Place.share(EdgeNames.HEM, 0.6), mm(60), mm(350)));
        Piece piece = darted.piece(TopNames.FRONT);
        Dart dart = Dart.in(piece, DART);
        add(
                "dart",
                "The two legs of a dart are the wide lines; its apex is the dot.",
                Sketch.reduced(REDUCTION)
                        .piece(piece)
                        .subject(piece.path(Dart.legA(DART)))
                        .subject(piece.path(Dart.legB(DART)))
                        .dot(dart.apex()));
    }

    private void parts() {
        Piece band = block.adjust(hemBand(mm(60), mm(30))).piece(TopNames.HEM_BAND_FRONT);
        add("band", "A band; along the fold it is doubled.", folded(band));
        Point end =
                Point.of(band.outline().bounds().maxX(), band.outline().bounds().minY());
        add(
                "lap",
                "The end of the band runs past the side seam by half of the lap.",
                folded(band).dimension(Point.of(end.x() - 15, end.y()), end, "15.0 mm", 6));
        Piece cuff = block.adjust(straightenSleeve())
                .adjust(ribCuff(mm(70), Cloth.rib("rib", percent(90))))
                .piece(TopNames.CUFF);
        add("cuff", "A cuff, folded along its middle.", folded(cuff));
        Garment faced = block.adjust(faceNeckline(mm(60), cloth("fleece", Cloth.SHELL)));
        Piece facing = faced.piece(FinishNames.FRONT_FACING);
        add(
                "facing",
                "The facing of the front neckline, laid on it.",
                Sketch.reduced(REDUCTION).piece(front).subject(facing.outline().path()));
        Garment hooded = block.adjust(hood(HoodShape.threePanel()));
        Piece side = hooded.piece(TopNames.HOOD_SIDE);
        add(
                "hood",
                "The side panel of a three-panel hood; its crown edge is wide.",
                Sketch.reduced(REDUCTION).piece(side).subject(side.path(HoodNames.CROWN)));
    }

    private static Sketch folded(Piece piece) {
        Sketch sketch = Sketch.reduced(5).piece(piece);
        for (InnerLine line : piece.lines()) {
            if (line.use() == InnerLine.Use.FOLD) {
                sketch.line(LineType.FOLD, line.path());
            }
        }
        return sketch;
    }

    private static Cloth cloth(String description, Name use) {
        return Cloth.knit(description, percent(45)).as(use);
    }
}
