package org.oaktag.architecture;

import static org.oaktag.measure.Length.mm;

import java.lang.reflect.Constructor;
import java.lang.reflect.Executable;
import java.lang.reflect.Field;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.Method;
import java.lang.reflect.Modifier;
import java.lang.reflect.ParameterizedType;
import java.lang.reflect.Type;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.oaktag.adjust.data.RecordForm;
import org.oaktag.adjustments.Finishes;
import org.oaktag.adjustments.HemBand;
import org.oaktag.adjustments.Sleeves;
import org.oaktag.blocks.CapFit;
import org.oaktag.blocks.CapHalf;
import org.oaktag.blocks.RaglanHalf;
import org.oaktag.blocks.TopEdges;
import org.oaktag.blocks.TopNames;
import org.oaktag.export.sheet.Paper;
import org.oaktag.export.sheet.Tiling;
import org.oaktag.geometry.Path;

/**
 * An instance of as many public types as can be had: from the {@link Samples}, then from the constants, the makers and
 * the questions of the types that are known already, in rounds until no more are found.
 */
final class Instances {

    private static final int ROUNDS = 4;

    private static final Path ARMHOLE = Samples.TOP.piece(TopNames.FRONT).path(TopEdges.ARMHOLE);

    /** Types of which nothing else gives an instance. */
    private static final List<Object> RARE = List.of(
            CapFit.of(ARMHOLE, ARMHOLE, mm(6)),
            CapHalf.ontoFront(ARMHOLE),
            RaglanHalf.front(Samples.TOP.piece(TopNames.FRONT), Samples.TOP.piece(TopNames.SLEEVE), mm(40)),
            RecordForm.of(HemBand.class),
            Tiling.on(Paper.A4),
            Finishes.frontPouch(mm(320), mm(190)).raisedBy(mm(20)),
            Finishes.patchPocket(mm(110), mm(130), mm(50), mm(200)),
            Sleeves.puffCap(1.3),
            Sleeves.bellSleeve(mm(420)));

    /** Those of the whole library, looked for once. */
    static final Instances ALL = new Instances(ContractsTest.publicTypes());

    private final Samples samples = new Samples();
    private final Map<Class<?>, Object> byType = new LinkedHashMap<>();

    /** Looks for instances of these types. */
    private Instances(List<Class<?>> types) {
        RARE.forEach(this::keep);
        for (int round = 0; round < ROUNDS; round++) {
            for (Class<?> type : types) {
                makersAndQuestions(type).forEach(this::harvest);
                constants(type).forEach(this::keep);
            }
        }
    }

    /** Returns an instance of the type, or of one that implements it. */
    Optional<Object> of(Class<?> type) {
        Optional<Object> sample = samples.of(type);
        return sample.isPresent()
                ? sample
                : Optional.ofNullable(byType.get(type))
                        .or(() -> byType.values().stream()
                                .filter(type::isInstance)
                                .findFirst());
    }

    /**
     * Returns a value for each parameter; empty if one cannot be had. A list or a set holds one of what it is a list
     * of.
     */
    Optional<Object[]> arguments(Executable called) {
        List<Object> arguments = new ArrayList<>();
        for (Type type : called.getGenericParameterTypes()) {
            Optional<Object> argument = argument(type);
            if (argument.isEmpty()) {
                return Optional.empty();
            }
            arguments.add(argument.get());
        }
        return Optional.of(arguments.toArray());
    }

    private Optional<Object> argument(Type type) {
        if (type instanceof ParameterizedType generic && generic.getRawType() == List.class) {
            return generic.getActualTypeArguments()[0] instanceof Class<?> item
                    ? of(item).map(each -> (Object) List.of(each))
                    : Optional.of(List.of());
        }
        if (type instanceof ParameterizedType generic) {
            return of((Class<?>) generic.getRawType());
        }
        if (!(type instanceof Class<?> plain)) {
            return Optional.empty();
        }
        if (plain.isArray()) {
            return of(plain.getComponentType()).map(each -> {
                Object array = java.lang.reflect.Array.newInstance(plain.getComponentType(), 1);
                java.lang.reflect.Array.set(array, 0, each);
                return array;
            });
        }
        return of(plain);
    }

    @SuppressWarnings("NullAway") // a static method is invoked on nothing
    private void harvest(Executable called) {
        try {
            if (called instanceof Constructor<?> constructor) {
                arguments(called).ifPresent(given -> keep(outcome(constructor, given)));
            } else if (Modifier.isStatic(called.getModifiers())) {
                arguments(called).ifPresent(given -> keep(outcome((Method) called, null, given)));
            } else {
                of(called.getDeclaringClass()).ifPresent(on -> keep(outcome((Method) called, on, new Object[0])));
            }
        } catch (IllegalStateException e) {
            // Refused: there is another way to an instance, or none.
        }
    }

    private static Object outcome(Constructor<?> constructor, Object[] given) {
        try {
            return constructor.newInstance(given);
        } catch (InvocationTargetException e) {
            throw new IllegalStateException(e.getCause());
        } catch (ReflectiveOperationException e) {
            throw new LinkageError(constructor + " cannot be called", e);
        }
    }

    @SuppressWarnings("NullAway") // a static method is invoked on nothing
    private static Object outcome(Method method, Object on, Object[] given) {
        try {
            Object made = method.invoke(on, given);
            return made == null ? "nothing" : made;
        } catch (InvocationTargetException e) {
            throw new IllegalStateException(e.getCause());
        } catch (ReflectiveOperationException e) {
            throw new LinkageError(method + " cannot be called", e);
        }
    }

    private void keep(Object made) {
        if (made instanceof Optional<?> optional) {
            optional.ifPresent(this::keep);
        } else if (made instanceof Collection<?> several) {
            several.stream().limit(1).forEach(this::keep);
        } else if (made.getClass().getName().startsWith("org.oaktag.")) {
            byType.putIfAbsent(made.getClass(), made);
        }
    }

    private static Stream<Object> constants(Class<?> type) {
        List<Object> constants = new ArrayList<>();
        for (Field field : type.getFields()) {
            if (Modifier.isStatic(field.getModifiers()) && field.getDeclaringClass() == type) {
                try {
                    constants.add(field.get(type));
                } catch (IllegalAccessException e) {
                    throw new LinkageError(field + " cannot be read", e);
                }
            }
        }
        return constants.stream();
    }

    /**
     * Returns a call of every method with a parameter; not of {@code equals}, which takes null, nor of what writes a
     * file.
     */
    List<Call> calls(List<Class<?>> types) {
        return types.stream()
                .flatMap(type -> of(type).stream().flatMap(on -> calls(type, on)))
                .toList();
    }

    private Stream<Call> calls(Class<?> type, Object on) {
        return Stream.of(type.getMethods())
                .filter(method -> method.getDeclaringClass() == type
                        && !Modifier.isStatic(method.getModifiers())
                        && !method.isSynthetic())
                .filter(method -> !Set.of("equals", "writeTo").contains(method.getName()))
                .filter(method -> method.getParameterCount() > 0)
                .sorted(Comparator.comparing(Method::toString))
                .flatMap(method -> arguments(method).stream().map(given -> new Call(method, on, given)));
    }

    private static Stream<Executable> makersAndQuestions(Class<?> type) {
        Stream<Executable> constructors = Modifier.isAbstract(type.getModifiers()) || type.isEnum()
                ? Stream.of()
                : Stream.of(type.getConstructors());
        Stream<Executable> methods = Stream.of(type.getMethods())
                .filter(method -> method.getDeclaringClass() == type && !method.isSynthetic())
                .filter(method -> Modifier.isStatic(method.getModifiers()) || method.getParameterCount() == 0)
                .map(method -> (Executable) method);
        return Stream.concat(constructors, methods).sorted(Comparator.comparing(Executable::toString));
    }
}
