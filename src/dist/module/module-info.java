/** The whole program as one module, with the libraries it is made of, so that it can be linked into a runtime of its own. */
open module kitleaf {
    // What jdeps finds in the jar.
    requires java.desktop;
    requires java.management;
    requires java.sql;
    requires jdk.management;
    // Lets the launcher name the class without naming the module, which keeps the stored module graph in use.
    exports kitleaf.command;
}
