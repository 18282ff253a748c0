package org.oaktag.architecture;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.fields;
import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import java.lang.reflect.Executable;
import java.lang.reflect.Modifier;
import java.util.List;
import java.util.Set;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.oaktag.blocks.KnitTop;
import org.oaktag.examples.HoodedTop;
import org.oaktag.export.svg.SvgSheet;
import org.oaktag.garment.Garment;
import org.oaktag.garment.Piece;
import org.oaktag.geometry.Path;
import org.oaktag.geometry.Region;

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
                    "org.oaktag.block",
                    "org.oaktag.catalogue",
                    "org.oaktag.draft",
                    "org.oaktag.skirt",
                    "org.oaktag.export.svg",
                    "org.oaktag.export.sheet",
                    "org.oaktag.export.pdf",
                    "org.oaktag.recipe");

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
                .doNotHaveFullName(Garment.class.getName() + ".fit")
                .and()
                .doNotHaveFullName(Garment.class.getName() + ".kept")
                .and()
                .doNotHaveFullName(Piece.class.getName() + ".outline")
                .and()
                .doNotHaveFullName(Region.Loop.class.getName() + ".outline")
                .and()
                .doNotHaveFullName(Path.class.getName() + ".lengths")
                .and()
                .doNotHaveFullName(Path.class.getName() + ".tree")
                .and()
                .doNotHaveFullName(Path.class.getName() + ".bends")
                .and()
                .doNotHaveFullName(Path.class.getName() + ".leaving")
                .and()
                .doNotHaveFullName(Path.class.getName() + ".arriving")
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
                + SvgSheet.pattern(top, KnitTop.allowances(top)).text();
    }

    static List<Executable> makers() {
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
        Set<String> exported = Exported.packages();
        return LIBRARY.stream()
                .filter(type -> type.getModifiers().contains(com.tngtech.archunit.core.domain.JavaModifier.PUBLIC))
                .sorted(java.util.Comparator.comparing(JavaClass::getName))
                .filter(type -> exported.contains(type.getPackageName()))
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
