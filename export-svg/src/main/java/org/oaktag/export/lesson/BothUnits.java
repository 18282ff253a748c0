package org.oaktag.export.lesson;

import java.util.Locale;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.oaktag.export.xml.XmlWriter;
import org.oaktag.measure.Length;

/** Writes lengths in centimetres and in inches, of which the style sheet shows one. */
final class BothUnits {

    private static final String CM = "cm";
    private static final String INCH = "in";
    private static final double CM2_PER_IN2 = 6.4516;
    private static final Pattern MEASURED = Pattern.compile("(-?\\d+(?:\\.\\d+)?) (mm\\b|cm²)");

    /** An edge as it is told by its piece, {@code "sleeve.cap-back"}. */
    private static final Pattern EDGE = Pattern.compile("([a-z]+(?:-[a-z]+)*)\\.([a-z]+(?:-[a-z]+)*)");

    private BothUnits() {}

    /** Returns a length in centimetres to a tenth of a millimetre. */
    static String metric(double mm) {
        return rounded(mm / 10) + " cm";
    }

    /** Returns a length in inches to a sixteenth. */
    static String inches(double mm) {
        return Length.mm(mm).textInInches().replace("-", "−");
    }

    private static String rounded(double value) {
        // Adding zero makes a negative zero positive.
        return String.format(Locale.ROOT, "%.2f", Math.round(value * 100) / 100.0 + 0.0)
                .replace("-", "−");
    }

    /** Writes a length, with its exact value in mm for whoever reads the page by program. */
    static void length(XmlWriter xml, double mm) {
        xml.begin("data").attribute("value", Double.toString(mm + 0.0));
        both(xml, metric(mm), inches(mm));
        xml.end();
    }

    /** Writes by how much a length has grown, with its sign. */
    static void growth(XmlWriter xml, double mm) {
        xml.begin("data").attribute("value", Double.toString(mm + 0.0));
        both(xml, signed(metric(mm)), signed(inches(mm)));
        xml.end();
    }

    private static String signed(String text) {
        return text.startsWith("−") || text.startsWith("0.00 ") || text.startsWith("0 ") ? text : "+" + text;
    }

    /** Returns a text in which every edge is told in words: {@code "sleeve.cap-back"} as {@code "sleeve cap back"}. */
    static String spoken(String text) {
        return EDGE.matcher(text)
                .replaceAll(found -> found.group().replace('.', ' ').replace('-', ' '));
    }

    /**
     * Writes a sentence of ours, in which lengths stand in mm, areas in cm², a minus between blanks, and edges by their
     * piece.
     */
    static void sentence(XmlWriter xml, String sentence) {
        String text = spoken(sentence).replace(" - ", " − ");
        Matcher matcher = MEASURED.matcher(text);
        int from = 0;
        xml.text("");
        for (MatchResult found : matcher.results().toList()) {
            xml.text(text.substring(from, found.start()));
            double value = Double.parseDouble(found.group(1));
            if (found.group(2).equals("mm")) {
                both(xml, metric(value), inches(value));
            } else {
                both(xml, found.group(), rounded(value / CM2_PER_IN2) + " in²");
            }
            from = found.end();
        }
        xml.text(text.substring(from));
    }

    /** Returns an amount of a kind as it is read in centimetres. */
    static String metric(Slider.Kind kind, double amount) {
        return kind == Slider.Kind.LENGTH ? metric(amount) : plain(kind, amount);
    }

    /** Returns an amount of a kind as it is read in inches. */
    static String inches(Slider.Kind kind, double amount) {
        return kind == Slider.Kind.LENGTH ? inches(amount) : plain(kind, amount);
    }

    private static String plain(Slider.Kind kind, double amount) {
        String number = String.format(Locale.ROOT, "%.1f", amount).replace("-", "−");
        return number + (kind == Slider.Kind.ANGLE ? "°" : " %");
    }

    /** Writes an amount of a kind. */
    static void amount(XmlWriter xml, Slider.Kind kind, double amount) {
        if (kind == Slider.Kind.LENGTH) {
            length(xml, amount);
        } else {
            xml.begin("data")
                    .attribute("value", Double.toString(amount))
                    .text(plain(kind, amount))
                    .end();
        }
    }

    private static void both(XmlWriter xml, String metric, String inches) {
        xml.begin("span").attribute("class", CM).text(metric).end();
        xml.begin("span").attribute("class", INCH).text(inches).end();
    }
}
