/**
 * Bodies to try drafts on: adults drawn from the published tables of a body survey, and invented children.
 *
 * <p>Nobody in here is a real person. The tables and their source lie beside the classes as resources.
 */
@NullMarked
package org.oaktag.testkit.bodies;

import org.jspecify.annotations.NullMarked;
