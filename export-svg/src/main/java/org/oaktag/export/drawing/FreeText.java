package org.oaktag.export.drawing;

/**
 * Makes text that somebody else wrote, such as the name of a body, safe to show among text of our own.
 *
 * <pre>{@code
 * String title = FreeText.shown(mira.name() + "'s top");
 * }</pre>
 */
public final class FreeText {

    /** What stands for a character that is not shown. */
    private static final int REPLACEMENT = 0xFFFD;

    private FreeText() {}

    /**
     * Returns the text on one line: white space becomes a space, and every character that would steer a terminal or
     * turn the direction of the text around it becomes U+FFFD, as does half of a surrogate pair.
     */
    public static String shown(String text) {
        StringBuilder shown = new StringBuilder(text.length());
        text.codePoints()
                .map(c -> Character.isWhitespace(c) || Character.isSpaceChar(c) ? ' ' : isShown(c) ? c : REPLACEMENT)
                .forEach(shown::appendCodePoint);
        return shown.toString().strip();
    }

    private static boolean isShown(int c) {
        return switch (Character.getType(c)) {
            case Character.CONTROL, Character.SURROGATE, Character.UNASSIGNED, Character.PRIVATE_USE -> false;
            // Of the format characters, joiners shape letters and emoji; the others steer direction or are invisible.
            case Character.FORMAT -> c == 0x200C || c == 0x200D;
            default -> true;
        };
    }
}
