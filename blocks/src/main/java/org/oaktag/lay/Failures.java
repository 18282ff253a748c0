package org.oaktag.lay;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** What was reached where not everything found room: the less overlaps, the more often it is taken up again. */
final class Failures {

    private record Failure(Placed placed, double overlap) {}

    private final Lots lots;
    private final List<Failure> failures = new ArrayList<>();

    Failures(Lots lots) {
        this.lots = lots;
    }

    void add(Placed placed, double overlap) {
        failures.add(new Failure(placed, overlap));
        failures.sort(Comparator.comparingDouble(Failure::overlap));
    }

    /** Returns a copy of one of them, the better of two drawn by lot. */
    Placed draw() {
        int size = failures.size();
        return failures.get(Math.min(lots.below(size), lots.below(size))).placed.copy();
    }
}
