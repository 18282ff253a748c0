package org.oaktag.sewing;

import java.util.List;
import org.oaktag.PatternException;
import org.oaktag.garment.Garment;

/**
 * The seams of a garment in an order in which they can be sewn, each with the stitch suggested for its cloths. Pouches
 * and pockets are laid on first, the hems that are turned up come last. Immutable.
 *
 * <pre>{@code
 * AssemblyOrder.of(hooded).operations().get(0).stitchText();   // = 406
 * }</pre>
 *
 * <p>What must be is derived from the seams: a side made of several edges is whole only after the seams that join them,
 * and a seam that laps over others comes after those. What is chosen is to sew <b>in the round</b>: a seam that closes
 * on itself comes after the seams that close its two edges to rings, so that a sleeve is set into the closed armhole.
 * Beyond that, small parts are finished before they are joined to larger ones.
 *
 * <p>Stitches are those of ISO 4915, seam classes of ISO 4916; which suits which cloth is common practice: a knit is
 * joined by 514 and hemmed by 406, a woven is joined by 301 and its edges kept from fraying by 504; what is laid on is
 * held by 301.
 *
 * @param operations what is sewn, in order
 */
public record AssemblyOrder(List<Operation> operations) {

    /** Copies the list. */
    public AssemblyOrder {
        operations = List.copyOf(operations);
    }

    /**
     * Returns the order for a garment.
     *
     * @throws PatternException if its seams wait for each other, so that no order exists
     */
    public static AssemblyOrder of(Garment garment) {
        return new AssemblyOrder(new Sequence(garment).operations());
    }
}
