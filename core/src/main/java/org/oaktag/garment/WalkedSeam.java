package org.oaktag.garment;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Collectors;
import org.oaktag.measure.Angle;
import org.oaktag.measure.Length;

/**
 * A seam with both sides measured along the seam line. Immutable.
 *
 * <pre>{@code
 * WalkedSeam side = block.walkSeams().seam(SIDE_SEAM);
 * side.lengthA().minus(side.lengthB());   // = 0.0 mm
 * side.isTrue();                          // = true
 * }</pre>
 *
 * @param seam the seam
 * @param lengthA the length of side a
 * @param lengthB the length of side b
 * @param expectedDifference the length of b less the length of a by which the seam is true
 * @param spans the parts between matching notches, in sewing order; one part where no notches match
 * @param angles at each end, the two angles inside the pieces added up: 180 degrees where the outline runs on smoothly
 *     when the seam is closed
 */
public record WalkedSeam(
        Seam seam,
        Length lengthA,
        Length lengthB,
        Length expectedDifference,
        List<WalkedSpan> spans,
        Map<End, Angle> angles) {

    /** How far apart two lengths may lie in a true seam: 0.01 mm. A pencil line is thirty times as wide. */
    public static final Length TOLERANCE = Length.mm(0.01);

    /** How far from smooth an outline may run across a true seam that must be smooth there: half a degree. */
    public static final Angle ANGLE_TOLERANCE = Angle.degrees(0.5);

    /** So many edges of a side are named one by one. */
    private static final int MOST_NAMED = 4;

    private static final double STRAIGHT_ON = 180;

    /** Copies the spans and the angles. */
    public WalkedSeam {
        Objects.requireNonNull(seam, "seam");
        Objects.requireNonNull(lengthA, "lengthA");
        Objects.requireNonNull(lengthB, "lengthB");
        Objects.requireNonNull(expectedDifference, "expectedDifference");
        spans = List.copyOf(spans);
        angles = Map.copyOf(angles);
    }

    /** Walks one seam of a garment. */
    public static WalkedSeam of(Garment garment, Seam seam) {
        MeasuredSide a = MeasuredSide.of(garment, seam.a());
        MeasuredSide b = MeasuredSide.of(garment, seam.b());
        double difference = b.length() - a.length();
        double expected = seam.rule().expectedDifference(a.length(), difference);
        return new WalkedSeam(
                seam,
                Length.mm(a.length()),
                Length.mm(b.length()),
                Length.mm(expected),
                MeasuredSide.spans(seam.rule(), a, b),
                Map.of(End.START, angle(garment, seam, End.START), End.END, angle(garment, seam, End.END)));
    }

    /** Returns the length of b less the length of a. */
    public Length difference() {
        return lengthB.minus(lengthA);
    }

    /** Returns by how much the difference is not what it should be; positive where b is too long. */
    public Length error() {
        return difference().minus(expectedDifference);
    }

    /** Returns the two angles inside the pieces at an end of the seam, added up. */
    public Angle angleAt(End end) {
        Angle angle = angles.get(end);
        if (angle == null) {
            throw new IllegalStateException("seam '" + seam.name() + "' was walked without its " + end);
        }
        return angle;
    }

    /** Tells whether the lengths, the parts between notches and the angles asked for are all as they should be. */
    public boolean isTrue() {
        if (!isTrueInLength()) {
            return false;
        }
        for (int i = 0; i < spans.size(); i++) {
            if (!spans.get(i).isTrue()) {
                return false;
            }
        }
        return (!seam.smoothAt().contains(End.START) || isSmoothAt(End.START))
                && (!seam.smoothAt().contains(End.END) || isSmoothAt(End.END));
    }

    /** Tells whether the difference of the lengths is what it should be, within {@link #TOLERANCE}. */
    public boolean isTrueInLength() {
        return Math.abs(lengthB.mm() - lengthA.mm() - expectedDifference.mm()) <= TOLERANCE.mm();
    }

    /**
     * Returns the walk on one line, lengths to a hundredth of a millimetre:
     * {@code "side seam: front.side 412.30 mm, back.side 412.30 mm, flat: true"}.
     */
    public String text() {
        return seam.name() + ": " + side(seam.a(), lengthA) + ", " + side(seam.b(), lengthB) + ", "
                + seam.rule().text() + ": "
                + mend().map(mend -> "not true: " + mend).orElse("true");
    }

    private static String side(SeamSide side, Length length) {
        return String.format(Locale.ROOT, "%s %.2f mm", side.text(), length.mm());
    }

    /** Returns what is wrong and what would mend it, or empty where the seam is true. */
    public Optional<String> mend() {
        if (isTrue()) {
            return Optional.empty();
        }
        return Optional.of(fault() + ": " + seam.refit());
    }

    /** Names the edges of a side; of a longer one, such as the outline of an interfacing, the first and the last. */
    private static String told(SeamSide side) {
        int count = side.runs().size();
        return count <= MOST_NAMED
                ? side.text()
                : side.runs().get(0).edge().id() + " to "
                        + side.runs().get(count - 1).edge().id();
    }

    private String fault() {
        if (!isTrueInLength()) {
            String size = Length.mm(Math.abs(error().mm())).text();
            return told(seam.b()) + " is " + size + (error().mm() > 0 ? " too long for " : " too short for ")
                    + told(seam.a()) + " (" + seam.rule().text() + ")";
        }
        Optional<WalkedSpan> span =
                spans.stream().filter(each -> !each.isTrue()).findFirst();
        if (span.isPresent()) {
            return "between " + span.get().from() + " and " + span.get().to() + " the two sides differ by "
                    + span.get().difference().text() + " where none may be";
        }
        return "the outline turns at its "
                + java.util.Arrays.stream(End.values())
                        .filter(end -> seam.smoothAt().contains(end) && !isSmoothAt(end))
                        .map(end -> (end == End.START ? "start" : "end") + " by "
                                + Angle.degrees(angleAt(end).degrees() - STRAIGHT_ON)
                                        .text())
                        .collect(Collectors.joining(" and at its "));
    }

    private boolean isSmoothAt(End end) {
        return Math.abs(angleAt(end).degrees() - STRAIGHT_ON) <= ANGLE_TOLERANCE.degrees();
    }

    private static Angle angle(Garment garment, Seam seam, End end) {
        return Angle.degrees(cornerAngle(garment, seam.a(), end) + cornerAngle(garment, seam.b(), end));
    }

    private static double cornerAngle(Garment garment, SeamSide side, End end) {
        SeamSide.Run run = side.runAt(end);
        Piece piece = garment.piece(run.edge().piece());
        return piece.cornerAngle(run.edge().edge(), run.cornerAt(end)).degrees();
    }
}
