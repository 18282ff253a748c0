/** What a garment is: bodies, drafts from their measurements, and the adjustments of the trade. */
module org.oaktag.blocks {
    requires transitive org.oaktag.core;
    requires commons.math3;
    requires static transitive org.jspecify;

    exports org.oaktag.block;
    exports org.oaktag.blocks;
    exports org.oaktag.body;
    exports org.oaktag.adjustments;
    exports org.oaktag.catalogue;
    exports org.oaktag.lay;
    exports org.oaktag.draft;
    exports org.oaktag.sewing;
    exports org.oaktag.skirt;

    opens org.oaktag.adjustments to
            org.oaktag.core;
    opens org.oaktag.skirt to
            org.oaktag.core;
}
