package org.oaktag.examples;

import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.oaktag.adjust.Recipe;
import org.oaktag.blocks.KnitTop;
import org.oaktag.body.BodyMeasurements;
import org.oaktag.export.svg.SvgSheet;
import org.oaktag.garment.Allowances;
import org.oaktag.garment.Garment;
import org.oaktag.sewing.AssemblyOrder;

/**
 * The hooded top of one body, with the way to it.
 *
 * @param body for whom
 * @param played the steps as they were played
 */
record MadeTop(BodyMeasurements body, List<Recipe.Played> played) {

    MadeTop {
        played = List.copyOf(played);
    }

    /**
     * Makes the top.
     *
     * @throws org.oaktag.PatternException if the measures allow no block, or a step is refused
     */
    static MadeTop of(BodyMeasurements body, Recipe recipe) {
        return new MadeTop(body, recipe.play(HoodedTop.block(body)));
    }

    Garment garment() {
        return played.get(played.size() - 1).after();
    }

    Allowances allowances() {
        return KnitTop.allowances(garment());
    }

    CuttingPlan plan() {
        return CuttingPlan.of(garment(), allowances());
    }

    byte[] flat() {
        return utf8(SvgSheet.flat(garment()).text());
    }

    /** Returns every file that tells of this top alone, the flat drawing apart, by its name. */
    Map<String, byte[]> files(CuttingPlan plan) {
        Garment top = garment();
        Map<String, byte[]> files = new LinkedHashMap<>();
        files.put("seams.csv", utf8(Reports.seams(top)));
        files.put("changes.csv", utf8(Reports.changes(top.history())));
        files.put("finished.csv", utf8(Reports.finished(top)));
        files.put("cut-list.csv", utf8(Reports.cutList(plan.list())));
        files.put("assembly.csv", utf8(Reports.assembly(AssemblyOrder.of(top))));
        plan.files(top).forEach((name, text) -> files.put(name, utf8(text)));
        List<StepName> steps = StepName.of(top.history());
        int first = steps.size() - played.size();
        for (int i = 0; i < played.size(); i++) {
            StepName step = steps.get(first + i);
            files.put(
                    "steps/" + step.file() + ".svg",
                    utf8(SvgSheet.step(step.number(), played.get(i)).text()));
        }
        return files;
    }

    static byte[] utf8(String text) {
        return text.getBytes(StandardCharsets.UTF_8);
    }
}
