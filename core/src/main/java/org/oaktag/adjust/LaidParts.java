package org.oaktag.adjust;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.oaktag.PatternException;
import org.oaktag.garment.Garment;
import org.oaktag.garment.InnerLine;
import org.oaktag.garment.Name;
import org.oaktag.garment.Piece;
import org.oaktag.garment.WalkedSeam;
import org.oaktag.geometry.Curve;
import org.oaktag.geometry.Path;
import org.oaktag.geometry.Point;
import org.oaktag.measure.Length;

/**
 * Parts that are laid on a piece, as a pocket is, and that a later step left behind: where the step that laid one would
 * lay it elsewhere now, or its place no longer lies inside the piece. Nothing is sewn along an edge there, so no seam
 * tells.
 */
final class LaidParts {

    /** How far a place may lie outside through rounding, where the part ends on an edge, in millimetres. */
    private static final double ROUNDING = 1e-6;

    private final Recipe recipe;
    private final List<Recipe.Played> played;

    LaidParts(Recipe recipe, List<Recipe.Played> played) {
        this.recipe = recipe;
        this.played = played;
    }

    /** A part on a piece. */
    private record On(Name part, Name piece) {

        Optional<Path> place(Garment garment) {
            return garment.findPiece(piece)
                    .flatMap(shell -> shell.lines().stream()
                            .filter(line -> line.use() == InnerLine.Use.PLACEMENT)
                            .filter(line -> line.name().equals(part))
                            .map(InnerLine::path)
                            .findFirst());
        }
    }

    /** Returns the parts that are left behind after the last step. */
    List<Stale> stale() {
        List<Stale> stale = new ArrayList<>();
        laid().forEach((on, step) -> {
            OptionalInt broken = brokenBy(on, step);
            if (broken.isPresent()) {
                stale.add(of(on, step, broken.getAsInt()));
            }
        });
        return stale;
    }

    /** Returns every part that was laid on a piece, with the place of the step that did so last. */
    private Map<On, Integer> laid() {
        Map<On, Integer> laid = new LinkedHashMap<>();
        for (int i = 0; i < played.size(); i++) {
            for (Piece piece : played.get(i).after().pieces()) {
                for (InnerLine line : piece.lines()) {
                    On on = new On(line.name(), piece.name());
                    if (line.use() == InnerLine.Use.PLACEMENT && isLaidBy(i, on)) {
                        laid.put(on, i);
                    }
                }
            }
        }
        return laid;
    }

    /** Tells whether a step drew the place on a piece that it left as it was, and would draw it there again. */
    private boolean isLaidBy(int step, On on) {
        Garment before = played.get(step).before();
        Garment after = played.get(step).after();
        boolean isShell = before.findPiece(on.piece())
                .filter(shell -> shell.outline().equals(after.piece(on.piece()).outline()))
                .isPresent();
        return isShell
                && !on.place(before).equals(on.place(after))
                && again(step, after).flatMap(on::place).equals(on.place(after));
    }

    private OptionalInt brokenBy(On on, int laid) {
        int broken = played.size();
        while (broken - 1 > laid && isLeft(on, laid, played.get(broken - 1).after())) {
            broken--;
        }
        return broken == played.size() ? OptionalInt.empty() : OptionalInt.of(broken);
    }

    private boolean isLeft(On on, int laid, Garment garment) {
        Optional<Path> place = on.place(garment);
        if (place.isEmpty()) {
            return false;
        }
        OptionalDouble moved = moved(on, laid, garment);
        return !isInside(place.get(), garment.piece(on.piece()))
                || (moved.isPresent() && moved.getAsDouble() > WalkedSeam.TOLERANCE.mm());
    }

    /** Returns how far the place lies from where the step would lay it now; empty where it cannot be done there. */
    private OptionalDouble moved(On on, int laid, Garment garment) {
        Optional<Path> now = again(laid, garment).flatMap(on::place);
        return now.isEmpty()
                ? OptionalDouble.empty()
                : OptionalDouble.of(farthest(on.place(garment).orElseThrow(), now.get()));
    }

    private Optional<Garment> again(int step, Garment garment) {
        try {
            return Optional.of(played.get(step).step().reshape(garment).garment());
        } catch (PatternException refused) {
            return Optional.empty();
        }
    }

    private static boolean isInside(Path place, Piece shell) {
        return corners(place).stream()
                .allMatch(point -> shell.outline().contains(point)
                        || shell.outline().path().nearest(point).distance() <= ROUNDING);
    }

    private static double farthest(Path a, Path b) {
        List<Point> from = corners(a);
        List<Point> to = corners(b);
        double farthest = 0;
        for (int i = 0; i < from.size(); i++) {
            farthest = Math.max(
                    farthest,
                    from.size() == to.size()
                            ? from.get(i).distanceTo(to.get(i))
                            : b.nearest(from.get(i)).distance());
        }
        return farthest;
    }

    private static List<Point> corners(Path path) {
        List<Point> corners = new ArrayList<>(List.of(path.start()));
        path.curves().stream().map(Curve::end).forEach(corners::add);
        return corners;
    }

    private Stale of(On on, int laid, int broken) {
        Garment last = played.get(played.size() - 1).after();
        List<String> phrases = recipe.phrases();
        String refit = played.get(laid).step().name() + " again";
        OptionalDouble moved = moved(on, laid, last);
        String fault = moved.isPresent()
                ? "the place of the " + on.part() + " on the " + on.piece() + " is "
                        + Length.mm(moved.getAsDouble()).text() + " from where it would be laid now"
                : "the place of the " + on.part() + " no longer lies inside the " + on.piece();
        return new Stale(
                on.part(),
                fault + ": " + refit,
                OptionalInt.of(laid),
                broken,
                Optional.of(phrases.get(laid)),
                phrases.get(broken),
                refit);
    }
}
