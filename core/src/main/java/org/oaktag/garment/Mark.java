package org.oaktag.garment;

import org.oaktag.geometry.Point;

/**
 * A point marked inside a piece, such as the place of an eyelet. Immutable.
 *
 * @param name what it marks
 * @param point where, in the piece's own millimetres
 */
public record Mark(Name name, Point point) {}
