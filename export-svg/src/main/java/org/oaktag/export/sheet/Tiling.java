package org.oaktag.export.sheet;

import static org.oaktag.measure.Length.mm;

import java.util.Objects;
import org.oaktag.PatternException;
import org.oaktag.measure.Length;

/**
 * How a pattern is parted over sheets of paper that are joined again on the table. Immutable.
 *
 * <pre>{@code
 * Tiling.on(Paper.A4);                              // margins of 10 mm, sheets overlap by 10 mm
 * Tiling.on(Paper.LETTER).withMargin(mm(12)).butted();
 * }</pre>
 *
 * @param paper the paper of every sheet
 * @param margin what the printer leaves white on every side
 * @param overlap how much of a sheet its neighbour shows as well; zero where they are laid edge to edge
 */
public record Tiling(Paper paper, Length margin, Length overlap) {

    /** Common practice: printers leave 5 to 10 mm unprinted. */
    private static final Length USUAL_MARGIN = mm(10);

    private static final Length USUAL_OVERLAP = mm(10);

    /** The first sheet carries a square of 100 mm and, beside it, a column of text. */
    private static final Length LEAST_WIDTH = mm(180);

    private static final Length LEAST_HEIGHT = mm(180);

    /**
     * Checks that the parts fit each other.
     *
     * @throws PatternException if the paper is a roll, a length is negative, the printed part of a sheet is smaller
     *     than 180 mm by 180 mm, or the overlap takes more than half of its shorter side
     */
    public Tiling {
        Objects.requireNonNull(paper, "paper");
        Objects.requireNonNull(margin, "margin");
        Objects.requireNonNull(overlap, "overlap");
        if (paper.height().isEmpty()) {
            throw PatternException.of(
                    "paper", "must come in sheets", "a " + paper.name(), "print whole pieces on a roll");
        }
        Length width = paper.width().minus(margin.times(2));
        Length height = paper.height().get().minus(margin.times(2));
        if (margin.mm() < 0 || width.compareTo(LEAST_WIDTH) < 0 || height.compareTo(LEAST_HEIGHT) < 0) {
            throw PatternException.of(
                    "margin of " + paper.name(),
                    "must be 0 mm or more and leave a printed part of " + LEAST_WIDTH.text() + " by "
                            + LEAST_HEIGHT.text() + " at the least",
                    margin.text(),
                    "choose a narrower margin or a larger paper");
        }
        Length most = mm(Math.min(width.mm(), height.mm()) / 2);
        if (overlap.mm() < 0 || overlap.compareTo(most) > 0) {
            throw PatternException.of(
                    "overlap of sheets", "must lie within 0 mm and " + most.text(), overlap.text(), "");
        }
    }

    /**
     * Returns the usual tiling: margins of 10 mm, sheets overlapping by 10 mm.
     *
     * @throws PatternException if the paper is a roll or too small
     */
    public static Tiling on(Paper paper) {
        return new Tiling(paper, USUAL_MARGIN, USUAL_OVERLAP);
    }

    /** Returns this tiling with another margin. */
    public Tiling withMargin(Length other) {
        return new Tiling(paper, other, overlap);
    }

    /** Returns this tiling with sheets that overlap by so much. */
    public Tiling overlapped(Length other) {
        return new Tiling(paper, margin, other);
    }

    /** Returns this tiling with sheets that are laid edge to edge. */
    public Tiling butted() {
        return overlapped(Length.ZERO);
    }
}
