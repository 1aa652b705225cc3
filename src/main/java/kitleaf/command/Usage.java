package kitleaf.command;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import kitleaf.sheet.page.SheetKind;
import kitleaf.words.Said;
import kitleaf.words.Shown;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.UnmatchedArgumentException;

/**
 * Puts into phrases what is wrong with arguments. picocli says it in English alone, so its sentences are told apart
 * by their words; one that is not known here is passed on as it is.
 */
final class Usage {

    private static final Map<Pattern, String> SENTENCES = sentences();

    private Usage() { }

    private static Map<Pattern, String> sentences() {
        Map<Pattern, String> sentences = new LinkedHashMap<>();
        sentences.put(Pattern.compile("Missing required parameter: (.+)"), "usage.missing-parameter");
        sentences.put(Pattern.compile("Missing required parameters: (.+)"), "usage.missing-parameters");
        sentences.put(Pattern.compile("Missing required option: (.+)"), "usage.missing-option");
        sentences.put(Pattern.compile("Missing required options: (.+)"), "usage.missing-options");
        sentences.put(Pattern.compile("Missing required options and parameters: (.+)"), "usage.missing-both");
        sentences.put(Pattern.compile("Missing required parameter for option (.+?)(?: \\((.+)\\))?"), "usage.missing-value");
        sentences.put(Pattern.compile("Expected parameter for option (.+) but found (.+)"), "usage.option-as-value");
        sentences.put(Pattern.compile("Unknown option: (.+)"), "usage.unknown-option");
        sentences.put(Pattern.compile("Unknown options: (.+)"), "usage.unknown-options");
        sentences.put(Pattern.compile("Unmatched argument at index [0-9]+: (.+)"), "usage.unmatched");
        sentences.put(Pattern.compile("Unmatched arguments from index [0-9]+: (.+)"), "usage.unmatched-all");
        sentences.put(Pattern.compile("Unknown subcommand (.+)\\."), "usage.unknown-command");
        sentences.put(Pattern.compile("option (.+?)(?: \\(.+\\))? should be specified only once"), "usage.twice");
        sentences.put(Pattern.compile("option (.+?)(?: \\(.+\\))? should be specified without (.+) parameter"), "usage.no-value");
        return sentences;
    }

    /** What is wrong with the arguments. */
    static String wrong(ParameterException e, Voice voice) {
        String sentence = Shown.inOneLine(String.valueOf(e.getMessage()));
        if (e.getCause() instanceof Unreadable unreadable) {
            Matcher option = Pattern.compile("Invalid value for option (.+): " + Pattern.quote(unreadable.getMessage())).matcher(sentence);
            return option.matches() ? voice.say("usage.option", plain(option.group(1).replaceFirst(" \\(.+\\)$", "")),
                    unreadable.told(voice))
                    : unreadable.told(voice);
        }
        Optional<String> stray = e instanceof UnmatchedArgumentException unmatched && !unmatched.isUnknownOption() ? stray(unmatched)
                : Optional.empty();
        if (stray.isPresent()) {
            List<String> words = ((UnmatchedArgumentException) e).getUnmatched();
            return voice.say(stray.get(), words.get(0), String.join(",", words));
        }
        for (Map.Entry<Pattern, String> known : SENTENCES.entrySet()) {
            Matcher parts = known.getKey().matcher(sentence);
            if (parts.matches()) {
                return voice.say(known.getValue(), IntStream.rangeClosed(1, parts.groupCount())
                        .mapToObj(group -> plain(String.valueOf(parts.group(group)))).toArray());
            }
        }
        return sentence;
    }

    /** How words are told that no option and no argument takes, where it is plain what they were meant for. */
    private static Optional<String> stray(UnmatchedArgumentException e) {
        if (e.getCommandLine().getParent() == null) {
            return Optional.of("usage.unknown-command");
        }
        List<String> sheets = Stream.of(SheetKind.values()).map(SheetKind::id).toList();
        return e.getUnmatched().stream().allMatch(word -> sheets.containsAll(List.of(word.split(",")))) ? Optional.of("usage.sheets")
                : Optional.empty();
    }

    /** Options and words as they are typed: without the quotes picocli puts round them, and with a blank before a value. */
    private static String plain(String words) {
        return words.replaceAll("'([^']*)'", "$1").replaceAll("(--[a-z-]+)=", "$1 ");
    }

    /** What may have been meant. */
    static Optional<Said> meant(ParameterException e) {
        if (!(e instanceof UnmatchedArgumentException unmatched)) {
            return Optional.empty();
        }
        List<String> near = unmatched.getSuggestions();
        if (near.isEmpty()) {
            return Optional.empty();
        }
        if (unmatched.isUnknownOption()) {
            return Optional.of(Said.of("usage.near-options", String.join(", ", near)));
        }
        String command = e.getCommandLine().getCommandSpec().qualifiedName() + " ";
        Object all = command + near.get(near.size() - 1);
        for (int i = near.size() - 2; i >= 0; i--) {
            all = Said.of("usage.or", command + near.get(i), all);
        }
        return Optional.of(Said.of("usage.near", all));
    }
}
