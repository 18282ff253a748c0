package org.oaktag.adjust;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.oaktag.adjust.SquareOfCloth.LEFT;
import static org.oaktag.adjust.SquareOfCloth.LOWER;
import static org.oaktag.adjust.SquareOfCloth.RIGHT;
import static org.oaktag.adjust.SquareOfCloth.UPPER;
import static org.oaktag.measure.Length.mm;

import java.util.List;
import java.util.Map;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.oaktag.garment.Aspect;
import org.oaktag.garment.Cut;
import org.oaktag.garment.End;
import org.oaktag.garment.Garment;
import org.oaktag.garment.Name;
import org.oaktag.garment.Notch;
import org.oaktag.garment.Piece;
import org.oaktag.garment.Seam;
import org.oaktag.garment.SeamRule;
import org.oaktag.garment.SeamSide;
import org.oaktag.garment.Wearer;
import org.oaktag.geometry.Transform;

/** Squares of 200 mm, and of a share of that, sewn to each other: where a notch belongs is found in the head. */
class NotchSeamsTest {

    private static final Offset<Double> EXACT = within(1e-9);
    private static final Name A = Name.of("a");
    private static final Name B = Name.of("b");
    private static final Name C = Name.of("c");
    private static final Name D = Name.of("d");

    private static Piece square(Name name, double share) {
        return SquareOfCloth.cut(Cut.single())
                .transformed(Transform.scale(share))
                .renamed(name);
    }

    private static Garment sewn(List<Piece> pieces, Seam... seams) {
        return Garment.of("squares", Wearer.of("nobody", false, Map.of()), pieces, List.of(seams), List.of());
    }

    private static Seam seam(String name, SeamSide a, SeamSide b, SeamRule rule) {
        return Seam.of(Name.of(name), a, b, rule, "cut it anew");
    }

    private static Garment notched(Garment garment) {
        return garment.adjust(new NotchSeams());
    }

    private static String note(Garment notched) {
        return notched.history().get(0).notes().toString();
    }

    private static Notch notch(Garment garment, Name piece, Name edge, String name) {
        return garment.piece(piece).notch(edge, Name.of(name)).orElseThrow();
    }

    private static double fromStart(Garment garment, Name piece, Name edge, String name) {
        return notch(garment, piece, edge, name)
                .fromStart(garment.piece(piece).path(edge).length());
    }

    @Test
    void a_gathered_seam_without_notches_gets_the_quarters_of_both_sides() {
        Garment notched = notched(sewn(
                List.of(square(A, 1), square(B, 1.5)),
                seam("ruffle", SeamSide.along(A, RIGHT), SeamSide.along(B, LEFT), SeamRule.gathered(1.5))));
        assertThat(fromStart(notched, A, RIGHT, "ruffle quarter 1")).isCloseTo(50, EXACT);
        assertThat(fromStart(notched, B, LEFT, "ruffle quarter 1")).isCloseTo(75, EXACT);
        assertThat(fromStart(notched, A, RIGHT, "ruffle half")).isCloseTo(100, EXACT);
        assertThat(fromStart(notched, B, LEFT, "ruffle half")).isCloseTo(150, EXACT);
        assertThat(fromStart(notched, A, RIGHT, "ruffle quarter 3")).isCloseTo(150, EXACT);
        assertThat(fromStart(notched, B, LEFT, "ruffle quarter 3")).isCloseTo(225, EXACT);
        assertThat(note(notched)).contains("between the quarters of both sides (common practice): ruffle");
    }

    @Test
    void a_gathered_seam_that_is_marked_already_keeps_its_marks() {
        Name own = Name.of("gathers begin");
        Garment marked = sewn(
                List.of(
                        square(A, 1).withNotch(Notch.single(own, RIGHT, End.START, 40)),
                        square(B, 1.5).withNotch(Notch.single(own, LEFT, End.START, 40))),
                seam("ruffle", SeamSide.along(A, RIGHT), SeamSide.along(B, LEFT), SeamRule.gathered(1.5)));
        assertThat(notched(marked).pieces()).isEqualTo(marked.pieces());
    }

    /** 406 mm in two edges of 200 mm each, eased in beyond a notch 20 mm from its start. */
    @Test
    void a_notch_in_the_ease_lies_at_the_same_share_of_both_sides() {
        Garment notched = notched(easedFrom(20));
        double third = 200 + 200 / 3.0;
        assertThat(fromStart(notched, C, RIGHT, "one match")).isCloseTo(200 / 3.0, EXACT);
        assertThat(fromStart(notched, B, LEFT, "one match")).isCloseTo(20 + (third - 20) * 386 / 380, EXACT);
        assertThat(notched.piece(A).notches()).hasSize(1);
        assertThat(notched.walkSeams().isTrue()).isTrue();
    }

    /** A seam whose first edge alone has a notch, so far from its start, from which on it is eased. */
    private static Garment easedFrom(double start) {
        Name from = Name.of("ease begins");
        Name edge = start < 200 ? A : C;
        return sewn(
                List.of(
                        marked(square(A, 1), edge, from, start),
                        marked(square(C, 1), edge, from, start - 200),
                        square(B, 2.03).withNotch(Notch.single(from, LEFT, End.START, start))),
                seam(
                        "one",
                        SeamSide.along(A, RIGHT).then(SeamSide.along(C, RIGHT)),
                        SeamSide.along(B, LEFT),
                        SeamRule.eased(mm(6), SeamRule.Span.from(from))));
    }

    private static Piece marked(Piece piece, Name marked, Name notch, double start) {
        return piece.name().equals(marked) ? piece.withNotch(Notch.single(notch, RIGHT, End.START, start)) : piece;
    }

    /** Which seams get a notch must not depend on lengths, so that all sizes of a style carry the same. */
    @Test
    void two_seams_whose_own_notches_lie_alike_are_named() {
        Name own = Name.of("own");
        Garment notched = notched(sewn(
                List.of(
                        square(A, 1).withNotch(Notch.single(own, RIGHT, End.START, 40)),
                        square(B, 1).withNotch(Notch.single(own, LEFT, End.START, 40)),
                        square(C, 1).withNotch(Notch.single(own, RIGHT, End.START, 40)),
                        square(D, 1).withNotch(Notch.single(own, LEFT, End.START, 40))),
                seam("one", SeamSide.along(A, RIGHT), SeamSide.along(B, LEFT), SeamRule.flat()),
                seam("other", SeamSide.along(C, RIGHT), SeamSide.along(D, LEFT), SeamRule.flat())));
        assertThat(note(notched)).contains("no notch tells 'one' from every other seam: mark it by hand");
        assertThat(notched.piece(A).notches()).hasSize(1);
    }

    /** Two squares of these sizes sewn one after the other to a third of size 1, whose foot is sewn to a fourth. */
    private static Garment twoBesideOne(double one, double other) {
        return sewn(
                List.of(square(A, one), square(B, other), square(C, 1), square(D, 1)),
                seam(
                        "long",
                        SeamSide.along(A, RIGHT).then(SeamSide.along(B, RIGHT)),
                        SeamSide.along(C, LEFT),
                        SeamRule.flat()),
                seam("foot", SeamSide.along(C, LOWER), SeamSide.along(D, LOWER), SeamRule.flat()));
    }

    /** The same below the ease, which begins 350 mm from the start: there both sides lie flat on each other. */
    @Test
    void below_the_ease_the_notches_lie_equally_far_along() {
        Garment notched = notched(easedFrom(350));
        assertThat(fromStart(notched, A, RIGHT, "one match")).isCloseTo(200 / 3.0, EXACT);
        assertThat(fromStart(notched, B, LEFT, "one match")).isCloseTo(200 / 3.0, EXACT);
        assertThat(notched.walkSeams().isTrue()).isTrue();
    }

    /** A yoke of 80 mm and a panel of 120 mm against 200 mm, which its own lower edges of 200 mm look like. */
    @Test
    void a_notch_on_a_side_of_several_edges_is_carried_onto_the_edge_on_which_it_falls() {
        Garment notched = notched(twoBesideOne(0.4, 0.6));
        assertThat(fromStart(notched, A, RIGHT, "long match")).isCloseTo(80 / 3.0, EXACT);
        assertThat(fromStart(notched, C, LEFT, "long match")).isCloseTo(80 / 3.0, EXACT);
        assertThat(fromStart(notched, B, RIGHT, "long match 2")).isCloseTo(120 / 3.0, EXACT);
        assertThat(fromStart(notched, C, LEFT, "long match 2")).isCloseTo(80 + 120 / 3.0, EXACT);
        assertThat(notched.walkSeams().isTrue()).isTrue();
    }

    /** A third of an edge of 29 mm, the first place that is tried, lies 9.7 mm from its end: no place for a cut. */
    @Test
    void no_notch_lies_in_the_allowance_of_the_seam_across_a_corner() {
        Garment notched = notched(twoBesideOne(0.145, 0.855));
        assertThat(fromStart(notched, A, RIGHT, "long match")).isCloseTo(0.4 * 29, EXACT);
        assertThat(fromStart(notched, C, LEFT, "long match")).isCloseTo(0.4 * 29, EXACT);
    }

    @Test
    void a_seam_too_short_for_a_notch_is_named() {
        Garment notched = notched(sewn(
                List.of(square(A, 0.09), square(B, 0.09)),
                seam("tab", SeamSide.along(A, RIGHT), SeamSide.along(B, RIGHT), SeamRule.flat()),
                seam("end", SeamSide.along(A, UPPER), SeamSide.along(B, UPPER), SeamRule.flat())));
        assertThat(notched.piece(A).notches()).isEmpty();
        assertThat(note(notched))
                .contains("no notch tells 'tab' from every other seam: mark it by hand")
                .contains("no notch tells 'end' from every other seam: mark it by hand");
    }

    /** One cut is front, two are back (common practice). */
    @Test
    void backs_have_two_cuts_fronts_one_and_what_joins_them_one_on_both_sides() {
        Name front = Name.of("one side");
        Name back = Name.of("other side");
        Garment notched = notched(sewn(
                List.of(
                        square(front, 1).withAspect(Aspect.FRONT),
                        square(back, 1).withAspect(Aspect.BACK),
                        square(A, 1),
                        square(B, 1)),
                seam("first", SeamSide.along(front, RIGHT), SeamSide.along(A, LEFT), SeamRule.flat()),
                seam("second", SeamSide.along(back, RIGHT), SeamSide.along(B, LEFT), SeamRule.flat()),
                seam("third", SeamSide.along(front, LEFT), SeamSide.along(back, LEFT), SeamRule.flat())));
        assertThat(notch(notched, front, RIGHT, "first match").count()).isEqualTo(1);
        assertThat(notch(notched, A, LEFT, "first match").count()).isEqualTo(1);
        assertThat(notch(notched, back, RIGHT, "second match").count()).isEqualTo(2);
        assertThat(notch(notched, B, LEFT, "second match").count()).isEqualTo(2);
        assertThat(notch(notched, front, LEFT, "third match").count()).isEqualTo(1);
        assertThat(notch(notched, back, LEFT, "third match").count()).isEqualTo(1);
    }

    @Test
    void the_new_edges_of_a_back_that_is_split_have_two_cuts() {
        Name back = Name.of("back");
        Name yoke = Name.of("yoke");
        Name line = Name.of("yoke line");
        Garment split = sewn(List.of(square(back, 1).withAspect(Aspect.BACK)))
                .adjust(new SplitPiece(
                        back,
                        LineAcross.straight(Place.share(LEFT, 0.5), Place.share(RIGHT, 0.5)),
                        Part.of(yoke, line),
                        Part.of(back, line),
                        Name.of("yoke seam")));
        assertThat(notch(split, back, line, "style line").count()).isEqualTo(2);
        assertThat(notch(split, yoke, line, "style line").count()).isEqualTo(2);
    }
}
