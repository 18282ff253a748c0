package org.oaktag.architecture;

import java.lang.reflect.Constructor;
import java.lang.reflect.Executable;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.Method;
import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** A constructor or a method, on what it is called, and with what. */
final class Call {

    /**
     * What came back.
     *
     * @param value the value, or an empty {@code Optional} for null
     */
    record Returned(Object value) {}

    private final Executable called;
    private final @Nullable Object on;
    private final Object[] arguments;

    /** A call of a method of an instance, or of a constructor or static method on nothing. */
    Call(Executable called, @Nullable Object on, Object[] arguments) {
        this.called = called;
        this.on = on;
        this.arguments = arguments;
    }

    Executable called() {
        return called;
    }

    Object[] arguments() {
        return arguments;
    }

    /** Returns the call with another argument in one place. */
    Call with(int parameter, Object value) {
        Object[] other = arguments.clone();
        other[parameter] = value;
        return new Call(called, on, other);
    }

    /** Returns the call with null in one place. */
    @SuppressWarnings("NullAway") // null is what is tried here
    Call withNull(int parameter) {
        return with(parameter, null);
    }

    /** Calls it, and returns what came {@link Returned} or what was thrown. */
    @SuppressWarnings("NullAway") // a static method is invoked on nothing
    Object outcome() {
        try {
            if (called instanceof Constructor<?> constructor) {
                return new Returned(constructor.newInstance(arguments));
            }
            Object value = ((Method) called).invoke(on, arguments);
            return new Returned(
                    value == null && ((Method) called).getReturnType() == void.class
                            ? "done"
                            : Optional.ofNullable(value));
        } catch (InvocationTargetException e) {
            return Objects.requireNonNull(e.getCause());
        } catch (ReflectiveOperationException e) {
            throw new LinkageError(called + " cannot be called", e);
        }
    }
}
