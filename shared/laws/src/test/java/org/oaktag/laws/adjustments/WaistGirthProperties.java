package org.oaktag.laws.adjustments;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.oaktag.adjustments.Bodies.flareSideSeams;
import static org.oaktag.adjustments.Bodies.lengthenBody;
import static org.oaktag.adjustments.Bodies.shapeWaist;
import static org.oaktag.adjustments.Bodies.shortenBody;
import static org.oaktag.adjustments.Bodies.splitBody;
import static org.oaktag.adjustments.Bodies.straightenSideSeams;
import static org.oaktag.adjustments.Sleeves.batwingSleeve;
import static org.oaktag.measure.Length.mm;

import java.util.Optional;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.domains.Domain;
import net.jqwik.api.domains.DomainContext;
import org.oaktag.PatternException;
import org.oaktag.adjust.Darts;
import org.oaktag.adjust.LineAcross;
import org.oaktag.adjust.Part;
import org.oaktag.adjust.Pieces;
import org.oaktag.adjust.Place;
import org.oaktag.adjust.SplitPiece;
import org.oaktag.blocks.BodyLine;
import org.oaktag.blocks.TopBody;
import org.oaktag.blocks.TopEdges;
import org.oaktag.blocks.TopNames;
import org.oaktag.body.BodyMeasure;
import org.oaktag.garment.Dart;
import org.oaktag.garment.EdgeNames;
import org.oaktag.garment.End;
import org.oaktag.garment.Garment;
import org.oaktag.garment.Moved;
import org.oaktag.garment.Name;
import org.oaktag.garment.Piece;
import org.oaktag.geometry.Path;
import org.oaktag.geometry.Point;
import org.oaktag.testkit.laws.StepLaws;

/** The finished waist girth: what moves it, by how much, and what leaves it as it is. */
@Domain(TopArbitraries.class)
@Domain(DomainContext.Global.class)
class WaistGirthProperties {

    private static final double ROUNDING = 1e-6;
    private static final Name WAIST_DART = Name.of("waist dart");

    private final StepLaws laws = new StepLaws();

    @Property(tries = 60)
    void the_draft_goes_round_the_waist_of_the_body(@ForAll Garment block) {
        assertThat(waist(block))
                .isGreaterThan(
                        block.wearer().measure(BodyMeasure.WAIST_GIRTH.asName()).mm());
        assertThat(waist(block))
                .isCloseTo(4 * sideAtWaist(block, TopNames.FRONT).x(), within(ROUNDING));
    }

    @Property(tries = 60)
    void straight_side_seams_put_the_waist_where_similar_triangles_do(
            @ForAll Garment block, @ForAll @DoubleRange(min = -20, max = 70) double out) {
        Garment flared = laws.assertKept(block, flareSideSeams(mm(out)));
        double girth = 0;
        for (Name name : TopBody.HALVES) {
            Path side = flared.piece(name).path(EdgeNames.SIDE);
            double share = (level(flared, name) - side.start().y())
                    / (side.end().y() - side.start().y());
            girth += 2
                    * (side.start().x() + share * (side.end().x() - side.start().x()));
        }
        assertThat(waist(flared)).isCloseTo(girth, within(ROUNDING));
    }

    @Property(tries = 40)
    void a_dart_across_the_waist_takes_out_of_it_what_lies_between_its_legs(
            @ForAll Garment block,
            @ForAll @DoubleRange(min = 5, max = 25) double width,
            @ForAll @DoubleRange(min = 20, max = 90) double above) {
        double depth =
                block.piece(TopNames.BACK).corner(EdgeNames.CENTRE, End.START).y()
                        - level(block, TopNames.BACK)
                        + above;
        Garment shaped = laws.assertKept(block, shapeWaist(mm(7)));
        assertThat(waist(shaped)).isCloseTo(waist(block) - 28, within(ROUNDING));
        Garment darted = laws.assertKept(
                shaped,
                Darts.openDart(TopNames.BACK, WAIST_DART, Place.share(EdgeNames.HEM, 0.5), mm(width), mm(depth)));
        Dart dart = Dart.in(darted.piece(TopNames.BACK), WAIST_DART);
        double level = level(darted, TopNames.BACK);
        double out = Math.abs(at(dart.apex(), dart.mouthA(), level) - at(dart.apex(), dart.mouthB(), level));
        assertThat(out).isPositive();
        assertThat(waist(darted)).isCloseTo(waist(shaped) - 2 * out, within(ROUNDING));
    }

    @Property(tries = 40)
    void cutting_unfolding_and_turning_over_leave_the_waist_as_it_is(
            @ForAll Garment block, @ForAll @DoubleRange(min = 30, max = 200) double aboveHem) {
        double waist = waist(block);
        Garment across = laws.assertKept(
                block, splitBody(mm(aboveHem), block.piece(TopNames.FRONT).cloth()));
        assertThat(waist(across)).isCloseTo(waist, within(ROUNDING));
        assertThat(waist(laws.assertKept(block, Pieces.unfoldPiece(TopNames.FRONT))))
                .isCloseTo(waist, within(ROUNDING));
        assertThat(waist(laws.assertKept(block, Pieces.mirrorPiece(TopNames.BACK))))
                .isCloseTo(waist, within(ROUNDING));
        SplitPiece panels = new SplitPiece(
                TopNames.FRONT,
                LineAcross.straight(Place.share(TopEdges.SHOULDER, 0.5), Place.share(EdgeNames.HEM, 0.5)),
                Part.of(Name.of("front side"), Name.of("panel")),
                Part.of(TopNames.FRONT, Name.of("panel")),
                Name.of("panel"));
        assertThat(waist(laws.assertKept(block, panels))).isCloseTo(waist, within(ROUNDING));
    }

    @Property(tries = 40)
    void a_top_cropped_above_the_waist_has_none_until_it_is_lengthened_again(
            @ForAll Garment drafted, @ForAll @DoubleRange(min = 5, max = 30) double above) {
        Garment block = drafted.adjust(straightenSideSeams());
        double hem =
                block.piece(TopNames.BACK).corner(EdgeNames.CENTRE, End.START).y();
        double side = sideEnd(block) - level(block, TopNames.BACK);
        double by = Math.max(hem - level(block, TopNames.BACK), side) + above;
        Garment cropped = laws.assertKept(block, shortenBody(mm(by)));
        Moved gone = moved(cropped);
        assertThat(gone.before().orElseThrow().mm()).isCloseTo(waist(block), within(ROUNDING));
        assertThat(gone.after()).isEmpty();
        assertThatThrownBy(() -> cropped.finished(TopNames.WAIST_GIRTH))
                .isInstanceOf(PatternException.class)
                .hasMessageContaining("level that meets the centre");
        Garment again = laws.assertKept(cropped, lengthenBody(mm(by)));
        assertThat(moved(again).before()).isEmpty();
        assertThat(again.finished(TopNames.WAIST_GIRTH))
                .isEqualTo(moved(again).after().orElseThrow());
    }

    @Property(tries = 40)
    void under_a_batwing_the_waist_ends_at_the_underarm_curve(@ForAll Garment block) {
        double toWaist = level(block, TopNames.BACK)
                - block.piece(TopNames.BACK).corner(EdgeNames.SIDE, End.START).y();
        Garment batwing = laws.assertKept(block, batwingSleeve(mm(toWaist + 60)));
        assertThat(batwing.piece(TopNames.BACK)
                        .corner(EdgeNames.SIDE, End.START)
                        .y())
                .isGreaterThan(level(batwing, TopNames.BACK));
        assertThat(waist(batwing)).isGreaterThan(waist(block));
    }

    private static Moved moved(Garment garment) {
        Optional<Moved> moved = garment.history().get(garment.history().size() - 1).moved().stream()
                .filter(each -> each.watched().text().equals(TopNames.WAIST_GIRTH.value()))
                .findFirst();
        return moved.orElseThrow();
    }

    private static double sideEnd(Garment garment) {
        return garment.piece(TopNames.BACK).corner(EdgeNames.SIDE, End.END).y();
    }

    private static double at(Point apex, Point mouth, double level) {
        return apex.x() + (mouth.x() - apex.x()) * (level - apex.y()) / (mouth.y() - apex.y());
    }

    private static double waist(Garment garment) {
        return garment.finished(TopNames.WAIST_GIRTH).mm();
    }

    private static double level(Garment garment, Name piece) {
        return BodyLine.WAIST.level(garment, garment.piece(piece));
    }

    private static Point sideAtWaist(Garment garment, Name name) {
        Piece piece = garment.piece(name);
        Path side = piece.path(EdgeNames.SIDE);
        return side.curves().get(0).end();
    }
}
