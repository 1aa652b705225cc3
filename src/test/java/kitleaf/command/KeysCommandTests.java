package kitleaf.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import kitleaf.basket.key.Key;
import kitleaf.basket.reader.PieceReader;
import kitleaf.basket.reader.SettingsReader;
import org.junit.jupiter.api.Test;

/** {@code kitleaf help keys} tells of every key that readers take. */
class KeysCommandTests {

    @Test
    void thePageAmongTheExamplesIsTheLatest() throws IOException {
        assertEquals(Ran.kitleaf("help", "keys", "--page", "--language", "en").out(), Files.readString(Path.of("examples/keys.md")),
                "write it again: mvn -q -DskipTests package && "
                        + "java -jar target/kitleaf.jar help keys --page --language en > examples/keys.md");
    }

    @Test
    void allKeysOfBothFilesAreNamedAndToldOfOneByOne() {
        String all = Ran.kitleaf("help", "keys").out();
        TreeSet<String> named = new TreeSet<>(List.of(all.split("[,\\s]+")));
        for (Key<?> key : PieceReader.KEYS.all()) {
            assertTrue(named.contains(key.name()), key.name());
            String told = Ran.kitleaf("help", "keys", key.name()).out();
            assertTrue(told.contains(key.name() + " (each file in pieces)\n" + (key.needed() ? "Needed. " : "May be left out. ")), told);
            key.shown().stream().filter(example -> !example.startsWith("- ") && !example.contains("\n"))
                    .forEach(example -> assertTrue(told.contains("\n  " + key.name() + ": " + example + "\n"), told));
        }
        for (Key<?> key : SettingsReader.KEYS.all()) {
            assertTrue(named.contains(key.name()), key.name());
            assertTrue(Ran.kitleaf("help", "keys", key.name()).out().contains(key.name() + " (basket.yaml)\n"), key.name());
        }
    }

    @Test
    void aKeyIsToldOfWithThoseBelowItAndItsWords() {
        String over = Ran.kitleaf("help", "keys", "cloth.kind").out();
        assertEquals("kind (cloth)\nMay be left out. What it is woven as. One of: linen, evenweave, block.\n  kind: linen\n",
                over.substring(0, over.indexOf("linen\n", over.indexOf("  kind")) + 6));
        assertTrue(Ran.kitleaf("help", "keys", "cloth").out().contains("Keys below it: name, kind, count, over, shrink"));
        assertEquals(Ran.kitleaf("help", "keys", "progress.log.hours").out(), Ran.kitleaf("help", "keys", "log.hours").out());
        assertEquals("", Ran.kitleaf("help", "keys", "log.hours").err());
    }

    @Test
    void aSlipIsMetWithWhatWasMeant() {
        Ran ran = Ran.kitleaf("help", "keys", "progres");
        assertEquals(2, ran.code());
        assertEquals("there is no key \"progres\"; did you mean progress?\n", ran.err());
        assertEquals("there is no key \"zzzzzz\"; see them all: kitleaf help keys\n", Ran.kitleaf("help", "keys", "zzzzzz").err());
    }

    @Test
    void itSpeaksTheLanguageOfTheSurroundingsOrTheOneNamed() {
        String german = Ran.kitleaf("help", "keys", "log.hours", "--language", "de").out();
        assertTrue(german.startsWith("hours (progress.log)\nKann fehlen. Stunden am Rahmen"), german);
        assertEquals(german, Ran.in(Map.of("LANG", "de_DE.UTF-8"), "help", "keys", "log.hours").out());
        assertTrue(Ran.kitleaf("help", "keys", "--help").out().contains("Usage: kitleaf help keys"));
    }
}
