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

    /**
     * Puts a block into the column in which it lies highest, the leftmost of several, of those that have room for it.
     */
    void add(Figure block) {
        double height = block.bounds().maxY();
        int highest = highest(bottoms, height);
        if (highest < 0) {
            turn();
            highest = 0;
        }
        put(block, lefts[highest], bottoms[highest]);
        bottoms[highest] += height + BETWEEN;
    }

    /** Tells whether this sheet has room for these blocks, one after the other. */
    boolean holds(Figure... blocks) {
        double[] filled = bottoms.clone();
        for (Figure block : blocks) {
            double height = block.bounds().maxY();
            int highest = highest(filled, height);
            if (highest < 0) {
                return false;
            }
            filled[highest] += height + BETWEEN;
        }
        return true;
    }

    /**
     * Returns the column in which a block of that height lies highest; -1 where none has room. An empty one always has.
     */
    private int highest(double[] filled, double height) {
        int highest = -1;
        for (int i = 0; i < filled.length; i++) {
            boolean fits = filled[i] + height <= room.maxY() || filled[i] == room.minY();
            highest = fits && (highest < 0 || filled[i] < filled[highest] - 1e-9) ? i : highest;
        }
        return highest;
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
