package org.oaktag.examples;

import static org.oaktag.adjustments.Sleeves.fitCapToArmhole;
import static org.oaktag.measure.Length.mm;

import java.io.PrintStream;
import java.util.List;
import java.util.Locale;
import org.oaktag.blocks.TopEdges;
import org.oaktag.blocks.TopNames;
import org.oaktag.garment.Garment;
import org.oaktag.garment.Piece;

/** One armhole, and the sleeves that caps of several heights make on it. */
public final class CapTable {

    private static final List<Integer> HEIGHTS = List.of(60, 70, 80, 90, 100, 110, 120, 130, 140);

    private CapTable() {}

    /** Prints the table. */
    public static void print(PrintStream out) {
        Garment loosened = Tour.loosened(Tour.drafted(Tour.measured()));
        out.println("height    cap  width  triangle   mm");
        for (int height : HEIGHTS) {
            Garment fitted = loosened.adjust(fitCapToArmhole(mm(6)).atHeight(mm(height)));
            Piece sleeve = fitted.piece(TopNames.SLEEVE);
            double front = sleeve.edge(TopEdges.CAP_FRONT).length().mm();
            double back = sleeve.edge(TopEdges.CAP_BACK).length().mm();
            out.printf(
                    Locale.ROOT,
                    "%6d  %5.1f  %5.1f     %5.1f\n",
                    height,
                    front + back,
                    fitted.finished(TopNames.SLEEVE_WIDTH).mm(),
                    straight(front, height) + straight(back, height));
        }
    }

    /** The width that a half of the cap would have if it were a straight line. */
    private static double straight(double length, double height) {
        return Math.sqrt(length * length - height * height);
    }

    /** Prints the table on the terminal. */
    public static void main(String[] args) {
        print(System.out);
    }
}
