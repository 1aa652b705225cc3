package kitleaf.command;

import picocli.AutoComplete;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;

/** Writes the script by which a shell completes commands, options and their words. */
@Command(name = "completion", header = "Write a script that lets bash or zsh complete what you type.",
        description = "%nAfter it, the Tab key fills in commands, options and the names of sheets. The program must be called kitleaf.%n",
        footerHeading = "%nExamples:%n", footer = {
            "  source <(kitleaf completion)                    (this window, bash or zsh)",
            "  kitleaf completion > ~/.kitleaf-completion      (then source that at start)"})
final class CompletionCommand implements Runnable {

    @Spec
    private CommandSpec spec;

    @Override
    public void run() {
        spec.commandLine().getOut().print(AutoComplete.bash("kitleaf", spec.root().commandLine()));
        spec.commandLine().getOut().flush();
    }
}
