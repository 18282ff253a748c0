package org.oaktag.laws.adjust;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.oaktag.measure.Length.mm;

import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.domains.Domain;
import net.jqwik.api.domains.DomainContext;
import org.oaktag.adjust.LineAcross;
import org.oaktag.adjust.Part;
import org.oaktag.adjust.PieceSplit;
import org.oaktag.adjust.Place;
import org.oaktag.adjust.SplitPiece;
import org.oaktag.blocks.TopEdges;
import org.oaktag.blocks.TopNames;
import org.oaktag.garment.Cut;
import org.oaktag.garment.Edge;
import org.oaktag.garment.EdgeNames;
import org.oaktag.garment.EdgeRef;
import org.oaktag.garment.End;
import org.oaktag.garment.FinishedMeasure;
import org.oaktag.garment.Garment;
import org.oaktag.garment.Name;
import org.oaktag.garment.Notch;
import org.oaktag.garment.Piece;
import org.oaktag.garment.WalkedSeam;
import org.oaktag.laws.adjust.PieceArbitraries.Crossed;
import org.oaktag.laws.adjustments.TopArbitraries;

/** Splitting loses nothing, and what it makes can be sewn together again. */
@Domain(PieceArbitraries.class)
@Domain(TopArbitraries.class)
@Domain(DomainContext.Global.class)
class SplitProperties {

    private static final Name FRONT_SIDE = Name.of("front side");
    private static final Name PRINCESS = Name.of("princess");

    @Property(tries = 200)
    void both_new_edges_are_one_line_and_nothing_is_lost(
            @ForAll Crossed crossed, @ForAll @DoubleRange(min = -20, max = 20) double bow) {
        Piece whole = crossed.piece();
        PieceSplit split = new SplitPiece(
                        whole.name(),
                        LineAcross.bowed(crossed.from(), crossed.to(), mm(bow)),
                        Part.of(Name.of("left part"), PRINCESS),
                        Part.of(whole.name(), PRINCESS),
                        PRINCESS)
                .split(whole);
        assertThat(split.left().path(PRINCESS).reversed())
                .isEqualTo(split.right().path(PRINCESS));
        assertThat(split.left().outline().signedArea() + split.right().outline().signedArea())
                .isCloseTo(whole.outline().signedArea(), within(1e-4));
        for (Edge edge : whole.edges()) {
            assertThat(length(split.left(), edge.name()) + length(split.right(), edge.name()))
                    .as("%s", edge.name())
                    .isCloseTo(edge.path().length(), within(5e-6));
        }
        assertThat(split.left().notches().size() + split.right().notches().size())
                .isEqualTo(whole.notches().size());
        for (Piece part : new Piece[] {split.left(), split.right()}) {
            assertThat(part.outline().selfCrossings()).isEmpty();
            assertThat(part.outline().contains(part.grainline().top())).isTrue();
            assertThat(part.outline().contains(part.grainline().bottom())).isTrue();
        }
    }

    @Property(tries = 60)
    void a_body_split_from_armhole_to_hem_is_sewn_and_measured_as_before(
            @ForAll Garment block,
            @ForAll @DoubleRange(min = 0.48, max = 0.6) double armhole,
            @ForAll @DoubleRange(min = 0.45, max = 0.7) double hem,
            @ForAll @DoubleRange(min = -20, max = 0) double bow) {
        Garment split = block.adjust(princess(TopNames.FRONT, FRONT_SIDE, PRINCESS, armhole, hem, bow));
        assertThat(split.walkSeams().untrue()).isEmpty();
        WalkedSeam seam = split.walkSeams().seam(PRINCESS);
        assertThat(seam.spans()).as("parted by its notch").hasSize(2);
        for (FinishedMeasure measure : block.measures()) {
            assertThat(split.finished(measure.name()).mm())
                    .as("%s", measure.name())
                    .isCloseTo(measure.of(block).mm(), within(1e-5));
        }
        assertThat(split.seam(TopNames.FRONT_ARMHOLE_SEAM).a().runs()).hasSize(2);
        assertThat(split.piece(TopNames.FRONT).cut()).isEqualTo(Cut.onFold(EdgeNames.CENTRE));
        assertThat(split.piece(FRONT_SIDE).cut()).isEqualTo(Cut.pair());
    }

    @Property(tries = 60)
    void a_new_edge_fits_no_edge_but_its_partner_and_that_one_way_round_only(
            @ForAll Garment block, @ForAll @DoubleRange(min = 0.45, max = 0.7) double hem) {
        Name backSide = Name.of("back side");
        Name backSeam = Name.of("back princess");
        Garment split = block.adjust(princess(TopNames.FRONT, FRONT_SIDE, PRINCESS, 0.5, hem, 0))
                .adjust(princess(TopNames.BACK, backSide, backSeam, 0.5, hem, 0));
        List<EdgeRef> edges = split.pieces().stream()
                .flatMap(piece -> piece.edges().stream().map(edge -> EdgeRef.of(piece.name(), edge.name())))
                .toList();
        for (Name seam : List.of(PRINCESS, backSeam)) {
            EdgeRef one = split.seam(seam).a().runs().get(0).edge();
            EdgeRef partner = split.seam(seam).b().runs().get(0).edge();
            assertThat(fits(split, one, partner, true))
                    .as("%s and %s", one, partner)
                    .isTrue();
            assertThat(fits(split, one, partner, false))
                    .as("%s turned round", partner)
                    .isFalse();
            for (EdgeRef other : edges) {
                if (!other.equals(one) && !other.equals(partner)) {
                    assertThat(fits(split, one, other, true) || fits(split, one, other, false))
                            .as("%s and %s", one, other)
                            .isFalse();
                }
            }
        }
    }

    /**
     * Whether somebody with pins would take the two for partners: as long, and as many cuts at the same places, to 2
     * mm.
     */
    private static boolean fits(Garment garment, EdgeRef one, EdgeRef other, boolean opposed) {
        double length = garment.edge(one).path().length();
        List<Double> marks = marks(garment, one, false);
        List<Double> others = marks(garment, other, opposed);
        if (Math.abs(length - garment.edge(other).path().length()) > 2 || marks.size() != others.size()) {
            return false;
        }
        for (int i = 0; i < marks.size(); i++) {
            if (Math.abs(marks.get(i) - others.get(i)) > 2) {
                return false;
            }
        }
        return true;
    }

    private static List<Double> marks(Garment garment, EdgeRef edge, boolean backwards) {
        double length = garment.edge(edge).path().length();
        List<Double> marks = new ArrayList<>();
        for (Notch notch : garment.piece(edge.piece()).notches()) {
            if (notch.edge().equals(edge.edge())) {
                double at = notch.fromStart(length);
                for (int cut = 0; cut < notch.count(); cut++) {
                    marks.add(backwards ? length - at : at);
                }
            }
        }
        marks.sort(Double::compare);
        return marks;
    }

    private static SplitPiece princess(Name body, Name side, Name seam, double armhole, double hem, double bow) {
        return new SplitPiece(
                body,
                LineAcross.bowed(
                        Place.share(TopEdges.ARMHOLE, armhole),
                        new Place(EdgeNames.HEM, End.START, hem, mm(0)),
                        mm(bow)),
                Part.of(side, PRINCESS),
                Part.of(body, PRINCESS),
                seam);
    }

    private static double length(Piece piece, Name edge) {
        return piece.hasEdge(edge) ? piece.path(edge).length() : 0;
    }
}
