package org.oaktag.blocks;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Collectors;
import org.oaktag.PatternException;
import org.oaktag.garment.Cut;
import org.oaktag.garment.DartInTheWay;
import org.oaktag.garment.Edge;
import org.oaktag.garment.EdgeNames;
import org.oaktag.garment.EdgeRef;
import org.oaktag.garment.Garment;
import org.oaktag.garment.Name;
import org.oaktag.garment.Piece;
import org.oaktag.geometry.Cubic;
import org.oaktag.geometry.Curve;
import org.oaktag.geometry.Vector;
import org.oaktag.measure.Length;

/**
 * The pieces of a top as its steps expect them: front and back with their edges clockwise from neckline to centre, the
 * sleeve with its own from the back of the cap round to the underarm, and those edges that a step works on one right
 * after the other.
 *
 * <pre>{@code
 * Piece front = TopPieces.half(block, FRONT, NECKLINE, SHOULDER);   // refused unless the two edges follow each other
 * }</pre>
 *
 * <p>A general step may make any piece into something else: whole, turned over, parted, joined to another. A step of
 * tops that would then move half of it, or the wrong way, is refused here, and told which step of the history it has to
 * come before. An edge with a dart in it is told by {@link DartInTheWay}, so that the dart is held elsewhere meanwhile.
 */
public final class TopPieces {

    private static final List<Name> ROUND_THE_BODY = List.of(
            TopEdges.NECKLINE,
            TopEdges.STAND,
            TopEdges.SHOULDER,
            TopEdges.RAGLAN,
            TopEdges.ARMHOLE,
            EdgeNames.SIDE,
            EdgeNames.HEM,
            EdgeNames.CENTRE);

    private static final List<Name> ROUND_THE_SLEEVE = List.of(
            TopEdges.CAP_BACK,
            TopEdges.CAP_FRONT,
            EdgeNames.TOP,
            TopEdges.UNDERARM_FRONT,
            EdgeNames.HEM,
            EdgeNames.BOTTOM,
            TopEdges.UNDERARM_BACK);

    /** The cosine of how far off upright an armhole may run at its pitch point: 20 degrees, as after a slash. */
    private static final double LEAST_UPRIGHT = Math.cos(Math.toRadians(20));

    private TopPieces() {}

    /**
     * Returns the front or the back as its half.
     *
     * @param run the edges that are needed, one right after the other clockwise
     * @throws PatternException if it is not there, not drawn as its half, turned over, or lacks one of the edges or has
     *     another between them; the message names the step to come before, where the history tells it
     */
    public static Piece half(Garment garment, Name name, Name... run) {
        Piece piece = body(garment, name, run);
        if (piece.cut() instanceof Cut.Single) {
            throw refused(
                    name,
                    "must be drawn as its half for this step",
                    "the whole, " + piece.cut().instruction(),
                    TopOrigin.of(garment).gone(EdgeRef.of(name, EdgeNames.CENTRE)));
        }
        return piece;
    }

    /**
     * Returns the front or the back as its half, its armhole whole: from the shoulder to its pitch point, and from
     * there in one curve to the side.
     *
     * @throws PatternException as {@link #half}, and where the armhole runs otherwise
     */
    public static Piece withArmhole(Garment garment, Name name) {
        Piece piece = half(garment, name, TopEdges.SHOULDER, TopEdges.ARMHOLE, EdgeNames.SIDE);
        checkArmhole(piece, TopOrigin.of(garment));
        return piece;
    }

    /**
     * Returns the front or the back, whether drawn as its half or whole.
     *
     * @param run the edges that are needed, one right after the other clockwise
     * @throws PatternException as {@link #half}, except that the piece may be whole
     */
    public static Piece body(Garment garment, Name name, Name... run) {
        return checked(garment, name, ROUND_THE_BODY, run);
    }

    /**
     * Returns the sleeve or the lower part of a split one.
     *
     * @param run the edges that are needed, one right after the other clockwise
     * @throws PatternException if it is not there, turned over, or lacks one of the edges or has another between them;
     *     the message names the step to come before, where the history tells it
     */
    public static Piece sleeve(Garment garment, Name name, Name... run) {
        return checked(garment, name, ROUND_THE_SLEEVE, run);
    }

    /**
     * Returns the sleeve with its cap between both underarm edges, and one edge between them below, be it the hem or,
     * where the sleeve is split, the style line.
     *
     * @throws PatternException as {@link #sleeve}
     */
    public static Piece sleeveWithCap(Garment garment) {
        boolean split = garment.findPiece(TopNames.SLEEVE)
                .filter(sleeve -> sleeve.hasEdge(EdgeNames.BOTTOM))
                .isPresent();
        return sleeveRound(garment, split ? EdgeNames.BOTTOM : EdgeNames.HEM);
    }

    /**
     * Returns the sleeve from its cap down to its hem, not split yet.
     *
     * @throws PatternException as {@link #sleeve}
     */
    public static Piece sleeveToHem(Garment garment) {
        return sleeveRound(garment, EdgeNames.HEM);
    }

    /**
     * Returns the sleeve from its cap down to its hem, neither split nor cuffed yet.
     *
     * @throws PatternException as {@link #sleeve}, and if there is a cuff
     */
    public static Piece uncuffedSleeve(Garment garment) {
        Piece sleeve = sleeveToHem(garment);
        if (garment.hasPiece(TopNames.CUFF)) {
            throw refused(
                    TopNames.SLEEVE,
                    "must be without a cuff for this step",
                    "piece '" + TopNames.CUFF + "'",
                    TopOrigin.of(garment).came(EdgeRef.of(TopNames.CUFF, EdgeNames.TOP)));
        }
        return sleeve;
    }

    private static Piece sleeveRound(Garment garment, Name lower) {
        return sleeve(
                garment,
                TopNames.SLEEVE,
                TopEdges.UNDERARM_BACK,
                TopEdges.CAP_BACK,
                TopEdges.CAP_FRONT,
                TopEdges.UNDERARM_FRONT,
                lower,
                TopEdges.UNDERARM_BACK);
    }

    /**
     * Checks that a piece by itself has edges one right after the other.
     *
     * @throws PatternException if it lacks one, or has another between them
     */
    static void require(Piece piece, Name... run) {
        broken(piece, run).ifPresent(fault -> {
            throw refused(piece.name(), fault.rule, fault.given, Optional.empty());
        });
    }

    private static Piece checked(Garment garment, Name name, List<Name> round, Name... run) {
        TopOrigin origin = TopOrigin.of(garment);
        Piece piece = garment.findPiece(name)
                .orElseThrow(() -> refused(
                        name,
                        "must be there for this step, with " + words(run),
                        "the pieces "
                                + garment.pieces().stream().map(Piece::name).toList(),
                        origin.gone(name)));
        if (!runsRound(piece, round)) {
            throw refused(
                    name,
                    "must lie with its edges clockwise for this step",
                    "a piece that was turned over",
                    origin.mirrored(name));
        }
        broken(piece, run).ifPresent(fault -> {
            EdgeRef edge = EdgeRef.of(name, fault.edge);
            throw refused(name, fault.rule, fault.given, fault.isMissing ? origin.gone(edge) : origin.came(edge));
        });
        return piece;
    }

    /** The pitch point is where the last curve begins, upright, unless the end of the armhole was drawn anew. */
    private static void checkArmhole(Piece piece, TopOrigin origin) {
        List<Curve> curves = piece.path(TopEdges.ARMHOLE).curves();
        Curve last = curves.get(curves.size() - 1);
        boolean fromPitch = curves.size() > 1
                && last instanceof Cubic
                && last.directionAt(0).dot(Vector.of(0, 1)) > LEAST_UPRIGHT;
        if (!fromPitch) {
            throw refused(
                    piece.name(),
                    "must have an armhole that runs in one curve from its pitch point to the underarm point for this step",
                    "one whose last " + (last instanceof Cubic ? "curve" : "line") + " is "
                            + Length.mm(last.length()).text() + " long",
                    origin.moved(EdgeRef.of(piece.name(), TopEdges.ARMHOLE)));
        }
    }

    /**
     * Checks that an edge is sewn in no other seam than this one.
     *
     * @param seam the seam that the step takes care of
     * @throws PatternException if it is; the message names the seam and the step to come before
     */
    public static void requireFree(Garment garment, EdgeRef edge, Name seam) {
        Objects.requireNonNull(seam, "seam");
        garment.seams().stream()
                .filter(each -> each.has(edge) && !each.name().equals(seam))
                .findFirst()
                .ifPresent(sewn -> {
                    throw refused(
                            edge.piece(),
                            "must have nothing else sewn to its " + edge.edge() + " for this step",
                            "seam '" + sewn.name() + "'",
                            TopOrigin.of(garment).sewn(sewn.name()));
                });
    }

    /** Tells whether those edges that the piece has come in their order, from wherever its outline begins. */
    private static boolean runsRound(Piece piece, List<Name> round) {
        int falls = 0;
        int first = -1;
        int last = -1;
        for (int i = 0; i < piece.edges().size(); i++) {
            int place = round.indexOf(piece.edges().get(i).name());
            if (place >= 0) {
                first = first < 0 ? place : first;
                falls += place < last ? 1 : 0;
                last = place;
            }
        }
        falls += first < last ? 1 : 0;
        return falls <= 1;
    }

    /** What is wrong with a run of edges: one that is missing, or one that lies between two of them. */
    private record Fault(Name edge, boolean isMissing, String rule, String given) {}

    private static Optional<Fault> broken(Piece piece, Name... run) {
        DartInTheWay.requireWhole(piece, run);
        for (Name edge : run) {
            if (!piece.hasEdge(edge)) {
                List<Name> edges = piece.edges().stream().map(Edge::name).toList();
                return Optional.of(
                        new Fault(edge, true, "must have " + words(run) + " for this step", "the edges " + edges));
            }
        }
        for (int i = 1; i < run.length; i++) {
            Name next = piece.after(run[i - 1]).name();
            if (!next.equals(run[i])) {
                return Optional.of(new Fault(
                        next,
                        false,
                        "must have '" + run[i - 1] + "' and '" + run[i] + "' meet for this step",
                        "edge '" + next + "' between them"));
            }
        }
        return Optional.empty();
    }

    private static String words(Name... run) {
        List<String> names = new ArrayList<>(
                Arrays.stream(run).distinct().map(name -> "'" + name + "'").toList());
        String last = names.remove(names.size() - 1);
        return names.isEmpty()
                ? "edge " + last
                : "edges " + names.stream().collect(Collectors.joining(", ")) + " and " + last;
    }

    private static PatternException refused(Name piece, String rule, String given, Optional<String> step) {
        return PatternException.of(
                "the " + piece,
                rule,
                given,
                "take this step before " + step.orElse("the one that made the " + piece + " what it is"));
    }
}
