package kitleaf.command;

import java.io.PrintWriter;
import java.util.List;
import java.util.Optional;
import kitleaf.basket.Basket;
import kitleaf.command.speech.Exit;
import kitleaf.sheet.page.SheetKind;
import kitleaf.sheet.plain.PlainNotices;
import kitleaf.sizing.Reckoning;

/** Looks a basket over: what is wrong in it, and what its sheets will warn of. */
final class CheckCommand extends Task {

    private final BasketSource source = new BasketSource(this);

    CheckCommand(Kitleaf kitleaf) {
        super(kitleaf, "check");
    }

    @Override
    public Integer call() {
        Basket basket = source.read();
        Reckoning reckoning = Reckoning.of(basket);
        new RoomCheck(source, false, Optional.empty()).refuse(reckoning, List.of(SheetKind.values()));
        int pieces = basket.pieces().size();
        PrintWriter out = line().getOut();
        out.println(pieces == 1 ? voice().say("basket.sound.one", basket.title())
                : voice().say("basket.sound.many", basket.title(), pieces));
        List<String> notices = PlainNotices.of(reckoning, reckoning.year(ReckonCommand.usualDay(basket)), voice().language());
        if (!notices.isEmpty()) {
            out.println();
            out.println(voice().say("check.notices"));
            notices.forEach(notice -> out.println("  " + notice));
        }
        return Exit.DONE;
    }
}
