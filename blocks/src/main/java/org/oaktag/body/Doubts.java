package org.oaktag.body;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.oaktag.PatternException;
import org.oaktag.measure.Length;

/** Finds the measures of a grown body that are to be asked about, and puts the question. */
final class Doubts {

    private Doubts() {}

    /**
     * Finds them, in the order of {@link BodyMeasure}; none for a child, of whom no rule says what to expect.
     *
     * @param figure whose body it is
     * @param measures every measure, taken or derived
     * @param notTaken those that were derived
     */
    static List<Doubt> of(Figure figure, Map<BodyMeasure, Length> measures, Map<BodyMeasure, Derived> notTaken) {
        boolean hipAsked = measures.containsKey(BodyMeasure.BUST_GIRTH)
                && measures.get(BodyMeasure.BUST_GIRTH).mm() > Derivations.SERVICE_BUST_MM;
        List<Doubt> doubts = new ArrayList<>();
        measures.forEach((measure, length) -> {
            Derived rule = notTaken.get(measure);
            if (rule == null) {
                doubted(measure, length, figure, measures, notTaken).ifPresent(doubts::add);
            } else if (measure == BodyMeasure.HIP_GIRTH && hipAsked) {
                doubts.add(new Doubt(measure, Optional.empty(), rule));
            }
        });
        return List.copyOf(doubts);
    }

    private static Optional<Doubt> doubted(
            BodyMeasure measure,
            Length length,
            Figure figure,
            Map<BodyMeasure, Length> measures,
            Map<BodyMeasure, Derived> notTaken) {
        boolean bust = measure == BodyMeasure.BUST_GIRTH;
        Optional<DerivationRule> rule = bust ? Derivations.bustFromHeight(figure) : Derivations.rule(measure, figure);
        return rule.filter(found -> found.isMet(measures))
                .filter(found -> {
                    double off = found.spreadsOff(length, figure, measures, notTaken);
                    return off < -Doubt.SPREADS || (off > Doubt.SPREADS && !bust);
                })
                .map(found ->
                        new Doubt(measure, Optional.of(length), found.apply(measure, figure, measures, notTaken)));
    }

    /** Asks about measures of a body: at least one. */
    static PatternException question(String name, Figure figure, List<Doubt> doubts) {
        List<Doubt> taken =
                doubts.stream().filter(doubt -> doubt.taken().isPresent()).toList();
        if (taken.isEmpty()) {
            return notTaken(name, doubts.get(0));
        }
        return taken.size() == 1 ? one(name, taken.get(0)) : several(name, figure, taken);
    }

    private static PatternException notTaken(String name, Doubt doubt) {
        return PatternException.of(
                doubt.measure().label() + " of '" + name + "'",
                "must be taken where the bust girth is over "
                        + Length.mm(Derivations.SERVICE_BUST_MM).text()
                        + ": the surveyed bodies are soldiers', and hips of others are often wider",
                "none, and derived would be " + doubt.expected().value().text() + " = "
                        + doubt.expected().rule() + ", of which one body in twenty is off by more than "
                        + doubt.expected().spread().times(2).text(),
                "measure " + doubt.measure().definition() + "; or confirm the hip girth to draft from what is derived");
    }

    private static PatternException one(String name, Doubt doubt) {
        Length taken = doubt.taken().orElseThrow();
        String guess = Slip.likeliest(
                Stream.concat(Slip.ofHalf(taken), Slip.ofUnit(taken, PlausibleRange.READ_AS)), doubt.unasked());
        return PatternException.of(
                doubt.measure().label() + " of '" + name + "'",
                "is asked about outside " + doubt.unasked().text(LengthUnit.MM) + ", " + Doubt.SPREADS + " spreads of "
                        + doubt.expected().spread().text() + " about "
                        + doubt.expected().value().text() + " = "
                        + doubt.expected().rule(),
                taken.text(),
                (guess.isEmpty() ? "" : guess + "; ") + "if it is meant, confirm the "
                        + doubt.measure().label());
    }

    private static PatternException several(String name, Figure figure, List<Doubt> doubts) {
        return PatternException.of(
                "measures of '" + name + "'",
                "each is asked about more than " + Doubt.SPREADS
                        + " spreads from what the other measures lead to expect",
                doubts.stream().map(Doubt::text).collect(Collectors.joining("; ")),
                suspects(figure, doubts) + "mend what is wrong, and confirm each measure that is meant");
    }

    /** Where all that is doubted rests on the same measure, that one may be the slip. */
    private static String suspects(Figure figure, List<Doubt> doubts) {
        Set<BodyMeasure> shared = EnumSet.of(BodyMeasure.BUST_GIRTH, BodyMeasure.HEIGHT, BodyMeasure.WRIST_GIRTH);
        doubts.stream()
                .filter(doubt -> doubt.measure() != BodyMeasure.BUST_GIRTH)
                .forEach(doubt -> shared.retainAll(Derivations.rule(doubt.measure(), figure).stream()
                        .flatMap(rule -> rule.predictors().stream())
                        .toList()));
        return shared.isEmpty()
                ? ""
                : "is it the " + shared.stream().map(BodyMeasure::label).collect(Collectors.joining(" or the "))
                        + " that is wrong? all of them rest on it; ";
    }
}
