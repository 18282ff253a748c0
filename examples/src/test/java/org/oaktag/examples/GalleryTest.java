package org.oaktag.examples;

import static org.assertj.core.api.Assertions.assertThat;

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
import org.oaktag.blocks.TopNames;
import org.oaktag.body.BodyMeasurements;
import org.oaktag.export.gallery.GalleryStyle;
import org.oaktag.garment.Garment;

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
        assertThat(Gallery.styles()).hasSize(11).allSatisfy(style -> {
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
            JsonNode chests = browser.evaluate("[...document.querySelectorAll('article')].map(each =>"
                    + " [...each.querySelectorAll('tbody tr')].map(row => row.children[1].innerText))");
            List<GalleryStyle> styles = Gallery.styles();
            assertThat(chests).hasSameSizeAs(styles);
            for (int i = 0; i < styles.size(); i++) {
                List<String> shown = new ArrayList<>();
                chests.get(i).forEach(each -> shown.add(each.asText()));
                assertThat(shown).containsExactlyElementsOf(chests(styles.get(i)));
            }
            assertThat(browser.complaints()).isEmpty();
        }
    }

    private static List<String> chests(GalleryStyle style) {
        return style.sizes().stream()
                .map(body -> {
                    Garment garment = style.style().on(body);
                    return String.format(
                            Locale.ROOT,
                            "%.1f",
                            garment.finished(TopNames.CHEST_GIRTH).cm());
                })
                .toList();
    }
}
