/**
 * What is taught of each adjustment: the amount a learner moves, the formulas, and what is said about them.
 *
 * <p>How a lesson becomes a page lies in {@code org.oaktag.export.lesson}; here is nothing but the lessons, each a
 * method that can be read and changed by a teacher.
 */
@NullMarked
package org.oaktag.examples.lessons;

import org.jspecify.annotations.NullMarked;
