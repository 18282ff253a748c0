package org.oaktag.export.sheet;

import static org.oaktag.measure.Length.mm;

import java.util.Objects;
import java.util.Optional;
import org.oaktag.PatternException;
import org.oaktag.measure.Length;

/**
 * A size of paper: a sheet of fixed size, or a roll that is cut off where it is done. Immutable.
 *
 * <pre>{@code
 * Paper a4 = Paper.A4;
 * Paper plotter = Paper.roll(inches(36));
 * Paper card = Paper.sheet("oak tag", cm(60), cm(90));
 * }</pre>
 *
 * @param name what it is called where it is bought
 * @param width its width, held upright
 * @param height its height; empty for a roll
 */
public record Paper(String name, Length width, Optional<Length> height) {

    /**
     * The longest piece of a roll: a PDF page may be 14,400 points long (ISO 32000-1, annex C.2), which is 5,080 mm.
     */
    public static final Length LONGEST = mm(5000);

    /** ISO 216. */
    public static final Paper A4 = sheet("A4", mm(210), mm(297));

    /** ISO 216. */
    public static final Paper A3 = sheet("A3", mm(297), mm(420));

    /** ISO 216: a sheet of a copy shop. */
    public static final Paper A0 = sheet("A0", mm(841), mm(1189));

    /** US letter, 8 1/2 by 11 inches. */
    public static final Paper LETTER = sheet("US Letter", Length.inches(8.5), Length.inches(11));

    /** US legal, 8 1/2 by 14 inches. */
    public static final Paper LEGAL = sheet("US Legal", Length.inches(8.5), Length.inches(14));

    /**
     * Checks the size.
     *
     * @throws PatternException if a side is not greater than zero, or longer than {@link #LONGEST}
     */
    public Paper {
        Objects.requireNonNull(name, "name");
        check(name, "width", width);
        height.ifPresent(each -> check(name, "height", each));
    }

    /**
     * Returns a sheet of paper.
     *
     * @throws PatternException if a side is not greater than zero, or longer than {@link #LONGEST}
     */
    public static Paper sheet(String name, Length width, Length height) {
        return new Paper(name, width, Optional.of(height));
    }

    /**
     * Returns a roll of paper, such as 914.4 mm (36 inches) or 1067 mm (42 inches) wide.
     *
     * @throws PatternException if the width is not greater than zero, or more than {@link #LONGEST}
     */
    public static Paper roll(Length width) {
        return new Paper("roll, " + width.text() + " wide", width, Optional.empty());
    }

    /** Returns a sheet turned by a quarter; a roll stays as it is. */
    Paper onItsSide() {
        return height.map(each -> new Paper(name, each, Optional.of(width))).orElse(this);
    }

    private static void check(String name, String side, Length length) {
        if (length.mm() <= 0 || length.compareTo(LONGEST) > 0) {
            throw PatternException.of(
                    "paper '" + name + "'",
                    "must have a " + side + " over 0 and up to " + LONGEST.text(),
                    length.text(),
                    "give its size in millimetres");
        }
    }
}
