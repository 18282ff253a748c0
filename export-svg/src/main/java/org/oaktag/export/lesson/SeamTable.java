package org.oaktag.export.lesson;

import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.oaktag.adjust.Recipe;
import org.oaktag.export.xml.Decimal;
import org.oaktag.export.xml.XmlWriter;
import org.oaktag.garment.Name;
import org.oaktag.garment.SeamSide;
import org.oaktag.garment.WalkedSeam;
import org.oaktag.garment.WalkedSpan;

/** The seams of the shown pieces, walked after the step: both sides, their difference, and whether they are true. */
final class SeamTable {

    private static final double WIDTH = 200;
    private static final double SIDE_A = 5;
    private static final double SIDE_B = 15;
    private static final double HEIGHT = 20;

    private final Set<Name> pieces;
    private final Map<Name, Double> longest;

    private SeamTable(Set<Name> pieces, Map<Name, Double> longest) {
        this.pieces = pieces;
        this.longest = longest;
    }

    /** Prepares the table for all positions, so that what is drawn keeps its scale. */
    static SeamTable of(List<Name> pieces, List<Recipe.Played> all) {
        Map<Name, Double> longest = new HashMap<>();
        for (Recipe.Played played : all) {
            for (WalkedSeam seam : played.after().walkSeams().seams()) {
                double length = Math.max(seam.lengthA().mm(), seam.lengthB().mm());
                longest.merge(seam.seam().name(), length, Math::max);
            }
        }
        return new SeamTable(new HashSet<>(pieces), longest);
    }

    List<WalkedSeam> seams(Recipe.Played played) {
        return played.after().walkSeams().seams().stream()
                .filter(seam -> isShown(seam.seam().a()) || isShown(seam.seam().b()))
                .toList();
    }

    private boolean isShown(SeamSide side) {
        return side.runs().stream().anyMatch(run -> pieces.contains(run.edge().piece()));
    }

    void write(XmlWriter xml, Recipe.Played played) {
        xml.begin("table");
        xml.begin("caption").text("The seams, walked after the step").end();
        xml.begin("thead").begin("tr");
        for (String head : List.of("Seam", "Side a", "Side b", "b − a", "Sewn", "Walk")) {
            xml.begin("th").attribute("scope", "col").text(head).end();
        }
        xml.end().end().begin("tbody");
        for (WalkedSeam seam : seams(played)) {
            row(xml, seam, before(played, seam.seam().name()));
        }
        xml.end().end();
    }

    private static Optional<WalkedSeam> before(Recipe.Played played, Name name) {
        return played.before().walkSeams().seams().stream()
                .filter(seam -> seam.seam().name().equals(name))
                .findFirst();
    }

    private void row(XmlWriter xml, WalkedSeam seam, Optional<WalkedSeam> before) {
        String name = seam.seam().name().value();
        xml.begin("tr").attribute("data-seam", name);
        xml.begin("th").attribute("scope", "row");
        xml.begin("button")
                .attribute("type", "button")
                .attribute("aria-pressed", "false")
                .attribute("title", "show on the pieces")
                .attribute("data-a", edges(seam.seam().a()))
                .attribute("data-b", edges(seam.seam().b()))
                .text(name)
                .end();
        walk(xml, seam);
        xml.end();
        side(xml, seam.lengthA().mm(), seam.seam().a());
        side(xml, seam.lengthB().mm(), seam.seam().b());
        xml.begin("td").text("");
        BothUnits.growth(xml, seam.difference().mm());
        xml.end();
        xml.begin("td");
        BothUnits.sentence(xml, seam.seam().rule().text());
        xml.end();
        verdict(xml, seam, before);
        xml.end();
    }

    private static void side(XmlWriter xml, double length, SeamSide side) {
        xml.begin("td").text("");
        BothUnits.length(xml, length);
        xml.begin("small")
                .text(BothUnits.spoken(side.text().replace(" ", ", ")))
                .end();
        xml.end();
    }

    private static void verdict(XmlWriter xml, WalkedSeam seam, Optional<WalkedSeam> before) {
        Optional<String> mend = seam.mend();
        xml.begin("td").attribute("class", mend.isEmpty() ? "true" : "untrue");
        xml.begin("strong").text(mend.isEmpty() ? "✓ true" : "✗ not true").end();
        mend.ifPresent(what -> {
            xml.begin("small");
            BothUnits.sentence(xml, what);
            xml.end();
        });
        if (mend.isEmpty() && before.isPresent() && !before.get().isTrue()) {
            xml.begin("small");
            BothUnits.sentence(xml, "before: " + before.get().mend().orElseThrow());
            xml.end();
        }
        xml.end();
    }

    private static String edges(SeamSide side) {
        return side.runs().stream().map(run -> run.edge().id()).collect(Collectors.joining(" "));
    }

    /** Both sides laid out straight, one below the other, with lines between the notches that meet. */
    private void walk(XmlWriter xml, WalkedSeam seam) {
        double scale = WIDTH / longest.getOrDefault(seam.seam().name(), 1.0);
        double endA = seam.lengthA().mm() * scale;
        double endB = seam.lengthB().mm() * scale;
        xml.begin("svg")
                .attribute("class", "walk")
                .attribute("viewBox", "-2 0 " + Decimal.text(WIDTH + 4) + " " + Decimal.text(HEIGHT))
                .attribute("aria-hidden", "true");
        line(xml, "a", 0, SIDE_A, endA, SIDE_A);
        line(xml, "b", 0, SIDE_B, endB, SIDE_B);
        double a = 0;
        double b = 0;
        line(xml, "m", 0, SIDE_A, 0, SIDE_B);
        for (WalkedSpan span : seam.spans()) {
            a += span.lengthA().mm() * scale;
            b += span.lengthB().mm() * scale;
            line(xml, "m", a, SIDE_A, b, SIDE_B);
        }
        xml.end();
    }

    private static void line(XmlWriter xml, String type, double x1, double y1, double x2, double y2) {
        xml.begin("path")
                .attribute("class", type)
                .attribute("d", "M" + tenths(x1) + " " + tenths(y1) + "L" + tenths(x2) + " " + tenths(y2))
                .end();
    }

    private static String tenths(double value) {
        return Decimal.text(Math.round(value * 10) / 10.0);
    }
}
