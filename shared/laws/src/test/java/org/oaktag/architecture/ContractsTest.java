package org.oaktag.architecture;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.fields;
import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import java.lang.reflect.Constructor;
import java.lang.reflect.Executable;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.Method;
import java.lang.reflect.Modifier;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.oaktag.adjust.Step;
import org.oaktag.examples.HoodedTop;
import org.oaktag.export.svg.SvgSheet;
import org.oaktag.garment.Allowances;
import org.oaktag.garment.Garment;
import org.oaktag.geometry.Path;

/** The contracts of {@code docs/contracts.md}, as far as a program can ask for them. */
class ContractsTest {

    private static final JavaClasses LIBRARY = new ClassFileImporter()
            .withImportOption(new ImportOption.DoNotIncludeTests())
            .importPackages(
                    "org.oaktag.geometry",
                    "org.oaktag.measure",
                    "org.oaktag.garment",
                    "org.oaktag.adjust",
                    "org.oaktag.body",
                    "org.oaktag.blocks",
                    "org.oaktag.adjustments",
                    "org.oaktag.export.svg",
                    "org.oaktag.export.sheet",
                    "org.oaktag.export.pdf",
                    "org.oaktag.recipe");

    private final Samples samples = new Samples();

    /** Every constructor and static method that works with samples is called again with null for each of them in turn. */
    @Test
    @SuppressWarnings("NullAway") // null is what is tried here
    void null_ends_in_a_null_pointer_exception_at_once_or_on_first_use_and_in_nothing_else() {
        List<String> wrong = new ArrayList<>();
        int atOnce = 0;
        int asked = 0;
        for (Executable called : makers()) {
            Optional<Object[]> arguments = arguments(called);
            if (arguments.isEmpty() || !(outcome(called, arguments.get()) instanceof Returned)) {
                continue;
            }
            for (int i = 0; i < called.getParameterCount(); i++) {
                if (!called.getParameterTypes()[i].isPrimitive()) {
                    Object[] withNull = arguments.get().clone();
                    withNull[i] = null;
                    Object outcome = outcome(called, withNull);
                    asked++;
                    atOnce += outcome instanceof NullPointerException ? 1 : 0;
                    if (outcome instanceof Returned returned && !isRefusedOnUse(returned.value())) {
                        wrong.add(called + " takes null for parameter " + i + " for good");
                    } else if (!(outcome instanceof Returned) && !(outcome instanceof NullPointerException)) {
                        wrong.add(called + " answers null for parameter " + i + " with " + outcome);
                    }
                }
            }
        }
        assertThat(String.join("\n", wrong)).isEmpty();
        assertThat(asked).as("parameters asked").isGreaterThan(200);
        assertThat(atOnce).as("refused at once").isGreaterThan(asked / 3);
    }

    /** A step is used by playing it; any other value is used by whoever asks it for its parts. */
    private static boolean isRefusedOnUse(Object value) {
        if (!(value instanceof Step step)) {
            return true;
        }
        try {
            step.applyTo(Samples.TOP).history().forEach(change -> change.title());
            SvgSheet.pattern(step.applyTo(Samples.TOP), Allowances.industryKnit(Samples.TOP));
            return false;
        } catch (NullPointerException e) {
            return true;
        } catch (org.oaktag.PatternException e) {
            // Refused for another reason before it came to that.
            return true;
        }
    }

    @Test
    void every_field_of_a_public_type_is_final_but_those_of_a_builder_and_what_is_remembered() {
        fields().that()
                .areDeclaredInClassesThat()
                .arePublic()
                .and()
                .areDeclaredInClassesThat()
                .haveSimpleNameNotEndingWith("Builder")
                .and()
                .doNotHaveFullName(Garment.class.getName() + ".walk")
                .and()
                .doNotHaveFullName(Garment.class.getName() + ".taken")
                .and()
                .doNotHaveFullName(Path.class.getName() + ".lengths")
                .should()
                .beFinal()
                .check(LIBRARY);
    }

    @Test
    void one_block_played_walked_and_drawn_by_many_threads_gives_each_the_same() throws Exception {
        Garment block = HoodedTop.block(Samples.BODY);
        String alone = made(HoodedTop.block(Samples.BODY));
        ExecutorService threads = Executors.newFixedThreadPool(8);
        try {
            List<Future<String>> together = IntStream.range(0, 16)
                    .mapToObj(i -> threads.submit(() -> made(block)))
                    .toList();
            for (Future<String> each : together) {
                assertThat(each.get()).isEqualTo(alone);
            }
        } finally {
            threads.shutdown();
        }
    }

    private static String made(Garment block) {
        Garment top = HoodedTop.recipe(false).applyTo(block);
        return block.walkSeams().text()
                + top.walkSeams().text()
                + top.history()
                + SvgSheet.pattern(top, Allowances.industryKnit(top)).text();
    }

    private record Returned(Object value) {}

    @SuppressWarnings("NullAway") // a static method is invoked on nothing
    private static Object outcome(Executable called, Object[] arguments) {
        try {
            return new Returned(
                    called instanceof Constructor<?> constructor
                            ? constructor.newInstance(arguments)
                            : ((Method) called).invoke(null, arguments));
        } catch (InvocationTargetException e) {
            return e.getCause();
        } catch (ReflectiveOperationException e) {
            throw new LinkageError(called + " cannot be called", e);
        }
    }

    private Optional<Object[]> arguments(Executable called) {
        List<Object> arguments = new ArrayList<>();
        for (Class<?> type : called.getParameterTypes()) {
            Optional<Object> sample = samples.of(type);
            if (sample.isEmpty()) {
                return Optional.empty();
            }
            arguments.add(sample.get());
        }
        return Optional.of(arguments.toArray());
    }

    private static List<Executable> makers() {
        return publicTypes().stream()
                .filter(type -> !type.isEnum())
                .flatMap(type -> Stream.concat(
                        Modifier.isAbstract(type.getModifiers()) ? Stream.empty() : Stream.of(type.getConstructors()),
                        Stream.of(type.getMethods())
                                .filter(method -> Modifier.isStatic(method.getModifiers())
                                        && method.getDeclaringClass() == type
                                        && !method.isSynthetic())))
                .filter(called -> called.getParameterCount() > 0)
                .sorted(java.util.Comparator.comparing(Executable::toString))
                .toList();
    }

    static List<Class<?>> publicTypes() {
        return LIBRARY.stream()
                .filter(type -> type.getModifiers().contains(com.tngtech.archunit.core.domain.JavaModifier.PUBLIC))
                .sorted(java.util.Comparator.comparing(JavaClass::getName))
                .<Class<?>>map(JavaClass::reflect)
                .filter(ContractsTest::isPublicAllTheWay)
                .toList();
    }

    private static boolean isPublicAllTheWay(Class<?> type) {
        for (Class<?> each = type; each != null; each = each.getDeclaringClass()) {
            if (!Modifier.isPublic(each.getModifiers())) {
                return false;
            }
        }
        return true;
    }
}
