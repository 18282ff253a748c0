package org.oaktag.skirt;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.oaktag.PatternException;
import org.oaktag.garment.Cut;
import org.oaktag.garment.Dart;
import org.oaktag.garment.Edge;
import org.oaktag.garment.EdgeNames;
import org.oaktag.garment.End;
import org.oaktag.garment.FoldedDart;
import org.oaktag.garment.Garment;
import org.oaktag.garment.InnerLine;
import org.oaktag.garment.Name;
import org.oaktag.garment.Notch;
import org.oaktag.garment.Piece;
import org.oaktag.garment.SeamSide;
import org.oaktag.garment.TakenMeasure;
import org.oaktag.geometry.Path;
import org.oaktag.geometry.Point;
import org.oaktag.measure.Length;

/** The front or the back of a skirt as the steps that finish it find it. */
final class Shell {

    /** How far off the middle a centre may lie through rounding, mm. */
    private static final double STRAIGHT = 1e-6;

    /** A waist whose cloth is longer than this many times what is worn is gathered or pleated. */
    private static final double DRAWN_IN = 1.05;

    private Shell() {}

    /**
     * Returns a half that can be finished.
     *
     * @throws PatternException if it is not there or lacks waist, side or hem
     */
    static Piece of(Garment garment, Name half) {
        Optional<Piece> piece = garment.findPiece(half);
        for (Name edge : List.of(SkirtNames.WAIST, EdgeNames.SIDE, EdgeNames.HEM)) {
            if (piece.isEmpty() || !piece.get().hasEdge(edge)) {
                throw PatternException.of(
                        "finish of '" + garment.title() + "'",
                        "needs a front and a back with a waist, a side and a hem each",
                        piece.isEmpty() ? "no piece '" + half + "'" : "a " + half + " without a " + edge,
                        "finish a skirt of two halves, or sew those parts by steps of their own");
            }
        }
        return piece.get();
    }

    static boolean isPair(Piece half) {
        return half.cut() instanceof Cut.MirroredPair;
    }

    static boolean isButtoned(Garment garment) {
        return of(garment, SkirtNames.FRONT).hasEdge(SkirtFinishNames.STAND_TOP);
    }

    static boolean hasPocketInSide(Garment garment) {
        return garment.hasPiece(SkirtFinishNames.FRONT_BAG) || garment.hasPiece(SkirtFinishNames.SIDE_FRONT);
    }

    static boolean isFinishedAtWaist(Garment garment) {
        return garment.hasPiece(SkirtFinishNames.WAISTBAND)
                || garment.hasPiece(SkirtFinishNames.waistband(SkirtNames.FRONT))
                || garment.hasPiece(SkirtFinishNames.waistFacing(SkirtNames.FRONT));
    }

    /** Refuses a step that comes too late. */
    static void requireFree(Garment garment, String step, boolean taken, String by) {
        if (taken) {
            throw PatternException.of(step, "must come before what is fitted to the shell", by, "take this step first");
        }
    }

    /** Refuses a waist that is gathered or pleated: what is cut to its cloth would be longer than what is worn. */
    static void requireFlatWaist(Garment garment, String step) {
        double cloth = waistOfCloth(garment);
        Optional<Length> worn = garment.findMeasure(SkirtNames.WAIST_GIRTH).flatMap(TakenMeasure::length);
        if (worn.isPresent() && cloth > DRAWN_IN * worn.get().mm()) {
            throw PatternException.of(
                    step,
                    "needs a waist that is sewn as long as its cloth",
                    "a waist of " + worn.get().text() + ", gathered or pleated from "
                            + Length.mm(cloth).text(),
                    "gather it to a yoke, or set an elastic waistband");
        }
    }

    /** Returns the waist of a half from its centre to its side, its darts left out. */
    static SeamSide waist(Garment garment, Name half) {
        SeamSide own = SkirtBody.waist(of(garment, half));
        return half.equals(SkirtNames.FRONT) && garment.hasPiece(SkirtFinishNames.SIDE_FRONT)
                ? own.then(SeamSide.along(SkirtFinishNames.SIDE_FRONT, SkirtNames.WAIST))
                : own;
    }

    /** Returns how long the cloth of the waist is all round, its darts sewn, mm. */
    static double waistOfCloth(Garment garment) {
        return 2 * length(garment, halfRound(garment));
    }

    /** Returns a side of a seam followed from its other end. */
    static SeamSide reversed(SeamSide side) {
        List<SeamSide.Run> runs = new ArrayList<>();
        for (int i = side.runs().size() - 1; i >= 0; i--) {
            SeamSide.Run run = side.runs().get(i);
            runs.add(new SeamSide.Run(run.edge(), !run.backwards()));
        }
        return new SeamSide(runs);
    }

    /** Returns the waist of the shell from the centre of the front over the side to the centre of the back. */
    static SeamSide halfRound(Garment garment) {
        return waist(garment, SkirtNames.FRONT).then(reversed(waist(garment, SkirtNames.BACK)));
    }

    static double length(Garment garment, SeamSide side) {
        return side.runs().stream()
                .mapToDouble(run -> garment.edge(run.edge()).path().length())
                .sum();
    }

    /**
     * Returns a half as it was before zip, vent, button stand and pockets were cut into it: waist and darts, side, hem
     * and a straight centre.
     */
    static Piece plain(Garment garment, Name half) {
        Piece shell = of(garment, half);
        List<Edge> edges = new ArrayList<>();
        Edge next = shell.edge(SkirtNames.WAIST);
        while (!next.name().equals(EdgeNames.SIDE) && !next.name().equals(SkirtFinishNames.SLANT)) {
            edges.add(next);
            next = shell.after(next.name());
        }
        Path side = shell.path(EdgeNames.SIDE);
        double before = 0;
        if (next.name().equals(SkirtFinishNames.SLANT)) {
            Piece corner = garment.piece(SkirtFinishNames.SIDE_FRONT);
            Edge last = edges.remove(edges.size() - 1);
            edges.add(last.withPath(joined(last.path(), corner.path(SkirtNames.WAIST))));
            before = corner.path(EdgeNames.SIDE).length();
            side = joined(corner.path(EdgeNames.SIDE), side);
        }
        Map<Name, Double> from = new HashMap<>();
        from.put(EdgeNames.SIDE, before);
        if (shell.hasEdge(SkirtFinishNames.POCKET_OPENING)) {
            from.put(SkirtFinishNames.POCKET_OPENING, side.length());
            side = joined(side, shell.path(SkirtFinishNames.POCKET_OPENING));
            from.put(SkirtFinishNames.SIDE_BELOW, side.length());
            side = joined(side, shell.path(SkirtFinishNames.SIDE_BELOW));
        }
        Point top = edges.get(0).path().start();
        Path hem = shell.path(EdgeNames.HEM);
        edges.add(new Edge(EdgeNames.SIDE, side));
        edges.add(shell.edge(EdgeNames.HEM));
        edges.add(Edge.straight(EdgeNames.CENTRE, hem.end(), top));
        List<Notch> notches = new ArrayList<>();
        for (Notch notch : shell.notches()) {
            Double offset = from.get(notch.edge());
            if (offset != null && !notch.name().value().startsWith(SkirtFinishNames.POCKET.value())) {
                double along = offset + notch.fromStart(shell.path(notch.edge()).length());
                notches.add(new Notch(notch.name(), EdgeNames.SIDE, End.START, along, notch.count()));
            }
        }
        boolean pair = isPair(shell);
        return withFolds(Piece.of(
                        half, edges, shell.grainline(), pair ? Cut.pair() : Cut.onFold(EdgeNames.CENTRE), shell.cloth())
                .withAspectOf(shell)
                .withNotches(notches));
    }

    static Path joined(Path first, Path second) {
        return first.then(second.withEnds(first.end(), second.end()));
    }

    /** Returns a piece with the folds and peaks of its darts drawn, and no other lines of darts. */
    static Piece withFolds(Piece piece) {
        List<InnerLine> lines = new ArrayList<>();
        for (Dart dart : Dart.all(piece)) {
            FoldedDart folded = FoldedDart.of(piece, dart, End.START);
            lines.add(new InnerLine(FoldedDart.foldLine(dart.name()), InnerLine.Use.FOLD, folded.fold()));
            lines.add(new InnerLine(FoldedDart.peakLine(dart.name()), InnerLine.Use.PLACEMENT, folded.peak()));
        }
        List<Name> ofDarts = lines.stream().map(InnerLine::name).toList();
        piece.lines().stream().filter(line -> !ofDarts.contains(line.name())).forEach(lines::add);
        return piece.withLines(lines);
    }

    /** Returns a piece with an edge parted at some places of its own, its notches on the part on which they lie. */
    static Piece parted(Piece piece, Name edge, List<Name> names, List<Double> at) {
        Path whole = piece.path(edge);
        List<Edge> parts = new ArrayList<>();
        double from = 0;
        Path rest = whole;
        for (int i = 0; i < at.size(); i++) {
            Path.Split split = rest.splitAt(at.get(i) - from);
            parts.add(piece.edge(edge).withName(names.get(i)).withPath(split.before()));
            rest = split.after().withEnds(split.before().end(), whole.end());
            from = at.get(i);
        }
        parts.add(piece.edge(edge).withName(names.get(names.size() - 1)).withPath(rest));
        List<Edge> edges = new ArrayList<>();
        piece.edges().forEach(each -> edges.addAll(each.name().equals(edge) ? parts : List.of(each)));
        List<Notch> notches = new ArrayList<>();
        for (Notch notch : piece.notches()) {
            notches.add(notch.edge().equals(edge) ? onPart(notch, whole.length(), names, at) : notch);
        }
        return piece.withNotches(List.of()).withEdges(edges).withNotches(notches);
    }

    private static Notch onPart(Notch notch, double length, List<Name> names, List<Double> at) {
        double along = notch.fromStart(length);
        int part = 0;
        while (part < at.size() && along > at.get(part)) {
            part++;
        }
        double start = part == 0 ? 0 : at.get(part - 1);
        return new Notch(notch.name(), names.get(part), End.START, along - start, notch.count());
    }

    /** Refuses a half whose centre is not one straight line down. */
    static void requireStraightCentre(Piece half, String step) {
        Point top = half.corner(SkirtNames.WAIST, End.START);
        Point bottom = half.corner(EdgeNames.HEM, End.END);
        if (Math.abs(top.x() - bottom.x()) > STRAIGHT) {
            throw PatternException.of(
                    step,
                    "needs a centre that runs straight down on paper",
                    "a " + half.name() + " whose centre leans",
                    "take this step before the centre is moved");
        }
    }
}
