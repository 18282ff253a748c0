package org.oaktag.adjust;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.oaktag.garment.Amount;
import org.oaktag.garment.Cloth;
import org.oaktag.garment.Cut;
import org.oaktag.garment.Edge;
import org.oaktag.garment.EdgeNames;
import org.oaktag.garment.Garment;
import org.oaktag.garment.Grainline;
import org.oaktag.garment.Mark;
import org.oaktag.garment.Name;
import org.oaktag.garment.Note;
import org.oaktag.garment.Piece;
import org.oaktag.garment.Wearer;
import org.oaktag.geometry.Point;
import org.oaktag.measure.Percent;

class SoundPiecesTest {

    private static final Name PANEL = Name.of("panel");
    private static final Name CHALK = Name.of("chalk");

    private static final Garment PANELS = Garment.of(
            "panels",
            Wearer.of("nobody", false, Map.of()),
            List.of(panel(600).withMarks(List.of(Mark.of(CHALK, Point.of(100, 500))))),
            List.of(),
            List.of());

    @Test
    void a_grainline_that_lies_inside_stays_where_it_is() {
        Garment shorter = PANELS.adjust(new CutOffAt(560));
        assertThat(shorter.piece(PANEL).grainline())
                .isEqualTo(PANELS.piece(PANEL).grainline());
        assertThat(lastNotes(shorter)).isEmpty();
    }

    @Test
    void a_grainline_that_would_run_out_is_drawn_inside_in_its_direction_and_told() {
        Garment cropped = PANELS.adjust(new CutOffAt(300));
        Grainline grain = cropped.piece(PANEL).grainline();
        assertThat(grain.top().x()).isEqualTo(grain.bottom().x()).isEqualTo(80);
        assertThat(grain.top().y()).isPositive().isLessThan(grain.bottom().y());
        assertThat(grain.bottom().y()).isLessThan(300);
        assertThat(lastNotes(cropped)).contains("the grainline of the panel is drawn where it lies inside the piece");
    }

    @Test
    void a_grainline_that_is_cut_off_as_a_whole_is_drawn_anew() {
        Grainline grain = PANELS.adjust(new CutOffAt(90)).piece(PANEL).grainline();
        assertThat(grain.top().y()).isPositive();
        assertThat(grain.bottom().y()).isBetween(grain.top().y(), 90.0);
    }

    @Test
    void a_mark_that_would_lie_beside_the_piece_is_left_out_with_a_caution() {
        Garment cropped = PANELS.adjust(new CutOffAt(300));
        assertThat(cropped.piece(PANEL).marks()).isEmpty();
        assertThat(cropped.cautions())
                .containsExactly(
                        "the mark 'chalk' would lie beside the panel and is left out: take the step anew that set it");
        assertThat(PANELS.adjust(new CutOffAt(560)).piece(PANEL).marks()).hasSize(1);
    }

    private static List<String> lastNotes(Garment garment) {
        return garment.history().get(garment.history().size() - 1).notes().stream()
                .map(Note::text)
                .toList();
    }

    private static Piece panel(double height) {
        return Piece.of(
                PANEL,
                List.of(
                        Edge.straight(EdgeNames.TOP, Point.of(0, 0), Point.of(200, 0)),
                        Edge.straight(EdgeNames.SIDE, Point.of(200, 0), Point.of(200, height)),
                        Edge.straight(EdgeNames.HEM, Point.of(200, height), Point.of(0, height)),
                        Edge.straight(EdgeNames.CENTRE, Point.of(0, height), Point.of(0, 0))),
                new Grainline(Point.of(80, 100), Point.of(80, 500)),
                Cut.pair(),
                Cloth.knit("trial jersey", Percent.percent(20)));
    }

    /** Draws the panel with another height and leaves all that is marked on it. */
    private record CutOffAt(double height) implements Step {

        @Override
        public String name() {
            return "cut off the panel";
        }

        @Override
        public List<Amount> amounts() {
            return List.of();
        }

        @Override
        public Reshaped reshape(Garment garment) {
            return Reshaped.of(garment.withPiece(
                    garment.piece(PANEL).withEdges(panel(height).edges())));
        }
    }
}
