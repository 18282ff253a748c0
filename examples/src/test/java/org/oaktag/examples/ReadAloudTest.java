package org.oaktag.examples;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.Test;
import org.oaktag.blocks.TopNames;
import org.oaktag.garment.Garment;

class ReadAloudTest {

    @Test
    void says_of_every_seam_that_it_is_true() {
        ByteArrayOutputStream said = new ByteArrayOutputStream();
        Garment top = ReadAloud.hoodedTop(new PrintStream(said, true, StandardCharsets.UTF_8));

        assertThat(top.walkSeams().isTrue()).isTrue();
        assertThat(top.finished(TopNames.CHEST_GIRTH).mm())
                .as("bust 940 + ease 80")
                .isCloseTo(1020, within(1e-6));
        assertThat(said.toString(StandardCharsets.UTF_8))
                .startsWith("chest 1020.0 mm")
                .contains("hood neck is true")
                .doesNotContain("too");
        assertThat(said.toString(StandardCharsets.UTF_8).lines())
                .hasSize(1 + top.seams().size());
    }
}
