package org.oaktag.lay;

import java.util.ArrayList;
import java.util.List;
import org.oaktag.garment.Cut;
import org.oaktag.garment.CutLine;
import org.oaktag.garment.Piece;
import org.oaktag.geometry.Cubic;
import org.oaktag.geometry.Curve;
import org.oaktag.geometry.Line;
import org.oaktag.geometry.Outline;
import org.oaktag.geometry.Path;
import org.oaktag.geometry.Point;
import org.oaktag.geometry.Transform;

/** The whole cut line of a piece that is drawn as its half: the half and its mirror image in the fold. */
final class OpenedOut {

    private OpenedOut() {}

    static Outline of(Piece piece, Cut.OnFold fold, CutLine cut) {
        Path line = piece.path(fold.edge());
        Transform mirror = Transform.mirror(line.start(), line.end());
        List<Curve> curves = new ArrayList<>();
        Path half = run(cut);
        curves.addAll(half.curves());
        curves.addAll(half.transformed(mirror).reversed().curves());
        // The ends lie on the fold but for rounding, and an outline closes exactly.
        int middle = half.curves().size();
        curves.set(
                middle,
                between(curves.get(middle), half.end(), curves.get(middle).end()));
        int last = curves.size() - 1;
        curves.set(last, between(curves.get(last), curves.get(last).start(), half.start()));
        return Outline.of(Path.of(curves));
    }

    private static Path run(CutLine cut) {
        if (cut.runs().size() != 1) {
            throw new IllegalStateException("a cut line with one fold must be one run from fold to fold, got "
                    + cut.runs().size());
        }
        return cut.runs().get(0);
    }

    private static Curve between(Curve curve, Point start, Point end) {
        return curve instanceof Cubic cubic
                ? Cubic.of(start, cubic.control1(), cubic.control2(), end)
                : new Line(start, end);
    }
}
