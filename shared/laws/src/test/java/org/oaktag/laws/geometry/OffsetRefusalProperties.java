package org.oaktag.laws.geometry;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.DoubleConsumer;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.domains.Domain;
import net.jqwik.api.domains.DomainContext;
import net.jqwik.api.statistics.Statistics;
import org.oaktag.PatternException;
import org.oaktag.geometry.CornerStyle;
import org.oaktag.geometry.Curve;
import org.oaktag.geometry.OffsetPath;
import org.oaktag.geometry.Outline;
import org.oaktag.geometry.OutlineOffset;
import org.oaktag.geometry.Path;
import org.oaktag.geometry.Transform;
import org.oaktag.testkit.curves.Curves;

/**
 * A refused offset quotes a distance: that one works, and one a tenth of a millimetre (of a small one, a digit) greater
 * does not.
 */
@Domain(Curves.class)
@Domain(DomainContext.Global.class)
class OffsetRefusalProperties {
    private static final double TOLERANCE = 0.01;
    private static final Pattern QUOTED = Pattern.compile("use (at most|less than) ([0-9]+\\.([0-9]+)) mm");

    @Provide
    Arbitrary<CornerStyle> styles() {
        return Arbitraries.of(CornerStyle.mitre(3), CornerStyle.round(), CornerStyle.square());
    }

    @Property(tries = 150)
    void distance_that_a_refused_inward_offset_quotes_works_and_a_greater_one_does_not(
            @ForAll Outline outline,
            @ForAll("styles") CornerStyle style,
            @ForAll @IntRange(min = 10, max = 400) int distance) {
        quotesTruly(distance, d -> OutlineOffset.outward(outline, -d, style, TOLERANCE));
    }

    @Property(tries = 60)
    void so_it_does_at_any_size(@ForAll Outline outline, @ForAll @DoubleRange(min = -2, max = 2) double digits) {
        double scale = Math.pow(10, digits);
        Outline scaled = outline.transformed(Transform.scale(scale));
        double distance = Math.max(scaled.bounds().width(), scaled.bounds().height());
        assertThat(quotesTruly(
                        distance, d -> OutlineOffset.outward(scaled, -d, CornerStyle.round(), TOLERANCE * scale)))
                .isTrue();
    }

    @Property(tries = 150)
    void edges_with_distances_of_their_own_shrink_in_the_same_share(
            @ForAll Outline outline, @ForAll @IntRange(min = 10, max = 200) int greatest) {
        List<Path> edges = new ArrayList<>();
        double[] shares = new double[outline.path().curves().size()];
        for (Curve curve : outline.path().curves()) {
            shares[edges.size()] = -1.0 / (1 + edges.size() % 3);
            edges.add(Path.of(curve));
        }
        quotesTruly(
                greatest,
                d -> OutlineOffset.outward(
                        edges,
                        Arrays.stream(shares).map(share -> share * d).toArray(),
                        CornerStyle.round(),
                        TOLERANCE));
    }

    /** Inside an outline that is drawn as an open path no parallel is left once the distance is great enough. */
    @Property(tries = 150)
    void so_it_does_for_a_path(
            @ForAll Outline outline,
            @ForAll("styles") CornerStyle style,
            @ForAll @IntRange(min = 10, max = 400) int distance,
            @ForAll boolean left) {
        Path path = left ? outline.path().reversed() : outline.path();
        quotesTruly(distance, d -> OffsetPath.of(path, left ? d : -d, style, TOLERANCE));
    }

    /** Tells whether the distance is refused, and then holds what the refusal quotes to it. */
    private static boolean quotesTruly(double distance, DoubleConsumer offset) {
        Optional<PatternException> refusal = refusal(distance, offset);
        Statistics.collect(refusal.isPresent() ? "refused" : "made");
        Statistics.coverage(cover -> cover.check("refused").percentage(share -> share > 10));
        refusal.ifPresent(refused -> {
            Matcher quoted = QUOTED.matcher(refused.remedy());
            assertThat(quoted.matches()).as(refused.getMessage()).isTrue();
            double step = Math.pow(10, -quoted.group(3).length());
            double most = Double.parseDouble(quoted.group(2));
            assertThat(most).isLessThan(distance).isGreaterThan(0);
            if (quoted.group(1).equals("less than")) {
                assertThat(most).isEqualTo(step);
                assertThat(refusal(most, offset)).as(refused.getMessage()).isPresent();
                return;
            }
            assertThat(refusal(most, offset)).as(refused.getMessage()).isEmpty();
            assertThat(refusal(Math.min(most + step, distance), offset))
                    .as(refused.getMessage())
                    .isPresent();
        });
        return refusal.isPresent();
    }

    private static Optional<PatternException> refusal(double distance, DoubleConsumer offset) {
        try {
            offset.accept(distance);
            return Optional.empty();
        } catch (PatternException refusal) {
            return Optional.of(refusal);
        }
    }
}
