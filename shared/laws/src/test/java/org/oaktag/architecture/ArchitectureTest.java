package org.oaktag.architecture;

import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.lang.ArchRule;
import java.util.stream.Stream;
import org.junit.jupiter.api.Named;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class ArchitectureTest {
    private static final String HOUSE = "org.oaktag";
    private static final String BREACHES = "org.oaktag.architecture.breaches";

    private static final JavaClasses HOUSE_CLASSES = new ClassFileImporter()
            .withImportOption(new ImportOption.DoNotIncludeTests())
            .importPackages(HOUSE);
    private static final JavaClasses BREACHES_CLASSES = new ClassFileImporter().importPackages(BREACHES);

    @ParameterizedTest
    @MethodSource("rulesOfTheHouse")
    void every_rule_holds_in_the_house(ArchRule rule) {
        rule.check(HOUSE_CLASSES);
    }

    @ParameterizedTest
    @MethodSource("rulesOfTheBreaches")
    void every_rule_notices_a_breach(ArchRule rule) {
        assertThat(rule.evaluate(BREACHES_CLASSES).getFailureReport().getDetails())
                .isNotEmpty();
    }

    static Stream<Named<ArchRule>> rulesOfTheHouse() {
        return new HouseRules(HOUSE).all().map(rule -> Named.of(rule.getDescription(), rule));
    }

    static Stream<Named<ArchRule>> rulesOfTheBreaches() {
        return new HouseRules(BREACHES).all().map(rule -> Named.of(rule.getDescription(), rule));
    }
}
