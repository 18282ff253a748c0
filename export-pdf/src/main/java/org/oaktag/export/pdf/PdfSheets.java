package org.oaktag.export.pdf;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.Map;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDDocumentCatalog;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDResources;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.common.PDStream;
import org.apache.pdfbox.pdmodel.graphics.form.PDFormXObject;
import org.apache.pdfbox.pdmodel.graphics.optionalcontent.PDOptionalContentGroup;
import org.apache.pdfbox.pdmodel.graphics.optionalcontent.PDOptionalContentProperties;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.destination.PDPageFitDestination;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.outline.PDDocumentOutline;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.outline.PDOutlineItem;
import org.apache.pdfbox.pdmodel.interactive.viewerpreferences.PDViewerPreferences;
import org.oaktag.export.drawing.Figure;
import org.oaktag.export.sheet.PaperSheet;
import org.oaktag.export.sheet.Placement;
import org.oaktag.export.sheet.Printout;
import org.oaktag.geometry.Bounds;

/** Lays the sheets of a printout out as pages. A figure that several pages show is written once. */
final class PdfSheets {

    /** Points in a millimetre: a point is 1/72 inch (ISO 32000-1, 8.3.2.3). */
    private static final double POINTS_PER_MM = 72 / 25.4;

    private final PDDocument document;
    private final PdfInk ink;
    private final PDResources resources = new PDResources();
    private final Map<String, COSName> figures = new LinkedHashMap<>();
    private final Map<String, COSName> layers = new LinkedHashMap<>();
    private final PDOptionalContentProperties layerProperties = new PDOptionalContentProperties();

    PdfSheets(PDDocument document, PdfFonts fonts) {
        this.document = document;
        this.ink = new PdfInk(fonts);
    }

    void write(Printout printout) throws IOException {
        PDDocumentCatalog catalog = document.getDocumentCatalog();
        document.getDocumentInformation().setTitle(printout.title());
        document.getDocumentInformation().setSubject(printout.description());
        catalog.setLanguage("en");
        PDViewerPreferences preferences = new PDViewerPreferences(new COSDictionary());
        preferences.setDisplayDocTitle(true);
        preferences.setPrintScaling(PDViewerPreferences.PRINT_SCALING.None);
        catalog.setViewerPreferences(preferences);
        PDDocumentOutline outline = new PDDocumentOutline();
        catalog.setDocumentOutline(outline);
        for (PaperSheet sheet : printout.sheets()) {
            PDPage page = page(sheet);
            document.addPage(page);
            outline.addLast(bookmark(sheet, page));
        }
        if (!layers.isEmpty()) {
            catalog.setOCProperties(layerProperties);
        }
    }

    private static PDOutlineItem bookmark(PaperSheet sheet, PDPage page) {
        PDOutlineItem item = item(sheet.title(), page);
        for (Placement placement : sheet.placements()) {
            placement.title().ifPresent(title -> item.addLast(item(title, page)));
        }
        return item;
    }

    private static PDOutlineItem item(String title, PDPage page) {
        PDPageFitDestination destination = new PDPageFitDestination();
        destination.setPage(page);
        PDOutlineItem item = new PDOutlineItem();
        item.setTitle(title);
        item.setDestination(destination);
        return item;
    }

    private PDPage page(PaperSheet sheet) throws IOException {
        PDPage page = new PDPage(
                new PDRectangle((float) (sheet.width() * POINTS_PER_MM), (float) (sheet.height() * POINTS_PER_MM)));
        page.setResources(resources);
        PdfContent content = new PdfContent();
        content.matrix(POINTS_PER_MM, 0, 0, -POINTS_PER_MM, 0, sheet.height() * POINTS_PER_MM);
        for (Placement placement : sheet.placements()) {
            place(content, placement);
        }
        PDStream stream = new PDStream(document);
        try (OutputStream out = stream.createOutputStream()) {
            out.write(content.bytes());
        }
        page.setContents(stream);
        return page;
    }

    private void place(PdfContent content, Placement placement) throws IOException {
        COSName figure = figure(placement);
        if (placement.layer().isPresent()) {
            content.operator("/OC /" + layer(placement.layer().get()).getName() + " BDC");
        }
        content.operator("q");
        if (placement.window().isPresent()) {
            Bounds window = placement.window().get();
            content.rectangle(window).operator("W n");
        }
        content.matrix(1, 0, 0, 1, placement.dx(), placement.dy());
        content.operator("/" + figure.getName() + " Do");
        content.operator("Q");
        if (placement.layer().isPresent()) {
            content.operator("EMC");
        }
    }

    private COSName layer(String name) {
        return layers.computeIfAbsent(name, each -> {
            PDOptionalContentGroup group = new PDOptionalContentGroup(each);
            layerProperties.addGroup(group);
            return resources.add(group);
        });
    }

    private COSName figure(Placement placement) throws IOException {
        COSName known = figures.get(placement.id());
        if (known != null) {
            return known;
        }
        Figure figure = placement.figure();
        PDFormXObject form = new PDFormXObject(document);
        Bounds box = figure.bounds().expanded(BLEED);
        form.setBBox(
                new PDRectangle((float) box.minX(), (float) box.minY(), (float) box.width(), (float) box.height()));
        form.setResources(ink.resources());
        try (OutputStream out = form.getContentStream().createOutputStream()) {
            out.write(ink.write(figure).getBytes(StandardCharsets.US_ASCII));
        }
        COSName name = resources.add(form);
        figures.put(placement.id(), name);
        return name;
    }

    /** Lettering may reach a little beyond the room it was given, where another font stands in; mm. */
    private static final double BLEED = 20;
}
