package org.oaktag.examples.embed.slider;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.AffineTransform;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import org.oaktag.garment.Garment;
import org.oaktag.garment.Piece;
import org.oaktag.garment.WalkedSeam;

/**
 * One picture of a garment: its pieces side by side, the seams walked beneath them.
 *
 * <p>The scale is that of a sheet 1150 mm wide and stays as it is while the slider is dragged, so that a piece grows on
 * the screen when it grows in the cloth.
 */
final class GarmentView {

    private static final double SHEET_WIDTH = 1150;
    private static final double GAP = 40;
    private static final Color PAPER = new Color(0xFBFAF7);
    private static final Color CARD = new Color(0xE9DFC8);
    private static final Color LINE = new Color(0x2B2B2B);
    private static final Color FAULT = new Color(0x9B2D1F);

    private GarmentView() {}

    static void draw(Graphics2D graphics, int width, int height, String title, Garment garment) {
        graphics.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        graphics.setRenderingHint(RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
        graphics.setColor(PAPER);
        graphics.fillRect(0, 0, width, height);
        double scale = width / SHEET_WIDTH;
        double x = GAP;
        for (Piece piece : garment.pieces()) {
            Path2D shape = Shapes.of(piece);
            Rectangle2D bounds = shape.getBounds2D();
            AffineTransform place = AffineTransform.getScaleInstance(scale, scale);
            place.translate(x - bounds.getX(), 2 * GAP - bounds.getY());
            shape.transform(place);
            graphics.setColor(CARD);
            graphics.fill(shape);
            graphics.setColor(LINE);
            graphics.setStroke(new BasicStroke(1.6f, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND));
            graphics.draw(shape);
            x += bounds.getWidth() + GAP;
        }
        write(graphics, width, height, title, garment);
    }

    private static void write(Graphics2D graphics, int width, int height, String title, Garment garment) {
        int size = Math.max(11, width / 75);
        graphics.setFont(new Font(Font.SANS_SERIF, Font.BOLD, size + 2));
        graphics.setColor(LINE);
        graphics.drawString(title, size, 2 * size);
        graphics.setFont(new Font(Font.SANS_SERIF, Font.PLAIN, size));
        List<String> lines = new ArrayList<>();
        for (WalkedSeam seam : garment.walkSeams().seams()) {
            lines.add(seam.text());
        }
        int y = height - size - (lines.size() - 1) * (size + 4);
        for (int i = 0; i < lines.size(); i++) {
            graphics.setColor(garment.walkSeams().seams().get(i).isTrue() ? LINE : FAULT);
            graphics.drawString(lines.get(i), size, y + i * (size + 4));
        }
    }
}
