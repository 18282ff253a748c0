package org.oaktag.sewing;

import java.util.List;
import java.util.stream.Collectors;
import org.oaktag.garment.EdgeRef;
import org.oaktag.garment.Name;
import org.oaktag.garment.SeamRule;
import org.oaktag.garment.SeamSide;

/**
 * One thing to be done: a seam, a piece laid on to another, a band folded, or edges that are finished. Immutable.
 *
 * <pre>{@code
 * for (Operation operation : AssemblyOrder.of(hooded).operations()) {
 *     String line = operation.number() + ". " + operation.stitchText();
 * }
 * }</pre>
 *
 * @param number its place in the order, counted from 1
 * @param name the name of the seam, of the piece that is laid on, or of the pieces and their edges that are finished
 * @param work what is sewn
 * @param inTheRound whether it closes on itself when it is sewn
 * @param stitches the stitches suggested for the cloth, the one that holds first; none where nothing is stitched
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
     * Free edges turned back and stitched down in one: a hem, or the opening of a pouch or a pocket.
     *
     * @param edges the edges, those that are stitched in one go over the seams between them
     */
    public record Hem(List<EdgeRef> edges) implements Work {
        /** Copies the list. */
        public Hem {
            edges = List.copyOf(edges);
        }
    }

    /**
     * An interfacing fused to its piece with an iron.
     *
     * @param interfacing the interfacing
     */
    public record Fuse(Name interfacing) implements Work {}

    /**
     * A band folded in half along its length, right side out, and basted along its open edges.
     *
     * @param piece the band
     */
    public record Fold(Name piece) implements Work {}

    /**
     * The end of a band folded in half with the right side in, stitched across and turned.
     *
     * @param edge the end
     */
    public record Close(EdgeRef edge) implements Work {}

    /**
     * Edges kept from fraying by themselves, as the loose edge of a facing is.
     *
     * @param edges the edges
     */
    public record Neaten(List<EdgeRef> edges) implements Work {
        /** Copies the list. */
        public Neaten {
            edges = List.copyOf(edges);
        }
    }

    /**
     * Two rows of long stitches along a side that is to be gathered, inside its allowance.
     *
     * @param side the side
     */
    public record Gather(SeamSide side) implements Work {}

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
