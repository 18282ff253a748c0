package org.oaktag.skirt;

import java.util.ArrayList;
import java.util.List;
import org.oaktag.PatternException;
import org.oaktag.adjust.CutOnFacing;
import org.oaktag.adjust.SeparateFacing;
import org.oaktag.garment.Cloth;
import org.oaktag.garment.Dart;
import org.oaktag.garment.Edge;
import org.oaktag.garment.EdgeNames;
import org.oaktag.garment.EdgeRef;
import org.oaktag.garment.End;
import org.oaktag.garment.Grainline;
import org.oaktag.garment.Name;
import org.oaktag.garment.Notch;
import org.oaktag.garment.Piece;
import org.oaktag.geometry.Crossing;
import org.oaktag.geometry.Crossings;
import org.oaktag.geometry.Cubic;
import org.oaktag.geometry.Path;
import org.oaktag.geometry.Point;
import org.oaktag.geometry.Transform;
import org.oaktag.measure.Length;

/**
 * The top of a half with its darts closed, each turned shut about its apex, the centre staying where it is: from it are
 * cut facings and curved bands.
 *
 * @param plain the half with its darts open
 * @param closed the same, closed: waist, side, a lower edge that means nothing, and centre
 * @param darts the darts from the centre
 * @param opening for each stretch of the waist, from the centre, what opens it again
 */
record ClosedTop(Piece plain, Piece closed, List<Dart> darts, List<Transform> opening) {

    /** Over this share of its length the lower edge of a strip is led square on to the side. */
    private static final double LED_ON = 0.4;

    /** What of a dart is left below a band must be as deep as this at least, mm. */
    private static final double LEAST_DART = 15;

    /**
     * A strip along the closed waist.
     *
     * @param waist from the centre to the side
     * @param side from the waist down
     * @param lower from the side to the centre
     * @param centre up to the waist
     * @param grain the grain of the half
     */
    record Strip(Path waist, Path side, Path lower, Path centre, Grainline grain) {

        /** Returns the strip as a piece, its upper, side, lower and centre edge under these names. */
        Piece piece(Name name, Piece half, Name upper, Name below, Cloth cloth) {
            return Piece.of(
                            name,
                            List.of(
                                    new Edge(upper, waist),
                                    new Edge(EdgeNames.SIDE, side),
                                    new Edge(below, lower),
                                    new Edge(EdgeNames.CENTRE, centre)),
                            grain,
                            half.cut(),
                            cloth)
                    .withAspectOf(half);
        }
    }

    static ClosedTop of(Piece plain) {
        List<Dart> darts = Dart.all(plain);
        Transform closing = Transform.IDENTITY;
        Transform opening = Transform.IDENTITY;
        List<Transform> openings = new ArrayList<>(List.of(opening));
        Path waist = plain.path(SkirtNames.WAIST);
        for (Dart dart : darts) {
            double turn = dart.mouthB().minus(dart.apex()).angleTo(dart.mouthA().minus(dart.apex()));
            closing = Transform.rotation(turn, dart.apex()).then(closing);
            opening = opening.then(Transform.rotation(-turn, dart.apex()));
            openings.add(opening);
            waist = Shell.joined(
                    waist,
                    plain.path(plain.after(Dart.legB(dart.name())).name()).transformed(closing));
        }
        Path turned = plain.path(EdgeNames.SIDE).transformed(closing);
        Path side = turned.withEnds(waist.end(), turned.end());
        Point bottom = plain.corner(EdgeNames.CENTRE, End.START);
        Piece closed = Piece.of(
                        plain.name(),
                        List.of(
                                new Edge(SkirtNames.WAIST, waist),
                                new Edge(EdgeNames.SIDE, side),
                                Edge.straight(EdgeNames.BOTTOM, side.end(), bottom),
                                plain.edge(EdgeNames.CENTRE)),
                        plain.grainline(),
                        plain.cut(),
                        plain.cloth())
                .withAspectOf(plain);
        return new ClosedTop(plain, closed, darts, List.copyOf(openings));
    }

    /** Returns the strips of that width of both halves, which end at the same place on the side. */
    static List<Strip> strips(ClosedTop front, ClosedTop back, double width) {
        Strip first = front.strip(width);
        Strip second = back.strip(width);
        double along = (first.side().length() + second.side().length()) / 2;
        return List.of(front.ending(first, along), back.ending(second, along));
    }

    private Strip strip(double width) {
        Piece strip = new SeparateFacing(
                        EdgeRef.of(plain.name(), SkirtNames.WAIST), Length.mm(width), Name.of("strip"), plain.cloth())
                .facing(closed);
        return new Strip(
                strip.path(SkirtNames.WAIST),
                strip.path(EdgeNames.SIDE),
                strip.path(CutOnFacing.facing(SkirtNames.WAIST)),
                strip.path(EdgeNames.CENTRE),
                strip.grainline());
    }

    private Strip ending(Strip strip, double along) {
        Path side = closed.path(EdgeNames.SIDE).sub(0, along);
        Path from = side.withEnds(strip.waist().end(), side.end());
        return new Strip(strip.waist(), from, square(strip.lower(), from), strip.centre(), strip.grain());
    }

    /** Leads the lower edge square on to the side, so that it runs on over the side seam to the other half. */
    private static Path square(Path lower, Path side) {
        Path.Split split = lower.splitAt(lower.length() * LED_ON);
        Point to = split.after().start();
        Path led = Path.of(Cubic.between(
                side.end(), side.endDirection().rightNormal(), to, split.after().startDirection()));
        return Shell.joined(led, split.after());
    }

    /**
     * Returns the half below a strip, its darts open again, its waist being the lower edge of the strip.
     *
     * @throws PatternException if a dart does not reach far enough below the strip
     */
    Piece below(Strip strip) {
        Path rest = strip.lower().reversed();
        List<Edge> edges = new ArrayList<>();
        Name stretch = SkirtNames.WAIST;
        Point from = rest.start();
        for (int i = 0; i < darts.size(); i++) {
            Dart dart = darts.get(i);
            Transform open = opening.get(i);
            Point apex = dart.apex();
            // The leg as it lies closed is found by trying each crossing opened: it lies on the line of leg a.
            Path opened = rest.transformed(open);
            Crossing met = Crossings.ofLine(
                            opened, apex, dart.mouthA().minus(apex).unit())
                    .stream()
                    .filter(each -> each.second() > 0)
                    .findFirst()
                    .orElseThrow(() -> tooDeep(dart, 0));
            double left = met.second();
            if (left < LEAST_DART) {
                throw tooDeep(dart, left);
            }
            Path.Split split = rest.splitAt(met.first());
            Path before = split.before().transformed(open);
            Point mouthA = before.end();
            rest = split.after();
            Point mouthB = opening.get(i + 1).apply(rest.start());
            edges.add(new Edge(stretch, before.withEnds(from, mouthA)));
            edges.add(Edge.straight(Dart.legA(dart.name()), mouthA, apex));
            edges.add(Edge.straight(Dart.legB(dart.name()), apex, mouthB));
            stretch = Dart.past(SkirtNames.WAIST, dart.name());
            from = mouthB;
        }
        Path whole = plain.path(EdgeNames.SIDE);
        double cut = strip.side().length();
        Path side = whole.sub(cut, whole.length()).withEnds(whole.pointAt(cut), whole.end());
        Path last = rest.transformed(opening.get(darts.size()));
        edges.add(new Edge(stretch, last.withEnds(from, side.start())));
        edges.add(new Edge(EdgeNames.SIDE, side));
        edges.add(plain.edge(EdgeNames.HEM));
        edges.add(Edge.straight(
                EdgeNames.CENTRE,
                plain.corner(EdgeNames.HEM, End.END),
                edges.get(0).path().start()));
        List<Notch> notches = new ArrayList<>();
        for (Notch notch : plain.notches()) {
            double along = notch.fromStart(whole.length()) - cut;
            if (notch.edge().equals(EdgeNames.SIDE) && along > 0) {
                notches.add(new Notch(notch.name(), EdgeNames.SIDE, End.START, along, notch.count()));
            }
        }
        return Shell.withFolds(Piece.of(plain.name(), edges, plain.grainline(), plain.cut(), plain.cloth())
                .withAspectOf(plain)
                .withNotches(notches));
    }

    private PatternException tooDeep(Dart dart, double left) {
        return PatternException.of(
                "strip along the waist of the " + plain.name(),
                "must end at least " + Length.mm(LEAST_DART).text() + " above the apex of '" + dart.name() + "', "
                        + dart.leg().text() + " below the waist",
                Length.mm(left).text() + " above it",
                "make it narrower");
    }
}
