package org.oaktag.examples;

import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;
import java.util.regex.Pattern;
import org.oaktag.adjust.Recipe;
import org.oaktag.block.Style;
import org.oaktag.examples.gallery.Skirts;
import org.oaktag.examples.gallery.Wardrobe;
import org.oaktag.export.gallery.GalleryPage;
import org.oaktag.export.gallery.GalleryStyle;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** Writes the gallery of the night crew: every style, in its cloths, in five sizes. */
@Command(
        name = "gallery",
        mixinStandardHelpOptions = true,
        description = "Writes the gallery of the night crew, one page for a browser.")
public final class Gallery implements Callable<Integer> {

    private static final Pattern OURS = Pattern.compile("index\\.html");

    @Option(
            names = "--out",
            paramLabel = "DIR",
            defaultValue = "${sys:oaktag.gallery.out:-gallery}",
            description = "the folder for the page, made or replaced as a whole (${DEFAULT-VALUE})")
    private Path out = Path.of("gallery");

    @Spec
    private CommandSpec spec = CommandSpec.create();

    /** Writes the gallery. */
    public static void main(String[] args) {
        Program.main(new Gallery(), args);
    }

    /** Writes the gallery and returns the exit code. */
    static int run(PrintWriter out, PrintWriter err, String... args) {
        return Program.run(new Gallery(), out, err, args);
    }

    @Override
    public Integer call() {
        ResultFolder folder = ResultFolder.at(out, OURS);
        GalleryPage page = page();
        folder.write(Map.of("index.html", page.text().getBytes(StandardCharsets.UTF_8)));
        spec.commandLine().getOut().println(out.resolve("index.html"));
        spec.commandLine().getOut().flush();
        return CommandLine.ExitCode.OK;
    }

    /** Returns the styles, the hooded top first. */
    static List<GalleryStyle> styles() {
        BodyFile crew = BodyFile.nightCrew();
        Style hooded = HoodedTop.style();
        List<GalleryStyle> styles = new ArrayList<>();
        styles.add(GalleryStyle.of(
                hooded.with(new Recipe("Hooded top", hooded.recipe().steps())),
                crew.body("Juno"),
                "The warm layer of the night crew: a hood of three panels, lined, to be worn over a shirt in an unheated"
                        + " dome."));
        styles.addAll(Wardrobe.of(crew::body));
        styles.addAll(Skirts.of(crew::body));
        return styles;
    }

    private static GalleryPage page() {
        return GalleryPage.of(
                "Layers for a night at the telescope",
                "The observatory is cold, its crew are eight people of eight shapes, and somebody has to sew. These are"
                        + " their tops and skirts, each drafted from one body's measures and graded over five sizes.",
                styles());
    }
}
