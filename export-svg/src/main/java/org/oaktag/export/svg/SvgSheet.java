package org.oaktag.export.svg;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import org.oaktag.adjust.Recipe;
import org.oaktag.export.drawing.Figure;
import org.oaktag.export.sheet.Cloths;
import org.oaktag.export.sheet.Nest;
import org.oaktag.garment.Allowances;
import org.oaktag.garment.Garment;
import org.oaktag.geometry.Bounds;
import org.oaktag.lay.Lay;

/**
 * A drawn sheet: an SVG document. Immutable.
 *
 * <pre>{@code
 * SvgSheet.pattern(top, KnitTop.allowances(top)).writeTo(Path.of("top.svg"));
 * SvgSheet.flat(top).writeTo(Path.of("as-worn.svg"));
 * }</pre>
 *
 * @param text the document, to be stored as UTF-8
 */
public record SvgSheet(String text) {

    /** The paper round a figure, mm. */
    private static final double FIGURE_MARGIN = 4;

    /** Refuses null. */
    public SvgSheet {
        Objects.requireNonNull(text, "text");
    }

    /**
     * Draws every piece of a garment at true scale, its user unit the millimetre.
     *
     * <p>Each edge is a path of its own on the seam line; its {@code id} is {@code piece.edge} and its
     * {@code data-length-mm} its length. Above it there are no transforms but translations.
     *
     * @throws org.oaktag.PatternException if an allowance does not fit a piece
     */
    public static SvgSheet pattern(Garment garment, Allowances allowances) {
        return new SvgSheet(PatternSheet.draw(garment, allowances));
    }

    /**
     * Draws every piece of a style in several sizes over each other, at true scale. What belongs to one size, its cut
     * lines, notches, inner lines and marks, is one group of the document, {@code size-1} and so on, and each piece in
     * it a group under the piece's name and the number of the size.
     *
     * @param allowances the allowances of every size
     * @throws org.oaktag.PatternException if an allowance does not fit a piece
     */
    public static SvgSheet pattern(Nest nest, Allowances allowances) {
        return new SvgSheet(PatternSheet.draw(nest, allowances));
    }

    /**
     * Draws a top laid flat, front and back, in its cloths, reduced, for its proportions to be judged before it is cut.
     *
     * @throws org.oaktag.PatternException if the garment lacks a front or a back with the edges of a top
     */
    public static SvgSheet flat(Garment garment) {
        return new SvgSheet(FlatSheet.draw(garment));
    }

    /**
     * Draws the front of a top laid flat, in its cloths, at a tenth of its size, with nothing beside or behind it: for
     * a page of one's own.
     *
     * @throws org.oaktag.PatternException if the garment lacks a front or a back with the edges of a top
     */
    public static SvgSheet front(Garment garment) {
        return new SvgSheet(FlatSheet.drawAlone(garment, true));
    }

    /**
     * Draws the back of a top laid flat, as {@link #front}.
     *
     * @throws org.oaktag.PatternException if the garment lacks a front or a back with the edges of a top
     */
    public static SvgSheet back(Garment garment) {
        return new SvgSheet(FlatSheet.drawAlone(garment, false));
    }

    /**
     * Draws the pieces that a step touched, reduced, before it (light, dashed) and after it (dark), with its amounts as
     * dimensions and a table of what moved most.
     *
     * @param number the step's number in its recipe, counted from 1
     * @param played the step as it was played
     */
    public static SvgSheet step(int number, Recipe.Played played) {
        return new SvgSheet(StepSheet.draw(number, played));
    }

    /**
     * Draws a lay reduced, with what to buy and what to cut.
     *
     * @param lay where the pieces of one cloth lie, of one garment or of several
     * @param cloths the paints of the cloths, of which its own is one
     */
    public static SvgSheet lay(Lay lay, Cloths cloths) {
        return new SvgSheet(LaySheet.draw(lay, cloths));
    }

    /**
     * Draws a figure by itself, on paper that is a little larger than it: an illustration for a text.
     *
     * @param title what a reader announces
     * @param description what it shows, in a sentence
     * @param figure what is drawn, in mm on the paper
     * @throws IllegalStateException if nothing is drawn
     */
    public static SvgSheet figure(String title, String description, Figure figure) {
        Bounds box = figure.bounds().expanded(FIGURE_MARGIN);
        return new SvgSheet(SvgDocument.begin(box.width(), box.height(), title, description, List.of())
                .draw("figure", figure, -box.minX(), -box.minY())
                .end());
    }

    /**
     * Stores the document as UTF-8.
     *
     * @throws IOException if the file cannot be written
     */
    public void writeTo(Path file) throws IOException {
        Files.writeString(file, text);
    }
}
