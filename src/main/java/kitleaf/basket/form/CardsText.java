package kitleaf.basket.form;

import kitleaf.basket.CardGrid;
import kitleaf.basket.Goals;
import kitleaf.basket.place.Fault;
import kitleaf.basket.place.Quote;
import kitleaf.words.Said;

/** A grid of goal cards, columns by rows: {@code 3 x 3}. */
public record CardsText() implements Form<CardGrid> {

    private static final WholeText SIDE = new WholeText(1, Goals.MOST_CARDS, "3");

    @Override
    public CardGrid read(String text) throws Fault {
        String[] sides = text.strip().split("\\s*[xX×]\\s*", -1);
        if (sides.length != 2) {
            throw Fault.of("goals.cards", Quote.bare(text), example());
        }
        return new CardGrid(SIDE.read(sides[0]), SIDE.read(sides[1]));
    }

    @Override
    public String example() {
        return "3 x 3";
    }

    @Override
    public JsonShape shape() {
        return JsonShape.pattern("0*([1-9]|10)\\s*[xX×]\\s*0*([1-9]|10)", Said.of("note.cards", Goals.MOST_CARDS));
    }
}
