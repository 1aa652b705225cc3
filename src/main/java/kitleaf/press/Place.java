package kitleaf.press;

import javax.xml.stream.Location;

/** A place in the markup: line and column from 1, characters before it from 0. */
record Place(int line, int column, int characterOffset) {

    /** One character earlier in the line. */
    Place before() {
        return new Place(line, column - 1, characterOffset - 1);
    }

    static Place of(Location location) {
        return new Place(location.getLineNumber(), location.getColumnNumber(), location.getCharacterOffset());
    }
}
