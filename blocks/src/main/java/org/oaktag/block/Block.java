package org.oaktag.block;

import java.util.List;
import java.util.Set;
import org.oaktag.PatternException;
import org.oaktag.body.BodyMeasure;
import org.oaktag.body.BodyMeasurements;
import org.oaktag.body.Ease;
import org.oaktag.garment.Allowances;
import org.oaktag.garment.Cloth;
import org.oaktag.garment.Garment;
import org.oaktag.garment.Name;
import org.oaktag.measure.Length;

/**
 * A basic block: how a garment of one family is drafted from the measures of a body. Immutable, and equal to another
 * that drafts the same, so that styles can be compared; a record is both.
 *
 * <pre>{@code
 * Block top = KnitTop.BLOCK;
 * top.name();                                                  // = knit top
 * Garment block = top.draft(juno, TopEase.standard(), shell);
 * }</pre>
 *
 * <p>The library's own blocks are nothing more than this, and a block of your own is nothing less: put into a {@link
 * BlockCatalogue} it is written down, read again and drafted for many bodies as they are.
 */
public interface Block {

    /** Returns what the block is called, by which a style that is written down names it: {@code "knit top"}. */
    Name name();

    /**
     * Returns the measures that must be taken. Whatever else the draft asks for is derived from these where nobody took
     * it, as far as the body is grown.
     */
    Set<BodyMeasure> needs();

    /**
     * Drafts the block.
     *
     * @param ease how much larger it is than the body
     * @return the block, the draft in its history
     * @throws PatternException if the ease cannot be worn in that cloth, or the measures allow no block
     */
    Garment draft(BodyMeasurements body, Ease ease, Cloth cloth);

    /**
     * Returns how much larger than the body a garment of it is that is neither close nor loose; none, unless it says.
     */
    default Ease standardEase() {
        return Ease.none();
    }

    /**
     * Returns the finished measures that a table of sizes shows, in their order; what a garment of it lacks is left
     * out. None, unless it says, and then all are shown.
     */
    default List<Name> tabled() {
        return List.of();
    }

    /**
     * Returns the allowances that are usual on a garment made of it: 10 mm on seams and 25 mm on what is turned back,
     * unless it says otherwise (common practice).
     */
    default Allowances allowances(Garment garment) {
        return Allowances.of("usual", Length.mm(10)).finished(garment, Length.mm(25));
    }

    /**
     * Returns which of the measures that must be taken are not among these, in the order of {@link BodyMeasure}: a form
     * can ask for them all at once, where {@link #draft} names the first.
     */
    default List<BodyMeasure> missing(Set<BodyMeasure> taken) {
        return needs().stream()
                .filter(measure -> !taken.contains(measure))
                .sorted()
                .toList();
    }
}
