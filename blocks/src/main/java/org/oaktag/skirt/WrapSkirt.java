package org.oaktag.skirt;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.oaktag.PatternException;
import org.oaktag.adjust.CutOnFacing;
import org.oaktag.adjust.Range;
import org.oaktag.adjust.Reshaped;
import org.oaktag.adjust.Step;
import org.oaktag.garment.Amount;
import org.oaktag.garment.Cut;
import org.oaktag.garment.Dart;
import org.oaktag.garment.Dimension;
import org.oaktag.garment.Edge;
import org.oaktag.garment.EdgeNames;
import org.oaktag.garment.EdgeRef;
import org.oaktag.garment.End;
import org.oaktag.garment.Garment;
import org.oaktag.garment.InnerLine;
import org.oaktag.garment.Note;
import org.oaktag.garment.Piece;
import org.oaktag.geometry.Crossings;
import org.oaktag.geometry.Path;
import org.oaktag.geometry.Point;
import org.oaktag.geometry.Transform;
import org.oaktag.geometry.Vector;
import org.oaktag.measure.Length;

/**
 * Makes a wrap skirt: the front in two halves, a left and a right, that lap over each other, each by half the overlap
 * beyond the centre front. Waist and hem run on there as they do on the other side of the centre.
 *
 * <pre>{@code
 * Garment skirt = StraightSkirt.BLOCK.draft(mira, SkirtEase.standard(), Cloth.woven("tweed, moss"));
 * skirt.adjust(aLine(1)).adjust(wrapSkirt(mm(240), mm(50)));
 * }</pre>
 *
 * @param overlap by how much they lap over each other, 40 mm at least
 * @param facing how wide the facing cut on to the edge is, 0 for none, up to 120 mm
 */
record WrapSkirt(Length overlap, Length facing) implements Step {

    private static final Length LEAST = Length.mm(40);
    private static final Length WIDEST_FACING = Length.mm(120);

    /** An overlap of less than this, mm, opens at every step. */
    private static final double MODEST = 150;

    /** How far short of a dart or of the side the fronts end, mm. */
    private static final double SHORT_OF = 10;

    private static final Vector DOWN = Vector.of(0, 1);

    /**
     * Checks the facing.
     *
     * @throws PatternException if it is not 0 to 120 mm
     */
    public WrapSkirt {
        Objects.requireNonNull(overlap, "overlap");
        Range.check("facing of the wrap skirt", "must be", facing, Length.ZERO, WIDEST_FACING);
    }

    @Override
    public String name() {
        return "make a wrap skirt";
    }

    @Override
    public List<Amount> amounts() {
        return List.of(Amount.of("overlap", overlap), Amount.of("facing", facing));
    }

    /**
     * {@inheritDoc}
     *
     * @throws PatternException if a front would reach as far as the darts of the other, or its side, or the facing past
     *     its own side, or the front is not cut on the fold
     */
    @Override
    public Reshaped reshape(Garment garment) {
        SkirtBody.requireFolds(garment);
        Piece front = SkirtBody.halves(garment).get(0);
        if (!front.edges().get(0).name().equals(SkirtNames.WAIST)) {
            throw PatternException.of(
                    "front of the skirt",
                    "must begin with its waist",
                    "edge '" + front.edges().get(0).name() + "'",
                    "take this step before those that cut the skirt up");
        }
        double reach = Math.min(
                front.path(SkirtNames.WAIST).end().x(),
                front.path(EdgeNames.HEM).start().x());
        boolean darts = !Dart.all(front).isEmpty();
        Range.check(
                "overlap of the wrap skirt",
                "short of the " + (darts ? "darts of the other front (close them first for more)" : "side seams")
                        + " it must be",
                overlap,
                LEAST,
                Length.mm(2 * (reach - SHORT_OF)));
        Piece wrapped = wrapped(front);
        Length open = garment.finished(SkirtNames.LENGTH);
        Garment made = Finishing.of(garment)
                .put(wrapped)
                .centreBetweenEnds(SkirtNames.FRONT)
                .check(new SkirtChecks.GettingIn(open))
                .check(new SkirtChecks.Walking(open))
                .done();
        List<Note> notes = new ArrayList<>();
        notes.add(Note.rule("each front reaches " + overlap.text() + " / 2 = "
                + overlap.times(0.5).text() + " beyond the centre front"
                + (facing.mm() > 0 ? ", and has a facing of " + facing.text() + " cut on" : "")));
        if (overlap.mm() < MODEST) {
            notes.add(Note.caution("an overlap of " + overlap.text() + " opens when its wearer walks or sits: "
                    + Length.mm(MODEST).text() + " at least does less"));
        }
        Point edge = wrapped.corner(SkirtNames.WAIST, End.START);
        double half = overlap.mm() / 2;
        return new Reshaped(
                made,
                notes,
                List.of(new Dimension(
                        front.name(),
                        edge.plus(Vector.of(-half, 0)),
                        edge,
                        overlap.times(0.5).text())));
    }

    private Piece wrapped(Piece front) {
        Transform mirror =
                Transform.mirrorX(front.corner(EdgeNames.CENTRE, End.END).x());
        double half = overlap.mm() / 2;
        Path waist = front.path(SkirtNames.WAIST);
        Path hem = front.path(EdgeNames.HEM);
        Point inside = front.corner(EdgeNames.CENTRE, End.END).plus(Vector.of(half, 0));
        double onWaist = along(waist, inside);
        double onHem = along(hem, inside);
        Path waistLap = waist.sub(0, onWaist).transformed(mirror).reversed();
        Path hemLap = hem.sub(onHem, hem.length()).transformed(mirror).reversed();
        List<Edge> edges = new ArrayList<>();
        edges.add(new Edge(SkirtShapeNames.WAIST_LAP, waistLap.withEnds(waistLap.start(), waist.start())));
        front.edges().stream()
                .filter(each -> !each.name().equals(EdgeNames.CENTRE))
                .forEach(edges::add);
        edges.add(front.edge(EdgeNames.HEM)
                .withName(SkirtShapeNames.HEM_LAP)
                .withPath(hemLap.withEnds(hem.end(), hemLap.end())));
        edges.add(Edge.straight(SkirtShapeNames.WRAP, hemLap.end(), waistLap.start()));
        List<InnerLine> lines = new ArrayList<>(front.lines());
        lines.add(new InnerLine(
                SkirtFinishNames.CENTRE_FRONT,
                InnerLine.Use.PLACEMENT,
                front.path(EdgeNames.CENTRE).reversed()));
        Piece lapped = front.withCut(Cut.pair()).withEdges(edges).withLines(lines);
        return facing.mm() > 0
                ? new CutOnFacing(EdgeRef.of(front.name(), SkirtShapeNames.WRAP), facing).face(lapped)
                : lapped;
    }

    private static double along(Path path, Point through) {
        return Crossings.ofLine(path, through, DOWN).get(0).first();
    }
}
