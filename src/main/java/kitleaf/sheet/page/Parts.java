package kitleaf.sheet.page;

/**
 * A view record that gives its components by name itself. Labels come by the ten thousand, and to call a method known only by
 * its name takes longer than what is done with the value.
 */
public interface Parts {

    /** The component of this name, as its accessor gives it; null where there is none. */
    Object part(String name);
}
