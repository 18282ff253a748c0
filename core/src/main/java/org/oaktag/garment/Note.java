package org.oaktag.garment;

import java.util.Objects;

/**
 * A sentence that a step has to say. Immutable.
 *
 * <pre>{@code
 * Note.caution("let the front hang before it is hemmed: off the grain it grows longer").kind();   // = CAUTION
 * }</pre>
 *
 * @param kind what sort of sentence
 * @param text the sentence, with its numbers filled in
 */
public record Note(Kind kind, String text) {
    /** Refuses null. */
    public Note {
        Objects.requireNonNull(kind, "kind");
        Objects.requireNonNull(text, "text");
    }

    /** What sort of sentence a note is. */
    public enum Kind {
        /** The rule by which an amount was found, for those who learn. */
        RULE,
        /** Something that was done beyond what was asked, so that the step could be done at all. */
        DONE,
        /** Something that whoever makes or wears the garment has to look after. */
        CAUTION,
        /** Where the garment fits less well than before the step. */
        FIT
    }

    /** Tells whether the maker or the wearer has to look after it. */
    public boolean isCaution() {
        return kind == Kind.CAUTION || kind == Kind.FIT;
    }

    /** Returns the rule by which an amount was found. */
    public static Note rule(String text) {
        return new Note(Kind.RULE, text);
    }

    /** Returns what was done beyond what was asked. */
    public static Note done(String text) {
        return new Note(Kind.DONE, text);
    }

    /** Returns something that whoever makes or wears the garment has to look after. */
    public static Note caution(String text) {
        return new Note(Kind.CAUTION, text);
    }

    /** Returns where the garment fits less well than before the step. */
    public static Note fit(String text) {
        return new Note(Kind.FIT, text);
    }
}
