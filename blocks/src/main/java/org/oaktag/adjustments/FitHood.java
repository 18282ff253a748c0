package org.oaktag.adjustments;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import org.oaktag.PatternException;
import org.oaktag.adjust.Reshaped;
import org.oaktag.adjust.Step;
import org.oaktag.blocks.HoodNames;
import org.oaktag.blocks.HoodPanel;
import org.oaktag.blocks.HoodShape;
import org.oaktag.blocks.TopNames;
import org.oaktag.body.BodyMeasure;
import org.oaktag.garment.Amount;
import org.oaktag.garment.Cloth;
import org.oaktag.garment.Garment;
import org.oaktag.garment.Name;
import org.oaktag.garment.Note;
import org.oaktag.measure.Length;

/**
 * Fits a hood to the neckline, that of a raglan too, in the cloth of the front. A hood that is there already, and its
 * lining, is taken off first.
 *
 * <pre>{@code
 * Garment hooded = top.adjust(hood(HoodShape.threePanel()).lapped(cm(5)));
 * }</pre>
 *
 * <p>The neck edge of a side panel, and of half the strip where there is one, is half the neckline and half the lap.
 * The strip is as long as the crown of the side panel. Immutable.
 *
 * @param shape what the hood looks like
 * @param lap by how much its two fronts lap over each other at centre front; 0 for edge to edge
 * @param drawstring whether it gets eyelets for a cord
 */
public record FitHood(HoodShape shape, Length lap, boolean drawstring) implements Step {

    private static final Set<Name> HOOD = Set.of(
            TopNames.HOOD_SIDE,
            TopNames.HOOD_CENTRE,
            TopNames.HOOD_SIDE_LINING,
            TopNames.HOOD_CENTRE_LINING,
            HoodNames.EYELET_PATCH);

    /**
     * Checks the lap.
     *
     * @throws PatternException if the lap is negative
     */
    public FitHood {
        Objects.requireNonNull(shape, "shape");
        if (lap.mm() < 0) {
            throw PatternException.of("lap of the hood", "must be 0 mm or more", lap.text(), "");
        }
    }

    /**
     * Returns the step with fronts that lap over each other.
     *
     * @throws PatternException if the lap is negative
     */
    public FitHood lapped(Length by) {
        return new FitHood(shape, by, drawstring);
    }

    /** Returns the step with eyelets for a cord, which is refused for a child. */
    public FitHood withDrawstring() {
        return new FitHood(shape, lap, true);
    }

    @Override
    public String name() {
        return "fit a hood";
    }

    @Override
    public List<Amount> amounts() {
        List<Amount> amounts = new ArrayList<>();
        amounts.add(shape.hasStrip() ? Amount.of("strip", shape.stripWidth()) : Amount.of("panels", "two"));
        shape.height().ifPresent(height -> amounts.add(Amount.of("height", height)));
        shape.depth().ifPresent(depth -> amounts.add(Amount.of("depth", depth)));
        amounts.add(Amount.of("rise", shape.rise()));
        amounts.add(Amount.of("lap", lap));
        if (drawstring) {
            amounts.add(Amount.of("drawstring", "with eyelets"));
        }
        return amounts;
    }

    /**
     * {@inheritDoc}
     *
     * @throws PatternException if the lap reaches the shoulder, no well-formed panel fits the neckline, or a child's
     *     hood shall have a drawstring
     */
    @Override
    public Reshaped reshape(Garment garment) {
        if (drawstring) {
            DrawstringRule.check(garment.wearer());
        }
        NeckOpening opening = NeckOpening.of(garment);
        Length front = opening.toShoulder();
        if (lap.compareTo(front) > 0) {
            throw PatternException.of(
                    "lap of the hood",
                    "must be 0 mm to " + front.roundedDown().text()
                            + ", the neckline from centre front to the shoulder",
                    lap.text(),
                    "");
        }
        Length head = garment.wearer().measure(BodyMeasure.HEAD_GIRTH.asName());
        HoodPanel panel = HoodPanel.draw(shape, head, Length.mm(opening.half()), opening.fromShoulder(), lap);
        Cloth cloth = garment.piece(TopNames.FRONT).cloth();
        HoodPieces hood = new HoodPieces(panel, opening, shape, lap, drawstring, cloth);
        boolean again = garment.hasPiece(TopNames.HOOD_SIDE);
        Assembly assembly = Assembly.of(garment).takeOff(HOOD).put(hood.side());
        hood.centre().ifPresent(assembly::put);
        assembly.sew(hood.neckSeam()).sew(hood.crownSeam());
        hood.eyeletPatch().ifPresent(assembly::put);
        hood.measures().forEach(assembly::measure);
        return new Reshaped(assembly.done(), notes(panel, garment, again), hood.dimensions());
    }

    private List<Note> notes(HoodPanel panel, Garment garment, boolean again) {
        List<Note> notes = new ArrayList<>();
        if (again) {
            notes.add(
                    Note.done("the earlier hood was taken off, and its lining if it had one: line the new one again"));
        }
        panel.rules().forEach(rule -> notes.add(Note.rule(rule)));
        notes.add(Note.rule((shape.hasStrip()
                        ? "the strip over the middle is as long as the crown of a side panel, "
                        : "the crowns of both panels are sewn to each other, ")
                + Length.mm(panel.crown().length()).text()));
        if (drawstring) {
            notes.add(Note.rule(
                    "a patch is laid behind each eyelet before it is set; cut it without allowance where it is"
                            + " fused"));
            notes.add(DrawstringRule.cordCaution());
        }
        if (garment.wearer().child()) {
            notes.add(DrawstringRule.childCaution());
        }
        return notes;
    }
}
