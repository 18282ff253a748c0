package org.oaktag.examples;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.SortedSet;
import java.util.TreeSet;
import org.oaktag.export.pdf.PdfPages;
import org.oaktag.export.sheet.LeftOut;
import org.oaktag.export.sheet.Nest;
import org.oaktag.export.sheet.Paper;
import org.oaktag.export.sheet.Printout;
import org.oaktag.export.sheet.Tiling;
import org.oaktag.export.svg.HtmlPages;
import org.oaktag.export.svg.SvgSheet;
import org.oaktag.garment.Allowances;
import org.oaktag.garment.Garment;

/**
 * The pattern itself: of one top, or of one in several sizes drawn over each other.
 *
 * @param drawn the sheet to be looked at and drawn on
 * @param printed what is printed, by its name
 * @param leftOut the labels for which there was no room on their pieces
 * @param notShown the characters that a PDF shows as an empty box
 */
record PatternFiles(SvgSheet drawn, Map<String, byte[]> printed, List<LeftOut> leftOut, SortedSet<String> notShown) {

    static PatternFiles of(Garment top, Allowances allowances) {
        return of(
                SvgSheet.pattern(top, allowances),
                Printout.tiled(top, allowances, Tiling.on(Paper.A4)),
                Printout.whole(top, allowances, Paper.A0));
    }

    static PatternFiles of(Nest nest, Allowances allowances) {
        return of(
                SvgSheet.pattern(nest, allowances),
                Printout.nested(nest, allowances, Tiling.on(Paper.A4)),
                Printout.nestedWhole(nest, allowances, Paper.A0));
    }

    private static PatternFiles of(SvgSheet sheet, Printout tiled, Printout whole) {
        SortedSet<String> notShown = new TreeSet<>();
        Map<String, byte[]> printed = new LinkedHashMap<>();
        printed.put("pattern-a4.pdf", pdf(tiled, notShown));
        printed.put("pattern-a4.html", MadeTop.utf8(HtmlPages.of(tiled).text()));
        printed.put("pattern-copy-shop.pdf", pdf(whole, notShown));
        return new PatternFiles(sheet, printed, tiled.leftOut(), notShown);
    }

    private static byte[] pdf(Printout printout, SortedSet<String> notShown) {
        PdfPages pages = PdfPages.of(printout);
        notShown.addAll(pages.notShown());
        return pages.bytes();
    }

    /** Tells what is missing in the files. */
    void tellMissing(PlainText text) {
        if (!leftOut.isEmpty()) {
            text.head("No room on the piece, to be written by hand");
            leftOut.forEach(label -> text.wrapped("  ", label.piece() + ": " + label.label()));
        }
        if (!notShown.isEmpty()) {
            text.head("Left out in the PDF");
            text.wrapped(
                    "  ",
                    "no font has " + String.join(" ", notShown)
                            + ": a box is drawn in the place of each; the SVG and the HTML have them");
        }
    }
}
