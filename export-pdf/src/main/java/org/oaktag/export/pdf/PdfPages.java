package org.oaktag.export.pdf;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.apache.pdfbox.pdfwriter.compress.CompressParameters;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.oaktag.export.sheet.Printout;

/**
 * A printout as a PDF document. Immutable.
 *
 * <pre>{@code
 * PdfPages pages = PdfPages.of(Printout.tiled(top, allowances, Tiling.on(Paper.A4)));
 * pages.notShown();                              // = []
 * pages.writeTo(Path.of("pattern-a4.pdf"));
 * }</pre>
 *
 * <p>A page is as large as its sheet, and one matrix turns millimetres into points; a reader is asked not to scale it
 * when it prints. Lettering is embedded: Liberation Sans, and DejaVu Sans for what that lacks, which together know most
 * alphabets but no Chinese, Japanese or Korean and few emoji. A character that neither knows is shown as an empty box,
 * though it is found and copied as what it is; {@link #notShown()} names them.
 */
public final class PdfPages {

    private final byte[] bytes;
    private final List<String> notShown;

    private PdfPages(byte[] bytes, List<String> notShown) {
        this.bytes = bytes;
        this.notShown = List.copyOf(notShown);
    }

    /** Writes a printout. */
    public static PdfPages of(Printout printout) {
        try (PDDocument document = new PDDocument()) {
            // Any fixed number: without one, the identifier of the document is made of the time of day.
            document.setDocumentId(0L);
            PdfFonts fonts = new PdfFonts(document);
            new PdfSheets(document, fonts).write(printout);
            fonts.embed();
            PlainStreams.in(document);
            ByteArrayOutputStream out = new ByteArrayOutputStream();
            document.save(out, CompressParameters.NO_COMPRESSION);
            return new PdfPages(out.toByteArray(), fonts.notShown());
        } catch (IOException e) {
            throw new UncheckedIOException("a document in memory could not be written", e);
        }
    }

    /** Returns the document. */
    public byte[] bytes() {
        return bytes.clone();
    }

    /**
     * Returns each character that is shown as an empty box because no embedded font has it, in the order of Unicode.
     */
    public List<String> notShown() {
        return notShown;
    }

    /**
     * Stores the document.
     *
     * @throws IOException if the file cannot be written
     */
    public void writeTo(Path file) throws IOException {
        Files.write(file, bytes);
    }
}
