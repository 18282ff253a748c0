package org.oaktag.export.sheet;

import org.oaktag.geometry.Bounds;

/**
 * A plane parted into equal sheets. Each shows a window of it; windows overlap, and the cell of a sheet is the part of
 * its window that no sheet to the right or below begins.
 *
 * @param paperWidth the width of a sheet as it is read, mm
 * @param paperHeight its height, mm
 * @param margin what stays white on each side, mm
 * @param overlap how much two neighbours both show, mm
 * @param columns how many sheets lie side by side
 * @param rows how many lie one below the other
 */
record TileGrid(double paperWidth, double paperHeight, double margin, double overlap, int columns, int rows) {

    double stepX() {
        return paperWidth - 2 * margin - overlap;
    }

    double stepY() {
        return paperHeight - 2 * margin - overlap;
    }

    Bounds cell(int column, int row) {
        return new Bounds(column * stepX(), row * stepY(), (column + 1) * stepX(), (row + 1) * stepY());
    }

    Bounds window(int column, int row) {
        Bounds cell = cell(column, row);
        return new Bounds(cell.minX(), cell.minY(), cell.maxX() + overlap, cell.maxY() + overlap);
    }

    /** Returns the part of every sheet that is printed. */
    Bounds printed() {
        return new Bounds(margin, margin, paperWidth - margin, paperHeight - margin);
    }

    int columnAt(double x) {
        return Math.min(Math.max((int) Math.floor(x / stepX()), 0), columns - 1);
    }

    int rowAt(double y) {
        return Math.min(Math.max((int) Math.floor(y / stepY()), 0), rows - 1);
    }

    /** Returns the grid with as many rows as it takes to show everything down to that height. */
    TileGrid reaching(double bottom) {
        int needed = (int) Math.max(1, Math.ceil((bottom - overlap) / stepY() - 1e-9));
        return new TileGrid(paperWidth, paperHeight, margin, overlap, columns, needed);
    }

    /** Returns the width of the whole plane, mm. */
    double width() {
        return columns * stepX() + overlap;
    }
}
