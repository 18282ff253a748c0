package org.oaktag.bench;

import java.util.concurrent.TimeUnit;
import org.oaktag.body.BodyMeasurements;
import org.oaktag.body.Figure;
import org.oaktag.examples.HoodedTop;
import org.oaktag.garment.Garment;
import org.oaktag.garment.SeamWalk;
import org.oaktag.measure.Length;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/**
 * A whole garment on one core: the hooded top of the examples, drafted, adjusted in fourteen steps with their history,
 * and walked. With {@code -prof gc}, what it allocates.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Warmup(iterations = 40, time = 1)
@Measurement(iterations = 6, time = 1)
@Fork(1)
public class GarmentBenchmark {

    private final BodyMeasurements body = BodyMeasurements.builder()
            .name("Mira")
            .figure(Figure.WOMAN)
            .bustGirth(Length.cm(94.5))
            .waistGirth(Length.cm(82))
            .hipGirth(Length.cm(101))
            .neckBaseGirth(Length.cm(37))
            .upperArmGirth(Length.cm(30.5))
            .height(Length.cm(166))
            .build();

    private final Garment block = HoodedTop.block(body);
    private final Garment top = HoodedTop.recipe(false).applyTo(block);

    /** From the measures to the walked garment. */
    @Benchmark
    public boolean draftAdjustAndWalk() {
        return HoodedTop.recipe(false)
                .applyTo(HoodedTop.block(body))
                .walkSeams()
                .isTrue();
    }

    /** The block alone, with its history. */
    @Benchmark
    public Garment draft() {
        return HoodedTop.block(body);
    }

    /** The fourteen steps alone, with their history. */
    @Benchmark
    public Garment adjust() {
        return HoodedTop.recipe(false).applyTo(block);
    }

    /** All seams of the finished top, none taken over from an earlier walk. */
    @Benchmark
    public boolean walk() {
        return SeamWalk.of(top).isTrue();
    }
}
