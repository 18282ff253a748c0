package org.oaktag.examples.lessons;

import org.oaktag.export.lesson.Term;
import org.oaktag.garment.End;
import org.oaktag.garment.Garment;
import org.oaktag.garment.Name;
import org.oaktag.geometry.Point;
import org.oaktag.measure.Length;

/** The terms that most formulas need: edges and finished measures, before the step and after it. */
final class Terms {

    private Terms() {}

    static Term edgeBefore(String name, Name piece, Name edge) {
        return Term.length(name, played -> edge(played.before(), piece, edge));
    }

    static Term edgeAfter(String name, Name piece, Name edge) {
        return Term.length(name, played -> edge(played.after(), piece, edge));
    }

    static Term before(String name, Name measure) {
        return Term.length(name, played -> played.before().finished(measure));
    }

    static Term after(String name, Name measure) {
        return Term.length(name, played -> played.after().finished(measure));
    }

    static Length edge(Garment garment, Name piece, Name edge) {
        return garment.piece(piece).edge(edge).length();
    }

    static Point corner(Garment garment, Name piece, Name edge, End end) {
        return garment.piece(piece).corner(edge, end);
    }

    static Term number(double value) {
        return Term.number(value);
    }
}
