package org.oaktag.block;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.oaktag.PatternException;
import org.oaktag.garment.Name;
import org.oaktag.garment.Spelling;

/**
 * The blocks that are known by name: for a menu, and to draft again what was written down.
 *
 * <pre>{@code
 * BlockCatalogue blocks = KnownBlocks.catalogue();
 * blocks.block("knit top").equals(KnitTop.BLOCK);   // = true
 * }</pre>
 *
 * <p>It is open: {@link #with} adds blocks of the maker's own. Immutable.
 *
 * @param blocks the blocks, each of a name of its own
 */
public record BlockCatalogue(List<Block> blocks) {

    /**
     * Copies the list.
     *
     * @throws PatternException if two blocks have one name
     */
    public BlockCatalogue {
        blocks = List.copyOf(blocks);
        Set<Name> names = new HashSet<>();
        for (Block block : blocks) {
            if (!names.add(block.name())) {
                throw PatternException.of(
                        "block",
                        "must have a name of its own",
                        "'" + block.name() + "' twice",
                        "give one another name");
            }
        }
    }

    /**
     * Returns a catalogue of these blocks.
     *
     * @throws PatternException if two have one name
     */
    public static BlockCatalogue of(Block... blocks) {
        return new BlockCatalogue(List.of(blocks));
    }

    /**
     * Returns the catalogue with one more block.
     *
     * @throws PatternException if there is one of its name
     */
    public BlockCatalogue with(Block block) {
        List<Block> all = new ArrayList<>(blocks);
        all.add(block);
        return new BlockCatalogue(all);
    }

    /** Returns the names of the blocks, in their order. */
    public List<String> names() {
        return blocks.stream().map(block -> block.name().value()).toList();
    }

    /**
     * Returns the block of that name.
     *
     * @throws PatternException if there is none; the message names the nearest and lists all
     */
    public Block block(String name) {
        return blocks.stream()
                .filter(block -> block.name().value().equals(name))
                .findFirst()
                .orElseThrow(() -> Spelling.unknown("block", name, names()));
    }
}
