package org.oaktag.recipe.json;

import java.util.Map;
import org.oaktag.PatternException;
import org.oaktag.adjust.data.Datum;
import org.oaktag.adjust.data.Schema;

/**
 * What a text says it is, in its first two fields.
 *
 * @param name the field {@code format}
 * @param version the field {@code version}
 */
record Format(String name, int version) {

    private static final String FORMAT = "format";
    private static final String VERSION = "version";

    /** Returns the JSON Schema (draft 2020-12) of such a text, of what is behind these two fields. */
    Datum.Fields schema(Datum.Fields content) {
        Datum.Fields version = new Datum.Fields(Map.of("const", new Datum.Numeral(this.version)));
        return Schema.before(Schema.before(content, VERSION, version), FORMAT, Schema.only(name))
                .after("title", new Datum.Text(name + ", version " + this.version))
                .after("$schema", new Datum.Text("https://json-schema.org/draft/2020-12/schema"));
    }

    Datum.Fields before(Datum.Fields content) {
        return content.after(VERSION, new Datum.Numeral(version)).after(FORMAT, new Datum.Text(name));
    }

    /**
     * Returns the fields that follow.
     *
     * @throws PatternException if the text is of another format or another version
     */
    Datum.Fields content(Datum.Fields all) {
        check(all, FORMAT, new Datum.Text(name), "");
        check(all, VERSION, new Datum.Numeral(version), "take a version of the library that reads it");
        return all.without(FORMAT).without(VERSION);
    }

    private void check(Datum.Fields all, String field, Datum wanted, String remedy) {
        Datum found = all.values().get(field);
        if (!wanted.equals(found)) {
            throw PatternException.of(
                    "field '" + field + "'",
                    "must be " + (wanted instanceof Datum.Numeral ? String.valueOf(version) : wanted.text()),
                    found == null ? "none" : found.text(),
                    found == null ? "add it" : remedy);
        }
    }
}
