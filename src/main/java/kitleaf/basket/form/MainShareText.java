package kitleaf.basket.form;

import java.util.List;
import kitleaf.basket.place.Fault;
import kitleaf.basket.place.Quote;
import kitleaf.words.Said;

/** The main piece's part of her time, a percentage above a half: with less, the other piece would be the main one. */
public record MainShareText() implements Form<Double> {

    private static final PercentText PERCENT = new PercentText(1, "main-share.whole", "70%");

    @Override
    public Double read(String text) throws Fault {
        double share = PERCENT.read(text);
        if (!(share > 0.5)) {
            throw Fault.of("main-share.lesser", Quote.bare(text));
        }
        return share;
    }

    @Override
    public String example() {
        return PERCENT.example();
    }

    @Override
    public JsonShape shape() {
        return new JsonShape(PERCENT.shape().alternatives(), List.of(Said.of("main-share.lesser.write")));
    }
}
