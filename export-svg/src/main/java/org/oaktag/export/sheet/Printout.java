package org.oaktag.export.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.oaktag.export.drawing.ClothPaint;
import org.oaktag.export.drawing.Figure;
import org.oaktag.export.drawing.FreeText;
import org.oaktag.garment.Allowances;
import org.oaktag.garment.Garment;
import org.oaktag.geometry.Bounds;

/**
 * A pattern at true scale on sheets of paper, ready to be written to whatever file a printer takes. Immutable.
 *
 * <pre>{@code
 * Printout atHome = Printout.tiled(top, KnitTop.allowances(top), Tiling.on(Paper.A4));
 * Printout atTheCopyShop = Printout.whole(top, KnitTop.allowances(top), Paper.roll(inches(36)));
 * }</pre>
 *
 * @param title what a reader announces
 * @param description what it is for, in a sentence
 * @param sheets the sheets in the order in which they are printed
 * @param paints the textures that occur on them
 * @param leftOut the labels for which there was no room on their pieces
 */
public record Printout(
        String title, String description, List<PaperSheet> sheets, List<ClothPaint> paints, List<LeftOut> leftOut) {

    /** Copies the lists. */
    public Printout {
        Objects.requireNonNull(title, "title");
        Objects.requireNonNull(description, "description");
        sheets = List.copyOf(sheets);
        paints = List.copyOf(paints);
        leftOut = List.copyOf(leftOut);
    }

    /**
     * Parts a pattern over sheets that are joined on the table.
     *
     * <p>The first sheet has the square to be measured, the map of the sheets, how to join them and what to cut. The
     * pieces are seated, and the sheets turned upright or on their side, so that fewest sheets are needed; a sheet on
     * which there would be nothing is left out.
     *
     * @throws org.oaktag.PatternException if an allowance does not fit a piece
     */
    public static Printout tiled(Garment garment, Allowances allowances, Tiling tiling) {
        return tiled(PatternHead.of(garment), allowances, DrawnPiece.of(garment, allowances), tiling);
    }

    /**
     * Parts several sizes of a style, drawn over each other, over sheets that are joined on the table. What belongs to
     * one size can be shown and hidden as a layer of its name.
     *
     * @param allowances the allowances of every size
     * @throws org.oaktag.PatternException if an allowance does not fit a piece
     */
    public static Printout nested(Nest nest, Allowances allowances, Tiling tiling) {
        return tiled(PatternHead.of(nest), allowances, DrawnPiece.of(nest, allowances), tiling);
    }

    private static Printout tiled(PatternHead head, Allowances allowances, List<DrawnPiece> pieces, Tiling tiling) {
        TilePlan plan = TilePlan.best(pieces, tiling);
        TileGrid grid = plan.grid();
        List<PaperSheet> sheets = new ArrayList<>();
        for (List<Placement> placements : CoverSheet.of(head, allowances, plan, tiling)) {
            String title = sheets.isEmpty() ? "Read first: test square, map, cut list" : "Read first, continued";
            sheets.add(new PaperSheet(title, grid.paperWidth(), grid.paperHeight(), placements));
        }
        Optional<Placement> joints = plan.joints().isEmpty()
                ? Optional.empty()
                : Optional.of(Placement.of("joints", TileMarks.joints(plan), 0, 0));
        for (TilePlan.Tile tile : plan.tiles()) {
            sheets.add(sheet(head.garment(), plan, tile, joints));
        }
        return of(head.garment(), sheets, pieces);
    }

    /**
     * Puts whole pieces on large sheets or on a roll, so that nothing has to be joined: as a copy shop prints it.
     *
     * @throws org.oaktag.PatternException if the paper is too narrow for the header, a piece does not fit on it, or an
     *     allowance does not fit a piece
     */
    public static Printout whole(Garment garment, Allowances allowances, Paper paper) {
        List<DrawnPiece> pieces = DrawnPiece.of(garment, allowances);
        return of(garment, WholePieces.sheets(PatternHead.of(garment), allowances, pieces, paper), pieces);
    }

    /**
     * Puts several sizes of a style, drawn over each other, whole on large sheets or on a roll.
     *
     * @param allowances the allowances of every size
     * @throws org.oaktag.PatternException if the paper is too narrow for the header, a piece does not fit on it, or an
     *     allowance does not fit a piece
     */
    public static Printout nestedWhole(Nest nest, Allowances allowances, Paper paper) {
        List<DrawnPiece> pieces = DrawnPiece.of(nest, allowances);
        return of(nest.whole(), WholePieces.sheets(PatternHead.of(nest), allowances, pieces, paper), pieces);
    }

    private static Printout of(Garment garment, List<PaperSheet> sheets, List<DrawnPiece> pieces) {
        return new Printout(
                FreeText.shown(garment.title()) + ", for "
                        + FreeText.shown(garment.wearer().name()),
                "Pattern at true scale. Print at 100 % and measure the 100 mm square before cutting.",
                sheets,
                Cloths.of(garment).used(),
                pieces.stream().flatMap(piece -> piece.leftOut().stream()).toList());
    }

    private static PaperSheet sheet(Garment garment, TilePlan plan, TilePlan.Tile tile, Optional<Placement> joints) {
        TileGrid grid = plan.grid();
        Bounds window = grid.window(tile.column(), tile.row());
        Bounds printed = grid.printed();
        List<Placement> placements = new ArrayList<>();
        joints.ifPresent(each -> placements.add(onSheet(each, window, printed)));
        for (TilePlan.Seated seated : plan.pieces()) {
            if (seated.placement().bounds().overlaps(window)) {
                placements.addAll(seated.piece().layered(onSheet(seated.placement(), window, printed)));
            }
        }
        String title = "Sheet " + tile.number() + " of " + plan.tiles().size();
        String place = ", column " + (tile.column() + 1) + ", row " + (tile.row() + 1);
        List<String> texts = List.of(
                title + place + ", " + FreeText.shown(garment.title()), title + place, title, "" + tile.number());
        Figure label = TileMarks.label(texts, printed, placements);
        placements.add(Placement.of("label-" + tile.number(), label, 0, 0));
        return new PaperSheet(title + place, grid.paperWidth(), grid.paperHeight(), placements);
    }

    private static Placement onSheet(Placement placement, Bounds window, Bounds printed) {
        return placement
                .moved(printed.minX() - window.minX(), printed.minY() - window.minY())
                .within(printed);
    }
}
