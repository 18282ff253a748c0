package org.oaktag.blocks;

import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.oaktag.garment.Allowance;
import org.oaktag.garment.Allowances;
import org.oaktag.garment.EdgeRef;
import org.oaktag.garment.Garment;
import org.oaktag.garment.Piece;
import org.oaktag.garment.Seam;
import org.oaktag.measure.Length;

/** The allowances of a top of knit: necklines are narrow, so that they lie flat. */
final class KnitAllowances {

    // Common practice in the making of knits; hems are 20 to 30 mm.
    private static final Length SEAM = Length.mm(10);
    private static final Length NECKLINE = Length.mm(6);
    private static final Length TURNED_BACK = Length.mm(25);
    private static final Length NECKLINE_TURNED_BACK = Length.mm(10);

    private KnitAllowances() {}

    static Allowances of(Garment garment) {
        List<List<EdgeRef>> seams = garment.seams().stream().map(Seam::edges).toList();
        Set<EdgeRef> sewn = seams.stream().flatMap(List::stream).collect(Collectors.toCollection(TreeSet::new));
        Allowances allowances = Allowances.of("industry knit", SEAM).with(TopEdges.NECKLINE, NECKLINE);
        for (EdgeRef edge : atNeckline(seams, sewn)) {
            allowances = allowances.with(edge, NECKLINE);
        }
        for (Piece piece : garment.pieces()) {
            for (EdgeRef edge : new RunningOn(piece, sewn).from(TopEdges.NECKLINE)) {
                allowances = allowances.with(edge, NECKLINE);
            }
        }
        allowances = allowances.finished(garment, TURNED_BACK);
        for (EdgeRef edge : garment.turnedBack()) {
            if (edge.edge().equals(TopEdges.NECKLINE)) {
                allowances = allowances.with(edge, Allowance.foldedBack(NECKLINE_TURNED_BACK));
            }
        }
        return allowances;
    }

    /** The necklines that are sewn, what is sewn to them and what is sewn to that. */
    private static Set<EdgeRef> atNeckline(List<List<EdgeRef>> seams, Set<EdgeRef> sewn) {
        Set<EdgeRef> found = sewn.stream()
                .filter(each -> each.edge().equals(TopEdges.NECKLINE))
                .collect(Collectors.toCollection(TreeSet::new));
        boolean grown = true;
        while (grown) {
            grown = false;
            for (List<EdgeRef> seam : seams) {
                grown |= seam.stream().anyMatch(found::contains) && found.addAll(seam);
            }
        }
        return found;
    }
}
