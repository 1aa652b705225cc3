package kitleaf.basket.form;

import kitleaf.basket.place.Fault;
import kitleaf.basket.place.Quote;
import kitleaf.basket.place.Visible;

/**
 * Words of her own: any text on one line of which something is seen, as it is {@link Visible seen}.
 *
 * @param most the most characters taken
 * @param example one to show her
 */
public record TextForm(int most, String example) implements Form<String> {

    /** The longest text taken anywhere: it must fit a tag. */
    public static final int LONGEST = 200;

    public TextForm(String example) {
        this(LONGEST, example);
    }

    @Override
    public String read(String text) throws Fault {
        if (text.isBlank()) {
            throw Fault.of("text.empty", example);
        }
        if (Quote.hides(text.strip())) {
            throw Fault.of("text.hidden", Quote.bare(text));
        }
        if (Visible.nothing(text)) {
            throw Fault.of("text.unseen", example);
        }
        String seen = Visible.of(text);
        int length = seen.codePointCount(0, seen.length());
        if (length > most) {
            throw Fault.of("text.long", Quote.bare(seen), length, most);
        }
        return seen;
    }

    @Override
    public JsonShape shape() {
        return JsonShape.words(most);
    }
}
