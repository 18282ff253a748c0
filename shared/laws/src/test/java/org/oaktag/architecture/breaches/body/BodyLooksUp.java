package org.oaktag.architecture.breaches.body;

import org.oaktag.architecture.breaches.export.ExportManager;

public record BodyLooksUp(ExportManager above) {}
