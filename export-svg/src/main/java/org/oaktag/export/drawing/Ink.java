package org.oaktag.export.drawing;

import org.oaktag.geometry.Bounds;

/**
 * Something drawn on a sheet: what it is, not how a file says it. A closed family of immutable values.
 *
 * <pre>{@code
 * for (Ink ink : PieceDrawing.of(top, top.piece(FRONT), allowances).inks()) {
 *     boolean line = ink instanceof Stroke;
 * }
 * }</pre>
 */
public sealed interface Ink permits Stroke, Fill, Label {

    /** Returns the box that holds it, the width of its line included. */
    Bounds bounds();
}
