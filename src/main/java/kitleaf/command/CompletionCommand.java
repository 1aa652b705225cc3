package kitleaf.command;

import kitleaf.command.speech.Exit;
import picocli.AutoComplete;

/** Writes the script by which a shell completes commands, options and their words. */
final class CompletionCommand extends Task {

    CompletionCommand(Kitleaf kitleaf) {
        super(kitleaf, "completion");
    }

    @Override
    public Integer call() {
        line().getOut().print(AutoComplete.bash("kitleaf", spec().root().commandLine()));
        line().getOut().flush();
        return Exit.DONE;
    }
}
