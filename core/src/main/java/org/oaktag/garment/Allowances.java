package org.oaktag.garment;

import java.util.Collections;
import java.util.List;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.TreeSet;
import org.oaktag.PatternException;
import org.oaktag.measure.Length;

/**
 * How much cloth is left outside the seam line, edge by edge. An edge on the fold of the cloth has none.
 *
 * <pre>{@code
 * Allowances wide = Allowances.of("home sewing", mm(15)).with(EdgeNames.HEM, mm(30));
 * }</pre>
 *
 * <p>Immutable.
 *
 * @param name what this set of allowances is called; free text
 * @param standard the allowance of every edge that is not named
 * @param byName the allowance of every edge of that name, in alphabetical order
 * @param byEdge the allowance of one edge of one piece, which goes before that of its name
 */
public record Allowances(
        String name, Length standard, SortedMap<Name, Length> byName, SortedMap<EdgeRef, Length> byEdge) {

    private static final Length MOST = Length.mm(100);

    // Common practice in the making of knits: necklines are narrow so that they lie flat, hems 20 to 30 mm.
    private static final Length KNIT_SEAM = Length.mm(10);
    private static final Length KNIT_NECKLINE = Length.mm(6);
    private static final Length KNIT_HEM = Length.mm(25);

    /**
     * Copies the maps and checks the widths.
     *
     * @throws PatternException if an allowance is not 0 to 100 mm
     */
    public Allowances {
        byName = Collections.unmodifiableSortedMap(new TreeMap<>(byName));
        byEdge = Collections.unmodifiableSortedMap(new TreeMap<>(byEdge));
        check("seam allowance", standard);
        byName.forEach((edge, width) -> check("allowance of '" + edge + "'", width));
        byEdge.forEach((edge, width) -> check("allowance of '" + edge + "'", width));
    }

    /**
     * Returns the same allowance for every edge.
     *
     * @throws PatternException if it is not 0 to 100 mm
     */
    public static Allowances of(String name, Length standard) {
        return new Allowances(name, standard, new TreeMap<>(), new TreeMap<>());
    }

    /**
     * Returns the allowances that makers of knits leave on this garment (common practice): 10 mm on seams; 6 mm on a
     * neckline, on whatever is sewn to it and on what is sewn to that; 25 mm on a hem that is turned up. A hem that is
     * sewn to a band is a seam.
     */
    public static Allowances industryKnit(Garment garment) {
        List<Set<EdgeRef>> seams =
                garment.seams().stream().map(Allowances::edges).toList();
        Set<EdgeRef> sewn = new TreeSet<>();
        seams.forEach(sewn::addAll);
        Set<EdgeRef> atNeckline = new TreeSet<>();
        sewn.stream().filter(each -> each.edge().equals(EdgeNames.NECKLINE)).forEach(atNeckline::add);
        boolean grown = true;
        while (grown) {
            grown = false;
            for (Set<EdgeRef> seam : seams) {
                grown |= seam.stream().anyMatch(atNeckline::contains) && atNeckline.addAll(seam);
            }
        }
        Allowances allowances = of("industry knit", KNIT_SEAM).with(EdgeNames.NECKLINE, KNIT_NECKLINE);
        for (EdgeRef edge : atNeckline) {
            allowances = allowances.with(edge, KNIT_NECKLINE);
        }
        for (Piece piece : garment.pieces()) {
            EdgeRef hem = EdgeRef.of(piece.name(), EdgeNames.HEM);
            if (piece.hasEdge(EdgeNames.HEM) && !sewn.contains(hem)) {
                allowances = allowances.with(hem, KNIT_HEM);
            }
        }
        return allowances;
    }

    /**
     * Returns the allowances with another width for every edge of a name.
     *
     * @throws PatternException if it is not 0 to 100 mm
     */
    public Allowances with(Name edge, Length width) {
        SortedMap<Name, Length> more = new TreeMap<>(byName);
        more.put(edge, width);
        return new Allowances(name, standard, more, byEdge);
    }

    /**
     * Returns the allowances with another width for one edge of one piece.
     *
     * @throws PatternException if it is not 0 to 100 mm
     */
    public Allowances with(EdgeRef edge, Length width) {
        SortedMap<EdgeRef, Length> more = new TreeMap<>(byEdge);
        more.put(edge, width);
        return new Allowances(name, standard, byName, more);
    }

    /** Returns the allowance of an edge of a piece: none on the fold. */
    public Length on(Piece piece, Name edge) {
        if (piece.cut() instanceof Cut.OnFold fold && fold.edge().equals(edge)) {
            return Length.ZERO;
        }
        Length own = byEdge.get(EdgeRef.of(piece.name(), edge));
        return own != null ? own : byName.getOrDefault(edge, standard);
    }

    private static Set<EdgeRef> edges(Seam seam) {
        Set<EdgeRef> edges = new TreeSet<>();
        seam.a().runs().forEach(run -> edges.add(run.edge()));
        seam.b().runs().forEach(run -> edges.add(run.edge()));
        return edges;
    }

    private static void check(String thing, Length width) {
        if (width.mm() < 0 || width.compareTo(MOST) > 0) {
            throw PatternException.of(thing, "must be 0 to " + MOST.text(), width.text(), "");
        }
    }
}
