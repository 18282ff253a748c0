package org.oaktag.export.pdf;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.HexFormat;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDResources;
import org.apache.pdfbox.pdmodel.graphics.state.PDExtendedGraphicsState;
import org.oaktag.export.drawing.ClothPaint;
import org.oaktag.export.drawing.Colours;
import org.oaktag.export.drawing.Figure;
import org.oaktag.export.drawing.Fill;
import org.oaktag.export.drawing.Ink;
import org.oaktag.export.drawing.Label;
import org.oaktag.export.drawing.LineType;
import org.oaktag.export.drawing.Stroke;
import org.oaktag.geometry.Bounds;
import org.oaktag.geometry.Point;

/** Writes what is drawn as operators of a content stream whose user space is millimetres, y down. */
final class PdfInk {

    /** How thick the rim is that makes a bold letter of a plain one, in sizes. */
    private static final double EMBOLDENING = 0.035;

    /** The empty box that stands for a character without a glyph, in sizes. */
    private static final double BOX_HEIGHT = 0.68;

    private static final double BOX_INSET = 0.08;

    private final PdfFonts fonts;
    private final PDResources resources = new PDResources();

    PdfInk(PdfFonts fonts) {
        this.fonts = fonts;
    }

    /** Returns what the operators refer to; it grows as more is written. */
    PDResources resources() {
        return resources;
    }

    String write(Figure figure) throws IOException {
        PdfContent content = new PdfContent();
        content.operator("1 j");
        for (Ink ink : figure.inks()) {
            if (ink instanceof Stroke stroke) {
                write(content, stroke);
            } else if (ink instanceof Fill fill) {
                write(content, fill);
            } else if (ink instanceof Label label) {
                write(content, label);
            }
        }
        return content.text();
    }

    private static void write(PdfContent content, Stroke stroke) {
        LineType type = stroke.type();
        content.colour(type.colour(), "RG").number(type.width()).operator("w");
        content.operator(type.dashes().stream().map(each -> each + "").collect(Collectors.joining(" ", "[", "] 0 d")));
        content.path(stroke.path()).operator(stroke.path().isClosed() ? "s" : "S");
    }

    private void write(PdfContent content, Fill fill) {
        Optional<ClothPaint> cloth = Stream.of(ClothPaint.values())
                .filter(paint -> paint.paint().equals(fill.paint()))
                .findFirst();
        content.operator("q");
        if (fill.opacity() < 1) {
            content.operator("/" + opacity("shade", fill.opacity()).getName() + " gs");
        }
        content.colour(cloth.map(ClothPaint::colour).orElse(fill.paint()), "rg")
                .path(fill.outline())
                .operator("f");
        if (cloth.isPresent() && !cloth.get().texture().isEmpty()) {
            texture(content, cloth.get(), fill);
        }
        content.operator("Q");
    }

    private void texture(PdfContent content, ClothPaint cloth, Fill fill) {
        content.path(fill.outline()).operator("W n");
        content.operator("/" + opacity("texture", ClothPaint.TEXTURE_OPACITY).getName() + " gs");
        content.colour(Colours.INK, "RG").number(ClothPaint.TEXTURE_WIDTH).operator("w [] 0 d");
        List<String> parts = List.of(cloth.texture().split(" "));
        Bounds box = fill.bounds();
        double tile = ClothPaint.TILE;
        for (double y = Math.floor(box.minY() / tile) * tile; y < box.maxY(); y += tile) {
            for (double x = Math.floor(box.minX() / tile) * tile; x < box.maxX(); x += tile) {
                for (int i = 0; i + 2 < parts.size(); i += 3) {
                    content.number(x + Double.parseDouble(parts.get(i + 1)))
                            .number(y + Double.parseDouble(parts.get(i + 2)))
                            .operator(parts.get(i).equals("M") ? "m" : "l");
                }
            }
        }
        content.operator("S");
    }

    private COSName opacity(String name, double opacity) {
        COSName key = COSName.getPDFName(name);
        if (resources.getExtGState(key) == null) {
            PDExtendedGraphicsState state = new PDExtendedGraphicsState();
            state.setStrokingAlphaConstant((float) opacity);
            state.setNonStrokingAlphaConstant((float) opacity);
            resources.put(key, state);
        }
        return key;
    }

    private void write(PdfContent content, Label label) throws IOException {
        for (Label.Placed placed : label.placed()) {
            String text = placed.line().text();
            VisualText visual = VisualText.of(text);
            double size = placed.line().font().size();
            List<PdfFonts.Run> runs = fonts.runs(visual);
            double width = runs.stream().mapToDouble(PdfFonts.Run::width).sum() * size;
            double share = switch (label.align()) {
                case START -> 0;
                case MIDDLE -> -0.5;
                case END -> -1;
            };
            boolean asWritten = visual.isAsWritten()
                    && runs.stream().allMatch(run -> run.font().isPresent());
            content.operator("q")
                    .colour(placed.line().colour(), "rg")
                    .colour(placed.line().colour(), "RG");
            if (!asWritten) {
                // A reader that searches or copies gets the text as it was written, not as it is set.
                String utf16 = HexFormat.of().formatHex(text.getBytes(StandardCharsets.UTF_16BE));
                content.operator("/Span <</ActualText <FEFF" + utf16 + ">>> BDC");
            }
            line(
                    content,
                    runs,
                    size,
                    placed.line().font().bold(),
                    new Placing(placed.at(), label.box().angle(), share * width));
            if (!asWritten) {
                content.operator("EMC");
            }
            content.operator("Q");
        }
    }

    /** Where a line begins: so far along its direction from a point. */
    private record Placing(Point anchor, double angle, double along) {
        Placing advanced(double by) {
            return new Placing(anchor, angle, along + by);
        }

        double x() {
            return anchor.x() + along * Math.cos(angle);
        }

        double y() {
            return anchor.y() + along * Math.sin(angle);
        }
    }

    private void line(PdfContent content, List<PdfFonts.Run> runs, double size, boolean bold, Placing start)
            throws IOException {
        Placing at = start;
        for (PdfFonts.Run run : runs) {
            double cos = Math.cos(at.angle());
            double sin = Math.sin(at.angle());
            if (run.font().isPresent()) {
                PdfFonts.Face face = run.font().get();
                resources.put(face.name(), face.font());
                content.operator("BT");
                content.operator("/" + face.name().getName() + " 1 Tf");
                if (bold) {
                    content.number(EMBOLDENING * size).operator("w 2 Tr [] 0 d");
                }
                content.textMatrix(size * cos, size * sin, size * sin, -size * cos, at.x(), at.y());
                content.operator("<" + run.glyphs() + "> Tj").operator("ET");
            } else {
                content.operator("q").matrix(size * cos, size * sin, size * sin, -size * cos, at.x(), at.y());
                content.operator("0.05 w [] 0 d");
                for (int i = 0; i < run.count(); i++) {
                    double left = i * PdfFonts.BOX_WIDTH + BOX_INSET;
                    content.rectangle(new Bounds(left, 0, left + PdfFonts.BOX_WIDTH - 2 * BOX_INSET, BOX_HEIGHT));
                }
                content.operator("S Q");
            }
            at = at.advanced(run.width() * size);
        }
    }
}
