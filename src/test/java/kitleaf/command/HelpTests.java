package kitleaf.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Stream;
import kitleaf.Phrases;
import kitleaf.command.speech.Terminal;
import kitleaf.command.speech.Voice;
import kitleaf.sheet.page.SheetKind;
import kitleaf.words.Words;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import picocli.CommandLine;
import picocli.CommandLine.Model.ArgSpec;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.UsageMessageSpec;

/** The help against the commands it is of, in both languages. */
class HelpTests {

    private static final Phrases PHRASES = new Phrases(Path.of("src/main/resources/kitleaf/command/help"), Path.of("src/main/java/kitleaf/command"));

    private static CommandLine line(Locale language) {
        CommandLine line = Kitleaf.line(Terminal.NONE, new Voice(language), "help");
        line.setResourceBundle(Words.bundle("kitleaf.command.help", language));
        return line;
    }

    /** All texts of a command's help and of its subcommands', with what they are of. */
    private static List<String> texts(CommandSpec command) {
        List<String> texts = new ArrayList<>();
        UsageMessageSpec usage = command.usageMessage();
        Stream.of(usage.header(), usage.description()).flatMap(Stream::of).forEach(texts::add);
        Stream.of(usage.footerHeading(), usage.synopsisHeading(), usage.commandListHeading(), usage.exitCodeListHeading())
                .filter(text -> !text.isBlank()).forEach(texts::add);
        Stream.of(usage.footer()).filter(text -> !text.strip().startsWith("kitleaf ")).forEach(texts::add);
        usage.exitCodeList().values().stream().forEach(texts::add);
        assertTrue(usage.header().length > 0, command.qualifiedName() + " says nothing of itself");
        for (ArgSpec argument : command.args()) {
            assertTrue(argument.description().length > 0, command.qualifiedName() + ": nothing is said of " + argument.paramLabel());
            texts.addAll(List.of(argument.description()));
        }
        for (CommandLine sub : new ArrayList<>(command.subcommands().values())) {
            texts.addAll(texts(sub.getCommandSpec()));
        }
        return texts;
    }

    @Test
    void bothLanguagesHaveTheSameTexts() throws IOException {
        assertEquals(PHRASES.slots(""), PHRASES.slots("_de"));
    }

    @Test
    void everyTextOfTheHelpIsThereInGerman() {
        List<String> english = texts(line(Locale.ENGLISH).getCommandSpec());
        List<String> german = texts(line(Locale.GERMAN).getCommandSpec());
        assertEquals(english.size(), german.size());
        assertTrue(english.size() > 30, english.size() + " texts");
        Set<String> same = new TreeSet<>(english);
        same.retainAll(german);
        assertEquals(Set.of(), same);
    }

    @ParameterizedTest
    @EnumSource(SheetKind.class)
    void everySheetIsNamedWhereSheetsAreAskedFor(SheetKind kind) throws IOException {
        for (Locale language : List.of(Locale.ENGLISH, Locale.GERMAN)) {
            for (String command : List.of("print", "watch")) {
                String help = Words.bundle("kitleaf.command.help", language).getString("kitleaf." + command + ".only");
                assertTrue(help.contains(kind.id()), command + " in " + language + ": " + help);
            }
        }
        assertTrue(Files.readString(Path.of("README.md")).contains(kind.id()), "README.md says nothing of " + kind.id());
    }

    /** picocli's own looks for a text it has no key for in vain, so a text without a user would go unnoticed. */
    @Test
    void everyTextIsSeenInSomeHelp() {
        Map<String, String> unseen = new TreeMap<>();
        String seen = String.join("\n", allOf(line(Locale.GERMAN).getCommandSpec()));
        Words.bundle("kitleaf.command.help", Locale.GERMAN).keySet().forEach(key -> {
            String text = Words.bundle("kitleaf.command.help", Locale.GERMAN).getString(key).replaceFirst("^[0-9]:", "");
            if (!seen.contains(text)) {
                unseen.put(key, text);
            }
        });
        assertEquals(Map.of(), unseen);
    }

    private static List<String> allOf(CommandSpec command) {
        List<String> all = new ArrayList<>(texts(command));
        all.addAll(List.of(command.usageMessage().footer()));
        command.subcommands().values().forEach(sub -> all.addAll(allOf(sub.getCommandSpec())));
        return all;
    }

    @Test
    void helpSpeaksTheLanguageOfTheSurroundings() {
        Map<String, String> germany = Map.of("LC_ALL", "de_DE.UTF-8");
        assertTrue(Ran.in(germany, "help", "print").out().startsWith("Die Blätter eines Korbs als PDF drucken.\nAufruf: kitleaf print "));
        assertTrue(Ran.in(germany).out().contains("\nBefehle:\n  print "));
        assertTrue(Ran.in(germany, "help", "help").out().contains("Ohne COMMAND werden alle genannt."));
        assertTrue(Ran.kitleaf("help", "print").out().startsWith("Print the sheets of a basket as PDF.\nUsage: kitleaf print "));
    }

    @ParameterizedTest
    @ValueSource(strings = {"print", "reckon", "check", "new", "log", "watch", "threads", "schema", "completion"})
    void everyCommandGivesItsHelpWhenAskedForIt(String command) {
        Ran help = Ran.kitleaf("help", command);
        assertEquals(help, Ran.kitleaf(command, "--help"));
        assertEquals(help, Ran.kitleaf(command, "-h"));
        assertEquals(0, help.code());
    }

    @Test
    void theProgramGivesItsHelpWhenAskedForIt() {
        Ran help = Ran.kitleaf("--help");
        assertEquals(0, help.code());
        assertTrue(help.out().contains("Usage: kitleaf [-hV] [COMMAND]\n"), help.out());
        for (String command : List.of("print", "reckon", "check", "new", "log", "watch", "threads", "schema", "completion", "help")) {
            assertTrue(help.out().contains("\n  " + command + "  "), command + " is not in: " + help.out());
        }
        Ran asked = Ran.kitleaf("help");
        assertEquals(0, asked.code());
        assertEquals(help.out(), asked.out());
    }
}
