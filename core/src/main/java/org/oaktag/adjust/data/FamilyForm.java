package org.oaktag.adjust.data;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.oaktag.PatternException;
import org.oaktag.garment.Spelling;

/**
 * The form of a sealed family of records: the fields of the one that it is, and its kind.
 *
 * @param members the form of each member by its kind
 */
record FamilyForm(Map<String, RecordForm> members) implements Form {

    private static final String KIND = "kind";

    static FamilyForm of(Class<?> sealed) {
        Map<String, RecordForm> members = new LinkedHashMap<>();
        for (Class<?> member : sealed.getPermittedSubclasses()) {
            if (!member.isRecord()) {
                throw new IllegalArgumentException("values of type " + sealed.getName() + " cannot be written as data: "
                        + member.getName() + " is no record");
            }
            members.put(Form.words(member.getSimpleName()), RecordForm.of(member.asSubclass(Record.class)));
        }
        return new FamilyForm(members);
    }

    @Override
    public Datum.Fields schema() {
        Map<String, Datum.Fields> schemas = new LinkedHashMap<>();
        members.forEach((kind, member) -> schemas.put(kind, member.schema()));
        return Schema.by(KIND, schemas);
    }

    @Override
    public Datum write(Object value) {
        String kind = Form.words(value.getClass().getSimpleName());
        return member(kind).write(value).after(KIND, new Datum.Text(kind));
    }

    @Override
    public Object read(String where, Datum datum) {
        if (!(datum instanceof Datum.Fields fields)) {
            throw Form.wrong(where, "fields in braces", datum);
        }
        List<String> known = List.copyOf(members.keySet());
        Datum kind = fields.values().get(KIND);
        if (kind == null) {
            throw PatternException.of(where, "must say its '" + KIND + "', one of " + known, "none", "");
        }
        String written = LeafForm.textOf(where + " " + KIND, kind);
        if (!members.containsKey(written)) {
            throw Spelling.unknown(where + " " + KIND, written, known);
        }
        return member(written).read(where, fields.without(KIND));
    }

    private RecordForm member(String kind) {
        RecordForm member = members.get(kind);
        if (member == null) {
            throw new IllegalArgumentException("no member of the family is a '" + kind + "', only " + members.keySet());
        }
        return member;
    }
}
