package kitleaf.command;

import java.io.PrintWriter;
import java.time.LocalDate;
import kitleaf.basket.Basket;
import kitleaf.command.printing.Pipeline;
import kitleaf.command.speech.Exit;
import kitleaf.command.speech.ProgressLine;
import kitleaf.sheet.plain.PlainTonight;
import kitleaf.sizing.Reckoning;
import kitleaf.sizing.year.Tonight;
import picocli.CommandLine.Model.OptionSpec;

/** Says what lies ready for this evening: the piece in focus, the one beside it, and what an evening is worth. */
final class TonightCommand extends Task {

    private final BasketSource source = new BasketSource(this);
    private final OptionSpec asOf = add(Options.asOf());

    TonightCommand(Kitleaf kitleaf) {
        super(kitleaf, "tonight");
    }

    @Override
    public Integer call() {
        LocalDate day = Options.<LocalDate>value(asOf).orElseGet(LocalDate::now);
        Basket basket = Pipeline.seen(source.read(), day, new ProgressLine(line().getErr(), terminal().watched(), voice()));
        PrintWriter out = line().getOut();
        new PlainTonight(voice().language()).of(Tonight.of(Reckoning.of(basket), day)).forEach(out::println);
        return Exit.DONE;
    }
}
