package org.oaktag.testkit.bodies;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.oaktag.body.Figure;

class WriteAdultsTest {

    @TempDir
    private Path folder;

    @Test
    void women_and_men_stand_by_turns_as_the_survey_draws_them_and_fewer_are_the_first_of_more() throws IOException {
        List<String> ten = written("10");
        assertThat(ten).hasSize(11);
        assertThat(written("5")).isEqualTo(ten.subList(0, 6));
        assertThat(ten.get(0)).startsWith("name,figure,bust_girth_mm,").endsWith(",height_mm");
        assertThat(ten.get(1)).startsWith("adult 1,woman,").endsWith(stature(Figure.WOMAN, 0));
        assertThat(ten.get(4)).startsWith("adult 4,man,").endsWith(stature(Figure.MAN, 1));
    }

    @Test
    void what_is_no_number_of_adults_is_refused() {
        assertThatThrownBy(() -> WriteAdults.main(new String[] {"many", "adults.csv"}))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("100000 adults.csv");
    }

    private static String stature(Figure figure, int which) {
        return String.format(
                java.util.Locale.ROOT,
                ",%.1f",
                SurveyPopulation.of(figure)
                        .draw(1)
                        .skip(which)
                        .findFirst()
                        .orElseThrow()
                        .mm(SurveyMeasure.STATURE));
    }

    private List<String> written(String count) throws IOException {
        Path file = folder.resolve("adults.csv");
        WriteAdults.main(new String[] {count, file.toString()});
        return Files.readAllLines(file);
    }
}
