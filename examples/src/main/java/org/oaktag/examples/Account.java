package org.oaktag.examples;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.oaktag.adjust.Recipe;
import org.oaktag.body.BodyMeasure;
import org.oaktag.body.BodyMeasurements;
import org.oaktag.body.Derived;
import org.oaktag.body.Doubt;
import org.oaktag.export.drawing.FreeText;
import org.oaktag.garment.Change;
import org.oaktag.garment.CutList;
import org.oaktag.garment.End;
import org.oaktag.garment.Fit;
import org.oaktag.garment.Garment;
import org.oaktag.garment.Moved;
import org.oaktag.garment.Name;
import org.oaktag.garment.Note;
import org.oaktag.garment.Piece;
import org.oaktag.garment.RawEdge;
import org.oaktag.garment.WalkedSeam;
import org.oaktag.lay.Lay;
import org.oaktag.measure.Angle;
import org.oaktag.measure.Length;
import org.oaktag.sewing.AssemblyOrder;
import org.oaktag.sewing.Operation;

/** Tells a reader at a terminal what was made: plain text, at most a hundred columns wide. */
final class Account {

    private static final int MOST_MOVED = 6;
    private static final int MOST_NOTCHES = 2;
    private static final int ROOM_FOR_NOTCHES = 32;

    /** What lines that tell of a step begin with. */
    private static final String STEP = "      ";

    private final PlainText text = new PlainText();

    private Account() {}

    /**
     * Returns the account, to which more can be written.
     *
     * @param top what was made
     * @param plan what is cut from which cloth
     */
    static PlainText of(MadeTop top, CuttingPlan plan) {
        Garment garment = top.garment();
        Account account = new Account();
        account.body(top.body(), garment);
        account.draft(top.played().get(0).before().history());
        account.steps(top.played());
        account.seams(garment);
        account.finished(garment);
        account.fit(garment);
        account.cutting(plan.list());
        account.cloths(plan.lays());
        account.assembly(AssemblyOrder.of(garment));
        account.text.cautions(garment.cautions());
        return account.text;
    }

    private void body(BodyMeasurements body, Garment garment) {
        String age = body.ageYears().isPresent() ? ", " + body.ageYears().getAsInt() + " years" : "";
        text.title(FreeText.shown(garment.title()) + " for " + FreeText.shown(body.name()) + " ("
                + body.figure().label() + age + ")");
        text.head("Body, mm");
        Columns table = Columns.of("  ", "lrlrlr");
        List<String> cells = new ArrayList<>();
        for (Map.Entry<BodyMeasure, Length> each : body.measures().entrySet()) {
            cells.add(each.getKey().label());
            cells.add(tenths(each.getValue()) + mark(garment, each.getKey().asName()));
        }
        while (cells.size() % 6 != 0) {
            cells.add("");
        }
        for (int i = 0; i < cells.size(); i += 6) {
            table.row(cells.subList(i, i + 6).toArray(new String[0]));
        }
        text.add(table);
        if (!body.derived().isEmpty()) {
            text.blank();
            text.wrapped(
                    "  ",
                    "* not taken, derived from the others; take it with a tape where you can. Of three bodies one is off by"
                            + " more than is given or taken, of twenty one by more than twice as much:");
            for (Derived derived : body.derived()) {
                text.wrapped("    ", derived.text());
            }
            text.wrapped("    ", "rules " + Derived.SOURCE);
        }
        for (Doubt doubt : body.confirmed()) {
            text.wrapped("  ", "asked about, and confirmed: " + doubt.text());
        }
    }

    /** A measure of the body that was not taken is marked wherever it stands. */
    private static String mark(Garment garment, Name bodyMeasure) {
        return garment.wearer().isDerived(bodyMeasure) ? "*" : " ";
    }

    private void draft(List<Change> history) {
        text.head("Draft");
        for (Change change : history) {
            text.wrapped("  ", FreeText.shown(change.title()));
            notes(change);
        }
    }

    private void steps(List<Recipe.Played> played) {
        text.head("Steps, mm");
        for (int i = 0; i < played.size(); i++) {
            Garment before = played.get(i).before();
            Garment after = played.get(i).after();
            Change change = after.history().get(after.history().size() - 1);
            if (i > 0) {
                text.blank();
            }
            text.wrapped(String.format(Locale.ROOT, "  %2d  ", i + 1), FreeText.shown(change.title()));
            pieces("new pieces: ", after, before);
            pieces("gone: ", before, after);
            moved(change);
            notes(change);
            untrue(change, before.history().get(before.history().size() - 1).untrue());
        }
    }

    private void pieces(String what, Garment there, Garment notThere) {
        List<String> names = there.pieces().stream()
                .filter(piece -> !notThere.hasPiece(piece.name()))
                .map(piece -> piece.name().value())
                .toList();
        if (!names.isEmpty()) {
            text.wrapped(STEP, what + String.join(", ", names));
        }
    }

    private void notes(Change change) {
        for (Note note : change.notes()) {
            String kind = switch (note.kind()) {
                case RULE -> "rule: ";
                case DONE -> "also done: ";
                case CAUTION -> "caution: ";
                case FIT -> "fit: ";
            };
            text.wrapped(STEP, kind + FreeText.shown(note.text()));
        }
    }

    /** What moved most: lengths first, as a seam that gapes for a while is told below. */
    private void moved(Change change) {
        List<Moved> moved = change.moved().stream()
                .filter(each -> each.by().isPresent() && !each.watched().isOfSeam())
                .sorted(Comparator.comparingDouble((Moved each) ->
                                Math.abs(each.by().orElse(Length.ZERO).mm()))
                        .reversed())
                .toList();
        Columns table = Columns.of(STEP, "lrlrr");
        moved.stream()
                .limit(MOST_MOVED)
                .forEach(each -> table.row(
                        each.watched().text(),
                        tenths(each.before().orElseThrow()),
                        "->",
                        tenths(each.after().orElseThrow()),
                        signed(each.by().orElseThrow())));
        text.add(table);
        if (moved.size() > MOST_MOVED) {
            text.line(STEP + "and " + (moved.size() - MOST_MOVED) + " more, see changes.csv");
        }
    }

    private void untrue(Change change, List<String> before) {
        for (String seam : change.untrue()) {
            text.wrapped(STEP, (before.contains(seam) ? "still not true: " : "not true now: ") + seam);
        }
        if (change.untrue().isEmpty() && !before.isEmpty()) {
            text.line(STEP + "every seam is true again");
        }
    }

    private void seams(Garment garment) {
        text.head("Seams, mm; the angles in degrees are those of both sides together at the ends");
        Columns table = Columns.of("  ", "lrrlrrrrl");
        table.row("seam", "side a", "side b", "rule", "b less a", "expected", "start", "end", "true");
        for (WalkedSeam walked : garment.walkSeams().seams()) {
            table.row(
                    walked.seam().name().value(),
                    hundredths(walked.lengthA()),
                    hundredths(walked.lengthB()),
                    walked.seam().rule().text(),
                    hundredths(walked.difference()),
                    hundredths(walked.expectedDifference()),
                    degrees(walked.angleAt(End.START)),
                    degrees(walked.angleAt(End.END)),
                    walked.isTrue() ? "yes" : "NO");
        }
        text.add(table);
        garment.walkSeams()
                .untrue()
                .forEach(walked -> text.wrapped(
                        "  ", walked.seam().name() + ": " + walked.mend().orElse("")));
        List<RawEdge> raw = garment.rawEdges();
        raw.forEach(edge -> text.wrapped("  ", edge.text()));
        if (raw.isEmpty()) {
            text.line("  No edge is left raw: each is sewn, on a fold, turned back, neatened or left so on purpose.");
        }
    }

    private void finished(Garment garment) {
        text.head("Finished measures, mm");
        Columns table = Columns.of("  ", "lrrrl");
        table.row("measure", "garment", "body", "ease", "against");
        garment.measures()
                .forEach(measure -> measure.taken(garment).ifPresent(finished -> {
                    Optional<Length> body = measure.body().map(garment.wearer()::measure);
                    table.row(
                            measure.name().value(),
                            tenths(finished),
                            body.map(Account::tenths).orElse("")
                                    + measure.body()
                                            .map(name -> mark(garment, name))
                                            .orElse(""),
                            body.map(finished::minus).map(Account::signed).orElse(""),
                            measure.body().map(Name::value).orElse(""));
                }));
        text.add(table);
        if (garment.measures().stream()
                .anyMatch(measure ->
                        measure.body().filter(garment.wearer()::isDerived).isPresent())) {
            text.line("  * derived from other measures of the body, not taken");
        }
    }

    private void fit(Garment garment) {
        text.head("Opening checks, and room on the body");
        for (Fit fit : garment.fit()) {
            String verdict = switch (fit.verdict()) {
                case FITS -> "fits: ";
                case STRAINS -> "CAUTION: ";
                case FAILS -> "DOES NOT FIT: ";
            };
            text.wrapped("  ", verdict + fit.text());
        }
    }

    private void cutting(CutList list) {
        text.head("Cutting");
        Columns table = Columns.of("  ", "rlll");
        for (CutList.Item item : list.items()) {
            Piece piece = item.piece();
            table.row(
                    "" + item.number(),
                    piece.name().value(),
                    piece.cut().instruction(),
                    piece.cloth().use() + ": " + FreeText.shown(piece.cloth().description()));
        }
        text.add(table);
    }

    private void cloths(List<Lay> lays) {
        text.head("Cloth to buy");
        Columns table = Columns.of("  ", "lrrlrrr");
        table.row("cloth", "buy", "width", "laid", "takes, mm", "at least", "used");
        for (Lay lay : lays) {
            table.row(
                    lay.cloth().use().value(),
                    lay.lengthToBuyText(),
                    String.format(Locale.ROOT, "%.0f cm", lay.spread().width().cm()),
                    (lay.spread().folded() ? "folded" : "single")
                            + (lay.spread().nap() ? ", with nap" : ", without nap"),
                    tenths(lay.length()),
                    tenths(lay.lowerBound()),
                    lay.use().text());
        }
        text.add(table);
        for (Lay lay : lays) {
            if (lay.spread().shrinksAlong().percent() > 0) {
                text.wrapped(
                        "  ",
                        "wash the " + lay.cloth().use() + " before it is cut: it is bought longer by the "
                                + lay.spread().shrinksAlong().text() + " that it is taken to shrink");
            }
        }
    }

    private void assembly(AssemblyOrder order) {
        text.head("Sewing order: in the round, small parts first; stitches of ISO 4915, seam classes of ISO 4916");
        Columns table = Columns.of("  ", "rlllrl");
        table.row("", "seam", "rule", "stitch", "class", "notches to match");
        for (Operation operation : order.operations()) {
            table.row(
                    "" + operation.number(),
                    operation.name() + (operation.inTheRound() ? ", in the round" : ""),
                    Reports.rule(operation.work()),
                    operation.stitchText(),
                    "" + operation.seamClass().number(),
                    notches(operation));
        }
        text.add(table);
    }

    /** The names of the first notches, as many as there is room for. */
    private static String notches(Operation operation) {
        List<String> names = operation.notches().stream().map(Name::value).toList();
        String all = String.join(", ", names);
        return names.size() <= 1 || (names.size() <= MOST_NOTCHES && all.length() <= ROOM_FOR_NOTCHES)
                ? all
                : names.get(0) + " and " + (names.size() - 1) + " more";
    }

    static String tenths(Length length) {
        return length.text().replace(" mm", "");
    }

    private static String signed(Length length) {
        String text = tenths(length);
        return length.mm() > 0 && !text.equals("0.0") ? "+" + text : text;
    }

    private static String hundredths(Length length) {
        return String.format(Locale.ROOT, "%.2f", Math.round(length.mm() * 100) / 100.0 + 0.0);
    }

    private static String degrees(Angle angle) {
        return String.format(Locale.ROOT, "%.1f", Math.round(angle.degrees() * 10) / 10.0 + 0.0);
    }
}
