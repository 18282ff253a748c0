package org.oaktag.bench;

import java.awt.geom.CubicCurve2D;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.ToDoubleFunction;
import org.apache.batik.ext.awt.geom.PathLength;
import org.apache.commons.math3.analysis.integration.IterativeLegendreGaussIntegrator;
import org.oaktag.geometry.Cubic;
import org.openjdk.jmh.profile.GCProfiler;
import org.openjdk.jmh.results.Result;
import org.openjdk.jmh.results.RunResult;
import org.openjdk.jmh.runner.Runner;
import org.openjdk.jmh.runner.RunnerException;
import org.openjdk.jmh.runner.options.OptionsBuilder;
import org.openjdk.jmh.runner.options.VerboseMode;

/** Runs every benchmark of the geometry beside its peers and prints one table: time, allocation, and ratios to ours. */
public final class RatioTable {

    private static final String OURS = "oaktag";
    private static final String ALLOCATION = "gc.alloc.rate.norm";
    private static final double EXACT = 1e-11;

    private RatioTable() {}

    /**
     * Prints the table.
     *
     * @param args which benchmarks, as a regular expression; all but the whole garment where none is given
     */
    public static void main(String[] args) throws RunnerException {
        String which = args.length > 0 ? args[0] : "(Cubic|Inverse|Offset|Crossings|Outline).*Benchmark";
        Collection<RunResult> results = new Runner(new OptionsBuilder()
                        .include(which)
                        .addProfiler(GCProfiler.class)
                        .verbosity(VerboseMode.SILENT)
                        .build())
                .run();
        Map<String, List<RunResult>> groups = new LinkedHashMap<>();
        for (RunResult result : results) {
            groups.computeIfAbsent(group(result), key -> new ArrayList<>()).add(result);
        }
        System.out.println("| | ns a call | B a call | times ours |\n|---|---:|---:|---:|");
        groups.forEach(RatioTable::print);
        System.out.println();
        printErrors();
    }

    private static void print(String group, List<RunResult> results) {
        double ours = results.stream()
                .filter(result -> who(result).equals(OURS))
                .mapToDouble(result -> result.getPrimaryResult().getScore())
                .findFirst()
                .orElse(Double.NaN);
        for (RunResult result : results) {
            double time = result.getPrimaryResult().getScore();
            Result<?> allocated = result.getSecondaryResults().get(ALLOCATION);
            System.out.printf(
                    Locale.ROOT,
                    "| %s, %s | %.0f | %.0f | %.1f |%n",
                    group,
                    who(result),
                    time,
                    allocated == null ? Double.NaN : allocated.getScore(),
                    time / ours);
        }
    }

    /** Splits the method {@code containsJts} into what is done, {@code contains}, and by whom, {@code jts}. */
    private static String who(RunResult result) {
        String method = method(result);
        for (String who : List.of(OURS, "jts", "javaAwt", "commonsMath", "batik")) {
            if (method.toLowerCase(Locale.ROOT).endsWith(who.toLowerCase(Locale.ROOT))) {
                return who;
            }
        }
        return method;
    }

    private static String group(RunResult result) {
        String name = result.getParams().getBenchmark();
        String type = name.replaceAll(".*\\.(\\w+)Benchmark\\..*", "$1");
        String method = method(result);
        String what = method.substring(0, method.length() - who(result).length());
        String given = String.join(
                " ",
                result.getParams().getParamsKeys().stream()
                        .map(key -> key + " " + result.getParams().getParam(key))
                        .toList());
        return (type + " " + what + " " + given).strip().replaceAll(" +", " ");
    }

    private static String method(RunResult result) {
        String name = result.getParams().getBenchmark();
        return name.substring(name.lastIndexOf('.') + 1);
    }

    private static void printErrors() {
        List<Cubic> cubics = RandomCubics.all();
        System.out.println("| greatest error of a length, mm | |\n|---|---:|");
        for (double accuracy : new double[] {1e-3, 1e-6, 1e-9}) {
            printError(cubics, "oaktag at " + accuracy, cubic -> cubic.length(accuracy));
        }
        for (double accuracy : new double[] {1e-3, 1e-6, 1e-9}) {
            IterativeLegendreGaussIntegrator integrator = new IterativeLegendreGaussIntegrator(24, 1e-12, accuracy);
            printError(
                    cubics,
                    "commonsMath at " + accuracy,
                    cubic -> integrator.integrate(
                            Integer.MAX_VALUE, t -> cubic.derivativeAt(t).length(), 0, 1));
        }
        printError(cubics, "javaAwt at flatness 0.01", cubic -> {
            CubicCurve2D awt = Peers.awt(cubic);
            return Peers.flattenedLength(awt, 0.01);
        });
        printError(cubics, "batik", cubic -> new PathLength(Peers.awt(cubic)).lengthOfPath());
    }

    /** The reference is our own length to 1e-11 mm of quarters of the curve, which the laws hold against other libraries. */
    private static void printError(List<Cubic> cubics, String who, ToDoubleFunction<Cubic> length) {
        double greatest = 0;
        for (Cubic cubic : cubics) {
            double exact = 0;
            for (int quarter = 0; quarter < 4; quarter++) {
                exact += cubic.sub(quarter / 4.0, (quarter + 1) / 4.0).length(EXACT);
            }
            greatest = Math.max(greatest, Math.abs(length.applyAsDouble(cubic) - exact));
        }
        System.out.printf(Locale.ROOT, "| %s | %.1e |%n", who, greatest);
    }
}
