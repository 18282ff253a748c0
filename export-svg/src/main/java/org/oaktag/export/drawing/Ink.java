package org.oaktag.export.drawing;

import org.oaktag.geometry.Bounds;

/** Something drawn on a sheet: what it is, not how a file says it. A closed family of immutable values. */
public sealed interface Ink permits Stroke, Fill, Label {

    /** Returns the box that holds it, the width of its line included. */
    Bounds bounds();
}
