package kitleaf.press.markup;

import java.util.Optional;
import kitleaf.words.Said;

/** One start tag of the markup: its name, its attributes as written, and where it begins. */
public final class Element {

    private static final int MOST_DIGITS = 6;

    /** Reads a value, or says what is wrong with it. */
    public interface Syntax<T> {
        T read(String text) throws BadValue;
    }

    private final String name;
    private final Vocabulary.Tag tag;
    /** In the order written, so that the first fault is always the same one; a map costs more than so few are worth. */
    private final Vocabulary.Attribute[] attributes;
    private final String[] values;
    private final Place place;
    /** What is drawn again and again, as the fold of a label, is turned the same way each time. */
    private Transform own;

    /** Takes the attributes and their values, and keeps the arrays. */
    Element(String name, Vocabulary.Tag tag, Vocabulary.Attribute[] attributes, String[] values, Place place) {
        this.name = name;
        this.tag = tag;
        this.attributes = attributes;
        this.values = values;
        this.place = place;
    }

    Place place() {
        return place;
    }

    public String name() {
        return name;
    }

    Vocabulary.Tag tag() {
        return tag;
    }

    public MarkupException fault(String key, Object... slots) {
        return new MarkupException(Said.of(key, slots), place);
    }

    private MarkupException wrong(String attribute, BadValue value) {
        return fault("markup.value", attribute, name, value.said());
    }

    /** Whether it has attributes that are not presentation. */
    public boolean hasOwn() {
        for (Vocabulary.Attribute attribute : attributes) {
            if (!attribute.presentation()) {
                return true;
            }
        }
        return false;
    }

    /** Which of some words an attribute says; less than 0 when it is not given. */
    public int word(String attribute, String... words) throws MarkupException {
        String text = find(attribute);
        if (text == null) {
            return -1;
        }
        for (int i = 0; i < words.length; i++) {
            if (words[i].equals(text)) {
                return i;
            }
        }
        throw wrong(attribute, new BadValue("value.choice", text, String.join(", ", words)));
    }

    public boolean has(String attribute) {
        return find(attribute) != null;
    }

    public Optional<String> text(String attribute) {
        return Optional.ofNullable(find(attribute));
    }

    public String neededText(String attribute) throws MarkupException {
        String value = find(attribute);
        if (value == null) {
            throw fault("markup.needs", name, attribute);
        }
        return value;
    }

    /** A length or coordinate, 0 when not given, as in SVG. */
    public double number(String attribute) throws MarkupException {
        String text = find(attribute);
        try {
            return text == null ? 0 : NumberScanner.whole(text);
        } catch (BadValue e) {
            throw wrong(attribute, e);
        }
    }

    /** A length that must be given and may not be negative. */
    public double neededLength(String attribute) throws MarkupException {
        try {
            return Presentation.notNegative(neededText(attribute));
        } catch (BadValue e) {
            throw wrong(attribute, e);
        }
    }

    /** A whole number from least to most, or the one that holds when none is given. */
    public int count(String attribute, int least, int most, int otherwise) throws MarkupException {
        String text = find(attribute);
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
        throw fault("markup.value", attribute, name, Said.of("value.whole", text, least, most));
    }

    /** A given attribute's value in its own syntax. */
    public <T> T value(String attribute, Syntax<T> syntax) throws MarkupException {
        try {
            return syntax.read(find(attribute));
        } catch (BadValue e) {
            throw wrong(attribute, e);
        }
    }

    /** What is handed down, with this element's own transform in it. */
    public Transform transform(Transform outer) throws MarkupException {
        if (own == null) {
            own = has("transform") ? value("transform", TransformSyntax::read) : Transform.NONE;
        }
        return own == Transform.NONE ? outer : outer.with(own);
    }

    /** The style handed down, with this element's presentation attributes applied. */
    public Style style(Style inherited, Styles styles) throws MarkupException {
        styles.from(inherited);
        for (int i = 0; i < attributes.length; i++) {
            if (attributes[i].presentation()) {
                styles.with(attributes[i].name(), values[i]);
            }
        }
        Style known = styles.known();
        return known != null ? known : styles.remember(changed(inherited));
    }

    private Style changed(Style inherited) throws MarkupException {
        Style style = inherited;
        for (int i = 0; i < attributes.length; i++) {
            if (attributes[i].presentation()) {
                try {
                    style = Presentation.apply(style, attributes[i].name(), values[i]);
                } catch (BadValue e) {
                    throw wrong(attributes[i].name(), e);
                }
            }
        }
        return style;
    }

    private String find(String attribute) {
        for (int i = 0; i < attributes.length; i++) {
            // Literals both: the same name is the same string (Java Language Specification, 3.10.5).
            if (attributes[i].name() == attribute) {
                return values[i];
            }
        }
        return null;
    }
}
