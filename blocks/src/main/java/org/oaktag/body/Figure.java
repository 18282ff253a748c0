package org.oaktag.body;

/**
 * Whose body it is, as far as proportions and the rules for children's garments depend on it.
 *
 * <pre>{@code
 * Figure.GIRL.isChild();   // = true
 * }</pre>
 */
public enum Figure {
    /** A grown woman. */
    WOMAN("woman"),
    /** A grown man. */
    MAN("man"),
    /** A girl who still grows. */
    GIRL("girl"),
    /** A boy who still grows. */
    BOY("boy");

    private final String label;

    Figure(String label) {
        this.label = label;
    }

    /** Returns the word for it, in lower case. */
    public String label() {
        return label;
    }

    /** Tells whether the rules for children's garments apply. */
    public boolean isChild() {
        return this == GIRL || this == BOY;
    }
}
