package org.oaktag.examples;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.oaktag.measure.Length.cm;

import java.awt.geom.Path2D;
import java.awt.geom.PathIterator;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.oaktag.blocks.KnitTop;
import org.oaktag.body.BodyMeasurements;
import org.oaktag.export.drawing.LineType;
import org.oaktag.export.sheet.Cloths;
import org.oaktag.export.svg.SvgSheet;
import org.oaktag.garment.Allowances;
import org.oaktag.garment.CutList;
import org.oaktag.garment.Garment;
import org.oaktag.geometry.Point;
import org.oaktag.lay.Effort;
import org.oaktag.lay.LaidPiece;
import org.oaktag.lay.Lay;
import org.oaktag.lay.Spread;

/** Lays of the tops of the crew: what holds for each, and several tops in one lay. */
class CrewLayTest {

    /** Lengths nearer to each other than this are the same, mm. */
    private static final double SAME = 1e-6;

    static Stream<List<String>> cut() {
        return Stream.concat(
                BodyFile.nightCrew().bodies().stream().map(body -> List.of(body.name())),
                Stream.of(List.of("Mira", "Bram"), List.of("Teodor", "Haldis")));
    }

    private static Garment top(String name) {
        BodyMeasurements body = BodyFile.nightCrew().body(name);
        return HoodedTop.recipe(false).applyTo(HoodedTop.block(body));
    }

    private static Lay lay(List<Garment> tops, Spread spread, int tries) {
        CutList list = CutList.of(tops);
        Map<CutList.Owner, Allowances> allowances = tops.stream()
                .collect(Collectors.toMap(top -> CutList.of(top).owners().get(0), KnitTop::allowances));
        return Lay.of(
                list,
                list.cloths().get(0),
                owner -> allowances.getOrDefault(owner, Allowances.of("none", cm(0))),
                spread,
                Effort.tries(tries));
    }

    /**
     * Whoever may do more does no worse: pieces may lie as with a nap where there is none, and more tries begin with
     * the same.
     */
    @ParameterizedTest
    @MethodSource("cut")
    void no_lay_grows_with_what_it_may_do(List<String> crew) {
        List<Garment> tops = crew.stream().map(CrewLayTest::top).toList();
        Spread single = Spread.single(cm(150));
        for (Spread spread : List.of(single, Spread.folded(cm(150)))) {
            double napped = lay(tops, spread.withNap(), 60).length().mm();
            double free = lay(tops, spread, 60).length().mm();
            assertThat(free).as("%s without nap", spread).isLessThanOrEqualTo(napped + SAME);
        }
        double tried = lay(tops, single, 180).length().mm();
        assertThat(tried).isLessThanOrEqualTo(lay(tops, single, 60).length().mm() + SAME);
    }

    @Test
    void two_tops_in_one_lay_are_both_whole_and_each_piece_says_whose_it_is() {
        List<Garment> tops = List.of(top("Mira"), top("Bram"));
        Lay both = lay(tops, Spread.single(cm(150)).withNap(), 100);
        Map<String, List<String>> laid = both.pieces().stream()
                .collect(Collectors.groupingBy(
                        piece -> piece.item().owner().wearer(),
                        Collectors.mapping(CrewLayTest::name, Collectors.toList())));
        assertThat(laid).containsOnlyKeys("Mira", "Bram");
        for (Garment top : tops) {
            Lay alone = lay(List.of(top), Spread.single(cm(150)).withNap(), 1);
            assertThat(laid.get(top.wearer().name()))
                    .containsExactlyInAnyOrderElementsOf(
                            alone.pieces().stream().map(CrewLayTest::name).toList());
        }
        String sheet = SvgSheet.lay(both, Cloths.of(tops.get(0))).text();
        assertThat(sheet).contains("night crew hooded top, for Bram, Mira");
        for (LaidPiece piece : both.pieces()) {
            CutList.Item item = piece.item();
            assertThat(sheet)
                    .contains(item.owner().wearer() + " " + item.number() + "  "
                            + item.piece().name());
        }
    }

    /**
     * Turned and reduced, as the bar says; a mirror image would be cut out of the wrong hand, and of cloth with a nap
     * upside down.
     */
    @ParameterizedTest
    @ValueSource(booleans = {false, true})
    void a_lay_is_drawn_as_it_lies_reduced_and_turned_but_not_mirrored(boolean folded) {
        Garment top = top("Mira");
        Lay lay = lay(List.of(top), (folded ? Spread.folded(cm(190)) : Spread.single(cm(150))).withNap(), 20);
        SvgReader sheet = SvgReader.read(SvgSheet.lay(lay, Cloths.of(top)).text());
        List<List<Point2D>> drawn = sheet.paths().stream()
                .filter(path -> path.width() == LineType.CUT.width())
                .map(path -> ends(path.shape()))
                .filter(ends -> ends.size() > 2)
                .toList();
        assertThat(drawn).hasSameSizeAs(lay.pieces());
        double scale = drawn.get(0).get(0).distance(drawn.get(0).get(1))
                / ends(lay.pieces().get(0))
                        .get(0)
                        .distance(ends(lay.pieces().get(0)).get(1));
        assertThat(sheet.lettering())
                .extracting(SvgReader.Lettering::text)
                .anyMatch(text -> text.contains("scale 1:" + Math.round(1 / scale) + ","));
        Point2D from = drawn.get(0).get(0);
        Point2D to = ends(lay.pieces().get(0)).get(0);
        for (int i = 0; i < drawn.size(); i++) {
            List<Point2D> laid = ends(lay.pieces().get(i));
            assertThat(drawn.get(i)).hasSameSizeAs(laid);
            for (int k = 0; k < laid.size(); k++) {
                Point2D at = drawn.get(i).get(k);
                // A quarter turn takes what runs along the cloth to the right, and what runs across it upwards.
                double along = scale * (laid.get(k).getY() - to.getY());
                double across = scale * (laid.get(k).getX() - to.getX());
                assertThat(at.getX() - from.getX()).isCloseTo(along, within(1e-3));
                assertThat(at.getY() - from.getY()).isCloseTo(-across, within(1e-3));
            }
        }
        assertThat(sheet.lettering())
                .extracting(SvgReader.Lettering::text)
                .anyMatch(text -> text.contains(folded ? "right side out" : "right side up"));
    }

    /**
     * On cloth with a nap every arrow points to the left; what is said of a piece that is cut as a pair is how it lies.
     */
    @Test
    void a_lay_tells_which_way_is_up_and_which_hand_a_piece_is_of() {
        Garment top = top("Mira");
        Lay lay = lay(List.of(top), Spread.single(cm(150)).withNap(), 20);
        SvgReader sheet = SvgReader.read(SvgSheet.lay(lay, Cloths.of(top)).text());
        List<SvgReader.Drawn> lines = sheet.paths();
        int arrows = 0;
        int hands = 0;
        int piece = 0;
        for (int i = 0; i < lines.size(); i++) {
            SvgReader.Drawn line = lines.get(i);
            if (line.width() == LineType.CUT.width() && ends(line.shape()).size() > 2) {
                LaidPiece laid = lay.pieces().get(piece++);
                if (laid.item().isMirrored()) {
                    hands++;
                    assertThat(sheet.lettering().stream()
                                    .filter(text -> text.text().equals("mirrored")
                                            || text.text().equals("as drawn"))
                                    .filter(text -> line.shape()
                                            .contains(
                                                    text.box().getBounds2D().getCenterX(),
                                                    text.box().getBounds2D().getCenterY()))
                                    .map(SvgReader.Lettering::text))
                            .as("%s", name(laid))
                            .containsExactly(laid.motion().reverses() ? "mirrored" : "as drawn");
                }
            } else if (ends(line.shape()).size() == 4
                    && line.width() == 0
                    && lines.get(i - 1).colour().equals(LineType.GRAIN.colour())) {
                // A head of three corners, drawn after its line.
                Rectangle2D shaft = lines.get(i - 1).shape().getBounds2D();
                assertThat(line.shape().getBounds2D().getCenterX()).isLessThan(shaft.getCenterX());
                arrows++;
            }
        }
        assertThat(hands).isEqualTo(4);
        assertThat(arrows).isEqualTo(lay.pieces().size());
    }

    private static List<Point2D> ends(LaidPiece piece) {
        List<Point2D> ends = new ArrayList<>();
        ends.add(point(piece.outline().path().start()));
        piece.outline().path().curves().forEach(curve -> ends.add(point(curve.end())));
        return ends;
    }

    private static Point2D point(Point point) {
        return new Point2D.Double(point.x(), point.y());
    }

    /** Where the curves of a drawn line begin and end. */
    private static List<Point2D> ends(Path2D shape) {
        List<Point2D> ends = new ArrayList<>();
        double[] at = new double[6];
        for (PathIterator each = shape.getPathIterator(null); !each.isDone(); each.next()) {
            int type = each.currentSegment(at);
            if (type != PathIterator.SEG_CLOSE) {
                int last = type == PathIterator.SEG_CUBICTO ? 4 : 0;
                ends.add(new Point2D.Double(at[last], at[last + 1]));
            }
        }
        return ends;
    }

    private static String name(LaidPiece piece) {
        return piece.item().numberText() + " " + piece.item().piece().name();
    }
}
