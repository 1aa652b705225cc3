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
            throw Fault.of("text.empty", example);
        }
        if (Quote.hides(stripped)) {
            throw Fault.of("text.hidden", Quote.bare(stripped));
        }
        int length = stripped.codePointCount(0, stripped.length());
        if (length > most) {
            throw Fault.of("text.long", Quote.bare(stripped), length, most);
        }
        return stripped;
    }

    @Override
    public JsonShape shape() {
        return JsonShape.words(most);
    }
}
