package org.oaktag.garment;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.oaktag.PatternException;
import org.oaktag.geometry.CornerStyle;
import org.oaktag.geometry.Crossing;
import org.oaktag.geometry.Crossings;
import org.oaktag.geometry.Curve;
import org.oaktag.geometry.OffsetPart;
import org.oaktag.geometry.OutlineOffset;
import org.oaktag.geometry.Path;
import org.oaktag.geometry.PathNearest;
import org.oaktag.geometry.Point;
import org.oaktag.geometry.Vector;
import org.oaktag.measure.Length;

/**
 * What a cut line runs beside: the edges of the seam line, each at its allowance; in the place of an edge that is
 * folded back, its turning.
 *
 * @param stretches in order, closed
 * @param darts the darts that are folded, over whose peaks it runs
 */
record CutBorder(List<Stretch> stretches, List<FoldedDart> darts) {

    /** A tip further from its corner than three times the allowance is cut off. */
    private static final double LIMIT = 3;

    /** The cosine of the turn, 75 degrees, at which two edges are no longer folded back as one. */
    private static final double SHARP = Math.cos(Math.toRadians(75));

    /** A part shorter than this, mm, is rounding. */
    private static final double NOTHING = 1e-6;

    /** Into so many steps each curve is divided to see whether it lies beside its stretch. */
    private static final int PLACES = 8;

    /** An allowance that lies on a piece when it is pressed ends where that is cut, however slanting. */
    private static final double PRESSED_LIMIT = 20;

    /**
     * A part of the border.
     *
     * @param edge the edge of the piece to which it belongs
     * @param path where it runs
     * @param width how far the cut line lies outside it, in millimetres
     * @param kind what it is
     * @param after how its corner with the next is cut
     * @param limit where the cut line is cut off short of it, if it lies beyond a turning
     */
    record Stretch(Name edge, Path path, double width, Kind kind, CornerStyle after, Optional<Path> limit) {
        Stretch(Name edge, Path path, double width, Kind kind, CornerStyle after) {
            this(edge, path, width, kind, after, Optional.empty());
        }

        boolean isCutBeside() {
            return kind == Kind.EDGE && width > 0;
        }
    }

    enum Kind {
        EDGE,
        FOLD,
        TURNING
    }

    static CutBorder of(Piece piece, Allowances allowances) {
        List<FoldedDart> darts = FoldedDart.all(piece, allowances);
        Map<Name, FoldedDart> byLeg = new HashMap<>();
        darts.forEach(each -> byLeg.put(Dart.legA(each.dart().name()), each));
        List<Stretch> stretches = new ArrayList<>();
        for (Edge edge : piece.edges()) {
            Allowance allowance = allowances.of(piece, edge.name());
            FoldedDart folded = byLeg.get(edge.name());
            if (folded != null) {
                Edge host = folded.host(piece);
                stretches.add(new Stretch(
                        host.name(),
                        folded.peak(),
                        allowances.on(piece, host.name()).mm(),
                        Kind.EDGE,
                        CornerStyle.mitre(LIMIT)));
            } else if (allowance.isMirrored()) {
                if (!runsOn(piece, piece.before(edge.name()), edge, allowances)) {
                    stretches.addAll(turning(piece, run(piece, edge, allowances), allowances));
                }
            } else if (!isLegB(edge.name(), darts)) {
                Name next = piece.after(edge.name()).name();
                stretches.add(new Stretch(
                        edge.name(),
                        edge.path(),
                        allowance.width().mm(),
                        piece.isOnFold(edge.name()) ? Kind.FOLD : Kind.EDGE,
                        byLeg.containsKey(next)
                                ? CornerStyle.mitre(LIMIT)
                                : corner(allowance, allowances.of(piece, next))));
            }
        }
        return new CutBorder(List.copyOf(stretches), darts);
    }

    private static boolean isLegB(Name edge, List<FoldedDart> folded) {
        return folded.stream().anyMatch(each -> Dart.legB(each.dart().name()).equals(edge));
    }

    /** Returns the border with all widths taken in the same share; turnings stay as deep as they are. */
    private CutBorder narrowed(double share) {
        return new CutBorder(
                stretches.stream()
                        .map(each -> new Stretch(
                                each.edge(),
                                each.path(),
                                each.width() * share,
                                each.kind(),
                                each.after(),
                                each.limit()))
                        .toList(),
                darts);
    }

    /** Returns the cut line. */
    List<OffsetPart> parts() {
        List<OffsetPart> parts = OutlineOffset.outward(
                        stretches.stream().map(Stretch::path).toList(),
                        stretches.stream().mapToDouble(Stretch::width).toArray(),
                        CornerStyle.mitre(LIMIT),
                        stretches.stream().map(Stretch::after).toList(),
                        CutLine.TOLERANCE)
                .parts();
        for (int i = 0; i < stretches.size(); i++) {
            if (stretches.get(i).limit().isPresent()) {
                parts = cutOff(parts, i);
            }
        }
        return parts;
    }

    /** Replaces what lies beyond a limit, on either side of the part beside the stretch, by the limit itself. */
    private List<OffsetPart> cutOff(List<OffsetPart> parts, int beyond) {
        Stretch stretch = stretches.get(beyond);
        Path limit = stretch.limit().orElseThrow();
        int first = 0;
        while (parts.get(first).edge() != beyond || parts.get(first).corner()) {
            first++;
        }
        List<OffsetPart> run = new ArrayList<>();
        for (int i = 1; i < parts.size(); i++) {
            run.add(parts.get((first + i) % parts.size()));
        }
        List<Crossing> met = List.of();
        while (met.isEmpty()) {
            met = Crossings.between(run.get(0).path(), limit);
            if (met.isEmpty()) {
                run.remove(0);
            }
        }
        Crossing start = met.get(met.size() - 1);
        met = List.of();
        while (met.isEmpty()) {
            met = Crossings.between(run.get(run.size() - 1).path(), limit);
            if (met.isEmpty()) {
                run.remove(run.size() - 1);
            }
        }
        Crossing end = met.get(0);
        if (start.second() - end.second() < NOTHING) {
            throw PatternException.of(
                    "allowance of '" + stretch.edge() + "'",
                    "cannot be folded back at so sharp a corner",
                    "mirrored sides that do not meet its edge",
                    "mitre it");
        }
        trim(run, 0, start.first(), run.get(0).path().length());
        trim(run, run.size() - 1, 0, end.first());
        Point from = run.get(run.size() - 1).path().end();
        Point to = run.get(0).path().start();
        Path hem = Turning.between(limit.sub(end.second(), start.second()), from, to);
        run.add(new OffsetPart(hem, beyond, false));
        return run;
    }

    /** Leaves only a stretch of one part, or none of it where nothing would be left to draw. */
    private static void trim(List<OffsetPart> run, int part, double from, double to) {
        if (to - from > NOTHING) {
            run.set(part, run.get(part).along(run.get(part).path().sub(from, to)));
        } else {
            run.remove(part);
        }
    }

    /**
     * What has an allowance and is not cut.
     *
     * @param edge the edge
     * @param why what is in the way
     */
    record Uncut(Name edge, String why) {}

    /** Tells whether everything is cut with all widths taken in the same share. */
    boolean isCutAt(double share) {
        CutBorder narrower = narrowed(share);
        try {
            return narrower.uncut(narrower.parts()).isEmpty();
        } catch (PatternException none) {
            return false;
        }
    }

    /**
     * Returns the first edge with an allowance beside which the cut line does not run, all along or where it is hollow.
     */
    Optional<Uncut> uncut(List<OffsetPart> parts) {
        boolean[] seen = new boolean[stretches.size()];
        for (OffsetPart part : parts) {
            seen[part.edge()] = seen[part.edge()] || isBeside(part);
        }
        for (int i = 0; i < seen.length; i++) {
            if (!seen[i] && stretches.get(i).isCutBeside()) {
                return Optional.of(new Uncut(
                        stretches.get(i).edge(), "the allowances of the edges beside it meet in front of it"));
            }
        }
        return Hollow.first(stretches, parts)
                .map(hollow -> new Uncut(
                        hollow.edge(),
                        String.format(
                                Locale.ROOT,
                                "the allowances meet in front of its hollow from %.1f to %.1f mm along it",
                                hollow.from(),
                                hollow.to())));
    }

    /**
     * Tells whether a part lies square off some place of its stretch at the stretch's own width, and does not merely
     * prolong what does.
     */
    private boolean isBeside(OffsetPart part) {
        Stretch stretch = stretches.get(part.edge());
        if (part.corner() || !stretch.isCutBeside()) {
            return false;
        }
        for (Curve curve : part.path().curves()) {
            for (int k = 0; k <= PLACES; k++) {
                PathNearest foot = stretch.path().nearest(curve.pointAt((double) k / PLACES));
                if (foot.distanceAlong() > NOTHING
                        && foot.distanceAlong() < stretch.path().length() - NOTHING
                        && foot.distance() <= stretch.width() + 2 * CutLine.TOLERANCE) {
                    return true;
                }
            }
        }
        return false;
    }

    boolean isFold(OffsetPart part) {
        return !part.corner() && stretches.get(part.edge()).kind() == Kind.FOLD;
    }

    private static CornerStyle corner(Allowance arriving, Allowance leaving) {
        if (arriving.isSquared()) {
            return CornerStyle.squaredToFirst(LIMIT);
        }
        if (leaving.isSquared()) {
            return CornerStyle.squaredToSecond(LIMIT);
        }
        boolean mitred = arriving.ends() == Allowance.Ends.MITRED && leaving.ends() == Allowance.Ends.MITRED;
        return CornerStyle.mitre(mitred ? LIMIT : PRESSED_LIMIT);
    }

    /** Tells whether both edges are folded back as one: as deep, and with no sharp corner between them. */
    private static boolean runsOn(Piece piece, Edge edge, Edge next, Allowances allowances) {
        Allowance first = allowances.of(piece, edge.name());
        Vector arriving = edge.path().endDirection();
        return first.isMirrored()
                && first.equals(allowances.of(piece, next.name()))
                && arriving.dot(next.path().startDirection()) > SHARP;
    }

    /** Returns an edge that is folded back with all that run on from it, by the name of the first. */
    private static List<Edge> run(Piece piece, Edge first, Allowances allowances) {
        List<Edge> run = new ArrayList<>(List.of(first));
        Edge next = piece.after(first.name());
        while (runsOn(piece, run.get(run.size() - 1), next, allowances)) {
            run.add(next);
            next = piece.after(next.name());
        }
        return run;
    }

    private static List<Stretch> turning(Piece piece, List<Edge> run, Allowances allowances) {
        Edge hem = run.get(0)
                .withPath(Path.of(run.stream()
                        .flatMap(edge -> edge.path().curves().stream())
                        .toList()));
        Edge before = piece.before(hem.name());
        Edge after = piece.after(run.get(run.size() - 1).name());
        for (Edge neighbour : List.of(before, after)) {
            if (allowances.of(piece, neighbour.name()).isMirrored()) {
                throw PatternException.of(
                        "allowance of '" + EdgeRef.of(piece.name(), hem.name()) + "'",
                        "cannot be folded back where it meets another that is",
                        "'" + neighbour.name() + "' folded back too",
                        "mitre one of the two");
            }
        }
        Length depth = allowances.on(piece, hem.name());
        Length beside = Stream.of(before, after)
                .map(neighbour -> allowances.on(piece, neighbour.name()))
                .max(Length::compareTo)
                .orElseThrow();
        Turning turning = Turning.of(
                EdgeRef.of(piece.name(), hem.name()),
                hem.path(),
                depth.mm(),
                beside.mm(),
                side(piece, before.name(), before.path().reversed()),
                side(piece, after.name(), after.path()));
        CornerStyle mitre = CornerStyle.mitre(LIMIT);
        return List.of(
                side(piece, before.name(), hem, turning.first(), allowances),
                new Stretch(
                        hem.name(),
                        turning.beyond(),
                        Math.max(beside.mm(), 1),
                        Kind.TURNING,
                        mitre,
                        Optional.of(turning.parallel())),
                side(piece, after.name(), hem, turning.last(), allowances));
    }

    private static Turning.Side side(Piece piece, Name edge, Path awayFromHem) {
        return new Turning.Side(awayFromHem, piece.isOnFold(edge));
    }

    private static Stretch side(Piece piece, Name neighbour, Edge hem, Path path, Allowances allowances) {
        boolean fold = piece.isOnFold(neighbour);
        return new Stretch(
                fold ? neighbour : hem.name(),
                path,
                allowances.on(piece, neighbour).mm(),
                fold ? Kind.FOLD : Kind.TURNING,
                CornerStyle.mitre(PRESSED_LIMIT));
    }
}
