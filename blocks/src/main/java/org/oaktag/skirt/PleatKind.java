package org.oaktag.skirt;

/**
 * How the pleats of a skirt are folded.
 *
 * <pre>{@code
 * PleatKind.BOX.folds();   // = 2
 * }</pre>
 */
public enum PleatKind {
    /** One fold each, away from the centre. */
    KNIFE(1),
    /** Two folds each, away from each other, which meet those of the next. */
    BOX(2),
    /** Two folds each, which meet on top. */
    INVERTED(2);

    private final int folds;

    PleatKind(int folds) {
        this.folds = folds;
    }

    /** Returns how many folds a pleat has. */
    public int folds() {
        return folds;
    }
}
