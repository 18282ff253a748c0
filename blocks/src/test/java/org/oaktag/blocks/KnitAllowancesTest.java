package org.oaktag.blocks;

import static org.assertj.core.api.Assertions.assertThat;
import static org.oaktag.measure.Length.mm;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.oaktag.garment.Allowances;
import org.oaktag.garment.Cloth;
import org.oaktag.garment.Cut;
import org.oaktag.garment.Edge;
import org.oaktag.garment.EdgeNames;
import org.oaktag.garment.Garment;
import org.oaktag.garment.Grainline;
import org.oaktag.garment.Name;
import org.oaktag.garment.Piece;
import org.oaktag.garment.Seam;
import org.oaktag.garment.SeamSide;
import org.oaktag.garment.Wearer;
import org.oaktag.geometry.Point;
import org.oaktag.measure.Percent;

/** What a neckline gets, and what is sewn to it; the widths are common practice. */
class KnitAllowancesTest {

    private static final Name FRONT = Name.of("front");
    private static final Name COLLAR = Name.of("collar");
    private static final Name COLLAR_LINING = Name.of("collar lining");
    private static final Name LEFT = Name.of("left");

    private static Piece piece(Name name, Name top, Cut cut) {
        Point a = Point.of(0, 0);
        Point b = Point.of(100, 0);
        Point c = Point.of(100, 100);
        Point d = Point.of(0, 100);
        return Piece.of(
                name,
                List.of(
                        Edge.straight(top, a, b),
                        Edge.straight(EdgeNames.SIDE, b, c),
                        Edge.straight(EdgeNames.BOTTOM, c, d),
                        Edge.straight(LEFT, d, a)),
                new Grainline(Point.of(50, 20), Point.of(50, 80)),
                cut,
                Cloth.knit("trial knit", Percent.percent(20)));
    }

    private static Garment sewn(List<Piece> pieces, Seam... seams) {
        return Garment.of("collared", Wearer.of("nobody", false, Map.of()), pieces, List.of(seams), List.of());
    }

    private static Seam flat(String name, SeamSide a, SeamSide b) {
        return Seam.flat(Name.of(name), a, b, "redraw it");
    }

    @Test
    void both_sides_of_a_neckline_seam_and_what_is_sewn_to_them_are_narrow() {
        Piece front = piece(FRONT, TopEdges.NECKLINE, Cut.onFold(LEFT));
        Piece collar = piece(COLLAR, EdgeNames.TOP, Cut.single());
        Piece lining = piece(COLLAR_LINING, EdgeNames.TOP, Cut.single());
        Allowances knit = KnitTop.allowances(sewn(
                List.of(front, collar, lining),
                flat("collar", SeamSide.along(FRONT, TopEdges.NECKLINE), SeamSide.along(COLLAR, EdgeNames.BOTTOM)),
                flat(
                        "collar lining",
                        SeamSide.along(COLLAR, EdgeNames.BOTTOM),
                        SeamSide.along(COLLAR_LINING, EdgeNames.BOTTOM))));
        assertThat(knit.on(front, TopEdges.NECKLINE)).isEqualTo(mm(6));
        assertThat(knit.on(collar, EdgeNames.BOTTOM)).isEqualTo(mm(6));
        assertThat(knit.on(lining, EdgeNames.BOTTOM)).isEqualTo(mm(6));
        assertThat(knit.on(collar, EdgeNames.TOP)).isEqualTo(mm(10));
    }

    @Test
    void the_other_half_of_a_neckline_is_as_narrow() {
        Piece front = piece(FRONT, TopEdges.NECKLINE, Cut.single());
        Name half = TopEdges.NECKLINE.with("mirrored");
        Piece parted = front.withEdges(List.of(
                Edge.straight(TopEdges.NECKLINE, Point.of(0, 0), Point.of(50, 0)),
                Edge.straight(half, Point.of(50, 0), Point.of(100, 0)),
                front.edges().get(1),
                front.edges().get(2),
                front.edges().get(3)));
        Allowances knit = KnitTop.allowances(sewn(List.of(parted)));
        assertThat(knit.on(parted, half)).isEqualTo(mm(6));
        assertThat(knit.on(parted, EdgeNames.SIDE)).isEqualTo(mm(10));
    }
}
