/** True-scale sheets as PDF. */
module org.oaktag.export.pdf {
    requires transitive org.oaktag.export.svg;
    requires org.apache.pdfbox;
    requires org.apache.fontbox;
    requires org.apache.pdfbox.io;
    requires static org.jspecify;

    exports org.oaktag.export.pdf;
}
