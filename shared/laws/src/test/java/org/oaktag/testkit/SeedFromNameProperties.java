package org.oaktag.testkit;

import static org.assertj.core.api.Assertions.assertThat;

import java.lang.reflect.Method;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.lifecycle.AddLifecycleHook;
import net.jqwik.api.lifecycle.AroundPropertyHook;
import net.jqwik.api.lifecycle.PropertyExecutionResult;
import net.jqwik.api.lifecycle.PropertyExecutor;
import net.jqwik.api.lifecycle.PropertyLifecycleContext;

class SeedFromNameProperties {
    @Property(tries = 1)
    @AddLifecycleHook(ExpectsSeedOfName.class)
    void a_property_that_names_no_seed_runs_from_the_seed_of_its_name(@ForAll int any) {
        assertThat(any).isBetween(Integer.MIN_VALUE, Integer.MAX_VALUE);
    }

    @Property(tries = 1, seed = "42")
    @AddLifecycleHook(ExpectsSeed42.class)
    void a_property_that_names_its_seed_keeps_it(@ForAll int any) {
        assertThat(any).isBetween(Integer.MIN_VALUE, Integer.MAX_VALUE);
    }

    @Example
    void another_name_or_another_turn_is_another_seed() throws NoSuchMethodException {
        Method compareTo = Long.class.getMethod("compareTo", Long.class);
        Method compare = Long.class.getMethod("compare", long.class, long.class);
        assertThat(SeedFromName.seedOf(compareTo, 0))
                .isEqualTo(SeedFromName.seedOf(compareTo, 0))
                .isNotEqualTo(SeedFromName.seedOf(compare, 0))
                .isNotEqualTo(SeedFromName.seedOf(compareTo, 1));
    }

    static final class ExpectsSeedOfName implements AroundPropertyHook {
        @Override
        public PropertyExecutionResult aroundProperty(PropertyLifecycleContext context, PropertyExecutor property) {
            long turn = Long.getLong(SeedFromName.TURN, 0);
            assertThat(context.attributes().seed())
                    .contains(Long.toString(SeedFromName.seedOf(context.targetMethod(), turn)));
            return property.execute();
        }
    }

    static final class ExpectsSeed42 implements AroundPropertyHook {
        @Override
        public PropertyExecutionResult aroundProperty(PropertyLifecycleContext context, PropertyExecutor property) {
            assertThat(context.attributes().seed()).contains("42");
            return property.execute();
        }
    }
}
