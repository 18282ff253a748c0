package org.oaktag.laws.garment;

import static org.assertj.core.api.Assertions.assertThat;
import static org.oaktag.measure.Length.mm;

import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import net.jqwik.api.Assume;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.statistics.Statistics;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Polygon;
import org.oaktag.PatternException;
import org.oaktag.garment.Allowances;
import org.oaktag.garment.Cloth;
import org.oaktag.garment.Cut;
import org.oaktag.garment.CutLine;
import org.oaktag.garment.Edge;
import org.oaktag.garment.EdgeNames;
import org.oaktag.garment.Grainline;
import org.oaktag.garment.Name;
import org.oaktag.garment.Piece;
import org.oaktag.geometry.Outline;
import org.oaktag.geometry.Path;
import org.oaktag.geometry.Point;
import org.oaktag.measure.Percent;

/**
 * Hollows of all shapes, smooth at the bottom, that an allowance may close. The JTS Topology Suite says how far from
 * the edge the cut line stays.
 */
class HollowProperties {
    private static final Pattern QUOTED = Pattern.compile("use at most ([0-9.]+) mm, and the other .* same share");

    /** How near to the limit of twice the allowance our curves and the chords of JTS may disagree, mm. */
    private static final double UNSURE = 0.1;

    @Property(tries = 200)
    void a_hollow_is_refused_just_if_the_cut_line_stays_more_than_twice_the_allowance_from_it(
            @ForAll @DoubleRange(min = 8, max = 80) double mouth,
            @ForAll @DoubleRange(min = 8, max = 120) double inside,
            @ForAll @DoubleRange(min = 5, max = 150) double depth,
            @ForAll @DoubleRange(min = -0.4, max = 0.4) double lean,
            @ForAll @DoubleRange(min = 3, max = 25) double width) {
        Piece piece = hollow(mouth, inside, depth, lean);
        double stays = furthest(piece, width);
        Assume.that(Math.abs(stays - 2 * width) > UNSURE);
        Optional<PatternException> refusal = refusal(piece, width);
        Statistics.label("hollows").collect(refusal.isPresent() ? "refused" : "cut");
        Statistics.label("hollows").coverage(cover -> cover.check("refused").percentage(share -> share > 15));
        assertThat(refusal.isPresent())
                .as("stays %s mm off at %s mm: %s", stays, width, refusal)
                .isEqualTo(stays > 2 * width);
        refusal.ifPresent(refused -> {
            Matcher quoted = QUOTED.matcher(refused.remedy());
            assertThat(quoted.matches()).as(refused.getMessage()).isTrue();
            double most = Double.parseDouble(quoted.group(1));
            assertThat(most).isLessThan(width);
            assertThat(refusal(piece, most)).isEmpty();
            assertThat(refusal(piece, Math.min(most + 0.1, width))).isPresent();
            assertThat(refused.thing()).isEqualTo("allowance of 'panel.top'");
        });
    }

    private static Optional<PatternException> refusal(Piece piece, double width) {
        try {
            CutLine.of(piece, Allowances.of("any", mm(width)));
            return Optional.empty();
        } catch (PatternException refusal) {
            return Optional.of(refusal);
        }
    }

    /** The greatest distance of any place on the top edge from the rim of the piece grown by the width. */
    private static double furthest(Piece piece, double width) {
        Outline outline = piece.outline();
        Geometry grown = Jts.mitred(Jts.polygon(outline), width, 3);
        Geometry rim = ((Polygon) grown).getExteriorRing();
        Path top = piece.path(EdgeNames.TOP);
        double furthest = 0;
        for (int i = 0; i <= 2000; i++) {
            furthest = Math.max(furthest, rim.distance(Jts.point(top.pointAt(top.length() * i / 2000))));
        }
        return furthest;
    }

    /** A panel 600 mm square with a hollow in the middle of its top edge, its bottom aside by a share of its mouth. */
    private static Piece hollow(double mouth, double inside, double depth, double lean) {
        Point left = Point.of(300 - mouth / 2, 0);
        Point right = Point.of(300 + mouth / 2, 0);
        Point bottom = Point.of(300 + lean * mouth, depth);
        Path top = Path.from(Point.of(0, 0))
                .lineTo(left)
                .curveTo(Point.of(left.x(), depth / 2), Point.of(bottom.x() - inside / 2, depth), bottom)
                .curveTo(Point.of(bottom.x() + inside / 2, depth), Point.of(right.x(), depth / 2), right)
                .lineTo(Point.of(600, 0))
                .build();
        return Piece.of(
                Name.of("panel"),
                List.of(
                        new Edge(EdgeNames.TOP, top),
                        Edge.straight(EdgeNames.SIDE, top.end(), Point.of(600, 600)),
                        Edge.straight(EdgeNames.HEM, Point.of(600, 600), Point.of(0, 600)),
                        Edge.straight(EdgeNames.CENTRE, Point.of(0, 600), top.start())),
                new Grainline(Point.of(100, 200), Point.of(100, 400)),
                Cut.single(),
                Cloth.knit("any cloth", Percent.percent(20)));
    }
}
