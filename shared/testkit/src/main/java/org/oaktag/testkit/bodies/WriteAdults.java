package org.oaktag.testkit.bodies;

import java.io.IOException;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Iterator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import org.oaktag.body.BodyMeasure;
import org.oaktag.body.BodyMeasurements;
import org.oaktag.body.Figure;
import org.oaktag.measure.Length;

/**
 * Writes a file of bodies of generated adults, women and men by turns, as {@link SurveyPopulation} draws them: the same
 * number of them from the same seed are the same bytes anywhere.
 */
public final class WriteAdults {

    private static final long SEED = 1;

    private WriteAdults() {}

    /**
     * Writes them.
     *
     * @param args how many, and the file
     * @throws IOException if the file cannot be written
     */
    public static void main(String[] args) throws IOException {
        if (args.length != 2 || !args[0].matches("[1-9]\\d{0,8}")) {
            throw new IllegalArgumentException("say how many adults, and the file: 100000 adults.csv");
        }
        try (Writer out = Files.newBufferedWriter(Path.of(args[1]), StandardCharsets.UTF_8)) {
            write(Integer.parseInt(args[0]), SEED, out);
        }
    }

    /**
     * Writes adults and a line of column heads above them, one at a time.
     *
     * @throws IOException if they cannot be written
     */
    public static void write(int count, long seed, Appendable out) throws IOException {
        List<Iterator<SurveyedBody>> byTurns = List.of(
                SurveyPopulation.of(Figure.WOMAN).draw(seed).iterator(),
                SurveyPopulation.of(Figure.MAN).draw(seed).iterator());
        for (int i = 0; i < count; i++) {
            BodyMeasurements adult = byTurns.get(i % 2).next().measuredAs("adult " + (i + 1));
            Map<BodyMeasure, Length> taken = adult.taken();
            if (i == 0) {
                out.append(heads(taken.keySet()));
            }
            out.append(line(adult, taken.values()));
        }
    }

    private static String heads(Set<BodyMeasure> taken) {
        List<String> heads = new ArrayList<>(List.of("name", "figure"));
        taken.forEach(measure -> heads.add(measure.label().replace(' ', '_') + "_mm"));
        return String.join(",", heads) + "\n";
    }

    private static String line(BodyMeasurements adult, Collection<Length> taken) {
        List<String> cells =
                new ArrayList<>(List.of(adult.name(), adult.figure().label()));
        taken.forEach(length -> cells.add(String.format(Locale.ROOT, "%.1f", length.mm())));
        return String.join(",", cells) + "\n";
    }
}
