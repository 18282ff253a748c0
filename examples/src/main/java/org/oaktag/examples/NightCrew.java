package org.oaktag.examples;

import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import org.oaktag.adjust.Recipe;
import org.oaktag.body.BodyMeasurements;
import org.oaktag.export.pdf.PdfPages;
import org.oaktag.export.sheet.Paper;
import org.oaktag.export.sheet.Printout;
import org.oaktag.export.sheet.Tiling;
import org.oaktag.export.svg.HtmlPages;
import org.oaktag.export.svg.SvgSheet;
import org.oaktag.garment.Allowances;
import org.oaktag.garment.Garment;
import org.oaktag.sewing.AssemblyOrder;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/**
 * The main job: from a body to a hooded top, every seam walked, every piece drawn true to scale.
 *
 * <p>It ends with 0 where the top was made, with 1 where something was refused (one sentence says what, and no file is
 * left behind), and with 2 where its arguments made no sense.
 */
@Command(
        name = "night-crew",
        mixinStandardHelpOptions = true,
        description = "Drafts, adjusts and draws the hooded top of the night crew for one body.",
        exitCodeListHeading = "%nExit codes:%n",
        exitCodeList = {"0:the top was made", "1:something was refused; nothing was written", "2:wrong arguments"})
public final class NightCrew implements Callable<Integer> {

    @Option(names = "--bodies", paramLabel = "FILE", description = "a CSV file of bodies; if left out, the night crew")
    private @Nullable Path bodies;

    @Option(names = "--body", paramLabel = "NAME", description = "whose body; if left out, the first of the file")
    private @Nullable String body;

    @Option(
            names = "--out",
            paramLabel = "DIR",
            defaultValue = "${sys:oaktag.night-crew.out:-night-crew}",
            description = "the folder for the results, made or replaced as a whole (${DEFAULT-VALUE})")
    private Path out = Path.of("night-crew");

    @Option(names = "--hood-drawstring", description = "put eyelets for a cord into the hood")
    private boolean drawstring;

    @Spec
    private CommandSpec spec = CommandSpec.create();

    /** Runs the main job. */
    public static void main(String[] args) {
        Program.main(new NightCrew(), args);
    }

    /** Runs the main job and returns its exit code. */
    static int run(PrintWriter out, PrintWriter err, String... args) {
        return Program.run(new NightCrew(), out, err, args);
    }

    @Override
    public Integer call() {
        ResultFolder folder = ResultFolder.at(out);
        BodyFile file = Optional.ofNullable(bodies).map(BodyFile::read).orElseGet(BodyFile::nightCrew);
        BodyMeasurements measured = Optional.ofNullable(body)
                .map(file::body)
                .orElseGet(() -> file.bodies().get(0));
        List<Recipe.Played> played = HoodedTop.recipe(drawstring).play(HoodedTop.block(measured));
        Garment top = played.get(played.size() - 1).after();
        Allowances allowances = Allowances.industryKnit(top);
        CuttingPlan plan = CuttingPlan.of(top, allowances);
        Printout tiled = Printout.tiled(top, allowances, Tiling.on(Paper.A4));
        SortedSet<String> notShown = new TreeSet<>();
        Map<String, byte[]> files = files(top, allowances, tiled, plan, played, notShown);
        folder.write(files);
        spec.commandLine()
                .getOut()
                .print(Account.of(
                        measured,
                        played,
                        plan,
                        out.toString(),
                        new ArrayList<>(files.keySet()),
                        tiled.leftOut(),
                        List.copyOf(notShown)));
        spec.commandLine().getOut().flush();
        return CommandLine.ExitCode.OK;
    }

    private static Map<String, byte[]> files(
            Garment top,
            Allowances allowances,
            Printout tiled,
            CuttingPlan plan,
            List<Recipe.Played> played,
            SortedSet<String> notShown) {
        Map<String, byte[]> files = new LinkedHashMap<>();
        files.put("pattern.svg", utf8(SvgSheet.pattern(top, allowances).text()));
        files.put("flat.svg", utf8(SvgSheet.flat(top).text()));
        files.put("pattern-a4.pdf", pdf(tiled, notShown));
        files.put("pattern-a4.html", utf8(HtmlPages.of(tiled).text()));
        Printout whole = Printout.whole(top, allowances, Paper.A0);
        files.put("pattern-copy-shop.pdf", pdf(whole, notShown));
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

    private static byte[] pdf(Printout printout, SortedSet<String> notShown) {
        PdfPages pages = PdfPages.of(printout);
        notShown.addAll(pages.notShown());
        return pages.bytes();
    }

    private static byte[] utf8(String text) {
        return text.getBytes(StandardCharsets.UTF_8);
    }
}
