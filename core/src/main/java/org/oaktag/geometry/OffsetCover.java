package org.oaktag.geometry;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * The parts of a path beside which the kept curves of its offset run.
 *
 * <p>A point of a parallel is square off the place that it comes from. Where two parallels cross there are two such places, so the ends of
 * a curve are looked for on either side of the place of its middle.
 *
 * @param length of the path, mm
 * @param parts from where to where along it, in order of where they begin
 */
record OffsetCover(double length, List<OffsetRuns.Stretch> parts) {
    OffsetCover {
        parts = List.copyOf(parts);
    }

    static OffsetCover of(Path path, List<RawCurve> kept) {
        List<OffsetRuns.Stretch> parts = new ArrayList<>();
        for (RawCurve raw : kept) {
            if (raw.source() == RawCurve.NONE) {
                continue;
            }
            Curve source = path.curves().get(raw.source());
            double middle = source.nearest(raw.curve().pointAt(0.5)).t();
            double before = source.sub(0, middle).nearest(raw.curve().start()).t() * middle;
            double after =
                    middle + source.sub(middle, 1).nearest(raw.curve().end()).t() * (1 - middle);
            parts.add(new OffsetRuns.Stretch(
                    path.distanceAt(new Path.Location(raw.source(), before)),
                    path.distanceAt(new Path.Location(raw.source(), Math.min(after, 1)))));
        }
        parts.sort(Comparator.comparingDouble(OffsetRuns.Stretch::from));
        return new OffsetCover(path.length(), parts);
    }

    /** Returns what is not covered and longer than the least length. */
    List<OffsetRuns.Stretch> gaps(double least) {
        List<OffsetRuns.Stretch> gaps = new ArrayList<>();
        double covered = 0;
        for (OffsetRuns.Stretch part : parts) {
            if (part.from() - covered > least) {
                gaps.add(new OffsetRuns.Stretch(covered, part.from()));
            }
            covered = Math.max(covered, part.to());
        }
        if (length - covered > least) {
            gaps.add(new OffsetRuns.Stretch(covered, length));
        }
        return gaps;
    }

    /** Tells whether nothing is covered that is longer than the least length. */
    boolean isNone(double least) {
        return parts.stream().noneMatch(part -> part.length() > least);
    }
}
