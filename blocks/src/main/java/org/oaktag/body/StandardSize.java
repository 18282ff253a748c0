package org.oaktag.body;

import java.util.Collections;
import java.util.EnumMap;
import java.util.Map;
import java.util.Objects;
import org.oaktag.measure.Length;

/**
 * A size as a standard defines it: the measures of the body it is for. Immutable.
 *
 * <pre>{@code
 * BodyMeasurements misses = StandardSize.ASTM_D5585_MISSES_8.builder().height(cm(168)).build();
 * misses.bustGirth().textInInches();   // = 36 1/4 in
 * }</pre>
 *
 * @param standard the standard, such as {@code "JIS L 4005"}
 * @param designation the size, such as {@code "9AR"}
 * @param figure whose size it is
 * @param measures the measures that are known of it, in the order of {@link BodyMeasure}
 */
public record StandardSize(String standard, String designation, Figure figure, Map<BodyMeasure, Length> measures) {

    /** ASTM D5585-11, misses' size 8. Its table gives no height here: say one before building. */
    public static final StandardSize ASTM_D5585_MISSES_8 = new StandardSize(
            "ASTM D5585-11",
            "misses 8",
            Figure.WOMAN,
            Map.of(
                    BodyMeasure.BUST_GIRTH, Length.inches(36.25),
                    BodyMeasure.WAIST_GIRTH, Length.inches(28),
                    BodyMeasure.NECK_BASE_GIRTH, Length.inches(14.625),
                    BodyMeasure.HEAD_GIRTH, Length.inches(21.75)));

    /** JIS L 4005, women's size 9AR: bust 83 cm, hip 91 cm, height 158 cm. */
    public static final StandardSize JIS_L_4005_9AR = new StandardSize(
            "JIS L 4005",
            "9AR",
            Figure.WOMAN,
            Map.of(
                    BodyMeasure.BUST_GIRTH, Length.cm(83),
                    BodyMeasure.HIP_GIRTH, Length.cm(91),
                    BodyMeasure.HEIGHT, Length.cm(158)));

    /** Copies the measures. */
    public StandardSize {
        Objects.requireNonNull(standard, "standard");
        Objects.requireNonNull(designation, "designation");
        Objects.requireNonNull(figure, "figure");
        measures = Collections.unmodifiableMap(new EnumMap<>(measures));
    }

    /** Returns a builder of the size's body, filled with what the standard says of it. */
    public BodyBuilder builder() {
        BodyBuilder builder =
                BodyMeasurements.builder().name(standard + " " + designation).figure(figure);
        measures.forEach(builder::measure);
        return builder;
    }
}
