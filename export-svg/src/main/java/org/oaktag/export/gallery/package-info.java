/**
 * A gallery of styles as one page for a browser: each style laid flat in its cloths, its sizes with their finished
 * measures, and its steps.
 *
 * <pre>{@code
 * GalleryPage.of("Winter", "Warm things.", List.of(GalleryStyle.of(style, juno, "For the cold.")))
 *         .writeTo(Path.of("winter.html"));
 * }</pre>
 *
 * <p>Nothing on the page is drawn or computed but by the library: every size is drafted and walked. The page refers to
 * nothing outside itself and carries no script.
 */
@NullMarked
package org.oaktag.export.gallery;

import org.jspecify.annotations.NullMarked;
