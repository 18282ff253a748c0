package org.oaktag.export.lesson;

import org.oaktag.adjust.Recipe;
import org.oaktag.export.xml.XmlWriter;

/** Writes a formula in names, then in numbers, and what is measured on the pieces. */
final class FormulaBlock {

    private final XmlWriter xml;
    private final Recipe.Played played;

    private FormulaBlock(XmlWriter xml, Recipe.Played played) {
        this.xml = xml;
        this.played = played;
    }

    static void write(XmlWriter xml, Formula formula, Recipe.Played played) {
        new FormulaBlock(xml, played).write(formula);
    }

    private void write(Formula formula) {
        Term.Quantity measured = formula.measured();
        xml.begin("div").attribute("class", "formula");
        xml.begin("p").attribute("class", "names");
        names(measured);
        xml.text(formula.exact() ? " = " : " ≈ ");
        names(formula.computed());
        xml.end();
        xml.begin("p").attribute("class", "values").text("= ");
        values(formula.computed());
        xml.text(" = ");
        xml.begin("strong").text("");
        BothUnits.length(xml, formula.computed().of(played));
        xml.end().end();
        xml.begin("p").attribute("class", "measured").text("measured on the pieces: ");
        BothUnits.length(xml, measured.of(played));
        if (formula.agrees(played)) {
            xml.text(", the same");
        } else {
            xml.text("; the formula is off by ");
            BothUnits.growth(xml, formula.difference(played));
        }
        xml.end();
        if (!formula.remark().isEmpty()) {
            xml.begin("p").attribute("class", "remark");
            BothUnits.sentence(xml, formula.remark());
            xml.end();
        }
        xml.end();
    }

    private void names(Term term) {
        term(term, false);
    }

    private void values(Term term) {
        term(term, true);
    }

    /** The family is sealed; a switch over its types needs a later Java. */
    private void term(Term term, boolean filledIn) {
        if (term instanceof Term.Quantity quantity) {
            if (filledIn) {
                BothUnits.amount(xml, quantity.kind(), quantity.measured().applyAsDouble(played));
            } else {
                xml.begin("var").text(quantity.name()).end();
            }
        } else if (term instanceof Term.Constant number) {
            xml.text(number.value() == Math.rint(number.value()) ? "" + (long) number.value() : "" + number.value());
        } else if (term instanceof Term.Pair pair) {
            bracketed(pair.a(), pair.brackets(pair.a()), filledIn);
            xml.text(" " + pair.operator().sign() + " ");
            bracketed(pair.b(), pair.brackets(pair.b()), filledIn);
        } else if (term instanceof Term.Squared squared) {
            bracketed(squared.base(), filledIn || !(squared.base() instanceof Term.Quantity), filledIn);
            xml.begin("sup").text("2").end();
        } else if (term instanceof Term.Called called) {
            xml.text(called.sign());
            bracketed(called.argument(), true, filledIn);
        }
    }

    private void bracketed(Term term, boolean brackets, boolean filledIn) {
        if (brackets) {
            xml.text("(");
        }
        term(term, filledIn);
        if (brackets) {
            xml.text(")");
        }
    }
}
