package org.oaktag.blocks;

import org.oaktag.block.BlockCatalogue;

/**
 * The blocks of the library.
 *
 * <pre>{@code
 * KnownBlocks.catalogue().names();   // = [knit top]
 * }</pre>
 */
public final class KnownBlocks {

    private static final BlockCatalogue CATALOGUE = BlockCatalogue.of(KnitTop.BLOCK);

    private KnownBlocks() {}

    /** Returns the catalogue of all of them; {@link BlockCatalogue#with} adds your own. */
    public static BlockCatalogue catalogue() {
        return CATALOGUE;
    }
}
