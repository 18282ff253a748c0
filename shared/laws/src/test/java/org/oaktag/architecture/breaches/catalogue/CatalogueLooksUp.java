package org.oaktag.architecture.breaches.catalogue;

import org.oaktag.architecture.breaches.export.ExportManager;

public record CatalogueLooksUp(ExportManager above) {}
