package org.oaktag.export.svg;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.oaktag.export.svg.drawing.ClothPaint;
import org.oaktag.garment.Cloth;
import org.oaktag.garment.Garment;
import org.oaktag.garment.Name;
import org.oaktag.garment.Piece;

/**
 * Which cloth of a garment is shown by which paint, the same on every sheet of one garment. Immutable.
 *
 * @param paints the paints in the order in which the cloths come up; a seventh cloth begins the paints anew
 */
record Cloths(Map<Cloth, ClothPaint> paints) {

    private static final Map<Name, ClothPaint> WELL_KNOWN = Map.of(
            Cloth.SHELL, ClothPaint.PLAIN,
            Cloth.CONTRAST, ClothPaint.RISING,
            Cloth.RIB, ClothPaint.RIBBED,
            Cloth.LINING, ClothPaint.DOTTED);

    Cloths {
        paints = Collections.unmodifiableMap(new LinkedHashMap<>(paints));
    }

    static Cloths of(Garment garment) {
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

    ClothPaint of(Cloth cloth) {
        ClothPaint paint = paints.get(cloth);
        if (paint == null) {
            throw new IllegalArgumentException("cloth must be one of " + paints.keySet() + ", got " + cloth);
        }
        return paint;
    }

    List<ClothPaint> used() {
        return paints.values().stream().distinct().sorted().toList();
    }
}
