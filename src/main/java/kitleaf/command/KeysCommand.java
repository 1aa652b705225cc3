package kitleaf.command;

import java.util.Locale;
import java.util.Optional;
import kitleaf.basket.schema.KeyGuide;
import kitleaf.command.speech.Exit;
import kitleaf.words.Said;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.Model.PositionalParamSpec;
import picocli.CommandLine.ParseResult;

/** Tells of the keys that can stand in a basket: all by where they stand, or all of one. */
final class KeysCommand extends Task {

    private final PositionalParamSpec key = add(PositionalParamSpec.builder().index("0").arity("0..1")
            .paramLabel("KEY").type(String.class));
    private final OptionSpec language = add(Options.language());
    private final OptionSpec page = add(Options.flag("--page"));

    KeysCommand(Kitleaf kitleaf) {
        super(kitleaf, "keys");
    }

    /** This command, if it is what was asked for. */
    static Optional<KeysCommand> of(ParseResult parsed) {
        return parsed.hasSubcommand() ? of(parsed.subcommand())
                : Optional.of(parsed.commandSpec().userObject()).filter(KeysCommand.class::isInstance).map(KeysCommand.class::cast);
    }

    @Override
    public Integer call() {
        if (line().isUsageHelpRequested()) {
            line().usage(line().getOut());
            return Exit.DONE;
        }
        Options.<Locale>value(language).ifPresent(voice()::turnTo);
        KeyGuide guide = new KeyGuide(voice().language());
        Optional<String> asked = Options.value(key);
        Optional<String> told = asked.isEmpty() ? Optional.of(Options.given(page) ? guide.page() : guide.list()) : guide.about(asked.get());
        if (told.isEmpty()) {
            complain(Said.of("usage.unknown-key", asked.get(), guide.meant(asked.get())));
            return Exit.WRONG_USAGE;
        }
        line().getOut().print(told.get());
        return Exit.DONE;
    }
}
