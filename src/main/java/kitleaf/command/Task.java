package kitleaf.command;

import java.util.concurrent.Callable;
import kitleaf.command.speech.Terminal;
import kitleaf.command.speech.Voice;
import kitleaf.words.Said;
import picocli.CommandLine;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.Model.PositionalParamSpec;

/**
 * One of the program's commands. What it takes is told to picocli in code: to read it from annotations takes longer than
 * to read a basket.
 */
abstract class Task implements Callable<Integer> {

    private final Kitleaf kitleaf;
    private final CommandSpec spec;

    Task(Kitleaf kitleaf, String name) {
        this.kitleaf = kitleaf;
        this.spec = CommandSpec.wrapWithoutInspection(this).name(name);
        add(help());
    }

    /** The option that asks for help. */
    static OptionSpec.Builder help() {
        return Options.flag("-h", "--help").usageHelp(true).descriptionKey("help");
    }

    /** Takes an option. */
    final OptionSpec add(OptionSpec.Builder option) {
        OptionSpec built = option.build();
        spec.addOption(built);
        return built;
    }

    /** Takes an argument. */
    final PositionalParamSpec add(PositionalParamSpec.Builder argument) {
        PositionalParamSpec built = argument.build();
        spec.addPositional(built);
        return built;
    }

    final CommandSpec spec() {
        return spec;
    }

    /** Where it writes. */
    final CommandLine line() {
        return spec.commandLine();
    }

    /** Says what keeps it. */
    final void complain(Said said) {
        line().getErr().println(voice().say(said));
    }

    final Terminal terminal() {
        return kitleaf.terminal();
    }

    final Voice voice() {
        return kitleaf.voice();
    }
}
