package org.oaktag.architecture;

import static com.tngtech.archunit.base.DescribedPredicate.describe;
import static com.tngtech.archunit.lang.SimpleConditionEvent.satisfied;
import static com.tngtech.archunit.lang.SimpleConditionEvent.violated;

import com.tngtech.archunit.core.domain.AccessTarget;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaField;
import com.tngtech.archunit.core.domain.JavaMethod;
import com.tngtech.archunit.core.domain.JavaModifier;
import com.tngtech.archunit.lang.ArchCondition;
import com.tngtech.archunit.lang.ConditionEvents;
import com.tngtech.archunit.lang.conditions.ArchConditions;
import java.util.AbstractCollection;
import java.util.AbstractMap;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import java.util.Set;
import java.util.TimeZone;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.stream.Stream;
import org.jspecify.annotations.NullMarked;

/** Conditions that the rules need and ArchUnit does not bring. */
final class HouseConditions {
    /** What answers differently on another day or machine. */
    private static final Set<String> SURROUNDINGS = Set.of(
            System.class.getName() + ".currentTimeMillis",
            System.class.getName() + ".nanoTime",
            System.class.getName() + ".getenv",
            System.class.getName() + ".getProperty",
            System.class.getName() + ".lineSeparator",
            System.class.getName() + ".identityHashCode",
            Math.class.getName() + ".random",
            Locale.class.getName() + ".getDefault",
            TimeZone.class.getName() + ".getDefault",
            Random.class.getName() + ".<init>");

    /** Types whose instances change; a constant is none of them. */
    private static final List<Class<?>> CHANGING =
            List.of(AbstractCollection.class, AbstractMap.class, StringBuilder.class, ThreadLocal.class, Random.class);

    private HouseConditions() {}

    static ArchCondition<JavaMethod> notMention(String packageName) {
        return condition(
                "not mention " + packageName + " in a signature",
                method -> Stream.concat(method.getRawParameterTypes().stream(), Stream.of(method.getRawReturnType()))
                        .noneMatch(type -> type.getPackageName().startsWith(packageName)),
                method -> method.getFullName() + " mentions " + packageName);
    }

    static ArchCondition<JavaClass> consultTheirSurroundings() {
        return ArchConditions.callCodeUnitWhere(describe("asks", call -> asks(call.getTarget())))
                .as("ask for the time, the locale, the machine or chance");
    }

    private static boolean asks(AccessTarget.CodeUnitCallTarget target) {
        String owner = target.getOwner().getName();
        return SURROUNDINGS.contains(owner + "." + target.getName())
                || (owner.startsWith("java.time.") && target.getName().equals("now"));
    }

    static ArchCondition<JavaField> holdNoState() {
        return condition(
                "hold no state",
                field -> field.getRawType().isArray()
                        ? field.getModifiers().contains(JavaModifier.PRIVATE)
                        : !changes(field.getRawType()),
                field -> field.getFullName() + " can be changed from elsewhere or over time");
    }

    private static boolean changes(JavaClass type) {
        return type.getPackageName().equals("java.util.concurrent.atomic")
                || CHANGING.stream().anyMatch(type::isAssignableTo);
    }

    static boolean isAbstract(JavaClass type) {
        return type.isInterface() || type.getModifiers().contains(JavaModifier.ABSTRACT);
    }

    static ArchCondition<JavaClass> notBeExtendable() {
        return condition(
                "be final",
                type -> type.isEnum() || type.getModifiers().contains(JavaModifier.FINAL),
                type -> type.getFullName() + " can be extended");
    }

    static ArchCondition<JavaClass> lieInANullMarkedPackage() {
        return condition(
                "lie in a package whose package-info is @NullMarked",
                type -> type.getPackage().isAnnotatedWith(NullMarked.class),
                type -> type.getPackageName() + " of " + type.getSimpleName() + " has no @NullMarked package-info");
    }

    private static <T> ArchCondition<T> condition(
            String description, Predicate<T> holds, Function<T, String> complaint) {
        return new ArchCondition<>(description) {
            @Override
            public void check(T item, ConditionEvents events) {
                events.add(holds.test(item) ? satisfied(item, description) : violated(item, complaint.apply(item)));
            }
        };
    }
}
