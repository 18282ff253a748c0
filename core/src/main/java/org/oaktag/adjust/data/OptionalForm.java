package org.oaktag.adjust.data;

import java.util.Optional;

/** The form of a value that may be absent: its field is left out. */
record OptionalForm(Form of) implements Form {

    @Override
    public String suffix() {
        return of.suffix();
    }

    @Override
    public Datum.Fields schema() {
        return of.schema();
    }

    @Override
    public Datum write(Object value) {
        return of.write(((Optional<?>) value).orElseThrow());
    }

    @Override
    public Object read(String where, Datum datum) {
        return Optional.of(of.read(where, datum));
    }
}
