package org.oaktag.laws.adjustments;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.oaktag.blocks.TopNames;
import org.oaktag.garment.Change;
import org.oaktag.garment.End;
import org.oaktag.garment.Garment;
import org.oaktag.garment.Piece;
import org.oaktag.garment.Seam;
import org.oaktag.garment.WalkedSeam;

/** Says of a garment that it can be cut, and that whatever cannot be sewn any more is named with what mends it. */
final class Sound {

    private Sound() {}

    static void assertSound(Garment garment) {
        for (Piece piece : garment.pieces()) {
            assertThat(piece.outline().selfCrossings())
                    .as("crossings of the %s, %s", piece.name(), steps(garment))
                    .isEmpty();
            assertThat(piece.outline().isClockwise())
                    .as("%s, %s", piece.name(), steps(garment))
                    .isTrue();
        }
        List<Change> history = garment.history();
        List<String> named = history.get(history.size() - 1).untrue();
        List<WalkedSeam> untrue = garment.walkSeams().untrue();
        assertThat(named).hasSameSizeAs(untrue);
        for (WalkedSeam seam : untrue) {
            assertThat(named)
                    .as(steps(garment))
                    .anyMatch(text -> text.startsWith(seam.seam().name() + ": ")
                            && text.contains(seam.seam().refit()));
        }
    }

    /** Shoulder and side seam are of one length on front and back, and the outlines run on smoothly across them. */
    static void assertBodySewsTrue(Garment garment) {
        for (Seam seam : List.of(garment.seam(TopNames.SHOULDER_SEAM), garment.seam(TopNames.SIDE_SEAM))) {
            WalkedSeam walked = WalkedSeam.of(garment, seam);
            assertThat(walked.error().mm())
                    .as("%s, %s", seam.name(), steps(garment))
                    .isCloseTo(0, within(1e-6));
            for (End end : seam.smoothAt()) {
                assertThat(walked.angleAt(end).degrees())
                        .as("%s of the %s seam, %s", end, seam.name(), steps(garment))
                        .isCloseTo(180, within(1e-5));
            }
        }
    }

    private static String steps(Garment garment) {
        return garment.history().stream().map(Change::title).toList().toString();
    }
}
