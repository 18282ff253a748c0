package org.oaktag.architecture;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * How many public types a user of each module sees. The numbers may only go down: who takes a type away writes the new
 * number here, and who adds one takes another away or says in {@code docs/decisions} why not.
 */
class PublicTypesTest {

    @ParameterizedTest
    @CsvSource({"core, 121", "blocks, 104", "export-svg, 37", "export-pdf, 1", "recipe-json, 2"})
    void a_module_shows_no_more_types_than_are_written_here(String module, int most) {
        Set<String> types = new TreeSet<>();
        Exported.packages(module).forEach(name -> types.addAll(Exported.types(module, name)));
        assertThat(types).as("public types of %s: %s", module, types).hasSizeLessThanOrEqualTo(most);
    }

    @Test
    void what_is_public_is_found_and_what_is_not_is_left_out() {
        assertThat(Exported.types("core", "org.oaktag.measure"))
                .contains("org.oaktag.measure.Length", "org.oaktag.measure.Angle")
                .allMatch(name -> name.startsWith("org.oaktag.measure."));
        assertThat(Exported.types("core", "org.oaktag.garment"))
                .contains("org.oaktag.garment.Piece")
                .doesNotContain("org.oaktag.garment.Names", "org.oaktag.garment.package-info");
    }
}
