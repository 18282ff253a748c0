package org.oaktag.export.gallery;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import org.oaktag.export.drawing.FreeText;
import org.oaktag.export.xml.XmlWriter;

/**
 * A gallery as one page for a browser, for a desk, a telephone and paper, in light and dark. It refers to nothing
 * outside itself and carries no script. Immutable.
 *
 * <pre>{@code
 * GalleryPage.of("Winter", "Warm things.", List.of(GalleryStyle.of(style, juno, "For the cold.")))
 *         .writeTo(Path.of("winter.html"));
 * }</pre>
 *
 * @param text the page, to be stored as UTF-8; it is well-formed XML as well
 */
public record GalleryPage(String text) {

    /**
     * Makes every style on its body and on each of its sizes, and writes the page.
     *
     * @param title what is shown; free text
     * @param introduction what is said of it; free text
     * @param styles the styles, at least one; the first is shown large at the top
     * @throws org.oaktag.PatternException if a style cannot be made on a body
     * @throws IllegalArgumentException if there is no style
     */
    public static GalleryPage of(String title, String introduction, List<GalleryStyle> styles) {
        if (styles.isEmpty()) {
            throw new IllegalArgumentException("a gallery must show at least one style");
        }
        List<ShownStyle> shown = styles.stream().map(ShownStyle::of).toList();
        XmlWriter xml = XmlWriter.compactHtml();
        xml.begin("html").attribute("xmlns", "http://www.w3.org/1999/xhtml").attribute("lang", "en");
        head(xml, FreeText.shown(title));
        xml.begin("body");
        header(xml, title, introduction, shown);
        xml.begin("main");
        double widest = shown.stream()
                .mapToDouble(
                        style -> Math.max(style.front().width(), style.back().width()))
                .max()
                .orElse(1);
        shown.forEach(style -> style.write(xml, widest));
        xml.end();
        footer(xml, shown);
        return new GalleryPage(xml.end().end().document());
    }

    private static void head(XmlWriter xml, String title) {
        xml.begin("head");
        xml.begin("meta").attribute("charset", "utf-8").end();
        xml.begin("meta")
                .attribute("http-equiv", "Content-Security-Policy")
                .attribute("content", "default-src 'none'; style-src 'unsafe-inline'; img-src data:")
                .end();
        xml.begin("meta")
                .attribute("name", "viewport")
                .attribute("content", "width=device-width, initial-scale=1")
                .end();
        xml.begin("meta")
                .attribute("name", "color-scheme")
                .attribute("content", "light dark")
                .end();
        xml.begin("title").text(title).end();
        xml.begin("style").verbatim(style()).end();
        xml.end();
    }

    private static void header(XmlWriter xml, String title, String introduction, List<ShownStyle> shown) {
        xml.begin("header").begin("div");
        xml.begin("p")
                .attribute("class", "eyebrow")
                .text("Drafted, walked and drawn by Oaktag")
                .end();
        xml.begin("h1").text(FreeText.shown(title)).end();
        xml.begin("p")
                .attribute("class", "lead")
                .text(FreeText.shown(introduction))
                .end();
        xml.begin("nav").attribute("aria-label", "Styles").begin("ul");
        for (ShownStyle style : shown) {
            xml.begin("li")
                    .begin("a")
                    .attribute("href", "#" + style.id())
                    .text(style.title())
                    .end()
                    .end();
        }
        xml.end().end().end();
        shown.get(0).front().write(xml, "hero", 100);
        xml.end();
    }

    private static void footer(XmlWriter xml, List<ShownStyle> shown) {
        int garments = shown.stream().mapToInt(ShownStyle::garments).sum();
        int seams = shown.stream().mapToInt(ShownStyle::seams).sum();
        xml.begin("footer");
        xml.begin("p")
                .text(String.format(
                        Locale.ROOT,
                        "%d styles, %d garments, %d seams walked along the seam line and true within 0.01 mm. Finished measures are of the garment on a table; sizes go by the"
                                + " steps of GB/T 1335.",
                        shown.size(),
                        garments,
                        seams))
                .end();
        List<String> cautions = shown.stream()
                .flatMap(style -> style.cautions().stream())
                .distinct()
                .toList();
        if (!cautions.isEmpty()) {
            xml.begin("h2").text("Cautions").end().begin("ul");
            cautions.forEach(
                    caution -> xml.begin("li").text(FreeText.shown(caution)).end());
            xml.end();
        }
        xml.end();
    }

    private static String style() {
        try (InputStream in = GalleryPage.class.getResourceAsStream("gallery.css")) {
            if (in == null) {
                throw new IllegalStateException("the library must hold 'gallery.css'");
            }
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /**
     * Stores the page as UTF-8.
     *
     * @throws IOException if the file cannot be written
     */
    public void writeTo(Path file) throws IOException {
        Files.writeString(file, text);
    }
}
