/**
 * Lessons: what an adjustment does, as a page with a slider for those who teach and learn.
 *
 * <pre>{@code
 * Lesson lesson = Lesson.of(
 *                 "Widen the neckline",
 *                 Slider.lengths("along the shoulder", mm(0), mm(30), mm(2), mm(8)),
 *                 by -> new Trial(block, widenNeckline(mm(by))))
 *         .saying("The side neck point moves along the shoulder.");
 * LessonPage.of(lesson).writeTo(Path.of("widen.html"));
 * }</pre>
 *
 * <p>The library plays every position of the slider itself and the page holds the results, so what a learner sees was
 * computed by the same code as the pattern, and the page needs no network and computes nothing. A position that the
 * step refuses shows the refusal.
 *
 * <p>Which lessons there are, and what they say, is for the teacher; examples lie in {@code org.oaktag.examples}.
 */
@NullMarked
package org.oaktag.export.lesson;

import org.jspecify.annotations.NullMarked;
