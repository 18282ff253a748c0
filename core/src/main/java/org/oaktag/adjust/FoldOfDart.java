package org.oaktag.adjust;

import java.util.List;
import org.oaktag.PatternException;
import org.oaktag.garment.End;
import org.oaktag.garment.InnerLine;
import org.oaktag.garment.Name;
import org.oaktag.garment.Piece;
import org.oaktag.geometry.Crossing;
import org.oaktag.geometry.Crossings;
import org.oaktag.geometry.Path;
import org.oaktag.geometry.Point;
import org.oaktag.geometry.Transform;
import org.oaktag.measure.Length;

/** The line at which the cloth of a dart is folded, and the peak that makes the folded cloth meet the edge. */
final class FoldOfDart {

    private FoldOfDart() {}

    static Name foldOf(Name dart) {
        return dart.with("fold");
    }

    static Name peakOf(Name dart) {
        return dart.with("peak");
    }

    static List<InnerLine> without(Piece piece, Name dart) {
        return piece.lines().stream()
                .filter(line ->
                        !line.name().equals(foldOf(dart)) && !line.name().equals(peakOf(dart)))
                .toList();
    }

    /**
     * Returns the peak, from one mouth of the dart over its fold to the other. With the cloth laid towards leg a, the
     * half next to leg a lies on the edge before the dart turned over along that leg, and the other half on that turned
     * over along the fold.
     *
     * @param towards the leg towards which the cloth is laid: a at the start, b at the end
     */
    static Path peak(Piece piece, Dart dart, End towards) {
        boolean toA = towards == End.START;
        Path edge = toA
                ? piece.before(Dart.legA(dart.name())).path().reversed()
                : piece.after(Dart.legB(dart.name())).path();
        Point mouth = toA ? dart.mouthA() : dart.mouthB();
        Path turned = edge.transformed(Transform.mirror(dart.apex(), mouth));
        List<Crossing> met = Crossings.ofLine(turned, dart.apex(), dart.fold());
        if (met.isEmpty() || met.get(0).second() <= 0) {
            throw PatternException.of(
                    "fold of dart '" + dart.name() + "' of piece '" + piece.name() + "'",
                    "needs an edge beside its mouth that reaches to the fold when it is turned over along the leg, about "
                            + dart.width().times(0.5).text(),
                    Length.mm(edge.length()).text(),
                    "lay the cloth towards the other leg, or make the dart narrower");
        }
        Path half = Fragment.pinned(
                turned.sub(0, met.get(0).first()), mouth, met.get(0).point());
        Path other = half.transformed(Transform.mirror(dart.apex(), dart.apex().plus(dart.fold())))
                .reversed();
        Path whole = half.then(Fragment.pinned(other, half.end(), toA ? dart.mouthB() : dart.mouthA()));
        return toA ? whole : whole.reversed();
    }
}
