package org.oaktag.export.svg;

import java.util.ArrayList;
import java.util.List;
import org.oaktag.garment.Garment;

/** What is seen of a top that is laid flat with its front or its back up, what lies below first. */
final class FlatView {

    private FlatView() {}

    static List<FlatShape> of(Garment garment, boolean front) {
        FlatBody body = new FlatBody(garment, front);
        List<FlatShape> shapes = new ArrayList<>();
        boolean hooded = FlatHood.isOn(garment);
        if (hooded && front) {
            shapes.add(FlatHood.of(garment).inside(body.neckline()));
        }
        if (front && !hooded) {
            FlatShape behind = new FlatBody(garment, false).body();
            shapes.add(FlatShape.inside(behind.outline(), behind.cloth()));
        }
        for (FlatShape part : new FlatSleeve(garment, body, front).parts()) {
            shapes.add(part);
            shapes.add(part.mirrored());
        }
        shapes.add(body.body());
        body.band().ifPresent(shapes::add);
        if (hooded) {
            FlatHood hood = FlatHood.of(garment);
            shapes.addAll(front ? hood.fronts(body.neckline()) : hood.back(body.neckline()));
        }
        return shapes;
    }
}
