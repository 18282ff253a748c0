package org.oaktag.laws.recipes;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.oaktag.PatternException;
import org.oaktag.adjust.Step;
import org.oaktag.adjust.StepKind;
import org.oaktag.adjust.data.Datum;
import org.oaktag.garment.Edge;
import org.oaktag.garment.Garment;
import org.oaktag.garment.Piece;
import org.oaktag.garment.Seam;
import org.oaktag.garment.SeamRule;
import org.oaktag.geometry.Path;
import org.oaktag.geometry.Point;
import org.oaktag.geometry.Transform;

/**
 * Every kind of step against a change of scale: a scaled garment adjusted by scaled lengths is the adjusted garment
 * scaled, outlines, notches, marks and inner lines alike, unless a rule of the step has a length of its own or of the
 * body.
 */
class ScaleTest {

    private static final int DRAWS = 12;
    private static final int PLACES = 12;
    private static final double ROUNDING = 1e-6;

    /** A curve parallel to another is drawn to a tolerance in millimetres, which is not scaled. */
    private static final double PARALLEL = 0.01;

    private static final List<String> PARALLELS =
            List.of("inset neckline", "face neckline", "separate facing", "ease dart", "extend edge");

    /** The kinds with a rule that has a length of its own, each with that length. */
    private static final Map<String, String> OWN_LENGTHS = Map.ofEntries(
            Map.entry("fit cap", "how far past the shoulder point of the body its band is that of a dropped shoulder"),
            Map.entry("front pouch", "how far inside its corner a hole is drilled"),
            Map.entry("patch pocket", "how far inside its corner a hole is drilled"),
            Map.entry("split piece", "how far from the end of its seam a notch lies that tells it from others"),
            Map.entry("split body", "how near in length a seam is that the notch must tell it from"),
            Map.entry("shape waist", "the back waist length of the body"),
            Map.entry("lengthen at line", "the back waist length of the body"),
            Map.entry("grow sleeve", "how wide the mouth of a slash is"),
            Map.entry("raglan", "how far the seam over the arm curves"),
            Map.entry("rib cuff", "the wrist of the body"),
            Map.entry("fit hood", "the head of the body"));

    /**
     * It leaves a notch out that lies within a length of its own of where it cuts, so that now and then one of the two
     * has a notch more; what they both have is the same.
     */
    private static final String MAY_LEAVE_A_NOTCH_OUT = "line hood";

    private final DoneSteps steps = new DoneSteps(7);

    @Test
    void a_scaled_garment_adjusted_by_scaled_lengths_is_the_adjusted_garment_scaled() {
        for (StepKind kind : steps.kinds()) {
            int done = 0;
            double worst = 0;
            for (int i = 0; i < DRAWS; i++) {
                Optional<Garment> ready = steps.ready(steps.block(i), kind);
                Optional<Step> step =
                        ready.flatMap(garment -> steps.done(garment, kind)).map(drawn -> aloneOf(kind, drawn));
                if (step.isPresent()) {
                    double factor = 0.93 + 0.02 * i;
                    Optional<Garment> small = tried(scaled(ready.get(), factor), scaled(kind, step.get(), factor));
                    if (small.isPresent()) {
                        done++;
                        double apart = apart(small.get(), scaled(ready.get().adjust(step.get()), factor));
                        if (!Double.isInfinite(apart) || !kind.name().equals(MAY_LEAVE_A_NOTCH_OUT)) {
                            worst = Math.max(worst, apart);
                        }
                    }
                }
            }
            assertThat(done).as(kind.name()).isPositive();
            if (OWN_LENGTHS.containsKey(kind.name())) {
                assertThat(worst)
                        .as("%s, for %s", kind.name(), OWN_LENGTHS.get(kind.name()))
                        .isGreaterThan(PARALLEL);
            } else {
                assertThat(worst)
                        .as(kind.name())
                        .isLessThanOrEqualTo(PARALLELS.contains(kind.name()) ? PARALLEL : ROUNDING);
            }
        }
    }

    /** A cap that follows its armhole keeps a band that goes by the shoulder point of the body: the step without it. */
    private static Step aloneOf(StepKind kind, Step step) {
        Datum.Fields written = kind.write(step);
        return written.values().containsKey("sleeve_follows")
                ? kind.read("a step alone", written.with("sleeve_follows", new Datum.Flag(false)))
                : step;
    }

    private static Optional<Garment> tried(Garment garment, Step step) {
        try {
            return Optional.of(garment.adjust(step));
        } catch (PatternException refused) {
            // The ends of its range may be lengths of their own.
            return Optional.empty();
        }
    }

    private static Step scaled(StepKind kind, Step step, double factor) {
        return kind.read("a scaled step", (Datum.Fields) scaled(kind.write(step), factor, false));
    }

    private static Datum scaled(Datum datum, double factor, boolean isLength) {
        if (datum instanceof Datum.Numeral number && isLength) {
            return new Datum.Numeral(number.value() * factor);
        }
        if (datum instanceof Datum.Fields fields) {
            Map<String, Datum> scaled = new LinkedHashMap<>();
            fields.values().forEach((name, value) -> scaled.put(name, scaled(value, factor, name.endsWith("_mm"))));
            return new Datum.Fields(scaled);
        }
        if (datum instanceof Datum.Items items) {
            return new Datum.Items(items.values().stream()
                    .map(item -> scaled(item, factor, isLength))
                    .toList());
        }
        return datum;
    }

    private static Garment scaled(Garment garment, double factor) {
        Transform scale = Transform.scale(factor);
        return garment.withPieces(garment.pieces().stream()
                        .map(piece -> piece.transformed(scale))
                        .toList())
                .withSeams(garment.seams().stream()
                        .map(seam -> scaled(seam, factor))
                        .toList());
    }

    private static Seam scaled(Seam seam, double factor) {
        return seam.rule() instanceof SeamRule.Eased eased
                ? seam.withRule(new SeamRule.Eased(
                        eased.least().times(factor), eased.most().times(factor), eased.within()))
                : seam;
    }

    /**
     * Returns the greatest distance between what is drawn on the one and on the other; infinite if one has more points.
     */
    private static double apart(Garment a, Garment b) {
        double apart = 0;
        assertThat(a.pieces()).hasSameSizeAs(b.pieces());
        for (Piece piece : a.pieces()) {
            List<Point> drawn = drawn(piece);
            List<Point> other = drawn(b.piece(piece.name()));
            if (drawn.size() != other.size()) {
                return Double.POSITIVE_INFINITY;
            }
            assertThat(direction(piece).distanceTo(direction(b.piece(piece.name()))))
                    .as("grain of the %s", piece.name())
                    .isLessThanOrEqualTo(ROUNDING);
            for (int i = 0; i < drawn.size(); i++) {
                apart = Math.max(apart, drawn.get(i).distanceTo(other.get(i)));
            }
        }
        return apart;
    }

    /** Where the arrow lies goes by what can be read; its direction is what is cut by. */
    private static Point direction(Piece piece) {
        return Point.ORIGIN.plus(
                piece.grainline().bottom().minus(piece.grainline().top()).unit());
    }

    private static List<Point> drawn(Piece piece) {
        List<Point> points = new ArrayList<>();
        for (Edge edge : piece.edges()) {
            Path path = edge.path();
            for (int i = 0; i <= PLACES; i++) {
                points.add(path.pointAt(path.length() * i / PLACES));
            }
        }
        piece.notches().forEach(notch -> points.add(piece.pointOf(notch)));
        piece.marks().forEach(mark -> points.add(mark.point()));
        piece.lines()
                .forEach(line ->
                        points.addAll(List.of(line.path().start(), line.path().end())));
        return points;
    }
}
