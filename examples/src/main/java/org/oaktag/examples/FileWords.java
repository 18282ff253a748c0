package org.oaktag.examples;

import java.text.Normalizer;
import java.util.Locale;

/** Text as a part of the name of a file, on any system: small letters without accents, figures, and hyphens between. */
final class FileWords {

    private FileWords() {}

    /** Returns what can be kept of a text; nothing where no letter or figure can. */
    static String of(String text) {
        return Normalizer.normalize(text, Normalizer.Form.NFD)
                .replaceAll("\\p{M}", "")
                .toLowerCase(Locale.ROOT)
                .replaceAll("[^a-z0-9]+", "-")
                .replaceAll("^-|-$", "");
    }
}
