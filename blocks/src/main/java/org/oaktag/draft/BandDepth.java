package org.oaktag.draft;

import org.oaktag.garment.EdgeNames;
import org.oaktag.garment.InnerLine;
import org.oaktag.garment.Name;
import org.oaktag.garment.Piece;

/**
 * How deep a band is where it is worn.
 *
 * <pre>{@code
 * Piece band = block.adjust(hemBand(mm(60), mm(0))).piece(TopNames.HEM_BAND_FRONT);
 * Length.mm(BandDepth.folded(band, BandNames.FOLD)).text();   // = 60.0 mm
 * }</pre>
 */
public final class BandDepth {

    private BandDepth() {}

    /**
     * Returns how deep a band is once it is folded along the line of that name, or as it is drawn where it has none, mm.
     *
     * @param band a piece with the edges {@link EdgeNames#TOP} and {@link EdgeNames#BOTTOM}
     * @throws org.oaktag.PatternException if it lacks one
     */
    public static double folded(Piece band, Name fold) {
        return band.lines().stream()
                .filter(line -> line.name().equals(fold) && line.use() == InnerLine.Use.FOLD)
                .map(InnerLine::path)
                .findFirst()
                .orElseGet(() -> band.path(EdgeNames.BOTTOM))
                .nearest(band.path(EdgeNames.TOP).start())
                .distance();
    }
}
