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
        /** Something to be heeded by whoever makes or wears the garment. */
        CAUTION
    }

    /** Returns the rule by which an amount was found. */
    public static Note rule(String text) {
        return new Note(Kind.RULE, text);
    }

    /** Returns what was done beyond what was asked. */
    public static Note done(String text) {
        return new Note(Kind.DONE, text);
    }

    /** Returns something to be heeded. */
    public static Note caution(String text) {
        return new Note(Kind.CAUTION, text);
    }
}
