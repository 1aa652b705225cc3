package kitleaf.press;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

/** One start tag of the markup: its name, its attributes as written, and where it begins. */
record Element(String name, Map<String, String> attributes, Place place) {

    private static final int MOST_DIGITS = 6;

    /** Reads a value, or says what is wrong with it. */
    interface Syntax<T> {
        T read(String text) throws BadValue;
    }

    Element {
        // In the order written, so that the first fault is always the same one.
        attributes = Collections.unmodifiableMap(new LinkedHashMap<>(attributes));
    }

    MarkupException fault(String message) {
        return new MarkupException(message, place);
    }

    boolean has(String attribute) {
        return attributes.containsKey(attribute);
    }

    Optional<String> text(String attribute) {
        return Optional.ofNullable(attributes.get(attribute));
    }

    String neededText(String attribute) throws MarkupException {
        String value = attributes.get(attribute);
        if (value == null) {
            throw fault("\"" + name + "\" needs \"" + attribute + "\"");
        }
        return value;
    }

    /** A length or coordinate, 0 when not given, as in SVG. */
    double number(String attribute) throws MarkupException {
        return has(attribute) ? value(attribute, NumberScanner::whole) : 0;
    }

    /** A length that must be given and may not be negative. */
    double neededLength(String attribute) throws MarkupException {
        neededText(attribute);
        return value(attribute, Presentation::notNegative);
    }

    /** A whole number from least to most, or the one that holds when none is given. */
    int count(String attribute, int least, int most, int otherwise) throws MarkupException {
        String text = attributes.get(attribute);
        if (text == null) {
            return otherwise;
        }
        int count = 0;
        boolean digits = !text.isEmpty() && text.length() <= MOST_DIGITS;
        for (int i = 0; digits && i < text.length(); i++) {
            char c = text.charAt(i);
            digits = c >= '0' && c <= '9';
            count = count * 10 + c - '0';
        }
        if (digits && count >= least && count <= most) {
            return count;
        }
        throw fault(message(attribute, "\"" + text + "\" is not a whole number from " + least + " to " + most));
    }

    /** A given attribute's value in its own syntax. */
    <T> T value(String attribute, Syntax<T> syntax) throws MarkupException {
        try {
            return syntax.read(attributes.get(attribute));
        } catch (BadValue e) {
            throw fault(message(attribute, e.getMessage()));
        }
    }

    Transform transform() throws MarkupException {
        return has("transform") ? value("transform", TransformSyntax::read) : Transform.NONE;
    }

    /** The style handed down, with this element's presentation attributes applied. */
    Style style(Style inherited) throws MarkupException {
        Style style = inherited;
        for (String attribute : attributes.keySet()) {
            if (Vocabulary.isPresentation(name, attribute)) {
                Style before = style;
                style = value(attribute, text -> Presentation.apply(before, attribute, text));
            }
        }
        return style;
    }

    private String message(String attribute, String wrong) {
        return "\"" + attribute + "\" of \"" + name + "\": " + wrong;
    }
}
