package org.oaktag.garment;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.oaktag.measure.Percent.percent;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.oaktag.PatternException;
import org.oaktag.geometry.Point;

class CutListTest {

    private static final Cloth SHELL = Cloth.knit("trial knit", percent(20));
    private static final Cloth RIB = Cloth.rib("trial rib", percent(80));
    private static final Name LEFT = Name.of("left");
    private static final Name RIGHT = Name.of("right");
    private static final List<Name> EDGES = List.of(EdgeNames.TOP, RIGHT, EdgeNames.BOTTOM, LEFT);

    private static Piece square(String name, Cut cut, Cloth cloth) {
        List<Point> corners = List.of(Point.of(0, 0), Point.of(100, 0), Point.of(100, 100), Point.of(0, 100));
        List<Edge> edges = new ArrayList<>();
        for (int i = 0; i < 4; i++) {
            edges.add(Edge.straight(EDGES.get(i), corners.get(i), corners.get((i + 1) % 4)));
        }
        return Piece.of(Name.of(name), edges, new Grainline(Point.of(50, 20), Point.of(50, 80)), cut, cloth);
    }

    private static Seam seam(String name, Piece a, Name edgeA, Piece b, Name edgeB) {
        return Seam.flat(
                Name.of(name), SeamSide.along(a.name(), edgeA), SeamSide.against(b.name(), edgeB), "redraw it");
    }

    private static Garment garment(List<Piece> pieces, Seam... seams) {
        return Garment.of("trial", Wearer.of("nobody", false, Map.of()), pieces, List.of(seams), List.of());
    }

    @Test
    void several_garments_in_one_list_keep_their_numbers_and_say_whose_they_are() {
        Garment hers = Garment.of(
                "top",
                Wearer.of("Mira", false, Map.of()),
                List.of(square("back", Cut.onFold(LEFT), SHELL), square("cuff", Cut.pair(), RIB)),
                List.of(),
                List.of());
        Garment his = Garment.of(
                "top",
                Wearer.of("Bram", false, Map.of()),
                List.of(
                        square("back", Cut.onFold(LEFT), SHELL),
                        square("pocket", new Cut.Single(1), SHELL),
                        square("cuff", Cut.pair(), RIB)),
                List.of(),
                List.of());
        CutList both = CutList.of(List.of(hers, his));
        assertThat(both.items())
                .extracting(item -> item.owner().wearer() + " " + item.numberText() + " "
                        + item.piece().name())
                .containsExactly(
                        "Mira 1 of 2 back",
                        "Mira 2 of 2 cuff",
                        "Bram 1 of 3 back",
                        "Bram 2 of 3 pocket",
                        "Bram 3 of 3 cuff");
        assertThat(both.owners()).extracting(CutList.Owner::wearer).containsExactly("Mira", "Bram");
        assertThat(both.cloths()).containsExactly(SHELL, RIB);
        assertThat(both.from(RIB).stream().mapToInt(CutList.Item::count).sum()).isEqualTo(4);
    }

    @Test
    void every_piece_is_listed_once_and_numbered_under_its_cloth() {
        Piece back = square("back", Cut.onFold(LEFT), SHELL);
        Piece sleeve = square("sleeve", Cut.pair(), SHELL);
        Piece cuff = square("cuff", Cut.pair(), RIB);
        CutList list = CutList.of(garment(
                List.of(back, cuff, sleeve),
                seam("armhole", back, RIGHT, sleeve, EdgeNames.TOP),
                seam("wrist", sleeve, EdgeNames.BOTTOM, cuff, EdgeNames.TOP)));
        assertThat(list.items()).extracting(CutList.Item::numberText).containsExactly("1 of 3", "2 of 3", "3 of 3");
        assertThat(list.cloths()).containsExactly(SHELL, RIB);
        assertThat(list.from(SHELL))
                .extracting(item -> item.piece().name().value())
                .containsExactly("back", "sleeve");
        assertThat(list.from(RIB)).singleElement().satisfies(item -> {
            assertThat(item.count()).isEqualTo(2);
            assertThat(item.isMirrored()).isTrue();
            assertThat(item.isOnFold()).isFalse();
        });
        assertThat(list.from(SHELL.as(Cloth.LINING))).isEmpty();
    }

    @Test
    void a_band_drawn_whole_serves_both_hands_of_a_half_that_one_seam_takes_in_twice() {
        Piece front = square("front", Cut.onFold(LEFT), SHELL);
        Piece band = square("band", Cut.single(), SHELL);
        SeamSide top = SeamSide.along(front.name(), EdgeNames.TOP);
        SeamSide bottom = SeamSide.along(band.name(), EdgeNames.BOTTOM);
        Seam once = Seam.flat(Name.of("waist"), top, bottom, "redraw it");
        Seam twice = Seam.flat(
                Name.of("waist"), SeamSide.against(front.name(), EdgeNames.TOP).then(top), bottom, "redraw it");
        assertThatThrownBy(() -> CutList.of(garment(List.of(front, band), once)))
                .isInstanceOf(PatternException.class);
        assertThatCode(() -> CutList.of(garment(List.of(front, band), twice))).doesNotThrowAnyException();
    }

    @Test
    void two_left_sleeves_are_refused() {
        Piece back = square("back", Cut.onFold(LEFT), SHELL);
        Piece sleeve = square("sleeve", new Cut.Single(2), SHELL);
        Garment garment = garment(List.of(back, sleeve), seam("armhole", back, RIGHT, sleeve, EdgeNames.TOP));
        assertThatThrownBy(() -> CutList.of(garment))
                .isInstanceOf(PatternException.class)
                .hasMessage(
                        "cut of piece 'sleeve': must give as many left and right as 'back' (cut 1 on fold), to which it"
                                + " is sewn in seam 'armhole'; got cut 2; cut it as a mirrored pair or on the fold, as many as"
                                + " there are of the other");
    }

    @Test
    void a_sleeve_that_lacks_its_other_is_refused_wherever_it_stands_in_the_seam() {
        Piece back = square("back", Cut.onFold(LEFT), SHELL);
        Piece sleeve = square("sleeve", Cut.single(), SHELL);
        Piece cuff = square("cuff", Cut.pair(), RIB);
        assertThatThrownBy(() ->
                        CutList.of(garment(List.of(back, sleeve), seam("armhole", sleeve, EdgeNames.TOP, back, RIGHT))))
                .hasMessageStartingWith("cut of piece 'sleeve'");
        assertThatThrownBy(() -> CutList.of(
                        garment(List.of(sleeve, cuff), seam("wrist", sleeve, EdgeNames.BOTTOM, cuff, EdgeNames.TOP))))
                .hasMessageStartingWith("cut of piece 'sleeve'");
    }

    @Test
    void a_back_drawn_whole_may_be_sewn_to_both_fronts() {
        Piece back = square("back", Cut.single(), SHELL);
        Piece front = square("front", Cut.pair(), SHELL);
        assertThatCode(() -> CutList.of(garment(
                        List.of(back, front),
                        seam("left side", back, LEFT, front, RIGHT),
                        seam("right side", back, RIGHT, front, RIGHT))))
                .doesNotThrowAnyException();
    }
}
