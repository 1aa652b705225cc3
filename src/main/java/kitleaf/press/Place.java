package kitleaf.press;

import javax.xml.stream.Location;

/** A place in the markup: line and column from 1, characters before it from 0. */
record Place(int line, int column, int characterOffset) {

    static Place of(Location location) {
        return new Place(location.getLineNumber(), location.getColumnNumber(), location.getCharacterOffset());
    }
}
