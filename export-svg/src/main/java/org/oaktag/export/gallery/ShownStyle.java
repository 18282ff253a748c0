package org.oaktag.export.gallery;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.oaktag.body.BodyMeasure;
import org.oaktag.body.BodyMeasurements;
import org.oaktag.export.drawing.ClothPaint;
import org.oaktag.export.drawing.FreeText;
import org.oaktag.export.sheet.Cloths;
import org.oaktag.export.svg.SvgSheet;
import org.oaktag.export.xml.Decimal;
import org.oaktag.export.xml.XmlWriter;
import org.oaktag.garment.Change;
import org.oaktag.garment.Cloth;
import org.oaktag.garment.FinishedMeasure;
import org.oaktag.garment.Garment;
import org.oaktag.garment.Name;
import org.oaktag.garment.Piece;
import org.oaktag.garment.TakenMeasure;
import org.oaktag.measure.Length;

/**
 * A style with its garment and its sizes made.
 *
 * @param style what is shown
 * @param garment the garment on its body
 * @param sizes the garment in each size
 * @param front its front
 * @param back its back
 */
record ShownStyle(GalleryStyle style, Garment garment, List<Garment> sizes, FlatPicture front, FlatPicture back) {

    static ShownStyle of(GalleryStyle style) {
        Garment garment = style.style().on(style.body());
        List<Garment> sizes =
                style.sizes().stream().map(body -> style.style().on(body)).toList();
        String title = FreeText.shown(garment.title());
        return new ShownStyle(
                style,
                garment,
                sizes,
                FlatPicture.of(SvgSheet.front(garment), title + " laid flat, front"),
                FlatPicture.of(SvgSheet.back(garment), title + " laid flat, back"));
    }

    /** Returns a number for the style sheet. */
    static String tenths(double value) {
        return Decimal.text(Math.round(value * 10) / 10.0);
    }

    String title() {
        return FreeText.shown(garment.title());
    }

    String id() {
        return title().toLowerCase(Locale.ROOT).replaceAll("[^\\p{L}\\p{Nd}]+", "-");
    }

    int garments() {
        return 1 + sizes.size();
    }

    int seams() {
        return garment.seams().size()
                + sizes.stream().mapToInt(each -> each.seams().size()).sum();
    }

    List<String> cautions() {
        return garment.cautions();
    }

    void write(XmlWriter xml, double widest) {
        xml.begin("article").attribute("id", id());
        xml.begin("div").attribute("class", "mat");
        front.write(xml, "flat", front.share(widest));
        back.write(xml, "flat", back.share(widest));
        xml.end();
        xml.begin("div").attribute("class", "told");
        xml.begin("h2").text(title()).end();
        xml.begin("p")
                .attribute("class", "note")
                .text(FreeText.shown(style.note()))
                .end();
        cloths(xml);
        xml.begin("p").attribute("class", "facts").text(facts()).end();
        sizes(xml);
        steps(xml);
        xml.end().end();
    }

    private String facts() {
        long untrue = Stream.concat(Stream.of(garment), sizes.stream())
                .mapToLong(each -> each.walkSeams().untrue().size())
                .sum();
        int cut = garment.pieces().stream()
                .map(Piece::cut)
                .mapToInt(each -> each.count())
                .sum();
        return garment.pieces().size() + " pattern pieces, " + cut + " to cut; "
                + garment.seams().size() + " seams, "
                + (untrue == 0 ? "every one true in every size" : untrue + " not true over all sizes");
    }

    private void cloths(XmlWriter xml) {
        xml.begin("ul").attribute("class", "cloths");
        for (Map.Entry<Cloth, ClothPaint> each : Cloths.of(garment).paints().entrySet()) {
            xml.begin("li");
            xml.begin("span")
                    .attribute("class", "swatch")
                    .attribute("style", "background:" + each.getValue().colour())
                    .text("")
                    .end();
            xml.text(FreeText.shown(each.getKey().description())).end();
        }
        xml.end();
    }

    private void sizes(XmlWriter xml) {
        if (sizes.isEmpty()) {
            return;
        }
        List<Name> tabled = style.style().block().tabled();
        List<Name> measures = (tabled.isEmpty()
                        ? garment.measures().stream().map(FinishedMeasure::name).toList()
                        : tabled)
                .stream()
                        .filter(name -> sizes.stream()
                                .anyMatch(size -> taken(size, name).isPresent()))
                        .toList();
        xml.begin("div")
                .attribute("class", "scroll")
                .attribute("role", "group")
                .attribute("aria-label", "Sizes of " + title())
                .attribute("tabindex", "0");
        xml.begin("table");
        xml.begin("caption").text("Finished measures by size, cm").end();
        xml.begin("thead").begin("tr");
        List<BodyMeasure> told = told();
        List<String> heads = new ArrayList<>(List.of("Body, "
                + told.stream()
                        .map(measure -> measure.label().replace(" girth", ""))
                        .collect(Collectors.joining(" × "))));
        measures.forEach(name -> heads.add(name.value()));
        for (String head : heads) {
            xml.begin("th").attribute("scope", "col").text(head).end();
        }
        xml.end().end().begin("tbody");
        for (int i = 0; i < sizes.size(); i++) {
            BodyMeasurements body = style.sizes().get(i);
            xml.begin("tr");
            if (body.bustGirth().equals(style.body().bustGirth())) {
                xml.attribute("class", "shown");
            }
            xml.begin("th")
                    .attribute("scope", "row")
                    .text(told.stream()
                            .map(measure -> cm(body.measure(measure)))
                            .collect(Collectors.joining(" × ")))
                    .end();
            for (Name measure : measures) {
                xml.begin("td")
                        .text(taken(sizes.get(i), measure).map(ShownStyle::cm).orElse("–"))
                        .end();
            }
            xml.end();
        }
        xml.end().end().end();
    }

    /** Returns the measures by which a body is told: the girths that its block needs, and the height. */
    private List<BodyMeasure> told() {
        return style.style().block().needs().stream()
                .filter(measure -> measure.label().endsWith(" girth") || measure == BodyMeasure.HEIGHT)
                .sorted()
                .toList();
    }

    private static Optional<Length> taken(Garment garment, Name measure) {
        return garment.findMeasure(measure).flatMap(TakenMeasure::length);
    }

    private static String cm(Length length) {
        return String.format(Locale.ROOT, "%.1f", length.cm());
    }

    private void steps(XmlWriter xml) {
        xml.begin("details");
        xml.begin("summary").text("How it is made").end();
        xml.begin("ol");
        Optional<Change> draft = garment.history().stream().findFirst();
        for (Change change : garment.history()) {
            xml.begin("li")
                    .text(FreeText.shown(draft.filter(change::equals).isPresent() ? change.step() : change.title()))
                    .end();
        }
        xml.end().end();
    }
}
