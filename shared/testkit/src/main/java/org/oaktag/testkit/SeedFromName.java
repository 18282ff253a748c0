package org.oaktag.testkit;

import java.lang.reflect.Method;
import java.util.Arrays;
import java.util.stream.Collectors;
import net.jqwik.api.lifecycle.AroundPropertyHook;
import net.jqwik.api.lifecycle.PropagationMode;
import net.jqwik.api.lifecycle.PropertyExecutionResult;
import net.jqwik.api.lifecycle.PropertyExecutor;
import net.jqwik.api.lifecycle.PropertyLifecycleContext;

/**
 * Gives every property that names no seed of its own a seed made from its name, so that a build tries the same samples
 * on any machine and a failure seen once is seen again.
 *
 * <p>Samples nobody has tried are found by turning the seeds with the system property {@value #TURN}: any whole number
 * gives every property another, equally repeatable seed. A failure found that way is kept by writing the reported seed
 * or, better, the shrunk sample into the tests.
 *
 * <p>Registered through {@code META-INF/services}, so it holds wherever the testkit is on the class path.
 */
public final class SeedFromName implements AroundPropertyHook {
    static final String TURN = "oaktag.seed";

    /** For the service loader. */
    public SeedFromName() {}

    @Override
    public PropertyExecutionResult aroundProperty(PropertyLifecycleContext context, PropertyExecutor property) {
        if (context.attributes().seed().isEmpty()) {
            context.attributes().setSeed(Long.toString(seedOf(context.targetMethod(), Long.getLong(TURN, 0))));
        }
        return property.execute();
    }

    /** Outside every other hook, so that they all see the seed. */
    @Override
    public int aroundPropertyProximity() {
        return -100;
    }

    @Override
    public PropagationMode propagateTo() {
        return PropagationMode.ALL_DESCENDANTS;
    }

    static long seedOf(Method property, long turn) {
        String name = Arrays.stream(property.getParameterTypes())
                .map(Class::getName)
                .collect(Collectors.joining(
                        ",", property.getDeclaringClass().getName() + "." + property.getName() + "(", ")"));
        long seed = turn;
        for (int i = 0; i < name.length(); i++) {
            seed = 31 * seed + name.charAt(i);
        }
        return seed;
    }
}
