package org.oaktag.architecture;

import static org.assertj.core.api.Assertions.assertThat;

import java.lang.reflect.Constructor;
import java.lang.reflect.Method;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/**
 * The contract of {@code docs/contracts.md} about null: every constructor, every static method and every method of an
 * instance of the public types is called with null in place of each argument in turn.
 */
class NullContractsTest {

    private static final List<Class<?>> TYPES = ContractsTest.publicTypes();

    private static final Instances INSTANCES = Instances.ALL;

    @Test
    void a_constructor_refuses_null_at_once_and_says_which() {
        List<String> wrong = new ArrayList<>();
        int asked = 0;
        for (Call call : makers()) {
            if (call.called() instanceof Constructor<?> constructor) {
                for (int i : references(call)) {
                    asked++;
                    Object outcome = call.withNull(i).outcome();
                    if (!(outcome instanceof NullPointerException refused)
                            || !names(refused, constructor.getParameters()[i].getName())) {
                        wrong.add(told(call, i, outcome));
                    }
                }
            }
        }
        assertThat(String.join("\n", wrong)).isEmpty();
        assertThat(asked).as("parameters asked").isGreaterThan(350);
    }

    @Test
    void a_method_refuses_null_at_once() {
        List<String> wrong = new ArrayList<>();
        int asked = 0;
        int refusedOtherwise = 0;
        for (Call call : Stream.concat(makers().stream(), INSTANCES.calls(TYPES).stream())
                .toList()) {
            if (call.called() instanceof Method) {
                Object usual = call.outcome();
                for (int i : references(call)) {
                    asked++;
                    Object outcome = call.withNull(i).outcome();
                    boolean otherwise = usual instanceof RuntimeException
                            && usual.toString().equals(outcome.toString());
                    refusedOtherwise += otherwise ? 1 : 0;
                    if (!otherwise && !(outcome instanceof NullPointerException)) {
                        wrong.add(told(call, i, outcome));
                    }
                }
            }
        }
        assertThat(String.join("\n", wrong)).isEmpty();
        assertThat(asked).as("parameters asked").isGreaterThan(800);
        assertThat(refusedOtherwise)
                .as("refused for what stands beside the null, so that the null was not come to")
                .isLessThan(asked / 12);
    }

    /** Either the name that was given to the check, or the word of the virtual machine for what it found null. */
    private static boolean names(NullPointerException refused, String parameter) {
        String message = String.valueOf(refused.getMessage());
        return message.equals(parameter) || message.contains("is null");
    }

    private static String told(Call call, int parameter, Object outcome) {
        return call.called() + " answers null for parameter " + parameter + " with " + outcome;
    }

    private static List<Integer> references(Call call) {
        List<Integer> all = new ArrayList<>();
        for (int i = 0; i < call.arguments().length; i++) {
            if (!call.called().getParameterTypes()[i].isPrimitive()) {
                all.add(i);
            }
        }
        return all;
    }

    private static List<Call> makers() {
        return ContractsTest.makers().stream()
                .flatMap(maker -> INSTANCES.arguments(maker).stream().map(given -> new Call(maker, null, given)))
                .toList();
    }
}
