package org.oaktag.bench;

import java.util.List;
import java.util.Locale;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.oaktag.blocks.KnitTop;
import org.oaktag.body.BodyMeasurements;
import org.oaktag.body.Figure;
import org.oaktag.examples.HoodedTop;
import org.oaktag.garment.Allowances;
import org.oaktag.garment.Cloth;
import org.oaktag.garment.CutList;
import org.oaktag.garment.Garment;
import org.oaktag.lay.Effort;
import org.oaktag.lay.Lay;
import org.oaktag.lay.Spread;
import org.oaktag.measure.Length;
import org.oaktag.testkit.lay.Shelves;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/**
 * The lay of the shell of one to eight hooded tops on cloth 150 cm wide, by the number of tries. Its {@link #main}
 * prints how much of the cloth each lay uses beside the lower bound, area over width, and beside boxes packed on
 * shelves.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 3, time = 2)
@Measurement(iterations = 3, time = 2)
@Fork(1)
public class LayBenchmark {

    private static final double GAP = 3;

    @Param({"1", "2", "4", "8"})
    int tops = 1;

    @Param({"500", "4000"})
    int tries = 4000;

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

    private final Garment top = HoodedTop.recipe(false).applyTo(HoodedTop.block(body));
    private final Allowances allowances = KnitTop.allowances(top);
    private final CutList list = CutList.of(top);
    private final Cloth shell = list.cloths().get(0);

    @Benchmark
    public Lay withNap() {
        return lay(Spread.single(Length.cm(150)).withNap());
    }

    @Benchmark
    public Lay withoutNap() {
        return lay(Spread.single(Length.cm(150)));
    }

    private Lay lay(Spread spread) {
        CutList all = new CutList(
                Stream.generate(list::items).limit(tops).flatMap(List::stream).toList());
        return Lay.of(all, shell, allowances, spread.withGap(Length.mm(GAP)), Effort.tries(tries));
    }

    /** Prints a table of use. */
    public static void main(String[] args) {
        LayBenchmark bench = new LayBenchmark();
        System.out.println("tops  pieces  tries  nap  length mm  bound mm  shelves mm  use %  shelves' use %");
        for (int tops : new int[] {1, 2, 4, 8}) {
            for (int tries : new int[] {500, 4000, 16_000}) {
                for (boolean nap : new boolean[] {true, false}) {
                    bench.tops = tops;
                    bench.tries = tries;
                    System.out.println(row(nap ? bench.withNap() : bench.withoutNap(), tops, tries));
                }
            }
        }
    }

    private static String row(Lay lay, int tops, int tries) {
        double width = lay.spread().tableWidth().mm();
        double shelves = Shelves.length(lay);
        return String.format(
                Locale.ROOT,
                "%4d  %6d  %5d  %3s  %9.0f  %8.0f  %10.0f  %5.1f  %14.1f",
                tops,
                lay.pieces().size(),
                tries,
                lay.spread().nap() ? "yes" : "no",
                lay.length().mm(),
                lay.lowerBound().mm(),
                shelves,
                lay.use().percent(),
                100 * lay.area() / (width * shelves));
    }
}
