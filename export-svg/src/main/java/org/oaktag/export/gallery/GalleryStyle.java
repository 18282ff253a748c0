package org.oaktag.export.gallery;

import java.util.List;
import org.oaktag.block.Style;
import org.oaktag.body.BodyMeasurements;
import org.oaktag.body.SizeRange;

/**
 * A style as a gallery shows it. Immutable.
 *
 * <pre>{@code
 * GalleryStyle shown = GalleryStyle.of(style, juno, "For the unheated dome.");
 * }</pre>
 *
 * @param style the style
 * @param body the body on which it is shown
 * @param note what is said of it; free text
 * @param sizes the bodies whose sizes are listed, the smallest first
 */
public record GalleryStyle(Style style, BodyMeasurements body, String note, List<BodyMeasurements> sizes) {

    /** How many sizes are listed to either side of the one that is shown. */
    private static final int AROUND = 2;

    /** Copies the list. */
    public GalleryStyle {
        sizes = List.copyOf(sizes);
    }

    /**
     * Returns a style with two sizes below its body and two above, by the steps of GB/T 1335.
     *
     * @throws org.oaktag.PatternException if the body is a child's, or a size is no plausible body
     */
    public static GalleryStyle of(Style style, BodyMeasurements body, String note) {
        return new GalleryStyle(style, body, note, SizeRange.GB_T_1335.around(body, AROUND, AROUND));
    }
}
