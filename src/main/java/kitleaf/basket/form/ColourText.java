package kitleaf.basket.form;

import java.util.Locale;
import kitleaf.basket.place.Fault;
import kitleaf.basket.place.Quote;
import kitleaf.basket.thread.Colour;
import kitleaf.words.Said;

/** A colour: {@code #rgb} or {@code #rrggbb}. */
public record ColourText() implements Form<Colour> {

    private static final int SHORT = 3;

    @Override
    public Colour read(String text) throws Fault {
        String low = text.strip().toLowerCase(Locale.ROOT);
        if (Colour.isHex(low, Colour.DIGITS)) {
            return new Colour(low);
        }
        if (Colour.isHex(low, SHORT)) {
            return new Colour(low.replaceAll("[0-9a-f]", "$0$0"));
        }
        throw Fault.of("colour", Quote.bare(text), example());
    }

    @Override
    public String example() {
        return "\"#6b7f8c\"";
    }

    @Override
    public JsonShape shape() {
        return JsonShape.pattern("#([0-9a-fA-F]{3}|[0-9a-fA-F]{6})", Said.of("note.colour"));
    }
}
