package kitleaf.command;

import java.io.IOException;
import java.util.concurrent.Callable;
import kitleaf.basket.ThreadsCsv;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;

/** Gives the threads of a basket as a table. */
@Command(name = "threads")
final class ThreadsCommand implements Callable<Integer> {

    @Mixin
    private BasketSource source;

    @Spec
    private CommandSpec spec;

    @Override
    public Integer call() throws Failure, IOException {
        ThreadsCsv.write(source.read().pieces(), spec.commandLine().getOut());
        return Exit.DONE;
    }
}
