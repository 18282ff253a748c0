package org.oaktag.export.sheet;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.oaktag.export.drawing.ClothPaint;
import org.oaktag.garment.Cloth;
import org.oaktag.garment.Garment;
import org.oaktag.garment.Name;
import org.oaktag.garment.Piece;

/**
 * Which cloth of a garment is shown by which paint, the same on every sheet of one garment. Immutable.
 *
 * <pre>{@code
 * Cloths cloths = Cloths.of(hooded);
 * cloths.of(hooded.piece(CUFF).cloth()).colour();   // the same on every sheet of this garment
 * }</pre>
 *
 * @param paints the paints in the order in which the cloths come up; a seventh cloth begins the paints anew
 */
public record Cloths(Map<Cloth, ClothPaint> paints) {

    private static final Map<Name, ClothPaint> WELL_KNOWN = Map.of(
            Cloth.SHELL, ClothPaint.PLAIN,
            Cloth.CONTRAST, ClothPaint.RISING,
            Cloth.RIB, ClothPaint.RIBBED,
            Cloth.LINING, ClothPaint.DOTTED);

    /** Copies the map. */
    public Cloths {
        paints = Collections.unmodifiableMap(new LinkedHashMap<>(paints));
    }

    /** Returns the paint of each cloth: that of its use where it has one and it is free, else the next free one. */
    public static Cloths of(Garment garment) {
        Map<Cloth, ClothPaint> paints = new LinkedHashMap<>();
        for (Piece piece : garment.pieces()) {
            Cloth cloth = piece.cloth();
            if (!paints.containsKey(cloth)) {
                ClothPaint wanted = WELL_KNOWN.get(cloth.use());
                boolean free = wanted != null && !paints.containsValue(wanted);
                paints.put(cloth, free ? wanted : next(paints.values()));
            }
        }
        return new Cloths(paints);
    }

    private static ClothPaint next(Collection<ClothPaint> used) {
        List<ClothPaint> all = new ArrayList<>(List.of(ClothPaint.values()));
        // Those that no well-known cloth claims come first.
        all.sort(Comparator.comparing(WELL_KNOWN::containsValue));
        return all.stream()
                .filter(paint -> !used.contains(paint))
                .findFirst()
                .orElseGet(() -> all.get(used.size() % all.size()));
    }

    /**
     * Returns the paint of a cloth.
     *
     * @throws IllegalArgumentException if it is none of the garment's
     */
    public ClothPaint of(Cloth cloth) {
        ClothPaint paint = paints.get(Objects.requireNonNull(cloth, "cloth"));
        if (paint == null) {
            throw new IllegalArgumentException("cloth must be one of " + paints.keySet() + ", got " + cloth);
        }
        return paint;
    }

    /** Returns the paints that occur, each once, in the order of {@link ClothPaint}. */
    public List<ClothPaint> used() {
        return paints.values().stream().distinct().sorted().toList();
    }
}
