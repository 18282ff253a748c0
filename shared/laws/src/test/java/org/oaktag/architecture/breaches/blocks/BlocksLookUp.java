package org.oaktag.architecture.breaches.blocks;

import org.oaktag.architecture.breaches.export.ExportManager;

public record BlocksLookUp(ExportManager above) {}
