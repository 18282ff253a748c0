package org.oaktag.garment;

import java.util.Objects;
import org.oaktag.PatternException;

/**
 * How a piece is cut from the cloth. A closed family of immutable values.
 *
 * <pre>{@code
 * Cut.pair().instruction();   // = cut 1 pair (mirrored)
 * Cut fold = Cut.onFold(CENTRE);
 * }</pre>
 */
public sealed interface Cut {

    /** Returns how many copies of the cloth piece come out. */
    int count();

    /** Returns what the maker reads on the piece, such as {@code "cut 1 pair (mirrored)"}. */
    String instruction();

    /** Returns a cut of one copy as drawn. */
    static Cut single() {
        return new Single(1);
    }

    /** Returns a cut of one left and one right. */
    static Cut pair() {
        return new MirroredPair(1);
    }

    /** Returns a cut of one copy with the named edge on the fold of the cloth. */
    static Cut onFold(Name edge) {
        return new OnFold(edge, 1);
    }

    /**
     * As drawn.
     *
     * @param count how many, at least one
     */
    record Single(int count) implements Cut {
        /**
         * Checks the count.
         *
         * @throws PatternException if it is less than one
         */
        public Single {
            atLeastOne(count);
        }

        @Override
        public String instruction() {
            return "cut " + count;
        }
    }

    /**
     * One as drawn and one mirrored.
     *
     * @param pairs how many pairs, at least one
     */
    record MirroredPair(int pairs) implements Cut {
        /**
         * Checks the number of pairs.
         *
         * @throws PatternException if it is less than one
         */
        public MirroredPair {
            atLeastOne(pairs);
        }

        @Override
        public int count() {
            return 2 * pairs;
        }

        @Override
        public String instruction() {
            return "cut " + pairs + (pairs == 1 ? " pair" : " pairs") + " (mirrored)";
        }
    }

    /**
     * With one edge on the fold of the cloth, so that the piece comes out twice as wide as drawn.
     *
     * @param edge the edge on the fold, which must be straight
     * @param count how many, at least one
     */
    record OnFold(Name edge, int count) implements Cut {
        /**
         * Checks the count.
         *
         * @throws PatternException if it is less than one
         */
        public OnFold {
            Objects.requireNonNull(edge, "edge");
            atLeastOne(count);
        }

        @Override
        public String instruction() {
            return "cut " + count + " on fold";
        }
    }

    private static void atLeastOne(int count) {
        if (count < 1) {
            throw PatternException.of("cut", "must be of at least one", "" + count, "");
        }
    }
}
