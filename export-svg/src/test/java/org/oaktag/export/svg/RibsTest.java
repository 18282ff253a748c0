package org.oaktag.export.svg;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.oaktag.measure.Length.cm;
import static org.oaktag.measure.Length.mm;
import static org.oaktag.measure.Percent.percent;

import java.util.List;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.oaktag.adjustments.Bands;
import org.oaktag.adjustments.Bodies;
import org.oaktag.adjustments.Finishes;
import org.oaktag.blocks.KnitTop;
import org.oaktag.blocks.TopEase;
import org.oaktag.blocks.TopEdges;
import org.oaktag.blocks.TopNames;
import org.oaktag.body.BodyMeasurements;
import org.oaktag.body.Figure;
import org.oaktag.export.drawing.LineType;
import org.oaktag.export.drawing.Stroke;
import org.oaktag.export.sheet.Cloths;
import org.oaktag.garment.Aspect;
import org.oaktag.garment.Cloth;
import org.oaktag.garment.CutList;
import org.oaktag.garment.End;
import org.oaktag.garment.FlatShape;
import org.oaktag.garment.Garment;
import org.oaktag.geometry.Path;
import org.oaktag.geometry.Point;
import org.oaktag.geometry.Transform;
import org.oaktag.geometry.Vector;
import org.oaktag.lay.Effort;
import org.oaktag.lay.Lay;
import org.oaktag.lay.Spread;

/** The ribs of cuffs, neckbands and hem bands run from the edge outwards, so that the stretch goes along the seam. */
class RibsTest {

    private static final double CUFF = 70;
    private static final double NECKBAND = 25;
    private static final double HEM_BAND = 60;
    private static final Cloth RIB = Cloth.rib("1 x 1 rib", percent(80));

    private static final Garment TOP = KnitTop.draft(
                    BodyMeasurements.builder()
                            .name("Juno")
                            .figure(Figure.WOMAN)
                            .bustGirth(cm(94))
                            .height(cm(165))
                            .build(),
                    TopEase.standard(),
                    Cloth.knit("loop terry", percent(25)))
            .adjust(Bodies.straightenSideSeams())
            .adjust(Bands.ribCuff(mm(CUFF), RIB))
            .adjust(Finishes.ribNeckband(mm(NECKBAND), RIB))
            .adjust(Bands.hemBand(mm(HEM_BAND), mm(0)).cutFrom(RIB));

    private static final Pattern LINE = Pattern.compile("M ([-0-9.]+) ([-0-9.]+) L ([-0-9.]+) ([-0-9.]+)");

    @Test
    void ribs_of_a_cuff_run_along_the_arm_from_sleeve_to_hand() {
        List<FlatShape> cuffs = ribbed(true).stream()
                .filter(shape -> Math.abs(shape.outline().bounds().center().x()) > 200)
                .toList();
        assertThat(cuffs).hasSize(2);
        for (FlatShape cuff : cuffs) {
            Point shoulder = TOP.piece(TopNames.FRONT).corner(TopEdges.ARMHOLE, End.START);
            Point middle = cuff.outline().bounds().center();
            Vector arm = middle.minus(middle.x() < 0 ? Point.of(-shoulder.x(), shoulder.y()) : shoulder);
            List<Path> ribs = ribs(cuff);
            assertThat(ribs).hasSizeGreaterThan(4).allSatisfy(rib -> {
                assertThat(Math.abs(rib.startDirection().dot(arm.unit()))).isGreaterThan(Math.cos(Math.toRadians(12)));
                assertThat(rib.length()).isCloseTo(CUFF, within(0.01));
            });
        }
    }

    @Test
    void ribs_of_a_neckband_stand_square_on_the_neckline() {
        for (boolean front : new boolean[] {true, false}) {
            Path half = TOP.piece(front ? TopNames.FRONT : TopNames.BACK).path(TopEdges.NECKLINE);
            Path neckline = FlatShape.joined(
                    List.of(half.transformed(Transform.mirrorX(0)).reversed(), half));
            List<FlatShape> bands = ribbed(front).stream()
                    .filter(shape -> !shape.inside() && shape.outline().bounds().maxY() < 200)
                    .toList();
            assertThat(bands).hasSize(1);
            assertThat(ribs(bands.get(0))).hasSizeGreaterThan(5).allSatisfy(rib -> {
                assertThat(neckline.nearest(rib.start()).distance()).isLessThan(1e-6);
                assertThat(neckline.nearest(rib.end()).distance()).isCloseTo(rib.length(), within(0.02 * NECKBAND));
                assertThat(rib.length()).isLessThanOrEqualTo(NECKBAND + 1e-9);
            });
        }
    }

    @Test
    void ribs_of_a_hem_band_hang_from_the_hem() {
        List<FlatShape> bands = ribbed(false).stream()
                .filter(shape -> shape.outline().bounds().minY() > 400)
                .toList();
        assertThat(bands).hasSize(1);
        assertThat(ribs(bands.get(0))).hasSizeGreaterThan(20).allSatisfy(rib -> {
            assertThat(rib.startDirection().x()).isCloseTo(0, within(1e-9));
            assertThat(rib.length()).isCloseTo(HEM_BAND, within(0.5));
        });
    }

    /** The cloth of a lay runs from left to right on the sheet, its wales along it. */
    @Test
    void ribs_of_every_piece_on_a_lay_run_along_the_cloth() {
        Lay lay = Lay.of(CutList.of(TOP), RIB, KnitTop.allowances(TOP), Spread.single(cm(100)), Effort.tries(5));
        List<MatchResult> ribs = SvgSheet.lay(lay, Cloths.of(TOP))
                .text()
                .lines()
                .filter(line -> line.contains("\"" + LineType.RIB.colour() + "\""))
                .flatMap(line -> LINE.matcher(line).results())
                .toList();
        assertThat(ribs).hasSizeGreaterThan(10 * lay.pieces().size());
        assertThat(ribs)
                .allSatisfy(rib -> assertThat(Double.parseDouble(rib.group(2)))
                        .isCloseTo(Double.parseDouble(rib.group(4)), within(0.001)));
    }

    private static List<FlatShape> ribbed(boolean front) {
        return TOP.laidFlat(front ? Aspect.FRONT : Aspect.BACK).stream()
                .filter(shape -> shape.cloth().equals(RIB))
                .toList();
    }

    private static List<Path> ribs(FlatShape shape) {
        org.oaktag.export.drawing.Figure figure = new org.oaktag.export.drawing.Figure();
        DrawnShape.draw(shape, figure, Cloths.of(TOP));
        return figure.inks().stream()
                .filter(ink -> ink instanceof Stroke stroke && stroke.type() == LineType.RIB)
                .map(ink -> ((Stroke) ink).path())
                .toList();
    }
}
