package org.oaktag.examples;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.apache.commons.csv.CSVFormat;
import org.oaktag.garment.Change;
import org.oaktag.garment.CutList;
import org.oaktag.garment.EdgeRef;
import org.oaktag.garment.FinishedMeasure;
import org.oaktag.garment.Garment;
import org.oaktag.garment.Moved;
import org.oaktag.garment.Name;
import org.oaktag.garment.WalkedSeam;
import org.oaktag.measure.Length;
import org.oaktag.sewing.AssemblyOrder;
import org.oaktag.sewing.Operation;

/** The results as tables for other programs: comma-separated, millimetres to 1e-4, a dot for decimals. */
final class Reports {

    private Reports() {}

    /** Returns every seam, walked. */
    static String seams(Garment garment) {
        return table(
                List.of(
                        "seam",
                        "side_a",
                        "side_b",
                        "length_a_mm",
                        "length_b_mm",
                        "rule",
                        "expected_difference_mm",
                        "difference_mm",
                        "true"),
                garment.walkSeams().seams().stream().map(Reports::seam).toList());
    }

    private static List<String> seam(WalkedSeam walked) {
        return List.of(
                walked.seam().name().value(),
                walked.seam().a().text(),
                walked.seam().b().text(),
                mm(walked.lengthA()),
                mm(walked.lengthB()),
                walked.seam().rule().word(),
                mm(walked.expectedDifference()),
                mm(walked.difference()),
                String.valueOf(walked.isTrue()));
    }

    /** Returns everything that every step moved, the draft's own measures first. */
    static String changes(List<Change> history) {
        return table(
                List.of("step", "quantity", "before_mm", "after_mm"),
                StepName.of(history).stream()
                        .flatMap(step -> step.change().moved().stream().map(moved -> moved(step.file(), moved)))
                        .toList());
    }

    private static List<String> moved(String step, Moved moved) {
        return List.of(step, moved.watched().text(), mm(moved.before()), mm(moved.after()));
    }

    /** Returns the finished measures beside the body's, and which of those were derived, not taken. */
    static String finished(Garment garment) {
        return table(
                List.of("measure", "body_mm", "garment_mm", "ease_mm", "body_measure", "body_derived"),
                garment.measures().stream()
                        .flatMap(measure ->
                                measure.taken(garment).stream().map(finished -> finished(garment, measure, finished)))
                        .toList());
    }

    private static List<String> finished(Garment garment, FinishedMeasure measure, Length finished) {
        Optional<Length> body = measure.body().map(garment.wearer()::measure);
        return List.of(
                measure.name().value(),
                mm(body),
                mm(finished),
                mm(body.map(finished::minus)),
                measure.body().map(Name::value).orElse(""),
                measure.body()
                        .map(garment.wearer()::isDerived)
                        .map(String::valueOf)
                        .orElse(""));
    }

    /** Returns what to cut from which cloth. */
    static String cutList(CutList list) {
        return table(
                List.of("number", "piece", "cloth", "count", "mirrored", "on_fold"),
                list.items().stream().map(Reports::cut).toList());
    }

    private static List<String> cut(CutList.Item item) {
        return List.of(
                String.valueOf(item.number()),
                item.piece().name().value(),
                item.piece().cloth().use().value(),
                String.valueOf(item.count()),
                String.valueOf(item.isMirrored()),
                String.valueOf(item.isOnFold()));
    }

    /** Returns the seams in the order in which they are sewn, with stitch, seam class and notches. */
    static String assembly(AssemblyOrder order) {
        return table(
                List.of(
                        "step",
                        "seam",
                        "side_a",
                        "side_b",
                        "rule",
                        "in_the_round",
                        "stitch_iso_4915",
                        "seam_class_iso_4916",
                        "notches"),
                order.operations().stream().map(Reports::operation).toList());
    }

    private static List<String> operation(Operation operation) {
        List<String> sides = sides(operation.work());
        return List.of(
                String.valueOf(operation.number()),
                operation.name().value(),
                sides.get(0),
                sides.get(1),
                rule(operation.work()),
                String.valueOf(operation.inTheRound()),
                operation.stitchText(),
                String.valueOf(operation.seamClass().number()),
                operation.notches().stream().map(Name::hyphenated).collect(Collectors.joining(" ")));
    }

    private static List<String> sides(Operation.Work work) {
        if (work instanceof Operation.Join join) {
            return List.of(join.a().text(), join.b().text());
        }
        if (work instanceof Operation.LayOn laid) {
            return List.of(laid.shell().value(), laid.piece().value());
        }
        if (work instanceof Operation.Hem hem) {
            return List.of(ids(hem.edges()), "");
        }
        if (work instanceof Operation.Neaten neaten) {
            return List.of(ids(neaten.edges()), "");
        }
        if (work instanceof Operation.Close close) {
            return List.of(close.edge().id(), "");
        }
        if (work instanceof Operation.Gather gather) {
            return List.of(gather.side().text(), "");
        }
        if (work instanceof Operation.Fuse fuse) {
            return List.of(fuse.interfacing().value(), "");
        }
        return work instanceof Operation.Fold fold ? List.of(fold.piece().value(), "") : List.of("", "");
    }

    private static String ids(List<EdgeRef> edges) {
        return edges.stream().map(EdgeRef::id).collect(Collectors.joining(" "));
    }

    /** Returns the word for how one side is made to fit the other, or what else is done. */
    static String rule(Operation.Work work) {
        if (work instanceof Operation.Join join) {
            return join.rule().word();
        }
        if (work instanceof Operation.LayOn) {
            return "laid on";
        }
        if (work instanceof Operation.Fold) {
            return "folded";
        }
        if (work instanceof Operation.Close) {
            return "closed";
        }
        if (work instanceof Operation.Fuse) {
            return "fused";
        }
        if (work instanceof Operation.Gather) {
            return "drawn up";
        }
        return work instanceof Operation.Neaten ? "neatened" : "turned back";
    }

    private static String mm(Optional<Length> length) {
        return length.map(Reports::mm).orElse("");
    }

    private static String mm(Length length) {
        // Adding zero turns the -0.0 of a rounded difference into 0.0.
        return String.format(Locale.ROOT, "%.4f", Math.rint(length.mm() * 1e4) / 1e4 + 0.0);
    }

    private static String table(List<String> head, List<List<String>> rows) {
        return Stream.concat(Stream.of(head), rows.stream())
                .map(row -> CSVFormat.RFC4180.format(row.toArray()) + "\n")
                .collect(Collectors.joining());
    }
}
