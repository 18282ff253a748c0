package org.oaktag.blocks;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.oaktag.PatternException;
import org.oaktag.draft.RootFinder;
import org.oaktag.garment.Cut;
import org.oaktag.garment.Edge;
import org.oaktag.garment.EdgeFinish;
import org.oaktag.garment.EdgeNames;
import org.oaktag.garment.End;
import org.oaktag.garment.Grainline;
import org.oaktag.garment.Name;
import org.oaktag.garment.Notch;
import org.oaktag.garment.Piece;
import org.oaktag.geometry.Cubic;
import org.oaktag.geometry.Line;
import org.oaktag.geometry.Path;
import org.oaktag.geometry.Point;
import org.oaktag.geometry.Transform;
import org.oaktag.geometry.Vector;
import org.oaktag.measure.Length;

/**
 * A front or a back whose shoulder is cut off along a line from the neckline to the underarm curve of the armhole, and
 * half a sleeve to which the shoulder is joined.
 *
 * <pre>{@code
 * RaglanHalf half = RaglanHalf.front(block.piece(FRONT), block.piece(SLEEVE), mm(40));
 * half.lineLength();   // of the raglan line, from the neckline to the underarm curve
 * }</pre>
 *
 * <p>The line runs smoothly into the armhole where the curve begins that the cap was copied from. The cut-off shoulder
 * is mirrored, as it now lies on the other side of the line, and set with its shoulder point over the middle of the
 * sleeve; it is turned about that point until the sleeve's own line, which leaves the neckline at the angle that it had
 * on the body and runs smoothly into the cap there, is as long as the body's. Below that both edges are the armhole's
 * own curve. The shoulder then runs on over the arm in a curve, and its height is solved so that the way from the side
 * neck point to the hem is as long as asked.
 *
 * <p>The half sleeve is drawn with the middle of the arm at x = 0 and its underarm to the right. Immutable.
 */
public final class RaglanHalf {

    private static final double CURVE_REACH = 45;
    private static final double MOST_TURN = Math.toRadians(150);

    /** The other way only while the level is being solved, so that its bounds are not refused for the turn. */
    private static final double MOST_BACK_TURN = Math.toRadians(20);

    private static final double MOST_MOVE = 60;
    private static final double SAME = 0.01;
    private static final double GRAIN_MARGIN = 0.12;

    /** Of the seam above a gusset so much is left at least, in millimetres. */
    private static final double LEAST_SEAM = 80;

    /** A notch that a gusset has cut off, or come near to, lies so far above its corner, in millimetres. */
    private static final double NOTCH_ABOVE = 30;

    private static final double NEAR = 10;

    private final Piece body;
    private final Name notchName;
    private final Notch notch;
    private final double notchFromUnderarm;
    private final Path neckline;
    private final Path cutOffNeckline;
    private final Path line;
    private final Path lowerArmhole;
    private final Path lowerCap;
    private final Path underarm;
    private final Path hem;

    private RaglanHalf(Piece body, Name notchName, CapHalf copied, double onNeck, Path cap, Path underarm, Path hem) {
        this.body = body;
        this.notchName = notchName;
        this.notch = body.notch(TopEdges.ARMHOLE, notchName)
                .orElseThrow(() -> PatternException.of(
                        "armhole of the " + body.name(),
                        "must have its notch '" + notchName + "'",
                        "no such notch",
                        "fit the cap to the armhole first"));
        Path whole = body.path(TopEdges.NECKLINE);
        Path.Split neck = whole.splitAt(whole.length() - onNeck);
        this.neckline = neck.before();
        this.cutOffNeckline = neck.after();
        Path armhole = body.path(TopEdges.ARMHOLE);
        this.notchFromUnderarm = armhole.length() - notch.fromStart(armhole.length());
        this.lowerArmhole =
                armhole.splitAt(armhole.length() - copied.copiedLength()).after();
        this.lowerCap = cap.splitAt(cap.length() - lowerArmhole.length()).after();
        this.underarm = underarm;
        this.hem = hem;
        Point from = neckline.end();
        Point to = lowerArmhole.start();
        this.line = Path.of(Cubic.between(from, to.minus(from), to, lowerArmhole.startDirection()));
    }

    /** Prepares the front half of a sleeve. */
    public static RaglanHalf front(Piece front, Piece sleeve, Length onNeck) {
        Transform frame = toFrame(sleeve);
        Path hem = sleeve.path(EdgeNames.HEM).transformed(frame);
        return new RaglanHalf(
                front,
                TopNames.FRONT_NOTCH,
                CapHalf.ontoFront(front.path(TopEdges.ARMHOLE)),
                onNeck.mm(),
                sleeve.path(TopEdges.CAP_FRONT).transformed(frame),
                sleeve.path(TopEdges.UNDERARM_FRONT).transformed(frame),
                hem.sub(0, middle(hem)));
    }

    /** Prepares the back half of a sleeve. */
    public static RaglanHalf back(Piece back, Piece sleeve, Length onNeck) {
        Transform frame = toFrame(sleeve).then(Transform.mirrorX(0));
        Path hem = sleeve.path(EdgeNames.HEM).transformed(frame).reversed();
        return new RaglanHalf(
                back,
                TopNames.BACK_NOTCH,
                CapHalf.ontoBack(back.path(TopEdges.ARMHOLE)),
                onNeck.mm(),
                sleeve.path(TopEdges.CAP_BACK).transformed(frame).reversed(),
                sleeve.path(TopEdges.UNDERARM_BACK).transformed(frame).reversed(),
                hem.sub(0, middle(hem)));
    }

    /** Returns how long a side of a gusset can be that is let in between body and sleeve. */
    public Length mostGusset() {
        return Length.mm(line.length() + lowerArmhole.length() - LEAST_SEAM);
    }

    /**
     * Returns the front or the back without its shoulder.
     *
     * @param gusset the side of a gusset that is let in, in millimetres, or empty for none
     */
    public Piece body(OptionalDouble gusset) {
        List<Edge> edges = new ArrayList<>();
        for (Edge edge : body.edges()) {
            if (edge.name().equals(TopEdges.NECKLINE)) {
                edges.add(edge.withPath(neckline));
                edges.addAll(sewn(line, lowerArmhole, gusset, TopEdges.GUSSET_LOWER));
            } else if (!edge.name().equals(TopEdges.ARMHOLE) && !edge.name().equals(TopEdges.SHOULDER)) {
                edges.add(edge);
            }
        }
        return body.withoutNotchesOn(TopEdges.ARMHOLE)
                .withoutNotchesOn(TopEdges.SHOULDER)
                .withoutNotchesOn(TopEdges.NECKLINE)
                .withEdges(edges)
                .withNotch(notch(gusset));
    }

    /**
     * Parts what body and sleeve are sewn together along, from the neckline to the underarm point: without a gusset at
     * the underarm curve, with one so far from the underarm point as the gusset's side is long.
     */
    private static List<Edge> sewn(Path line, Path lower, OptionalDouble gusset, Name atGusset) {
        if (gusset.isEmpty()) {
            return List.of(new Edge(TopEdges.RAGLAN, line), new Edge(TopEdges.ARMHOLE, lower));
        }
        Path whole = line.then(lower);
        Path.Split split = whole.splitAt(whole.length() - gusset.getAsDouble());
        return List.of(new Edge(TopEdges.RAGLAN, split.before()), new Edge(atGusset, split.after()));
    }

    /**
     * Returns the half sleeve.
     *
     * @param name its name
     * @param sleeve the sleeve of which it is a half
     * @param reach how long it shall be from the side neck point over the shoulder to the hem
     * @param gusset the side of a gusset that is let in, in millimetres, or empty for none
     * @throws PatternException if the cap does not lie on the armhole under the arm, or the shoulder cannot be joined
     *     so that both lines are of one length
     */
    public Piece sleeve(Name name, Piece sleeve, Length reach, OptionalDouble gusset) {
        double difference = lowerCap.length() - lowerArmhole.length();
        double apart = lowerCap.chord() - lowerArmhole.chord();
        if (Math.abs(difference) > SAME || Math.abs(apart) > SAME) {
            throw PatternException.of(
                    "sleeve cap",
                    "must lie on the " + body.name() + " armhole under the arm to become a raglan",
                    "a cap that does not",
                    "fit the cap to the armhole first");
        }
        OptionalDouble level =
                RootFinder.solve(tried -> joined(tried).overArm().length(1e-9) - reach.mm(), -MOST_MOVE, MOST_MOVE);
        Joined joined = joined(level.orElseThrow(this::unjoined));
        Path.Split over = joined.overArm().splitAt(body.path(TopEdges.SHOULDER).length());
        double x = lowerCap.end().x() / 2;
        double top = lowerCap.end().y();
        double low = hem.start().y();
        List<Edge> edges = new ArrayList<>();
        edges.add(new Edge(TopEdges.NECKLINE, joined.neckline()));
        edges.addAll(sewn(joined.line(), lowerCap, gusset, TopEdges.GUSSET_UPPER));
        edges.add(new Edge(TopEdges.UNDERARM, underarm));
        edges.add(new Edge(EdgeNames.HEM, hem, EdgeFinish.TURNED_BACK));
        edges.add(new Edge(TopEdges.OVER_ARM, over.after().reversed()));
        edges.add(new Edge(TopEdges.SHOULDER, over.before().reversed()));
        return Piece.of(
                        name,
                        edges,
                        new Grainline(Point.of(x, top), Point.of(x, low - GRAIN_MARGIN * (low - top))),
                        Cut.pair(),
                        sleeve.cloth())
                .withAspectOf(body)
                .withNotch(notch(gusset));
    }

    /** Returns how long the line is on the body. */
    public Length lineLength() {
        return Length.mm(line.length());
    }

    /**
     * The shoulder joined to the half sleeve: its neckline, its line, and the edge from the neck over the arm to the
     * hem.
     */
    private record Joined(Path neckline, Path line, Path overArm) {}

    private Joined joined(double level) {
        Point shoulder = body.path(TopEdges.SHOULDER).end();
        Transform mirrored = Transform.mirrorX(shoulder.x())
                .then(Transform.translation(Point.of(0, level).minus(shoulder)));
        OptionalDouble turn = RootFinder.solve(
                tried -> sleeveLine(turned(mirrored, level, tried)).length(1e-9) - line.length(1e-9),
                -MOST_TURN,
                MOST_BACK_TURN);
        Transform placed = turned(mirrored, level, turn.orElseThrow(this::unjoined));
        Path joinedLine = sleeveLine(placed);
        Path joinedNeck = Redraw.between(
                cutOffNeckline.reversed().transformed(placed), placed.apply(cutOffNeckline.end()), joinedLine.start());
        return new Joined(joinedNeck, joinedLine, overArm(placed, level, joinedNeck.start()));
    }

    private Path overArm(Transform placed, double level, Point neck) {
        Path shoulder = body.path(TopEdges.SHOULDER).transformed(placed);
        double reach = Math.min(CURVE_REACH, shoulder.length() / 2);
        Path kept = Redraw.between(
                shoulder.sub(0, shoulder.length() - reach), neck, shoulder.pointAt(shoulder.length() - reach));
        Point low = Point.of(hem.end().x(), level + reach);
        Cubic curve = Cubic.between(kept.end(), kept.endDirection(), low, Vector.of(0, 1));
        return kept.then(Path.of(curve, new Line(low, hem.end())));
    }

    private static Transform turned(Transform mirrored, double level, double turn) {
        return mirrored.then(Transform.rotation(turn, Point.of(0, level)));
    }

    private Path sleeveLine(Transform placed) {
        return Path.of(Cubic.between(
                placed.apply(line.start()),
                placed.apply(line.startDirection()),
                lowerCap.start(),
                lowerCap.startDirection()));
    }

    private Notch notch(OptionalDouble gusset) {
        double above = notchFromUnderarm - gusset.orElse(lowerArmhole.length());
        double at = gusset.isPresent() && above < NEAR ? NOTCH_ABOVE : Math.max(above, 0);
        return new Notch(notchName, TopEdges.RAGLAN, End.END, at, notch.count());
    }

    private PatternException unjoined() {
        return PatternException.of(
                "shoulder of the " + body.name(),
                "must join the sleeve so that both raglan lines are of one length",
                "a line of " + lineLength().text() + " on the " + body.name(),
                "begin the line nearer to the shoulder, or raise the cap");
    }

    private static Transform toFrame(Piece sleeve) {
        return Transform.translation(
                Point.of(0, 0).minus(sleeve.path(TopEdges.CAP_FRONT).start()));
    }

    /** Finds how far along the hem, from the underarm, the middle of the arm lies. */
    private static double middle(Path hem) {
        return RootFinder.solve(along -> hem.pointAt(along).x(), 0, hem.length())
                .orElseThrow(() -> PatternException.of(
                        "hem of the sleeve", "must lie below the top of the cap", "one that does not", ""));
    }
}
