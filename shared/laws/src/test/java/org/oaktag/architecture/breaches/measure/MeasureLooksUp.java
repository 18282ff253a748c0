package org.oaktag.architecture.breaches.measure;

import org.oaktag.architecture.breaches.garment.GarmentLooksUp;

public record MeasureLooksUp(GarmentLooksUp above) {}
