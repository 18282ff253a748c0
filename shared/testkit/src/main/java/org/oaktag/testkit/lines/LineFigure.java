package org.oaktag.testkit.lines;

import java.util.Locale;
import java.util.function.ToDoubleFunction;
import org.oaktag.blocks.ArmholeShape;
import org.oaktag.blocks.CapShare;
import org.oaktag.blocks.TopEdges;
import org.oaktag.blocks.TopNames;
import org.oaktag.body.BodyMeasure;
import org.oaktag.garment.Fairness;
import org.oaktag.garment.Garment;
import org.oaktag.garment.Name;
import org.oaktag.garment.Notch;
import org.oaktag.garment.Piece;
import org.oaktag.geometry.Curvature;
import org.oaktag.geometry.Path;

/** A figure of the lines of a knit top block, by which a cutter judges them. */
public enum LineFigure {
    /** Where the back neckline bends most. */
    BACK_NECK_RADIUS("back neck, least radius, mm", 1, block -> radius(block, TopNames.BACK, TopEdges.NECKLINE)),
    /** Where the front neckline bends most. */
    FRONT_NECK_RADIUS("front neck, least radius, mm", 1, block -> radius(block, TopNames.FRONT, TopEdges.NECKLINE)),
    /** Where the armhole of the back bends most. */
    BACK_ARMHOLE_RADIUS("back armhole, least radius, mm", 1, block -> radius(block, TopNames.BACK, TopEdges.ARMHOLE)),
    /** Where the armhole of the front bends most. */
    FRONT_ARMHOLE_RADIUS(
            "front armhole, least radius, mm", 1, block -> radius(block, TopNames.FRONT, TopEdges.ARMHOLE)),
    /** The least radius of the back armhole beside its run or, where that is less, its drop. */
    ARMHOLE_ROUNDNESS("back armhole, least radius over its run", 2, LineFigure::roundness),
    /** How often both armholes change the way they bend. */
    ARMHOLE_CHANGES(
            "armholes, changes of curvature",
            0,
            block ->
                    changes(block, TopNames.FRONT, TopEdges.ARMHOLE) + changes(block, TopNames.BACK, TopEdges.ARMHOLE)),
    /** How much wider than the body the back is at its pitch point, on each side. */
    ACROSS_BACK("half across back beyond the body's, mm", 1, LineFigure::acrossBack),
    /** The height of the cap over the depth of the armhole. */
    CAP_SHARE(
            "cap height over armhole depth",
            2,
            block -> CapShare.of(block).orElseThrow().share()),
    /** How sharply the top of the cap bends. */
    CAP_TOP_RADIUS("cap, radius at its top, mm", 1, LineFigure::capTop),
    /** How far from the underarm point the notch of the front lies, along the seam. */
    FRONT_NOTCH("front notch from the underarm point, mm", 1, block -> notch(block, TopNames.FRONT)),
    /** The same as a share of the front armhole. */
    FRONT_NOTCH_SHARE(
            "front notch, share of the armhole",
            3,
            block -> notch(block, TopNames.FRONT)
                    / armhole(block, TopNames.FRONT).length()),
    /** How far from the underarm point the notch of the back lies, along the seam. */
    BACK_NOTCH("back notch from the underarm point, mm", 1, block -> notch(block, TopNames.BACK));

    private final String label;
    private final int decimals;

    @SuppressWarnings("ImmutableEnumChecker") // a function without state
    private final ToDoubleFunction<Garment> figure;

    LineFigure(String label, int decimals, ToDoubleFunction<Garment> figure) {
        this.label = label;
        this.decimals = decimals;
        this.figure = figure;
    }

    /** Returns what is measured, with its unit. */
    public String label() {
        return label;
    }

    /** Measures it on a block. */
    public double of(Garment block) {
        return figure.applyAsDouble(block);
    }

    /** Returns a value with as many decimals as mean something. */
    public String text(double value) {
        return String.format(Locale.ROOT, "%." + decimals + "f", value + 0.0);
    }

    private static Path armhole(Garment block, Name piece) {
        return block.piece(piece).path(TopEdges.ARMHOLE);
    }

    private static double radius(Garment block, Name piece, Name edge) {
        return Fairness.of(block.piece(piece), edge).leastRadius();
    }

    private static int changes(Garment block, Name piece, Name edge) {
        return Fairness.of(block.piece(piece), edge).changes();
    }

    private static double roundness(Garment block) {
        Path armhole = armhole(block, TopNames.BACK);
        double run = armhole.end().x() - ArmholeShape.pitch(armhole).x();
        double drop = armhole.end().y() - ArmholeShape.pitch(armhole).y();
        return radius(block, TopNames.BACK, TopEdges.ARMHOLE) / Math.min(run, drop);
    }

    private static double acrossBack(Garment block) {
        double body = block.wearer().measure(BodyMeasure.ACROSS_BACK.asName()).mm();
        return ArmholeShape.pitch(armhole(block, TopNames.BACK)).x() - body / 2;
    }

    private static double capTop(Garment block) {
        Piece sleeve = block.piece(TopNames.SLEEVE);
        Path front = sleeve.path(TopEdges.CAP_FRONT);
        Path back = sleeve.path(TopEdges.CAP_BACK);
        return Math.min(
                Curvature.of(front).at(0).radius(),
                Curvature.of(back).at(back.length()).radius());
    }

    private static double notch(Garment block, Name piece) {
        Name name = piece.equals(TopNames.FRONT) ? TopNames.FRONT_NOTCH : TopNames.BACK_NOTCH;
        Path armhole = armhole(block, piece);
        Notch notch = block.piece(piece).notch(TopEdges.ARMHOLE, name).orElseThrow();
        return armhole.length() - notch.fromStart(armhole.length());
    }
}
