package org.oaktag.garment;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.function.UnaryOperator;
import org.jspecify.annotations.Nullable;
import org.oaktag.PatternException;
import org.oaktag.geometry.Curve;
import org.oaktag.geometry.Outline;
import org.oaktag.geometry.Path;
import org.oaktag.geometry.Point;
import org.oaktag.geometry.Transform;
import org.oaktag.geometry.Vector;
import org.oaktag.measure.Angle;
import org.oaktag.measure.Length;

/**
 * One piece of a pattern: a closed outline made of named edges in order, clockwise on paper, and what is marked on it.
 *
 * <pre>{@code
 * Piece front = block.piece(FRONT);
 * front.edge(SIDE).length();             // the side seam
 * front.cornerAngle(HEM, End.END);       // inside the piece
 * front.outline().area();                // mm², of the half that is drawn
 * }</pre>
 *
 * <p>The outline is the seam line. A piece cut on the fold is drawn as its half, and one of a mirrored pair as drawn
 * once. Immutable and safe to share between threads.
 */
public final class Piece {

    /** How far past the end of its edge a notch may lie through rounding, in millimetres. */
    private static final double NOTCH_ROUNDING = 1e-6;

    private final Name name;
    private final List<Edge> edges;

    /** The names of the edges, in their order: nothing is asked more often than where an edge of a name is. */
    private final Names names;

    private final List<InnerLine> lines;
    private final List<Mark> marks;
    private final List<Notch> notches;
    private final Grainline grainline;
    private final Cut cut;
    private final Cloth cloth;
    private final @Nullable Aspect aspect;

    /**
     * Put together on first use. Two threads may both do it; they come to the same outline, and either may be kept: as
     * all its fields are final, none sees half of it. Read once.
     */
    private @Nullable Outline outline;

    /**
     * Copies the lists and checks the piece.
     *
     * @param name the piece's name, unique in its garment
     * @param edges the outline, at least two edges; each begins at the very point at which the one before it ends
     * @param lines lines drawn inside
     * @param marks points marked inside
     * @param notches marks on the edges
     * @param grainline the direction of the warp or the wales
     * @param cut how it is cut
     * @param cloth what it is cut from
     * @throws PatternException if there are fewer than two edges, an edge does not begin where the one before it ends,
     *     two edges have one name, a notch lies off its edge, or the piece is cut on the fold of an edge that it lacks
     */
    public Piece(
            Name name,
            List<Edge> edges,
            List<InnerLine> lines,
            List<Mark> marks,
            List<Notch> notches,
            Grainline grainline,
            Cut cut,
            Cloth cloth) {
        this(name, List.copyOf(edges), null, lines, marks, notches, grainline, cut, cloth, null, null);
        checkClosed();
        checkNotches();
        checkFold();
    }

    private Piece(
            Name name,
            List<Edge> edges,
            @Nullable Names names,
            List<InnerLine> lines,
            List<Mark> marks,
            List<Notch> notches,
            Grainline grainline,
            Cut cut,
            Cloth cloth,
            @Nullable Aspect aspect,
            @Nullable Outline outline) {
        this.name = Objects.requireNonNull(name, "name");
        this.edges = edges;
        this.names = names == null ? Names.ofEdges(edges) : names;
        this.lines = List.copyOf(lines);
        this.marks = List.copyOf(marks);
        this.notches = List.copyOf(notches);
        this.grainline = Objects.requireNonNull(grainline, "grainline");
        this.cut = Objects.requireNonNull(cut, "cut");
        this.cloth = Objects.requireNonNull(cloth, "cloth");
        this.aspect = aspect;
        this.outline = outline;
    }

    /** Returns the piece of the same outline, which needs no second check, with other things marked on it. */
    private Piece marked(
            List<InnerLine> otherLines,
            List<Mark> otherMarks,
            List<Notch> otherNotches,
            Grainline otherGrainline,
            Cut otherCut,
            Cloth otherCloth) {
        Piece marked = new Piece(
                name,
                edges,
                names,
                otherLines,
                otherMarks,
                otherNotches,
                otherGrainline,
                otherCut,
                otherCloth,
                aspect,
                outline);
        if (marked.notches != notches) {
            marked.checkNotches();
        }
        marked.checkFold();
        return marked;
    }

    /**
     * Returns a piece with nothing marked on it yet.
     *
     * @throws PatternException as the constructor
     */
    public static Piece of(Name name, List<Edge> edges, Grainline grainline, Cut cut, Cloth cloth) {
        return new Piece(name, edges, List.of(), List.of(), List.of(), grainline, cut, cloth);
    }

    /** Returns the piece's name, unique in its garment. */
    public Name name() {
        return name;
    }

    /** Returns the edges that make up the outline, each beginning at the very point at which the one before it ends. */
    public List<Edge> edges() {
        return edges;
    }

    /** Returns the lines drawn inside. */
    public List<InnerLine> lines() {
        return lines;
    }

    /** Returns the points marked inside. */
    public List<Mark> marks() {
        return marks;
    }

    /** Returns the marks on the edges. */
    public List<Notch> notches() {
        return notches;
    }

    /** Returns the direction of the warp or the wales. */
    public Grainline grainline() {
        return grainline;
    }

    /** Returns how it is cut. */
    public Cut cut() {
        return cut;
    }

    /** Returns what it is cut from. */
    public Cloth cloth() {
        return cloth;
    }

    /** Returns the side of the garment at which it lies; empty where it lies at neither, as a sleeve does. */
    public Optional<Aspect> aspect() {
        return Optional.ofNullable(aspect);
    }

    /**
     * Returns the side of the garment at which an edge lies: its own, or else that of the piece.
     *
     * @throws PatternException if there is no edge of that name
     */
    public Optional<Aspect> aspect(Name edge) {
        return edge(edge).aspect().or(this::aspect);
    }

    /**
     * Returns the edge of that name.
     *
     * @throws PatternException if there is none; the message lists those that exist
     */
    public Edge edge(Name edge) {
        return edges.get(indexOf(edge));
    }

    /** Tells whether the piece has an edge of that name. */
    public boolean hasEdge(Name edge) {
        return names.place(Objects.requireNonNull(edge, "edge")) >= 0;
    }

    /** Returns the edge of that name, or empty where there is none. */
    public Optional<Edge> findEdge(Name edge) {
        int place = names.place(Objects.requireNonNull(edge, "edge"));
        return place < 0 ? Optional.empty() : Optional.of(edges.get(place));
    }

    /** Tells whether the piece has an edge of every name that the other has one of. */
    boolean hasEdgesOf(Piece other) {
        if (edges == other.edges) {
            return true;
        }
        for (int i = 0; i < other.edges.size(); i++) {
            Name wanted = other.edges.get(i).name();
            boolean there = i < edges.size() && edges.get(i).name().equals(wanted);
            if (!there && !hasEdge(wanted)) {
                return false;
            }
        }
        return true;
    }

    /** Tells whether an edge lies on the fold of the cloth. */
    public boolean isOnFold(Name edge) {
        return cut instanceof Cut.OnFold fold && fold.edge().equals(Objects.requireNonNull(edge, "edge"));
    }

    /** Returns where the named edge runs. */
    public Path path(Name edge) {
        return edge(edge).path();
    }

    /** Returns the corner at one end of an edge. */
    public Point corner(Name edge, End end) {
        Path path = path(edge);
        return end == End.START ? path.start() : path.end();
    }

    /** Returns the edge that follows the named one, clockwise. */
    public Edge after(Name edge) {
        return edges.get((indexOf(edge) + 1) % edges.size());
    }

    /** Returns the edge that comes before the named one, clockwise. */
    public Edge before(Name edge) {
        return edges.get((indexOf(edge) + edges.size() - 1) % edges.size());
    }

    /** Returns the angle inside the piece at one end of an edge: 90 degrees where two edges are square. */
    public Angle cornerAngle(Name edge, End end) {
        int leaving = end == End.START ? indexOf(edge) : (indexOf(edge) + 1) % edges.size();
        int arriving = (leaving + edges.size() - 1) % edges.size();
        Vector in = edges.get(arriving).path().endDirection();
        Vector out = edges.get(leaving).path().startDirection();
        double turn = Math.atan2(in.cross(out), in.dot(out));
        return Angle.radians(Math.PI - turn);
    }

    /** Returns the seam line as one closed outline. */
    public Outline outline() {
        Outline whole = outline;
        if (whole == null) {
            List<Curve> curves = new ArrayList<>();
            for (int i = 0; i < edges.size(); i++) {
                curves.addAll(edges.get(i).path().curves());
            }
            whole = Outline.of(Path.of(curves));
            outline = whole;
        }
        return whole;
    }

    /** Returns the notch of that name on an edge, or empty where there is none. */
    public Optional<Notch> notch(Name edge, Name notch) {
        Objects.requireNonNull(edge, "edge");
        Objects.requireNonNull(notch, "notch");
        return notches.stream()
                .filter(each -> each.edge().equals(edge) && each.name().equals(notch))
                .findFirst();
    }

    /** Returns the point of a notch on the seam line. */
    public Point pointOf(Notch notch) {
        Path path = path(notch.edge());
        double length = path.length();
        return path.pointAt(Math.min(Math.max(notch.fromStart(length), 0), length));
    }

    /**
     * Returns the piece with some of its edges redrawn, all at once.
     *
     * @param redrawn the new paths by the name of their edge
     * @throws PatternException if the outline would no longer be closed, an edge does not exist, or a notch would lie
     *     off its edge
     */
    public Piece redrawn(Map<Name, Path> redrawn) {
        for (Name edge : redrawn.keySet()) {
            indexOf(edge);
        }
        return withEdges(edges.stream()
                .map(edge -> edge.withPath(redrawn.getOrDefault(edge.name(), edge.path())))
                .toList());
    }

    /**
     * Returns the piece with one of its edges finished in another way.
     *
     * @throws PatternException if the edge does not exist
     */
    public Piece withFinish(Name edge, EdgeFinish finish) {
        List<Edge> all = new ArrayList<>(edges);
        all.set(indexOf(edge), edge(edge).withFinish(finish));
        return withEdges(all);
    }

    /** Returns the piece with other edges and the same marks; notches stay on edges of their name. */
    public Piece withEdges(List<Edge> other) {
        return remade(other, lines, marks, notches, grainline, cut);
    }

    /**
     * Returns what a step made of the piece: of the same name and cloth and at the same side of the garment, with
     * another outline and other things marked on it.
     *
     * @throws PatternException as the constructor
     */
    public Piece remade(
            List<Edge> otherEdges,
            List<InnerLine> otherLines,
            List<Mark> otherMarks,
            List<Notch> otherNotches,
            Grainline otherGrainline,
            Cut otherCut) {
        return new Piece(name, otherEdges, otherLines, otherMarks, otherNotches, otherGrainline, otherCut, cloth)
                .with(name, aspect);
    }

    private Piece with(Name otherName, @Nullable Aspect otherAspect) {
        return otherName.equals(name) && otherAspect == aspect
                ? this
                : new Piece(
                        otherName, edges, names, lines, marks, notches, grainline, cut, cloth, otherAspect, outline);
    }

    /** Returns the piece at that side of the garment. */
    public Piece withAspect(Aspect other) {
        return with(name, Objects.requireNonNull(other, "other"));
    }

    /** Returns the piece at the side of the garment at which another lies. */
    public Piece withAspectOf(Piece other) {
        return with(name, Objects.requireNonNull(other, "other").aspect);
    }

    /**
     * Returns the piece with one of its edges at that side of the garment, wherever the piece lies.
     *
     * @throws PatternException if there is no edge of that name
     */
    public Piece withEdgeAt(Name edge, Aspect other) {
        List<Edge> all = new ArrayList<>(edges);
        all.set(indexOf(edge), edge(edge).withAspect(other));
        return withEdges(all);
    }

    /** Returns the piece with other notches. */
    public Piece withNotches(List<Notch> other) {
        return marked(lines, marks, other, grainline, cut, cloth);
    }

    /** Returns the piece with this notch in the place of the one of the same name on the same edge, if any. */
    public Piece withNotch(Notch notch) {
        List<Notch> all = new ArrayList<>(notches);
        all.removeIf(each -> each.edge().equals(notch.edge()) && each.name().equals(notch.name()));
        all.add(notch);
        return withNotches(all);
    }

    /** Returns the piece without the notches on an edge. */
    public Piece withoutNotchesOn(Name edge) {
        Objects.requireNonNull(edge, "edge");
        List<Notch> all = new ArrayList<>(notches);
        return all.removeIf(each -> each.edge().equals(edge)) ? withNotches(all) : this;
    }

    /** Returns the piece with other inner lines. */
    public Piece withLines(List<InnerLine> other) {
        return marked(other, marks, notches, grainline, cut, cloth);
    }

    /** Returns the piece with other inner marks. */
    public Piece withMarks(List<Mark> other) {
        return marked(lines, other, notches, grainline, cut, cloth);
    }

    /** Returns the piece with another grainline. */
    public Piece withGrainline(Grainline other) {
        return marked(lines, marks, notches, other, cut, cloth);
    }

    /** Returns the piece cut in another way. */
    public Piece withCut(Cut other) {
        return marked(lines, marks, notches, grainline, other, cloth);
    }

    /** Returns the piece cut from another cloth. */
    public Piece withCloth(Cloth other) {
        return marked(lines, marks, notches, grainline, cut, other);
    }

    /** Returns the piece under another name. */
    public Piece renamed(Name other) {
        return with(Objects.requireNonNull(other, "other"), aspect);
    }

    /**
     * Returns the piece moved, turned or scaled, edge by edge in the same order. Every notch stays at its point of the
     * cloth, so that its distance is scaled with its edge.
     *
     * @throws PatternException if the transform mirrors; use {@link #mirrored()}, which keeps the outline clockwise
     */
    public Piece transformed(Transform transform) {
        if (transform.reverses()) {
            throw PatternException.of(
                    "transform of piece '" + name + "'", "must not mirror it", "" + transform, "use mirrored()");
        }
        Piece mapped = withNotches(List.of())
                .mapped(
                        transform,
                        edges.stream()
                                .map(edge -> edge.withPath(edge.path().transformed(transform)))
                                .toList());
        return mapped.withNotches(
                notches.stream().map(notch -> mapped(notch, transform)).toList());
    }

    private Notch mapped(Notch notch, Transform transform) {
        Path path = path(notch.edge());
        if (transform.isRigid() || notch.distance() <= Curve.DEFAULT_ACCURACY) {
            return notch;
        }
        Path from = notch.from() == End.START ? path : path.reversed();
        Path reached = notch.distance() >= path.length() - Curve.DEFAULT_ACCURACY
                ? from
                : from.splitAt(notch.distance()).before();
        return notch.at(Length.mm(reached.transformed(transform).length()));
    }

    /**
     * Returns the other hand of the piece, mirrored left to right through x = 0. The edges keep their names and, as the
     * outline stays clockwise, run in the opposite order and direction.
     */
    public Piece mirrored() {
        Transform mirror = Transform.mirrorX(0);
        List<Edge> reversed = new ArrayList<>();
        for (int i = edges.size() - 1; i >= 0; i--) {
            Edge edge = edges.get(i);
            reversed.add(edge.withPath(edge.path().transformed(mirror).reversed()));
        }
        Piece mapped = withNotches(List.of()).mapped(mirror, reversed);
        return mapped.withNotches(notches.stream()
                .map(notch ->
                        new Notch(notch.name(), notch.edge(), notch.from().opposite(), notch.distance(), notch.count()))
                .toList());
    }

    private Piece mapped(Transform transform, List<Edge> mappedEdges) {
        UnaryOperator<InnerLine> moveLine =
                line -> new InnerLine(line.name(), line.use(), line.path().transformed(transform));
        return remade(
                mappedEdges,
                lines.stream().map(moveLine).toList(),
                marks.stream()
                        .map(mark -> mark.at(transform.apply(mark.point())))
                        .toList(),
                notches,
                grainline.transformed(transform),
                cut);
    }

    @Override
    public boolean equals(@Nullable Object other) {
        return this == other
                || (other instanceof Piece piece
                        && name.equals(piece.name)
                        && edges.equals(piece.edges)
                        && lines.equals(piece.lines)
                        && marks.equals(piece.marks)
                        && notches.equals(piece.notches)
                        && grainline.equals(piece.grainline)
                        && cut.equals(piece.cut)
                        && cloth.equals(piece.cloth)
                        && aspect == piece.aspect);
    }

    @Override
    public int hashCode() {
        return Objects.hash(name, edges, lines, marks, notches, grainline, cut, cloth, aspect);
    }

    @Override
    public String toString() {
        return "piece '" + name + "' of " + edges.size() + " edges";
    }

    private int indexOf(Name edge) {
        int place = names.place(edge);
        if (place < 0) {
            throw Name.unknown(
                    "edge of piece '" + name + "'",
                    edge,
                    edges.stream().map(Edge::name).toList());
        }
        return place;
    }

    /** Returns the place of an edge in the outline, -1 where there is none of that name. */
    int place(Name edge) {
        return names.place(edge);
    }

    private void checkClosed() {
        if (edges.size() < 2) {
            throw PatternException.of("piece '" + name + "'", "must have at least two edges", "" + edges.size(), "");
        }
        Edge last = edges.get(edges.size() - 1);
        for (int i = 0; i < edges.size(); i++) {
            Edge edge = edges.get(i);
            if (names.place(edge.name()) < i) {
                throw PatternException.of(
                        "piece '" + name + "'",
                        "must not have two edges of one name",
                        "'" + edge.name() + "' twice",
                        "");
            }
            if (!last.path().end().equals(edge.path().start())) {
                throw PatternException.of(
                        "piece '" + name + "'",
                        "edge '" + edge.name() + "' must begin where '" + last.name() + "' ends",
                        Length.mm(last.path().end().distanceTo(edge.path().start()))
                                        .text() + " between them",
                        "redraw both edges to the same point");
            }
            last = edge;
        }
    }

    private void checkNotches() {
        for (int i = 0; i < notches.size(); i++) {
            Notch notch = notches.get(i);
            checkOnEdge(name, notch, edge(notch.edge()));
        }
    }

    private void checkFold() {
        if (cut instanceof Cut.OnFold fold) {
            indexOf(fold.edge());
        }
    }

    private static void checkOnEdge(Name piece, Notch notch, Edge edge) {
        double length = edge.path().length();
        if (notch.distance() > length + NOTCH_ROUNDING) {
            throw PatternException.of(
                    "notch '" + notch.name() + "' of piece '" + piece + "'",
                    "must lie on edge '" + edge.name() + "' (0 to "
                            + edge.length().text() + ")",
                    Length.mm(notch.distance()).text(),
                    "");
        }
    }
}
