package org.oaktag.blocks;

import java.util.ArrayList;
import java.util.List;
import org.oaktag.garment.Aspect;
import org.oaktag.garment.FlatLay;
import org.oaktag.garment.FlatShape;
import org.oaktag.garment.Garment;

/** What is seen of a top that is laid flat with its front or its back up, what lies below first. */
record FlatTop() implements FlatLay {

    @Override
    public List<FlatShape> shapes(Garment garment, Aspect seen) {
        boolean front = seen == Aspect.FRONT;
        FlatBody body = new FlatBody(garment, front);
        List<FlatShape> shapes = new ArrayList<>();
        boolean hooded = FlatHood.isOn(garment);
        if (hooded && front) {
            shapes.add(FlatHood.of(garment).inside(body.neckline()));
        }
        if (front && !hooded) {
            FlatBody behind = new FlatBody(garment, false);
            behind.body().forEach(part -> shapes.add(FlatShape.inside(part.outline(), part.cloth())));
            body.raglan().ifPresent(sleeve -> shapes.add(body.opening(behind)));
            behind.neckband().map(FlatShape::seenInside).ifPresent(shapes::add);
            behind.armholeBand().ifPresent(band -> both(band.seenInside(), shapes));
        }
        List<FlatShape> sleeve = body.raglan()
                .map(raglan -> List.of(raglan.shape()))
                .orElseGet(() -> new FlatSleeve(garment, body, front).parts());
        sleeve.forEach(part -> both(part, shapes));
        shapes.addAll(body.body());
        body.neckband().ifPresent(shapes::add);
        body.armholeBand().ifPresent(band -> both(band, shapes));
        body.band().ifPresent(shapes::add);
        if (hooded) {
            FlatHood hood = FlatHood.of(garment);
            shapes.addAll(front ? hood.fronts(body.neckline()) : hood.back(body.neckline()));
        }
        return shapes;
    }

    private static void both(FlatShape part, List<FlatShape> shapes) {
        shapes.add(part);
        shapes.add(part.mirrored());
    }
}
