package org.oaktag.architecture.breaches.blocks;

public record TopToLookAt(int size) {}
