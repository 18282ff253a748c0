package org.oaktag.bench;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import org.openjdk.jmh.results.RunResult;

/**
 * How the cost of a question grows with the edges of an outline: as multiples of the cost of the fewest, beside those
 * of n log n.
 */
final class GrowthTable {
    private static final String EDGES = "edges";

    private final Map<String, Map<Integer, Double>> times;

    private GrowthTable(Map<String, Map<Integer, Double>> times) {
        this.times = times;
    }

    static boolean isPartOfIt(RunResult result) {
        return result.getParams().getParam(EDGES) != null;
    }

    static GrowthTable of(Collection<RunResult> results) {
        Map<String, Map<Integer, Double>> times = new TreeMap<>();
        for (RunResult result : results) {
            if (isPartOfIt(result)) {
                String name = result.getParams().getBenchmark();
                times.computeIfAbsent(name.substring(name.lastIndexOf('.') + 1), key -> new TreeMap<>())
                        .put(
                                Integer.valueOf(result.getParams().getParam(EDGES)),
                                result.getPrimaryResult().getScore());
            }
        }
        return new GrowthTable(times);
    }

    void print() {
        if (times.isEmpty()) {
            return;
        }
        List<Integer> edges = new ArrayList<>(times.values().iterator().next().keySet());
        int fewest = edges.get(0);
        StringBuilder head = new StringBuilder("\n| growth | ns of " + fewest + " edges |");
        StringBuilder rule = new StringBuilder("|---|---:|");
        StringBuilder expected = new StringBuilder("| n log n | |");
        for (int count : edges) {
            head.append(' ').append(count).append(" |");
            rule.append("---:|");
            double multiple = count * Math.log(count) / (fewest * Math.log(fewest));
            expected.append(String.format(Locale.ROOT, " %.1f |", multiple));
        }
        System.out.println(head);
        System.out.println(rule);
        System.out.println(expected);
        times.forEach((what, byEdges) -> {
            double first = byEdges.getOrDefault(fewest, Double.NaN);
            StringBuilder row = new StringBuilder(String.format(Locale.ROOT, "| %s | %,.0f |", what, first));
            for (int count : edges) {
                row.append(String.format(Locale.ROOT, " %.1f |", byEdges.getOrDefault(count, Double.NaN) / first));
            }
            System.out.println(row);
        });
    }
}
