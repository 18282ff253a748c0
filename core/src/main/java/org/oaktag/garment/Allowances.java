package org.oaktag.garment;

import java.util.Collections;
import java.util.Objects;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.oaktag.PatternException;
import org.oaktag.measure.Length;

/**
 * How much cloth is left outside the seam line, edge by edge. An edge on the fold of the cloth has none.
 *
 * <pre>{@code
 * Allowances wide = Allowances.of("home sewing", mm(15))
 *         .with(EdgeNames.HEM, Allowance.foldedBack(mm(30)))
 *         .with(TopEdges.SHOULDER, Allowance.squared(mm(15)));
 * }</pre>
 *
 * <p>Immutable.
 *
 * @param name what this set of allowances is called; free text
 * @param standard the allowance of every edge that is not named
 * @param byName the allowance of every edge of that name, in alphabetical order
 * @param byEdge the allowance of one edge of one piece, which goes before that of its name
 * @param notches how notches are cut into it
 * @param darts how the cloth of darts is cut
 */
public record Allowances(
        String name,
        Length standard,
        SortedMap<Name, Allowance> byName,
        SortedMap<EdgeRef, Allowance> byEdge,
        NotchCut notches,
        DartCut darts) {

    /**
     * Copies the maps and checks the standard width.
     *
     * @throws PatternException if it is not 0 to 100 mm
     */
    public Allowances {
        Objects.requireNonNull(name, "name");
        Objects.requireNonNull(notches, "notches");
        Objects.requireNonNull(darts, "darts");
        byName = Collections.unmodifiableSortedMap(new TreeMap<>(byName));
        byEdge = Collections.unmodifiableSortedMap(new TreeMap<>(byEdge));
        Allowance.check("seam allowance", standard);
    }

    /**
     * Returns the same allowance for every edge.
     *
     * @throws PatternException if it is not 0 to 100 mm
     */
    public static Allowances of(String name, Length standard) {
        return new Allowances(name, standard, new TreeMap<>(), new TreeMap<>(), NotchCut.SLIT, DartCut.FOLDED);
    }

    /**
     * Returns the allowances with another width for every edge of a name, its ends mitred.
     *
     * @throws PatternException if it is not 0 to 100 mm
     */
    public Allowances with(Name edge, Length width) {
        Allowance.check("allowance of '" + edge + "'", width);
        return with(edge, Allowance.mitred(width));
    }

    /**
     * Returns the allowances with another one for every edge of a name.
     *
     * @throws PatternException if it is not 0 to 100 mm wide
     */
    public Allowances with(Name edge, Allowance allowance) {
        SortedMap<Name, Allowance> more = new TreeMap<>(byName);
        more.put(edge, Objects.requireNonNull(allowance, "allowance"));
        return new Allowances(name, standard, more, byEdge, notches, darts);
    }

    /**
     * Returns the allowances with another width for one edge of one piece, its ends mitred.
     *
     * @throws PatternException if it is not 0 to 100 mm
     */
    public Allowances with(EdgeRef edge, Length width) {
        Allowance.check("allowance of '" + edge + "'", width);
        return with(edge, Allowance.mitred(width));
    }

    /**
     * Returns the allowances with another one for one edge of one piece.
     *
     * @throws PatternException if it is not 0 to 100 mm wide
     */
    public Allowances with(EdgeRef edge, Allowance allowance) {
        SortedMap<EdgeRef, Allowance> more = new TreeMap<>(byEdge);
        more.put(edge, Objects.requireNonNull(allowance, "allowance"));
        return new Allowances(name, standard, byName, more, notches, darts);
    }

    /**
     * Returns the allowances with another one for every edge of both sides of a seam, which are sewn with it together.
     *
     * @throws PatternException if it is not 0 to 100 mm wide
     */
    public Allowances with(Seam seam, Allowance allowance) {
        Objects.requireNonNull(allowance, "allowance");
        SortedMap<EdgeRef, Allowance> more = new TreeMap<>(byEdge);
        seam.edges().forEach(edge -> more.put(edge, allowance));
        return new Allowances(name, standard, byName, more, notches, darts);
    }

    /**
     * Returns the allowances with what the {@linkplain Edge#finish finish} of the edges of a garment asks for: so much
     * on what is {@linkplain Garment#turnedBack turned back}, and none where it is slashed open or left raw. Interfacing is fused,
     * and so it has none.
     *
     * @throws PatternException if it is not 0 to 100 mm wide
     */
    public Allowances finished(Garment garment, Length turnedBack) {
        SortedMap<EdgeRef, Allowance> more = new TreeMap<>(byEdge);
        for (EdgeRef edge : garment.turnedBack()) {
            boolean square = garment.edge(edge).finish() == EdgeFinish.TURNED_BACK_SQUARE;
            more.put(edge, square ? Allowance.foldedSquare(turnedBack) : Allowance.foldedBack(turnedBack));
        }
        for (Piece piece : garment.pieces()) {
            boolean fused = piece.cloth().isInterfacing();
            piece.edges().stream()
                    .filter(edge -> fused || edge.finish() == EdgeFinish.SLASHED || edge.finish() == EdgeFinish.RAW)
                    .forEach(edge -> more.put(EdgeRef.of(piece.name(), edge.name()), Allowance.mitred(Length.ZERO)));
        }
        return new Allowances(name, standard, byName, more, notches, darts);
    }

    /**
     * Returns the allowances with those of a seam cut for the way in which they are pressed once it is sewn: what is
     * folded back on to its own piece mirrors that piece, and what is pressed flat on to the other ends where the other
     * is cut. It matters where another seam crosses this one later, as a neckline crosses a shoulder seam.
     *
     * @throws PatternException if it is not 0 to 100 mm wide
     */
    public Allowances pressed(Seam seam, Length width, Pressing pressing) {
        SortedMap<EdgeRef, Allowance> more = new TreeMap<>(byEdge);
        Objects.requireNonNull(pressing, "pressing");
        boolean backOnA = pressing != Pressing.TOWARDS_B;
        boolean backOnB = pressing != Pressing.TOWARDS_A;
        seam.a().runs().forEach(run -> more.put(run.edge(), pressed(width, backOnA)));
        seam.b().runs().forEach(run -> more.put(run.edge(), pressed(width, backOnB)));
        return new Allowances(name, standard, byName, more, notches, darts);
    }

    private static Allowance pressed(Length width, boolean back) {
        return back ? Allowance.foldedBack(width) : Allowance.lapped(width);
    }

    /** Returns the allowances with notches cut in another way; the usual way is a slit. */
    public Allowances notched(NotchCut other) {
        return new Allowances(name, standard, byName, byEdge, other, darts);
    }

    /** Returns the allowances with darts cut in another way; usually their cloth is folded. */
    public Allowances darts(DartCut other) {
        return new Allowances(name, standard, byName, byEdge, notches, other);
    }

    /** Returns how wide the allowance of an edge of a piece is: nothing on the fold. */
    public Length on(Piece piece, Name edge) {
        return of(piece, edge).width();
    }

    /**
     * Returns the allowance of an edge of a piece: none on the fold. What goes on of an edge behind a dart has that of
     * the edge, unless it has one of its own.
     */
    public Allowance of(Piece piece, Name edge) {
        if (piece.isOnFold(edge)) {
            return Allowance.mitred(Length.ZERO);
        }
        Name whole = Dart.whole(edge);
        return Stream.of(
                        byEdge.get(EdgeRef.of(piece.name(), edge)),
                        byName.get(edge),
                        byEdge.get(EdgeRef.of(piece.name(), whole)),
                        byName.get(whole))
                .filter(Objects::nonNull)
                .findFirst()
                .orElse(Allowance.mitred(standard));
    }

    /**
     * Returns these allowances if no edge in them seems to be mistyped. An edge that the garment lacks is no mistake by
     * itself, as one set may serve many garments; one that is spelt nearly like an edge that is there is taken for one.
     *
     * @throws PatternException if one is; the message names the edge that was meant
     */
    public Allowances check(Garment garment) {
        Set<String> names = new TreeSet<>();
        Set<String> edges = new TreeSet<>();
        for (Piece piece : garment.pieces()) {
            for (Edge edge : piece.edges()) {
                names.add(edge.name().value());
                edges.add(EdgeRef.of(piece.name(), edge.name()).id());
            }
        }
        byName.keySet().forEach(edge -> checkSpelling(edge.value(), names));
        byEdge.keySet().forEach(edge -> checkSpelling(edge.id(), edges));
        return this;
    }

    private void checkSpelling(String edge, Set<String> there) {
        if (!there.contains(edge) && Spelling.isSlip(edge, there)) {
            throw Spelling.unknown("allowance of '" + name + "' for an edge", edge, there);
        }
    }
}
