package org.oaktag.examples.embed.slider;

import static org.oaktag.adjustments.Armholes.lowerArmhole;
import static org.oaktag.adjustments.Sleeves.fitCapToArmhole;
import static org.oaktag.measure.Length.cm;
import static org.oaktag.measure.Length.mm;
import static org.oaktag.measure.Percent.percent;

import java.awt.BorderLayout;
import java.awt.Dimension;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Locale;
import javax.imageio.ImageIO;
import javax.swing.JFrame;
import javax.swing.JPanel;
import javax.swing.JSlider;
import javax.swing.SwingUtilities;
import org.oaktag.blocks.KnitTop;
import org.oaktag.blocks.TopEase;
import org.oaktag.body.BodyMeasurements;
import org.oaktag.body.Figure;
import org.oaktag.garment.Cloth;
import org.oaktag.garment.Garment;

/**
 * Lowers an armhole by a slider, the cap following, and draws the garment anew at each move.
 *
 * <pre>
 * DragArmhole                  a window with a slider
 * DragArmhole --measure 500    what a frame takes, without a window: adjust, walk every seam, draw
 * DragArmhole --picture FILE   one frame as PNG
 * </pre>
 */
public final class DragArmhole {

    private static final int MOST = 40;
    private static final int WIDTH = 1200;
    private static final int HEIGHT = 760;
    private static final double NANOS_IN_MS = 1e6;

    private final Garment block = KnitTop.draft(
            BodyMeasurements.builder()
                    .name("Mira")
                    .figure(Figure.WOMAN)
                    .height(cm(168))
                    .bustGirth(cm(92))
                    .neckBaseGirth(cm(37.5))
                    .build(),
            TopEase.standard(),
            Cloth.knit("brushed fleece", percent(45)));

    /** Opens the window, or does what its arguments say. */
    public static void main(String[] args) throws IOException {
        DragArmhole drag = new DragArmhole();
        if (args.length == 2 && args[0].equals("--measure")) {
            System.out.println(drag.measured(Integer.parseInt(args[1])));
        } else if (args.length == 2 && args[0].equals("--picture")) {
            Files.createDirectories(Path.of(args[1]).toAbsolutePath().getParent());
            ImageIO.write(drag.frame(MOST / 2), "png", Path.of(args[1]).toFile());
        } else {
            SwingUtilities.invokeLater(drag::open);
        }
    }

    /** Returns the garment with its armhole lowered by so many millimetres, its cap fitted again. */
    Garment at(int lowered) {
        return lowered == 0 ? block : block.adjust(lowerArmhole(mm(lowered)).then(fitCapToArmhole(mm(6))));
    }

    /** Returns one frame: the garment made from the block, its seams walked, drawn. */
    BufferedImage frame(int lowered) {
        BufferedImage image = new BufferedImage(WIDTH, HEIGHT, BufferedImage.TYPE_INT_RGB);
        Graphics2D graphics = image.createGraphics();
        draw(graphics, WIDTH, HEIGHT, lowered);
        graphics.dispose();
        return image;
    }

    /** Says what frames take, half of them and nineteen in twenty, once the machine is warm. */
    String measured(int frames) {
        double[] made = new double[frames];
        double[] drawn = new double[frames];
        for (int i = -frames; i < frames; i++) {
            int lowered = 1 + Math.floorMod(i, MOST);
            long start = System.nanoTime();
            at(lowered).walkSeams();
            long after = System.nanoTime();
            frame(lowered);
            if (i >= 0) {
                made[i] = (after - start) / NANOS_IN_MS;
                drawn[i] = (System.nanoTime() - after) / NANOS_IN_MS;
            }
        }
        return told("garment alone", made) + "\n" + told("whole frame", drawn);
    }

    private static String told(String what, double[] times) {
        Arrays.sort(times);
        return String.format(
                Locale.ROOT,
                "%-14s median %.2f ms, 19 in 20 within %.2f ms",
                what,
                times[times.length / 2],
                times[times.length * 19 / 20]);
    }

    private void draw(Graphics2D graphics, int width, int height, int lowered) {
        GarmentView.draw(graphics, width, height, "armhole lowered by " + lowered + " mm", at(lowered));
    }

    private void open() {
        JSlider slider = new JSlider(0, MOST, 0);
        slider.setMajorTickSpacing(10);
        slider.setMinorTickSpacing(1);
        slider.setPaintTicks(true);
        slider.setPaintLabels(true);
        slider.getAccessibleContext().setAccessibleName("armhole lowered by, in millimetres");
        JPanel canvas = new JPanel() {
            @Override
            protected void paintComponent(Graphics graphics) {
                draw((Graphics2D) graphics, getWidth(), getHeight(), slider.getValue());
            }
        };
        canvas.setPreferredSize(new Dimension(WIDTH, HEIGHT));
        slider.addChangeListener(moved -> canvas.repaint());
        JFrame frame = new JFrame("Oaktag: drag the armhole");
        frame.setDefaultCloseOperation(JFrame.DISPOSE_ON_CLOSE);
        frame.add(canvas, BorderLayout.CENTER);
        frame.add(slider, BorderLayout.SOUTH);
        frame.pack();
        frame.setVisible(true);
    }
}
