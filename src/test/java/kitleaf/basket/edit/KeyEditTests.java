package kitleaf.basket.edit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What stands in a text before and after an edit is written out in full or as one place of it. */
class KeyEditTests {

    private static final String BLOCK = """
            # mine
            piece: Fog bell   # the bell
            stitches: 80 x 80 # counted twice
            cloth:
              # unwashed
              kind: linen
              count: 28  # by the bolt
              over: 2
            margin: 3 in   # all round
            threads:
              # dark first
              - {code: K08, name: Fog}   # old
              - {code: K27}
              - {code: K28}

            # the end
            """;
    private static final String FLOW = """
            {piece: Fog bell, stitches: 80 x 80, # counted
             cloth: {kind: linen, count: 28, over: 2}, # old
             threads: [{code: K08}, {code: K27}]
            }
            """;

    /** An edit of a document. */
    private interface Edit {
        KeyEdit on(KeyEdit file) throws ByHand;
    }

    private record Case(String name, String text, Edit edit, String from, String to) {
        @Override
        public String toString() {
            return name;
        }
    }

    private static String edited(String text, int document, Edit edit) throws ByHand {
        return new String(edit.on(KeyEdit.of(text.getBytes(StandardCharsets.UTF_8), document)).bytes(), StandardCharsets.UTF_8);
    }

    private static Map<String, Object> map(Object... pairs) {
        Map<String, Object> map = new LinkedHashMap<>();
        for (int i = 0; i < pairs.length; i += 2) {
            map.put((String) pairs[i], pairs[i + 1]);
        }
        return map;
    }

    static Stream<Case> taken() {
        Edit shrink = file -> file.set("2%", "cloth", "shrink");
        return Stream.of(
                new Case("a value beside a remark", BLOCK, file -> file.set("81 x 80", "stitches"), "80 x 80 # counted",
                        "81 x 80 # counted"),
                new Case("a value in a group of lines", BLOCK, file -> file.set("32", "cloth", "count"), "count: 28  # by",
                        "count: 32  # by"),
                new Case("a group for a value", BLOCK, file -> file.set(map("top", "4 in", "right", "3 in"), "margin"), "margin: 3 in   #",
                        "margin: {top: 4 in, right: 3 in}   #"),
                new Case("a new key in a group of lines", BLOCK, shrink, "  over: 2\n", "  over: 2\n  shrink: 2%\n"),
                new Case("a new group", BLOCK, file -> file.set("yes", "goal", "must"), "K28}\n", "K28}\ngoal:\n  must: yes\n"),
                new Case("one more item", BLOCK, file -> file.append(map("code", "K31", "colour", "#20394f"), "threads"), "K28}\n",
                        "K28}\n  - {code: K31, colour: \"#20394f\"}\n"),
                new Case("a key of an item", BLOCK, file -> file.set("Rust, old", "threads", "1", "name"), "{code: K27}",
                        "{code: K27, name: \"Rust, old\"}"),
                new Case("a key taken out", BLOCK, file -> file.remove("cloth", "over"), "  over: 2\n", ""),
                new Case("the last item taken out", BLOCK, file -> file.removeLast("threads"), "  - {code: K28}\n", ""),
                new Case("an item of two lines taken out", "log:\n- on: a\n- on: b\n  note: c\n\n# end\n", file -> file.removeLast("log"),
                        "- on: b\n  note: c\n", ""),
                new Case("a last line without an end taken out", "a: 1\nb: 2", file -> file.remove("b"), "\nb: 2", ""),
                new Case("a key for another", "goals: {year: 2027, choose: 2}  # to think of\n",
                        file -> file.replace("pieces", List.of("fog-bell", "tide-table"), "goals", "choose"), "choose: 2",
                        "pieces: [fog-bell, tide-table]"),
                new Case("a key for another in a group of lines", "goals:\n  choose: 2  # to think of\n  year: 2027\n",
                        file -> file.replace("pieces", List.of("fog-bell", "tide-table"), "goals", "choose"), "choose: 2",
                        "pieces: [fog-bell, tide-table]"),
                new Case("lines for a list", "goals:\n  pieces:\n    - a\n    - b\n  year: 2027\n",
                        file -> file.set(List.of("c"), "goals", "pieces"),
                        "pieces:\n    - a\n    - b\n", "pieces: [c]\n"),
                new Case("a value in braces", FLOW, file -> file.set("36", "cloth", "count"), "count: 28", "count: 36"),
                new Case("a new key in braces", FLOW, file -> file.set("3 in", "margin"), "K27}]\n", "K27}],\n margin: 3 in\n"),
                new Case("a key taken out of braces", FLOW, file -> file.remove("cloth", "over"), ", over: 2", ""),
                new Case("a first key taken out of braces", FLOW, file -> file.remove("cloth", "kind"), "kind: linen, ", ""),
                new Case("the last item taken out of brackets", FLOW, file -> file.removeLast("threads"), ", {code: K27}", ""),
                new Case("quotes stay", "piece: 'Anns'\n", file -> file.set("Bens", "piece"), "'Anns'", "'Bens'"),
                new Case("a value that steers is quoted", BLOCK, file -> file.set("a: b", "piece"), "Fog bell   #", "\"a: b\"   #"),
                new Case("what reads as nothing is quoted", BLOCK, file -> file.set("null", "piece"), "Fog bell   #", "\"null\"   #"),
                new Case("a missing value", "piece:   # to come\nstitches: 8 x 8\n", file -> file.set("Fog", "piece"), "piece:   #",
                        "piece: Fog   #"),
                new Case("a missing group", "piece: A\nprogress:\n", file -> file.append(map("on", "b"), "progress", "log"), "progress:\n",
                        "progress: {log: [{on: b}]}\n"),
                new Case("signs beyond the plane", "piece: \uD83E\uDEA1\uD83E\uDEA1 bell\nstitches: 8 x 8\n",
                        file -> file.set("9 x 9", "stitches"),
                        "8 x 8", "9 x 9"),
                new Case("line ends of another system", BLOCK.replace("\n", "\r\n"), shrink, "  over: 2\r\n",
                        "  over: 2\r\n  shrink: 2%\r\n"),
                new Case("a line with its end of another system", "a: 1\r\nb: 2\r\n", file -> file.remove("b"), "b: 2\r\n", ""),
                new Case("a byte order mark", "\uFEFFpiece: Fog\nstitches: 8 x 8\n", file -> file.set("9 x 9", "stitches"), "8 x 8",
                        "9 x 9"),
                new Case("nothing but remarks", "# mine\n#goals: {year: 2027}\n# end\n", file -> file.set("2027", "goals", "year"),
                        "2027}\n",
                        "2027}\ngoals:\n  year: 2027\n"),
                new Case("below the remark that says how", "piece: A\n#margin: 3 in\nstitches: 8 x 8\n", file -> file.set("4 in", "margin"),
                        "#margin: 3 in\n", "#margin: 3 in\nmargin: 4 in\n"));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("taken")
    void the_edit_stands_where_she_would_write_it_and_nothing_else_changes(Case one) throws ByHand {
        assertTrue(one.text().contains(one.from()), "the case itself");
        assertEquals(one.text().replace(one.from(), one.to()), edited(one.text(), 1, one.edit()));
    }

    static Stream<Case> refused() {
        Edit piece = file -> file.set("Fog", "piece");
        return Stream.of(
                new Case("a text in lines", "piece: |\n  Fog\n  bell\nstitches: 8 x 8\n", piece, "WRITE []", "piece: Fog"),
                new Case("a plain text over two lines", "piece: Fog\n  bell\n", piece, "WRITE []", "piece: Fog"),
                new Case("no YAML", "piece: [\n", piece, "WRITE []", "piece: Fog"),
                new Case("an alias", "piece: &a A\ndesigner: *a\n", piece, "WRITE []", "piece: Fog"),
                new Case("an alias elsewhere", "piece: A\ndesigner: &a B\ncloth: *a\n", piece, "WRITE []", "piece: Fog"),
                new Case("a key that stands twice", "piece: A\npiece: B\n", piece, "WRITE []", "piece: Fog"),
                new Case("another key that stands twice", "piece: A\nb: 1\nb: 2\n", piece, "WRITE []", "piece: Fog"),
                new Case("letters that cannot be read", "piece: \u0001\n", piece, "WRITE []", "piece: Fog"),
                new Case("a list of values", "- a\n- b\n", piece, "WRITE []", "piece: Fog"),
                new Case("a key below a value", BLOCK, file -> file.set("4 in", "margin", "top"), "WRITE [margin]", "top: 4 in"),
                new Case("an item that is not there", BLOCK, file -> file.set("a", "threads", "7", "code"), "WRITE [threads, 7]",
                        "code: a"),
                new Case("an item of a table", "threads: a.csv\n", file -> file.append(map("code", "K1"), "threads"), "ADD [threads]",
                        "- {code: K1}"),
                new Case("a group with a remark, for a value", BLOCK, file -> file.set("Sea-mist", "cloth"), "WRITE []", "cloth: Sea-mist"),
                new Case("braces with a remark, for a value", "margin: {top: 3 in, # wide\n  left: 2 in}\n",
                        file -> file.set("3 in", "margin"),
                        "WRITE []", "margin: 3 in"),
                new Case("a line with a remark", BLOCK, file -> file.remove("margin"), "TAKE_OUT [margin]", ""),
                new Case("the only key of a group of lines", "margin:\n  top: 3 in\n", file -> file.remove("margin", "top"),
                        "TAKE_OUT [margin, top]", ""),
                new Case("a key that is not there", BLOCK, file -> file.remove("goal"), "TAKE_OUT [goal]", ""),
                new Case("the last of no list", BLOCK, file -> file.removeLast("goal", "log"), "TAKE_OUT [goal, log, 0]", ""),
                new Case("a key for one that is there", "goals: {pieces: [a], choose: 2}\n",
                        file -> file.replace("pieces", List.of("b"), "goals", "choose"), "WRITE_INSTEAD [goals, choose]", "pieces: [b]"),
                new Case("a key for one that is not there", "goals: {year: 2027}\n",
                        file -> file.replace("pieces", List.of("b"), "goals", "choose"), "WRITE_INSTEAD [goals, choose]", "pieces: [b]"));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("refused")
    void what_cannot_be_kept_whole_is_refused_with_what_to_write(Case one) {
        ByHand how = assertThrows(ByHand.class, () -> edited(one.text(), 1, one.edit()));
        assertEquals(one.from(), how.deed() + " " + how.keys());
        assertEquals(one.to(), how.text());
    }

    @Test
    void the_document_named_is_edited_and_no_other() throws ByHand {
        String two = "piece: A\n---\npiece: B # x\n";
        assertEquals("piece: A\n---\npiece: C # x\n", edited(two, 2, file -> file.set("C", "piece")));
        assertThrows(ByHand.class, () -> edited(two, 3, file -> file.set("C", "piece")));
        assertThrows(ByHand.class, () -> edited("", 2, file -> file.set("C", "piece")));
    }

    @Test
    void bytes_that_are_no_letters_are_refused() {
        assertThrows(ByHand.class, () -> KeyEdit.of(new byte[] {'a', ':', ' ', (byte) 0xFF}, 1).set("b", "a"));
    }

    @Test
    void it_says_what_stands_at_a_path() {
        KeyEdit file = KeyEdit.of(FLOW.getBytes(StandardCharsets.UTF_8), 1);
        assertEquals(Optional.of("28"), file.value("cloth", "count"));
        assertEquals(Optional.of("K27"), file.value("threads", "1", "code"));
        assertEquals(Optional.of(Map.of("kind", "linen", "count", "28", "over", "2")), file.value("cloth"));
        assertEquals(Optional.empty(), file.value("threads", "2"));
        assertEquals(Optional.empty(), file.value("goal", "must"));
    }
}
