package org.oaktag.examples;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import org.oaktag.PatternException;
import org.oaktag.block.Style;
import org.oaktag.body.BodyMeasurements;
import org.oaktag.garment.Fit;
import org.oaktag.garment.Garment;
import org.oaktag.garment.Name;
import org.oaktag.garment.SeamRule;
import org.oaktag.garment.WalkedSeam;

/**
 * What came of one line of a file of bodies.
 *
 * @param outcome {@code made}, {@code asked} (a measure is far from what the others lead to expect), {@code refused}
 *     (the garment), {@code broken} (the line is no body) or {@code failed}
 * @param rule the rule that was broken, its numbers left out, or the measures asked about, so that reasons can be
 *     counted; empty where it was made
 * @param unfit the names of the checks of the fit that say a caution; empty where there is none, and where none was
 *     made
 * @param cells the row that is written
 */
record DraftedRow(String outcome, String rule, List<Name> unfit, List<String> cells) {

    /** The outcome of a line about whose measures a question is open. */
    static final String ASKED = "asked";

    private static final String NUMBER = "-?\\d+(\\.\\d+)?";

    DraftedRow {
        unfit = List.copyOf(unfit);
        cells = List.copyOf(cells);
    }

    /** Returns the column heads for a style. */
    static List<String> heads(List<Name> measures) {
        List<String> heads = new ArrayList<>(List.of("line", "name", "outcome"));
        measures.forEach(measure -> heads.add(measure.value().replace(' ', '_') + "_mm"));
        heads.addAll(List.of(
                "seams",
                "seams_true",
                "greatest_seam_error_mm",
                "eased_in_mm",
                "fits",
                "cautions",
                "derived",
                "reason"));
        return heads;
    }

    /** Drafts one line. */
    static DraftedRow of(BodyTable table, BodyLines.Written line, Style style, List<Name> measures) {
        BodyMeasurements body;
        try {
            body = table.body(line.cells());
        } catch (PatternException broken) {
            return unread(table, line, broken, measures);
        }
        try {
            return made(line, body.name(), style.on(body), measures);
        } catch (PatternException refused) {
            return without(line, body.name(), "refused", refused, refused.rule(), measures);
        } catch (RuntimeException fault) {
            return without(line, body.name(), "failed", fault, fault.getClass().getSimpleName(), measures);
        }
    }

    /** A line that makes a body but for a question is told apart from one that makes none. */
    private static DraftedRow unread(
            BodyTable table, BodyLines.Written line, PatternException why, List<Name> measures) {
        try {
            BodyTable.Line cells = line.cells();
            String doubted = table.gathered(cells).doubts().stream()
                    .map(doubt -> doubt.measure().label())
                    .collect(Collectors.joining(", "));
            if (!doubted.isEmpty()) {
                return without(line, table.name(cells), ASKED, why, doubted, measures);
            }
        } catch (PatternException broken) {
            // Then nothing is left to be asked about.
        }
        return without(line, "", "broken", why, why.rule(), measures);
    }

    private static DraftedRow made(BodyLines.Written line, String name, Garment garment, List<Name> measures) {
        List<String> cells = begun(line, name, "made");
        for (Name measure : measures) {
            cells.add(garment.measures().stream()
                    .filter(each -> each.name().equals(measure))
                    .findFirst()
                    .flatMap(each -> each.taken(garment))
                    .map(length -> number(length.mm()))
                    .orElse(""));
        }
        List<WalkedSeam> seams = garment.walkSeams().seams();
        cells.add(String.valueOf(seams.size()));
        cells.add(String.valueOf(seams.stream().filter(WalkedSeam::isTrue).count()));
        cells.add(String.format(
                Locale.ROOT,
                "%.6f",
                seams.stream()
                        .mapToDouble(seam -> Math.abs(seam.error().mm()))
                        .max()
                        .orElse(0)));
        cells.add(easedIn(seams).map(DraftedRow::number).orElse(""));
        List<Name> unfit =
                garment.fit().stream().filter(Fit::isCaution).map(Fit::check).toList();
        cells.add(unfit.isEmpty() ? "yes" : "no");
        cells.add(oneLine(String.join("; ", garment.cautions())));
        cells.add(garment.wearer().derived().stream().map(Name::value).collect(Collectors.joining("; ")));
        cells.add("");
        return new DraftedRow("made", "", unfit, cells);
    }

    /**
     * Returns how much is eased in along all seams, such as that of a cap into its armhole; none without such a seam.
     */
    private static Optional<Double> easedIn(List<WalkedSeam> seams) {
        List<WalkedSeam> eased = seams.stream()
                .filter(seam -> seam.seam().rule() instanceof SeamRule.Eased)
                .toList();
        return eased.isEmpty()
                ? Optional.empty()
                : Optional.of(eased.stream()
                        .mapToDouble(seam -> seam.difference().mm())
                        .sum());
    }

    private static DraftedRow without(
            BodyLines.Written line,
            String name,
            String outcome,
            RuntimeException why,
            String rule,
            List<Name> measures) {
        List<String> cells = begun(line, name, outcome);
        while (cells.size() < heads(measures).size() - 1) {
            cells.add("");
        }
        cells.add(oneLine(why instanceof PatternException ? String.valueOf(why.getMessage()) : String.valueOf(why)));
        return new DraftedRow(outcome, oneLine(rule.replaceAll(NUMBER, "#")), List.of(), cells);
    }

    private static List<String> begun(BodyLines.Written line, String name, String outcome) {
        return new ArrayList<>(List.of(String.valueOf(line.number()), oneLine(name), outcome));
    }

    /** Returns a length with three decimals, never a negative nothing. */
    private static String number(double mm) {
        return String.format(Locale.ROOT, "%.3f", Math.round(mm * 1000) / 1000.0 + 0.0);
    }

    /** A row is a line, so that a run can be gone on with after counting them. */
    private static String oneLine(String text) {
        return text.replaceAll("\\R", " ");
    }
}
