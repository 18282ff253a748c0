package org.oaktag.blocks;

import java.util.List;
import java.util.Optional;
import org.oaktag.garment.Cloth;
import org.oaktag.garment.FlatShape;
import org.oaktag.garment.Garment;
import org.oaktag.garment.Piece;
import org.oaktag.garment.Seam;
import org.oaktag.garment.SeamRule;
import org.oaktag.geometry.Path;
import org.oaktag.geometry.Point;
import org.oaktag.geometry.Transform;

/**
 * A hood laid flat above the neckline. A hood is no flat thing, so this is a likeness and not a projection: its height
 * above the shoulder is that of the side panel; its width is that of its girth, twice the depth of a side panel and the
 * strip, pressed flat with an opening of two fifths of the width; its strip, where it has one, is as wide as it is.
 */
final class FlatHood {

    /** The share of the width of a flattened hood that its opening takes: chosen by eye. */
    private static final double OPENING = 0.4;

    /** Where the hood is widest, and where the opening is, as shares of its height: chosen by eye. */
    private static final double WIDEST = 0.52;

    private static final double OPENING_WIDEST = 0.5;
    private static final double OPENING_TOP = 0.9;
    private static final double ROUND = 0.5523;

    private final Garment garment;
    private final Piece side;
    private final Optional<Piece> centre;
    private final double height;
    private final double halfWidth;
    private final double halfStrip;

    private FlatHood(Garment garment) {
        this.garment = garment;
        this.side = garment.piece(TopNames.HOOD_SIDE);
        this.centre = garment.findPiece(TopNames.HOOD_CENTRE);
        Path crown = side.path(HoodNames.CROWN);
        Path neck = side.path(HoodNames.NECK);
        double depth = crown.bounds().maxX() - crown.start().x();
        Point shoulder = side.notch(HoodNames.NECK, TopNames.SHOULDER_NOTCH)
                .map(side::pointOf)
                .orElseGet(neck::start);
        this.height = shoulder.y() - crown.start().y();
        this.halfStrip =
                centre.map(piece -> piece.path(HoodNames.NECK).length()).orElse(0.0);
        this.halfWidth = (2 * depth + 2 * halfStrip) / (2 - OPENING) / 2;
    }

    static boolean isOn(Garment garment) {
        return garment.hasPiece(TopNames.HOOD_SIDE);
    }

    static FlatHood of(Garment garment) {
        return new FlatHood(garment);
    }

    /** Returns the inside of its back, as it is seen through the opening. */
    FlatShape inside(Path frontNeckline) {
        Cloth cloth = garment.findPiece(TopNames.HOOD_SIDE_LINING).orElse(side).cloth();
        return FlatShape.inside(dome(frontNeckline), cloth);
    }

    /** Returns its back: the side panels and over them the strip, or their seam. */
    List<FlatShape> back(Path neckline) {
        FlatShape sides = FlatShape.outside(dome(neckline), side.cloth());
        double n = neckline.length() / 2;
        return centre.map(piece -> List.of(sides, strip(piece, neckline, n)))
                .orElseGet(() ->
                        List.of(sides.withSeams(List.of(Path.polyline(Point.of(0, -height), neckline.pointAt(n))))));
    }

    private FlatShape strip(Piece piece, Path neckline, double n) {
        Path foot = neckline.sub(n - halfStrip, n + halfStrip);
        double width = halfStrip * 1.15;
        Path rightSeam = Path.from(foot.end())
                .curveTo(
                        Point.of(width, foot.end().y() - 0.35 * height),
                        Point.of(width, -0.7 * height),
                        Point.of(halfStrip, -height))
                .build();
        Path leftSeam = rightSeam.transformed(Transform.mirrorX(0)).reversed();
        return FlatShape.outside(FlatShape.closed(List.of(rightSeam, leftSeam, foot)), piece.cloth());
    }

    /** Returns the strip as it is seen from the front, and the two fronts, of which the one at the right laps over. */
    List<FlatShape> fronts(Path neckline) {
        double n = neckline.length() / 2;
        Path foot = neckline.sub(n - lap() / 2, 2 * n);
        Path face = face(foot.start());
        if (centre.isEmpty()) {
            FlatShape whole =
                    FlatShape.outside(FlatShape.closed(List.of(foot, silhouette(foot.end()), face)), side.cloth());
            return List.of(whole.mirrored(), whole);
        }
        double atSeam = face.nearest(Point.of(halfStrip, -OPENING_TOP * height)).distanceAlong();
        Path.Split parted = face.splitAt(atSeam);
        Path rim = silhouette(foot.end());
        FlatShape right = FlatShape.outside(FlatShape.closed(List.of(foot, rim, parted.after())), side.cloth());
        Point top = rim.end();
        Path leftOpening = parted.before().transformed(Transform.mirrorX(0));
        Path strip = FlatShape.closed(List.of(
                Path.polyline(Point.of(-top.x(), top.y()), top), parted.before().reversed(), leftOpening));
        return List.of(FlatShape.outside(strip, centre.get().cloth()), right.mirrored(), right);
    }

    /** The face from the middle of the top down to where the neck edge ends. */
    private Path face(Point start) {
        double top = -OPENING_TOP * height;
        double opening = OPENING * halfWidth;
        double level = -OPENING_WIDEST * height;
        return Path.from(Point.of(0, top))
                .curveTo(
                        Point.of(ROUND * opening, top),
                        Point.of(opening, level - ROUND * (level - top)),
                        Point.of(opening, level))
                .curveTo(
                        Point.of(opening, level + 0.45 * (start.y() - level)),
                        Point.of(start.x() + 0.45 * (opening - start.x()), start.y() - 0.22 * (start.y() - level)),
                        start)
                .build();
    }

    private double lap() {
        return garment.seams().stream()
                .filter(seam -> seam.name().equals(HoodNames.NECK_SEAM))
                .map(Seam::rule)
                .filter(SeamRule.Lapped.class::isInstance)
                .mapToDouble(rule -> 2 * ((SeamRule.Lapped) rule).lap().mm())
                .findFirst()
                .orElse(0);
    }

    private Path dome(Path neckline) {
        Path right = silhouette(neckline.end());
        Path left = right.transformed(Transform.mirrorX(0)).reversed();
        return FlatShape.closed(List.of(neckline, right, left));
    }

    /** From the side neck point at the right up and round to where the strip begins. */
    private Path silhouette(Point sideNeck) {
        double widest = -WIDEST * height;
        double rise = height - WIDEST * height;
        return Path.from(sideNeck)
                .curveTo(
                        Point.of(sideNeck.x() + 0.35 * (halfWidth - sideNeck.x()), sideNeck.y() + 0.35 * widest),
                        Point.of(halfWidth, 0.5 * widest),
                        Point.of(halfWidth, widest))
                .curveTo(
                        Point.of(halfWidth, widest - ROUND * rise),
                        Point.of(halfStrip + (1 - ROUND) * (halfWidth - halfStrip), -height),
                        Point.of(halfStrip, -height))
                .build();
    }
}
