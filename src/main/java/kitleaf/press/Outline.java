package kitleaf.press;

/** Something that can be traced with a pen. */
interface Outline {

    void trace(Track track) throws BadValue;
}
