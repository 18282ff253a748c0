package org.oaktag.sewing;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.oaktag.garment.Cloth;
import org.oaktag.garment.Cut;
import org.oaktag.garment.Edge;
import org.oaktag.garment.Garment;
import org.oaktag.garment.Grainline;
import org.oaktag.garment.Name;
import org.oaktag.garment.Piece;
import org.oaktag.garment.Seam;
import org.oaktag.garment.SeamSide;
import org.oaktag.garment.Wearer;
import org.oaktag.geometry.Point;
import org.oaktag.measure.Percent;

/** The order of seams of tubes drawn by hand, which plain reasoning gives. */
class AssemblyOrderTest {

    private static final Name TOP_LEFT = Name.of("top left");
    private static final Name TOP = Name.of("top");
    private static final Name RIGHT = Name.of("right");
    private static final Name HEM = Name.of("hem");
    private static final Name LEFT = Name.of("left");

    private static Piece panel(String name, List<Name> edges, Point... corners) {
        List<Edge> drawn = new ArrayList<>();
        for (int i = 0; i < corners.length; i++) {
            drawn.add(Edge.straight(edges.get(i), corners[i], corners[(i + 1) % corners.length]));
        }
        return Piece.of(
                Name.of(name),
                drawn,
                new Grainline(Point.of(50, 10), Point.of(50, 90)),
                Cut.single(),
                Cloth.knit("trial knit", Percent.percent(20)));
    }

    private static Piece square(String name) {
        return panel(
                name,
                List.of(TOP, RIGHT, HEM, LEFT),
                Point.of(0, 0),
                Point.of(100, 0),
                Point.of(100, 100),
                Point.of(0, 100));
    }

    private static Seam seam(String name, SeamSide a, SeamSide b) {
        return Seam.flat(Name.of(name), a, b, "");
    }

    private static SeamSide along(String piece, Name edge) {
        return SeamSide.along(Name.of(piece), edge);
    }

    private static SeamSide against(String piece, Name edge) {
        return SeamSide.against(Name.of(piece), edge);
    }

    /**
     * A tube of one panel, and on its upper edge another of two, one of which carries two more above it: the smaller
     * unit would be that of a panel and the lower tube, but the upper one has to be closed first.
     */
    @Test
    void interfacing_is_fused_while_its_piece_lies_flat() {
        Piece front = square("front");
        Piece fused = square("fused").withCloth(Cloth.woven("fusible").as(Cloth.INTERFACING));
        Seam tube = seam("tube", along("front", RIGHT), SeamSide.against(Name.of("front"), LEFT));
        Seam laid = seam(
                "laid",
                along("front", TOP).then(along("front", RIGHT)),
                along("fused", TOP).then(along("fused", RIGHT)));
        Garment garment = Garment.of(
                "tube", Wearer.of("nobody", false, Map.of()), List.of(front, fused), List.of(tube, laid), List.of());
        assertThat(AssemblyOrder.of(garment).operations())
                .extracting(operation -> operation.name().value())
                .startsWith("laid", "tube");
    }

    @Test
    void a_ring_is_closed_on_both_sides_before_it_is_sewn_even_where_that_makes_larger_parts_first() {
        Piece tube = panel(
                "tube",
                List.of(TOP_LEFT, TOP, RIGHT, HEM, LEFT),
                Point.of(0, 0),
                Point.of(100, 0),
                Point.of(200, 0),
                Point.of(200, 100),
                Point.of(0, 100));
        List<Seam> seams = List.of(
                seam("ring front", along("tube", TOP_LEFT), against("plain", HEM)),
                seam("ring back", along("tube", TOP), against("laden", HEM)),
                seam("closing tube", along("tube", RIGHT), against("tube", LEFT)),
                seam("closing middle", along("plain", RIGHT), against("laden", LEFT)),
                seam("closing ends", along("laden", RIGHT), against("plain", LEFT)),
                seam("first load", along("laden", TOP), against("load", HEM)),
                seam("second load", along("load", TOP), against("more", HEM)));
        Garment garment = Garment.of(
                "two tubes",
                Wearer.of("nobody", false, Map.of()),
                List.of(tube, square("plain"), square("laden"), square("load"), square("more")),
                seams,
                List.of());
        List<Operation> joins = AssemblyOrder.of(garment).operations().stream()
                .filter(each -> each.work() instanceof Operation.Join)
                .toList();
        assertThat(joins).hasSize(seams.size());
        List<String> order = joins.stream().map(each -> each.name().value()).toList();
        for (String ring : List.of("ring front", "ring back")) {
            for (String closing : List.of("closing tube", "closing middle", "closing ends")) {
                assertThat(order.indexOf(closing))
                        .as("%s before %s", closing, ring)
                        .isLessThan(order.indexOf(ring));
            }
        }
        assertThat(joins)
                .filteredOn(Operation::inTheRound)
                .extracting(each -> each.name().value())
                .containsExactlyInAnyOrder("ring front", "ring back");
    }
}
