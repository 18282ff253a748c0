/**
 * What SVG and HTML are written with: elements and text, numbers, path data.
 *
 * <p>The XML is written by our own {@code XmlWriter}, rather than by {@code javax.xml.stream}: that one lets control
 * characters through that no reader accepts, its implementation and so its bytes depend on what lies on the class path,
 * and every call throws a checked exception that cannot happen here.
 *
 * <p>Nothing is decided here about what is written. The package is not exported.
 */
@NullMarked
package org.oaktag.export.xml;

import org.jspecify.annotations.NullMarked;
