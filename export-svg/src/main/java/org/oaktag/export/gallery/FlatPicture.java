package org.oaktag.export.gallery;

import java.nio.charset.StandardCharsets;
import java.util.Base64;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.oaktag.export.svg.SvgSheet;
import org.oaktag.export.xml.XmlWriter;

/**
 * A drawing of a garment as a picture in the page, whose textures cannot be confused with those of another. Immutable.
 *
 * @param sheet the drawing
 * @param described what it shows, for those who do not see it
 * @param width how wide it is, mm on its own scale
 */
record FlatPicture(SvgSheet sheet, String described, double width) {

    private static final Pattern WIDTH = Pattern.compile("<svg[^>]* width=\"([0-9.]+)mm\"");

    static FlatPicture of(SvgSheet sheet, String described) {
        Matcher width = WIDTH.matcher(sheet.text());
        if (!width.find()) {
            throw new IllegalStateException("a sheet must say how wide it is");
        }
        return new FlatPicture(sheet, described, Double.parseDouble(width.group(1)));
    }

    /**
     * Returns how wide it is to be shown, in percent of the widest: between its true share and all of it, so that a
     * small garment looks smaller and is still seen.
     */
    double share(double widest) {
        return 100 * Math.sqrt(width / widest);
    }

    void write(XmlWriter xml, String type, double share) {
        xml.begin("img")
                .attribute("class", type)
                .attribute("style", "--w:" + ShownStyle.tenths(share))
                .attribute("alt", described)
                .attribute(
                        "src",
                        "data:image/svg+xml;base64,"
                                + Base64.getEncoder()
                                        .encodeToString(sheet.text().getBytes(StandardCharsets.UTF_8)))
                .end();
    }
}
