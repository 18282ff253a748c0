package org.oaktag.catalogue;

import org.oaktag.block.BlockCatalogue;
import org.oaktag.blocks.KnitTop;
import org.oaktag.skirt.SkirtLength;
import org.oaktag.skirt.StraightSkirt;

/**
 * The blocks of the library.
 *
 * <pre>{@code
 * KnownBlocks.catalogue().names();   // = [knit top, straight skirt, straight midi skirt, straight maxi skirt]
 * }</pre>
 */
public final class KnownBlocks {

    private static final BlockCatalogue CATALOGUE = BlockCatalogue.of(
            KnitTop.BLOCK,
            StraightSkirt.BLOCK,
            new StraightSkirt(SkirtLength.MIDI),
            new StraightSkirt(SkirtLength.MAXI));

    private KnownBlocks() {}

    /** Returns the catalogue of all of them; {@link BlockCatalogue#with} adds your own. */
    public static BlockCatalogue catalogue() {
        return CATALOGUE;
    }
}
