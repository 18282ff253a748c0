package org.oaktag.adjust;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import org.oaktag.garment.Amount;
import org.oaktag.garment.Change;
import org.oaktag.garment.Edge;
import org.oaktag.garment.EdgeRef;
import org.oaktag.garment.Fit;
import org.oaktag.garment.Garment;
import org.oaktag.garment.Moved;
import org.oaktag.garment.Name;
import org.oaktag.garment.Note;
import org.oaktag.garment.Piece;
import org.oaktag.garment.SeamWalk;
import org.oaktag.garment.TakenMeasure;
import org.oaktag.garment.WalkedSeam;
import org.oaktag.garment.Watched;
import org.oaktag.measure.Length;

/**
 * Finds what a step did by measuring the garment before and after it.
 *
 * <pre>{@code
 * List<Moved> moved = Comparison.moved(block, top);
 * moved.get(0).watched().text();   // = front.neckline
 * }</pre>
 */
public final class Comparison {

    /** A smaller movement than this is rounding. */
    private static final Length MOVED = Length.mm(1e-6);

    private static final Kind<TakenMeasure> MEASURES =
            new Kind<>(taken -> taken.measure().name(), Watched::measure, TakenMeasure::length);
    private static final Kind<WalkedSeam> SEAMS = new Kind<>(
            walked -> walked.seam().name(),
            Watched::seam,
            walked -> Optional.of(isMoved(Length.ZERO, walked.error()) ? walked.error() : Length.ZERO));

    /**
     * A kind of thing that is watched from step to step.
     *
     * @param name its name
     * @param watched what is watched of the thing of a name
     * @param length its length, or empty where it has none
     */
    private record Kind<T>(
            Function<T, Name> name, Function<Name, Watched> watched, Function<T, Optional<Length>> length) {

        /** Adds what is not the same. What was not taken anew is the very same thing and needs no look. */
        void compare(List<T> before, List<T> after, List<Moved> moved) {
            for (int i = 0; i < after.size(); i++) {
                T now = after.get(i);
                @Nullable T old = twin(before, i, now);
                if (old != now) {
                    Optional<Length> length = this.length.apply(now);
                    if (length.isPresent()) {
                        add(now, Optional.ofNullable(old).flatMap(this.length), length, moved);
                    }
                }
            }
            for (int i = 0; i < before.size(); i++) {
                T old = before.get(i);
                @Nullable T now = twin(after, i, old);
                if (now == null || (now != old && length.apply(now).isEmpty())) {
                    add(old, length.apply(old), Optional.empty(), moved);
                }
            }
        }

        /**
         * Returns what is of the name of a thing: most of it stands where it stood, so it is looked for there first.
         */
        private @Nullable T twin(List<T> all, int place, T thing) {
            if (place < all.size() && all.get(place) == thing) {
                return thing;
            }
            Name wanted = name.apply(thing);
            if (place < all.size() && name.apply(all.get(place)).equals(wanted)) {
                return all.get(place);
            }
            for (int i = 0; i < all.size(); i++) {
                if (name.apply(all.get(i)).equals(wanted)) {
                    return all.get(i);
                }
            }
            return null;
        }

        private void add(T thing, Optional<Length> before, Optional<Length> after, List<Moved> moved) {
            if (isMoved(before, after)) {
                moved.add(new Moved(watched.apply(name.apply(thing)), before, after));
            }
        }
    }

    private Comparison() {}

    /**
     * Returns the change from one garment to the next: every edge length, finished measure and seam error that moved
     * by more than a millionth of a millimetre, in the order of the garment after, what is gone last.
     *
     * @param step the step's name
     * @param amounts what it was asked for
     * @param before the garment before it
     * @param reshaped what it made
     */
    public static Change change(String step, List<Amount> amounts, Garment before, Reshaped reshaped) {
        Garment after = reshaped.garment();
        return new Change(
                step,
                amounts,
                notes(before, reshaped),
                reshaped.dimensions(),
                moved(before, after),
                redrawn(before, after),
                untrue(after.walkSeamsSince(before)));
    }

    /** The step's own notes, and where the garment fits less well than before. */
    private static List<Note> notes(Garment before, Reshaped reshaped) {
        List<Note> notes = new ArrayList<>(reshaped.notes());
        List<Fit> now = reshaped.garment().fitSince(before);
        for (int i = 0; i < now.size(); i++) {
            Fit fit = now.get(i);
            if (fit.isCaution() && fit.verdict().compareTo(verdict(before, fit.check())) > 0) {
                notes.add(Note.fit(fit.text()));
            }
        }
        return notes;
    }

    private static Fit.Verdict verdict(Garment garment, Name check) {
        List<Fit> all = garment.fit();
        for (int i = 0; i < all.size(); i++) {
            if (all.get(i).check().equals(check)) {
                return all.get(i).verdict();
            }
        }
        return Fit.Verdict.FITS;
    }

    /**
     * Returns what is not the same in two garments, such as the block and what became of it, or two variants on one
     * body: every edge length, finished measure and seam error that differs by more than a millionth of a millimetre,
     * in the order of the second, what only the first has last.
     */
    public static List<Moved> moved(Garment before, Garment after) {
        List<Moved> moved = new ArrayList<>();
        addEdges(before, after, moved);
        MEASURES.compare(before.takeMeasures(), after.takeMeasuresSince(before), moved);
        SEAMS.compare(before.walkSeams().seams(), after.walkSeamsSince(before).seams(), moved);
        return List.copyOf(moved);
    }

    /** Returns every edge length and finished measure of a garment as the change that made it out of nothing. */
    public static Change beginning(String step, List<Amount> amounts, Reshaped made) {
        Garment nothing = Garment.of("", made.garment().wearer(), List.of(), List.of(), List.of());
        return change(step, amounts, nothing, made);
    }

    /** Compares the edges of those pieces whose outlines are not the same in both garments. */
    private static void addEdges(Garment before, Garment after, List<Moved> moved) {
        List<Piece> pieces = after.pieces();
        for (int i = 0; i < pieces.size(); i++) {
            Piece piece = pieces.get(i);
            @Nullable Piece old = twin(before, i, piece);
            if (!hasEdgesOf(old, piece)) {
                for (int k = 0; k < piece.edges().size(); k++) {
                    Edge edge = piece.edges().get(k);
                    Optional<Edge> was = old == null ? Optional.empty() : old.findEdge(edge.name());
                    if (was.isEmpty() || !was.get().equals(edge)) {
                        add(piece, edge, was.map(Edge::length), Optional.of(edge.length()), moved);
                    }
                }
            }
        }
        List<Piece> earlier = before.pieces();
        for (int i = 0; i < earlier.size(); i++) {
            Piece piece = earlier.get(i);
            @Nullable Piece now = twin(after, i, piece);
            if (!hasEdgesOf(now, piece)) {
                for (int k = 0; k < piece.edges().size(); k++) {
                    Edge edge = piece.edges().get(k);
                    if (now == null || !now.hasEdge(edge.name())) {
                        add(piece, edge, Optional.of(edge.length()), Optional.empty(), moved);
                    }
                }
            }
        }
    }

    /**
     * Returns the piece of the name of another, null where there is none: most stand where they stood, so it is looked
     * for there first.
     */
    static @Nullable Piece twin(Garment garment, int place, Piece piece) {
        List<Piece> pieces = garment.pieces();
        return place < pieces.size() && pieces.get(place).name().equals(piece.name())
                ? pieces.get(place)
                : garment.findPiece(piece.name()).orElse(null);
    }

    /** Tells whether there is another piece and it has the very edges of this one. */
    static boolean hasEdgesOf(@Nullable Piece other, Piece piece) {
        return other != null && other.edges().equals(piece.edges());
    }

    private static void add(
            Piece piece, Edge edge, Optional<Length> before, Optional<Length> after, List<Moved> moved) {
        if (isMoved(before, after)) {
            moved.add(new Moved(Watched.edge(EdgeRef.of(piece.name(), edge.name())), before, after));
        }
    }

    private static boolean isMoved(Optional<Length> before, Optional<Length> after) {
        if (before.isPresent() && after.isPresent()) {
            return isMoved(before.get(), after.get());
        }
        return before.isPresent() || after.isPresent();
    }

    private static boolean isMoved(Length before, Length after) {
        return !before.isCloseTo(after, MOVED);
    }

    private static List<Name> redrawn(Garment before, Garment after) {
        List<Name> redrawn = new ArrayList<>();
        List<Piece> pieces = after.pieces();
        for (int i = 0; i < pieces.size(); i++) {
            Piece piece = pieces.get(i);
            if (!piece.equals(twin(before, i, piece))) {
                redrawn.add(piece.name());
            }
        }
        return redrawn;
    }

    private static List<String> untrue(SeamWalk walk) {
        List<String> untrue = new ArrayList<>();
        List<WalkedSeam> seams = walk.seams();
        for (int i = 0; i < seams.size(); i++) {
            WalkedSeam seam = seams.get(i);
            if (!seam.isTrue()) {
                untrue.add(seam.seam().name() + ": " + seam.mend().orElseThrow());
            }
        }
        return untrue;
    }
}
