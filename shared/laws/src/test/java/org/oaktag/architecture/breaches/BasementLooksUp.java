package org.oaktag.architecture.breaches;

import org.oaktag.architecture.breaches.geometry.GeometryLooksUp;

record BasementLooksUp(GeometryLooksUp above) {}
