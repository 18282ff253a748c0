package org.oaktag.architecture.breaches.blocks;

import org.oaktag.architecture.breaches.skirt.SkirtToLookAt;

public record TopLooksAside(SkirtToLookAt other) {}
