package org.oaktag.architecture;

import static org.assertj.core.api.Assertions.assertThat;
import static org.oaktag.measure.Length.mm;

import java.lang.reflect.Constructor;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.Method;
import java.lang.reflect.Modifier;
import java.lang.reflect.RecordComponent;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.oaktag.PatternException;
import org.oaktag.adjust.Step;
import org.oaktag.adjust.data.RecordForm;
import org.oaktag.adjustments.Finishes;
import org.oaktag.adjustments.LowerArmhole;
import org.oaktag.adjustments.Sleeves;
import org.oaktag.blocks.CapFit;
import org.oaktag.blocks.CapHalf;
import org.oaktag.blocks.RaglanHalf;
import org.oaktag.blocks.TopNames;
import org.oaktag.export.sheet.Paper;
import org.oaktag.export.sheet.Tiling;
import org.oaktag.export.svg.SvgSheet;
import org.oaktag.garment.Adjustment;
import org.oaktag.garment.Allowances;
import org.oaktag.garment.EdgeNames;
import org.oaktag.garment.Garment;
import org.oaktag.geometry.Path;
import org.oaktag.measure.Angle;
import org.oaktag.measure.Length;
import org.oaktag.measure.Percent;

/**
 * The contracts of {@code docs/contracts.md} about null and about exceptions, asked of the methods of an instance of every public type of
 * which one can be had.
 */
class InstanceContractsTest {

    private static final Path ARMHOLE = Samples.TOP.piece(TopNames.FRONT).path(EdgeNames.ARMHOLE);

    /** Types of which nothing else gives an instance. */
    private static final List<Object> RARE = List.of(
            CapFit.of(ARMHOLE, ARMHOLE, mm(6)),
            CapHalf.onto(ARMHOLE),
            RaglanHalf.front(Samples.TOP.piece(TopNames.FRONT), Samples.TOP.piece(TopNames.SLEEVE), mm(40)),
            RecordForm.of(LowerArmhole.class),
            Tiling.on(Paper.A4),
            Finishes.frontPouch(mm(320), mm(190)).raisedBy(mm(20)),
            Finishes.patchPocket(mm(110), mm(130), mm(50), mm(200)),
            Sleeves.puffCap(1.3),
            Sleeves.bellSleeve(mm(420)));

    /** What may be thrown, as the page says; a fault in the direction of a vector and the like is the geometry's alone. */
    private static final Set<Class<? extends RuntimeException>> DOCUMENTED =
            Set.of(PatternException.class, IllegalArgumentException.class, IndexOutOfBoundsException.class);

    private static final List<Class<?>> TYPES = ContractsTest.publicTypes();

    private final Instances instances = new Instances(TYPES, RARE);

    private record Returned(Object value) {}

    private static final class Call {
        private final Method method;
        private final Object on;
        private final Object[] arguments;

        Call(Method method, Object on, Object[] arguments) {
            this.method = method;
            this.on = on;
            this.arguments = arguments;
        }

        Method method() {
            return method;
        }

        Object[] arguments() {
            return arguments;
        }

        Call with(int parameter, Object value) {
            Object[] other = arguments.clone();
            other[parameter] = value;
            return new Call(method, on, other);
        }

        Object outcome() {
            try {
                Object value = method.invoke(on, arguments);
                return new Returned(
                        value == null && method.getReturnType() == void.class ? "done" : Optional.ofNullable(value));
            } catch (InvocationTargetException e) {
                return Objects.requireNonNull(e.getCause());
            } catch (IllegalAccessException e) {
                throw new LinkageError(method + " cannot be called", e);
            }
        }
    }

    @SuppressWarnings("NullAway") // null is what is tried here
    private static Object nothing() {
        return null;
    }

    @Test
    void an_instance_of_nearly_every_public_type_can_be_had() {
        long had = TYPES.stream().filter(type -> instances.of(type).isPresent()).count();
        assertThat(had).isGreaterThan(TYPES.size() * 8 / 10);
        assertThat(calls()).hasSizeGreaterThan(300);
    }

    @Test
    void null_ends_in_a_null_pointer_exception_at_once_or_on_first_use_or_is_answered_no() {
        List<String> wrong = new ArrayList<>();
        int asked = 0;
        int atOnce = 0;
        for (Call call : calls()) {
            if (!(call.outcome() instanceof Returned)) {
                continue;
            }
            for (int i = 0; i < call.arguments().length; i++) {
                if (call.method().getParameterTypes()[i].isPrimitive()) {
                    continue;
                }
                Object outcome = call.with(i, nothing()).outcome();
                asked++;
                atOnce += outcome instanceof NullPointerException ? 1 : 0;
                if (outcome instanceof Returned returned
                        ? !isNo(returned.value()) && !isRefusedOnUse(returned.value())
                        : !(outcome instanceof NullPointerException)) {
                    wrong.add(call.method() + " answers null for parameter " + i + " with " + outcome);
                }
            }
        }
        assertThat(String.join("\n", wrong)).isEmpty();
        assertThat(asked).as("parameters asked").isGreaterThan(250);
        assertThat(atOnce).as("refused at once").isGreaterThan(asked / 2);
    }

    @Test
    void no_method_returns_null_and_what_is_thrown_is_what_the_page_says() {
        List<String> wrong = new ArrayList<>();
        for (Call call : calls()) {
            Object outcome = call.outcome();
            boolean fine = outcome instanceof Returned returned
                    ? !returned.value().equals(Optional.empty())
                    : isDocumented(call, outcome);
            if (!fine) {
                wrong.add(call.method() + " ends in " + outcome);
            }
        }
        assertThat(String.join("\n", wrong)).isEmpty();
    }

    @Test
    void numbers_that_make_no_sense_end_in_nothing_else_either() {
        List<String> wrong = new ArrayList<>();
        int asked = 0;
        int refused = 0;
        for (Call call : calls()) {
            for (int i = 0; i < call.arguments().length; i++) {
                for (Object odd : odd(call.method().getParameterTypes()[i])) {
                    Object outcome = call.with(i, odd).outcome();
                    asked++;
                    refused += outcome instanceof Returned ? 0 : 1;
                    if (!(outcome instanceof Returned) && !isDocumented(call, outcome)) {
                        wrong.add(call.method() + " answers " + odd + " for parameter " + i + " with " + outcome);
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
        for (Class<?> type : TYPES) {
            if (!Step.class.isAssignableFrom(type) || !type.isRecord()) {
                continue;
            }
            for (Constructor<?> constructor : type.getConstructors()) {
                for (Object[] arguments :
                        instances.arguments(constructor).stream().toList()) {
                    for (int i = 0; i < arguments.length; i++) {
                        for (Object odd : odd(constructor.getParameterTypes()[i])) {
                            Object[] other = arguments.clone();
                            other[i] = odd;
                            asked++;
                            Throwable thrown = played(constructor, other);
                            if (thrown != null && !(thrown instanceof PatternException)) {
                                wrong.add(constructor + " answers " + odd + " for parameter " + i + " with " + thrown);
                            }
                        }
                    }
                }
            }
        }
        assertThat(String.join("\n", wrong)).isEmpty();
        assertThat(asked).as("odd steps played").isGreaterThan(150);
    }

    private static @Nullable Throwable played(Constructor<?> constructor, Object[] arguments) {
        try {
            ((Step) constructor.newInstance(arguments)).applyTo(Samples.TOP);
            return null;
        } catch (InvocationTargetException e) {
            return e.getCause();
        } catch (RuntimeException e) {
            return e;
        } catch (ReflectiveOperationException e) {
            throw new LinkageError(constructor + " cannot be called", e);
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
        boolean plain = call.method().getDeclaringClass().getPackageName().equals("org.oaktag.geometry");
        return DOCUMENTED.contains(outcome.getClass()) || (plain && outcome instanceof IllegalStateException);
    }

    /** A question about nothing, such as whether a piece has that edge. */
    private static boolean isNo(Object value) {
        return value instanceof Optional<?> some
                && some.filter(answer -> !answer.equals(false)
                                && !answer.equals(Optional.empty())
                                && !(answer instanceof Collection<?> several && several.isEmpty()))
                        .isEmpty()
                && some.isPresent();
    }

    /** A value that holds null is refused by whoever asks it for that part; a garment and an adjustment by whoever plays or draws it. */
    private static boolean isRefusedOnUse(Object value) {
        Object used = value instanceof Optional<?> some && some.isPresent() ? some.get() : value;
        try {
            if (used instanceof Adjustment adjustment) {
                adjustment.applyTo(Samples.TOP);
            }
            if (used instanceof Garment garment) {
                SvgSheet.pattern(garment, Allowances.industryKnit(garment));
            }
            return holdsNull(used);
        } catch (NullPointerException e) {
            return true;
        } catch (PatternException e) {
            // Refused for another reason before it came to that.
            return true;
        }
    }

    private static boolean holdsNull(Object value) {
        if (value == nothing()) {
            return true;
        }
        if (value instanceof Optional<?> optional) {
            return optional.isPresent() && holdsNull(optional.get());
        }
        if (value instanceof Collection<?> several) {
            return several.stream().anyMatch(InstanceContractsTest::holdsNull);
        }
        if (value instanceof Map<?, ?> map) {
            return holdsNull(map.keySet()) || holdsNull(map.values());
        }
        if (value instanceof Record) {
            for (RecordComponent component : value.getClass().getRecordComponents()) {
                try {
                    component.getAccessor().setAccessible(true);
                    if (holdsNull(component.getAccessor().invoke(value))) {
                        return true;
                    }
                } catch (ReflectiveOperationException e) {
                    throw new LinkageError(component + " cannot be read", e);
                }
            }
        }
        return false;
    }

    private List<Call> calls() {
        return TYPES.stream()
                .flatMap(type -> instances.of(type).stream().flatMap(on -> calls(type, on)))
                .toList();
    }

    /** Every method with a parameter; not {@code equals}, which takes null, nor what writes a file or builds on itself. */
    private Stream<Call> calls(Class<?> type, Object on) {
        return Stream.of(type.getMethods())
                .filter(method -> method.getDeclaringClass() == type
                        && !Modifier.isStatic(method.getModifiers())
                        && !method.isSynthetic())
                .filter(method -> !Set.of("equals", "writeTo").contains(method.getName()))
                .filter(method -> method.getParameterCount() > 0)
                .sorted(Comparator.comparing(Method::toString))
                .flatMap(method -> instances.arguments(method).stream().map(given -> new Call(method, on, given)));
    }
}
