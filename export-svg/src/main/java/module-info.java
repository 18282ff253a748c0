/** What is drawn of a garment, on sheets of any size, and true-scale sheets and flats as SVG. */
module org.oaktag.export.svg {
    requires transitive org.oaktag.blocks;
    requires static org.jspecify;

    exports org.oaktag.export.drawing;
    exports org.oaktag.export.gallery;
    exports org.oaktag.export.lesson;
    exports org.oaktag.export.sheet;
    exports org.oaktag.export.svg;
}
