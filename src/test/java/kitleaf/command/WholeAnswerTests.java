package kitleaf.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.OutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import kitleaf.command.speech.Terminal;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What is meant for other programs comes whole or not at all. */
class WholeAnswerTests {

    /** Looks, at every byte, which of our classes are at work behind the one that writes. */
    private static final class Witness extends OutputStream {

        private final Set<String> atWork = new TreeSet<>();
        private long bytes;

        @Override
        public void write(int b) {
            bytes++;
            StackWalker.getInstance().forEach(frame -> atWork.add(frame.getClassName()));
        }

        @Override
        public void write(byte[] some, int from, int number) {
            write(0);
            bytes += number - 1;
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"reckon --json", "reckon", "threads"})
    void nothing_is_written_while_figures_are_still_gathered(String command) {
        Witness witness = new Witness();
        ByteArrayOutputStream err = new ByteArrayOutputStream();
        String[] arguments = Stream.concat(Stream.of(command.split(" ")), Stream.of(Path.of("examples/harbour").toString())).toArray(String[]::new);
        int code = Kitleaf.run(arguments, Terminal.here(), Map.of(), new PrintStream(witness, true, StandardCharsets.UTF_8), new PrintStream(err, true, StandardCharsets.UTF_8));
        assertEquals(0, code, err.toString(StandardCharsets.UTF_8));
        assertTrue(witness.bytes > 1000, "something was written");
        assertTrue(witness.atWork.contains("kitleaf.command.Kitleaf"), "somebody was seen writing it");
        Set<String> gathering = new TreeSet<>(witness.atWork);
        gathering.removeIf(name -> !name.matches("kitleaf\\.(sizing|sheet|basket)\\..*|kitleaf\\.command\\.(ReckonTable|\\w+Json)"));
        assertEquals(Set.of(), gathering);
    }
}
