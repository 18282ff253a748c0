/**
 * Runnable stories told with the library, the main job first: a hooded warm layer for the night crew of an observatory.
 *
 * <p>This is the only place that reads files, parses arguments and prints. Nothing here is an API: what other programs
 * might want to call belongs in the library modules.
 */
@NullMarked
package org.oaktag.examples;

import org.jspecify.annotations.NullMarked;
