package org.oaktag.sewing;

import java.util.List;
import java.util.stream.Collectors;
import org.oaktag.garment.EdgeRef;
import org.oaktag.garment.Name;
import org.oaktag.garment.SeamRule;
import org.oaktag.garment.SeamSide;

/**
 * One thing to be sewn: a seam, a piece laid on to another, or an edge that is turned back. Immutable.
 *
 * <pre>{@code
 * for (Operation operation : AssemblyOrder.of(hooded).operations()) {
 *     String line = operation.number() + ". " + operation.stitchText();
 * }
 * }</pre>
 *
 * @param number its place in the order, counted from 1
 * @param name the name of the seam, of the piece that is laid on, or of the piece and its edge that is turned back
 * @param work what is sewn
 * @param inTheRound whether it closes on itself when it is sewn
 * @param stitches the stitches suggested for the cloth, the one that holds first
 * @param seamClass the class of the seam
 * @param notches the notches that meet, in the order in which they come up, or the marks that say where a piece is laid
 *     on
 */
public record Operation(
        int number,
        Name name,
        Work work,
        boolean inTheRound,
        List<Stitch> stitches,
        SeamClass seamClass,
        List<Name> notches) {

    /** What is sewn. */
    public sealed interface Work {}

    /**
     * Two sides joined.
     *
     * @param a the side that stays as it is
     * @param b the side that is made to fit it
     * @param rule how b fits a
     */
    public record Join(SeamSide a, SeamSide b, SeamRule rule) implements Work {}

    /**
     * A piece stitched on to another one along its place there, but for its openings.
     *
     * @param piece what is laid on
     * @param shell on which piece
     */
    public record LayOn(Name piece, Name shell) implements Work {}

    /**
     * A free edge turned back: a hem, or the opening of a pouch or a pocket.
     *
     * @param edge the edge
     */
    public record Hem(EdgeRef edge) implements Work {}

    /** Copies the lists. */
    public Operation {
        stitches = List.copyOf(stitches);
        notches = List.copyOf(notches);
    }

    /** Returns the numbers of the stitches, {@code "301 + 504"}. */
    public String stitchText() {
        return stitches.stream().map(Stitch::number).collect(Collectors.joining(" + "));
    }
}
