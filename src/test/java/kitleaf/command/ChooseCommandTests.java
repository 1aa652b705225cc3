package kitleaf.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class ChooseCommandTests {

    private static final String PIECE = "piece: %s\nstitches: %s\ncloth: {kind: linen, count: 28, over: 2}\n";
    private static final String PACE = "pace: {stitches-per-hour: 100, hours-per-week: 1}\n";

    @TempDir
    private Path folder;

    /** At 100 stitches an hour and one hour a week a year has some 52 hours: 10 and 40 hours fit, 60 hours do not. */
    private Path basket(String goals) throws IOException {
        return Ran.basket(folder, PACE + goals, String.join("---\n", String.format(PIECE, "Cockle", "25 x 40"), String.format(PIECE, "Herring", "40 x 100"),
                String.format(PIECE, "Altar", "60 x 100")));
    }

    private List<String> ids(Path basket) throws IOException {
        return Files.readString(basket.resolve("basket.yaml")).lines().filter(line -> line.contains("pieces:")).toList();
    }

    @Test
    void what_is_proposed_is_shown_and_nothing_is_written() throws IOException {
        Path basket = basket("goals: {year: 2027, choose: 2}\n");
        String before = Files.readString(basket.resolve("basket.yaml"));
        Ran ran = Ran.kitleaf("choose", basket);
        assertEquals(0, ran.code(), ran.err());
        assertTrue(ran.out().contains("\n\nA proposal that may change with what you log; kitleaf choose --keep keeps it.\n"), ran.out());
        assertTrue(Ran.kitleaf("reckon", basket).out().contains("A proposal that may change"));
        assertEquals(before, Files.readString(basket.resolve("basket.yaml")));
    }

    @ParameterizedTest
    @ValueSource(strings = {"goals: {year: 2027, choose: 2} # as many\n", "# the year\ngoals:\n  year: 2027 # this one\n\n  choose: 2\n  by: number\n",
        "goals: {year: 2027}\r\nlarge-print: no\r\n", "goals: {by: number, year: 2027, choose: 2, main-share: 80%}\n"})
    void kept_pieces_take_the_place_of_their_number_and_all_else_stays(String goals) throws IOException {
        Path basket = basket(goals);
        Path file = basket.resolve("basket.yaml");
        String before = Files.readString(file);
        Ran ran = Ran.kitleaf("choose", basket, "--keep");
        assertEquals(0, ran.code(), ran.err());
        String after = Files.readString(file);
        String pieces = after.lines().filter(line -> line.contains("pieces: [")).map(line -> line.replaceAll(".*(pieces: \\[[^]]*\\]).*", "$1"))
                .findFirst().orElseThrow();
        assertEquals(before, before.contains("choose: 2") ? after.replace(pieces, "choose: 2") : after.replaceFirst(",? *\\Q" + pieces + "\\E", ""));
        // By the reckoning above these two fit, whichever comes first.
        assertEquals(2, pieces.split(",").length, pieces);
        assertFalse(pieces.contains("-3"), pieces);
        Ran kept = Ran.kitleaf("choose", basket);
        assertTrue(kept.out().endsWith("These are the pieces you keep.\n"), kept.out());
        assertFalse(Ran.kitleaf("reckon", basket).out().contains("A proposal"));
    }

    /** She keeps the one of 60 hours; of one piece to choose, a smaller one is more surely done. */
    @Test
    void what_would_change_against_the_kept_choice_is_told_and_left_to_her() throws IOException {
        Path basket = basket("goals: {year: 2027, choose: 1}\n");
        String id = Ran.files(basket.resolve("pieces")).get(0).replace(".yaml", "") + "-3";
        Files.writeString(basket.resolve("basket.yaml"), PACE + "goals: {year: 2027, pieces: [" + id + "]}\n");
        Ran ran = Ran.kitleaf("choose", basket);
        assertEquals(0, ran.code(), ran.err());
        assertTrue(ran.out().contains("Would come in: Cockle\nWould go out: Altar\nThe pieces you keep stay as they are; "), ran.out());
        assertEquals(1, ids(basket).size());
        assertTrue(ids(basket).get(0).contains(id));
        Ran.kitleaf("choose", basket, "--keep");
        assertFalse(ids(basket).get(0).contains(id), ids(basket).toString());
    }

    @Test
    void without_goals_or_pace_it_says_what_to_write() throws IOException {
        Ran none = Ran.kitleaf("choose", basket(""));
        assertEquals(2, none.code());
        assertTrue(none.err().contains("names no year to choose for; write there, for example, goals: {year: 2027}"), none.err());
        Path basket = basket("goals: {year: 2027}\n");
        Files.writeString(basket.resolve("basket.yaml"), "goals: {year: 2027}\n");
        Ran paceless = Ran.kitleaf("choose", basket, "--keep");
        assertEquals(2, paceless.code());
        assertTrue(paceless.err().contains("no piece can be chosen"), paceless.err());
        assertEquals("goals: {year: 2027}\n", Files.readString(basket.resolve("basket.yaml")));
    }
}
