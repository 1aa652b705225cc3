package kitleaf.command;

import java.io.IOException;
import java.io.PrintWriter;
import java.time.LocalDate;
import java.util.Optional;
import java.util.concurrent.Callable;
import kitleaf.basket.Basket;
import kitleaf.sizing.Reckoning;
import kitleaf.sizing.year.YearReckoning;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParentCommand;
import picocli.CommandLine.Spec;

/** Gives all numbers and prints nothing. */
@Command(name = "reckon")
final class ReckonCommand implements Callable<Integer> {

    @Mixin
    private BasketSource source;

    @Option(names = "--json")
    private boolean json;

    @Option(names = "--as-of", paramLabel = "DATE", converter = DayOption.class)
    private LocalDate asOf;

    @Option(names = "--plan-seconds", paramLabel = "N", converter = SecondsOption.class, defaultValue = PlanTime.USUAL)
    private PlanTime planTime;

    @ParentCommand
    private Kitleaf kitleaf;

    @Spec
    private CommandSpec spec;

    @Override
    public Integer call() throws Failure, IOException {
        ProgressLine progress = new ProgressLine(spec.commandLine().getErr(), kitleaf.terminal().watched(), kitleaf.voice());
        Reckoning reckoning;
        Optional<YearReckoning> year;
        try {
            progress.step("progress.reading", source.basket().toString());
            Basket basket = source.read();
            progress.step("progress.reckoning");
            reckoning = Reckoning.of(basket, planTime);
            year = reckoning.year(day(basket));
        } finally {
            progress.clear();
        }
        PrintWriter out = spec.commandLine().getOut();
        if (json) {
            ReckonJson.write(reckoning, year, out);
        } else {
            ReckonTable.write(reckoning, year, kitleaf.voice(), out);
        }
        return Exit.DONE;
    }

    private LocalDate day(Basket basket) {
        if (asOf != null) {
            return asOf;
        }
        // Without goals any day will do, since nothing is looked at.
        return basket.latest().orElseGet(() -> basket.goals().map(goals -> LocalDate.of(goals.year(), 1, 1)).orElse(LocalDate.EPOCH));
    }
}
