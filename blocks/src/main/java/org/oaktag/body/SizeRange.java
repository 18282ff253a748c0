package org.oaktag.body;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.oaktag.PatternException;
import org.oaktag.measure.Length;

/**
 * The steps by which a standard goes from size to size, and the bodies that lie on them: a table over which a recipe
 * can be graded. Immutable.
 *
 * <pre>{@code
 * SizeRange.GB_T_1335.around(body, 2, 3);     // two sizes below the body, itself, three above
 * SizeRange.en13402WomensBusts(cm(168));      // busts of 74 to 131 cm, all 168 cm tall
 * }</pre>
 *
 * @param standard the standard
 * @param heightStep what a size adds to the height
 * @param bustStep what a size adds to the bust girth
 */
public record SizeRange(String standard, Length heightStep, Length bustStep) {

    /** GB/T 1335, series 5.4: 5 cm of height and 4 cm of bust girth from size to size. */
    public static final SizeRange GB_T_1335 = new SizeRange("GB/T 1335", Length.cm(5), Length.cm(4));

    /** Refuses null. */
    public SizeRange {
        Objects.requireNonNull(standard, "standard");
        Objects.requireNonNull(heightStep, "heightStep");
        Objects.requireNonNull(bustStep, "bustStep");
    }

    /**
     * Returns the body that lies so many sizes above another, or below for a negative count.
     *
     * <p>Height and bust girth move by the standard's steps. Every other measure moves by what the rule that would
     * derive it makes of them, so that what is particular about the body stays: a neck 5 mm wider than the rule expects
     * is so in every size.
     *
     * @throws PatternException if the body is a child's, for which there are no rules, if its bust girth or height was
     *     not taken, or if the size is no plausible body
     */
    public BodyMeasurements step(BodyMeasurements body, int sizes) {
        if (body.isChild()) {
            throw PatternException.of(
                    "size range of '" + body.name() + "'",
                    "must be of a grown body: no rule grades a child's measures",
                    "a " + body.figure().label(),
                    "");
        }
        BodyMeasurements expectedHere = moved(body, 0).build();
        BodyMeasurements expectedThere = moved(body, sizes).build();
        BodyBuilder graded = moved(body, sizes).name(name(body, sizes));
        body.taken().forEach((measure, taken) -> {
            if (!measure.derivedFrom().isEmpty()) {
                graded.measure(
                        measure, taken.plus(expectedThere.measure(measure).minus(expectedHere.measure(measure))));
            }
        });
        return graded.build();
    }

    /**
     * Returns the bodies from so many sizes below another to so many above it, the smallest first.
     *
     * @throws PatternException as {@link #step}
     */
    public List<BodyMeasurements> around(BodyMeasurements body, int below, int above) {
        return IntStream.rangeClosed(-below, above)
                .mapToObj(sizes -> step(body, sizes))
                .toList();
    }

    /**
     * Returns women of one height with the bust girths of EN 13402-3: 74 to 102 cm by 4 cm, then 107, 113, 119, 125 and
     * 131 cm.
     *
     * @throws PatternException if the height is implausible
     */
    public static List<BodyMeasurements> en13402WomensBusts(Length height) {
        List<BodyMeasurements> bodies = new ArrayList<>();
        Stream.concat(
                        IntStream.iterate(74, bust -> bust <= 102, bust -> bust + 4)
                                .boxed(),
                        Stream.of(107, 113, 119, 125, 131))
                .forEach(bust -> bodies.add(BodyMeasurements.builder()
                        .name("EN 13402-3 bust " + bust)
                        .figure(Figure.WOMAN)
                        .bustGirth(Length.cm(bust))
                        .height(height)
                        .confirmed(BodyMeasure.HIP_GIRTH)
                        .build()));
        return List.copyOf(bodies);
    }

    /** Nobody is asked about a size: whoever is graded was asked when they were measured. */
    private BodyBuilder moved(BodyMeasurements body, int sizes) {
        BodyBuilder moved = BodyMeasurements.builder()
                .name(body.name())
                .figure(body.figure())
                .bustGirth(body.bustGirth().plus(bustStep.times(sizes)))
                .height(body.height().plus(heightStep.times(sizes)));
        Stream.of(BodyMeasure.values()).forEach(moved::confirmed);
        return moved;
    }

    private static String name(BodyMeasurements body, int sizes) {
        return sizes == 0 ? body.name() : body.name() + (sizes > 0 ? " +" : " ") + sizes;
    }
}
