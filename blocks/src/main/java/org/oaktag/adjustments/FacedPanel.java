package org.oaktag.adjustments;

import java.util.ArrayList;
import java.util.List;
import org.oaktag.PatternException;
import org.oaktag.blocks.HoodNames;
import org.oaktag.blocks.TopNames;
import org.oaktag.draft.RootFinder;
import org.oaktag.garment.Aspect;
import org.oaktag.garment.Cloth;
import org.oaktag.garment.Edge;
import org.oaktag.garment.End;
import org.oaktag.garment.InnerLine;
import org.oaktag.garment.Notch;
import org.oaktag.garment.Piece;
import org.oaktag.geometry.Curve;
import org.oaktag.geometry.Path;
import org.oaktag.geometry.Point;
import org.oaktag.geometry.Transform;
import org.oaktag.measure.Length;

/**
 * The side panel of a hood, its face upright, parted beside the face into what is faced and what is lined.
 *
 * @param side the panel, faced already or not
 * @param crown its crown: the part at the face, and the rest
 * @param neck its neck edge: from the nape, and the part at the face
 */
record FacedPanel(Piece side, Path.Split crown, Path.Split neck) {

    /** A notch this near to where its edge was cut, in millimetres, would only be in the way of the cut. */
    private static final double CLEAR = 5;

    static FacedPanel of(Piece side, Length facing) {
        Path crown = side.path(HoodNames.CROWN);
        Path neck = side.path(HoodNames.NECK);
        double face = crown.start().x();
        Length most = Length.mm((neck.start().x() - face) / 2);
        if (facing.compareTo(most) > 0) {
            throw PatternException.of(
                    "facing of the hood",
                    "must be at most " + most.roundedDown().text()
                            + ", half as wide as the hood is deep at its neck edge",
                    facing.text(),
                    "");
        }
        return new FacedPanel(side, partedAt(face + facing.mm(), crown), partedAt(face + facing.mm(), neck));
    }

    /** Returns the length of the facing's crown, in millimetres. */
    double facingCrown() {
        return crown.before().length();
    }

    /** Returns the shell with the facing cut on, and a fold line where the face was. */
    Piece shell() {
        Point top = crown.before().start();
        Point front = neck.after().end();
        Transform mirror = Transform.mirrorX(top.x());
        Path facingCrown = crown.before().transformed(mirror).reversed();
        Path facingNeck = neck.after().transformed(mirror).reversed();
        Piece faced = side.withoutNotchesOn(HoodNames.FACING_NECK)
                .withEdges(List.of(
                        Edge.straight(HoodNames.FACING_EDGE, facingNeck.end(), facingCrown.start())
                                .withAspect(Aspect.FRONT),
                        new Edge(HoodNames.FACING_CROWN, facingCrown),
                        side.edge(HoodNames.CROWN),
                        side.edge(HoodNames.NECK),
                        new Edge(HoodNames.FACING_NECK, facingNeck)))
                .withLines(lines(Path.polyline(front, top)));
        return side.notch(HoodNames.NECK, HoodNames.CENTRE_FRONT_NOTCH)
                .filter(notch -> notch.distance() < facingNeck.length() - CLEAR)
                .map(notch -> faced.withNotch(
                        Notch.single(HoodNames.CENTRE_FRONT_NOTCH, HoodNames.FACING_NECK, End.START, notch.distance())))
                .orElse(faced);
    }

    private List<InnerLine> lines(Path fold) {
        List<InnerLine> lines = new ArrayList<>(side.lines());
        lines.removeIf(line -> line.name().equals(HoodNames.FOLD));
        lines.add(new InnerLine(HoodNames.FOLD, InnerLine.Use.FOLD, fold));
        return lines;
    }

    /** Returns the lining. */
    Piece lining(Cloth cloth) {
        return Piece.of(
                        TopNames.HOOD_SIDE_LINING,
                        List.of(
                                Edge.straight(
                                                HoodNames.FACE,
                                                neck.before().end(),
                                                crown.after().start())
                                        .withAspect(Aspect.FRONT),
                                new Edge(HoodNames.CROWN, crown.after()),
                                new Edge(HoodNames.NECK, neck.before())),
                        side.grainline(),
                        side.cut(),
                        cloth)
                .withNotches(liningNotches());
    }

    private List<Notch> liningNotches() {
        List<Notch> notches = new ArrayList<>(shortened(side, facingCrown()));
        side.notches().stream()
                .filter(notch -> notch.edge().equals(HoodNames.NECK)
                        && notch.from() == End.START
                        && notch.distance() < neck.before().length() - CLEAR)
                .forEach(notches::add);
        return notches;
    }

    /** Returns the notches of a crown, as they lie on its lining: one that falls on the facing is left out. */
    static List<Notch> shortened(Piece shell, double facingCrown) {
        return shell.notches().stream()
                .filter(notch -> notch.edge().equals(HoodNames.CROWN) && notch.distance() > facingCrown + CLEAR)
                .map(notch -> notch.at(Length.mm(notch.distance() - facingCrown)))
                .toList();
    }

    /** Parts a path where it first crosses an upright line. */
    private static Path.Split partedAt(double x, Path path) {
        List<Curve> before = new ArrayList<>();
        for (int i = 0; i < path.curves().size(); i++) {
            Curve curve = path.curves().get(i);
            if ((curve.start().x() - x) * (curve.end().x() - x) < 0) {
                double t =
                        RootFinder.solve(at -> curve.pointAt(at).x() - x, 0, 1).orElseThrow();
                before.add(curve.sub(0, t));
                List<Curve> after =
                        new ArrayList<>(path.curves().subList(i, path.curves().size()));
                after.set(0, curve.sub(t, 1));
                return new Path.Split(Path.of(before), Path.of(after));
            }
            before.add(curve);
        }
        throw new IllegalStateException("no part of " + path + " crosses x = " + x);
    }
}
