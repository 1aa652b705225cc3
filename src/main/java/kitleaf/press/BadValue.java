package kitleaf.press;

/** An attribute's value that cannot be read; {@link Element} adds the element and the place. */
final class BadValue extends Exception {

    private static final long serialVersionUID = 1L;

    BadValue(String message) {
        super(message);
    }
}
