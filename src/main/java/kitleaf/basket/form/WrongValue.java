package kitleaf.basket.form;

import kitleaf.basket.place.BasketWords;
import kitleaf.basket.place.Fault;
import kitleaf.words.Said;
import kitleaf.words.Words;

/** A value outside a file that cannot be read: what is wrong with it, and what to write instead. */
public final class WrongValue extends IllegalArgumentException {

    private static final long serialVersionUID = 1L;

    private final transient Said wrong;
    private final transient Said write;

    /** What a fault says. */
    public WrongValue(Fault fault) {
        super(fault.getMessage());
        this.wrong = fault.wrong();
        this.write = fault.write();
    }

    /** Both in a sentence, in the words of {@link BasketWords}. */
    public String told(Words words) {
        return words.say(wrong) + "; " + words.say(write);
    }
}
