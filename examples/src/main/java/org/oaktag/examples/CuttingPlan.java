package org.oaktag.examples;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.oaktag.export.sheet.Cloths;
import org.oaktag.export.svg.SvgSheet;
import org.oaktag.garment.Allowances;
import org.oaktag.garment.CutList;
import org.oaktag.garment.Garment;
import org.oaktag.lay.Effort;
import org.oaktag.lay.Lay;

/**
 * What is cut from which cloth, and how it lies there.
 *
 * @param list the pieces to be cut
 * @param lays one for each cloth
 */
record CuttingPlan(CutList list, List<Lay> lays) {

    CuttingPlan {
        lays = List.copyOf(lays);
    }

    static CuttingPlan of(Garment top, Allowances allowances) {
        CutList list = CutList.of(top);
        return new CuttingPlan(
                list,
                list.cloths().stream()
                        .map(cloth -> Lay.of(list, cloth, allowances, HoodedTop.spread(cloth), Effort.standard()))
                        .toList());
    }

    /** Returns the drawing of each lay by the name of its file; cloths of one use are numbered. */
    Map<String, String> files(Garment top) {
        Map<String, String> files = new LinkedHashMap<>();
        for (Lay lay : lays) {
            String name = "lay-" + lay.cloth().use().hyphenated();
            String file = name + ".svg";
            for (int i = 2; files.containsKey(file); i++) {
                file = name + "-" + i + ".svg";
            }
            files.put(file, SvgSheet.lay(lay, Cloths.of(top)).text());
        }
        return files;
    }
}
