package org.oaktag.laws.recipes;

import java.util.SortedMap;
import java.util.TreeMap;

/** How often things of one kind happened, with the first of each kind in full. Numbers and names make no new kind. */
final class Tally {

    private record Entry(int times, String first) {}

    private final SortedMap<String, Entry> entries = new TreeMap<>();

    void count(String kind, String told) {
        String key = kind.replaceAll("\\[[^\\]]*\\]", "[..]")
                .replaceAll("'[^']*'", "'..'")
                .replaceAll("-?[0-9][0-9.E-]*", "#");
        entries.merge(key, new Entry(1, told), (old, more) -> new Entry(old.times + 1, old.first));
    }

    boolean isEmpty() {
        return entries.isEmpty();
    }

    int total() {
        return entries.values().stream().mapToInt(Entry::times).sum();
    }

    /** Returns a line for each kind: how often, the kind, and the first of it. */
    @Override
    public String toString() {
        StringBuilder lines = new StringBuilder();
        entries.forEach((kind, entry) -> lines.append(entry.times)
                .append(" x ")
                .append(kind)
                .append("\n      ")
                .append(entry.first)
                .append('\n'));
        return lines.toString();
    }
}
