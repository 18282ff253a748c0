package org.oaktag.geometry;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/** The edges, corners and parts of an outline when it is run the other way round. */
final class OffsetSense {
    private OffsetSense() {}

    static List<Path> reversed(List<Path> edges) {
        List<Path> back = new ArrayList<>(edges.size());
        for (Path edge : edges) {
            back.add(edge.reversed());
        }
        Collections.reverse(back);
        return back;
    }

    /** The corner after edge i is, backwards, the corner after edge n - 2 - i, and what arrived there now leaves. */
    static List<CornerStyle> reversedCorners(List<CornerStyle> corners) {
        int n = corners.size();
        List<CornerStyle> back = new ArrayList<>(n);
        for (int i = 0; i < n; i++) {
            CornerStyle style = corners.get(Math.floorMod(n - 2 - i, n));
            back.add(
                    style instanceof CornerStyle.SquaredTo squared
                            ? new CornerStyle.SquaredTo(!squared.second(), squared.limit())
                            : style);
        }
        return back;
    }

    /**
     * Of a run of n edges backwards, edge i is n - 1 - i, and the corner after it is the corner before that: after n -
     * 2 - i.
     */
    static List<OffsetPart> reversedParts(List<OffsetPart> parts, int n) {
        List<OffsetPart> back = new ArrayList<>(parts.size());
        for (OffsetPart part : parts) {
            int edge = Math.floorMod(n - (part.corner() ? 2 : 1) - part.edge(), n);
            back.add(new OffsetPart(part.path().reversed(), edge, part.corner()));
        }
        Collections.reverse(back);
        return back;
    }

    static Path joined(List<Path> paths) {
        return Path.of(paths.stream().flatMap(path -> path.curves().stream()).toList());
    }
}
