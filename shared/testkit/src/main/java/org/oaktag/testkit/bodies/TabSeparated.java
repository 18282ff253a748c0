package org.oaktag.testkit.bodies;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Reads a table whose cells are parted by tabs and hold no quotes; lines that begin with # are remarks. */
final class TabSeparated {

    private TabSeparated() {}

    static List<Map<String, String>> rows(List<String> lines) {
        List<List<String>> cells = lines.stream()
                .filter(line -> !line.startsWith("#"))
                .map(line -> List.of(line.split("\t", -1)))
                .toList();
        List<String> columns = cells.get(0);
        return cells.stream()
                .skip(1)
                .map(row -> {
                    Map<String, String> named = new LinkedHashMap<>();
                    for (int i = 0; i < columns.size(); i++) {
                        named.put(columns.get(i), row.get(i));
                    }
                    return named;
                })
                .toList();
    }
}
