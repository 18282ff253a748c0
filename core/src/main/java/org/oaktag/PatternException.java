package org.oaktag;

import java.util.regex.Pattern;

/**
 * Thrown when something asked of a pattern cannot be done, or when what was given cannot be right.
 *
 * <pre>{@code
 * try {
 *     block.adjust(lowerArmhole(mm(900)));
 * } catch (PatternException refused) {
 *     refused.thing();    // what it is about
 *     refused.remedy();   // what would work instead
 * }
 * }</pre>
 *
 * <p>The message always names the thing, the rule it must obey, the value that was given, and what would work instead:
 *
 * <pre>sleeve cap: a cap 90.0 mm high spans 402.1 to 455.0 mm; got 461.3 mm to reach; raise the cap to at least 96.2
 * mm</pre>
 *
 * <p>The four parts can be read one by one, so that a program can show them in its own way. Immutable.
 */
public class PatternException extends RuntimeException {

    private static final long serialVersionUID = 1L;

    private static final int LONGEST = 400;
    private static final Pattern CONTROL = Pattern.compile("\\p{Cntrl}+");

    private final String thing;
    private final String rule;
    private final String given;
    private final String remedy;

    /** Makes an exception that carries more than its four parts, which are kept as {@link #of} keeps them. */
    protected PatternException(String thing, String rule, String given, String remedy) {
        super(told(thing) + ": " + told(rule) + "; got " + told(given) + (remedy.isEmpty() ? "" : "; " + told(remedy)));
        this.thing = told(thing);
        this.rule = told(rule);
        this.given = told(given);
        this.remedy = told(remedy);
    }

    /** What was given may be a text of any length from anywhere; a message stays one line that can be read. */
    private static String told(String part) {
        if (part.length() <= LONGEST) {
            return CONTROL.matcher(part).replaceAll(" ");
        }
        int end = Character.isHighSurrogate(part.charAt(LONGEST - 2)) ? LONGEST - 2 : LONGEST - 1;
        return CONTROL.matcher(part.substring(0, end)).replaceAll(" ") + "…";
    }

    /**
     * Makes the exception from its four parts. Each is kept to one line of 400 characters: of a longer one the
     * beginning is kept, and a control character becomes a space.
     *
     * @param thing what was refused, such as {@code "notch 'front armhole'"}
     * @param rule the rule that it breaks, such as {@code "must lie on its edge (0 to 231.4 mm)"}
     * @param given the value that was given, with its unit
     * @param remedy what would work, as a phrase in the imperative, or an empty string where the rule already says it
     * @return the exception, to be thrown by the caller
     */
    public static PatternException of(String thing, String rule, String given, String remedy) {
        return new PatternException(thing, rule, given, remedy);
    }

    /** Returns what was refused. */
    public final String thing() {
        return thing;
    }

    /** Returns the rule that was broken. */
    public final String rule() {
        return rule;
    }

    /** Returns the value that was given, with its unit. */
    public final String given() {
        return given;
    }

    /** Returns what would work, or an empty string where the rule says it. */
    public final String remedy() {
        return remedy;
    }
}
