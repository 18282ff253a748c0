package org.oaktag.adjust;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.oaktag.adjust.Pieces.leaveRaw;
import static org.oaktag.adjust.Pieces.turnBack;
import static org.oaktag.adjust.SquareOfCloth.LEFT;
import static org.oaktag.adjust.SquareOfCloth.LOWER;
import static org.oaktag.adjust.SquareOfCloth.NAME;
import static org.oaktag.adjust.SquareOfCloth.RIGHT;
import static org.oaktag.adjust.SquareOfCloth.UPPER;
import static org.oaktag.measure.Length.mm;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.oaktag.PatternException;
import org.oaktag.garment.Allowances;
import org.oaktag.garment.Cut;
import org.oaktag.garment.CutLine;
import org.oaktag.garment.EdgeRef;
import org.oaktag.garment.Garment;
import org.oaktag.garment.InnerLine;
import org.oaktag.garment.Name;
import org.oaktag.garment.RawEdge;
import org.oaktag.garment.Seam;
import org.oaktag.garment.SeamSide;
import org.oaktag.garment.Wearer;

/** A tube of a square: its sides are sewn to each other, so that its upper and its lower edge are raw. */
class FinishEdgesTest {

    private static final EdgeRef ABOVE = EdgeRef.of(NAME, UPPER);
    private static final EdgeRef BELOW = EdgeRef.of(NAME, LOWER);
    private static final Garment TUBE = Garment.of(
            "tube",
            Wearer.of("nobody", false, Map.of()),
            List.of(SquareOfCloth.cut(Cut.single())),
            List.of(Seam.flat(Name.of("tube"), SeamSide.along(NAME, RIGHT), SeamSide.against(NAME, LEFT), "")),
            List.of());

    private static List<EdgeRef> raw(Garment garment) {
        return garment.rawEdges().stream().map(RawEdge::edge).toList();
    }

    @Test
    void what_no_seam_takes_in_is_raw_until_it_is_turned_back_or_left_so_on_purpose() {
        assertThat(raw(TUBE)).containsExactlyInAnyOrder(ABOVE, BELOW);
        Garment turned = TUBE.adjust(turnBack(BELOW));
        assertThat(raw(turned)).containsExactly(ABOVE);
        assertThat(turned.turnedBack()).containsExactly(BELOW);
        assertThat(raw(turned.adjust(leaveRaw(ABOVE)))).isEmpty();
        assertThat(TUBE.rawEdges().get(0).text())
                .contains("is raw")
                .contains(TUBE.edge(ABOVE).length().text())
                .contains("turn it back");
    }

    @Test
    void an_edge_left_raw_is_cut_at_its_seam_line() {
        Allowances ten = Allowances.of("ten", mm(10));
        Garment left = TUBE.adjust(leaveRaw(ABOVE));
        double side = TUBE.edge(ABOVE).length().mm();
        double before = CutLine.of(TUBE.piece(NAME), ten.finished(TUBE, mm(20)))
                .outline()
                .area();
        double after = CutLine.of(left.piece(NAME), ten.finished(left, mm(20)))
                .outline()
                .area();
        assertThat(before - after).isCloseTo(10 * (side + 20), within(1e-6));
    }

    @Test
    void what_is_stitched_on_to_another_piece_is_not_raw() {
        Name shell = Name.of("shell");
        Garment laid = TUBE.withSeams(List.of())
                .withPiece(SquareOfCloth.cut(Cut.single())
                        .renamed(shell)
                        .withLines(List.of(new InnerLine(
                                NAME, InnerLine.Use.PLACEMENT, TUBE.piece(NAME).path(UPPER)))));
        assertThat(raw(laid)).hasSize(4).allMatch(edge -> edge.piece().equals(shell));
    }

    @Test
    void an_edge_that_is_sewn_or_on_a_fold_is_refused() {
        assertThatThrownBy(() -> TUBE.adjust(leaveRaw(EdgeRef.of(NAME, RIGHT))))
                .isInstanceOf(PatternException.class)
                .hasMessageContaining("seam 'tube'");
        Garment folded =
                Garment.of("folded", TUBE.wearer(), List.of(SquareOfCloth.cut(Cut.onFold(LEFT))), List.of(), List.of());
        assertThat(raw(folded)).doesNotContain(EdgeRef.of(NAME, LEFT));
        assertThatThrownBy(() -> folded.adjust(turnBack(EdgeRef.of(NAME, LEFT))))
                .isInstanceOf(PatternException.class)
                .hasMessageContaining("fold");
    }
}
