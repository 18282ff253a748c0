package org.oaktag.examples;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.IntFunction;
import org.oaktag.export.drawing.FreeText;
import org.oaktag.export.sheet.Nest;
import org.oaktag.garment.FinishedMeasure;
import org.oaktag.garment.Fit;
import org.oaktag.lay.Lay;

/** Tells what was made of one top in several sizes: what they share, and the sizes beside each other. */
final class SizesAccount {

    /** The head of a column is cut short to this many characters, so that six sizes stand beside each other. */
    private static final int WIDEST = 10;

    private final PlainText text = new PlainText();
    private final List<MadeTop> tops;

    private SizesAccount(List<MadeTop> tops) {
        this.tops = tops;
    }

    /**
     * Returns the account, to which more can be written.
     *
     * @param nest the sizes
     * @param tops the top of each
     * @param plans what is cut from which cloth for each
     */
    static PlainText of(Nest nest, List<MadeTop> tops, List<CuttingPlan> plans) {
        SizesAccount account = new SizesAccount(tops);
        account.text.title(
                FreeText.shown(tops.get(0).garment().title()) + " in " + tops.size() + " sizes, drawn over each other");
        account.sizes();
        account.finished();
        account.cloths(plans);
        account.text.cautions(nest.cautions());
        return account.text;
    }

    /**
     * Returns the folder of what tells of the size at that place alone: its number, and its name as far as it has
     * letters for it.
     */
    static String folder(int size, MadeTop top) {
        String plain = FileWords.of(top.body().name());
        String cut = plain.substring(0, Math.min(plain.length(), 40)).replaceAll("-$", "");
        return (size + 1) + (cut.isEmpty() ? "" : "-" + cut);
    }

    private void sizes() {
        text.head("Sizes");
        for (int i = 0; i < tops.size(); i++) {
            MadeTop top = tops.get(i);
            boolean isTrue = top.garment().walkSeams().untrue().isEmpty();
            boolean fits = top.garment().fit().stream().noneMatch(Fit::isCaution);
            text.wrapped(
                    "  ",
                    (i + 1) + "  " + FreeText.shown(top.body().name()) + " ("
                            + top.body().figure().label() + "): "
                            + (isTrue ? "every seam is true" : "NOT EVERY SEAM IS TRUE") + ", "
                            + (fits ? "every check of the fit passes" : "NOT EVERY CHECK OF THE FIT PASSES")
                            + "; see " + folder(i, top) + "/");
        }
    }

    private void finished() {
        text.head("Finished measures, mm");
        Columns table = columns("measure");
        for (FinishedMeasure measure : tops.get(0).garment().measures()) {
            row(
                    table,
                    measure.name().value(),
                    i -> tops.get(i).garment().measures().stream()
                            .filter(each -> each.name().equals(measure.name()))
                            .flatMap(each -> each.taken(tops.get(i).garment()).stream())
                            .map(Account::tenths)
                            .findFirst());
        }
        text.add(table);
    }

    private void cloths(List<CuttingPlan> plans) {
        text.head("Cloth to buy for each size by itself");
        Columns table = columns("cloth");
        for (Lay lay : plans.get(0).lays()) {
            row(
                    table,
                    lay.cloth().use().value(),
                    i -> plans.get(i).lays().stream()
                            .filter(each -> each.cloth().equals(lay.cloth()))
                            .map(Lay::lengthToBuyText)
                            .findFirst());
        }
        text.add(table);
    }

    /** Begins a table with a column for each size under its number and the beginning of its name. */
    private Columns columns(String first) {
        Columns table = Columns.of("  ", "l" + "r".repeat(tops.size()));
        row(table, first, i -> {
            String name = (i + 1) + " " + FreeText.shown(tops.get(i).body().name());
            int end = Math.min(WIDEST, name.codePointCount(0, name.length()));
            return Optional.of(
                    name.substring(0, name.offsetByCodePoints(0, end)).strip());
        });
        return table;
    }

    private void row(Columns table, String first, IntFunction<Optional<String>> cell) {
        List<String> cells = new ArrayList<>(List.of(first));
        for (int i = 0; i < tops.size(); i++) {
            cells.add(cell.apply(i).orElse(""));
        }
        table.row(cells.toArray(new String[0]));
    }
}
