package org.oaktag.examples;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.oaktag.adjust.Recipe;
import org.oaktag.blocks.KnitTop;
import org.oaktag.body.BodyMeasurements;
import org.oaktag.export.sheet.Paper;
import org.oaktag.export.sheet.PaperSheet;
import org.oaktag.export.sheet.Printout;
import org.oaktag.export.sheet.Tiling;
import org.oaktag.garment.Edge;
import org.oaktag.garment.Garment;
import org.oaktag.garment.Piece;
import org.oaktag.geometry.Cubic;
import org.oaktag.geometry.Curve;
import org.oaktag.geometry.Point;

/**
 * What is printed is true to scale, as programs of others read it: MuPDF, librsvg and Chromium. Each test is skipped,
 * and says so, where its program is not installed.
 */
class TruePaperTest {

    /** Chromium lays out in units of 1/64 CSS px, which makes 100 mm about 2e-5 too small. */
    private static final double CHROMIUM = 2e-5;

    @TempDir
    private static Path folder = Path.of("");

    @BeforeAll
    static void run() {
        assertThat(Run.into(folder.resolve("out")).code()).isZero();
    }

    private static Path file(String name) {
        return folder.resolve("out").resolve(name);
    }

    @Test
    void the_square_of_the_tiled_pdf_is_100_mm_both_ways() {
        hasSquare(TracedPage.of(file("pattern-a4.pdf"), 1), 1e-3);
    }

    @Test
    void the_square_of_the_copy_shop_sheet_is_100_mm_both_ways() {
        hasSquare(TracedPage.of(file("pattern-copy-shop.pdf"), 1), 1e-3);
    }

    private static void hasSquare(TracedPage page, double tolerance) {
        List<TracedPage.Line> squares = page.lines().stream()
                .filter(line -> line.points().size() == 5)
                .filter(line -> Math.abs(line.width() - 100) < 1 && Math.abs(line.height() - 100) < 1)
                .toList();
        assertThat(squares).hasSize(1);
        assertThat(squares.get(0).width()).isCloseTo(100, within(tolerance));
        assertThat(squares.get(0).height()).isCloseTo(100, within(tolerance));
    }

    @Test
    void tiles_joined_again_are_the_pattern() {
        Reader.MUTOOL.mustBeInstalled();
        Garment top = top();
        Printout printout = Printout.tiled(top, KnitTop.allowances(top), Tiling.on(Paper.A4));
        List<Tile> tiles = tiles(printout);
        for (Piece piece : top.pieces()) {
            List<double[]> places = places(piece, tiles);
            // The bands of front and back may be alike: each is drawn once.
            long alike = top.pieces().stream()
                    .filter(other -> !places(piece, List.of(drawn(other))).isEmpty())
                    .count();
            assertThat(places).as("places of %s", piece.name()).hasSize((int) alike);
            for (double[] place : places) {
                piece.edges().forEach(edge -> isShownWhole(piece, edge, place, tiles));
            }
        }
    }

    /** A sheet whose lines are moved to where the sheet lies when all are joined. */
    private record Tile(PaperSheet sheet, double left, double top, List<TracedPage.Line> lines) {

        /** The part that this sheet prints: 10 mm inside its paper. */
        boolean prints(double x, double y) {
            return x >= left + 10 && x <= left + sheet.width() - 10 && y >= top + 10 && y <= top + sheet.height() - 10;
        }
    }

    private static List<Tile> tiles(Printout printout) {
        Pattern place = Pattern.compile("Sheet \\d+ of \\d+, column (\\d+), row (\\d+)");
        List<Tile> tiles = new ArrayList<>();
        for (int i = 0; i < printout.sheets().size(); i++) {
            PaperSheet sheet = printout.sheets().get(i);
            Matcher found = place.matcher(sheet.title());
            if (found.matches()) {
                // Margins of 10 mm on either side and an overlap of 10 mm: the next sheet begins 30 mm before its
                // width.
                double left = (Integer.parseInt(found.group(1)) - 1) * (sheet.width() - 30);
                double top = (Integer.parseInt(found.group(2)) - 1) * (sheet.height() - 30);
                List<TracedPage.Line> lines = TracedPage.of(file("pattern-a4.pdf"), i + 1).lines().stream()
                        .map(line -> new TracedPage.Line(line.points().stream()
                                .map(each -> new double[] {each[0] + left, each[1] + top})
                                .toList()))
                        .toList();
                tiles.add(new Tile(sheet, left, top, lines));
            }
        }
        assertThat(tiles).hasSizeGreaterThan(15);
        return tiles;
    }

    /** The piece as the model has it, as if it had been traced. */
    private static Tile drawn(Piece piece) {
        List<TracedPage.Line> lines = piece.edges().stream()
                .map(edge -> new TracedPage.Line(points(edge)))
                .toList();
        return new Tile(new PaperSheet("model", 1, 1, List.of()), 0, 0, lines);
    }

    /** Where the joined sheets show all edges of the piece, as moves from the piece's own coordinates. */
    private static List<double[]> places(Piece piece, List<Tile> tiles) {
        List<double[]> places = new ArrayList<>();
        for (double[] place : moves(piece.edges().get(0), tiles)) {
            boolean all = piece.edges().stream()
                    .allMatch(edge -> moves(edge, tiles).stream().anyMatch(move -> isNear(move, place)));
            if (all && places.stream().noneMatch(other -> isNear(other, place))) {
                places.add(place);
            }
        }
        return places;
    }

    private static List<double[]> moves(Edge edge, List<Tile> tiles) {
        return tiles.stream()
                .flatMap(tile -> tile.lines().stream())
                .map(line -> move(edge, line))
                .flatMap(Optional::stream)
                .toList();
    }

    private static Optional<double[]> move(Edge edge, TracedPage.Line line) {
        List<double[]> own = points(edge);
        if (own.size() != line.points().size()) {
            return Optional.empty();
        }
        double[] move = {line.first()[0] - own.get(0)[0], line.first()[1] - own.get(0)[1]};
        for (int i = 0; i < own.size(); i++) {
            double[] seen = line.points().get(i);
            if (!isNear(new double[] {seen[0] - own.get(i)[0], seen[1] - own.get(i)[1]}, move)) {
                return Optional.empty();
            }
        }
        return Optional.of(move);
    }

    private static boolean isNear(double[] a, double[] b) {
        return Math.hypot(a[0] - b[0], a[1] - b[1]) < 2e-3;
    }

    private static List<double[]> points(Edge edge) {
        List<double[]> points = new ArrayList<>();
        points.add(array(edge.path().start()));
        for (Curve curve : edge.path().curves()) {
            if (curve instanceof Cubic cubic) {
                points.add(array(cubic.control1()));
                points.add(array(cubic.control2()));
            }
            points.add(array(curve.end()));
        }
        return points;
    }

    private static double[] array(Point point) {
        return new double[] {point.x(), point.y()};
    }

    /** Every point of the edge is printed on a sheet that draws the edge in its place. */
    private static void isShownWhole(Piece piece, Edge edge, double[] place, List<Tile> tiles) {
        List<Tile> drawing = tiles.stream()
                .filter(tile -> tile.lines().stream()
                        .anyMatch(line -> move(edge, line)
                                .filter(move -> isNear(move, place))
                                .isPresent()))
                .toList();
        double length = edge.path().length();
        for (int i = 0; i <= 200; i++) {
            Point point = edge.path().pointAt(length * i / 200);
            double x = point.x() + place[0];
            double y = point.y() + place[1];
            assertThat(drawing.stream().anyMatch(tile -> tile.prints(x, y)))
                    .as("%s of %s at %.1f, %.1f", edge.name(), piece.name(), x, y)
                    .isTrue();
        }
    }

    private static Garment top() {
        BodyMeasurements body = BodyFile.nightCrew().bodies().get(0);
        List<Recipe.Played> played = HoodedTop.recipe(false).play(HoodedTop.block(body));
        return played.get(played.size() - 1).after();
    }

    @Test
    void librsvg_draws_the_square_100_mm_wide_and_high() throws IOException {
        Path png = folder.resolve("square.png");
        SvgReader sheet = SvgReader.read(Files.readString(file("pattern.svg")));
        var square = sheet.paths().stream()
                .map(path -> path.shape().getBounds2D())
                .filter(box -> Math.abs(box.getWidth() - 100) < 1e-6 && Math.abs(box.getHeight() - 100) < 1e-6)
                .findFirst()
                .orElseThrow();
        double left = square.getMinX() - 5;
        double top = square.getMinY() - 5;
        Reader.RSVG.run(List.of(
                "--dpi-x=300",
                "--dpi-y=300",
                "--background-color=white",
                "--page-width=110mm",
                "--page-height=110mm",
                "--left=" + -left + "mm",
                "--top=" + -top + "mm",
                "--output=" + png,
                file("pattern.svg").toString()));
        BufferedImage image = ImageIO.read(png.toFile());
        double expected = 100 / 25.4 * 300;
        int middle = (int) Math.round(image.getHeight() * 0.9);
        assertThat(distanceOfDark(image, middle, true)).isCloseTo(expected, within(1.0));
        assertThat(distanceOfDark(image, middle, false)).isCloseTo(expected, within(1.0));
    }

    /** The distance from the middle of the first dark run of a row or column to that of the last, pixels. */
    private static double distanceOfDark(BufferedImage image, int at, boolean row) {
        int size = row ? image.getWidth() : image.getHeight();
        List<double[]> runs = new ArrayList<>();
        double weight = 0;
        double moment = 0;
        for (int i = 0; i <= size; i++) {
            int grey = i == size ? 255 : (row ? image.getRGB(i, at) : image.getRGB(at, i)) & 0xFF;
            if (grey < 250) {
                weight += 255 - grey;
                moment += (255 - grey) * (i + 0.5);
            } else if (weight > 0) {
                runs.add(new double[] {moment / weight});
                weight = 0;
                moment = 0;
            }
        }
        return runs.get(runs.size() - 1)[0] - runs.get(0)[0];
    }

    @Test
    void chromium_measures_the_lengths_that_the_svg_states() throws IOException {
        Path page = folder.resolve("lengths.html");
        String svg = Files.readString(file("pattern.svg"));
        String script = "let out='';for(const p of document.querySelectorAll('[data-length-mm]'))"
                + "out+=p.id+' '+p.getAttribute('data-length-mm')+' '+p.getTotalLength()+';';"
                + "const b=document.querySelector('svg').getBoundingClientRect();"
                + "out+='sheet '+parseFloat(document.querySelector('svg').getAttribute('width'))+' '+b.width/96*25.4+';';"
                + "document.body.innerHTML='<pre>'+out+'</pre>';";
        Files.writeString(
                page, "<!DOCTYPE html><body>" + svg.substring(svg.indexOf("<svg")) + "<script>" + script + "</script>");
        String dom = Reader.chromium(List.of("--dump-dom", page.toUri().toString()));
        String lengths = dom.substring(dom.indexOf("<pre>") + 5, dom.indexOf("</pre>"));
        List<String> measured = List.of(lengths.split(";", 0));
        assertThat(measured).hasSizeGreaterThan(40);
        for (String each : measured) {
            String[] words = each.split(" ", 0);
            double stated = Double.parseDouble(words[1]);
            assertThat(Double.parseDouble(words[2])).as(words[0]).isCloseTo(stated, within(CHROMIUM * stated));
        }
    }

    @Test
    void chromium_prints_the_page_true_to_scale_one_sheet_a_page() throws IOException {
        Reader.MUTOOL.mustBeInstalled();
        Path pdf = folder.resolve("printed.pdf");
        Reader.chromium(List.of(
                "--no-pdf-header-footer",
                "--print-to-pdf=" + pdf,
                file("pattern-a4.html").toUri().toString()));
        hasSquare(TracedPage.of(pdf, 1), 100 * CHROMIUM + 1e-4);
        String pages = Reader.MUTOOL.run(List.of("pages", pdf.toString()));
        String ours = Reader.MUTOOL.run(List.of("pages", file("pattern-a4.pdf").toString()));
        assertThat(pages.split("<page ", -1)).hasSameSizeAs(ours.split("<page ", -1));
    }

    @Test
    void a_page_that_the_browser_shrinks_is_seen_not_to_be_true() throws IOException {
        Reader.MUTOOL.mustBeInstalled();
        String html = Files.readString(file("pattern-a4.html"));
        Path shrunk = folder.resolve("shrunk.html");
        Files.writeString(shrunk, html.replaceAll("@page\\{[^}]*\\}", ""));
        assertThat(Files.readString(shrunk)).doesNotContain("@page").hasSizeLessThan(html.length());
        Path pdf = folder.resolve("shrunk.pdf");
        Reader.chromium(List.of(
                "--no-pdf-header-footer",
                "--print-to-pdf=" + pdf,
                shrunk.toUri().toString()));
        TracedPage page = TracedPage.of(pdf, 1);
        assertThatThrownBy(() -> hasSquare(page, 100 * CHROMIUM + 1e-4)).isInstanceOf(AssertionError.class);
        // It is there, but smaller both ways.
        assertThat(page.lines())
                .filteredOn(line ->
                        line.points().size() == 5 && line.width() > 50 && Math.abs(line.width() - line.height()) < 0.01)
                .isNotEmpty()
                .allMatch(line -> line.width() < 99);
    }
}
