/** True-scale sheets and flats as SVG. */
module org.oaktag.export.svg {
    requires transitive org.oaktag.blocks;
    requires static org.jspecify;

    exports org.oaktag.export.svg;
}
