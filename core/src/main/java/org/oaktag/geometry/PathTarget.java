package org.oaktag.geometry;

import java.util.List;

/**
 * A smooth path to be fitted, by nearly its length: evenly in the parameter within each curve, so that no inverse is
 * needed.
 */
final class PathTarget implements SmoothTarget {
    private final List<Curve> curves;
    private final double[] starts;

    PathTarget(Path path) {
        this.curves = path.curves();
        this.starts = new double[curves.size() + 1];
        for (int i = 0; i < curves.size(); i++) {
            starts[i + 1] = path.distanceAt(new Path.Location(i, 1));
        }
    }

    private int indexAt(double s) {
        int i = 0;
        while (i + 1 < curves.size() && s > starts[i + 1]) {
            i++;
        }
        return i;
    }

    private double parameterAt(int i, double s) {
        return Math.min(Math.max((s - starts[i]) / (starts[i + 1] - starts[i]), 0), 1);
    }

    @Override
    public void frameAt(double s, double[] frame) {
        int i = indexAt(s);
        Cubic.from(curves.get(i)).fillFrame(parameterAt(i, s), frame);
    }

    @Override
    public double speedAt(double s) {
        int i = indexAt(s);
        return Cubic.from(curves.get(i)).speedAt(parameterAt(i, s)) / (starts[i + 1] - starts[i]);
    }
}
