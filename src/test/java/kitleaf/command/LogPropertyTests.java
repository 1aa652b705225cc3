package kitleaf.command;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;
import kitleaf.basket.HowFar;
import kitleaf.basket.LogEntry;
import kitleaf.basket.Piece;
import kitleaf.basket.reader.BasketReader;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.lifecycle.AfterContainer;
import net.jqwik.api.lifecycle.BeforeContainer;

class LogPropertyTests {

    private static final LogEntry ENTRY = new LogEntry(LocalDate.of(2026, 5, 4), 1.25, 77);

    private static Path folder;

    @BeforeContainer
    static void makeFolder() throws IOException {
        folder = Files.createTempDirectory("log");
    }

    @AfterContainer
    static void dropFolder() throws IOException {
        try (Stream<Path> files = Files.walk(folder)) {
            for (Path file : files.sorted(Comparator.reverseOrder()).toList()) {
                Files.delete(file);
            }
        }
    }

    /** Texts as people write them: the ways to say progress, with remarks, blank lines and line ends anywhere. */
    @Provide
    Arbitrary<String> texts() {
        Arbitrary<String> remark = Arbitraries.of("", "", " # fog", "   # 'half\" {a: [b # ✂ 🧵");
        Arbitrary<String> gap = Arbitraries.of("", "", "\n", "# a line\n", "#progress: {log: []}\n", "\n\n# log: [] --- progress:\n", "   # deep\n");
        Arbitrary<String> indent = Arbitraries.of("  ", "    ", " ");
        Arbitrary<String> entry = Arbitraries.of("{on: 2026-03-01, hours: 2.5, stitches: 260}", "{on: 2026-06-01, hours: 1, stitches: 0}",
                "{ \"on\": '2026-03-09', hours: 24, stitches: 9 }");
        Arbitrary<List<String>> entries = entry.list().ofMinSize(1).ofMaxSize(3);
        Arbitrary<String> flow = Combinators.combine(entries, Arbitraries.of(", ", ",", ",\n      ", " ,  # so\n        "), Arbitraries.of("", ",", " ", "\n      ", " # end\n      "))
                .as((list, comma, end) -> "[" + String.join(comma, list) + end + "]");
        Arbitrary<String> progress = Arbitraries.oneOf(
                Arbitraries.of("", "progress: 45%R\n", "progress: \"45%\"R\n", "progress:   300R\n", "progress:R\nI45 %R\n", "progress: {}R\n",
                        "progress: {done: 4%}R\n", "'progress': {started: 2026-01-02,\n  done: 3}R\n", "progress:R\nIstarted: 2026-01-02R\n\nIdone: 30R\n",
                        "progress: {log: []}R\n", "progress: {log: [\n  # none yet\n  ]}R\n"),
                flow.map(log -> "progress: {log: " + log + "}R\n"),
                flow.map(log -> "progress: { done: 5, log: " + log + ", started: 2026-01-02 }R\n"),
                flow.map(log -> "progress:R\nIlog: " + log + "R\nIdone: 4%\n"),
                entries.map(list -> "progress:\nIstarted: 2026-01-02R\nIlog:R\n" + lines(list, "I", "- ")),
                entries.map(list -> "progress:\nIlog:\n" + lines(list, "II", "-   ") + "G"),
                entries.map(list -> "progress:\nIlog:\n" + "I- on: 2026-03-01R\nI  hours: 2\nGI  stitches: 12R\n".repeat(list.size()) + "Idone: 3\n"));
        Arbitrary<String> body = Combinators.combine(progress, remark, gap, indent, Arbitraries.of(0, 1, 2)).as((said, r, g, i, where) -> {
            List<String> parts = new ArrayList<>(List.of("piece: T" + r + "\n" + g, "stitches: 140 x 210\ncloth:\n" + i + "kind: linen\n" + g + i + "count: 36\n" + i + "over: 2" + r + "\n",
                    "designer: >\n" + i + "Nell Ferry\n" + (g.isEmpty() ? "\n" : "")));
            parts.add(1 + where, said.replace("R", r).replace("G", g).replace("I", i));
            // A deep remark below a text in lines would be part of that text.
            return String.join("", parts) + g.stripLeading();
        });
        return Combinators.combine(body, body, Arbitraries.of("\n", "\r\n"), Arbitraries.of("", "\uFEFF"), Arbitraries.of(true, false), Arbitraries.of("", "---\n", "# head\n\n"))
                .as((first, second, lineEnd, mark, ended, head) -> {
                    String text = head + first.replace("piece: T", "piece: First") + "---\n" + second.replace("piece: T", "piece: Second");
                    return mark + (ended ? text : text.stripTrailing()).replace("\n", lineEnd);
                });
    }

    private static String lines(List<String> entries, String indent, String dash) {
        StringBuilder text = new StringBuilder();
        entries.forEach(entry -> text.append(indent).append(dash).append(entry).append("R\n"));
        return text.toString();
    }

    @Property(tries = 600, edgeCases = EdgeCasesMode.NONE)
    void every_byte_of_hers_stays_and_the_log_has_one_entry_more(@ForAll("texts") String text, @ForAll boolean second) throws IOException {
        Path file = Files.createDirectories(folder.resolve("pieces")).resolve("p.yaml");
        Files.writeString(file, text);
        List<Piece> before = BasketReader.read(file).basket().orElseThrow(() -> new AssertionError("a text of ours is wrong:\n" + text)).pieces();
        Ran ran = Ran.kitleaf("log", folder, second ? "p-2" : "p", "--stitches", 77, "--hours", 1.25, "--on", ENTRY.on());
        assertEquals(0, ran.code(), ran.err() + text);
        String after = new String(Files.readAllBytes(file), StandardCharsets.UTF_8);

        // Hers is what is left when the inserted texts are taken out: it is found in the new text in its order.
        int at = 0;
        for (int i = 0; i < after.length() && at < text.length(); i++) {
            at += after.charAt(i) == text.charAt(at) ? 1 : 0;
        }
        assertEquals(text.length(), at, () -> "lost something of\n" + text + "\nin\n" + after);
        assertEquals(remarks(text), remarks(after));
        assertEquals(text.contains("\r\n"), after.contains("\r\n"));
        if (text.contains("\r\n")) {
            assertTrue(after.replace("\r\n", "").indexOf('\n') < 0, after);
        }
        List<Piece> pieces = BasketReader.read(file).basket().orElseThrow().pieces();
        int changed = second ? 1 : 0;
        List<LogEntry> log = new ArrayList<>(before.get(changed).progress().log());
        log.add(ENTRY);
        log.sort(Comparator.comparing(LogEntry::on));
        assertEquals(log, pieces.get(changed).progress().log());
        // A figure without a day stands as a reading now.
        assertTrue(pieces.get(changed).progress().done().isEmpty());
        assertEquals(before.get(changed).progress().done().stream().toList(),
                pieces.get(changed).progress().readings().stream().map(HowFar::done).toList());
        assertEquals(before.get(1 - changed), pieces.get(1 - changed));

        Ran undone = Ran.kitleaf("log", folder, second ? "p-2" : "p", "--undo");
        assertEquals(0, undone.code(), undone.err());
        assertEquals("Taken back: " + (second ? "Second" : "First") + ", 2026-05-04: 77 stitches in 1.25 h\n", undone.out());
        assertArrayEquals(text.getBytes(StandardCharsets.UTF_8), Files.readAllBytes(file));
    }

    /** The remarks, in their order. */
    private static List<String> remarks(String text) {
        return text.lines().filter(line -> line.contains("#")).map(line -> line.substring(line.indexOf('#'))).toList();
    }
}
