package kitleaf.command;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import kitleaf.basket.form.WrongValue;
import kitleaf.command.speech.Failure;
import kitleaf.command.speech.Voice;
import kitleaf.sheet.page.SheetKind;
import kitleaf.words.Said;
import kitleaf.words.Shown;
import picocli.CommandLine.MaxValuesExceededException;
import picocli.CommandLine.MissingParameterException;
import picocli.CommandLine.Model.ArgSpec;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.OverwrittenOptionException;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.UnmatchedArgumentException;

/** Puts into phrases what is wrong with arguments, which picocli says in English alone. */
final class Usage {

    private final ParameterException wrong;
    private final List<String> words;

    /**
     * What is wrong.
     *
     * @param words all that was typed
     */
    Usage(ParameterException wrong, String... words) {
        this.wrong = wrong;
        this.words = List.of(words);
    }

    /** What is wrong with the arguments. */
    String told(Voice voice) {
        String value = wrong.getCause() instanceof WrongValue unreadable ? voice.say(unreadable)
                : wrong.getCause() instanceof Failure refused ? refused.told(voice) : null;
        if (value != null) {
            return wrong.getArgSpec() instanceof OptionSpec option ? voice.say("usage.option", option.longestName(), value) : value;
        }
        return phrase().map(voice::say).orElseGet(() -> Shown.inOneLine(String.valueOf(wrong.getMessage())));
    }

    private Optional<Said> phrase() {
        if (wrong instanceof UnmatchedArgumentException stray) {
            return Optional.of(unmatched(stray));
        } else if (wrong instanceof MissingParameterException missing) {
            return Optional.of(missing(missing.getMissing()));
        } else if (wrong instanceof OverwrittenOptionException twice) {
            return Optional.of(Said.of("usage.twice", ((OptionSpec) twice.getOverwritten()).longestName()));
        } else if (wrong instanceof MaxValuesExceededException) {
            return flagWithValue();
        }
        // What is left is help for a command that is not there.
        return wrong.getArgSpec() == null && words.size() > 1 ? Optional.of(Said.of("usage.unknown-command", words.get(1)))
                : Optional.empty();
    }

    private Optional<Said> flagWithValue() {
        return words.stream().map(word -> word.split("=", 2))
                .filter(parts -> parts.length == 2 && spec().findOption(parts[0]) != null && spec().findOption(parts[0]).arity().max() == 0)
                .findFirst().map(parts -> Said.of("usage.no-value", parts[0], parts[1]));
    }

    private CommandSpec spec() {
        return wrong.getCommandLine().getCommandSpec();
    }

    private Said missing(List<ArgSpec> missing) {
        ArgSpec first = missing.get(0);
        int typed = first instanceof OptionSpec option ? lastOf(option) : -1;
        if (typed < 0) {
            // No option has to be there; what is missing is what a command is about, and there is one of these.
            return Said.of("usage.missing-parameter", name(first));
        }
        String name = ((OptionSpec) first).longestName();
        return typed + 1 < words.size() ? Said.of("usage.option-as-value", name, words.get(typed + 1))
                : Said.of("usage.missing-value", name, first.paramLabel());
    }

    /** Where the last of an option stands in what was typed; -1 if it is not there. */
    private int lastOf(OptionSpec option) {
        return Arrays.stream(option.names()).mapToInt(words::lastIndexOf).max().orElse(-1);
    }

    /** An option as it is typed, or an argument. */
    private static String name(ArgSpec spec) {
        return spec instanceof OptionSpec option ? option.longestName() + (option.arity().max() == 0 ? "" : " " + option.paramLabel())
                : spec.paramLabel();
    }

    private Said unmatched(UnmatchedArgumentException stray) {
        List<String> unmatched = stray.getUnmatched();
        if (stray.isUnknownOption()) {
            // What follows an unknown option is its value, and not another.
            List<String> options = unmatched.stream().filter(word -> word.startsWith("-"))
                    .map(word -> word.replaceFirst("=", " ")).toList();
            return Said.of(options.size() == 1 ? "usage.unknown-option" : "usage.unknown-options", String.join(", ", options));
        }
        if (wrong.getCommandLine().getParent() == null) {
            return Said.of("usage.unknown-command", unmatched.get(0));
        }
        List<String> sheets = Stream.of(SheetKind.values()).map(SheetKind::id).toList();
        if (unmatched.stream().allMatch(word -> sheets.containsAll(List.of(word.split(","))))) {
            return Said.of("usage.sheets");
        }
        return Said.of(unmatched.size() == 1 ? "usage.unmatched" : "usage.unmatched-all", String.join(", ", unmatched));
    }

    /** What may have been meant. */
    Optional<Said> meant() {
        if (!(wrong instanceof UnmatchedArgumentException unmatched)) {
            return Optional.empty();
        }
        List<String> near = unmatched.getSuggestions();
        if (near.isEmpty()) {
            return Optional.empty();
        }
        if (unmatched.isUnknownOption()) {
            return Optional.of(Said.of("usage.near-options", String.join(", ", near)));
        }
        String command = spec().qualifiedName() + " ";
        return near.stream().<Object>map(one -> command + one).reduce((one, other) -> Said.of("usage.or", one, other))
                .map(all -> Said.of("usage.near", all));
    }
}
