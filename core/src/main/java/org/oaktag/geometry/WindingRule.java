package org.oaktag.geometry;

/**
 * What of a plane that outlines wind round counts as inside.
 *
 * <pre>{@code
 * WindingRule.NON_ZERO.isInside(2);   // = true
 * WindingRule.EVEN_ODD.isInside(2);   // = false
 * }</pre>
 */
public enum WindingRule {
    /** Inside is what is wound round at all: as cloth lies that is cut along all the lines. */
    NON_ZERO {
        @Override
        public boolean isInside(int winding) {
            return winding != 0;
        }
    },
    /**
     * Inside is what is wound round an odd number of times: an outline inside another is a hole, whichever way it runs.
     */
    EVEN_ODD {
        @Override
        public boolean isInside(int winding) {
            return winding % 2 != 0;
        }
    },
    /**
     * Inside is what is wound round clockwise on the table: an outline that runs the other way is a hole or nothing.
     */
    CLOCKWISE {
        @Override
        public boolean isInside(int winding) {
            return winding > 0;
        }
    };

    /** Tells whether a point is inside that is wound round so often, clockwise positive. */
    public abstract boolean isInside(int winding);
}
