package org.oaktag.adjust;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import org.oaktag.garment.Amount;
import org.oaktag.garment.Garment;
import org.oaktag.garment.Note;
import org.oaktag.garment.Seam;
import org.oaktag.measure.Length;

/**
 * Sets a notch on both sides of every seam that could be mistaken for another: edges of like length and like notches that
 * are not sewn to each other. Seams that no other looks like stay as they are.
 *
 * <pre>{@code
 * Garment told = top.adjust(notchSeams());   // no two seams can be mistaken for each other
 * }</pre>
 *
 * <p>One cut tells a front, two a back (common practice); where that does not tell the edges apart, the notch moves or has
 * other cuts. A lapped seam is notched as far from the end that lies on the fold of the cloth on both sides; one that is
 * gathered, eased or stretched has notches of its own, and one of several edges a side is known by them. Both edges of a
 * band that is folded along its middle are sewn on together and are notched alike.
 *
 * <p>Immutable.
 */
public record NotchSeams() implements Step {

    /** On a shorter edge, in millimetres, a notch is not worth its cut. */
    private static final double SHORTEST = 25;

    private static final Pattern BACK = Pattern.compile("\\bback\\b");
    private static final Pattern FRONT = Pattern.compile("\\bfront\\b");

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
     * @throws org.oaktag.PatternException if one edge of a seam that needs a notch is so much shorter than the other that the
     *     notch would lie off it; the message gives both lengths and what mends the seam
     */
    @Override
    public Reshaped reshape(Garment garment) {
        List<Note> notes = new ArrayList<>();
        List<String> seams = new ArrayList<>();
        List<SewnPair> folded = new ArrayList<>();
        Notching notching = new Notching(garment);
        for (Seam seam : garment.seams()) {
            Optional<SewnPair> pair = SewnPair.of(garment, seam);
            if (pair.isEmpty()) {
                continue;
            }
            SewnPair sewn = pair.get();
            if (sewn.isFolded(garment)) {
                folded.add(sewn);
            } else if (sewn.length() >= SHORTEST && !notching.isDistinct(sewn)) {
                sewn.checkAlike(garment);
                Optional<MatchingNotch> choice = notching.choice(sewn, cuts(seam));
                if (choice.isPresent()) {
                    notching.set(sewn, choice.get());
                    seams.add(seam.name().value());
                } else {
                    notes.add(Note.done("no notch tells '" + seam.name() + "' from every other seam: mark it by hand"));
                }
            }
        }
        for (SewnPair sewn : folded) {
            sewn.checkAlike(notching.notched());
            notching.carry(sewn);
        }
        notes.add(
                0,
                Note.rule("edges within " + Length.mm(EdgePattern.ALIKE_LENGTH).text()
                        + " of each other in length are told apart by their notches; "
                        + (seams.isEmpty() ? "no seam needed one more" : "one more on: " + String.join(", ", seams))));
        return new Reshaped(notching.notched(), notes, List.of());
    }

    /** One cut tells a front, two a back. */
    private static int cuts(Seam seam) {
        String words = seam.name() + " " + seam.a().text() + " " + seam.b().text();
        return BACK.matcher(words).find() && !FRONT.matcher(words).find() ? 2 : 1;
    }
}
