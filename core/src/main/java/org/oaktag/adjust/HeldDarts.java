package org.oaktag.adjust;

import java.util.Arrays;
import java.util.HashSet;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.oaktag.PatternException;
import org.oaktag.garment.DartInTheWay;
import org.oaktag.garment.Edge;
import org.oaktag.garment.Garment;
import org.oaktag.garment.InnerLine;
import org.oaktag.garment.Mark;
import org.oaktag.garment.Name;
import org.oaktag.garment.Piece;

/**
 * Takes a step on pieces with darts. A dart in the way of the step is turned into an edge where it is not, the step is
 * taken, and the dart is turned back.
 *
 * <p>Of the edges in which it could be held, the one is taken that leaves the most seams true, and then the one for
 * which the fewest of those edges were turned that the step draws anew: a step at the armhole finds the armhole where
 * it was, one at the hem the hem.
 */
final class HeldDarts {

    private static final double[] SHARES = {0.5, 0.25, 0.75};

    /** Nearer than this, in mm, a mark belongs to a line. */
    private static final double NEAR = 10;

    /** Farther than this, in mm, a mark that goes off its line is torn from it. */
    private static final double TORN = 0.1;

    private final Step step;

    private HeldDarts(Step step) {
        this.step = step;
    }

    /** What came of the step with a dart held in one place; the smaller both figures, the better. */
    private record Tried(Reshaped reshaped, long untrue, long turned) {
        boolean isBetterThan(@Nullable Tried other) {
            return other == null || untrue < other.untrue || (untrue == other.untrue && turned < other.turned);
        }
    }

    /**
     * Takes the step.
     *
     * @throws PatternException if it is refused wherever the darts in its way are held
     */
    static Reshaped reshape(Step step, Garment garment) {
        return new HeldDarts(step).reshape(garment, Set.of());
    }

    private Reshaped reshape(Garment garment, Set<HeldDart> held) {
        try {
            return step.reshape(garment);
        } catch (DartInTheWay found) {
            HeldDart dart = new HeldDart(garment.piece(found.piece()), found.dart());
            if (held.stream().anyMatch(dart::isSameDart)) {
                throw found;
            }
            Set<HeldDart> all = new HashSet<>(held);
            all.add(dart);
            return best(garment, dart, all).orElseThrow(() -> found).reshaped();
        }
    }

    /** The refusal that is told is the first that does not speak of a dart in the way. */
    private Optional<Tried> best(Garment garment, HeldDart dart, Set<HeldDart> held) {
        @Nullable Tried best = null;
        @Nullable PatternException refused = null;
        for (Edge edge : dart.piece().edges()) {
            Optional<Garment> turned =
                    dart.canBeHeldIn(edge.name()) ? turned(garment, dart, edge.name()) : Optional.empty();
            if (turned.isPresent()) {
                try {
                    Tried tried = tried(garment, turned.get(), dart, held);
                    best = tried.isBetterThan(best) ? tried : best;
                } catch (DartInTheWay here) {
                    // Another edge may be out of the way.
                } catch (PatternException e) {
                    refused = refused == null ? e : refused;
                }
            }
        }
        if (best == null && refused != null) {
            throw refused;
        }
        return Optional.ofNullable(best);
    }

    private static Optional<Garment> turned(Garment garment, HeldDart dart, Name edge) {
        return Arrays.stream(SHARES)
                .mapToObj(share -> turned(garment, dart.into(Place.share(edge, share))))
                .flatMap(Optional::stream)
                .findFirst();
    }

    private static Optional<Garment> turned(Garment garment, MoveDart turn) {
        try {
            return Optional.of(turn.reshape(garment).garment());
        } catch (PatternException noRoom) {
            return Optional.empty();
        }
    }

    private Tried tried(Garment before, Garment turned, HeldDart dart, Set<HeldDart> held) {
        Piece waiting = turned.piece(dart.piece().name());
        Reshaped made = reshape(turned, held);
        Piece reshaped = dart.in(made.garment());
        Reshaped back = dart.back(before, waiting, reshaped, made);
        requirePlacesKept(dart, reshaped, dart.in(back.garment()));
        long untrue = before.walkSeams().seams().stream()
                .filter(seam -> seam.isTrue()
                        && back.garment().walkSeams().seams().stream()
                                .anyMatch(now ->
                                        now.seam().name().equals(seam.seam().name()) && !now.isTrue()))
                .count();
        long drawn = waiting.edges().stream()
                .filter(edge -> !isAsIn(dart.piece(), edge) && !isAsIn(reshaped, edge))
                .count();
        return new Tried(back, untrue, drawn);
    }

    /** What is laid on over the line that a dart turns would be torn from its marks. */
    private static void requirePlacesKept(HeldDart dart, Piece held, Piece back) {
        for (InnerLine line : held.lines()) {
            for (Mark mark : held.marks()) {
                double was = line.path().nearest(mark.point()).distance();
                if (line.use() == InnerLine.Use.PLACEMENT
                        && was < NEAR
                        && Math.abs(was - apart(back, line, mark)) > TORN) {
                    throw PatternException.of(
                            "the " + back.name() + " with its dart '" + dart.dart() + "'",
                            "must have no dart turned through what is laid on",
                            "the mark '" + mark.name() + "' would be torn from it",
                            "take this step before the dart is opened, or lay it on afterwards");
                }
            }
        }
    }

    private static double apart(Piece piece, InnerLine line, Mark mark) {
        return piece.lines().stream()
                .filter(each -> each.name().equals(line.name()))
                .flatMap(each -> piece.marks().stream()
                        .filter(other -> other.name().equals(mark.name()))
                        .map(other -> each.path().nearest(other.point()).distance()))
                .findFirst()
                .orElse(Double.POSITIVE_INFINITY);
    }

    private static boolean isAsIn(Piece piece, Edge edge) {
        return Stream.of(edge.name()).filter(piece::hasEdge).map(piece::path).anyMatch(edge.path()::equals);
    }
}
