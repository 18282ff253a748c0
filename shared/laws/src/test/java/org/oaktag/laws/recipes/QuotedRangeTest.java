package org.oaktag.laws.recipes;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.oaktag.PatternException;
import org.oaktag.adjust.AmountKind;
import org.oaktag.adjust.Step;
import org.oaktag.adjust.StepKind;
import org.oaktag.adjust.data.AmountField;
import org.oaktag.adjust.data.Datum;
import org.oaktag.garment.Garment;
import org.oaktag.measure.Angle;
import org.oaktag.measure.Length;

/**
 * A refusal says what works, and what it says works: an amount that is far too much or far too little is refused, the
 * end of the range that the refusal quotes is tried as it is written, and it is done.
 *
 * <p>A refusal may be of something that only depends on the amount, as the place at which a slash ends does on its
 * share of the edge; its range is then not that of the amount and is left out.
 */
class QuotedRangeTest {

    private static final double FAR = 9000;
    private static final int MOST_TRIALS = 6;

    /** How many ends, of all amounts of all kinds, must have been found and done, or the law would say nothing. */
    private static final int LEAST_ENDS = 95;

    private static final String NUMBER = "(-?[0-9]+(?:\\.[0-9]+)?)(?: ?(?:mm|°|%))?";
    private static final Pattern RANGE = Pattern.compile(NUMBER + " to " + NUMBER);
    private static final Pattern MOST = Pattern.compile("at most " + NUMBER + "|" + NUMBER + " at the most");
    private static final Pattern LEAST = Pattern.compile("at least " + NUMBER);

    private final DoneSteps steps = new DoneSteps(11);
    private final Set<String> done = new TreeSet<>();
    private final Set<String> wrong = new TreeSet<>();

    @Test
    void the_end_of_a_range_that_a_refusal_quotes_is_accepted() {
        for (Garment block : steps.blocks()) {
            for (StepKind kind : steps.kinds()) {
                Optional<Garment> ready = steps.ready(block, kind);
                Optional<Step> step = ready.flatMap(garment -> steps.done(garment, kind));
                if (step.isPresent()) {
                    for (AmountKind amount : numbers(kind, step.get())) {
                        check(ready.get(), kind, amount, step.get(), -FAR);
                        check(ready.get(), kind, amount, step.get(), FAR);
                    }
                }
            }
        }
        assertThat(wrong).isEmpty();
        assertThat(done).hasSizeGreaterThanOrEqualTo(LEAST_ENDS);
    }

    private void check(Garment garment, StepKind kind, AmountKind amount, Step step, double far) {
        String end = kind.name() + ", " + amount.name() + (far < 0 ? ", least" : ", most");
        Optional<PatternException> told = Optional.empty();
        boolean toldByGarment = false;
        double value = far;
        for (int i = 0; i < MOST_TRIALS; i++) {
            PatternException refused;
            boolean made = false;
            try {
                Step changed = kind.read("step", kind.write(step).with(amount.field(), new Datum.Numeral(value)));
                made = true;
                garment.adjust(changed);
                if (told.isPresent()) {
                    done.add(end);
                }
                return;
            } catch (PatternException e) {
                refused = e;
            }
            boolean garmentTold = toldByGarment;
            boolean again = told.filter(before -> before.rule().equals(refused.rule())
                            || (garmentTold && before.thing().equals(refused.thing())))
                    .isPresent();
            if (again) {
                wrong.add(end + ": told " + told.get().getMessage() + ", but then " + refused.getMessage());
                return;
            }
            OptionalDouble next = quoted(refused, amount, value);
            if (next.isEmpty() || (next.getAsDouble() == value && made)) {
                return;
            }
            told = Optional.of(refused);
            toldByGarment = made;
            value = next.getAsDouble();
        }
    }

    /** Returns the end that is quoted for the amount itself, on the side on which the value lies. */
    private static OptionalDouble quoted(PatternException refused, AmountKind amount, double value) {
        boolean own = refused.given().equals(text(amount, value));
        boolean turned = !own && refused.given().equals(text(amount, -value));
        if (!own && !turned) {
            return OptionalDouble.empty();
        }
        boolean least = value < 0 != turned;
        OptionalDouble remedy = end(refused.remedy(), least);
        OptionalDouble found = remedy.isPresent() ? remedy : end(refused.rule(), least);
        return turned && found.isPresent() ? OptionalDouble.of(-found.getAsDouble()) : found;
    }

    private static String text(AmountKind amount, double value) {
        return switch (amount.unit()) {
            case "mm" -> Length.mm(value).text();
            case "degrees" -> Angle.degrees(value).text();
            default -> String.valueOf(value);
        };
    }

    private static OptionalDouble end(String text, boolean least) {
        Matcher range = RANGE.matcher(text);
        if (range.find()) {
            return OptionalDouble.of(Double.parseDouble(range.group(least ? 1 : 2)));
        }
        Matcher one = (least ? LEAST : MOST).matcher(text);
        if (!one.find()) {
            return OptionalDouble.empty();
        }
        return OptionalDouble.of(Double.parseDouble(one.group(1) != null ? one.group(1) : one.group(2)));
    }

    private static List<AmountKind> numbers(StepKind kind, Step step) {
        Set<String> written = kind.write(step).values().keySet();
        return kind.amounts().stream()
                .filter(amount -> amount.sort() == AmountField.Sort.NUMBER)
                .filter(amount -> written.stream()
                        .anyMatch(field ->
                                amount.field().equals(field) || amount.field().startsWith(field + ".")))
                .toList();
    }
}
