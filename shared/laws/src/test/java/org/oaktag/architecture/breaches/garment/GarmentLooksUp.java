package org.oaktag.architecture.breaches.garment;

import java.nio.file.Path;
import org.oaktag.architecture.breaches.adjust.AdjustLooksUp;

/** Also knows of files. */
public record GarmentLooksUp(AdjustLooksUp above, Path file) {}
