package org.oaktag.architecture.breaches.skirt;

import org.oaktag.architecture.breaches.blocks.TopToLookAt;

public record SkirtLooksAside(TopToLookAt other) {}
