package org.oaktag.adjustments;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.oaktag.PatternException;
import org.oaktag.adjust.LineAcross;
import org.oaktag.adjust.Part;
import org.oaktag.adjust.Place;
import org.oaktag.adjust.Reshaped;
import org.oaktag.adjust.SplitPiece;
import org.oaktag.adjust.Step;
import org.oaktag.blocks.SleeveEnd;
import org.oaktag.blocks.TopEdges;
import org.oaktag.blocks.TopNames;
import org.oaktag.blocks.TopPieces;
import org.oaktag.garment.Amount;
import org.oaktag.garment.Cloth;
import org.oaktag.garment.Dimension;
import org.oaktag.garment.EdgeNames;
import org.oaktag.garment.End;
import org.oaktag.garment.Garment;
import org.oaktag.garment.Name;
import org.oaktag.garment.Note;
import org.oaktag.garment.Piece;
import org.oaktag.garment.Seam;
import org.oaktag.garment.SeamSide;
import org.oaktag.geometry.Path;
import org.oaktag.geometry.Point;
import org.oaktag.measure.Length;

/**
 * Cuts the sleeve in two along a style line that is square to both underarm edges, so that it runs on smoothly round
 * the arm: level on a straight sleeve, hanging a little on a tapered one. The upper part keeps the name of the sleeve
 * and ends in the edge {@code bottom}; the lower part begins with the edge {@code top} and carries the hem. Both new
 * edges are one line, so that they are equal by construction, and are notched off the middle, so that they cannot be
 * joined the wrong way round.
 *
 * <pre>{@code
 * Garment coloured = top.adjust(splitSleeve(cm(14), contrast));
 * coloured.piece(SLEEVE_LOWER).cloth().equals(contrast);   // = true
 * }</pre>
 *
 * @param aboveHem how far above the hem the line lies
 * @param below the cloth of the lower part
 */
record SplitSleeve(Length aboveHem, Cloth below) implements Step {

    private static final double LEAST_PART = 20;

    /** Refuses null. */
    public SplitSleeve {
        Objects.requireNonNull(aboveHem, "aboveHem");
        Objects.requireNonNull(below, "below");
    }

    @Override
    public String name() {
        return "split the sleeve";
    }

    @Override
    public List<Amount> amounts() {
        return List.of(Amount.of("above the hem", aboveHem), Amount.of("below in", below.description()));
    }

    @Override
    public Reshaped reshape(Garment garment) {
        Piece sleeve = TopPieces.sleeveToHem(garment);
        double level = level(sleeve);
        Path front = sleeve.path(TopEdges.UNDERARM_FRONT);
        Path back = sleeve.path(TopEdges.UNDERARM_BACK);
        LineAcross line = LineAcross.square(
                Place.along(TopEdges.UNDERARM_FRONT, End.START, Length.mm(place(front, level))),
                Place.along(TopEdges.UNDERARM_BACK, End.END, Length.mm(place(back.reversed(), level))));
        Reshaped split = new SplitPiece(
                        TopNames.SLEEVE,
                        line,
                        Part.of(TopNames.SLEEVE_LOWER, EdgeNames.TOP).in(below),
                        Part.of(TopNames.SLEEVE, EdgeNames.BOTTOM),
                        TopNames.SLEEVE_STYLE_SEAM)
                .reshape(garment);
        Piece lower = split.garment().piece(TopNames.SLEEVE_LOWER);
        Point frontPoint = lower.corner(EdgeNames.TOP, End.END);
        Note rule = Note.rule(
                "a line " + aboveHem.text() + " above the hem, square to the underarm edges: both new edges are "
                        + lower.edge(EdgeNames.TOP).length().text() + " long");
        Dimension dimension = new Dimension(
                TopNames.SLEEVE_LOWER, frontPoint, Point.of(frontPoint.x(), level + aboveHem.mm()), aboveHem.text());
        return new Reshaped(withTwoUnderarmSeams(split.garment()), List.of(rule), List.of(dimension));
    }

    private double level(Piece sleeve) {
        double hem = sleeve.path(EdgeNames.HEM).start().y();
        double underarm = sleeve.corner(TopEdges.CAP_FRONT, End.END).y();
        double most = hem - underarm - LEAST_PART;
        if (aboveHem.mm() < LEAST_PART || aboveHem.mm() > most) {
            throw PatternException.of(
                    "style line of the sleeve",
                    "must lie " + Length.mm(LEAST_PART).text() + " to "
                            + Length.mm(most).roundedDown().text() + " above the hem, below the underarm points",
                    aboveHem.text(),
                    "");
        }
        return hem - aboveHem.mm();
    }

    private static double place(Path downwards, double level) {
        return SleeveEnd.placeAt(downwards, level)
                .orElseThrow(() -> PatternException.of(
                        "style line of the sleeve",
                        "must cross both underarm edges",
                        "a line at a level of " + Length.mm(level).text(),
                        "straighten the sleeve first"));
    }

    /** Each part is closed by a seam of its own, so that either can be sewn, or given a cuff, first. */
    private static Garment withTwoUnderarmSeams(Garment garment) {
        List<Seam> seams = new ArrayList<>();
        for (Seam seam : garment.seams()) {
            if (seam.name().equals(TopNames.SLEEVE_SEAM)) {
                seams.add(underarm(TopNames.SLEEVE_SEAM, TopNames.SLEEVE, seam));
                seams.add(underarm(TopNames.SLEEVE_LOWER_SEAM, TopNames.SLEEVE_LOWER, seam));
                seams.add(garment.seam(TopNames.SLEEVE_STYLE_SEAM));
            } else if (!seam.name().equals(TopNames.SLEEVE_STYLE_SEAM)) {
                seams.add(seam);
            }
        }
        return garment.withSeams(seams);
    }

    private static Seam underarm(Name name, Name part, Seam whole) {
        return Seam.of(
                        name,
                        SeamSide.along(part, TopEdges.UNDERARM_FRONT),
                        SeamSide.against(part, TopEdges.UNDERARM_BACK),
                        whole.rule(),
                        whole.refit())
                .smooth();
    }
}
