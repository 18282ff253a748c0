package org.oaktag.examples.embed.service;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.Arrays;
import java.util.Optional;
import org.oaktag.blocks.KnitTop;
import org.oaktag.export.pdf.PdfPages;
import org.oaktag.export.sheet.Paper;
import org.oaktag.export.sheet.Printout;
import org.oaktag.export.sheet.Tiling;
import org.oaktag.export.svg.SvgSheet;
import org.oaktag.garment.Garment;
import org.oaktag.garment.WalkedSeam;

/** What can be asked for, by the path it is asked for under. */
enum Drawing {
    PATTERN_SVG("/pattern.svg") {
        @Override
        Answer of(Garment garment) {
            return Answer.text(
                    SVG, SvgSheet.pattern(garment, KnitTop.allowances(garment)).text());
        }
    },
    FLAT_SVG("/flat.svg") {
        @Override
        Answer of(Garment garment) {
            return Answer.text(SVG, SvgSheet.flat(garment).text());
        }
    },
    PATTERN_PDF("/pattern.pdf") {
        @Override
        Answer of(Garment garment) {
            Printout pages = Printout.tiled(garment, KnitTop.allowances(garment), Tiling.on(Paper.A4));
            return new Answer(200, "application/pdf", PdfPages.of(pages).bytes());
        }
    },
    SEAMS_JSON("/seams.json") {
        @Override
        Answer of(Garment garment) {
            return Answer.json(200, seams(garment));
        }
    };

    private static final String SVG = "image/svg+xml";

    private final String path;

    Drawing(String path) {
        this.path = path;
    }

    abstract Answer of(Garment garment);

    String path() {
        return path;
    }

    static Optional<Drawing> at(String path) {
        return Arrays.stream(values()).filter(each -> each.path.equals(path)).findFirst();
    }

    private static ObjectNode seams(Garment garment) {
        ObjectNode walk = Answer.JSON.createObjectNode().put("title", garment.title());
        walk.put("true", garment.walkSeams().isTrue());
        ArrayNode seams = walk.putArray("seams");
        for (WalkedSeam seam : garment.walkSeams().seams()) {
            ObjectNode each = seams.addObject().put("seam", seam.seam().name().value());
            each.put("a", seam.seam().a().text()).put("a_mm", seam.lengthA().mm());
            each.put("b", seam.seam().b().text()).put("b_mm", seam.lengthB().mm());
            each.put("rule", seam.seam().rule().text()).put("true", seam.isTrue());
            seam.mend().ifPresent(mend -> each.put("mend", mend));
        }
        return walk;
    }
}
