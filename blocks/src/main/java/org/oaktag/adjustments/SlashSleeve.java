package org.oaktag.adjustments;

import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import org.oaktag.PatternException;
import org.oaktag.adjust.Closing;
import org.oaktag.adjust.LineAcross;
import org.oaktag.adjust.Place;
import org.oaktag.adjust.Range;
import org.oaktag.adjust.Reshaped;
import org.oaktag.adjust.Slash;
import org.oaktag.adjust.SlashAndSpread;
import org.oaktag.adjust.Spread;
import org.oaktag.adjust.Step;
import org.oaktag.blocks.TopEdges;
import org.oaktag.blocks.TopNames;
import org.oaktag.blocks.TopPieces;
import org.oaktag.draft.RootFinder;
import org.oaktag.garment.Amount;
import org.oaktag.garment.EdgeNames;
import org.oaktag.garment.End;
import org.oaktag.garment.Garment;
import org.oaktag.garment.Name;
import org.oaktag.garment.Notch;
import org.oaktag.garment.Note;
import org.oaktag.garment.Piece;
import org.oaktag.geometry.Cubic;
import org.oaktag.geometry.Fit;
import org.oaktag.geometry.Path;
import org.oaktag.geometry.Point;
import org.oaktag.geometry.Transform;
import org.oaktag.geometry.Vector;
import org.oaktag.measure.Length;

/**
 * Slashes the sleeve from cap to hem and spreads it, parallel or hinged at one end. What the cap gains is said, and its
 * seams are left for a plain cap to be fitted or a puff to be gathered; hinged at the cap, the cap keeps its length.
 * The sleeve is turned so that both underarm edges hang alike.
 *
 * <pre>{@code
 * Garment full = block.adjust(spreadSleeve(mm(30)));            // over its whole length
 * Garment fullBelow = block.adjust(spreadSleeveAtHem(mm(40)));  // hinged at the cap
 * }</pre>
 *
 * @param by how far the slash is opened, at the end that is not the hinge
 * @param hinge which end stays closed
 * @param onCap where the slash begins
 * @param onHem where it ends, or empty for straight down
 */
public record SlashSleeve(Length by, Hinge hinge, Place onCap, Optional<Place> onHem) implements Step {

    /** Which end of the slash stays closed. */
    public enum Hinge {
        /** Neither: both sides stay parallel. */
        NONE("parallel"),
        /** The end on the hem: the cap opens. */
        HEM("hinged at the hem"),
        /** The end on the cap: the hem opens. */
        CAP("hinged at the cap");

        private final String text;

        Hinge(String text) {
            this.text = text;
        }
    }

    /** How much of the cap on either side of a gap at its top is drawn anew, in millimetres. */
    private static final double REACH = 15;

    private static final double MOST = 400;
    private static final Place TOP = Place.corner(TopEdges.CAP_FRONT, End.START);

    /**
     * Checks the amount.
     *
     * @throws PatternException if it is not 0 to 400 mm
     */
    public SlashSleeve {
        Objects.requireNonNull(hinge, "hinge");
        Objects.requireNonNull(onCap, "onCap");
        Objects.requireNonNull(onHem, "onHem");
        Range.check("slash of the sleeve", "it can be opened by", by, Length.mm(0), Length.mm(MOST));
    }

    static SlashSleeve atTheMiddle(Length by, Hinge hinge) {
        return new SlashSleeve(by, hinge, TOP, Optional.empty());
    }

    /** Returns the step that slashes from another place on the cap to another on the hem. */
    public SlashSleeve along(Place fromCap, Place toHem) {
        return new SlashSleeve(by, hinge, fromCap, Optional.of(toHem));
    }

    @Override
    public String name() {
        return "slash and spread the sleeve";
    }

    @Override
    public List<Amount> amounts() {
        return List.of(
                Amount.of("opened", by.text() + ", " + hinge.text),
                Amount.of("from", onCap.text()),
                Amount.of("to", onHem.map(Place::text).orElse("straight below")));
    }

    /**
     * {@inheritDoc}
     *
     * @throws PatternException if the sleeve is split already, a place lies off its edge, or the sleeve would overlap
     *     itself
     */
    @Override
    public Reshaped reshape(Garment garment) {
        Piece sleeve = TopPieces.sleeveToHem(garment);
        if (by.mm() == 0) {
            return Reshaped.of(garment);
        }
        Place end = onHem.orElseGet(() -> below(sleeve));
        Spread spread =
                hinge == Hinge.NONE ? Spread.parallel(by) : Spread.opened(hinge == Hinge.CAP ? End.START : End.END, by);
        Reshaped slashed = new SlashAndSpread(
                        TopNames.SLEEVE, List.of(Slash.of(LineAcross.straight(onCap, end), spread)), Closing.smooth())
                .reshape(garment);
        Piece opened = slashed.garment().piece(TopNames.SLEEVE);
        if (onCap.equals(TOP) && hinge != Hinge.CAP) {
            opened = withTopShared(opened);
        }
        if (hinge != Hinge.NONE) {
            opened = opened.redrawn(Map.of(EdgeNames.HEM, squareHem(opened)));
        }
        Piece hanging = hanging(sleeve, opened);
        Note rule = Note.rule("opened by " + by.text() + ", " + hinge.text + ": the cap gains "
                + Length.mm(cap(hanging) - cap(sleeve)).text() + ", the hem "
                + hanging.edge(EdgeNames.HEM)
                        .length()
                        .minus(sleeve.edge(EdgeNames.HEM).length())
                        .text()
                + "; the slash was "
                + Length.mm(onCap.on(sleeve).distanceTo(end.on(sleeve))).text() + " long");
        return Reshaped.of(slashed.garment().withPiece(hanging), rule);
    }

    private Place below(Piece sleeve) {
        Path hem = sleeve.path(EdgeNames.HEM);
        double x = onCap.on(sleeve).x();
        OptionalDouble along = RootFinder.solve(tried -> hem.pointAt(tried).x() - x, 0, hem.length());
        return Place.along(
                EdgeNames.HEM,
                End.START,
                Length.mm(along.orElseThrow(() -> PatternException.of(
                        "slash of the sleeve",
                        "must meet the hem straight below",
                        onCap.text(),
                        "say where it ends"))));
    }

    /** The gap at the top goes half to either half of the cap, and is drawn smoothly into both. */
    private Piece withTopShared(Piece opened) {
        Path back = opened.path(TopEdges.CAP_BACK);
        Path front = opened.path(TopEdges.CAP_FRONT);
        Path keptBack = back.sub(0, back.length() - REACH);
        Path keptFront = front.sub(by.mm() + REACH, front.length());
        Cubic crown = Fit.blend(keptBack, keptFront);
        Path.Split halves = Path.of(crown).splitAt(crown.length() / 2);
        return opened.redrawn(Map.of(
                        TopEdges.CAP_BACK, keptBack.then(halves.before()),
                        TopEdges.CAP_FRONT, halves.after().then(keptFront)))
                .withNotch(Notch.single(TopNames.SHOULDER_NOTCH, TopEdges.CAP_FRONT, End.START, 0));
    }

    /** Halves that were turned meet in a corner; the hem is drawn in one curve, square to both underarm edges. */
    private static Path squareHem(Piece opened) {
        return LineAcross.square(
                        Place.corner(TopEdges.UNDERARM_FRONT, End.END), Place.corner(TopEdges.UNDERARM_BACK, End.START))
                .on(opened)
                .path();
    }

    /** Turns the sleeve so that one underarm edge leans as much to the left as the other to the right. */
    private static Piece hanging(Piece before, Piece after) {
        double turned =
                (turned(before, after, TopEdges.UNDERARM_FRONT) + turned(before, after, TopEdges.UNDERARM_BACK)) / 2;
        Point top = after.path(TopEdges.CAP_FRONT).start();
        Point wanted = before.path(TopEdges.CAP_FRONT).start();
        Transform hang = Transform.rotation(-turned, top).then(Transform.translation(wanted.minus(top)));
        return after.transformed(hang).withGrainline(before.grainline());
    }

    private static double turned(Piece before, Piece after, Name edge) {
        Vector was = before.path(edge).end().minus(before.path(edge).start());
        Vector is = after.path(edge).end().minus(after.path(edge).start());
        return Math.atan2(was.cross(is), was.dot(is));
    }

    private static double cap(Piece sleeve) {
        return sleeve.path(TopEdges.CAP_FRONT).length()
                + sleeve.path(TopEdges.CAP_BACK).length();
    }
}
