package org.oaktag.garment;

/**
 * The names of edges that garments of any family have. They are ordinary {@link Name}s: a piece may have edges of any
 * other name, and each family has names of its own.
 *
 * <pre>{@code
 * front.edge(EdgeNames.SIDE).length().plus(front.edge(EdgeNames.HEM).length());
 * }</pre>
 */
public final class EdgeNames {

    /** The edge at the side of the body, down to the hem. */
    public static final Name SIDE = Name.of("side");

    /** The lower edge, which is turned up unless something is sewn to it. */
    public static final Name HEM = Name.of("hem");

    /** Centre front or centre back, from the hem upwards. */
    public static final Name CENTRE = Name.of("centre");

    /** The upper edge of a band or a lower panel: the one that is sewn to what hangs above it. */
    public static final Name TOP = Name.of("top");

    /** The lower edge of a band or of an upper panel. */
    public static final Name BOTTOM = Name.of("bottom");

    /** The edge of a pouch or a pocket where the hand goes in. */
    public static final Name OPENING = Name.of("opening");

    /** The upper edge of the extension of a vent, from the end of the sewn seam outwards. */
    public static final Name VENT_TOP = Name.of("vent top");

    /** The outer edge of the extension of a vent. */
    public static final Name VENT = Name.of("vent");

    /** The lower edge of the extension of a vent, from its outer edge to where it folds. */
    public static final Name VENT_HEM = Name.of("vent hem");

    private EdgeNames() {}
}
