package org.oaktag.sewing;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import org.jspecify.annotations.Nullable;
import org.oaktag.PatternException;
import org.oaktag.garment.Edge;
import org.oaktag.garment.EdgeFinish;
import org.oaktag.garment.EdgeRef;
import org.oaktag.garment.End;
import org.oaktag.garment.Garment;
import org.oaktag.garment.InnerLine;
import org.oaktag.garment.Mark;
import org.oaktag.garment.Name;
import org.oaktag.garment.Piece;
import org.oaktag.garment.Seam;
import org.oaktag.garment.SeamRule;
import org.oaktag.garment.SeamSide;
import org.oaktag.geometry.Path;

/** Puts the seams of a garment in order, after what is laid on and before the hems. Used once, by one thread. */
final class Sequence {

    /** How far a mark of a placement line may lie from it, through rounding too, mm. */
    private static final double BESIDE_LINE = Mark.INSIDE_CORNER.mm() + 1e-6;

    private final Garment garment;
    private final Glue glue;
    private final List<Rings.Ring> rings;
    private final Folds folds;
    private final Facings facings;
    private final Map<Seam, Set<Seam>> needed = new HashMap<>();
    private final Set<Seam> sewn = new LinkedHashSet<>();
    private final Map<Name, Set<Name>> units = new HashMap<>();
    private final Set<EdgeRef> turned = new HashSet<>();
    private final List<Operation> operations = new ArrayList<>();

    Sequence(Garment garment) {
        this.garment = garment;
        this.glue = Glue.of(garment, List.of());
        this.folds = Folds.of(garment);
        this.rings = Rings.of(garment, Glue.of(garment, folds.seams()));
        this.facings = Facings.of(garment, glue);
        for (Piece piece : garment.pieces()) {
            units.put(piece.name(), new HashSet<>(Set.of(piece.name())));
        }
        garment.seams().forEach(seam -> needed.put(seam, needed(seam)));
    }

    List<Operation> operations() {
        layOn();
        while (sewn.size() < garment.seams().size()) {
            Seam next = smallest(true)
                    .or(() -> smallest(false))
                    .orElseThrow(() -> PatternException.of(
                            "assembly of '" + garment.title() + "'",
                            "each seam must come after those that join its edges",
                            "seams that wait for each other: "
                                    + garment.seams().stream()
                                            .filter(seam -> !sewn.contains(seam))
                                            .map(seam -> seam.name().value())
                                            .toList(),
                            "part one of their sides into two seams"));
            sew(next);
        }
        hems();
        return operations;
    }

    /**
     * What cannot be otherwise: the seams that make a side of several edges whole, those that are lapped over, what is
     * fused to the pieces, while they lie flat, and the fold of a band, after the seams that close its ends.
     */
    private Set<Seam> needed(Seam seam) {
        Set<Seam> before = fusedTo(seam);
        before.addAll(folds.before(seam));
        for (SeamSide side : List.of(seam.a(), seam.b())) {
            for (int i = 1; i < side.runs().size(); i++) {
                Corner from = Corner.of(garment, side.runs().get(i - 1), End.END);
                Corner to = Corner.of(garment, side.runs().get(i), End.START);
                glue.between(from, to, Set.of(seam)).ifPresent(before::addAll);
            }
        }
        if (seam.rule() instanceof SeamRule.Lapped) {
            for (End end : End.values()) {
                before.addAll(glue.endingAt(Corner.ofA(garment, seam, end)));
            }
            before.remove(seam);
            before.removeIf(each -> each.rule() instanceof SeamRule.Lapped);
        }
        return before;
    }

    /** Returns the seams by which interfacing is laid on the pieces of a seam; none where it is one of these itself. */
    private Set<Seam> fusedTo(Seam seam) {
        Set<Seam> fused = new LinkedHashSet<>();
        if (!isFused(seam)) {
            Set<Name> pieces = new HashSet<>();
            seam.edges().forEach(edge -> pieces.add(edge.piece()));
            garment.seams().stream()
                    .filter(this::isFused)
                    .filter(each -> each.edges().stream().anyMatch(edge -> pieces.contains(edge.piece())))
                    .forEach(fused::add);
        }
        return fused;
    }

    private boolean isFused(Seam seam) {
        return isFused(garment, seam);
    }

    /** Tells whether a seam lays an interfacing on its piece. */
    static boolean isFused(Garment garment, Seam seam) {
        return seam.edges().stream()
                .anyMatch(edge -> garment.piece(edge.piece()).cloth().isInterfacing());
    }

    /** Returns the seam that is ready and makes the smallest unit, the first of them in the garment's own order. */
    private Optional<Seam> smallest(boolean inTheRound) {
        @Nullable Seam best = null;
        int least = Integer.MAX_VALUE;
        for (Seam seam : garment.seams()) {
            if (!sewn.contains(seam)
                    && sewn.containsAll(needed.getOrDefault(seam, Set.of()))
                    && (!inTheRound || closing(seam).stream().allMatch(sewn::contains))) {
                int size = unit(seam).size();
                if (size < least) {
                    best = seam;
                    least = size;
                }
            }
        }
        return Optional.ofNullable(best);
    }

    private Set<Seam> closing(Seam seam) {
        Set<Seam> closing = new LinkedHashSet<>();
        rings.stream().filter(ring -> ring.seams().contains(seam)).forEach(ring -> closing.addAll(ring.closedBy()));
        return closing;
    }

    private Set<Name> unit(Seam seam) {
        Set<Name> unit = new HashSet<>();
        for (EdgeRef edge : seam.edges()) {
            unit.addAll(units.getOrDefault(edge.piece(), Set.of()));
        }
        return unit;
    }

    private void sew(Seam seam) {
        Set<Name> unit = unit(seam);
        unit.forEach(piece -> units.put(piece, unit));
        Set<Seam> closing = closing(seam);
        boolean inTheRound = !closing.isEmpty() && sewn.containsAll(closing);
        Optional<Name> band = folds.bandOf(seam);
        if (isFused(seam)) {
            fuse(seam);
        } else if (band.isPresent()) {
            fold(seam, band.get(), inTheRound);
        } else {
            prepare(seam);
            boolean held = seam.a().runs().stream().allMatch(run -> isSewnAgain(seam, run.edge()));
            add(
                    seam.name(),
                    new Operation.Join(seam.a(), seam.b(), seam.rule()),
                    inTheRound,
                    Stitches.join(isKnit(seam.edges()), held),
                    SeamClass.SUPERIMPOSED,
                    notches(seam));
        }
        sewn.add(seam);
    }

    private void fuse(Seam seam) {
        Name interfacing = seam.edges().stream()
                .map(EdgeRef::piece)
                .filter(piece -> garment.piece(piece).cloth().isInterfacing())
                .findFirst()
                .orElseThrow();
        add(seam.name(), new Operation.Fuse(interfacing), false, List.of(), SeamClass.SUPERIMPOSED, List.of());
    }

    /** The ends of a band that no seam takes in are stitched across before it is folded. */
    private void fold(Seam seam, Name band, boolean inTheRound) {
        for (Edge edge : garment.piece(band).edges()) {
            if (edge.finish() == EdgeFinish.CLOSED) {
                add(
                        band.with(edge.name().value()),
                        new Operation.Close(EdgeRef.of(band, edge.name())),
                        false,
                        Stitches.across(),
                        SeamClass.SUPERIMPOSED,
                        List.of());
            }
        }
        add(seam.name(), new Operation.Fold(band), inTheRound, List.of(), SeamClass.SUPERIMPOSED, List.of());
    }

    /** The loose edges of facings are neatened before they are sewn on, and what is gathered is drawn up before. */
    private void prepare(Seam seam) {
        for (FreeEdges loose : facings.before(seam)) {
            add(
                    loose.name(),
                    new Operation.Neaten(loose.edges()),
                    loose.inTheRound(),
                    Stitches.neaten(),
                    SeamClass.EDGE_FINISHING,
                    List.of());
        }
        if (seam.rule() instanceof SeamRule.Gathered) {
            add(
                    seam.name().with("gathers"),
                    new Operation.Gather(seam.b()),
                    false,
                    Stitches.gather(),
                    SeamClass.DECORATIVE,
                    List.of());
        }
    }

    private boolean isSewnAgain(Seam seam, EdgeRef edge) {
        return garment.seams().stream()
                .anyMatch(other -> !other.equals(seam) && !sewn.contains(other) && other.has(edge));
    }

    /**
     * Whatever has its place marked on another piece is laid on first, while that lies flat, its openings turned back
     * before.
     */
    private void layOn() {
        for (Piece shell : garment.pieces()) {
            for (InnerLine line : shell.lines()) {
                if (line.use() == InnerLine.Use.PLACEMENT && garment.hasPiece(line.name())) {
                    turnBack(edge -> edge.piece().equals(line.name()));
                    add(
                            line.name(),
                            new Operation.LayOn(line.name(), shell.name()),
                            false,
                            Stitches.layOn(),
                            SeamClass.DECORATIVE,
                            marksOn(line.path(), shell));
                    Set<Name> unit = units.getOrDefault(shell.name(), new HashSet<>());
                    unit.add(line.name());
                    units.put(line.name(), unit);
                }
            }
        }
    }

    private static List<Name> marksOn(Path line, Piece shell) {
        return shell.marks().stream()
                .filter(mark -> line.nearest(mark.point()).distance() <= BESIDE_LINE)
                .map(Mark::name)
                .toList();
    }

    /** Hems come last, as they go over the seams that end at them. */
    private void hems() {
        turnBack(edge -> true);
    }

    private void turnBack(Predicate<EdgeRef> wanted) {
        List<List<EdgeRef>> runs = garment.turnedBack().stream()
                .filter(edge -> wanted.test(edge) && !turned.contains(edge))
                .map(garment::turnedBackWith)
                .distinct()
                .toList();
        for (FreeEdges hem : FreeEdges.joined(garment, glue, runs)) {
            add(
                    hem.name(),
                    new Operation.Hem(hem.edges()),
                    hem.inTheRound(),
                    Stitches.hem(isKnit(hem.edges())),
                    SeamClass.EDGE_FINISHING,
                    List.of());
            turned.addAll(hem.edges());
        }
    }

    private void add(
            Name name,
            Operation.Work work,
            boolean inTheRound,
            List<Stitch> stitches,
            SeamClass seamClass,
            List<Name> notches) {
        Name free = name;
        for (int i = 2; isTaken(free); i++) {
            free = name.with("" + i);
        }
        operations.add(new Operation(operations.size() + 1, free, work, inTheRound, stitches, seamClass, notches));
    }

    private boolean isTaken(Name name) {
        return operations.stream().anyMatch(each -> each.name().equals(name));
    }

    private boolean isKnit(List<EdgeRef> edges) {
        return edges.stream()
                .anyMatch(edge -> garment.piece(edge.piece()).cloth().stretch().percent() > 0);
    }

    private List<Name> notches(Seam seam) {
        return garment.walkSeams().seams().stream()
                .filter(walked -> walked.seam().equals(seam))
                .flatMap(walked -> walked.spans().stream().skip(1))
                .map(span -> Name.of(span.from()))
                .toList();
    }
}
