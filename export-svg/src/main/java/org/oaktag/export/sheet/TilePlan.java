package org.oaktag.export.sheet;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.oaktag.export.drawing.Box;
import org.oaktag.export.layout.Polyline;
import org.oaktag.export.layout.Skyline;
import org.oaktag.geometry.Bounds;
import org.oaktag.geometry.Point;

/**
 * Pieces seated on a plane of sheets, and the sheets that carry something.
 *
 * <p>A sheet is carried where anything is drawn in its cell, or where its cell lies inside a piece, so that a piece can
 * be cut out of paper without a hole in it.
 *
 * @param grid the sheets of the plane
 * @param pieces the pieces, each in its place on the plane
 * @param tiles the sheets that carry something, row by row
 */
record TilePlan(TileGrid grid, List<Seated> pieces, List<Tile> tiles) {

    /** The room between pieces: enough for two cuts side by side, mm. */
    private static final double GAP = 6;

    private static final int MOST_COLUMNS = 24;

    /** A piece in its place. */
    record Seated(DrawnPiece piece, Placement placement) {}

    /**
     * A sheet of the plane.
     *
     * @param number its number, counted from 1 row by row over the sheets that carry something
     */
    record Tile(int number, int column, int row) {}

    TilePlan {
        pieces = List.copyOf(pieces);
        tiles = List.copyOf(tiles);
    }

    /** Returns the plan that takes fewest sheets, upright or on their side; of several, the one with fewest joints. */
    static TilePlan best(List<DrawnPiece> pieces, Tiling tiling) {
        double width = tiling.paper().width().mm();
        double height = tiling.paper().height().orElseThrow().mm();
        List<TilePlan> plans = new ArrayList<>();
        addPlans(plans, pieces, tiling, width, height);
        addPlans(plans, pieces, tiling, height, width);
        return plans.stream()
                .min(Comparator.comparingInt((TilePlan plan) -> plan.tiles.size())
                        .thenComparingInt(plan -> plan.joints().size()))
                .orElseThrow();
    }

    private static void addPlans(
            List<TilePlan> plans, List<DrawnPiece> pieces, Tiling tiling, double width, double height) {
        List<Bounds> sizes = DrawnPiece.sizes(pieces);
        // A seat is rounded up and left by less than 1 mm: it takes 1 mm on either side.
        List<Bounds> roomy = sizes.stream().map(each -> each.expanded(0.5)).toList();
        double widest = roomy.stream().mapToDouble(Bounds::width).max().orElse(0);
        for (int columns = 1; columns <= MOST_COLUMNS; columns++) {
            TileGrid row = new TileGrid(
                    width, height, tiling.margin().mm(), tiling.overlap().mm(), columns, 1);
            boolean last = columns == MOST_COLUMNS && plans.isEmpty();
            if (row.width() >= widest || last) {
                List<Bounds> seats = Skyline.pack(roomy, Math.max(row.width(), widest), GAP);
                plans.add(seated(pieces, seats, row));
            }
        }
    }

    private static TilePlan seated(List<DrawnPiece> pieces, List<Bounds> seats, TileGrid row) {
        List<Seated> seated = new ArrayList<>();
        for (int i = 0; i < seats.size(); i++) {
            Bounds seat = seats.get(i);
            Bounds inner = new Bounds(seat.minX() + 1, seat.minY() + 1, seat.maxX(), seat.maxY());
            seated.add(new Seated(pieces.get(i), pieces.get(i).in(inner)));
        }
        TileGrid grid =
                row.reaching(seats.stream().mapToDouble(Bounds::maxY).max().orElse(0));
        boolean[][] carried = new boolean[grid.rows()][grid.columns()];
        for (Seated each : seated) {
            markLines(each, grid, carried);
            markInside(each, grid, carried);
        }
        List<Tile> tiles = new ArrayList<>();
        for (int r = 0; r < grid.rows(); r++) {
            for (int c = 0; c < grid.columns(); c++) {
                if (carried[r][c]) {
                    tiles.add(new Tile(tiles.size() + 1, c, r));
                }
            }
        }
        return new TilePlan(grid, seated, tiles);
    }

    private static void markLines(Seated seated, TileGrid grid, boolean[][] carried) {
        double dx = seated.placement().dx();
        double dy = seated.placement().dy();
        // Half the width of the widest line: where sheets do not overlap, a line beside the joint needs both.
        double half = grid.overlap() > 1 ? 0 : 0.3;
        for (Polyline line : seated.piece().lines()) {
            for (int i = 1; i < line.points().size(); i++) {
                Point a = line.points().get(i - 1);
                Point b = line.points().get(i);
                Point from = Point.of(a.x() + dx, a.y() + dy);
                Point to = Point.of(b.x() + dx, b.y() + dy);
                Bounds around = Bounds.of(from, to).expanded(half);
                for (int r = grid.rowAt(around.minY()); r <= grid.rowAt(around.maxY()); r++) {
                    for (int c = grid.columnAt(around.minX()); c <= grid.columnAt(around.maxX()); c++) {
                        carried[r][c] = carried[r][c]
                                || Box.from(grid.cell(c, r)).expanded(half).meets(from, to);
                    }
                }
            }
        }
    }

    private static void markInside(Seated seated, TileGrid grid, boolean[][] carried) {
        Bounds all = seated.placement().bounds();
        for (int r = grid.rowAt(all.minY()); r <= grid.rowAt(all.maxY()); r++) {
            for (int c = grid.columnAt(all.minX()); c <= grid.columnAt(all.maxX()); c++) {
                if (!carried[r][c]) {
                    Point middle = grid.cell(c, r).center();
                    Point own = Point.of(
                            middle.x() - seated.placement().dx(),
                            middle.y() - seated.placement().dy());
                    carried[r][c] = seated.piece().cut().contains(own);
                }
            }
        }
    }

    /** Returns every pair of sheets that are joined, across first, then down. */
    List<Joint> joints() {
        List<Joint> joints = new ArrayList<>();
        for (int[] step : new int[][] {{1, 0}, {0, 1}}) {
            for (Tile tile : tiles) {
                for (Tile other : tiles) {
                    if (other.column() == tile.column() + step[0] && other.row() == tile.row() + step[1]) {
                        joints.add(new Joint(joints.size() + 1, tile, other));
                    }
                }
            }
        }
        return joints;
    }

    /**
     * Two sheets that are joined.
     *
     * @param number its number, counted from 1
     * @param first the left or the upper one
     * @param second the right or the lower one
     */
    record Joint(int number, Tile first, Tile second) {

        boolean isUpright() {
            return first.row() == second.row();
        }
    }
}
