package kitleaf.basket;

/**
 * Words of her own: any text on one line, stripped and composed (Unicode NFC).
 *
 * @param most the most characters taken
 * @param example one to show her
 */
record TextForm(int most, String example) implements Form<String> {

    /** The longest text taken anywhere: it must fit a tag. */
    static final int LONGEST = 200;

    TextForm(String example) {
        this(LONGEST, example);
    }

    @Override
    public String read(String text) throws Fault {
        String stripped = Quote.composed(text.strip());
        if (stripped.isEmpty()) {
            throw new Fault("this text is empty", "write something, such as " + example);
        }
        if (stripped.codePoints().anyMatch(Quote::hidden)) {
            throw new Fault(Quote.of(stripped) + " holds a line break, tab or other sign that does not show",
                    "write it on one line with plain spaces");
        }
        int length = stripped.codePointCount(0, stripped.length());
        if (length > most) {
            throw new Fault(Quote.of(stripped) + " has " + length + " characters", "write at most " + most);
        }
        return stripped;
    }

    @Override
    public JsonShape shape() {
        return JsonShape.words(most);
    }
}
