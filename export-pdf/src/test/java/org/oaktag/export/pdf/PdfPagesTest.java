package org.oaktag.export.pdf;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.outline.PDOutlineItem;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.oaktag.export.drawing.Figure;
import org.oaktag.export.drawing.Font;
import org.oaktag.export.drawing.LineType;
import org.oaktag.export.drawing.Stroke;
import org.oaktag.export.drawing.TextBlock;
import org.oaktag.export.sheet.PaperSheet;
import org.oaktag.export.sheet.Placement;
import org.oaktag.export.sheet.Printout;
import org.oaktag.geometry.Point;

/** A printout as PDF, read back by PDFBox. */
class PdfPagesTest {

    private static Placement placed(String id, Figure figure, Optional<String> layer) {
        return new Placement(id, Optional.of(id), figure, 20, 30, Optional.empty(), layer);
    }

    private static Printout printout(String title, Placement... placements) {
        PaperSheet sheet = new PaperSheet("Sheet 1 of 1", 210, 297, List.of(placements));
        return new Printout(title, "to be read back", List.of(sheet), List.of(), List.of());
    }

    private static Printout lettering(String text) {
        Figure figure = new Figure().add(TextBlock.of(text, Font.TEXT).at(0, 0));
        return printout(text, placed("text", figure, Optional.empty()));
    }

    private static Figure line() {
        return new Figure().add(Stroke.line(LineType.CUT, Point.of(0, 0), Point.of(100, 0)));
    }

    @Test
    void a_page_has_the_size_of_its_sheet_its_title_and_bookmarks_and_asks_not_to_be_scaled() throws IOException {
        try (PDDocument document = Loader.loadPDF(PdfPages.of(lettering("Ines")).bytes())) {
            assertThat(document.getPage(0).getMediaBox().getWidth() / 72 * 25.4).isCloseTo(210, within(1e-4));
            assertThat(document.getPage(0).getMediaBox().getHeight() / 72 * 25.4)
                    .isCloseTo(297, within(1e-4));
            assertThat(document.getDocumentInformation().getTitle()).isEqualTo("Ines");
            var catalog = document.getDocumentCatalog();
            assertThat(catalog.getViewerPreferences().getPrintScaling()).isEqualTo("None");
            List<String> titles = new ArrayList<>();
            for (PDOutlineItem item : catalog.getDocumentOutline().children()) {
                titles.add(item.getTitle());
                item.children().forEach(child -> titles.add(child.getTitle()));
            }
            assertThat(titles).containsExactly("Sheet 1 of 1", "text");
        }
    }

    @Test
    void every_font_is_embedded_as_a_subset() throws IOException {
        try (PDDocument document =
                Loader.loadPDF(PdfPages.of(lettering("Ines \u05D0 \u0410")).bytes())) {
            var resources = document.getPage(0).getResources();
            for (var name : resources.getXObjectNames()) {
                var form = (org.apache.pdfbox.pdmodel.graphics.form.PDFormXObject) resources.getXObject(name);
                for (var font : form.getResources().getFontNames()) {
                    assertThat(form.getResources().getFont(font).isEmbedded()).isTrue();
                    assertThat(form.getResources().getFont(font).getName()).matches("[A-Z]{6}\\+.*");
                }
            }
        }
    }

    @Test
    void hostile_text_is_shown_and_found_and_does_nothing() throws IOException {
        String hostile = "</text><script>alert(1)</script>) Tj ET /JS (x) \\ (( % \u05D0\u05D1\u05D2 \uD83E\uDDE5 "
                + "x".repeat(300);
        PdfPages pages = PdfPages.of(lettering(hostile));
        assertThat(pages.notShown()).containsExactly("\uD83E\uDDE5");
        try (PDDocument document = Loader.loadPDF(pages.bytes())) {
            assertThat(document.getDocumentInformation().getTitle()).isEqualTo(hostile);
            assertThat(document.getDocumentCatalog().getOpenAction()).isNull();
            assertThat(document.getDocumentCatalog().getNames()).isNull();
            assertThat(document.getPage(0).getAnnotations()).isEmpty();
        }
        // As it was written, for a reader that searches or copies.
        StringBuilder actual = new StringBuilder("/ActualText <FEFF");
        for (byte b : hostile.getBytes(StandardCharsets.UTF_16BE)) {
            actual.append(String.format(java.util.Locale.ROOT, "%02x", b));
        }
        assertThat(new String(pages.bytes(), StandardCharsets.ISO_8859_1)).contains(actual);
    }

    @Test
    void markup_and_operators_in_a_name_are_read_as_letters() throws IOException {
        // Without Hebrew: PDFBox's reader takes such a line to be stored as it is seen, and turns it round.
        String hostile = "</text><script>alert(1)</script>) Tj ET /JS (x) \\ (( % \uD83E\uDDE5 end";
        try (PDDocument document =
                Loader.loadPDF(PdfPages.of(lettering(hostile)).bytes())) {
            assertThat(new PDFTextStripper().getText(document).strip()).isEqualTo(hostile);
        }
    }

    @Test
    void most_alphabets_are_shown() {
        String names = "Zo\u00EB \u0141ukasz \u0396\u03C9\u03AE \u0416\u0435\u043D\u044F \u05E9\u05E8\u05D4"
                + " \u0633\u0644\u0645\u0649 \u0531\u0576\u056B \u10DC\u10D8\u10DC\u10DD";
        assertThat(PdfPages.of(lettering(names)).notShown()).isEmpty();
    }

    @Test
    void a_layer_holds_what_was_placed_on_it() throws IOException {
        byte[] bytes = PdfPages.of(printout(
                        "nest",
                        placed("size-38", line(), Optional.of("size 38")),
                        placed("size-40", line(), Optional.of("size 40")),
                        placed("frame", line(), Optional.empty())))
                .bytes();
        try (PDDocument document = Loader.loadPDF(bytes)) {
            var layers = document.getDocumentCatalog().getOCProperties();
            assertThat(layers.getGroupNames()).containsExactly("size 38", "size 40");
            String content = new String(document.getPage(0).getContents().readAllBytes(), StandardCharsets.US_ASCII);
            assertThat(content.split("BDC", -1)).hasSize(3);
            assertThat(content.split("EMC", -1)).hasSize(3);
        }
    }

    @Test
    void the_same_printout_gives_the_same_bytes_uncompressed() {
        byte[] bytes = PdfPages.of(lettering("Ines \u05D0")).bytes();
        assertThat(PdfPages.of(lettering("Ines \u05D0")).bytes()).isEqualTo(bytes);
        String text = new String(bytes, StandardCharsets.ISO_8859_1);
        assertThat(text)
                .doesNotContain("/FlateDecode")
                .doesNotContain("CreationDate")
                .doesNotContain("ModDate");
    }
}
