/**
 * A pattern service over HTTP, the smallest that one would dare to run: sizes, times and crowds have limits, and what
 * goes wrong is told without a word of what went on inside.
 */
@NullMarked
package org.oaktag.examples.embed.service;

import org.jspecify.annotations.NullMarked;
