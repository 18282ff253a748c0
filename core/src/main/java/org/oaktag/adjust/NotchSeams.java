package org.oaktag.adjust;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.oaktag.garment.Amount;
import org.oaktag.garment.Garment;
import org.oaktag.garment.Note;
import org.oaktag.garment.Seam;
import org.oaktag.measure.Length;

/**
 * Sets a notch on both sides of every seam that has none, so placed that it cannot be mistaken for another: an edge of
 * like length that is not sewn to it and has a notch in a like place. Which seams get one does not depend on the size,
 * so that nested sizes carry the same notches; a seam that its own notches do not tell from another is named.
 *
 * <pre>{@code
 * Garment told = top.adjust(notchSeams());   // no two seams can be mistaken for each other
 * }</pre>
 *
 * <p>Edges of one piece that follow one another in a seam are told as one. How many cuts a notch has, and why, is told
 * with {@link org.oaktag.garment.Notch#count}; where that does not tell the edges apart, the notch moves or has three.
 *
 * <p>A notch lies where both sides are sewn together: as far along both of a flat seam, on whichever of several edges
 * that falls; where a seam is lapped, as far from the end that lies at a centre, on the fold of the cloth or at a seam
 * of both hands; at the same share of the part between two notches, or between a notch and an end, over which a seam is
 * eased, gathered or stretched. A seam that has its fullness all along and no notch yet is marked at the quarters of
 * both sides (common practice). None lies within 10 mm of a corner, the allowance of trade patterns, or 15 mm of a
 * hollow one, that of home patterns (common practice). Both edges of a band that is folded along its middle are sewn on
 * together and are notched alike; an interfacing has no seams of its own. A seam on which no notch would do is named.
 *
 * <p>Immutable.
 */
record NotchSeams() implements Step {

    @Override
    public String name() {
        return "notch the seams";
    }

    @Override
    public List<Amount> amounts() {
        return List.of();
    }

    /**
     * {@inheritDoc}
     *
     * @throws org.oaktag.PatternException if one side of a seam that needs a notch is so much shorter than the other
     *     that the notch would lie off it; the message gives both lengths and what mends the seam
     */
    @Override
    public Reshaped reshape(Garment garment) {
        List<SewnSides> seams = new ArrayList<>();
        List<FoldedEdges> folded = new ArrayList<>();
        for (Seam seam : garment.seams()) {
            Optional<FoldedEdges> edges = FoldedEdges.of(garment, seam);
            if (edges.isPresent()) {
                folded.add(edges.get());
            } else if (!SewnSides.isLaidOn(garment, seam)) {
                seams.add(SewnSides.of(garment, seam));
            }
        }
        Notching notching = new Notching(garment, seams);
        List<String> spread = new ArrayList<>();
        List<String> told = new ArrayList<>();
        List<Note> notes = new ArrayList<>();
        List<SeamNotching> each =
                seams.stream().map(sides -> new SeamNotching(notching, sides)).toList();
        for (SeamNotching seam : each) {
            if (seam.lacksQuarters() && seam.quarter()) {
                spread.add(seam.name());
            }
        }
        boolean cleared = true;
        while (cleared) {
            cleared = false;
            for (SeamNotching seam : each) {
                cleared |= seam.clear();
            }
        }
        for (SeamNotching seam : each) {
            int set = seam.tellApart();
            if (set > 0) {
                told.add(seam.name() + (set > 1 ? " (" + set + ")" : ""));
            }
            if (!seam.isDistinct()) {
                notes.add(Note.done("no notch tells '" + seam.name() + "' from every other seam: mark it by hand"));
            }
        }
        folded.forEach(notching::carry);
        if (!spread.isEmpty()) {
            notes.add(
                    0,
                    Note.rule("fullness is spread evenly between the quarters of both sides (common practice): "
                            + String.join(", ", spread)));
        }
        notes.add(
                0,
                Note.rule("edges within " + Length.mm(EdgePattern.ALIKE_LENGTH).text()
                        + " of each other in length are told apart by their notches; "
                        + (told.isEmpty() ? "no seam needed one more" : "one more on: " + String.join(", ", told))));
        return new Reshaped(notching.notched(), notes, List.of());
    }
}
