package org.oaktag.garment;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.function.Supplier;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.oaktag.PatternException;
import org.oaktag.measure.Length;

/**
 * A garment as a pattern: its pieces, its seams, its finished measures, for whom it is, and what made it.
 *
 * <pre>{@code
 * Garment top = block
 *         .adjust(widenNeckline(mm(7)))
 *         .adjust(lowerArmhole(mm(18)));
 * top.walkSeams().isTrue();
 * }</pre>
 *
 * <p>Immutable and safe to share between threads.
 */
public final class Garment {

    private final String title;
    private final Wearer wearer;
    private final List<Piece> pieces;
    private final Names names;
    private final List<Seam> seams;
    private final List<FinishedMeasure> measures;
    private final List<FitCheck> checks;
    private final FlatLay flat;
    private final List<Entry> history;

    private final Findings found;

    /**
     * Copies the lists and checks that every seam joins edges that exist.
     *
     * @param title what it is; free text
     * @param wearer for whom it is drafted
     * @param pieces the pieces, each of a name of its own
     * @param seams the seams, each of a name of its own
     * @param measures the finished measures that are watched
     * @param checks what is asked of the fit at every step
     * @param history what made it, oldest first
     * @throws PatternException if two pieces, seams, measures or checks have one name, or a seam names an edge that
     *     does not exist
     */
    public Garment(
            String title,
            Wearer wearer,
            List<Piece> pieces,
            List<Seam> seams,
            List<FinishedMeasure> measures,
            List<FitCheck> checks,
            List<Change> history) {
        this.title = Objects.requireNonNull(title, "title");
        this.wearer = Objects.requireNonNull(wearer, "wearer");
        this.pieces = List.copyOf(pieces);
        this.names = Names.ofPieces(this.pieces);
        this.seams = List.copyOf(seams);
        this.measures = List.copyOf(measures);
        this.checks = List.copyOf(checks);
        this.flat = FlatLay.IN_A_ROW;
        this.history = history.stream().map(Entry::of).toList();
        this.found = new Findings();
        checkUnique("piece", this.pieces, Piece::name);
        checkUnique("seam", this.seams, Seam::name);
        checkUnique("finished measure", this.measures, FinishedMeasure::name);
        checkUnique("check of the fit", this.checks, FitCheck::name);
        checkSewn();
    }

    /**
     * The same garment but for its pieces, seams, measures and checks; only what is another list than before is
     * checked.
     */
    private Garment(
            Garment same, List<Piece> pieces, List<Seam> seams, List<FinishedMeasure> measures, List<FitCheck> checks) {
        this.title = same.title;
        this.wearer = same.wearer;
        this.pieces = List.copyOf(pieces);
        this.names = same.names.of(this.pieces);
        this.seams = List.copyOf(seams);
        this.measures = List.copyOf(measures);
        this.checks = List.copyOf(checks);
        this.flat = same.flat;
        this.history = same.history;
        this.found = new Findings();
        if (this.names != same.names) {
            checkUnique("piece", this.pieces, same.pieces, Piece::name);
        }
        checkUnique("seam", this.seams, same.seams, Seam::name);
        checkUnique("finished measure", this.measures, same.measures, FinishedMeasure::name);
        checkUnique("check of the fit", this.checks, same.checks, FitCheck::name);
        if (this.pieces != same.pieces && !hasEdgesOf(same)) {
            checkSewn();
        } else if (this.seams != same.seams) {
            checkSewn(same.seams);
        }
    }

    /** The same pieces, seams, measures and checks, which need no second check, told of or laid flat in another way. */
    private Garment(Garment same, String title, FlatLay flat, List<Entry> history) {
        this.title = title;
        this.flat = flat;
        this.wearer = same.wearer;
        this.pieces = same.pieces;
        this.names = same.names;
        this.seams = same.seams;
        this.measures = same.measures;
        this.checks = same.checks;
        this.history = List.copyOf(history);
        this.found = same.found;
    }

    /** Returns a garment without checks and history. */
    public static Garment of(
            String title, Wearer wearer, List<Piece> pieces, List<Seam> seams, List<FinishedMeasure> measures) {
        return new Garment(title, wearer, pieces, seams, measures, List.of(), List.of());
    }

    /** Returns what the garment is; free text. */
    public String title() {
        return title;
    }

    /** Returns for whom it is drafted. */
    public Wearer wearer() {
        return wearer;
    }

    /** Returns the pieces, each of a name of its own. */
    public List<Piece> pieces() {
        return pieces;
    }

    /** Returns the seams, each of a name of its own. */
    public List<Seam> seams() {
        return seams;
    }

    /** Returns the finished measures that are watched. */
    public List<FinishedMeasure> measures() {
        return measures;
    }

    /** Returns what is asked of the fit at every step. */
    public List<FitCheck> checks() {
        return checks;
    }

    /** Returns what made it, oldest first. The account of a step is made when it is first asked for, and kept. */
    public List<Change> history() {
        return history.stream().map(Entry::change).toList();
    }

    /**
     * Returns the garment that the adjustment makes of this one.
     *
     * @throws PatternException if it cannot be done on this garment
     */
    public Garment adjust(Adjustment adjustment) {
        return adjustment.applyTo(this);
    }

    /**
     * Returns the piece of that name.
     *
     * @throws PatternException if there is none; the message lists those that exist
     */
    public Piece piece(Name name) {
        int place = names.place(name);
        if (place < 0) {
            throw Name.unknown("piece", name, pieces.stream().map(Piece::name).toList());
        }
        return pieces.get(place);
    }

    /** Tells whether there is a piece of that name. */
    public boolean hasPiece(Name name) {
        Objects.requireNonNull(name, "name");
        return names.place(name) >= 0;
    }

    /** Returns the piece of that name, or empty where there is none. */
    public Optional<Piece> findPiece(Name name) {
        Objects.requireNonNull(name, "name");
        int place = names.place(name);
        return place < 0 ? Optional.empty() : Optional.of(pieces.get(place));
    }

    /**
     * Returns the edge that the reference names.
     *
     * @throws PatternException if there is none
     */
    public Edge edge(EdgeRef edge) {
        return piece(edge.piece()).edge(edge.edge());
    }

    /**
     * Returns the seam of that name.
     *
     * @throws PatternException if there is none; the message lists those that exist
     */
    public Seam seam(Name name) {
        return seams.stream()
                .filter(seam -> seam.name().equals(name))
                .findFirst()
                .orElseThrow(() -> Name.unknown(
                        "seam of '" + title + "'",
                        name,
                        seams.stream().map(Seam::name).toList()));
    }

    /**
     * Returns the edges that are turned back and stitched down, as their {@linkplain Edge#finish finish} says: the hems
     * and the openings of pockets that no seam takes in. A seam that takes in a part of a hem takes in the whole, as
     * where only one half of an unfolded hem is spoken of.
     */
    public List<EdgeRef> turnedBack() {
        return pieces.stream()
                .flatMap(piece -> new TurnedBack(piece, this::isSewn).edges().stream())
                .toList();
    }

    /**
     * Returns the edges that are turned back in one with an edge and next to it, itself among them, clockwise; none
     * where it is not {@linkplain #turnedBack() turned back}.
     *
     * @throws PatternException if there is no such edge
     */
    public List<EdgeRef> turnedBackWith(EdgeRef edge) {
        return new TurnedBack(piece(edge.piece()), this::isSewn).with(edge);
    }

    /**
     * Returns the edges that are raw without anybody having said so, each with what would finish it: no seam takes them
     * in, they lie on no fold, no other piece has them stitched on to it, and their {@linkplain Edge#finish finish} is
     * plain. The edges of an interfacing, which is fused to its piece, are not among them.
     */
    public List<RawEdge> rawEdges() {
        return pieces.stream()
                .filter(piece -> !piece.cloth().isInterfacing() && !isLaidOn(piece.name()))
                .flatMap(piece -> piece.edges().stream()
                        .filter(edge -> edge.finish() == EdgeFinish.PLAIN && !piece.isOnFold(edge.name()))
                        .map(edge -> new RawEdge(EdgeRef.of(piece.name(), edge.name()), edge.length())))
                .filter(raw -> !isSewn(raw.edge()))
                .toList();
    }

    /** Tells whether the place of a piece is marked on another. */
    private boolean isLaidOn(Name piece) {
        return pieces.stream()
                .flatMap(each -> each.lines().stream())
                .anyMatch(line ->
                        line.use() == InnerLine.Use.PLACEMENT && line.name().equals(piece));
    }

    private boolean isSewn(EdgeRef edge) {
        return seams.stream().anyMatch(seam -> seam.has(edge));
    }

    /**
     * Takes a finished measure.
     *
     * @throws PatternException if there is none of that name; the message lists those that exist
     */
    public Length finished(Name name) {
        return measures.stream()
                .filter(measure -> measure.name().equals(name))
                .findFirst()
                .orElseThrow(() -> Name.unknown(
                        "finished measure of '" + title + "'",
                        name,
                        measures.stream().map(FinishedMeasure::name).toList()))
                .of(this);
    }

    /** Walks every seam, in their order. */
    public SeamWalk walkSeams() {
        SeamWalk walked = found.walk;
        if (walked == null) {
            walked = SeamWalk.of(this);
            found.walk = walked;
        }
        return walked;
    }

    /**
     * Walks every seam, taking over from an earlier garment the walks of those seams whose pieces are still the same.
     *
     * @param earlier a garment from which this one was made
     */
    public SeamWalk walkSeamsSince(Garment earlier) {
        Objects.requireNonNull(earlier, "earlier");
        SeamWalk walked = found.walk;
        if (walked == null) {
            walked = SeamWalk.since(earlier, this);
            found.walk = walked;
        }
        return walked;
    }

    /**
     * Takes every finished measure, in their order.
     *
     * @throws PatternException if a measure speaks of a piece or an edge that the garment lacks
     */
    public List<TakenMeasure> takeMeasures() {
        List<TakenMeasure> measured = found.taken;
        if (measured == null) {
            measured = TakenMeasure.of(this);
            found.taken = measured;
        }
        return measured;
    }

    /**
     * Takes one finished measure, or returns empty if the garment has none of that name.
     *
     * @throws PatternException as {@link #takeMeasures()}
     */
    public Optional<TakenMeasure> findMeasure(Name name) {
        Objects.requireNonNull(name, "name");
        List<TakenMeasure> all = takeMeasures();
        for (int i = 0; i < all.size(); i++) {
            if (all.get(i).measure().name().equals(name)) {
                return Optional.of(all.get(i));
            }
        }
        return Optional.empty();
    }

    /**
     * Takes every finished measure, taking over from an earlier garment those whose outlines are still the same.
     *
     * @param earlier a garment from which this one was made
     * @throws PatternException as {@link #takeMeasures()}, of either garment
     */
    public List<TakenMeasure> takeMeasuresSince(Garment earlier) {
        Objects.requireNonNull(earlier, "earlier");
        List<TakenMeasure> measured = found.taken;
        if (measured == null) {
            measured = TakenMeasure.since(earlier, this);
            found.taken = measured;
        }
        return measured;
    }

    /**
     * Answers every check of the fit, in their order, as far as there is something to check.
     *
     * @throws PatternException as {@link #takeMeasures()}
     */
    public List<Fit> fit() {
        List<Fit> checked = found.fit;
        if (checked == null) {
            checked = Fit.of(this);
            found.fit = checked;
        }
        return checked;
    }

    /**
     * Answers every check of the fit, taking over from an earlier garment the answers that still stand.
     *
     * @param earlier a garment from which this one was made
     * @throws PatternException as {@link #takeMeasures()}, of either garment
     */
    public List<Fit> fitSince(Garment earlier) {
        Objects.requireNonNull(earlier, "earlier");
        List<Fit> checked = found.fit;
        if (checked == null) {
            takeMeasuresSince(earlier);
            checked = Fit.since(earlier, this);
            found.fit = checked;
        }
        return checked;
    }

    /**
     * Returns every caution that still holds, each once: those of the steps, oldest first, and those of the fit as the
     * garment is now, in the place of those that a step gave of it.
     */
    public List<String> cautions() {
        Stream<String> ofSteps = history.stream()
                .flatMap(entry -> entry.change().notes().stream())
                .filter(note -> note.kind() == Note.Kind.CAUTION)
                .map(Note::text);
        Stream<String> ofFit = fit().stream().filter(Fit::isCaution).map(Fit::text);
        return Stream.concat(ofSteps, ofFit).distinct().toList();
    }

    /**
     * Returns what is left of an earlier garment, which is asked of one after the other for measures, seams and fit.
     */
    Kept keptOf(Garment earlier) {
        Kept left = found.kept;
        if (left == null || !left.isOf(earlier)) {
            left = Kept.of(earlier, this);
            found.kept = left;
        }
        return left;
    }

    /** Returns the garment under another title. */
    public Garment titled(String other) {
        return new Garment(this, Objects.requireNonNull(other, "other"), flat, history);
    }

    /** Returns the garment with other pieces. */
    public Garment withPieces(List<Piece> other) {
        return new Garment(this, other, seams, measures, checks);
    }

    /**
     * Returns the garment with this piece in the place of the one of its name, or as the last where there is none.
     */
    public Garment withPiece(Piece piece) {
        return withPieces(replaced(piece));
    }

    /** Returns the garment with other seams. */
    public Garment withSeams(List<Seam> other) {
        return new Garment(this, pieces, other, measures, checks);
    }

    /** Returns the garment with other finished measures. */
    public Garment withMeasures(List<FinishedMeasure> other) {
        return new Garment(this, pieces, seams, other, checks);
    }

    /** Returns the garment with other checks of its fit. */
    public Garment withChecks(List<FitCheck> other) {
        return new Garment(this, pieces, seams, measures, other);
    }

    /** Returns the garment that lies on a table in another way. */
    public Garment withFlat(FlatLay other) {
        return new Garment(this, title, Objects.requireNonNull(other, "other"), history);
    }

    /**
     * Returns what is seen of the garment when it lies on a table with one side up, what lies below first; its pieces
     * in a row, unless its block said more.
     *
     * @throws PatternException if it lacks what is to be seen
     */
    public List<FlatShape> laidFlat(Aspect seen) {
        return flat.shapes(this, Objects.requireNonNull(seen, "seen"));
    }

    /** Returns the garment with other pieces, seams and finished measures all at once, as when a piece is parted. */
    public Garment with(List<Piece> otherPieces, List<Seam> otherSeams, List<FinishedMeasure> otherMeasures) {
        return new Garment(this, otherPieces, otherSeams, otherMeasures, checks);
    }

    /** Returns the garment with one more entry in its history. */
    public Garment recording(Change change) {
        return recording(Entry.of(change));
    }

    /**
     * Returns the garment with one more entry in its history, whose account is made when it is first read: most
     * garments on the way to another are never asked for theirs. Until then it keeps whatever the account is made from.
     *
     * @param account makes the account, the same whenever and on whatever thread it is asked, and never fails
     */
    public Garment recording(Supplier<Change> account) {
        return recording(Entry.of(account));
    }

    private Garment recording(Entry entry) {
        List<Entry> all = new ArrayList<>(history.size() + 1);
        all.addAll(history);
        all.add(entry);
        return new Garment(this, title, flat, all);
    }

    @Override
    public boolean equals(@Nullable Object other) {
        return this == other
                || (other instanceof Garment garment
                        && title.equals(garment.title)
                        && wearer.equals(garment.wearer)
                        && pieces.equals(garment.pieces)
                        && seams.equals(garment.seams)
                        && measures.equals(garment.measures)
                        && checks.equals(garment.checks)
                        && flat.equals(garment.flat)
                        && history.equals(garment.history));
    }

    @Override
    public int hashCode() {
        return Objects.hash(title, wearer, pieces, seams, measures, checks, flat, history);
    }

    @Override
    public String toString() {
        return title + " for " + wearer.name() + ": " + pieces.size() + " pieces, " + seams.size() + " seams, "
                + history.size() + " steps";
    }

    private List<Piece> replaced(Piece piece) {
        List<Piece> all = new ArrayList<>(pieces);
        int place = names.place(piece.name());
        if (place < 0) {
            all.add(piece);
        } else {
            all.set(place, piece);
        }
        return all;
    }

    /**
     * Returns the place of a piece among the others, -1 where there is none.
     *
     * @param likely the place where it is looked for first
     */
    int placeOf(Name name, int likely) {
        return names.place(name, likely);
    }

    /** Tells whether every piece of the other garment is here with all its edges, so that what sews that sews this. */
    private boolean hasEdgesOf(Garment other) {
        for (int i = 0; i < other.pieces.size(); i++) {
            Piece piece = other.pieces.get(i);
            int place = names.place(piece.name(), i);
            if (place < 0 || !pieces.get(place).hasEdgesOf(piece)) {
                return false;
            }
        }
        return true;
    }

    private void checkSewn() {
        for (int i = 0; i < seams.size(); i++) {
            checkSewn(seams.get(i).a());
            checkSewn(seams.get(i).b());
        }
    }

    /** Checks the seams that do not stand where they stood among those that can be sewn. */
    private void checkSewn(List<Seam> sewn) {
        for (int i = 0; i < seams.size(); i++) {
            Seam seam = seams.get(i);
            if (i >= sewn.size() || !sewn.get(i).equals(seam)) {
                checkSewn(seam.a());
                checkSewn(seam.b());
            }
        }
    }

    private void checkSewn(SeamSide side) {
        List<SeamSide.Run> runs = side.runs();
        for (int i = 0; i < runs.size(); i++) {
            edge(runs.get(i).edge());
        }
    }

    /** Checks names among which those that stand where they stood are known to differ from each other. */
    private static <T> void checkUnique(String kind, List<T> things, List<T> known, Function<T, Name> nameOf) {
        if (things == known) {
            return;
        }
        int same = 0;
        int most = Math.min(things.size(), known.size());
        while (same < most
                && (things.get(same) == known.get(same)
                        || nameOf.apply(things.get(same)).equals(nameOf.apply(known.get(same))))) {
            same++;
        }
        if (same < things.size()) {
            checkUnique(kind, things, nameOf);
        }
    }

    private static <T> void checkUnique(String kind, List<T> things, Function<T, Name> nameOf) {
        Set<Name> seen = new HashSet<>();
        for (int i = 0; i < things.size(); i++) {
            Name name = nameOf.apply(things.get(i));
            if (!seen.add(name)) {
                throw PatternException.of(kind, "must have a name of its own", "'" + name + "' twice", "");
            }
        }
    }
}
