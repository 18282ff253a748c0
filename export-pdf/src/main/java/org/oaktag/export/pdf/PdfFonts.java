package org.oaktag.export.pdf;

import java.io.IOException;
import java.io.InputStream;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import org.apache.fontbox.ttf.CmapLookup;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.io.RandomAccessReadBuffer;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.font.PDType0Font;

/**
 * The fonts that a document embeds, of each only the glyphs that it uses. Not thread-safe.
 *
 * <p>First comes Liberation Sans, whose widths are those by which labels are measured, then DejaVu Sans, which knows
 * many more scripts. Both may be handed on within documents (SIL Open Font License 1.1; Bitstream Vera licence, which
 * lies beside the font).
 */
final class PdfFonts {

    /** The width that a character without a glyph takes, in sizes. */
    static final double BOX_WIDTH = 0.7;

    /** A font that lies among the resources of a class. */
    private record Source(Class<?> beside, String file) {}

    private static final List<Source> FILES = List.of(
            new Source(PDDocument.class, "/org/apache/pdfbox/resources/ttf/LiberationSans-Regular.ttf"),
            new Source(PdfFonts.class, "DejaVuSans.ttf"));

    private final PDDocument document;
    private final List<Face> faces = new ArrayList<>();
    private final TreeSet<Integer> notShown = new TreeSet<>();

    /**
     * A font in the document.
     *
     * @param name the name by which operators refer to it
     * @param font the font as the document holds it
     * @param glyphs which character has which glyph
     */
    record Face(COSName name, PDType0Font font, CmapLookup glyphs) {}

    /**
     * Characters side by side in one font.
     *
     * @param font the font; empty where no font has them
     * @param glyphs their codes in that font, in hexadecimal
     * @param count how many they are
     * @param width their width in sizes
     */
    record Run(Optional<Face> font, String glyphs, int count, double width) {}

    PdfFonts(PDDocument document) {
        this.document = document;
    }

    List<String> notShown() {
        return notShown.stream().map(Character::toString).toList();
    }

    /** Puts the glyphs that were used into the document; nothing can be written after it. */
    void embed() throws IOException {
        for (Face face : faces) {
            face.font().subset();
        }
    }

    /** Parts a text into runs, in the order in which they are set. */
    List<Run> runs(VisualText text) throws IOException {
        List<Run> runs = new ArrayList<>();
        for (int character : text.characters()) {
            if (isInvisible(character)) {
                continue;
            }
            Run one = run(character);
            Run last = runs.isEmpty() ? null : runs.get(runs.size() - 1);
            if (last != null && last.font().equals(one.font())) {
                runs.set(
                        runs.size() - 1,
                        new Run(
                                last.font(),
                                last.glyphs() + one.glyphs(),
                                last.count() + 1,
                                last.width() + one.width()));
            } else {
                runs.add(one);
            }
        }
        return runs;
    }

    /** Joiners and variation selectors shape their neighbours and are nothing by themselves. */
    private static boolean isInvisible(int character) {
        return character == 0x200C || character == 0x200D || (character >= 0xFE00 && character <= 0xFE0F);
    }

    private Run run(int character) throws IOException {
        for (int i = 0; i < FILES.size(); i++) {
            Face face = face(i);
            if (face.glyphs().getGlyphId(character) != 0) {
                String one = Character.toString(character);
                face.font().addToSubset(character);
                String code = HexFormat.of().formatHex(face.font().encode(one));
                return new Run(Optional.of(face), code, 1, face.font().getStringWidth(one) / 1000.0);
            }
        }
        notShown.add(character);
        return new Run(Optional.empty(), "", 1, BOX_WIDTH);
    }

    /** A font is read only where the ones before it lack a character. */
    private Face face(int index) throws IOException {
        while (faces.size() <= index) {
            TrueTypeFont font = read(FILES.get(faces.size()));
            faces.add(new Face(
                    COSName.getPDFName("F" + faces.size()),
                    PDType0Font.load(document, font, true),
                    font.getUnicodeCmapLookup()));
        }
        return faces.get(index);
    }

    private static TrueTypeFont read(Source source) throws IOException {
        try (InputStream in = source.beside().getResourceAsStream(source.file())) {
            if (in == null) {
                throw new IOException("the font '" + source.file() + "' must lie on the class or module path");
            }
            return new TTFParser().parse(new RandomAccessReadBuffer(in.readAllBytes()));
        }
    }
}
