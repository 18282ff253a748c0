package org.oaktag.examples;

import static org.assertj.core.api.Assertions.assertThat;
import static org.oaktag.adjustments.Bodies.shortenBody;
import static org.oaktag.adjustments.Bodies.straightenSideSeams;
import static org.oaktag.measure.Length.cm;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.oaktag.adjust.Recipe;
import org.oaktag.block.Style;
import org.oaktag.body.BodyMeasurements;
import org.oaktag.export.gallery.GalleryPage;
import org.oaktag.export.gallery.GalleryStyle;
import org.oaktag.garment.Garment;
import org.oaktag.garment.Name;
import org.oaktag.skirt.StraightSkirt;

class GalleryTest {

    private static final int LARGEST_FILE = 600_000;

    @TempDir
    private Path folder = Path.of("");

    private Path page() {
        StringWriter err = new StringWriter();
        int code = Gallery.run(
                new PrintWriter(new StringWriter()),
                new PrintWriter(err),
                "--out",
                folder.resolve("gallery").toString());
        assertThat(code).as(err.toString()).isZero();
        return folder.resolve("gallery/index.html");
    }

    @Test
    void every_style_is_true_in_every_size() {
        assertThat(Gallery.styles()).hasSize(15).allSatisfy(style -> {
            assertThat(style.sizes()).hasSize(5);
            assertThat(style.style().on(style.body()).walkSeams().isTrue()).isTrue();
            for (BodyMeasurements body : style.sizes()) {
                assertThat(style.style().on(body).walkSeams().untrue())
                        .as("%s for %s", style.style().title(), body.name())
                        .isEmpty();
            }
        });
    }

    @Test
    void no_style_leaves_an_edge_raw_without_saying_so() {
        assertThat(Gallery.styles())
                .allSatisfy(style -> assertThat(style.style().on(style.body()).rawEdges())
                        .as(style.style().title())
                        .isEmpty());
    }

    @Test
    void a_style_that_ends_above_the_waist_has_none_in_its_table() {
        GalleryStyle tee = Gallery.styles().get(1);
        assertThat(pageOf(tee, tee.style())).contains(">waist girth<", ">hem girth<");
        Style cropped = tee.style().with(Recipe.of("Cropped tee", straightenSideSeams(), shortenBody(cm(30))));
        assertThat(pageOf(tee, cropped)).contains(">hem girth<").doesNotContain(">waist girth<");
    }

    private static String pageOf(GalleryStyle like, Style style) {
        return GalleryPage.of("Tops", "", List.of(GalleryStyle.of(style, like.body(), "")))
                .text();
    }

    @Test
    void it_is_one_small_file_that_asks_for_nothing() throws IOException {
        Path page = page();
        assertThat(Run.entries(page.resolveSibling(""))).containsExactly("index.html");
        assertThat(Files.size(page)).isLessThan(LARGEST_FILE);
        assertThat(Files.readString(page)).doesNotContain("<script").doesNotContain("url(http");
    }

    @Test
    void chromium_shows_what_the_library_computes_and_axe_finds_nothing() throws IOException {
        Path page = page();
        try (Browser browser = Browser.start()) {
            for (String scheme : List.of("light", "dark")) {
                int width = scheme.equals("light") ? 1280 : 390;
                browser.resize(width, 844);
                browser.prefer(scheme);
                browser.open(page);
                assertThat(browser.violations()).as(scheme).isEmpty();
                assertThat(browser.evaluate("document.documentElement.scrollWidth")
                                .asInt())
                        .isLessThanOrEqualTo(width);
            }
            assertThat(browser.evaluate("[...document.images].every(each => each.naturalWidth > 50)")
                            .asBoolean())
                    .as("every picture is drawn")
                    .isTrue();
            JsonNode tables = browser.evaluate("[...document.querySelectorAll('article')].map(each =>"
                    + " [...each.querySelectorAll('tr')].map(row => [...row.cells].map(cell => cell.innerText)))");
            List<GalleryStyle> styles = Gallery.styles();
            assertThat(tables).hasSameSizeAs(styles);
            for (int i = 0; i < styles.size(); i++) {
                assertShown(tables.get(i), styles.get(i));
            }
            assertThat(browser.complaints()).isEmpty();
        }
    }

    /** Every figure of the table is that of the garment, which is drafted anew here. */
    private static void assertShown(JsonNode table, GalleryStyle style) {
        JsonNode heads = table.get(0);
        List<String> names = new ArrayList<>();
        heads.forEach(head -> names.add(head.asText()));
        boolean skirt = style.style().block() instanceof StraightSkirt;
        assertThat(names).contains("waist girth", "hem girth").doesNotHaveDuplicates();
        assertThat(names)
                .contains(skirt ? "hip girth" : "chest girth", skirt ? "centre front length" : "centre back length");
        assertThat(names.get(0)).isEqualTo(skirt ? "Body, waist × hip × height" : "Body, bust × height");
        for (int row = 0; row < style.sizes().size(); row++) {
            Garment garment = style.style().on(style.sizes().get(row));
            for (int column = 1; column < names.size(); column++) {
                double finished = garment.finished(Name.of(names.get(column))).cm();
                assertThat(table.get(row + 1).get(column).asText())
                        .as("%s, %s", style.style().title(), names.get(column))
                        .isEqualTo(String.format(Locale.ROOT, "%.1f", finished));
            }
        }
    }
}
