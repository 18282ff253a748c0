package org.oaktag.guide;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/**
 * The examples in the API's documentation compile, run, and give what they say; and every public type has one; a nested
 * type is shown by that of the type around it.
 */
class JavadocExamplesTest {

    private static final List<JavadocExample.Source> LIBRARY = JavadocExample.sources();
    private static final List<JavadocExample> EXAMPLES =
            LIBRARY.stream().flatMap(source -> source.examples().stream()).toList();

    @Test
    void examples_compile_run_and_give_what_they_say() {
        CompiledExamples compiled = CompiledExamples.of(EXAMPLES, LIBRARY);
        assertThat(String.join("\n", compiled.errors())).isEmpty();
        List<String> wrong = new ArrayList<>();
        for (int i = 0; i < EXAMPLES.size(); i++) {
            try {
                compiled.example(i).run();
            } catch (Exception | AssertionError e) {
                wrong.add(EXAMPLES.get(i).where() + " " + e);
            }
        }
        assertThat(String.join("\n", wrong)).isEmpty();
    }

    @Test
    void every_public_type_has_an_example() {
        assertThat(LIBRARY)
                .filteredOn(source -> !source.publicType().isEmpty())
                .filteredOn(source -> !source.hasExampleOfItsType())
                .extracting(JavadocExample.Source::qualifiedName)
                .isEmpty();
    }

    @Test
    void a_wrong_example_is_found_out() throws ReflectiveOperationException {
        List<JavadocExample> examples = List.of(
                example("mm(25).plus(cm(5)).cm();   // = 7.5"),
                example("mm(25).plus(cm(5)).cm();   // = 7.6"),
                example("double sum = mm(25)", "        .plus(cm(5)).cm();   // = 7.6"));
        CompiledExamples compiled = CompiledExamples.of(examples, LIBRARY);
        assertThat(compiled.errors()).isEmpty();
        assertThat(outcome(compiled.example(0))).isEmpty();
        assertThat(outcome(compiled.example(1))).isEqualTo("here says \"7.6\", it is \"7.5\"");
        assertThat(outcome(compiled.example(2))).isEqualTo("here says \"7.6\", it is \"7.5\"");
        assertThat(CompiledExamples.of(List.of(example("mm(25).furlongs();")), LIBRARY)
                        .errors())
                .hasSize(1)
                .allSatisfy(error -> assertThat(error).startsWith("here ").contains("furlongs"));
    }

    private static JavadocExample example(String... code) {
        return new JavadocExample("here", "org.oaktag.measure", List.of(code), true);
    }

    private static String outcome(Scenario example) {
        try {
            example.run();
            return "";
        } catch (Exception | AssertionError e) {
            return String.valueOf(e.getMessage());
        }
    }
}
