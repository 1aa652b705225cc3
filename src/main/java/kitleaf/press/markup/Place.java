package kitleaf.press.markup;

import javax.xml.stream.Location;

/** A place in the markup: line and column from 1, characters before it from 0. */
public record Place(int line, int column, int characterOffset) {

    /** One character earlier in the line. */
    Place before() {
        return new Place(line, column - 1, characterOffset - 1);
    }

    public static Place of(Location location) {
        return new Place(location.getLineNumber(), location.getColumnNumber(), location.getCharacterOffset());
    }
}
