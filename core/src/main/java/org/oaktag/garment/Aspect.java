package org.oaktag.garment;

/**
 * The side of a garment that is seen when it is worn or laid flat.
 *
 * <pre>{@code
 * Aspect.FRONT.opposite().label();   // = back
 * }</pre>
 */
public enum Aspect {
    /** The side that lies on the chest, the belly and the front of the legs. */
    FRONT("front"),
    /** The side that lies on the back and the seat. */
    BACK("back");

    private final String label;

    Aspect(String label) {
        this.label = label;
    }

    /** Returns the word for it: {@code "front"}. */
    public String label() {
        return label;
    }

    /** Returns the other side. */
    public Aspect opposite() {
        return this == FRONT ? BACK : FRONT;
    }
}
