/** The model and the mathematics of a pattern: curves, measures, pieces, seams and adjustments. */
module org.oaktag.core {
    requires commons.math3;
    requires static transitive org.jspecify;

    exports org.oaktag;
    exports org.oaktag.geometry;
    exports org.oaktag.measure;
    exports org.oaktag.garment;
    exports org.oaktag.adjust;
    exports org.oaktag.adjust.data;
}
