package org.oaktag.architecture;

import static org.oaktag.measure.Length.mm;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import org.oaktag.adjust.LineAcross;
import org.oaktag.adjust.Part;
import org.oaktag.adjust.Place;
import org.oaktag.adjust.Recipe;
import org.oaktag.adjust.Step;
import org.oaktag.adjustments.Necklines;
import org.oaktag.blocks.HoodShape;
import org.oaktag.blocks.KnitTop;
import org.oaktag.blocks.TopEase;
import org.oaktag.blocks.TopNames;
import org.oaktag.body.BodyMeasurements;
import org.oaktag.body.Figure;
import org.oaktag.garment.Cloth;
import org.oaktag.garment.Edge;
import org.oaktag.garment.EdgeNames;
import org.oaktag.garment.EdgeRef;
import org.oaktag.garment.Garment;
import org.oaktag.garment.Piece;
import org.oaktag.garment.SeamRule;
import org.oaktag.garment.Watched;
import org.oaktag.geometry.Bounds;
import org.oaktag.geometry.Point;
import org.oaktag.geometry.Transform;
import org.oaktag.geometry.Vector;
import org.oaktag.measure.Angle;
import org.oaktag.measure.Percent;

/** A value of each of the common types, to call a method with. */
final class Samples {

    static final BodyMeasurements BODY = BodyMeasurements.builder()
            .name("Mira")
            .figure(Figure.WOMAN)
            .bustGirth(mm(865))
            .height(mm(1780))
            .build();
    static final Cloth CLOTH = Cloth.knit("trial knit", Percent.percent(60));
    static final Garment TOP = KnitTop.draft(BODY, TopEase.standard(), CLOTH);

    private final Map<Class<?>, Object> values = new LinkedHashMap<>();

    Samples() {
        Piece front = TOP.piece(TopNames.FRONT);
        Edge hem = front.edge(EdgeNames.HEM);
        Step step = Necklines.widenNeckline(mm(10));
        List<Object> all = new ArrayList<>(List.of(
                "words",
                BODY,
                CLOTH,
                TOP,
                front,
                hem,
                hem.path(),
                front.outline(),
                hem.path().curves().get(0),
                TopNames.FRONT,
                EdgeRef.of(TopNames.FRONT, EdgeNames.HEM),
                Watched.edge(EdgeRef.of(TopNames.FRONT, EdgeNames.HEM)),
                mm(40),
                Angle.degrees(3),
                Percent.percent(40),
                TopEase.standard(),
                KnitTop.allowances(TOP),
                HoodShape.threePanel(),
                step,
                Recipe.of("trial", step),
                Place.share(EdgeNames.HEM, 0.5),
                Part.of(TopNames.FRONT, EdgeNames.TOP),
                LineAcross.straight(Place.share(EdgeNames.SIDE, 0.5), Place.share(EdgeNames.CENTRE, 0.5)),
                SeamRule.flat(),
                TOP.seams().get(0),
                TOP.seams().get(0).a(),
                TOP.walkSeams(),
                TOP.wearer(),
                front.grainline(),
                front.cut(),
                Point.of(1, 2),
                Vector.of(1, 2),
                Bounds.of(Point.of(0, 0), Point.of(5, 5)),
                Transform.IDENTITY,
                Optional.empty(),
                List.of(),
                Set.of(),
                new TreeMap<>(),
                1,
                1.0,
                1L,
                true));
        all.forEach(value -> values.put(value.getClass(), value));
    }

    /** Returns a value of a type, or empty where none is known. */
    Optional<Object> of(Class<?> type) {
        if (type.isEnum()) {
            return Optional.of(type.getEnumConstants()[0]);
        }
        Class<?> boxed = type == int.class
                ? Integer.class
                : type == double.class
                        ? Double.class
                        : type == boolean.class ? Boolean.class : type == long.class ? Long.class : type;
        return values.values().stream().filter(boxed::isInstance).findFirst();
    }
}
