package kitleaf.command;

import java.io.IOException;
import java.io.PrintWriter;
import java.util.concurrent.Callable;
import kitleaf.sizing.Reckoning;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** Gives all numbers and prints nothing. */
@Command(name = "reckon", header = "Give all the numbers of a basket; print nothing.", footerHeading = "%nExamples:%n", footer = {
    "  kitleaf reckon my-basket",
    "  kitleaf reckon my-basket --piece fog-bell --units cm",
    "  kitleaf reckon my-basket --json > numbers.json"})
final class ReckonCommand implements Callable<Integer> {

    @Mixin
    private BasketSource source;

    @Option(names = "--json", description = "As JSON, version 1: lengths in millimetres under keys ending in -mm.")
    private boolean json;

    @Spec
    private CommandSpec spec;

    @Override
    public Integer call() throws Failure, IOException {
        Reckoning reckoning = Reckoning.of(source.read());
        PrintWriter out = spec.commandLine().getOut();
        if (json) {
            ReckonJson.write(reckoning, out);
        } else {
            ReckonTable.write(reckoning, out);
        }
        return Exit.DONE;
    }
}
