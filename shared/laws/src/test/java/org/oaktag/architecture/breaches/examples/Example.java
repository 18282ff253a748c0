package org.oaktag.architecture.breaches.examples;

import org.oaktag.architecture.breaches.geometry.GeometryLooksUp;

/** Closes the circle. */
public record Example(Class<GeometryLooksUp> ground) {}
