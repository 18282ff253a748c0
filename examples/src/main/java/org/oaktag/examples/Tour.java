package org.oaktag.examples;

import static org.oaktag.adjustments.Armholes.lowerArmhole;
import static org.oaktag.adjustments.Bands.hemBand;
import static org.oaktag.adjustments.Bands.ribCuff;
import static org.oaktag.adjustments.Bodies.straightenSideSeams;
import static org.oaktag.adjustments.Hoods.hood;
import static org.oaktag.adjustments.Necklines.lowerFrontNeckline;
import static org.oaktag.adjustments.Necklines.widenNeckline;
import static org.oaktag.adjustments.Shoulders.dropShoulder;
import static org.oaktag.adjustments.Sleeves.fitCapToArmhole;
import static org.oaktag.adjustments.Sleeves.straightenSleeve;
import static org.oaktag.measure.Length.cm;
import static org.oaktag.measure.Length.inches;
import static org.oaktag.measure.Length.mm;
import static org.oaktag.measure.Percent.percent;

import java.io.IOException;
import java.io.PrintStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.oaktag.adjust.History;
import org.oaktag.adjust.Recipe;
import org.oaktag.blocks.HoodShape;
import org.oaktag.blocks.KnitTop;
import org.oaktag.blocks.TopEase;
import org.oaktag.blocks.TopNames;
import org.oaktag.body.BodyMeasurements;
import org.oaktag.body.Figure;
import org.oaktag.export.pdf.PdfPages;
import org.oaktag.export.sheet.Paper;
import org.oaktag.export.sheet.Printout;
import org.oaktag.export.sheet.Tiling;
import org.oaktag.export.svg.SvgSheet;
import org.oaktag.garment.Allowances;
import org.oaktag.garment.Cloth;
import org.oaktag.garment.CutList;
import org.oaktag.garment.Garment;
import org.oaktag.garment.WalkedSeam;
import org.oaktag.lay.Effort;
import org.oaktag.lay.Lay;
import org.oaktag.lay.Spread;

/** From a tape measure to a printed pattern in ten steps: what {@code docs/tour.md} walks through. */
public final class Tour {

    private static final Cloth FLEECE = Cloth.knit("brushed fleece, night blue", percent(45));
    private static final Cloth RIB = Cloth.rib("2 x 2 rib, dark blue", percent(90));

    private final PrintStream out;

    private Tour(PrintStream out) {
        this.out = out;
    }

    static BodyMeasurements measured() {
        return BodyMeasurements.builder()
                .name("Juno")
                .figure(Figure.WOMAN)
                .bustGirth(cm(94))
                .waistGirth(cm(76))
                .hipGirth(cm(101.5))
                .neckBaseGirth(cm(37.2))
                .shoulderLength(inches(5.375))
                .upperArmGirth(cm(29.8))
                .wristGirth(cm(15.4))
                .height(cm(165))
                .build();
    }

    private void derived(BodyMeasurements body) {
        body.derived()
                .forEach(rule ->
                        out.println(rule.measure().label() + " " + rule.value().text() + " = " + rule.rule()));
    }

    /** Returns the basic block of a body. */
    static Garment drafted(BodyMeasurements body) {
        return KnitTop.draft(body, TopEase.standard(), FLEECE);
    }

    private void finished(Garment garment) {
        garment.measures()
                .forEach(measure ->
                        measure.taken(garment).ifPresent(length -> out.println(measure.name() + " " + length.text())));
    }

    /** Returns the block loosened: its neckline, shoulder, armhole and side. */
    static Garment loosened(Garment block) {
        return block.adjust(widenNeckline(mm(22)))
                .adjust(lowerFrontNeckline(mm(30)))
                .adjust(dropShoulder(mm(25)))
                .adjust(lowerArmhole(mm(12)))
                .adjust(straightenSideSeams());
    }

    private void walk(Garment garment) {
        for (WalkedSeam seam : garment.walkSeams().untrue()) {
            out.println(seam.seam().name() + ": " + seam.mend().orElseThrow());
        }
        out.println(garment.walkSeams().isTrue() ? "every seam is true" : "not every seam is true");
    }

    /** Returns the garment with its cap fitted again and its sleeve straight. */
    static Garment fitted(Garment loosened) {
        return loosened.adjust(fitCapToArmhole(mm(6))).adjust(straightenSleeve(cm(23.2)));
    }

    /** Returns the garment with its bands, its cuffs and its hood. */
    static Garment made(Garment fitted) {
        return fitted.adjust(hemBand(cm(6), cm(3)))
                .adjust(ribCuff(cm(7), RIB))
                .adjust(hood(HoodShape.threePanel()).lapped(cm(5)));
    }

    private void why(Garment garment) {
        History.of(garment).why().stream()
                .filter(reason -> reason.step().equals("fit a rib cuff"))
                .forEach(reason -> out.println(reason.sentence()));
    }

    /** Returns the whole tour as a recipe, to be played on any body. */
    static Recipe recipe() {
        return Recipe.of(
                "hooded top",
                widenNeckline(mm(22)),
                lowerFrontNeckline(mm(30)),
                dropShoulder(mm(25)),
                lowerArmhole(mm(12)),
                straightenSideSeams(),
                fitCapToArmhole(mm(6)),
                straightenSleeve(cm(23.2)),
                hemBand(cm(6), cm(3)),
                ribCuff(cm(7), RIB),
                hood(HoodShape.threePanel()).lapped(cm(5)));
    }

    private void onAnother(BodyMeasurements body) {
        Garment theirs = drafted(body).adjust(recipe());
        out.println(theirs.wearer().name() + ": chest "
                + theirs.finished(TopNames.CHEST_GIRTH).text() + ", "
                + (theirs.walkSeams().isTrue() ? "every seam is true" : "not every seam is true"));
    }

    private void drawn(Garment top, Path folder) throws IOException {
        Allowances allowances = KnitTop.allowances(top);
        SvgSheet.flat(top).writeTo(folder.resolve("flat.svg"));
        SvgSheet.pattern(top, allowances).writeTo(folder.resolve("pattern.svg"));
        Printout sheets = Printout.tiled(top, allowances, Tiling.on(Paper.A4));
        Files.write(folder.resolve("pattern-a4.pdf"), PdfPages.of(sheets).bytes());
        out.println(sheets.sheets().size() + " sheets of A4");
    }

    private void laid(Garment hers, Garment his) {
        CutList both = CutList.of(List.of(hers, his));
        Allowances allowances = KnitTop.allowances(hers);
        Lay lay = Lay.of(both, FLEECE, allowances, Spread.single(cm(150)).withNap(), Effort.standard());
        out.println(both.items().size() + " pieces to cut, " + lay.pieces().size() + " on the fleece: buy "
                + lay.lengthToBuy().text());
    }

    /**
     * Takes the tour.
     *
     * @param out where it says what it finds
     * @param folder where it writes its sheets; must exist
     * @throws IOException if a sheet cannot be written
     */
    public static void take(PrintStream out, Path folder) throws IOException {
        Tour tour = new Tour(out);
        BodyMeasurements body = measured();
        tour.derived(body);
        Garment block = drafted(body);
        tour.finished(block);
        Garment loosened = loosened(block);
        tour.walk(loosened);
        Garment fitted = fitted(loosened);
        tour.walk(fitted);
        Garment top = made(fitted).titled("hooded top");
        tour.walk(top);
        tour.why(top);
        for (BodyMeasurements other : BodyFile.nightCrew().bodies()) {
            tour.onAnother(other);
        }
        tour.drawn(top, folder);
        tour.laid(top, drafted(BodyFile.nightCrew().body("Bram")).adjust(recipe()));
    }

    /**
     * Takes the tour, its sheets written to a folder of their own.
     *
     * @throws IOException if a sheet cannot be written
     */
    public static void main(String[] args) throws IOException {
        take(System.out, Files.createDirectories(Path.of(args.length > 0 ? args[0] : "tour")));
    }
}
