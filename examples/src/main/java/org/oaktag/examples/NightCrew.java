package org.oaktag.examples;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import org.oaktag.body.BodyMeasurements;
import org.oaktag.export.sheet.Nest;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/**
 * The main job: from a body to a hooded top, every seam walked, every piece drawn true to scale; from several bodies
 * to one pattern in all their sizes.
 *
 * <p>It ends with 0 where the top was made, with 1 where something was refused (one sentence says what, and no file is
 * left behind), and with 2 where its arguments made no sense.
 */
@Command(
        name = "night-crew",
        mixinStandardHelpOptions = true,
        description =
                "Drafts, adjusts and draws the hooded top of the night crew for one body, or for several as sizes over each other.",
        exitCodeListHeading = "%nExit codes:%n",
        exitCodeList = {"0:the top was made", "1:something was refused; nothing was written", "2:wrong arguments"})
public final class NightCrew implements Callable<Integer> {

    @Option(names = "--bodies", paramLabel = "FILE", description = "a CSV file of bodies; if left out, the night crew")
    private @Nullable Path bodies;

    @Option(
            names = "--confirmed",
            description =
                    "take every measure of the file as it is: ask about none that is far from what the others lead"
                            + " to expect")
    private boolean confirmed;

    @Option(
            names = "--body",
            paramLabel = "NAME",
            description = {
                "whose body; if left out, the first of the file.",
                "Given 2 to 6 times, the top is drawn in all these sizes over each other, and what is of one size alone"
                        + " (its lays, seams, steps) goes into a folder of its own."
            })
    private List<String> names = new ArrayList<>();

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
        BodyFile file = Optional.ofNullable(bodies)
                .map(read -> BodyFile.read(read, confirmed))
                .orElseGet(BodyFile::nightCrew);
        List<BodyMeasurements> measured = names.isEmpty()
                ? file.bodies().subList(0, 1)
                : names.stream().map(file::body).toList();
        List<MadeTop> tops = measured.stream()
                .map(body -> MadeTop.of(body, HoodedTop.recipe(drawstring)))
                .toList();
        PlainText account = tops.size() == 1 ? alone(tops.get(0), folder) : nested(tops, folder);
        spec.commandLine().getOut().print(account.text());
        spec.commandLine().getOut().flush();
        return CommandLine.ExitCode.OK;
    }

    private PlainText alone(MadeTop top, ResultFolder folder) {
        PatternFiles pattern = PatternFiles.of(top.garment(), top.allowances());
        CuttingPlan plan = top.plan();
        Map<String, byte[]> files = new LinkedHashMap<>();
        files.put("pattern.svg", MadeTop.utf8(pattern.drawn().text()));
        files.put("flat.svg", top.flat());
        files.putAll(pattern.printed());
        files.putAll(top.files(plan));
        folder.write(files);
        PlainText account = Account.of(top, plan);
        account.head("Files in " + out);
        account.wrapped("  ", String.join("  ", files.keySet()));
        pattern.tellMissing(account);
        return account;
    }

    /**
     * What the sizes share is drawn once; what is of one size alone goes into a folder of its own, as if it had been
     * made alone.
     */
    private PlainText nested(List<MadeTop> tops, ResultFolder folder) {
        Nest nest = new Nest(tops.stream()
                .map(top -> new Nest.Size(top.body().name(), top.garment()))
                .toList());
        PatternFiles pattern = PatternFiles.of(nest, tops.get(0).allowances());
        List<CuttingPlan> plans = tops.stream().map(MadeTop::plan).toList();
        Map<String, byte[]> files = new LinkedHashMap<>();
        files.put("pattern.svg", MadeTop.utf8(pattern.drawn().text()));
        files.putAll(pattern.printed());
        PlainText account = SizesAccount.of(nest, tops, plans);
        account.head("Files in " + out);
        account.wrapped("  ", "all sizes over each other: " + String.join("  ", files.keySet()));
        List<String> folders = new ArrayList<>();
        for (int i = 0; i < tops.size(); i++) {
            MadeTop top = tops.get(i);
            CuttingPlan plan = plans.get(i);
            String own = SizesAccount.folder(i, top) + "/";
            folders.add(own);
            files.put(own + "account.txt", MadeTop.utf8(Account.of(top, plan).text()));
            files.put(own + "flat.svg", top.flat());
            top.files(plan).forEach((name, bytes) -> files.put(own + name, bytes));
        }
        account.wrapped("  ", "each size alone, its account, lays, tables and steps: " + String.join("  ", folders));
        folder.write(files);
        pattern.tellMissing(account);
        return account;
    }
}
