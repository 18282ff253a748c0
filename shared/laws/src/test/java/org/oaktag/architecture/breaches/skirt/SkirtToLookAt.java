package org.oaktag.architecture.breaches.skirt;

public record SkirtToLookAt(int size) {}
