package kitleaf.command;

import picocli.AutoComplete;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;

/** Writes the script by which a shell completes commands, options and their words. */
@Command(name = "completion")
final class CompletionCommand implements Runnable {

    @Spec
    private CommandSpec spec;

    @Override
    public void run() {
        spec.commandLine().getOut().print(AutoComplete.bash("kitleaf", spec.root().commandLine()));
        spec.commandLine().getOut().flush();
    }
}
