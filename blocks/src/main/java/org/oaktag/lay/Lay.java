package org.oaktag.lay;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.function.Function;
import org.oaktag.PatternException;
import org.oaktag.garment.Allowances;
import org.oaktag.garment.Cloth;
import org.oaktag.garment.CutList;
import org.oaktag.geometry.Bounds;
import org.oaktag.geometry.Outline;
import org.oaktag.geometry.Transform;
import org.oaktag.measure.Length;
import org.oaktag.measure.Percent;

/**
 * Everything that is cut from one cloth, laid on it. Immutable.
 *
 * <pre>{@code
 * Lay lay = Lay.of(
 *         CutList.of(top), shell, KnitTop.allowances(top), Spread.single(cm(150)), Effort.tries(40));
 * lay.lengthToBuy();
 * lay.use();           // how much of the cloth is used
 * lay.lowerBound();    // no lay can be shorter
 * }</pre>
 *
 * @param cloth the cloth
 * @param spread how it is spread
 * @param pieces the pieces in their places, those at the beginning of the cloth first
 */
public record Lay(Cloth cloth, Spread spread, List<LaidPiece> pieces) {

    /** Copies the list. */
    public Lay {
        pieces = List.copyOf(pieces);
    }

    /**
     * Lays everything that the list has of a cloth.
     *
     * <p>No two pieces come nearer to each other than the gap, none lies over the edge of the cloth, and every
     * grainline runs along it, top up where the cloth has a nap. Half pieces lie on the fold, or are opened out on a
     * single layer; of a mirrored pair both are cut at once where there are two layers. On folded cloth a piece that
     * has no mirror is cut from the upper layer alone, and what lies below it is not used.
     *
     * @throws PatternException if the list has nothing of the cloth, a piece is wider than the cloth, a half piece
     *     cannot lie on the fold because its fold does not run with the grain, or an allowance does not fit its piece
     */
    public static Lay of(CutList list, Cloth cloth, Allowances allowances, Spread spread, Effort effort) {
        return of(list, cloth, owner -> allowances, spread, effort);
    }

    /**
     * Lays everything that the list has of a cloth, as {@link #of(CutList, Cloth, Allowances, Spread, Effort)} does,
     * where its garments are not cut with the same allowances.
     *
     * @param allowances returns the allowances of each owner's garment
     * @throws PatternException if the lay cannot be made
     */
    public static Lay of(
            CutList list, Cloth cloth, Function<CutList.Owner, Allowances> allowances, Spread spread, Effort effort) {
        List<Part> parts = list.from(cloth).stream()
                .flatMap(item -> Part.of(item, allowances.apply(item.owner()), spread).stream())
                .toList();
        if (parts.isEmpty()) {
            throw PatternException.of(
                    "lay of '" + cloth.use() + "'",
                    "must have at least one piece",
                    "none",
                    "lay one of "
                            + list.cloths().stream()
                                    .map(each -> each.use().value())
                                    .toList());
        }
        parts.forEach(part -> checkFits(part, spread));
        Nesting nesting =
                new Nesting(parts, spread.tableWidth().mm(), spread.gap().mm());
        return new Lay(cloth, spread, placed(nesting, LaySearch.best(nesting, effort)));
    }

    /** Returns how much of the length of the cloth the pieces take. */
    public Length length() {
        return Length.mm(pieces.stream()
                .mapToDouble(piece -> piece.outline().bounds().maxY())
                .max()
                .orElse(0));
    }

    /** Returns how much of the cloth to buy; see {@link Spread#toBuy}. */
    public Length lengthToBuy() {
        return spread.toBuy(length());
    }

    /**
     * Returns how much of the cloth to buy in metres, to the centimetre at or next above, so that it is never too
     * short.
     */
    public String lengthToBuyText() {
        return String.format(Locale.ROOT, "%.2f m", Math.ceil(lengthToBuy().mm() / 10 - 1e-9) / 100);
    }

    /** Returns the area of cloth in the pieces, all layers counted, mm². */
    public double area() {
        return pieces.stream().mapToDouble(LaidPiece::area).sum();
    }

    /** Returns how much of the cloth that the lay takes is in the pieces: their area over its length and width. */
    public Percent use() {
        return Percent.percent(
                100 * area() / (length().mm() * spread.shrunkWidth().mm()));
    }

    /**
     * Returns a length below which no lay of these pieces can come: the longest piece, or what their areas take of the
     * width. Every piece takes half the gap all round with it, and grown so none has less than a disc of its own area
     * would (the Brunn-Minkowski inequality).
     */
    public Length lowerBound() {
        double gap = spread.gap().mm();
        double longest = 0;
        double areas = 0;
        for (LaidPiece piece : pieces) {
            longest = Math.max(longest, piece.outline().bounds().height());
            double radius = Math.sqrt(piece.outline().area() / Math.PI) + gap / 2;
            areas += Math.PI * radius * radius;
        }
        return Length.mm(Math.max(longest, areas / (spread.tableWidth().mm() + gap) - gap));
    }

    private static void checkFits(Part part, Spread spread) {
        double widest = part.shapes().stream().mapToDouble(Shape::width).max().orElseThrow();
        if (widest > spread.tableWidth().mm()) {
            throw PatternException.of(
                    "lay of piece '" + part.item().piece().name() + "'",
                    "must fit between the " + (spread.folded() ? "fold and the selvages" : "selvages") + ", "
                            + spread.tableWidth().roundedDown().text(),
                    Length.mm(widest).roundedUp().text(),
                    spread.folded() ? "spread the cloth in a single layer, or take a wider one" : "take a wider cloth");
        }
    }

    private static List<LaidPiece> placed(Nesting nesting, Layout layout) {
        List<LaidPiece> laid = new ArrayList<>();
        for (int i = 0; i < layout.seats().size(); i++) {
            Layout.Seat seat = layout.seats().get(i);
            Shape shape = nesting.shapes().get(seat.shape());
            laid.add(laid(nesting.parts().get(i), shape.orientation().then(Transform.translation(seat.x(), seat.y()))));
        }
        double top = laid.stream()
                .map(piece -> piece.outline().bounds())
                .mapToDouble(Bounds::minY)
                .min()
                .orElseThrow();
        return laid.stream()
                .map(piece -> moved(piece, -top))
                .sorted(Comparator.comparingDouble(
                                (LaidPiece piece) -> piece.outline().bounds().minY())
                        .thenComparingDouble(piece -> piece.outline().bounds().minX())
                        .thenComparingInt(piece -> piece.item().number()))
                .toList();
    }

    private static LaidPiece laid(Part part, Transform motion) {
        return new LaidPiece(part.item(), part.through(), motion, part.outline().transformed(motion));
    }

    /** Moves a piece along the cloth. */
    private static LaidPiece moved(LaidPiece piece, double dy) {
        Transform shift = Transform.translation(0, dy);
        Outline outline = piece.outline().transformed(shift);
        return new LaidPiece(piece.item(), piece.through(), piece.motion().then(shift), outline);
    }
}
