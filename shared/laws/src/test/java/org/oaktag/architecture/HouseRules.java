package org.oaktag.architecture;

import static com.tngtech.archunit.base.DescribedPredicate.describe;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAnyPackage;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.fields;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.methods;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noMethods;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaModifier;
import com.tngtech.archunit.lang.ArchRule;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * The rules of a house, stated for any root package so that they can also be tried on one that breaks them.
 *
 * @param root the package under which the floors lie
 */
record HouseRules(String root) {
    /** From the ground up; packages of one floor may see each other, but not in a circle. The root holds exceptions. */
    private static final List<List<String>> FLOORS = List.of(
            List.of(""),
            List.of(".geometry.."),
            List.of(".measure.."),
            List.of(".garment.."),
            List.of(".adjust.."),
            List.of(".body.."),
            List.of(".block..", ".draft.."),
            List.of(".blocks..", ".adjustments..", ".skirt..", ".lay..", ".sewing.."),
            List.of(".catalogue.."),
            List.of(".export..", ".recipe.."),
            List.of(".examples.."));

    /** The rooms of each family of garments. */
    private static final List<String> TOP = List.of(".blocks..", ".adjustments..");

    private static final List<String> SKIRT = List.of(".skirt..");

    private static final int CORE = 5;
    private static final int BELOW_EXPORT = 9;
    private static final int LIBRARY = 10;
    private static final int ALL = 11;

    private static final String COMMONS_MATH = "org.apache.commons.math3";

    Stream<ArchRule> all() {
        return Stream.concat(
                IntStream.range(0, ALL - 1).mapToObj(this::floorSeesNothingAboveIt),
                Stream.of(
                        packagesFormNoCircle(),
                        familySeesNoOther(TOP, SKIRT),
                        familySeesNoOther(SKIRT, TOP),
                        coreStandsOnCommonsMathAlone(),
                        commonsMathStaysOutOfSight(),
                        noInputOrOutputBelowExport(),
                        noDrawingToolkit(),
                        surroundingsAreNotConsulted(),
                        staticFieldsAreConstants(),
                        publicClassesAreFinal(),
                        classesAreNamedForWhatTheyAre(),
                        methodsAreNoGettersOrSetters(),
                        packagesSayWhatTheyHold()));
    }

    private ArchRule floorSeesNothingAboveIt(int floor) {
        return noClasses()
                .that(areOnFloors(floor, floor + 1))
                .should()
                .dependOnClassesThat(areOnFloors(floor + 1, ALL))
                .as(FLOORS.get(floor) + " sees nothing above it");
    }

    private ArchRule familySeesNoOther(List<String> family, List<String> other) {
        return noClasses()
                .that(resideInAnyPackage(inHouse(family)))
                .should()
                .dependOnClassesThat(resideInAnyPackage(inHouse(other)))
                .as("family " + family + " does not see " + other);
    }

    private String[] inHouse(List<String> rooms) {
        return rooms.stream().map(room -> root + room).toArray(String[]::new);
    }

    private ArchRule packagesFormNoCircle() {
        return slices().matching(root + ".(**)").should().beFreeOfCycles().as("packages form no circle");
    }

    private ArchRule coreStandsOnCommonsMathAlone() {
        DescribedPredicate<JavaClass> allowed = areOnFloors(0, CORE)
                .or(resideInAnyPackage("java..", COMMONS_MATH + "..", "org.jspecify.annotations.."))
                .or(describe(
                        "are primitive", type -> type.getBaseComponentType().isPrimitive()))
                .as("are core, java.*, commons-math3 or JSpecify");
        return classes()
                .that(areOnFloors(0, CORE))
                .should()
                .onlyDependOnClassesThat(allowed)
                .as("core stands on commons-math3 alone");
    }

    private ArchRule commonsMathStaysOutOfSight() {
        return methods()
                .that()
                .arePublic()
                .and()
                .areDeclaredInClassesThat(areOnFloors(0, LIBRARY))
                .should(HouseConditions.notMention(COMMONS_MATH))
                .as("commons-math3 stays out of public signatures");
    }

    private ArchRule noInputOrOutputBelowExport() {
        return noClasses()
                .that(areOnFloors(0, BELOW_EXPORT))
                .should()
                .dependOnClassesThat(
                        resideInAnyPackage("java.io..", "java.nio.file..", "java.nio.channels..", "java.net.."))
                .as("nothing below export reads or writes");
    }

    private ArchRule noDrawingToolkit() {
        return noClasses()
                .that(areOnFloors(0, ALL))
                .should()
                .dependOnClassesThat(resideInAnyPackage("java.awt..", "javax.swing..", "javax.imageio.."))
                .as("nothing draws with AWT");
    }

    private ArchRule surroundingsAreNotConsulted() {
        return noClasses()
                .that(areOnFloors(0, LIBRARY))
                .should(HouseConditions.consultTheirSurroundings())
                .as("the library asks for no time, locale, machine or chance");
    }

    private ArchRule staticFieldsAreConstants() {
        return fields().that()
                .areStatic()
                .and()
                .doNotHaveModifier(JavaModifier.SYNTHETIC)
                .and()
                .areDeclaredInClassesThat(areOnFloors(0, ALL))
                .should()
                .beFinal()
                .andShould(HouseConditions.holdNoState())
                .as("static fields are constants");
    }

    private ArchRule publicClassesAreFinal() {
        return classes()
                .that()
                .arePublic()
                .and(areOnFloors(0, LIBRARY))
                .and(describe("are not abstract", type -> !HouseConditions.isAbstract(type)))
                .and()
                .areNotAssignableTo(Throwable.class)
                .should(HouseConditions.notBeExtendable())
                .as("public classes are final");
    }

    private ArchRule classesAreNamedForWhatTheyAre() {
        return noClasses()
                .that(areOnFloors(0, ALL))
                .should()
                .haveNameMatching(".*(Util|Utils|Helper|Helpers|Manager)")
                .as("no class should be named Utils, Helper or Manager: name it for what it is");
    }

    private ArchRule methodsAreNoGettersOrSetters() {
        return noMethods()
                .that()
                .areDeclaredInClassesThat(areOnFloors(0, LIBRARY))
                .and()
                .arePublic()
                .should()
                .haveNameMatching("(get|set)[A-Z].*")
                .as("no public method should be a getter or a setter: x(), withX(..)");
    }

    private ArchRule packagesSayWhatTheyHold() {
        return classes()
                .that(areOnFloors(0, ALL))
                .should(HouseConditions.lieInANullMarkedPackage())
                .as("every package has a @NullMarked package-info");
    }

    private DescribedPredicate<JavaClass> areOnFloors(int from, int to) {
        String[] packages = FLOORS.subList(from, to).stream()
                .flatMap(List::stream)
                .map(root::concat)
                .toArray(String[]::new);
        return resideInAnyPackage(packages);
    }
}
