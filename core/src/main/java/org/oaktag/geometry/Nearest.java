package org.oaktag.geometry;

/**
 * The point of a curve that lies nearest to a given point.
 *
 * @param t its parameter, 0 to 1
 * @param point the point on the curve
 * @param distance from the given point, mm
 */
public record Nearest(double t, Point point, double distance) {}
