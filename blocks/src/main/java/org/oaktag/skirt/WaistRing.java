package org.oaktag.skirt;

import java.util.ArrayList;
import java.util.List;
import org.oaktag.garment.EdgeNames;
import org.oaktag.garment.End;
import org.oaktag.garment.Garment;
import org.oaktag.garment.Name;
import org.oaktag.garment.Notch;
import org.oaktag.garment.Piece;
import org.oaktag.garment.SeamSide;

/**
 * The waist of a skirt all the way round from its opening, seen from outside from left to right, and the places that a
 * band is marked at.
 *
 * @param side the edges in order; each half comes twice
 * @param places what lies between the two ends, and how far from the left one, mm
 * @param end what lies at both ends
 * @param stand how far a button stand reaches beyond the waist at either end, mm
 */
record WaistRing(SeamSide side, List<Place> places, Name end, double stand) {

    private static final Name CENTRE_FRONT = SkirtFinishNames.CENTRE_FRONT;
    private static final Name CENTRE_BACK = Name.of("centre back");
    private static final Name LEFT = Name.of("left side");
    private static final Name RIGHT = Name.of("right side");

    /** A place on the waist. */
    record Place(Name name, double along) {}

    /** Returns the ring that opens where the skirt does: where it does not, at the back. */
    static WaistRing of(Garment garment) {
        SeamSide front = Shell.waist(garment, SkirtNames.FRONT);
        SeamSide back = Shell.waist(garment, SkirtNames.BACK);
        double ofFront = Shell.length(garment, front);
        double ofBack = Shell.length(garment, back);
        SeamSide toFront = Shell.reversed(front);
        SeamSide toBack = Shell.reversed(back);
        if (Shell.isButtoned(garment)) {
            double stand = garment.piece(SkirtNames.FRONT)
                    .path(SkirtFinishNames.STAND_TOP)
                    .length();
            SeamSide ring = SeamSide.along(SkirtNames.FRONT, SkirtFinishNames.STAND_TOP)
                    .then(front)
                    .then(toBack)
                    .then(back)
                    .then(toFront)
                    .then(SeamSide.against(SkirtNames.FRONT, SkirtFinishNames.STAND_TOP));
            return new WaistRing(
                    ring,
                    places(
                            List.of(CENTRE_FRONT, LEFT, CENTRE_BACK, RIGHT, CENTRE_FRONT.with("right")),
                            List.of(stand, ofFront, ofBack, ofBack, ofFront)),
                    CENTRE_FRONT,
                    stand);
        }
        if (opensAtSide(garment)) {
            return new WaistRing(
                    toBack.then(back).then(toFront).then(front),
                    places(List.of(CENTRE_BACK, RIGHT, CENTRE_FRONT), List.of(ofBack, ofBack, ofFront)),
                    LEFT,
                    0);
        }
        return new WaistRing(
                back.then(toFront).then(front).then(toBack),
                places(List.of(RIGHT, CENTRE_FRONT, LEFT), List.of(ofBack, ofFront, ofFront)),
                CENTRE_BACK,
                0);
    }

    /**
     * Returns a finishing of the garment with a notch at each centre that lies on the fold, where a band is matched.
     */
    static Finishing marked(Garment garment) {
        Finishing finishing = Finishing.of(garment);
        Piece front = Shell.of(garment, SkirtNames.FRONT);
        Piece back = Shell.of(garment, SkirtNames.BACK);
        if (front.isOnFold(EdgeNames.CENTRE)) {
            finishing.put(front.withNotch(Notch.single(CENTRE_FRONT, SkirtNames.WAIST, End.START, 0)));
        }
        if (back.isOnFold(EdgeNames.CENTRE)) {
            finishing.put(back.withNotch(Notch.paired(CENTRE_BACK, SkirtNames.WAIST, End.START, 0)));
        }
        return finishing;
    }

    private static boolean opensAtSide(Garment garment) {
        Piece front = garment.piece(SkirtNames.FRONT);
        return front.notch(EdgeNames.SIDE, SkirtFinishNames.ZIP_END).isPresent();
    }

    private static List<Place> places(List<Name> names, List<Double> lengths) {
        List<Place> places = new ArrayList<>();
        double along = 0;
        for (int i = 0; i < names.size(); i++) {
            along += lengths.get(i);
            places.add(new Place(names.get(i), along));
        }
        return places;
    }
}
