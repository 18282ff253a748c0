package org.oaktag.skirt;

import java.util.ArrayList;
import java.util.List;
import org.oaktag.PatternException;
import org.oaktag.draft.DartedEdge;
import org.oaktag.draft.DartedEdge.Wedge;
import org.oaktag.draft.RootFinder;
import org.oaktag.garment.Cut;
import org.oaktag.garment.Dart;
import org.oaktag.garment.Edge;
import org.oaktag.garment.EdgeNames;
import org.oaktag.garment.End;
import org.oaktag.garment.Grainline;
import org.oaktag.garment.Notch;
import org.oaktag.garment.Note;
import org.oaktag.garment.Piece;
import org.oaktag.garment.Seam;
import org.oaktag.garment.SeamSide;
import org.oaktag.geometry.Arcs;
import org.oaktag.geometry.Cubic;
import org.oaktag.geometry.Path;
import org.oaktag.geometry.Point;
import org.oaktag.geometry.Vector;
import org.oaktag.measure.Angle;
import org.oaktag.measure.Length;

/**
 * A half with its yoke cut off.
 *
 * @param yoke the yoke
 * @param lower what hangs from it
 * @param notes the arithmetic, and what became of the darts
 */
record YokedHalf(Piece yoke, Piece lower, List<Note> notes) {

    private static final Vector RIGHT = Vector.of(1, 0);
    private static final Vector DOWN = Vector.of(0, 1);

    /** What is left of a dart below the line is sewn if it is as wide and as deep as this, mm. */
    private static final double LEAST_WIDTH = 8;

    private static final double LEAST_DEPTH = 25;

    /** How far along its direction the top of a side that is taken in is looked for, mm. */
    private static final double REACH = 30;

    private static final double NOTHING = 1e-9;

    /** What of a dart lies below the line; {@code middle} is how far it lies off the centre there, mm. */
    private record Rest(Dart dart, double width, double depth, double middle) {

        static Rest of(Dart dart, double line) {
            Point mouth = dart.mouthA().midpoint(dart.mouthB());
            double deep = mouth.distanceTo(dart.apex());
            double share = Math.min(line / deep, 1);
            return new Rest(
                    dart,
                    dart.width().mm() * (1 - share),
                    deep * (1 - share),
                    mouth.lerp(dart.apex(), share).x());
        }

        boolean isKept() {
            return width >= LEAST_WIDTH && depth >= LEAST_DEPTH;
        }
    }

    static YokedHalf of(Piece half, double depth) {
        List<Rest> rests =
                Dart.all(half).stream().map(dart -> Rest.of(dart, depth)).toList();
        List<Rest> kept = rests.stream().filter(Rest::isKept).toList();
        double atSide = rests.stream()
                .filter(rest -> !rest.isKept())
                .mapToDouble(Rest::width)
                .sum();
        Path side = side(half, depth, atSide);
        Point top = half.corner(EdgeNames.CENTRE, End.END).plus(DOWN.times(depth));
        double out = side.start().x();
        double rise = side.startDirection().angleTo(DOWN);
        DartedEdge line = new SewnEdge((end, turn) -> sewn(top, end, turn), length -> wedges(kept, length, out))
                .opened(SkirtShapeNames.YOKE_LINE, side.start(), rise);
        Piece lower = lower(half, depth, line, side);
        double sewn = SkirtBody.sewn(lower, SkirtShapeNames.YOKE_LINE);
        double waist = SkirtBody.sewnWaist(half);
        LevelArc upper = new LevelArc(half.corner(EdgeNames.CENTRE, End.END), waist, (sewn - waist) / depth);
        return new YokedHalf(yoke(half, upper, depth), lower, notes(half, rests, upper, depth, sewn));
    }

    /** The darts on an edge of a length, at the places that they have on one whose end lies so far out. */
    private static List<Wedge> wedges(List<Rest> kept, double length, double out) {
        double all = kept.stream().mapToDouble(Rest::width).sum();
        List<Wedge> wedges = new ArrayList<>();
        double before = 0;
        for (Rest rest : kept) {
            double along = length * (rest.middle() - before - rest.width() / 2) / (out - all);
            wedges.add(new Wedge(rest.dart().name(), along, Length.mm(rest.width()), Length.mm(rest.depth())));
            before += rest.width();
        }
        return wedges;
    }

    /** The side below the line, taken in at its top, and as long as it was. */
    private static Path side(Piece half, double depth, double in) {
        SideLine whole = SkirtBody.side(half);
        Path below = whole.path().sub(depth, whole.path().length());
        if (in < NOTHING) {
            return below;
        }
        double toHip = whole.hip() - depth;
        Path fromHip = whole.path().sub(whole.hip(), whole.path().length());
        Vector direction = below.startDirection();
        Vector leaning = direction.rotated(-2 * in / toHip);
        Point top = below.start().plus(direction.rightNormal().times(in));
        double shift = RootFinder.solve(
                        by -> over(top.plus(direction.times(by)), leaning, fromHip)
                                        .length()
                                - toHip,
                        -REACH,
                        REACH)
                .orElseThrow(() -> PatternException.of(
                        "side of the " + half.name() + " below its yoke",
                        "must take in what is left of the darts",
                        Length.mm(in).text(),
                        "cut the yoke deeper, or close the darts first"));
        return over(top.plus(direction.times(shift)), leaning, fromHip).then(fromHip);
    }

    private static Path over(Point top, Vector leaving, Path fromHip) {
        double handle = top.distanceTo(fromHip.start()) / 3;
        return Path.of(Cubic.hermite(
                top,
                leaving.times(handle),
                fromHip.start(),
                fromHip.startDirection().times(handle)));
    }

    private static Piece lower(Piece half, double depth, DartedEdge line, Path side) {
        List<Edge> edges = new ArrayList<>(line.edges());
        Path hem = half.path(EdgeNames.HEM);
        edges.add(new Edge(EdgeNames.SIDE, side.withEnds(line.end(), hem.start())));
        edges.add(half.edge(EdgeNames.HEM));
        edges.add(Edge.straight(
                EdgeNames.CENTRE, hem.end(), line.edges().get(0).path().start()));
        List<Notch> notches = new ArrayList<>();
        double was = half.path(EdgeNames.SIDE).length();
        for (Notch notch : half.notches()) {
            boolean onSide = notch.edge().equals(EdgeNames.SIDE);
            double along = onSide ? notch.fromStart(was) - depth : 0;
            if (onSide && along > 0) {
                notches.add(new Notch(notch.name(), notch.edge(), End.START, along, notch.count()));
            } else if (notch.edge().equals(EdgeNames.HEM)) {
                notches.add(notch);
            }
        }
        double level = line.edges().get(0).path().start().y();
        Grainline grain = new Grainline(
                Point.of(
                        half.grainline().top().x(),
                        Math.max(half.grainline().top().y(), level + depth)),
                half.grainline().bottom());
        Piece bare = Piece.of(half.name(), edges, grain, half.cut(), half.cloth())
                .withAspectOf(half)
                .withNotches(notches);
        return Shell.withFolds(bare);
    }

    /** Level and then one arc, as a hem is; where none meets both ends, one curve. */
    private static Path sewn(Point from, Point end, double rise) {
        HalfHem arc = new HalfHem(end, DOWN.rotated(-rise), from, DOWN.negated());
        if (arc.isFair()) {
            return arc.drawn().reversed();
        }
        double handle = Arcs.handle(from.distanceTo(end), rise);
        return Path.of(Cubic.hermite(
                from, RIGHT.times(handle), end, RIGHT.rotated(-rise).times(handle)));
    }

    private static Piece yoke(Piece half, LevelArc upper, double depth) {
        Path waist = upper.path();
        Path lower = upper.below(depth).path().reversed();
        double x = waist.end().x() / 2;
        return Piece.of(
                        SkirtShapeNames.yoke(half.name()),
                        List.of(
                                new Edge(SkirtNames.WAIST, waist),
                                Edge.straight(EdgeNames.SIDE, waist.end(), lower.start()),
                                new Edge(SkirtShapeNames.YOKE_LINE, lower),
                                Edge.straight(EdgeNames.CENTRE, lower.end(), waist.start())),
                        new Grainline(Point.of(x, 0.25 * depth), Point.of(x, 0.7 * depth)),
                        Cut.onFold(EdgeNames.CENTRE),
                        half.cloth())
                .withAspectOf(half);
    }

    private static List<Note> notes(Piece half, List<Rest> rests, LevelArc upper, double depth, double sewn) {
        List<Note> notes = new ArrayList<>();
        notes.add(Note.rule(
                "the " + half.name() + " yoke turns by (" + Length.mm(sewn).text() + " below - "
                        + Length.mm(upper.length()).text() + " at the waist) / "
                        + Length.mm(depth).text() + " = "
                        + Angle.radians(upper.turn()).text()));
        for (Rest rest : rests) {
            String name = "the " + rest.dart().name();
            if (rest.isKept()) {
                notes.add(Note.done("what is left of " + name + " below the yoke, "
                        + Length.mm(rest.width()).text() + " wide and "
                        + Length.mm(rest.depth()).text() + " deep, stays a dart"));
            } else if (rest.width() > NOTHING) {
                notes.add(Note.done("what is left of " + name + " below the yoke, "
                        + Length.mm(rest.width()).text() + " wide, is taken in at the side"));
            } else {
                notes.add(Note.done(name + " ends above the yoke line and is closed in the yoke"));
            }
        }
        return notes;
    }

    /** Returns the seam of the yoke and those of the darts below it. */
    List<Seam> seams() {
        List<Seam> seams = new ArrayList<>();
        for (Dart dart : Dart.all(lower)) {
            seams.add(Seam.flat(
                    dart.name(),
                    SeamSide.along(lower.name(), Dart.legA(dart.name())),
                    SeamSide.against(lower.name(), Dart.legB(dart.name())),
                    "open the dart anew"));
        }
        List<SeamSide> runs = new ArrayList<>();
        for (Edge edge : lower.edges()) {
            if (Dart.whole(edge.name()).equals(SkirtShapeNames.YOKE_LINE)) {
                runs.add(SeamSide.along(lower.name(), edge.name()));
            }
        }
        seams.add(Seam.flat(
                        SkirtShapeNames.yokeSeam(lower.name()),
                        SeamSide.against(yoke.name(), SkirtShapeNames.YOKE_LINE),
                        runs.stream().reduce(SeamSide::then).orElseThrow(),
                        "cut the yoke again")
                .smooth());
        return seams;
    }
}
