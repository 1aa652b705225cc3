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
@Command(name = "reckon", header = "Give all the numbers of a basket; print nothing.", footerHeading = "%nExamples:%n", footer = {
    "  kitleaf reckon my-basket",
    "  kitleaf reckon my-basket --piece fog-bell --units cm",
    "  kitleaf reckon my-basket --as-of 2027-03-31",
    "  kitleaf reckon my-basket --json > numbers.json"})
final class ReckonCommand implements Callable<Integer> {

    @Mixin
    private BasketSource source;

    @Option(names = "--json", description = "As JSON, version 1: lengths in millimetres under keys ending in -mm.")
    private boolean json;

    @Option(names = "--as-of", paramLabel = "DATE", converter = DayOption.class,
            description = "The day the goals are looked from. Default: the latest day of any progress, else the goals year's first.")
    private LocalDate asOf;

    @Option(names = "--plan-seconds", paramLabel = "N", converter = SecondsOption.class, defaultValue = PlanTime.USUAL,
            description = "How long a cloth plan may be searched for, in seconds; 0 takes what a moment's search finds. Default: 5.")
    private PlanTime planTime;

    @ParentCommand
    private Kitleaf kitleaf;

    @Spec
    private CommandSpec spec;

    @Override
    public Integer call() throws Failure, IOException {
        ProgressLine progress = new ProgressLine(spec.commandLine().getErr(), kitleaf.terminal().watched());
        Reckoning reckoning;
        Optional<YearReckoning> year;
        try {
            progress.step("reading " + source.basket());
            Basket basket = source.read();
            progress.step("reckoning");
            reckoning = Reckoning.of(basket, planTime);
            year = reckoning.year(day(basket));
        } finally {
            progress.clear();
        }
        PrintWriter out = spec.commandLine().getOut();
        if (json) {
            ReckonJson.write(reckoning, year, out);
        } else {
            ReckonTable.write(reckoning, year, out);
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
