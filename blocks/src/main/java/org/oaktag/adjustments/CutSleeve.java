package org.oaktag.adjustments;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.OptionalDouble;
import org.oaktag.PatternException;
import org.oaktag.adjust.LineAcross;
import org.oaktag.adjust.Part;
import org.oaktag.adjust.Place;
import org.oaktag.adjust.Range;
import org.oaktag.adjust.Reshaped;
import org.oaktag.adjust.SplitPiece;
import org.oaktag.adjust.Step;
import org.oaktag.blocks.SleeveEnd;
import org.oaktag.blocks.TopEdges;
import org.oaktag.blocks.TopNames;
import org.oaktag.blocks.TopPieces;
import org.oaktag.draft.RootFinder;
import org.oaktag.garment.Amount;
import org.oaktag.garment.Dimension;
import org.oaktag.garment.Edge;
import org.oaktag.garment.EdgeFinish;
import org.oaktag.garment.EdgeNames;
import org.oaktag.garment.End;
import org.oaktag.garment.Garment;
import org.oaktag.garment.Name;
import org.oaktag.garment.Note;
import org.oaktag.garment.Piece;
import org.oaktag.geometry.Path;
import org.oaktag.geometry.Point;
import org.oaktag.measure.Length;

/**
 * Cuts the sleeve off: to a share of its length from the top of the cap, but below the underarm, and so much more. The
 * new hem is square to both underarm edges, so that it runs on smoothly round the arm, and lies at that length over the
 * middle of the sleeve.
 *
 * <pre>{@code
 * Garment elbow = block.adjust(cutSleeve(cm(30)));
 * Garment tee = block.adjust(shortSleeve());
 * }</pre>
 *
 * @param share the share of the sleeve's length that is left, 0 to 1
 * @param further how much more is left
 */
record CutSleeve(double share, Length further) implements Step {

    private static final double LEAST_UNDERARM = 20;
    private static final Name CUT_OFF = Name.of("cut off");

    /**
     * Checks the share.
     *
     * @throws PatternException if it is not 0 to 1
     */
    public CutSleeve {
        Objects.requireNonNull(further, "further");
        if (!(share >= 0 && share <= 1)) {
            throw PatternException.of("length of a cut sleeve", "its share must be 0 to 1", "" + share, "");
        }
    }

    @Override
    public String name() {
        return "cut the sleeve short";
    }

    @Override
    public List<Amount> amounts() {
        List<Amount> amounts = new ArrayList<>();
        if (share > 0) {
            amounts.add(Amount.of("of its length", String.format(Locale.ROOT, "%.1f %%", share * 100)));
        }
        if (share == 0 || further.mm() != 0) {
            amounts.add(Amount.of("length", further));
        }
        return amounts;
    }

    /**
     * {@inheritDoc}
     *
     * @throws PatternException if the sleeve is split or cuffed already, or the length does not end between the
     *     underarm points and the hem
     */
    @Override
    public Reshaped reshape(Garment garment) {
        Piece sleeve = TopPieces.uncuffedSleeve(garment);
        Length whole = garment.finished(TopNames.SLEEVE_LENGTH);
        Length asked = whole.times(share).plus(further);
        double top = sleeve.path(TopEdges.CAP_FRONT).start().y();
        double underarm = sleeve.path(TopEdges.CAP_FRONT).end().y();
        Length least = Length.mm(underarm - top + LEAST_UNDERARM);
        boolean isLeast = share > 0 && further.equals(Length.ZERO) && asked.compareTo(least) < 0;
        Length left = isLeast ? least : asked;
        Range.check("length of a cut sleeve", "between its underarm points and its hem it can be", left, least, whole);
        if (left.equals(whole)) {
            return Reshaped.of(garment);
        }
        Piece cut = cut(sleeve, top + left.mm());
        Garment shorter = garment.withPiece(cut);
        Note rule = Note.rule("the sleeve is cut to " + left.text() + " of " + whole.text()
                + (isLeast ? ", as its share of " + asked.text() + " would end above the underarm" : "") + "; its hem, "
                + cut.edge(EdgeNames.HEM).length().text() + " round, is square to the underarm edges");
        Point middle = sleeve.path(TopEdges.CAP_FRONT).start();
        return new Reshaped(
                shorter,
                List.of(rule),
                List.of(new Dimension(
                        TopNames.SLEEVE, middle, Point.of(middle.x(), middle.y() + left.mm()), left.text())));
    }

    /** The line hangs lower at its middle than at its ends; its lowest point is solved to lie at the level. */
    private static Piece cut(Piece sleeve, double level) {
        double underarm = sleeve.path(TopEdges.UNDERARM_FRONT).start().y();
        OptionalDouble ends = RootFinder.solve(
                tried -> line(sleeve, tried).on(sleeve).path().bounds().maxY() - level, underarm, level);
        LineAcross line = line(
                sleeve,
                ends.orElseThrow(() -> PatternException.of(
                        "hem of a cut sleeve",
                        "must lie below the underarm points",
                        Length.mm(level - underarm).text(),
                        "leave more of the sleeve")));
        Part off = Part.of(CUT_OFF, EdgeNames.TOP);
        Part kept = Part.of(TopNames.SLEEVE, EdgeNames.BOTTOM);
        Piece upper = new SplitPiece(TopNames.SLEEVE, line, off, kept, CUT_OFF)
                .split(sleeve)
                .right();
        return upper.withEdges(upper.edges().stream()
                .map(edge -> edge.name().equals(EdgeNames.BOTTOM)
                        ? new Edge(EdgeNames.HEM, edge.path(), EdgeFinish.TURNED_BACK)
                        : edge)
                .toList());
    }

    private static LineAcross line(Piece sleeve, double level) {
        return LineAcross.square(
                Place.along(TopEdges.UNDERARM_FRONT, End.START, place(sleeve.path(TopEdges.UNDERARM_FRONT), level)),
                Place.along(
                        TopEdges.UNDERARM_BACK,
                        End.END,
                        place(sleeve.path(TopEdges.UNDERARM_BACK).reversed(), level)));
    }

    private static Length place(Path downwards, double level) {
        return Length.mm(SleeveEnd.placeAt(downwards, level).orElse(downwards.length()));
    }
}
