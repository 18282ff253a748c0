package org.oaktag.adjustments;

import java.util.List;
import java.util.Objects;
import java.util.Set;
import org.oaktag.adjust.Reshaped;
import org.oaktag.adjust.Step;
import org.oaktag.garment.Amount;
import org.oaktag.garment.Cloth;
import org.oaktag.garment.Edge;
import org.oaktag.garment.Garment;
import org.oaktag.garment.Name;
import org.oaktag.garment.Note;
import org.oaktag.garment.Piece;
import org.oaktag.garment.Seam;
import org.oaktag.garment.SeamSide;
import org.oaktag.measure.Length;

/**
 * Cuts interfacing of the very shape of a piece, on the same grain, laid on it all the way round. Interfacing of that
 * piece that is there already is replaced. Immutable.
 *
 * <pre>{@code
 * Garment firm = top.adjust(faceNeckline(cm(6), shell))
 *         .adjust(interfacePiece(FinishNames.FRONT_FACING, shell.as(Cloth.INTERFACING)));
 * }</pre>
 *
 * @param piece the piece that is interfaced
 * @param cloth what the interfacing is
 */
record InterfacePiece(Name piece, Cloth cloth) implements Step {

    /** Takes the cloth as interfacing. */
    public InterfacePiece {
        Objects.requireNonNull(piece, "piece");
        cloth = cloth.as(Cloth.INTERFACING);
    }

    @Override
    public String name() {
        return "interface the " + piece;
    }

    @Override
    public List<Amount> amounts() {
        return List.of(Amount.of("interfacing", cloth.description()));
    }

    /** Returns the name of the interfacing of a piece, and of the seam by which it is laid on. */
    public static Name interfacing(Name piece) {
        return piece.with("interfacing");
    }

    @Override
    public Reshaped reshape(Garment garment) {
        Piece shell = garment.piece(piece);
        Name own = interfacing(piece);
        Garment interfaced = Assembly.of(garment)
                .takeOff(Set.of(own))
                .put(shell.renamed(own).withCloth(cloth).withLines(List.of()).withMarks(List.of()))
                .sew(Seam.flat(own, round(shell, piece), round(shell, own), name() + " again"))
                .done();
        return Reshaped.of(
                interfaced,
                Note.rule("the interfacing has the seam line of the " + piece + ", "
                        + Length.mm(shell.outline().path().length()).text()
                        + " round; cut it without allowance where it is fused"));
    }

    private static SeamSide round(Piece shell, Name of) {
        SeamSide side = SeamSide.along(of, shell.edges().get(0).name());
        for (Edge edge : shell.edges().subList(1, shell.edges().size())) {
            side = side.then(SeamSide.along(of, edge.name()));
        }
        return side;
    }
}
