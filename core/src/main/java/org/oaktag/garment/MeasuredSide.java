package org.oaktag.garment;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.oaktag.measure.Length;

/** A side of a seam laid out straight: its length, and how far along it its notches lie. */
record MeasuredSide(double length, List<Place> places) {

    private static final Name START = Name.of("start");
    private static final Name END = Name.of("end");
    private static final Comparator<Place> ALONG =
            Comparator.comparingDouble(Place::at).thenComparing(Place::notch);

    /** A notch and how far it lies from the start of the side, in millimetres. */
    record Place(Name notch, double at) {}

    static MeasuredSide of(Garment garment, SeamSide side) {
        List<Place> places = new ArrayList<>();
        double sewn = 0;
        List<SeamSide.Run> runs = side.runs();
        for (int i = 0; i < runs.size(); i++) {
            SeamSide.Run run = runs.get(i);
            Piece piece = garment.piece(run.edge().piece());
            double length = piece.path(run.edge().edge()).length();
            List<Notch> notches = piece.notches();
            for (int k = 0; k < notches.size(); k++) {
                Notch notch = notches.get(k);
                if (notch.edge().equals(run.edge().edge())) {
                    double fromStart = notch.fromStart(length);
                    places.add(new Place(notch.name(), sewn + (run.backwards() ? length - fromStart : fromStart)));
                }
            }
            sewn += length;
        }
        places.sort(ALONG);
        return new MeasuredSide(sewn, places);
    }

    /** Parts both sides at the notches that they share and says of each part whether it obeys the rule. */
    static List<WalkedSpan> spans(SeamRule rule, MeasuredSide a, MeasuredSide b) {
        List<WalkedSpan> spans = new ArrayList<>();
        Optional<SeamRule.Span> eased = rule instanceof SeamRule.Eased ease ? ease.within() : Optional.empty();
        boolean inside = eased.isPresent() ? eased.get().from().isEmpty() : rule instanceof SeamRule.Eased;
        Place before = new Place(START, 0);
        Place beforeB = before;
        for (Place place : a.places) {
            Optional<Place> found = b.find(place.notch());
            if (found.isEmpty()) {
                continue;
            }
            Place placeB = found.get();
            spans.add(span(rule, inside, before, place, beforeB, placeB));
            if (eased.isPresent()) {
                inside = inside
                        ? !eased.get().to().equals(Optional.of(place.notch()))
                        : eased.get().from().equals(Optional.of(place.notch()));
            }
            before = place;
            beforeB = placeB;
        }
        spans.add(span(rule, inside, before, new Place(END, a.length), beforeB, new Place(END, b.length)));
        return spans;
    }

    private static WalkedSpan span(SeamRule rule, boolean eased, Place fromA, Place toA, Place fromB, Place toB) {
        double a = toA.at() - fromA.at();
        double b = toB.at() - fromB.at();
        boolean mustAgree = rule instanceof SeamRule.Flat || (rule instanceof SeamRule.Eased && !eased);
        boolean isTrue = !mustAgree || Math.abs(b - a) <= WalkedSeam.TOLERANCE.mm();
        return new WalkedSpan(fromA.notch().value(), toA.notch().value(), Length.mm(a), Length.mm(b), eased, isTrue);
    }

    private Optional<Place> find(Name notch) {
        for (int i = 0; i < places.size(); i++) {
            if (places.get(i).notch().equals(notch)) {
                return Optional.of(places.get(i));
            }
        }
        return Optional.empty();
    }
}
