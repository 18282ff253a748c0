package org.oaktag.skirt;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import org.oaktag.PatternException;
import org.oaktag.garment.Dart;
import org.oaktag.garment.Dimension;
import org.oaktag.garment.Edge;
import org.oaktag.garment.EdgeNames;
import org.oaktag.garment.EdgeRef;
import org.oaktag.garment.FinishedMeasure;
import org.oaktag.garment.FinishedMeasure.Term;
import org.oaktag.garment.FoldedDart;
import org.oaktag.garment.Garment;
import org.oaktag.garment.InnerLine;
import org.oaktag.garment.Mark;
import org.oaktag.garment.Name;
import org.oaktag.garment.Notch;
import org.oaktag.garment.Note;
import org.oaktag.garment.Piece;
import org.oaktag.garment.Quantity;
import org.oaktag.garment.Seam;
import org.oaktag.garment.SeamSide;
import org.oaktag.geometry.Crossing;
import org.oaktag.geometry.Crossings;
import org.oaktag.geometry.Path;
import org.oaktag.geometry.Point;
import org.oaktag.geometry.Transform;
import org.oaktag.geometry.Vector;
import org.oaktag.measure.Angle;
import org.oaktag.measure.Length;

/**
 * A half cut from the apexes of its darts to the hem and turned about them, its hem straight across until it is drawn.
 *
 * @param before the half as it was
 * @param piece the half after
 * @param cuts where it was cut, from the centre
 * @param share how much of each dart was closed
 */
record ClosedDarts(Piece before, Piece piece, List<CutDown> cuts, double share) {

    /**
     * A cut from a dart to the hem.
     *
     * @param dart the dart
     * @param foot where it meets the hem
     * @param angle by how much what lies beyond is turned, radians
     */
    record CutDown(Dart dart, Point foot, double angle) {

        double length() {
            return dart.apex().distanceTo(foot);
        }

        /** Returns how far the hem opens, straight across, mm. */
        double opening() {
            return 2 * length() * Math.sin(angle / 2);
        }

        Transform turn() {
            return Transform.rotation(-angle, dart.apex());
        }

        /** Tells whether a point lies beyond the cut, and beyond the dart above it. */
        private boolean isBefore(Point point) {
            Vector down = foot.minus(dart.apex()).unit();
            Vector to = point.minus(dart.apex());
            Vector along = to.dot(down) >= 0
                    ? down
                    : dart.apex().minus(dart.mouthA().midpoint(dart.mouthB())).unit();
            return to.cross(along) > 0;
        }
    }

    static ClosedDarts of(Piece half, double share) {
        List<CutDown> cuts = new ArrayList<>();
        Path centre = half.path(EdgeNames.CENTRE);
        Vector down = centre.startDirection().negated();
        for (Dart dart : Dart.all(half)) {
            Point foot = Crossings.ofLine(half.path(EdgeNames.HEM), dart.apex(), down).stream()
                    .map(Crossing::point)
                    .filter(point -> point.minus(dart.apex()).dot(down) > 0)
                    .findFirst()
                    .orElseThrow(() -> PatternException.of(
                            "dart '" + dart.name() + "'",
                            "must lie above the hem, to which the half is cut down from it",
                            "no hem below it",
                            "move the dart towards the centre"));
            cuts.add(new CutDown(dart, foot, share * dart.angle().radians()));
        }
        return cuts.isEmpty()
                ? new ClosedDarts(half, half, cuts, share)
                : new ClosedDarts(half, turned(half, cuts, share), cuts, share);
    }

    /** Returns the motion of the part beyond so many darts: it turns about the last first. */
    private static Transform motion(List<CutDown> cuts, int beyond) {
        Transform motion = Transform.IDENTITY;
        for (int i = beyond - 1; i >= 0; i--) {
            motion = motion.then(cuts.get(i).turn());
        }
        return motion;
    }

    private static int beyond(List<CutDown> cuts, Point point) {
        return (int) cuts.stream().filter(cut -> cut.isBefore(point)).count();
    }

    private static Piece turned(Piece half, List<CutDown> cuts, double share) {
        List<Edge> edges = new ArrayList<>();
        int beyond = 0;
        for (Edge edge : half.edges()) {
            boolean legB = beyond < cuts.size()
                    && edge.name().equals(Dart.legB(cuts.get(beyond).dart().name()));
            if (edge.name().equals(EdgeNames.HEM)) {
                Point corner = edges.get(edges.size() - 1).path().end();
                edges.add(edge.withPath(Path.polyline(corner, edge.path().end())));
                beyond = 0;
                continue;
            }
            beyond += legB ? 1 : 0;
            Path path = edge.path().transformed(motion(cuts, beyond));
            append(edges, edge.withPath(path), cuts, share);
        }
        Piece bare = half.remade(edges, List.of(), List.of(), List.of(), half.grainline(), half.cut());
        return marked(half, bare, cuts);
    }

    private static void append(List<Edge> edges, Edge edge, List<CutDown> cuts, double share) {
        Name name = edge.name();
        Path path = edge.path();
        boolean closes = share == 1;
        for (CutDown cut : cuts) {
            Name dart = cut.dart().name();
            if (closes && (name.equals(Dart.legA(dart)) || name.equals(Dart.legB(dart)))) {
                return;
            }
        }
        if (edges.isEmpty()) {
            edges.add(edge);
            return;
        }
        Edge last = edges.get(edges.size() - 1);
        Path joined =
                name.equals(EdgeNames.CENTRE) ? path : path.withEnds(last.path().end(), path.end());
        if (closes && !Dart.whole(name).equals(name) && Dart.whole(name).equals(Dart.whole(last.name()))) {
            edges.set(edges.size() - 1, last.withPath(last.path().then(joined)));
        } else {
            edges.add(edge.withPath(joined));
        }
    }

    private static Piece marked(Piece half, Piece turned, List<CutDown> cuts) {
        Set<Name> dartLines = new LinkedHashSet<>();
        for (CutDown cut : cuts) {
            dartLines.add(FoldedDart.foldLine(cut.dart().name()));
            dartLines.add(FoldedDart.peakLine(cut.dart().name()));
        }
        List<InnerLine> lines = new ArrayList<>();
        boolean folded = false;
        for (InnerLine line : half.lines()) {
            if (dartLines.contains(line.name())) {
                folded = true;
            } else {
                Path path = line.path();
                Transform motion = motion(cuts, beyond(cuts, path.pointAt(path.length() / 2)));
                lines.add(new InnerLine(line.name(), line.use(), path.transformed(motion)));
            }
        }
        List<Mark> marks = half.marks().stream()
                .map(mark -> mark.at(motion(cuts, beyond(cuts, mark.point())).apply(mark.point())))
                .toList();
        List<Notch> notches = half.notches().stream()
                .filter(notch -> turned.hasEdge(notch.edge()))
                .toList();
        Piece marked = turned.withLines(lines).withMarks(marks).withNotches(notches);
        return folded ? Shell.withFolds(marked) : marked;
    }

    /** Returns the garment with this half, without the seams of darts that are closed and the edges that are gone. */
    Garment on(Garment garment) {
        List<Seam> seams = new ArrayList<>();
        for (Seam seam : garment.seams()) {
            List<SeamSide.Run> a = left(seam.a());
            List<SeamSide.Run> b = left(seam.b());
            if (!a.isEmpty() && !b.isEmpty()) {
                seams.add(new Seam(
                        seam.name(), new SeamSide(a), new SeamSide(b), seam.rule(), seam.smoothAt(), seam.refit()));
            }
        }
        List<FinishedMeasure> measures = new ArrayList<>();
        for (FinishedMeasure measure : garment.measures()) {
            List<Term> terms = measure.terms().stream()
                    .filter(term -> !(term.quantity() instanceof Quantity.EdgeLength length) || isThere(length.edge()))
                    .toList();
            measures.add(new FinishedMeasure(measure.name(), terms, measure.body()));
        }
        return garment.with(
                garment.pieces().stream()
                        .map(each -> each.name().equals(piece.name()) ? piece : each)
                        .toList(),
                seams,
                measures);
    }

    private List<SeamSide.Run> left(SeamSide side) {
        return side.runs().stream().filter(run -> isThere(run.edge())).toList();
    }

    private boolean isThere(EdgeRef edge) {
        return !edge.piece().equals(piece.name()) || piece.hasEdge(edge.edge());
    }

    /** Returns the arithmetic, a sentence for each dart. */
    List<Note> notes() {
        return cuts.stream()
                .map(cut -> Note.rule("closing " + Angle.radians(cut.angle()).text() + " of the "
                        + cut.dart().name()
                        + ", " + Length.mm(cut.length()).text() + " above the hem, opens it by 2 x "
                        + Length.mm(cut.length()).text() + " x sin("
                        + String.format(Locale.ROOT, "%.1f", Math.toDegrees(cut.angle()) / 2) + "°) = "
                        + Length.mm(cut.opening()).text()))
                .toList();
    }

    /** Returns where the hem opens. */
    List<Dimension> dimensions() {
        List<Dimension> dimensions = new ArrayList<>();
        for (int i = 0; i < cuts.size(); i++) {
            Point foot = cuts.get(i).foot();
            dimensions.add(new Dimension(
                    piece.name(),
                    motion(cuts, i).apply(foot),
                    motion(cuts, i + 1).apply(foot),
                    Length.mm(cuts.get(i).opening()).text()));
        }
        return dimensions;
    }
}
