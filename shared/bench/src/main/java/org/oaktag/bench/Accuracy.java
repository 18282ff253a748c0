package org.oaktag.bench;

import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;

/** An accuracy in mm, for those that can be asked for one. */
@State(Scope.Benchmark)
public class Accuracy {
    @Param({"1e-3", "1e-6", "1e-9"})
    double mm;
}
