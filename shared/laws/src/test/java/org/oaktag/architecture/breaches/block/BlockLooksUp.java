package org.oaktag.architecture.breaches.block;

import org.oaktag.architecture.breaches.export.ExportManager;

public record BlockLooksUp(ExportManager above) {}
