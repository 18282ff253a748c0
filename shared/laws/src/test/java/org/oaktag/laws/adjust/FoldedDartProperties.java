package org.oaktag.laws.adjust;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.oaktag.measure.Length.mm;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.domains.Domain;
import net.jqwik.api.domains.DomainContext;
import org.oaktag.adjust.Darts;
import org.oaktag.adjust.Place;
import org.oaktag.garment.Allowances;
import org.oaktag.garment.CutLine;
import org.oaktag.garment.Dart;
import org.oaktag.garment.DartCut;
import org.oaktag.garment.End;
import org.oaktag.garment.FoldedDart;
import org.oaktag.garment.Name;
import org.oaktag.garment.Piece;
import org.oaktag.garment.Snip;
import org.oaktag.geometry.Path;
import org.oaktag.geometry.Point;
import org.oaktag.geometry.Transform;

/** The cloth of a dart that is folded: cut so that, laid to its side, it ends where the piece beneath it is cut. */
@Domain(PieceArbitraries.class)
@Domain(DomainContext.Global.class)
class FoldedDartProperties {

    private static final Name ONE = Name.of("one");
    private static final Name DART = Name.of("dart");
    /** Odd, so that none is at the tip, where the peak turns. */
    private static final int SAMPLES = 41;

    @Property(tries = 150)
    void the_folded_cloth_is_cut_where_the_cloth_beneath_it_is(
            @ForAll Piece plain,
            @ForAll @DoubleRange(min = 12, max = 40) double width,
            @ForAll @DoubleRange(min = 70, max = 130) double depth,
            @ForAll @DoubleRange(min = 3, max = 15) double allowance,
            @ForAll End towards) {
        Piece darted = Darts.openDart(plain.name(), DART, Place.share(ONE, 0.5), mm(width), mm(depth))
                .on(plain);
        Piece trued = Darts.trueDartFold(plain.name(), DART, towards).on(darted);
        FoldedDart folded = FoldedDart.in(trued, DART);
        Path drawn = trued.lines().get(trued.lines().size() - 1).path();
        assertThat(folded.peak().nearest(drawn.pointAt(drawn.length() / 4)).distance())
                .isLessThan(1e-6);
        Dart dart = folded.dart();
        CutLine cut = CutLine.of(trued, Allowances.of("home", mm(allowance)));
        Path border = cut.outline().path();
        Point mouth = towards == End.START ? dart.mouthA() : dart.mouthB();
        Transform alongLeg = Transform.mirror(dart.apex(), mouth);
        Transform alongFold = Transform.mirror(dart.apex(), folded.tip());
        for (int i = 1; i < SAMPLES; i++) {
            double along = folded.peak().length() * i / SAMPLES;
            Point ofCut = folded.peak()
                    .pointAt(along)
                    .plus(folded.peak().directionAt(along).leftNormal().times(allowance));
            boolean next = (along < folded.peak().length() / 2) == (towards == End.START);
            Point laid = alongLeg.apply(next ? ofCut : alongFold.apply(ofCut));
            // Beside the legs the cut line turns towards that of the edge, which need not go on as it does here.
            double fromFold = folded.tip().minus(dart.apex()).angleTo(ofCut.minus(dart.apex()));
            if (border.nearest(ofCut).distance() < 0.02
                    && Math.abs(fromFold) < 0.45 * dart.angle().radians()) {
                assertThat(border.nearest(laid).distance()).isLessThan(0.05);
            }
        }
        assertThat(cut.outline().contains(folded.tip())).isTrue();
        assertThat(border.nearest(folded.tip()).distance()).isCloseTo(allowance, within(allowance));
        assertThat(cut.snips()).extracting(Snip::seam).contains(dart.mouthA(), dart.mouthB());
        assertThat(cut.drillHoles()).singleElement().satisfies(hole -> {
            assertThat(hole.distanceTo(dart.apex())).isCloseTo(12, within(1e-9));
            assertThat(trued.outline().contains(hole)).isFalse();
        });
    }

    @Property(tries = 100)
    void slit_it_is_cut_along_its_legs_and_encloses_less(@ForAll Piece plain) {
        Piece darted = Darts.openDart(plain.name(), DART, Place.share(ONE, 0.5), mm(50), mm(90))
                .on(plain);
        Allowances narrow = Allowances.of("narrow", mm(3));
        CutLine folded = CutLine.of(darted, narrow);
        CutLine slit = CutLine.of(darted, narrow.darts(DartCut.SLIT));
        Dart dart = Dart.in(darted, DART);
        assertThat(slit.outline().area()).isLessThan(folded.outline().area());
        assertThat(slit.drillHoles()).isEmpty();
        Point middle = dart.mouthA().midpoint(dart.mouthB());
        assertThat(folded.outline().contains(middle)).isTrue();
        assertThat(slit.outline().contains(middle)).isFalse();
    }
}
