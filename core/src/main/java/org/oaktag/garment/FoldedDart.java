package org.oaktag.garment;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Stream;
import org.oaktag.PatternException;
import org.oaktag.geometry.Crossing;
import org.oaktag.geometry.Crossings;
import org.oaktag.geometry.Line;
import org.oaktag.geometry.Path;
import org.oaktag.geometry.Point;
import org.oaktag.geometry.Transform;
import org.oaktag.geometry.Vector;

/**
 * A dart whose cloth is folded and laid to one side when its legs are sewn, and what the edge must look like across its
 * mouth to meet the edge beside it then.
 *
 * <pre>{@code
 * Garment darted = block.adjust(openDart(FRONT, Name.of("bust"), Place.share(SIDE, 0.2), mm(25), mm(110)));
 * FoldedDart bust = FoldedDart.in(darted.piece(FRONT), Name.of("bust"));
 * bust.towards();   // = END
 * }</pre>
 *
 * <p>Half of the cloth in the dart, that next to the leg towards which it is laid, comes to lie on the piece beside
 * that leg, turned over along it; the other half lies on that one, turned over along the fold. So the peak is the edge
 * beside the mouth, mirrored through the leg as far as the fold, and that mirrored through the fold. An edge too short
 * to reach the fold is prolonged straight. Immutable.
 *
 * @param dart the dart
 * @param towards the leg towards which the cloth is laid: leg a at the start, leg b at the end
 * @param peak from one mouth over the fold to the other, clockwise as the outline
 * @param tip where the peak meets the fold
 */
public record FoldedDart(Dart dart, End towards, Path peak, Point tip) {

    /** A dart leaning less than this from square to the grain, by its cosine, is laid down, not to the middle. */
    private static final double ACROSS = Math.cos(Math.toRadians(45));

    /** An edge beside the mouth turned further than this from it, by its cosine, is another side of the piece. */
    private static final double BESIDE = Math.cos(Math.toRadians(60));

    /** Peaks nearer to each other than this, mm, are one. */
    private static final double SAME = 1e-6;

    /**
     * How far short of the apex the hole is drilled: half an inch, so that the stitching hides it (common practice).
     */
    private static final double SHORT_OF_APEX = 12;

    /** Refuses null. */
    public FoldedDart {
        Objects.requireNonNull(dart, "dart");
        Objects.requireNonNull(towards, "towards");
        Objects.requireNonNull(peak, "peak");
        Objects.requireNonNull(tip, "tip");
    }

    /**
     * Returns a dart of a piece with its cloth laid as usual: a dart across the grain down, any other towards the fold
     * of the cloth (common practice), towards leg a where the piece is not cut on the fold; and to the other side where
     * there is no edge beside the mouth on that. Where a peak was drawn for it, it is laid as that says; beside a
     * straight edge the peak is the same for both sides.
     *
     * @throws PatternException if the piece has no such dart, or no peak can meet the edges beside it
     */
    public static FoldedDart in(Piece piece, Name name) {
        Dart dart = Dart.in(piece, name);
        FoldedDart usual = of(piece, dart, usual(piece, dart));
        return drawn(piece, dart)
                .filter(drawn -> !usual.runsAlong(drawn))
                .map(drawn -> of(piece, dart, usual.towards.opposite()))
                .orElse(usual);
    }

    /** Tells whether the peak is another one, which lies half way over either half on it where it does anywhere. */
    private boolean runsAlong(Path drawn) {
        return Stream.of(0.25, 0.5, 0.75)
                .allMatch(share ->
                        peak.nearest(drawn.pointAt(share * drawn.length())).distance() < SAME);
    }

    /**
     * Returns a dart of a piece with its cloth laid towards a leg.
     *
     * @param towards leg a at the start, leg b at the end
     * @throws PatternException if no peak can meet the edge beside that leg
     */
    public static FoldedDart of(Piece piece, Dart dart, End towards) {
        boolean toA = towards == End.START;
        Point mouth = toA ? dart.mouthA() : dart.mouthB();
        Path edge = toA
                ? piece.before(Dart.legA(dart.name())).path().reversed()
                : piece.after(Dart.legB(dart.name())).path();
        Vector fold = fold(dart);
        Path turned = prolonged(edge, 2 * dart.width().mm() + dart.leg().mm())
                .transformed(Transform.mirror(dart.apex(), mouth));
        Crossing met = Crossings.ofLine(turned, dart.apex(), fold).stream()
                .filter(each -> each.second() > 0)
                .findFirst()
                .orElseThrow(() -> PatternException.of(
                        "fold of dart '" + dart.name() + "' of piece '" + piece.name() + "'",
                        "needs an edge beside its mouth that reaches the fold when it is turned over along the leg",
                        "a dart of " + dart.angle().text() + " whose folded cloth never meets it",
                        "lay the cloth towards the other leg, make the dart narrower, or slit it"));
        Path half = Turning.between(turned.sub(0, met.first()), mouth, met.point());
        Path other = half.transformed(Transform.mirror(dart.apex(), dart.apex().plus(fold)))
                .reversed();
        Path whole = half.then(Turning.between(other, half.end(), toA ? dart.mouthB() : dart.mouthA()));
        return new FoldedDart(dart, towards, toA ? whole : whole.reversed(), half.end());
    }

    /** Returns the name of the inner line along which the cloth of a dart is folded, where it is drawn. */
    public static Name foldLine(Name dart) {
        return dart.with("fold");
    }

    /** Returns the name of the inner line across the mouth of a dart to which its cloth is cut, where it is drawn. */
    public static Name peakLine(Name dart) {
        return dart.with("peak");
    }

    /** Returns the line along which the cloth is folded, from the apex to the tip of the peak. */
    public Path fold() {
        return Path.polyline(dart.apex(), tip);
    }

    /** Returns where a hole is drilled: on the fold, 12 mm short of the apex, or half of the dart in a shorter one. */
    public Point drillHole() {
        double depth = dart.mouthA().midpoint(dart.mouthB()).distanceTo(dart.apex());
        return dart.apex().plus(fold(dart).times(Math.min(SHORT_OF_APEX, depth / 2)));
    }

    /** Returns the darts of a piece that are cut to be folded. */
    static List<FoldedDart> all(Piece piece, Allowances allowances) {
        List<FoldedDart> all = new ArrayList<>();
        if (allowances.darts() == DartCut.FOLDED) {
            for (Dart dart : Dart.all(piece)) {
                boolean turnedBack = allowances
                                .of(piece, before(piece, dart).name())
                                .isMirrored()
                        || allowances.of(piece, after(piece, dart).name()).isMirrored();
                if (!turnedBack) {
                    all.add(in(piece, dart.name()));
                }
            }
        }
        return List.copyOf(all);
    }

    /** Returns the edge beside the leg towards which the cloth is laid, which the peak continues. */
    Edge host(Piece piece) {
        return towards == End.START ? before(piece, dart) : after(piece, dart);
    }

    private static Edge before(Piece piece, Dart dart) {
        return piece.before(Dart.legA(dart.name()));
    }

    private static Edge after(Piece piece, Dart dart) {
        return piece.after(Dart.legB(dart.name()));
    }

    private static Vector fold(Dart dart) {
        return dart.mouthA()
                .minus(dart.apex())
                .unit()
                .plus(dart.mouthB().minus(dart.apex()).unit())
                .unit();
    }

    private static Optional<Path> drawn(Piece piece, Dart dart) {
        return piece.lines().stream()
                .filter(line -> line.name().equals(peakLine(dart.name())))
                .map(InnerLine::path)
                .findFirst();
    }

    private static End usual(Piece piece, Dart dart) {
        Vector mouth = dart.mouthB().minus(dart.mouthA()).unit();
        Vector down = piece.grainline().bottom().minus(piece.grainline().top()).unit();
        End wanted = End.START;
        if (Math.abs(fold(dart).dot(down)) < ACROSS) {
            wanted = mouth.dot(down) > 0 ? End.END : End.START;
        } else if (piece.cut() instanceof Cut.OnFold onFold) {
            Line fold = new Line(
                    piece.path(onFold.edge()).start(), piece.path(onFold.edge()).end());
            wanted = distance(fold, dart.mouthB()) < distance(fold, dart.mouthA()) ? End.END : End.START;
        }
        boolean startsHere = before(piece, dart).path().endDirection().dot(mouth) > BESIDE;
        boolean goesOn = after(piece, dart).path().startDirection().dot(mouth) > BESIDE;
        if (wanted == End.START && !startsHere && goesOn) {
            return End.END;
        }
        return wanted == End.END && !goesOn && startsHere ? End.START : wanted;
    }

    private static double distance(Line line, Point point) {
        return Math.abs(line.directionAt(0).cross(point.minus(line.start())));
    }

    private static Path prolonged(Path path, double by) {
        return path.then(
                Path.polyline(path.end(), path.end().plus(path.endDirection().times(by))));
    }
}
