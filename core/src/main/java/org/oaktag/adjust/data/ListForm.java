package org.oaktag.adjust.data;

import java.util.ArrayList;
import java.util.List;

/** The form of a list. */
record ListForm(Form of) implements Form {

    @Override
    public String suffix() {
        return of.suffix();
    }

    @Override
    public Datum.Fields schema() {
        return Schema.list(of.schema());
    }

    @Override
    public Datum write(Object value) {
        List<Datum> items = new ArrayList<>();
        for (Object each : (List<?>) value) {
            items.add(of.write(each));
        }
        return new Datum.Items(items);
    }

    @Override
    public Object read(String where, Datum datum) {
        if (!(datum instanceof Datum.Items items)) {
            throw Form.wrong(where, "a list", datum);
        }
        List<Object> values = new ArrayList<>();
        for (Datum each : items.values()) {
            values.add(of.read(where + " " + (values.size() + 1), each));
        }
        return List.copyOf(values);
    }
}
