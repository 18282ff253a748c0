package org.oaktag.guide;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.oaktag.export.lesson.Formula;
import org.oaktag.garment.WalkedSeam;

/** The page about tolerances says what the library keeps. */
class TolerancesPageTest {

    private static final Path PAGE = Path.of("../../docs/tolerances.md");

    @Test
    void the_tolerances_of_a_walked_seam_are_those_of_the_page() throws IOException {
        assertThat(Files.readString(PAGE))
                .contains("| a seam that is sewn flat | " + WalkedSeam.TOLERANCE.mm() + " mm |")
                .contains("| an outline that runs on across a seam | " + WalkedSeam.ANGLE_TOLERANCE.degrees() + "° |");
    }

    @Test
    void the_agreement_of_a_formula_is_that_of_the_page() throws IOException {
        assertThat(Files.readString(PAGE))
                .contains("| a formula of a lesson that is called exact | " + Formula.AGREEMENT + " mm |");
    }
}
