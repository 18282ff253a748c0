/**
 * What sheets are made of: lines of a few fixed types, lettering that can be measured, and fills, in millimetres.
 *
 * <p>Everything here is a value that says what is drawn; how a file says it, as SVG, as a page to be printed or as PDF,
 * is for the packages that write files. So one drawing feeds them all.
 */
@NullMarked
package org.oaktag.export.drawing;

import org.jspecify.annotations.NullMarked;
