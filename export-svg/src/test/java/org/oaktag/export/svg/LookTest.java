package org.oaktag.export.svg;

import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.oaktag.garment.Allowances;

class LookTest {
    @Test
    void look() throws Exception {
        var top = Fixture.top();
        SvgSheet.pattern(top, Allowances.industryKnit(top)).writeTo(Path.of("/tmp/pattern.svg"));
    }
}
