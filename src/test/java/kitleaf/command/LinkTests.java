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

/** Commands that write into a basket: what lies outside it stays as it is, whatever links lead there. */
class LinkTests {

    private static final String PIECE = "piece: Groyne\nstitches: 140 x 210\ncloth: {kind: linen, count: 36, over: 2}\n";

    @TempDir
    private Path folder;

    private Path basket() throws IOException {
        return Ran.basket(folder.resolve("b"), "", PIECE);
    }

    private Path outside() throws IOException {
        return Files.createDirectories(folder.resolve("outside"));
    }

    @Test
    void an_evening_is_not_logged_through_a_link_that_leads_out() throws IOException {
        Path kept = Files.writeString(outside().resolve("kept.yaml"), PIECE.replace("Groyne", "Kept"));
        Path link = Ran.link(basket().resolve("pieces/zz.yaml"), kept);
        for (Object[] piece : List.of(new Object[] {basket(), "zz"}, new Object[] {link})) {
            Object[] arguments = piece.length == 2 ? new Object[] {"log", piece[0], piece[1], "--stitches", 1, "--hours", 1}
                    : new Object[] {"log", piece[0], "--stitches", 1, "--hours", 1};
            Ran ran = Ran.kitleaf(arguments);
            assertEquals(1, ran.code(), ran.out());
            assertTrue(ran.err().startsWith(link + ": this is a link that leads out of the basket; put the file itself inside it\n"), ran.err());
        }
        assertEquals(PIECE.replace("Groyne", "Kept"), Files.readString(kept));
        assertEquals(List.of("kept.yaml"), Ran.files(outside()));
    }

    @Test
    void no_piece_is_begun_in_a_folder_of_pieces_that_is_a_link_out() throws IOException {
        Path basket = Files.createDirectories(folder.resolve("c"));
        Files.writeString(basket.resolve("basket.yaml"), "title: C\n");
        Ran.link(basket.resolve("pieces"), outside());
        Ran ran = Ran.kitleaf("new", "--piece", "Buoy", basket);
        assertEquals(3, ran.code(), ran.out());
        assertEquals("could not write to " + basket + ": it is a link that leads out of the basket; put a folder in its place\n", ran.err());
        assertEquals(List.of(), Ran.files(outside()));
        assertEquals(List.of("basket.yaml", "pieces"), Ran.files(basket));
    }

    @Test
    void no_basket_is_begun_around_a_link_that_leads_out() throws IOException {
        Path basket = Files.createDirectories(folder.resolve("c"));
        Ran.link(basket.resolve("schema"), outside());
        Ran ran = Ran.kitleaf("new", basket);
        assertEquals(3, ran.code(), ran.out());
        assertEquals("could not write to " + basket.resolve("schema") + ": it is a link that leads out of the basket; put a folder in its place\n", ran.err());
        assertEquals(List.of(), Ran.files(outside()));
        assertEquals(List.of("schema"), Ran.files(basket), "all or none");
    }

    @Test
    void schemas_are_not_written_through_a_link_that_leads_out() throws IOException {
        Path link = Ran.link(basket().resolve("schema"), outside());
        Files.writeString(outside().resolve("piece.schema.json"), "hers");
        for (Ran ran : List.of(Ran.kitleaf("schema", basket()), Ran.kitleaf("new", "--piece", "Buoy", basket()))) {
            assertEquals(3, ran.code(), ran.out());
            assertEquals("could not write to " + link + ": it is a link that leads out of the basket; put a folder in its place\n", ran.err());
        }
        assertEquals(List.of("piece.schema.json"), Ran.files(outside()));
        assertEquals("hers", Files.readString(outside().resolve("piece.schema.json")));
        assertFalse(Files.exists(basket().resolve("pieces/buoy.yaml")));
    }

    @Test
    void links_that_stay_inside_the_basket_are_written_through() throws IOException {
        Path basket = basket();
        Files.createDirectories(basket.resolve("shared/schema"));
        Files.move(basket.resolve("pieces"), basket.resolve("shared/pieces"));
        Ran.link(basket.resolve("pieces"), basket.resolve("shared/pieces"));
        Ran.link(basket.resolve("schema"), basket.resolve("shared/schema"));
        for (Ran ran : List.of(Ran.kitleaf("schema", basket), Ran.kitleaf("new", "--piece", "Buoy", basket),
                Ran.kitleaf("log", basket, "piece", "--stitches", 7, "--hours", 1))) {
            assertEquals(0, ran.code(), ran.err());
        }
        assertEquals(List.of("buoy.yaml", "piece.yaml"), Ran.files(basket.resolve("shared/pieces")));
        assertEquals(List.of("basket.schema.json", "piece.schema.json"), Ran.files(basket.resolve("shared/schema")));
        assertTrue(Files.readString(basket.resolve("shared/pieces/piece.yaml")).contains("stitches: 7}"));
    }
}
