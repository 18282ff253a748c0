package org.oaktag.garment;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.oaktag.measure.Length.mm;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.oaktag.PatternException;
import org.oaktag.geometry.Path;
import org.oaktag.geometry.Point;
import org.oaktag.measure.Length;
import org.oaktag.measure.Percent;

/** What somebody who mistypes is told: what exists, and what was most likely meant. */
class SpellingTest {

    private static final Name NECKLINE = Name.of("neckline");
    private static final List<String> MEASURES = List.of("bust girth", "waist girth", "hip girth", "neck base girth");

    private static final Garment PATCH = Garment.of(
            "patch",
            Wearer.of("Mira", false, Map.of(Name.of("bust girth"), Length.mm(865))),
            List.of(Piece.of(
                    Name.of("patch"),
                    List.of(
                            new Edge(EdgeNames.HEM, Path.polyline(Point.of(0, 0), Point.of(0, 50), Point.of(50, 50))),
                            Edge.straight(EdgeNames.CENTRE, Point.of(50, 50), Point.of(0, 0))),
                    new Grainline(Point.of(10, 10), Point.of(10, 20)),
                    Cut.single(),
                    Cloth.knit("trial knit", Percent.percent(20)))),
            List.of(),
            List.of());

    @Test
    void the_nearest_is_named_where_it_is_near_or_holds_what_was_typed() {
        assertThat(Spelling.nearest("bust grith", MEASURES)).contains("bust girth");
        assertThat(Spelling.nearest("bust", MEASURES)).contains("bust girth");
        assertThat(Spelling.nearest("neck", MEASURES)).contains("neck base girth");
        assertThat(Spelling.nearest("girth", MEASURES)).contains("hip girth");
        assertThat(Spelling.nearest("shoe size", MEASURES)).isEmpty();
        assertThat(Spelling.nearest("", MEASURES)).isEmpty();
    }

    @Test
    void pieces_edges_seams_measures_of_garment_and_body_say_what_exists_and_what_was_meant() {
        assertRefused(
                () -> PATCH.piece(Name.of("pacth")), "piece: must be one of patch; got 'pacth'; did you mean 'patch'?");
        assertRefused(
                () -> PATCH.piece(Name.of("patch")).edge(Name.of("center")),
                "edge of piece 'patch': must be one of hem, centre; got 'center'; did you mean 'centre'?");
        assertRefused(() -> PATCH.seam(Name.of("side")), "seam of 'patch': must be one of ; got 'side'");
        assertRefused(
                () -> PATCH.wearer().measure(Name.of("bust")),
                "measure of 'Mira': must be one of bust girth; got 'bust'; did you mean 'bust girth'?");
    }

    @Test
    void an_allowance_for_an_edge_that_is_mistyped_is_refused_and_one_for_another_garment_is_not() {
        Allowances allowances = Allowances.of("trial", mm(10));
        assertRefused(
                () -> allowances.with(Name.of("center"), mm(0)).check(PATCH),
                "allowance of 'trial' for an edge: must be one of centre, hem; got 'center'; did you mean 'centre'?");
        assertRefused(
                () -> allowances
                        .with(EdgeRef.of(Name.of("pach"), EdgeNames.HEM), mm(20))
                        .check(PATCH),
                "allowance of 'trial' for an edge: must be one of patch.centre, patch.hem; got 'pach.hem';"
                        + " did you mean 'patch.hem'?");
        assertThatCode(() -> allowances
                        .with(NECKLINE, mm(6))
                        .with(EdgeRef.of(Name.of("sleeve"), EdgeNames.HEM), mm(20))
                        .with(EdgeNames.HEM, mm(20))
                        .check(PATCH))
                .doesNotThrowAnyException();
    }

    private static void assertRefused(org.assertj.core.api.ThrowableAssert.ThrowingCallable lookUp, String message) {
        assertThatThrownBy(lookUp).isInstanceOf(PatternException.class).hasMessage(message);
    }
}
