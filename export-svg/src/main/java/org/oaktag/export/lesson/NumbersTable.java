package org.oaktag.export.lesson;

import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.oaktag.adjust.Recipe;
import org.oaktag.export.xml.XmlWriter;
import org.oaktag.garment.Change;
import org.oaktag.garment.Moved;
import org.oaktag.measure.Length;

/**
 * The quantities that a step moves, before and after it: the same ones at every position, so that they can be watched.
 */
final class NumbersTable {

    private static final int MOST_ROWS = 10;

    private final List<String> quantities;

    private NumbersTable(List<String> quantities) {
        this.quantities = quantities;
    }

    /** Chooses what moves most anywhere on the slider. */
    static NumbersTable of(List<Recipe.Played> all) {
        Map<String, Double> most = new LinkedHashMap<>();
        for (Recipe.Played played : all) {
            for (Moved moved : change(played).moved()) {
                if (!moved.watched().isOfSeam()) {
                    most.merge(moved.watched().text(), size(moved), Math::max);
                }
            }
        }
        // An edge that is a finished measure as well, as a sleeve's hem is, counts as the measure.
        most.keySet().removeIf(quantity -> {
            String spoken = BothUnits.spoken(quantity);
            return !spoken.equals(quantity) && most.containsKey(spoken);
        });
        return new NumbersTable(most.entrySet().stream()
                .sorted(Map.Entry.comparingByValue(Comparator.reverseOrder()))
                .limit(MOST_ROWS)
                .map(Map.Entry::getKey)
                .toList());
    }

    private static double size(Moved moved) {
        // What is new or gone stands behind whatever was only moved.
        return moved.by().map(by -> Math.abs(by.mm())).orElse(0.0);
    }

    static Change change(Recipe.Played played) {
        return played.after().history().get(played.after().history().size() - 1);
    }

    void write(XmlWriter xml, Recipe.Played played) {
        Map<String, Moved> moved = new LinkedHashMap<>();
        change(played).moved().forEach(each -> moved.put(each.watched().text(), each));
        xml.begin("table");
        xml.begin("caption").text("What the step moved").end();
        xml.begin("thead").begin("tr");
        for (String head : List.of("Quantity", "Before", "After", "Change")) {
            xml.begin("th").attribute("scope", "col").text(head).end();
        }
        xml.end().end().begin("tbody");
        for (String quantity : quantities) {
            xml.begin("tr").attribute("data-quantity", quantity);
            xml.begin("th")
                    .attribute("scope", "row")
                    .text(BothUnits.spoken(quantity))
                    .end();
            Optional<Moved> here = Optional.ofNullable(moved.get(quantity));
            cell(xml, here.flatMap(Moved::before), here.isEmpty() ? "same" : "none");
            cell(xml, here.flatMap(Moved::after), here.isEmpty() ? "same" : "none");
            xml.begin("td").text("");
            here.flatMap(Moved::by).ifPresentOrElse(by -> BothUnits.growth(xml, by.mm()), () -> xml.text(state(here)));
            xml.end().end();
        }
        xml.end().end();
    }

    private static String state(Optional<Moved> moved) {
        return moved.map(each -> each.after().isPresent() ? "new" : "gone").orElse("none");
    }

    private static void cell(XmlWriter xml, Optional<Length> length, String absent) {
        xml.begin("td").text("");
        length.ifPresentOrElse(each -> BothUnits.length(xml, each.mm()), () -> xml.text(absent));
        xml.end();
    }
}
