package org.oaktag.geometry;

import java.util.AbstractList;
import java.util.List;

/** A list that counts how often a curve is taken from it. */
final class CountedCurves extends AbstractList<Curve> {
    private final List<Curve> curves;
    private int taken;

    CountedCurves(List<Curve> curves) {
        this.curves = curves;
    }

    /** Returns a path of this very list, and not of a copy. */
    Path path() {
        return new Path(this);
    }

    @Override
    public Curve get(int index) {
        taken++;
        return curves.get(index);
    }

    @Override
    public int size() {
        return curves.size();
    }

    int takenBy(Runnable question) {
        taken = 0;
        question.run();
        return taken;
    }
}
