/**
 * What sheets are made of: lines of a few fixed types, lettering that can be measured, fills, and the writing of SVG.
 *
 * <p>The XML is written by our own {@link org.oaktag.export.svg.drawing.XmlWriter}, a hundred lines, rather than by
 * {@code javax.xml.stream}: that one lets control characters through that no reader accepts, its implementation and so
 * its bytes depend on what lies on the class path, and every call throws a checked exception that cannot happen here.
 *
 * <p>Lines carry presentation attributes and no style sheet, because readers at cutting tables often know no CSS.
 */
@NullMarked
package org.oaktag.export.svg.drawing;

import org.jspecify.annotations.NullMarked;
