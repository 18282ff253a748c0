package org.oaktag.adjustments;

import org.oaktag.PatternException;
import org.oaktag.garment.Note;
import org.oaktag.garment.Wearer;

/** What the published rules say of cords in hoods, so that a child's hood gets none. */
final class DrawstringRule {

    private static final String RULES =
            "ASTM F1816 / US CPSC: no hood or neck drawstring in sizes 2T to 12; EN 14682: no cord at hood or neck under"
                    + " 7 years or up to 134 cm, and no free ends from 7 to 14 years";

    private DrawstringRule() {}

    /** Refuses a cord to every child: an age or a size is not always known, and other rules may go further. */
    static void check(Wearer wearer) {
        if (wearer.child()) {
            throw PatternException.of(
                    "hood drawstring",
                    "a child's hood takes no cord, which can strangle (" + RULES + ")",
                    "a drawstring for '" + wearer.name() + "', a child",
                    "fit the hood without a drawstring, and check the rules in force where it is sold");
        }
    }

    /** Returns the caution about a hood that has a cord. */
    static Note cordCaution() {
        return Note.caution(
                "a cord in a hood can catch and strangle; this hood is for an adult, and on a child's it is ruled"
                        + " out (" + RULES + "); check the rules in force where it is sold");
    }

    /** Returns the caution about a child's hood. */
    static Note childCaution() {
        return Note.caution("no cord may be put into this hood: it can strangle a child (" + RULES
                + "); check the rules in force where it is sold");
    }
}
