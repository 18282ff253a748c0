package org.oaktag.geometry;

import java.util.ArrayList;
import java.util.List;

/** Tells of the curves of a loop beside which edge, or at which corner, each lies. */
final class OutlineParts {
    private OutlineParts() {}

    /**
     * Returns the parts of a loop, in order.
     *
     * @param index where each edge of the run was among all of them
     */
    static List<OffsetPart> of(List<RawCurve> loop, List<Integer> index) {
        int count = loop.size();
        int first = 0;
        while (first < count && isSame(loop.get(first), loop.get((first + count - 1) % count))) {
            first++;
        }
        List<OffsetPart> parts = new ArrayList<>();
        List<Curve> curves = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            RawCurve raw = loop.get((first + i) % count);
            curves.add(raw.curve());
            if (i + 1 == count || !isSame(raw, loop.get((first + i + 1) % count))) {
                parts.add(new OffsetPart(Path.of(curves), index.get(raw.edge()), raw.corner()));
                curves.clear();
            }
        }
        return parts;
    }

    private static boolean isSame(RawCurve a, RawCurve b) {
        return a.edge() == b.edge() && a.corner() == b.corner();
    }
}
