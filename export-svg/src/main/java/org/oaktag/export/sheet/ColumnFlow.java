package org.oaktag.export.sheet;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.oaktag.export.drawing.Figure;
import org.oaktag.geometry.Bounds;

/** Fills sheets with blocks in columns, each block where it lies highest; what fits nowhere begins another sheet. */
final class ColumnFlow {

    private static final double BETWEEN = 5;

    private final Bounds room;
    private final double[] lefts;
    private final double[] bottoms;
    private final List<List<Placement>> sheets = new ArrayList<>();
    private int blocks;

    /**
     * Begins the first sheet.
     *
     * @param room the part of every sheet that may be filled
     * @param lefts the left edge of each column
     */
    ColumnFlow(Bounds room, double... lefts) {
        this.room = room;
        this.lefts = lefts.clone();
        this.bottoms = new double[lefts.length];
        turn();
    }

    private void turn() {
        sheets.add(new ArrayList<>());
        Arrays.fill(bottoms, room.minY());
    }

    /** Puts a block across all columns. */
    void across(Figure block) {
        double top = Arrays.stream(bottoms).max().orElseThrow();
        put(block, room.minX(), top);
        Arrays.fill(bottoms, top + block.bounds().maxY() + BETWEEN);
    }

    /** Puts one block into the first column and one across all others. */
    void besideEachOther(Figure first, Figure others) {
        put(first, lefts[0], bottoms[0]);
        put(others, lefts[1], bottoms[1]);
        for (int i = 0; i < bottoms.length; i++) {
            bottoms[i] += (i == 0 ? first : others).bounds().maxY() + BETWEEN;
        }
    }

    /** Puts a block into the column in which it lies highest, the leftmost of several, of those that have room for it. */
    void add(Figure block) {
        double height = block.bounds().maxY();
        if (Arrays.stream(bottoms).allMatch(bottom -> bottom + height > room.maxY() && bottom > room.minY())) {
            turn();
        }
        int highest = -1;
        for (int i = 0; i < bottoms.length; i++) {
            boolean fits = bottoms[i] + height <= room.maxY() || bottoms[i] == room.minY();
            highest = fits && (highest < 0 || bottoms[i] < bottoms[highest] - 1e-9) ? i : highest;
        }
        put(block, lefts[highest], bottoms[highest]);
        bottoms[highest] += height + BETWEEN;
    }

    private void put(Figure block, double x, double y) {
        blocks++;
        sheets.get(sheets.size() - 1).add(Placement.of("block-" + blocks, block, x, y));
    }

    /** Returns what was put on each sheet. */
    List<List<Placement>> sheets() {
        return sheets.stream().map(List::copyOf).toList();
    }
}
