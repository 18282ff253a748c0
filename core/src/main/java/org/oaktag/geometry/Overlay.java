package org.oaktag.geometry;

import java.util.ArrayList;
import java.util.List;

/**
 * Lays outlines over each other and finds the edges of what is inside.
 *
 * <p>All curves are cut where they meet ({@link OverlayCuts}); pieces that run along each other are made one. How often
 * each region winds round the places just right and left of a piece is counted on the uncut outlines; the two counts
 * must differ by what the piece itself adds, which tells that nothing lies between. A piece with inside on one side of
 * it only is an edge; edges are linked to loops ({@link OverlayLinks}).
 */
final class Overlay {
    /**
     * So far to the side of a piece it is asked what is inside, mm: a few times as far as curves that run along each
     * other may be apart.
     */
    static final double BESIDE = 4e-7;

    /** Further off, for pieces near to which something else lies. */
    private static final double[] FURTHER = {1, 10, 100, 0.3};

    /** Where on a piece it is asked. */
    private static final double[] PLACES = {0.5, 0.3, 0.7, 0.15, 0.85};

    /** Where it is looked whether two pieces keep together. */
    private static final double[] TOGETHER = {0.5, 0.2, 0.8};

    private final List<List<Outline>> sides;
    private final WindingRule rule;
    private final Inside inside;
    private final OverlayCuts cuts;

    /** What of two regions is wanted. */
    interface Inside {
        boolean of(boolean first, boolean second);
    }

    private Overlay(List<List<OverlayStrand>> strands, List<List<Outline>> sides, WindingRule rule, Inside inside) {
        this.sides = sides;
        this.rule = rule;
        this.inside = inside;
        this.cuts = new OverlayCuts(strands.stream()
                .flatMap(List::stream)
                .filter(s -> !s.curve().isPoint())
                .toList());
    }

    static List<Region.Loop> of(List<Outline> outlines, WindingRule rule) {
        List<OverlayStrand> strands = new ArrayList<>();
        for (Outline outline : outlines) {
            for (int i = 0; i < outline.path().curves().size(); i++) {
                Curve curve = outline.path().curves().get(i);
                strands.add(new OverlayStrand(new Region.Edge(curve, outline, i, 0, 1), 0));
            }
        }
        return new Overlay(List.of(strands), List.of(outlines, List.of()), rule, (first, second) -> first).loops();
    }

    static List<Region.Loop> of(Region first, Region second, Inside inside) {
        return new Overlay(
                        List.of(strands(first, 0), strands(second, 1)),
                        List.of(outlines(first), outlines(second)),
                        WindingRule.NON_ZERO,
                        inside)
                .loops();
    }

    private static List<OverlayStrand> strands(Region region, int side) {
        return region.loops().stream()
                .flatMap(loop -> loop.edges().stream())
                .map(edge -> new OverlayStrand(edge, side))
                .toList();
    }

    private static List<Outline> outlines(Region region) {
        return region.loops().stream().map(Region.Loop::outline).toList();
    }

    private List<Region.Loop> loops() {
        List<OverlayPiece> edges = new ArrayList<>();
        for (List<OverlayPiece> together : together(cuts.pieces())) {
            OverlayPiece piece = together.get(0);
            int[] adds = new int[sides.size()];
            for (OverlayPiece other : together) {
                adds[other.strand().side()] += runsAlike(piece.curve(), other.curve()) ? 1 : -1;
            }
            int[] right = windingsRight(piece.curve(), adds);
            boolean insideRight = inside.of(rule.isInside(right[0]), rule.isInside(right[1]));
            boolean insideLeft = inside.of(rule.isInside(right[0] - adds[0]), rule.isInside(right[1] - adds[1]));
            if (insideRight != insideLeft) {
                edges.add(insideRight ? piece : piece.reversed());
            }
        }
        return new OverlayLinks(edges, cuts.vertices()).loops();
    }

    /** Groups the pieces that run along each other, the first first. */
    private List<List<OverlayPiece>> together(List<OverlayPiece> pieces) {
        List<List<OverlayPiece>> groups = new ArrayList<>();
        List<List<List<OverlayPiece>>> atVertex = new ArrayList<>();
        cuts.vertices().forEach(vertex -> atVertex.add(new ArrayList<>()));
        for (OverlayPiece piece : pieces) {
            List<List<OverlayPiece>> known = atVertex.get(Math.min(piece.start(), piece.end()));
            List<OverlayPiece> group = known.stream()
                    .filter(other -> isAlong(other.get(0), piece))
                    .findFirst()
                    .orElseGet(() -> {
                        List<OverlayPiece> fresh = new ArrayList<>();
                        known.add(fresh);
                        groups.add(fresh);
                        return fresh;
                    });
            group.add(piece);
        }
        return groups;
    }

    private boolean isAlong(OverlayPiece one, OverlayPiece other) {
        if (Math.max(one.start(), one.end()) != Math.max(other.start(), other.end())) {
            return false;
        }
        for (double t : TOGETHER) {
            if (one.curve().nearest(other.curve().pointAt(t)).distance() > cuts.together()
                    || other.curve().nearest(one.curve().pointAt(t)).distance() > cuts.together()) {
                return false;
            }
        }
        return true;
    }

    private static boolean runsAlike(Curve one, Curve other) {
        double t = one.nearest(other.pointAt(0.5)).t();
        return one.directionAt(t).dot(other.directionAt(0.5)) > 0;
    }

    private int[] windingsRight(Curve curve, int[] adds) {
        double most = 0.1 * curve.start().distanceTo(curve.pointAt(0.5));
        for (double times : FURTHER) {
            double off = Math.min(times * Math.max(BESIDE, 4 * cuts.together()), most);
            for (double t : PLACES) {
                Point place = curve.pointAt(t);
                Vector aside = curve.directionAt(t).rightNormal().times(off);
                int[] right = windings(place.plus(aside));
                int[] left = windings(place.plus(aside.negated()));
                if (right[0] - left[0] == adds[0] && right[1] - left[1] == adds[1]) {
                    return right;
                }
            }
        }
        return windings(
                curve.pointAt(0.5).plus(curve.directionAt(0.5).rightNormal().times(Math.min(BESIDE, most))));
    }

    private int[] windings(Point point) {
        int[] windings = new int[sides.size()];
        for (int side = 0; side < windings.length; side++) {
            for (Outline outline : sides.get(side)) {
                windings[side] += outline.windingNumber(point);
            }
        }
        return windings;
    }
}
