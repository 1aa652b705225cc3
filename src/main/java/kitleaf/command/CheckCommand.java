package kitleaf.command;

import kitleaf.basket.Basket;

/** Looks a basket over. */
final class CheckCommand extends Task {

    private final BasketSource source = new BasketSource(this);

    CheckCommand(Kitleaf kitleaf) {
        super(kitleaf, "check");
    }

    @Override
    public Integer call() throws Failure {
        Basket basket = source.read();
        int pieces = basket.pieces().size();
        line().getOut().println(pieces == 1 ? voice().say("basket.sound.one", basket.title())
                : voice().say("basket.sound.many", basket.title(), pieces));
        return Exit.DONE;
    }
}
