package org.oaktag.bench;

import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import org.openjdk.jmh.profile.GCProfiler;
import org.openjdk.jmh.results.Result;
import org.openjdk.jmh.results.RunResult;
import org.openjdk.jmh.runner.Runner;
import org.openjdk.jmh.runner.RunnerException;
import org.openjdk.jmh.runner.options.OptionsBuilder;
import org.openjdk.jmh.runner.options.VerboseMode;

/**
 * Runs the benchmarks beside their peers and prints one table: measured error, time, allocation, and the ratio to our
 * time.
 */
public final class RatioTable {

    private static final String OURS = "oaktag";
    private static final String ALLOCATION = "gc.alloc.rate.norm";

    /** What those who cannot be asked for an accuracy are held against. */
    private static final String DEFAULT_ACCURACY = "1e-6";

    private RatioTable() {}

    /**
     * Prints the table.
     *
     * @param args which benchmarks, as a regular expression; all but the lay where none is given
     */
    public static void main(String[] args) throws RunnerException {
        String which = args.length > 0 ? args[0] : "(Cubic|Inverse|Offset|Crossings|Outline|Garment|Growth).*Benchmark";
        Collection<RunResult> results = new Runner(new OptionsBuilder()
                        .include(which)
                        .addProfiler(GCProfiler.class)
                        .verbosity(VerboseMode.SILENT)
                        .build())
                .run();
        List<Row> rows = rows(results);
        System.out.println("| | who | asked, mm | measured error, mm | ns a call | +- | B a call | times ours |");
        System.out.println("|---|---|---:|---:|---:|---:|---:|---:|");
        for (Row row : rows) {
            double ours = rows.stream()
                    .filter(row::isMeasuredAgainst)
                    .mapToDouble(Row::time)
                    .findFirst()
                    .orElse(Double.NaN);
            System.out.println(row.text(ours));
        }
        GrowthTable.of(results).print();
    }

    private static List<Row> rows(Collection<RunResult> results) {
        return results.stream()
                .filter(result -> !GrowthTable.isPartOfIt(result))
                .map(Row::of)
                .toList();
    }

    private record Row(
            String type,
            String what,
            String who,
            String cubics,
            String asked,
            double time,
            double spread,
            double bytes) {

        static Row of(RunResult result) {
            String name = result.getParams().getBenchmark();
            String type = name.replaceAll(".*\\.(\\w+)Benchmark\\..*", "$1");
            String method = name.substring(name.lastIndexOf('.') + 1);
            String who = who(method);
            Result<?> allocated = result.getSecondaryResults().get(ALLOCATION);
            Result<?> primary = result.getPrimaryResult();
            double unit = primary.getScoreUnit().startsWith("us") ? 1000 : 1;
            return new Row(
                    type,
                    method.toLowerCase(Locale.ROOT).endsWith(who.toLowerCase(Locale.ROOT))
                            ? method.substring(0, method.length() - who.length())
                            : method,
                    who,
                    param(result, "cubics"),
                    param(result, "mm") + param(result, "tolerance"),
                    unit * primary.getScore(),
                    unit * primary.getScoreError(),
                    allocated == null ? Double.NaN : allocated.getScore());
        }

        private static String param(RunResult result, String key) {
            return Objects.requireNonNullElse(result.getParams().getParam(key), "");
        }

        /** Splits the method {@code containsJts} into what is done, {@code contains}, and by whom, {@code jts}. */
        private static String who(String method) {
            for (String who : List.of("jts", "javaAwt", "commonsMath", "batik")) {
                if (method.toLowerCase(Locale.ROOT).endsWith(who.toLowerCase(Locale.ROOT))) {
                    return who;
                }
            }
            return OURS;
        }

        boolean isMeasuredAgainst(Row ours) {
            return ours.who.equals(OURS)
                    && ours.type.equals(type)
                    && ours.what.equals(what)
                    && ours.cubics.equals(cubics)
                    && (ours.asked.equals(asked) || (asked.isEmpty() && ours.asked.equals(DEFAULT_ACCURACY)));
        }

        String error() {
            return switch (type) {
                case "CubicLength" -> Errors.ofLength(who, cubics, asked);
                case "InverseLength" ->
                    Errors.ofInverse(who, cubics, asked.isEmpty() ? Double.NaN : Double.parseDouble(asked));
                case "Offset" -> Errors.ofOffset(who, asked);
                case "Crossings" -> Errors.ofCrossings(who);
                case "Outline" -> what.equals("area") ? Errors.ofArea(who) : Errors.ofContainment(who);
                default -> "";
            };
        }

        String text(double ours) {
            return String.format(
                    Locale.ROOT,
                    "| %s | %s | %s | %s | %,.0f | %.0f %% | %,.0f | %.1f |",
                    (type + " " + what + " " + cubics).strip().replaceAll(" +", " "),
                    who,
                    asked,
                    error(),
                    time,
                    100 * spread / time,
                    bytes,
                    time / ours);
        }
    }
}
