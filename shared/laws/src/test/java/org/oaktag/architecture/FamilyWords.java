package org.oaktag.architecture;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** The words of which only a family of garments knows what they mean, looked for in sources. Comments may say them. */
final class FamilyWords {

    private static final Set<String> WORDS = Set.of(
            "armhole",
            "bodice",
            "cap",
            "collar",
            "crotch",
            "cuff",
            "gusset",
            "hood",
            "neck",
            "neckband",
            "neckline",
            "placket",
            "pouch",
            "raglan",
            "shoulder",
            "skirt",
            "sleeve",
            "trouser",
            "underarm",
            "waistband",
            "yoke");

    private static final String STRING = "\"\"\".*?\"\"\"|\"(?:\\\\.|[^\"\\\\])*\"|'(?:\\\\.|[^'\\\\])*'";
    private static final Pattern STRING_OR_COMMENT =
            Pattern.compile("(" + STRING + ")|/\\*.*?\\*/|//[^\\n]*", Pattern.DOTALL);

    /** A word begins at a capital after a small letter, or before one. */
    private static final Pattern WORD = Pattern.compile("[A-Z]+(?![a-z])|[A-Z]?[a-z]+");

    private FamilyWords() {}

    /** Returns the words of a family in identifiers and strings. */
    static Set<String> inSource(String source) {
        String code =
                STRING_OR_COMMENT.matcher(source).replaceAll(found -> found.group(1) == null ? " " : quoted(found));
        Set<String> found = new TreeSet<>();
        WORD.matcher(code).results().map(MatchResult::group).forEach(word -> {
            String small = word.toLowerCase(Locale.ROOT);
            String single = small.endsWith("s") ? small.substring(0, small.length() - 1) : small;
            if (WORDS.contains(single)) {
                found.add(single);
            }
        });
        return found;
    }

    private static String quoted(MatchResult found) {
        return Matcher.quoteReplacement(found.group(1));
    }

    /** Returns the files below a folder that have such words in their name or their code, each with its words. */
    static List<String> below(Path folder) {
        try (Stream<Path> files = Files.walk(folder)) {
            return files.filter(file -> file.toString().endsWith(".java"))
                    .sorted()
                    .flatMap(file -> words(file).stream().map(word -> file.getFileName() + ": " + word))
                    .toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static Set<String> words(Path file) {
        try {
            Set<String> words = new TreeSet<>(inSource(Files.readString(file)));
            words.addAll(inSource(file.getFileName().toString()));
            return words;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
