package org.oaktag.export.svg.drawing;

import org.oaktag.geometry.Bounds;

/** Something drawn on a sheet. A closed family of immutable values. */
public sealed interface Ink permits Stroke, Fill, Label {

    /** Returns the box that holds it, the width of its line included. */
    Bounds bounds();

    /** Writes its elements. */
    void writeTo(XmlWriter xml);
}
