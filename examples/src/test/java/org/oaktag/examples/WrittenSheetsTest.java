package org.oaktag.examples;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.awt.geom.Area;
import java.awt.geom.FlatteningPathIterator;
import java.awt.geom.Path2D;
import java.awt.geom.PathIterator;
import java.awt.geom.Rectangle2D;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.oaktag.adjust.Recipe;
import org.oaktag.body.BodyMeasurements;
import org.oaktag.export.drawing.Font;
import org.oaktag.garment.Edge;
import org.oaktag.garment.EdgeRef;
import org.oaktag.garment.Garment;
import org.oaktag.garment.Piece;

/** Reads the sheets of the whole night crew back and holds them against the garments and against each other. */
class WrittenSheetsTest {

    /** A tenth of what was promised: a vector export true to 1e-4 mm. */
    private static final double LENGTH_TOLERANCE = 1e-4;

    private static final Map<String, Map<String, String>> FILES = new HashMap<>();

    @BeforeAll
    static void draw(@TempDir Path folder) {
        for (String body : crew().toList()) {
            Run run = Run.into(folder.resolve(body), "--body", body);
            assertThat(run.err()).isEmpty();
            FILES.put(body, Run.files(folder.resolve(body)));
        }
    }

    static Stream<String> crew() {
        return BodyFile.nightCrew().bodies().stream().map(BodyMeasurements::name);
    }

    private static Garment top(String body) {
        BodyMeasurements measured = BodyFile.nightCrew().body(body);
        Recipe recipe = HoodedTop.recipe(false);
        return recipe.applyTo(HoodedTop.block(measured));
    }

    private static SvgReader sheet(String body, String name) {
        String text = FILES.getOrDefault(body, Map.of()).get(name);
        assertThat(text).as(name).isNotNull();
        return SvgReader.read(text);
    }

    private static List<String> sheets(String body) {
        return FILES.getOrDefault(body, Map.of()).keySet().stream()
                .filter(name -> name.endsWith(".svg"))
                .toList();
    }

    @ParameterizedTest
    @MethodSource("crew")
    void every_edge_is_drawn_once_and_as_long_as_it_says(String body) {
        Map<String, SvgReader.Drawn> edges = new LinkedHashMap<>();
        for (SvgReader.Drawn path : sheet(body, "pattern.svg").paths()) {
            if (!path.id().isEmpty()) {
                assertThat(edges.put(path.id(), path)).as("twice: " + path.id()).isNull();
            }
        }
        for (Piece piece : top(body).pieces()) {
            for (Edge edge : piece.edges()) {
                String id = EdgeRef.of(piece.name(), edge.name()).id();
                SvgReader.Drawn path = edges.remove(id);
                assertThat(path).as(id).isNotNull();
                double recomputed = ArcLengthOracle.length(path.shape());
                assertThat(recomputed).as(id).isCloseTo(path.length(), within(LENGTH_TOLERANCE));
                assertThat(recomputed).as(id).isCloseTo(edge.length().mm(), within(LENGTH_TOLERANCE));
                assertThat(path.data()).matches("M [-0-9. ]+( [LC] [-0-9. ]+)+");
            }
        }
        assertThat(edges).isEmpty();
    }

    @ParameterizedTest
    @MethodSource("crew")
    void the_pattern_is_in_millimetres_and_only_moved(String body) {
        SvgReader pattern = sheet(body, "pattern.svg");
        assertThat(pattern.attribute("viewBox"))
                .isEqualTo("0 0 " + pattern.attribute("width").replace("mm", "") + " "
                        + pattern.attribute("height").replace("mm", ""));
        assertThat(pattern.attribute("width")).matches("[0-9]+mm");
        assertThat(pattern.transformsAbovePaths())
                .isNotEmpty()
                .allMatch(each -> each.matches("translate\\([-0-9. ]+\\)"));
    }

    @ParameterizedTest
    @MethodSource("crew")
    void the_test_square_measures_100_mm_both_ways(String body) {
        List<Rectangle2D> squares = sheet(body, "pattern.svg").paths().stream()
                .filter(path -> path.group().equals("sheet-header"))
                .map(path -> path.shape().getBounds2D())
                .filter(box -> box.getWidth() > 50 && box.getHeight() > 50)
                .toList();
        assertThat(squares).hasSize(1);
        assertThat(squares.get(0).getWidth()).isEqualTo(100);
        assertThat(squares.get(0).getHeight()).isEqualTo(100);
    }

    @ParameterizedTest
    @MethodSource("crew")
    void no_label_lies_on_another_or_off_its_sheet(String body) {
        for (String name : sheets(body)) {
            SvgReader sheet = sheet(body, name);
            Rectangle2D paper = new Rectangle2D.Double(
                    0,
                    0,
                    Double.parseDouble(sheet.attribute("width").replace("mm", "")),
                    Double.parseDouble(sheet.attribute("height").replace("mm", "")));
            List<SvgReader.Lettering> labels = sheet.lettering();
            assertThat(labels).hasSizeGreaterThan(5);
            for (int i = 0; i < labels.size(); i++) {
                assertThat(paper.contains(labels.get(i).box().getBounds2D()))
                        .as("%s: '%s' on the paper", name, labels.get(i).text())
                        .isTrue();
                for (int j = i + 1; j < labels.size(); j++) {
                    assertThat(labels.get(i).overlaps(labels.get(j)))
                            .as(
                                    "%s: '%s' on '%s'",
                                    name, labels.get(i).text(), labels.get(j).text())
                            .isFalse();
                }
            }
        }
    }

    /** What is cut short ends in three dots; nothing that the main job is asked for does so by itself. */
    @ParameterizedTest
    @MethodSource("crew")
    void nothing_on_a_sheet_is_cut_short(String body) {
        for (String name : sheets(body)) {
            assertThat(sheet(body, name).lettering())
                    .as(name)
                    .allSatisfy(line -> assertThat(line.text()).doesNotEndWith("..."));
        }
    }

    @ParameterizedTest
    @MethodSource("crew")
    void the_title_of_each_step_says_all_that_was_asked_for(String body) {
        for (StepName step : StepName.of(top(body).history())) {
            if (step.number() > 0) {
                String title = sheet(body, "steps/" + step.file() + ".svg").lettering().stream()
                        .filter(line -> line.size() == Font.NAME.size())
                        .map(SvgReader.Lettering::text)
                        .collect(Collectors.joining(" "));
                assertThat(title).isEqualTo(step.number() + "  " + step.change().title());
            }
        }
    }

    @ParameterizedTest
    @MethodSource("crew")
    void labels_lie_inside_their_piece_and_off_every_line(String body) {
        SvgReader pattern = sheet(body, "pattern.svg");
        Map<String, List<SvgReader.Drawn>> byGroup = new LinkedHashMap<>();
        pattern.paths()
                .forEach(path -> byGroup.computeIfAbsent(path.group(), group -> new ArrayList<>())
                        .add(path));
        int checked = 0;
        for (SvgReader.Lettering label : pattern.lettering()) {
            if (label.group().startsWith("piece-")) {
                List<SvgReader.Drawn> lines = byGroup.getOrDefault(label.group(), List.of());
                Area piece = seamLine(lines);
                Area outside = new Area(label.box());
                outside.subtract(piece);
                assertThat(outside.isEmpty())
                        .as("%s: '%s' inside", label.group(), label.text())
                        .isTrue();
                for (SvgReader.Drawn line : lines) {
                    assertThat(meets(line.shape(), label.box()))
                            .as("%s: '%s' on %s", label.group(), label.text(), line.data())
                            .isFalse();
                }
                checked++;
            }
        }
        assertThat(checked).isGreaterThan(60);
    }

    /**
     * Tells whether a plate that was painted later, as behind the name of a ribbed piece, hides what lies under a
     * label.
     */
    private static boolean isCovered(SvgReader.Lettering label, List<SvgReader.Drawn> later) {
        return later.stream()
                .filter(plate -> plate.width() == 0)
                .anyMatch(plate ->
                        plate.shape().getBounds2D().contains(label.box().getBounds2D()));
    }

    @ParameterizedTest
    @MethodSource("crew")
    void no_line_runs_through_a_label_of_a_reduced_sheet(String body) {
        for (String name : sheets(body)) {
            if (!name.equals("pattern.svg")) {
                SvgReader sheet = sheet(body, name);
                for (SvgReader.Lettering label : sheet.lettering()) {
                    List<SvgReader.Drawn> painted = sheet.paths();
                    for (int i = 0; i < painted.size(); i++) {
                        SvgReader.Drawn line = painted.get(i);
                        assertThat(line.width() > 0
                                        && meets(line.shape(), label.box())
                                        && !isCovered(label, painted.subList(i + 1, painted.size())))
                                .as("%s: '%s' on %s", name, label.text(), line.data())
                                .isFalse();
                    }
                }
            }
        }
    }

    @ParameterizedTest
    @MethodSource("crew")
    void pieces_lie_apart(String body) {
        Map<String, Rectangle2D> boxes = new LinkedHashMap<>();
        sheet(body, "pattern.svg")
                .paths()
                .forEach(path -> boxes.merge(path.group(), path.shape().getBounds2D(), Rectangle2D::createUnion));
        assertThat(boxes).hasSize(13);
        List<Map.Entry<String, Rectangle2D>> groups = List.copyOf(boxes.entrySet());
        for (int i = 0; i < groups.size(); i++) {
            for (int j = i + 1; j < groups.size(); j++) {
                assertThat(groups.get(i).getValue().intersects(groups.get(j).getValue()))
                        .as(groups.get(i).getKey() + " and " + groups.get(j).getKey())
                        .isFalse();
            }
        }
    }

    @ParameterizedTest
    @MethodSource("crew")
    void lettering_is_large_enough_to_read(String body) {
        // Capitals of Liberation Sans are 0.716 of its size: 3 mm at the least.
        for (String name : sheets(body)) {
            assertThat(sheet(body, name).lettering()).allMatch(label -> label.size() * 0.716 >= 3);
        }
    }

    @Test
    void the_cut_line_encloses_the_seam_line_of_every_piece() {
        SvgReader pattern = sheet("Mira", "pattern.svg");
        Map<String, List<SvgReader.Drawn>> byGroup = new LinkedHashMap<>();
        pattern.paths()
                .forEach(path -> byGroup.computeIfAbsent(path.group(), group -> new ArrayList<>())
                        .add(path));
        Set<String> seen = new HashSet<>();
        byGroup.forEach((group, lines) -> {
            if (group.startsWith("piece-")) {
                Rectangle2D seam = seamLine(lines).getBounds2D();
                Rectangle2D all = lines.get(0).shape().getBounds2D();
                assertThat(lines.get(0).width()).as("the cut line is wide").isEqualTo(0.5);
                assertThat(all.getMinX()).isLessThanOrEqualTo(seam.getMinX() + 1e-6);
                assertThat(all.getMinY()).isLessThan(seam.getMinY());
                assertThat(all.getMaxX()).isGreaterThan(seam.getMaxX());
                assertThat(all.getMaxY()).isGreaterThan(seam.getMaxY());
                seen.add(group);
            }
        });
        assertThat(seen).hasSize(12);
    }

    /** The edges of a piece joined to its outline. */
    private static Area seamLine(List<SvgReader.Drawn> lines) {
        Path2D outline = new Path2D.Double();
        for (SvgReader.Drawn line : lines) {
            if (!line.id().isEmpty()) {
                outline.append(line.shape(), true);
            }
        }
        outline.closePath();
        return new Area(outline);
    }

    private static boolean meets(Path2D line, Path2D box) {
        Area area = new Area(box);
        PathIterator flat = new FlatteningPathIterator(line.getPathIterator(null), 0.01);
        double[] p = new double[6];
        double x = 0;
        double y = 0;
        while (!flat.isDone()) {
            int type = flat.currentSegment(p);
            if (type == PathIterator.SEG_LINETO) {
                int steps = (int) Math.ceil(Math.hypot(p[0] - x, p[1] - y) / 0.2);
                for (int i = 0; i <= steps; i++) {
                    double share = steps == 0 ? 0 : (double) i / steps;
                    if (area.contains(x + share * (p[0] - x), y + share * (p[1] - y))) {
                        return true;
                    }
                }
            }
            x = p[0];
            y = p[1];
            flat.next();
        }
        return false;
    }
}
