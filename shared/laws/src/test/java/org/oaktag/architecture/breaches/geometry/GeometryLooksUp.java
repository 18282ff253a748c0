package org.oaktag.architecture.breaches.geometry;

import java.awt.geom.CubicCurve2D;
import org.apache.commons.math3.analysis.UnivariateFunction;
import org.assertj.core.data.Offset;
import org.oaktag.architecture.breaches.measure.MeasureLooksUp;

/** Also leans on a library that core must not know, draws with AWT, and has no package-info. */
public record GeometryLooksUp(MeasureLooksUp above, CubicCurve2D drawn, Offset<Double> near) {
    public double at(UnivariateFunction speed) {
        return speed.value(0);
    }
}
