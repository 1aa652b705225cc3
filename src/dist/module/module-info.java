/** The whole program as one module, with the libraries it is made of, so that it can be linked into a runtime of its own. */
open module kitleaf {
    // What jdeps finds in the jar.
    requires java.desktop;
    requires java.management;
    requires java.sql;
    requires jdk.management;
    // PDFBox's way to a log, which looks for others, and fails where it may not look.
    uses org.apache.commons.logging.LogFactory;
    // Lets the launcher name the class without naming the module, which keeps the stored module graph in use.
    exports kitleaf.command;
}
