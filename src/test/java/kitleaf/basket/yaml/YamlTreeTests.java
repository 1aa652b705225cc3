package kitleaf.basket.yaml;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Locale;
import kitleaf.basket.place.Problems;
import kitleaf.basket.place.Source;
import kitleaf.basket.place.SourceReader;
import kitleaf.basket.reader.Written;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.CharRange;
import net.jqwik.api.constraints.Chars;
import net.jqwik.api.constraints.StringLength;
import org.junit.jupiter.api.Test;

class YamlTreeTests {

    private static final Path FILE = Path.of("a.yaml");

    private static List<String> problems(String text) {
        Problems problems = new Problems();
        SourceReader.decode(text.getBytes(StandardCharsets.UTF_8), FILE, problems)
                .ifPresent(source -> YamlTree.read(source, problems));
        return problems.all().stream().map(Written::english).map(p -> p.split("\n")[0].replace("a.yaml:", "")).toList();
    }

    private static void only(String text, String message) {
        assertEquals(List.of(message), problems(text), text);
    }

    @Test
    void tabsAreToldApart() {
        only("a: 3\n\tb: 4\n", "2:1: this line is indented with a tab; indent with spaces");
        only("a:\n\t- b\n", "2:1: this line is indented with a tab; indent with spaces");
    }

    @Test
    void aMissingSpaceIsFoundWhereItIs() {
        only("stitches:140 x 210\nb: 4\n", "1:9: there is no space after this colon; write stitches: 140 x 210");
        only("a: 1\nstitches:140 x 210\nb: 4\n", "2:9: there is no space after this colon; write stitches: 140 x 210");
        only("a: 1\ncloth:{kind: linen, count: 36}\n", "2:6: there is no space after this colon; write cloth: {kind: linen, count: 36}");
        only("a: 1\nb\nc: 2\n", "2:1: this line has no colon; write a key, a colon, a space and a value");
    }

    @Test
    void openQuotesAreToldWithTheInchMarkInMind() {
        only("margin: \"3\nb: 4\n", "1:9: the \" before 3 opens a quote that is never closed; "
                + "write an inch mark after its number, as in 3\", or write 3 in");
        only("a: 'x\n", "1:4: this quote is opened and never closed; close it with the same sign");
        only("a: \"x\" y\n", "1:8: this follows a value that has already ended; put the whole value in one pair of quotes");
        only("a: \"\\q\"\n", "1:6: \\ before this letter has no meaning between \" and \"; write \\\\ for one \\, or use ' instead of \"");
    }

    @Test
    void openBracketsAreToldWhereTheyOpen() {
        only("a: [1, 2\nb: 4\n", "1:4: this [ is never closed; write ] where the group ends");
        only("a: {x: 1\n b: 4\n", "1:4: this { is never closed; write } where the group ends");
        only("a: {x: 1,\n", "1:4: this { is never closed; write } where the group ends");
        only("a: {x: [1, \"}\", # ]\n", "1:8: this [ is never closed; write ] where the group ends");
        only("a: {x: [1],\n# a remark: {}\nthreads:\n  - {code: K1}\n", "1:4: this { is never closed; write } where the group ends");
        only("a: [1, 2]]\n", "1:10: this bracket closes nothing; take it away, or open it before");
        only("a: ]\n", "1:4: a value is missing before this sign; write the value, or take the sign away");
        only("a: {b: 1,, c: 2}\n", "1:10: a value is missing before this sign; write the value, or take the sign away");
    }

    @Test
    void aColourThatBecameARemarkIsToldThoughRemarksFollow() {
        only("a:\n  - {b: 1, colour: #6b7f8c}\n\n# remarks\n# to the end\n",
                "2:20: # outside quotes makes the rest of the line a remark; write \"#6b7f8c\" in quotes");
    }

    @Test
    void blanksThatOnlyLookLikeBlanksAreTold() {
        String told = "the blank here only looks like one, as it may in text that was copied; delete it and type it anew";
        only("a: 1\nb:\u00a02\n", "2:3: " + told);
        only("a:\n\u00a0 b: 1\n\u00a0 c: 2\n", "2:1: " + told);
        only("a:\n  \u3000b: 1\n", "2:3: " + told);
        assertEquals(List.of(), problems("a: \u00a0 1\nb: \"\u00a02\"\n\"\u00a0c\": x\u00a0y\n"));
    }

    @Test
    void badIndentsAreTold() {
        only("a: 1\n  b: 2\n", "2:3: this line is indented deeper than it can be; line it up with the other keys of its group");
        only("a:\n  b: 1\n c: 2\n", "3:2: this line does not line up with the lines above it; "
                + "give all keys of one group the same indent, and all entries of one list a -");
        only("a: - b\n", "1:4: a list cannot start here; put each - on a line of its own under its key");
    }

    @Test
    void otherSlipsAreTold() {
        only("a: b: c\n", "1:5: this is the second colon on the line; put the whole value in quotes, or start a new line");
        only("a: @x\n", "1:4: a value cannot start with @; put the whole value in quotes");
        only("a: 1\n...\nb\n", "3:1: this stands after the end of a document; put --- on a line of its own before it");
        only("a: |x\n", "1:5: this cannot be read; look for a colon, quote, bracket or indent gone wrong here or just above");
        only("? ? a\n", "1:3: this cannot be read; look for a colon, quote, bracket or indent gone wrong here or just above");
        only("a: 1\nb: x\u0007\n", "2:5: a sign that does not show stands here; take it out");
    }

    @Test
    void doubledKeysAreTold() {
        only("a: 1\nb: {c: 1, c: 2}\n", "2:11: \"c\" stands twice here; keep one of the two");
    }

    @Test
    void anchorsAliasesAndTagsAreRefused() {
        String rest = ", which is not taken here; write the value itself, in quotes if it starts so";
        assertEquals(List.of("1:4: & gives a value a name to point to" + rest, "2:4: * points to a value elsewhere" + rest,
                "3:4: ! gives a value a type" + rest, "4:1: & gives a value a name to point to" + rest,
                "5:4: & gives a value a name to point to" + rest),
                problems("a: &x 1\nb: *x\nc: !!str 3\n&d d: 1\ne: &y [1]\n"));
    }

    /** What YAML 1.1 or 1.2 would take for a number, a truth, a date or nothing (YAML 1.2.2, 10.2 and 10.3; YAML 1.1's type repository). */
    @Test
    void valuesAreKeptAsTheyWereTyped() {
        List<String> typed = List.of("0010", "0x1F", "0o17", "1_000", "1e3", "-.5", "+12", ".inf", ".NaN", "12:30:45", "True", "no", "Off", "~", "null", "2026-02-14",
                "190:20:30", "1.50", "<<", "=");
        for (String value : typed) {
            for (String written : List.of("a: " + value + "\n", "{a: " + value + "}", "a: '" + value + "'\n", "a: \"" + value + "\"\n")) {
                Problems problems = new Problems();
                Node.Mapping tree = (Node.Mapping) YamlTree.read(new Source(FILE, written), problems).documents().get(0);
                Node.Scalar scalar = (Node.Scalar) tree.entries().get("a").value();
                assertEquals(value, scalar.text(), written);
                assertEquals(written.indexOf(value) > 0 && "'\"".indexOf(written.charAt(written.indexOf(value) - 1)) >= 0, scalar.quoted(), written);
                assertEquals(List.of(), problems.all());
            }
        }
    }

    @Test
    void whatIsMissingIsNotQuotedWhateverStandsAfterIt() {
        for (String written : List.of("a:\n\"b\": 1\n", "a: \n'b': 1\n", "{a: , \"b\": 1}", "{a, \"b\": 1}", "? a\n'b': 1\n", "? a\n\"b\": 1\n")) {
            Node.Mapping tree = (Node.Mapping) YamlTree.read(new Source(FILE, written), new Problems()).documents().get(0);
            Node.Scalar scalar = (Node.Scalar) tree.entries().get("a").value();
            assertTrue(scalar.missing(), written);
        }
        Node.Mapping tree = (Node.Mapping) YamlTree.read(new Source(FILE, "a: ''\n"), new Problems()).documents().get(0);
        assertFalse(((Node.Scalar) tree.entries().get("a").value()).missing());
    }

    @Test
    void placesAreCountedInCharacters() {
        Problems problems = new Problems();
        Node.Mapping tree = (Node.Mapping) YamlTree.read(new Source(FILE, "{x😀: 'ž', b: \"it\"}"), problems).documents().get(0);
        assertEquals(11, tree.entries().get("b").key().column());
        assertEquals(14, tree.entries().get("b").value().place().column());
        assertEquals(4, tree.entries().get("b").value().place().length());
    }

    @Test
    void hostileFilesEndQuicklyInASentence() {
        // The time of the processor, which other work on the machine does not lengthen; the other limit is for a hang.
        ThreadMXBean threads = ManagementFactory.getThreadMXBean();
        assertTimeoutPreemptively(Duration.ofSeconds(120), () -> {
            long before = threads.getCurrentThreadCpuTime();
            only("[".repeat(500_000), "1:22: this is nested more than 20 deep; write it flatter");
            only("a: " + "{a: ".repeat(100_000), "1:84: this is nested more than 20 deep; write it flatter");
            only("a: 1\n---\n".repeat(501), "1001:1: this is document 501 of this file; keep at most 500 in one file");
            assertEquals(List.of(" this file is larger than 1 MB; split it into several"), problems("a".repeat(1_000_001)));
            // Nine lists of ten aliases each would be a thousand million values.
            StringBuilder bomb = new StringBuilder("a0: &a0 [x]\n");
            for (int i = 1; i < 10; i++) {
                bomb.append("a").append(i).append(": &a").append(i).append(" [").append(("*a" + (i - 1) + ",").repeat(10)).append("]\n");
            }
            assertEquals(100, problems(bomb.toString()).size());
            assertTrue(problems("{" + "a,".repeat(400_000) + "}").size() <= Problems.MOST_PER_FILE);
            assertTrue(problems("a: " + "1".repeat(900_000)).isEmpty());
            long seconds = (threads.getCurrentThreadCpuTime() - before) / 1_000_000_000;
            assertTrue(seconds < 5, seconds + " s");
        });
    }

    /** Whatever is typed ends in nodes or in problems whose places lie in the text, never in an exception. */
    @Property(tries = 3000)
    void anyTextIsReadOrTold(@ForAll @StringLength(max = 40) @Chars({'a', ':', ' ', '\n', '-', '"', '\'', '{', '}', '[', ']', ',', '#', '&',
        '*', '!', '|', '>', '?', '\r', '%', '@', '\t', '\\', '3', '\uFEFF', '<', '~', '.'})
            @CharRange(from = '\u0020', to = '\u0400') String text) {
        for (String problem : problems(text)) {
            assertTrue(!problem.toLowerCase(Locale.ROOT).matches(".*(exception|snakeyaml|jackson|token|scalar).*"), problem);
        }
    }
}
