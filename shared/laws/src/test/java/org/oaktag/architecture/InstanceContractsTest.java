package org.oaktag.architecture;

import static org.assertj.core.api.Assertions.assertThat;
import static org.oaktag.measure.Length.mm;

import java.lang.reflect.Executable;
import java.lang.reflect.Method;
import java.lang.reflect.Modifier;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.oaktag.PatternException;
import org.oaktag.adjust.Step;
import org.oaktag.measure.Angle;
import org.oaktag.measure.Length;
import org.oaktag.measure.Percent;

/**
 * The contracts of {@code docs/contracts.md} about exceptions, asked of the methods of an instance of every public type
 * of which one can be had.
 */
class InstanceContractsTest {

    /**
     * What may be thrown, as the page says; a fault in the direction of a vector and the like is the geometry's alone.
     */
    private static final Set<Class<? extends RuntimeException>> DOCUMENTED =
            Set.of(PatternException.class, IllegalArgumentException.class, IndexOutOfBoundsException.class);

    private static final List<Class<?>> TYPES = ContractsTest.publicTypes();

    private static final Instances INSTANCES = Instances.ALL;

    @Test
    void an_instance_of_nearly_every_public_type_can_be_had() {
        List<Class<?>> types =
                TYPES.stream().filter(InstanceContractsTest::hasInstances).toList();
        long had = types.stream().filter(type -> INSTANCES.of(type).isPresent()).count();
        assertThat(had).isGreaterThan(types.size() * 9 / 10);
        assertThat(INSTANCES.calls(TYPES)).hasSizeGreaterThan(300);
    }

    @Test
    void no_method_returns_null_and_what_is_thrown_is_what_the_page_says() {
        List<String> wrong = new ArrayList<>();
        for (Call call : INSTANCES.calls(TYPES)) {
            Object outcome = call.outcome();
            boolean fine = outcome instanceof Call.Returned returned
                    ? !returned.value().equals(Optional.empty())
                    : isDocumented(call, outcome);
            if (!fine) {
                wrong.add(call.called() + " ends in " + outcome);
            }
        }
        assertThat(String.join("\n", wrong)).isEmpty();
    }

    @Test
    void numbers_that_make_no_sense_end_in_nothing_else_either() {
        List<String> wrong = new ArrayList<>();
        int asked = 0;
        int refused = 0;
        for (Call call : INSTANCES.calls(TYPES)) {
            for (int i = 0; i < call.arguments().length; i++) {
                for (Object odd : odd(call.called().getParameterTypes()[i])) {
                    Object outcome = call.with(i, odd).outcome();
                    asked++;
                    refused += outcome instanceof Call.Returned ? 0 : 1;
                    if (!(outcome instanceof Call.Returned) && !isDocumented(call, outcome)) {
                        wrong.add(call.called() + " answers " + odd + " for parameter " + i + " with " + outcome);
                    }
                }
            }
        }
        assertThat(String.join("\n", wrong)).isEmpty();
        assertThat(asked).as("odd numbers tried").isGreaterThan(400);
        assertThat(refused).as("odd numbers refused").isGreaterThan(asked / 4);
    }

    @Test
    void steps_of_amounts_that_make_no_sense_are_refused_in_words_of_the_trade() {
        List<String> wrong = new ArrayList<>();
        int asked = 0;
        for (Executable maker : ContractsTest.makers()) {
            if (!Step.class.isAssignableFrom(made(maker))) {
                continue;
            }
            for (Object[] arguments : INSTANCES.arguments(maker).stream().toList()) {
                for (int i = 0; i < arguments.length; i++) {
                    for (Object odd : odd(maker.getParameterTypes()[i])) {
                        Object[] other = arguments.clone();
                        other[i] = odd;
                        asked++;
                        Object outcome = played(new Call(maker, null, other));
                        if (outcome instanceof Throwable && !(outcome instanceof PatternException)) {
                            wrong.add(maker + " answers " + odd + " for parameter " + i + " with " + outcome);
                        }
                    }
                }
            }
        }
        assertThat(String.join("\n", wrong)).isEmpty();
        assertThat(asked).as("odd steps played").isGreaterThan(150);
    }

    /** Whether the type is more than a holder of static methods and constants. */
    private static boolean hasInstances(Class<?> type) {
        return type.getConstructors().length > 0
                || Stream.of(type.getDeclaredMethods())
                        .anyMatch(method ->
                                Modifier.isPublic(method.getModifiers()) && !Modifier.isStatic(method.getModifiers()));
    }

    private static Class<?> made(Executable maker) {
        return maker instanceof Method method ? method.getReturnType() : maker.getDeclaringClass();
    }

    private static Object played(Call making) {
        Object outcome = making.outcome();
        if (!(outcome instanceof Call.Returned returned) || !(returned.value() instanceof Step step)) {
            return outcome;
        }
        try {
            return step.applyTo(Samples.TOP);
        } catch (RuntimeException e) {
            return e;
        }
    }

    private static List<Object> odd(Class<?> type) {
        if (type == double.class) {
            return List.of(Double.NaN, Double.POSITIVE_INFINITY, -1.0, 0.0, 1e300);
        }
        if (type == int.class) {
            return List.of(-1, 0, 1000);
        }
        if (type == Length.class) {
            return List.of(mm(-1), mm(0), mm(1e9), mm(-1e9));
        }
        if (type == Angle.class) {
            return List.of(Angle.degrees(-400), Angle.degrees(0), Angle.degrees(400));
        }
        return type == Percent.class
                ? List.of(Percent.percent(-150), Percent.percent(0), Percent.percent(1e6))
                : List.of();
    }

    private static boolean isDocumented(Call call, Object outcome) {
        boolean plain = call.called().getDeclaringClass().getPackageName().equals("org.oaktag.geometry");
        return DOCUMENTED.contains(outcome.getClass()) || (plain && outcome instanceof IllegalStateException);
    }
}
