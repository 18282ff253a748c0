package org.oaktag.architecture.breaches.adjust;

import org.oaktag.architecture.breaches.blocks.BlocksLookUp;

public record AdjustLooksUp(BlocksLookUp above) {}
