package org.oaktag.export.lesson;

import java.util.List;
import java.util.function.DoubleBinaryOperator;
import java.util.function.DoubleUnaryOperator;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import org.oaktag.adjust.Recipe;
import org.oaktag.measure.Length;

/**
 * A part of a formula, which knows its value in every position and how it is written in names and in numbers.
 *
 * <pre>{@code
 * Term cap = Term.length("armhole", played -> played.after().finished(ARMHOLE_GIRTH)).plus(Term.length("ease", mm(6)));
 * }</pre>
 *
 * <p>Lengths count in mm, angles in degrees. A closed family of immutable values.
 */
public sealed interface Term {

    /** Returns the value for a step as it was played. */
    double of(Recipe.Played played);

    /** Returns a length that is measured. */
    static Term length(String name, Function<Recipe.Played, Length> measured) {
        return new Quantity(
                name, Slider.Kind.LENGTH, played -> measured.apply(played).mm());
    }

    /** Returns a length that is the same everywhere. */
    static Term length(String name, Length always) {
        return length(name, played -> always);
    }

    /** Returns an angle, in degrees, that is measured. */
    static Term angle(String name, ToDoubleFunction<Recipe.Played> measured) {
        return new Quantity(name, Slider.Kind.ANGLE, measured);
    }

    /** Returns a share, in percent, that is measured; it counts as its fraction. */
    static Term share(String name, ToDoubleFunction<Recipe.Played> measured) {
        return new Quantity(name, Slider.Kind.SHARE, measured);
    }

    /** Returns a plain number, which goes by no name. */
    static Term number(double value) {
        return new Constant(value);
    }

    /** Returns the sum of both. */
    default Term plus(Term other) {
        return new Pair(Operator.PLUS, this, other);
    }

    /** Returns this term less the other. */
    default Term minus(Term other) {
        return new Pair(Operator.MINUS, this, other);
    }

    /** Returns the product of both. */
    default Term times(Term other) {
        return new Pair(Operator.TIMES, this, other);
    }

    /** Returns this term divided by the other. */
    default Term over(Term other) {
        return new Pair(Operator.OVER, this, other);
    }

    /** Returns the square of this term. */
    default Term squared() {
        return new Squared(this);
    }

    /** Returns the square root of this term. */
    default Term root() {
        return new Called("√", this, Math::sqrt);
    }

    /** Returns the sine of this term, an angle in degrees. */
    default Term sine() {
        return new Called("sin", this, degrees -> Math.sin(Math.toRadians(degrees)));
    }

    /** Returns the cosine of this term, an angle in degrees. */
    default Term cosine() {
        return new Called("cos", this, degrees -> Math.cos(Math.toRadians(degrees)));
    }

    /** How two terms are put together; those that bind more come later. */
    enum Operator {
        /** The sum. */
        PLUS("+", 1, Double::sum),
        /** The difference. */
        MINUS("−", 1, (a, b) -> a - b),
        /** The product. */
        TIMES("×", 2, (a, b) -> a * b),
        /** The quotient. */
        OVER("/", 2, (a, b) -> a / b);

        private final String sign;
        private final int binding;

        @SuppressWarnings("ImmutableEnumChecker") // a function without state
        private final DoubleBinaryOperator function;

        Operator(String sign, int binding, DoubleBinaryOperator function) {
            this.sign = sign;
            this.binding = binding;
            this.function = function;
        }

        String sign() {
            return sign;
        }

        int binding() {
            return binding;
        }
    }

    /**
     * Something that goes by a name.
     *
     * @param name what it is called
     * @param kind of what kind it is
     * @param measured how it is found, in mm, degrees or percent
     */
    record Quantity(String name, Slider.Kind kind, ToDoubleFunction<Recipe.Played> measured) implements Term {
        private static final double PERCENT = 100;

        @Override
        public double of(Recipe.Played played) {
            double value = measured.applyAsDouble(played);
            return kind == Slider.Kind.SHARE ? value / PERCENT : value;
        }
    }

    /** A plain number. */
    record Constant(double value) implements Term {
        @Override
        public double of(Recipe.Played played) {
            return value;
        }
    }

    /**
     * Two terms put together.
     *
     * @param operator how
     * @param a the first
     * @param b the second
     */
    record Pair(Operator operator, Term a, Term b) implements Term {
        @Override
        public double of(Recipe.Played played) {
            return operator.function.applyAsDouble(a.of(played), b.of(played));
        }

        /** Returns whether a term of this pair has to stand in brackets; the second also where it binds no more. */
        boolean brackets(Term part) {
            return part instanceof Pair pair
                    && (pair.operator.binding < operator.binding
                            || (part == b
                                    && pair.operator.binding == operator.binding
                                    && List.of(Operator.MINUS, Operator.OVER).contains(operator)));
        }
    }

    /** A term times itself. */
    record Squared(Term base) implements Term {
        @Override
        public double of(Recipe.Played played) {
            double value = base.of(played);
            return value * value;
        }
    }

    /**
     * A function of a term.
     *
     * @param sign how the function is written
     * @param argument the term
     * @param function the function
     */
    record Called(String sign, Term argument, DoubleUnaryOperator function) implements Term {
        @Override
        public double of(Recipe.Played played) {
            return function.applyAsDouble(argument.of(played));
        }
    }
}
