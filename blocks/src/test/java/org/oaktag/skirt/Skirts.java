package org.oaktag.skirt;

import static org.oaktag.measure.Length.mm;

import java.util.List;
import org.oaktag.body.BodyMeasurements;
import org.oaktag.body.Figure;
import org.oaktag.garment.Cloth;
import org.oaktag.garment.Garment;
import org.oaktag.garment.Note;

/**
 * The skirt that the tests shape, of the mean woman of the 1988 US Army survey (Gordon et al., NATICK/TR-89/044): waist
 * 725.5 mm, hip 966.9 mm, height 1629 mm, the waist 218 mm above the hip.
 */
final class Skirts {

    private Skirts() {}

    static Garment straight() {
        return straight(SkirtLength.KNEE);
    }

    static Garment straight(SkirtLength length) {
        return new StraightSkirt(length).draft(wearer(), SkirtEase.standard(), Cloth.woven("grey flannel"));
    }

    static BodyMeasurements wearer() {
        return BodyMeasurements.builder()
                .name("Ada")
                .figure(Figure.WOMAN)
                .waistGirth(mm(725.5))
                .hipGirth(mm(966.9))
                .waistToHip(mm(218))
                .height(mm(1629))
                .build();
    }

    /** What the last step had to say. */
    static List<String> notes(Garment garment) {
        return garment.history().get(garment.history().size() - 1).notes().stream()
                .map(Note::text)
                .toList();
    }
}
