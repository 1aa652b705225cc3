package kitleaf.command;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.time.LocalDate;
import java.util.Optional;
import kitleaf.basket.Basket;
import kitleaf.command.json.ReckonJson;
import kitleaf.command.printing.Pipeline;
import kitleaf.command.speech.Exit;
import kitleaf.command.speech.ProgressLine;
import kitleaf.command.speech.Screen;
import kitleaf.sizing.Reckoning;
import kitleaf.sizing.year.YearReckoning;
import picocli.CommandLine.Model.OptionSpec;

/** Gives all numbers and prints nothing. */
final class ReckonCommand extends Task {

    private final BasketSource source = new BasketSource(this).takingOnePiece();
    private final OptionSpec json = add(Options.flag("--json"));
    private final OptionSpec asOf = add(Options.asOf());

    ReckonCommand(Kitleaf kitleaf) {
        super(kitleaf, "reckon");
    }

    @Override
    public Integer call() throws IOException {
        ProgressLine progress = new ProgressLine(line().getErr(), terminal().watched(), voice());
        Reckoning reckoning;
        Optional<YearReckoning> year;
        try {
            progress.step("progress.reading", source.basket().toString());
            Basket written = source.read();
            progress.step("progress.reckoning");
            LocalDate day = Options.<LocalDate>value(asOf).orElseGet(() -> usualDay(written));
            reckoning = Reckoning.of(Pipeline.seen(written, day, progress));
            year = reckoning.year(day);
        } finally {
            progress.clear();
        }
        // Half an answer looks like a whole one to the program that reads it: nothing is said before all of it is known.
        StringWriter whole = new StringWriter();
        PrintWriter text = Screen.onto(whole);
        if (Options.given(json)) {
            ReckonJson.write(reckoning, year, text);
        } else {
            ReckonTable.write(reckoning, year, source.named(), voice(), text);
        }
        line().getOut().print(whole);
        return Exit.DONE;
    }

    /** The day a year is looked at from where none is asked for: the latest in the data. */
    static LocalDate usualDay(Basket basket) {
        // Without goals any day will do, since nothing is looked at.
        return basket.latest().orElseGet(() -> basket.goals().map(goals -> LocalDate.of(goals.year(), 1, 1)).orElse(LocalDate.EPOCH));
    }
}
