package org.oaktag.export.sheet;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.oaktag.PatternException;
import org.oaktag.export.drawing.Figure;
import org.oaktag.export.layout.Skyline;
import org.oaktag.garment.Allowances;
import org.oaktag.geometry.Bounds;
import org.oaktag.measure.Length;

/** Puts whole pieces on large sheets: nothing has to be joined. The first sheet has the header above the pieces. */
final class WholePieces {

    private static final double MARGIN = 10;
    private static final double GAP = 8;
    private static final double BELOW_HEADER = 10;

    /** The header needs this much from left to right, mm. */
    private static final double LEAST_WIDTH = 560;

    private final Paper paper;
    private final double width;
    private final double height;
    private final double headerHeight;
    private final List<List<DrawnPiece>> sheets = new ArrayList<>();

    private WholePieces(Paper paper, double width, double height, double headerHeight) {
        this.paper = paper;
        this.width = width;
        this.height = height;
        this.headerHeight = headerHeight;
    }

    /** Draws them on the paper upright, or on its side where it takes fewer sheets or a piece fits no other way. */
    static List<PaperSheet> sheets(PatternHead head, Allowances allowances, List<DrawnPiece> pieces, Paper paper) {
        if (paper.height().isEmpty()) {
            return upright(head, allowances, pieces, paper);
        }
        Paper turned = paper.onItsSide();
        List<PaperSheet> onItsSide;
        try {
            onItsSide = upright(head, allowances, pieces, turned);
        } catch (PatternException refused) {
            return upright(head, allowances, pieces, paper);
        }
        try {
            List<PaperSheet> upright = upright(head, allowances, pieces, paper);
            return upright.size() <= onItsSide.size() ? upright : onItsSide;
        } catch (PatternException refused) {
            return onItsSide;
        }
    }

    private static List<PaperSheet> upright(
            PatternHead head, Allowances allowances, List<DrawnPiece> pieces, Paper paper) {
        double width = paper.width().mm() - 2 * MARGIN;
        if (width < LEAST_WIDTH) {
            throw PatternException.of(
                    "paper for whole pieces",
                    "must be at least " + Length.mm(LEAST_WIDTH + 2 * MARGIN).text() + " wide",
                    paper.name() + ", " + paper.width().text(),
                    "use wider paper, or join the pattern from sheets");
        }
        double height = paper.height().orElse(Paper.LONGEST).mm() - 2 * MARGIN;
        Figure header = PatternHeader.of(head, allowances, Cloths.of(head.garment()), width);
        WholePieces whole =
                new WholePieces(paper, width, height, header.bounds().maxY() + BELOW_HEADER);
        List<DrawnPiece> tallestFirst = new ArrayList<>(pieces);
        tallestFirst.sort(
                Comparator.comparingDouble((DrawnPiece each) -> -each.bounds().height())
                        .thenComparing(DrawnPiece::number));
        tallestFirst.forEach(whole::place);
        return whole.drawn(header);
    }

    /** Puts the piece on the first sheet that has room for it. */
    private void place(DrawnPiece piece) {
        for (int i = 0; i < sheets.size(); i++) {
            List<DrawnPiece> more = new ArrayList<>(sheets.get(i));
            more.add(piece);
            if (fits(i, more)) {
                sheets.set(i, more);
                return;
            }
        }
        if (sheets.isEmpty() && !fits(0, List.of(piece))) {
            sheets.add(List.of());
        }
        if (!fits(sheets.size(), List.of(piece))) {
            throw PatternException.of(
                    "piece '" + piece.piece().name() + "'",
                    "must fit whole on the printed part of " + paper.name() + ", "
                            + Length.mm(width).text() + " by "
                            + Length.mm(height).text(),
                    Length.mm(piece.bounds().width()).text() + " by "
                            + Length.mm(piece.bounds().height()).text(),
                    "use larger paper, or join the pattern from sheets");
        }
        sheets.add(List.of(piece));
    }

    private boolean fits(int sheet, List<DrawnPiece> pieces) {
        double widest =
                pieces.stream().mapToDouble(each -> each.bounds().width()).max().orElse(0);
        return widest + 1 <= width && top(sheet) + bottom(seats(pieces)) <= height;
    }

    private double top(int sheet) {
        return sheet == 0 ? headerHeight : 0;
    }

    private List<Bounds> seats(List<DrawnPiece> pieces) {
        // A seat is one millimetre larger than its piece, which is moved into it by whole millimetres.
        List<Bounds> roomy =
                pieces.stream().map(each -> each.bounds().expanded(0.5)).toList();
        return Skyline.pack(roomy, width, GAP);
    }

    private static double bottom(List<Bounds> seats) {
        return seats.stream().mapToDouble(Bounds::maxY).max().orElse(0);
    }

    private List<PaperSheet> drawn(Figure header) {
        List<PaperSheet> drawn = new ArrayList<>();
        for (int i = 0; i < sheets.size(); i++) {
            List<Placement> placements = new ArrayList<>();
            if (i == 0) {
                placements.add(Placement.of("sheet-header", header, MARGIN, MARGIN));
            }
            List<DrawnPiece> pieces = sheets.get(i);
            List<Bounds> seats = seats(pieces);
            double top = MARGIN + top(i);
            for (int k = 0; k < pieces.size(); k++) {
                Bounds seat = seats.get(k);
                DrawnPiece piece = pieces.get(k);
                placements.addAll(piece.layered(piece.in(new Bounds(
                        MARGIN + seat.minX() + 1, top + seat.minY() + 1, MARGIN + seat.maxX(), top + seat.maxY()))));
            }
            double used = Math.ceil(top + bottom(seats) + MARGIN);
            drawn.add(new PaperSheet(
                    "Sheet " + (i + 1) + " of " + sheets.size(),
                    paper.width().mm(),
                    paper.height().map(Length::mm).orElse(used),
                    placements));
        }
        return drawn;
    }
}
