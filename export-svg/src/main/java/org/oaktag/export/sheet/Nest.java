package org.oaktag.export.sheet;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Collectors;
import org.oaktag.PatternException;
import org.oaktag.export.drawing.FreeText;
import org.oaktag.export.drawing.LineType;
import org.oaktag.garment.Garment;
import org.oaktag.garment.Name;
import org.oaktag.garment.Piece;
import org.oaktag.garment.Wearer;
import org.oaktag.geometry.Transform;

/**
 * One style in several sizes, drawn over each other: every piece once, with a cut line for each size in a line type of
 * its own, as it was drafted, the tops of all sizes level.
 *
 * <pre>{@code
 * Nest nest = new Nest(List.of(
 *         new Nest.Size("Mira", style.on(mira)), new Nest.Size("Juno", style.on(juno)), new Nest.Size("Teo", style.on(teo))));
 * Printout.nested(nest, KnitTop.allowances(style.on(mira)), Tiling.on(Paper.A4));
 * }</pre>
 *
 * <p>Immutable.
 *
 * @param sizes the sizes in their order, 2 to 6
 */
public record Nest(List<Size> sizes) {

    /**
     * A garment in one size.
     *
     * @param name what the size is called; free text
     * @param garment the garment
     */
    public record Size(String name, Garment garment) {
        /** Refuses null. */
        public Size {
            Objects.requireNonNull(name, "name");
            Objects.requireNonNull(garment, "garment");
        }
    }

    /** The line types of the cut lines, in the order of the sizes. */
    private static final List<LineType> LINES = List.of(
            LineType.SIZE_1, LineType.SIZE_2, LineType.SIZE_3, LineType.SIZE_4, LineType.SIZE_5, LineType.SIZE_6);

    /**
     * Copies the list and checks that the sizes belong together.
     *
     * @throws PatternException if there are fewer than 2 or more than 6 sizes, two have one name, or they are not made
     *     of pieces of the same names, each cut in the same way
     */
    public Nest {
        sizes = List.copyOf(sizes);
        if (sizes.size() < 2 || sizes.size() > LINES.size()) {
            throw PatternException.of(
                    "nest",
                    "must be of 2 to " + LINES.size() + " sizes",
                    "" + sizes.size(),
                    sizes.size() < 2 ? "print a single size by itself" : "print the others on sheets of their own");
        }
        Set<String> names = new HashSet<>();
        for (Size size : sizes) {
            if (!names.add(FreeText.shown(size.name()))) {
                throw PatternException.of(
                        "size of a nest",
                        "must have a name of its own",
                        "'" + size.name() + "' twice",
                        "leave one of them out");
            }
            if (!pieces(size).equals(pieces(sizes.get(0)))) {
                throw PatternException.of(
                        "size '" + size.name() + "' of a nest",
                        "must have the pieces of size '" + sizes.get(0).name() + "', " + pieces(sizes.get(0)),
                        pieces(size).toString(),
                        "make every size by the same recipe");
            }
        }
    }

    private static List<String> pieces(Size size) {
        return size.garment().pieces().stream()
                .map(piece -> piece.name() + ", " + piece.cut().instruction())
                .toList();
    }

    /** Returns what a reader announces: the style and the names of its sizes. */
    public String title() {
        return FreeText.shown(sizes.get(0).garment().title()) + ", for "
                + FreeText.shown(whole().wearer().name());
    }

    /**
     * Returns every caution in the history of any size, each once. One that does not hold for all of them begins with
     * the names of those for which it does.
     */
    public List<String> cautions() {
        return sizes.stream()
                .flatMap(size -> size.garment().cautions().stream())
                .distinct()
                .map(this::forWhom)
                .toList();
    }

    private String forWhom(String caution) {
        List<String> held = new ArrayList<>();
        for (Size size : sizes) {
            if (size.garment().cautions().contains(caution)) {
                held.add(FreeText.shown(size.name()));
            }
        }
        return held.size() == sizes.size() ? caution : String.join(", ", held) + ": " + caution;
    }

    /** Returns the garment of the first size, said to be for all of them. */
    Garment whole() {
        Garment first = sizes.get(0).garment();
        String all = names().stream().collect(Collectors.joining(", ", "sizes ", ""));
        boolean child = sizes.stream().anyMatch(size -> size.garment().wearer().child());
        return new Garment(
                first.title(),
                new Wearer(all, child, first.wearer().measures(), first.wearer().derived()),
                first.pieces(),
                first.seams(),
                first.measures(),
                first.checks(),
                first.history());
    }

    /** Returns the name of the layer of what belongs only to the size at that place, counted from 0. */
    public String layer(int size) {
        return "size " + names().get(size);
    }

    List<String> names() {
        return sizes.stream().map(size -> FreeText.shown(size.name())).toList();
    }

    /**
     * Returns the piece of that name in every size, as it was drafted but for its height on paper: their tops lie
     * level.
     */
    List<Piece> inEverySize(Name piece) {
        double top = top(sizes.get(0).garment().piece(piece));
        return sizes.stream()
                .map(size -> size.garment().piece(piece))
                .map(each -> each.transformed(Transform.translation(0, top - top(each))))
                .toList();
    }

    private static double top(Piece piece) {
        return piece.outline().bounds().minY();
    }

    /** Returns the line type of the size at that place. */
    static LineType line(int size) {
        return LINES.get(size);
    }
}
