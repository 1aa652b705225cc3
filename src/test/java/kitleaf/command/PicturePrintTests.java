package kitleaf.command;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class PicturePrintTests {

    private static final String PIECE = "piece: Groyne\nstitches: 140 x 210\ncloth: {kind: linen, count: 36, over: 2}\nmargin: 3 in\n";

    @TempDir
    private Path folder;

    private Path out() {
        return folder.resolve("out");
    }

    /** What lies there to be seen, beside the list of pictures that are Kitleaf's own. */
    private List<String> sheets() throws IOException {
        return Ran.files(out()).stream().filter(name -> !name.equals(".kitleaf-pictures")).toList();
    }

    private Ran print(Path basket, String... more) {
        return Ran.kitleaf(Stream.concat(Stream.of("print", basket, "--out", out(), "--only", "cut-sheets"),
                Stream.of(more)).toArray());
    }

    /** A4 is 210 x 297 mm, which at 150 dots to 25.4 mm are 1240.2 x 1753.9. */
    @Test
    void each_page_is_a_picture_of_150_dots_to_the_inch() throws IOException {
        Path basket = Ran.basket(folder.resolve("b"), "", PIECE);
        Ran ran = print(basket, "--png");
        assertEquals(0, ran.code(), ran.err());
        assertEquals(List.of("cut-sheets-01.png", "cut-sheets-02.png", "cut-sheets.pdf"), sheets());
        assertTrue(ran.out().contains(out().resolve("cut-sheets-01.png") + " to cut-sheets-02.png\n"), ran.out());
        BufferedImage picture = ImageIO.read(out().resolve("cut-sheets-01.png").toFile());
        assertEquals(1240.2, picture.getWidth(), 1);
        assertEquals(1753.9, picture.getHeight(), 1);
    }

    /** The bar of 100 mm on the corner guide's page is 100 / 25.4 x 150 = 590.6 dots long, on a picture as on paper. */
    @Test
    void a_picture_shows_what_the_page_has() throws IOException {
        Path basket = Ran.basket(folder.resolve("b"), "", PIECE);
        print(basket, "--png");
        BufferedImage picture = ImageIO.read(out().resolve("cut-sheets-02.png").toFile());
        boolean found = false;
        for (int y = 0; y < picture.getHeight() && !found; y++) {
            int run = 0;
            for (int x = 0; x < picture.getWidth(); x++) {
                boolean dark = (picture.getRGB(x, y) & 0xFF) < 160;
                run = dark ? run + 1 : 0;
                boolean ends = dark && (x + 1 == picture.getWidth() || (picture.getRGB(x + 1, y) & 0xFF) >= 160);
                found |= ends && Math.abs(run - 590.6) <= 3;
            }
        }
        assertTrue(found, "no line 590 dots long");
    }

    @Test
    void pictures_are_the_same_again() throws IOException {
        Path basket = Ran.basket(folder.resolve("b"), "", PIECE);
        print(basket, "--png");
        Path picture = out().resolve("cut-sheets-01.png");
        byte[] first = Files.readAllBytes(picture);
        // What is not drawn again cannot be taken for the same.
        Files.write(picture, new byte[] {1});
        print(basket, "--png");
        assertArrayEquals(first, Files.readAllBytes(picture));
        BufferedImage drawn = ImageIO.read(picture.toFile());
        assertTrue(drawn.getWidth() > 1000 && drawn.getHeight() > 1000, drawn.toString());
    }

    @Test
    void pictures_of_a_longer_print_before_do_not_survive_and_nothing_else_goes() throws IOException {
        Path basket = Ran.basket(folder.resolve("b"), "", PIECE + "---\n" + PIECE.replace("Groyne", "Second"));
        print(basket, "--png");
        assertEquals(5, sheets().size());
        for (String hers : List.of("cut-sheets-photo.png", "cut-sheets-1.png", "bag-tags-01.png")) {
            Files.writeString(out().resolve(hers), "hers");
        }
        print(basket, "--piece", "piece", "--png");
        assertEquals(List.of("bag-tags-01.png", "cut-sheets-01.png", "cut-sheets-02.png", "cut-sheets-1.png", "cut-sheets-photo.png", "cut-sheets.pdf"), sheets());
        print(basket);
        assertEquals(List.of("bag-tags-01.png", "cut-sheets-1.png", "cut-sheets-photo.png", "cut-sheets.pdf"), sheets(),
                "a picture must not say other than the PDF beside it");
    }

    /** Whatever her own files are called, the list beside the sheets says which pictures Kitleaf drew, and how they were. */
    @Test
    void files_of_hers_that_are_named_like_pictures_stay() throws IOException {
        Path basket = Ran.basket(folder.resolve("b"), "", PIECE);
        Files.createDirectories(out().resolve("cut-sheets-07.png"));
        Files.writeString(out().resolve("cut-sheets-2026.png"), "hers");
        print(basket, "--png");
        Files.writeString(out().resolve("cut-sheets-02.png"), "drawn on by her");
        assertEquals(0, print(basket).code());
        assertEquals(List.of("cut-sheets-02.png", "cut-sheets-07.png", "cut-sheets-2026.png", "cut-sheets.pdf"), Ran.files(out()));
        assertEquals("hers", Files.readString(out().resolve("cut-sheets-2026.png")));
        assertEquals("drawn on by her", Files.readString(out().resolve("cut-sheets-02.png")));
    }

    @Test
    void a_list_of_pictures_that_is_missing_or_damaged_takes_nothing_away() throws IOException {
        Path basket = Ran.basket(folder.resolve("b"), "", PIECE);
        Path list = out().resolve(".kitleaf-pictures");
        List<String> all = List.of("cut-sheets-01.png", "cut-sheets-02.png", "cut-sheets.pdf");
        print(basket, "--png");
        String text = Files.readString(list);
        Files.delete(list);
        print(basket);
        assertEquals(all, sheets());
        Files.writeString(list, text.substring(0, text.length() - 3));
        print(basket);
        assertEquals(all, sheets());
        Files.writeString(list, text);
        print(basket);
        assertEquals(List.of("cut-sheets.pdf"), Ran.files(out()));
    }

    @Test
    void pictures_of_sheets_that_are_not_printed_again_stay_ours() throws IOException {
        Path basket = Ran.basket(folder.resolve("b"), "", PIECE + "threads: [{code: A, stitches: {cross: 100}}]\n");
        print(basket, "--png");
        assertEquals(0, Ran.kitleaf("print", basket, "--out", out(), "--only", "buy-list", "--png").code());
        assertEquals(List.of("buy-list-01.png", "buy-list.csv", "buy-list.pdf", "cut-sheets-01.png", "cut-sheets-02.png", "cut-sheets.pdf"), sheets());
        print(basket);
        assertEquals(List.of("buy-list-01.png", "buy-list.csv", "buy-list.pdf", "cut-sheets.pdf"), sheets());
    }

    @Test
    void a_broken_basket_leaves_sheets_and_pictures_whole() throws IOException {
        Path basket = Ran.basket(folder.resolve("b"), "", PIECE);
        print(basket, "--png");
        byte[] before = Files.readAllBytes(out().resolve("cut-sheets-02.png"));
        Ran.basket(basket, "", PIECE.replace("3 in", "3"));
        assertEquals(1, print(basket, "--png").code());
        Ran.basket(basket, "", PIECE);
        Files.delete(out().resolve("cut-sheets.pdf"));
        Files.createDirectory(out().resolve("cut-sheets.pdf"));
        assertEquals(3, print(basket, "--piece", "piece", "--paper", "A3", "--png").code());
        assertArrayEquals(before, Files.readAllBytes(out().resolve("cut-sheets-02.png")));
        assertEquals(3, sheets().size());
    }

    @Test
    void open_hands_one_sheet_to_the_desktop_and_several_as_their_folder() throws Exception {
        Path basket = Ran.basket(folder.resolve("b"), "", PIECE);
        Path bin = Files.createDirectories(folder.resolve("bin"));
        Path opener = bin.resolve("xdg-open");
        Files.writeString(opener, "#!/bin/sh\necho \"$1\" >> opened\n");
        assertTrue(opener.toFile().setExecutable(true));
        List<String> desktop = List.of("DISPLAY", ":0", "PATH", bin + ":" + System.getenv("PATH"));
        Ran one = Ran.ended(Ran.start(folder, desktop, "print", basket.toString(), "--only", "cut-sheets", "--open"));
        assertEquals(0, one.code(), one.err());
        Ran all = Ran.ended(Ran.start(folder, desktop, "print", basket.toString(), "--open"));
        assertEquals(0, all.code(), all.err());
        assertEquals(List.of(folder.resolve("out/cut-sheets.pdf").toRealPath().toString(), folder.resolve("out").toRealPath().toString()),
                Files.readAllLines(folder.resolve("opened")));
        Files.writeString(opener, "#!/bin/sh\nexit 3\n");
        Ran failing = Ran.ended(Ran.start(folder, desktop, "print", basket.toString(), "--open"));
        assertEquals(0, failing.code());
        assertEquals("there is no viewer to open out with; open it by hand\n", failing.err());
    }

    @Test
    void without_a_desktop_open_is_a_sentence_and_the_print_is_done() throws Exception {
        Path basket = Ran.basket(folder.resolve("b"), "", PIECE);
        Ran ran = Ran.ended(Ran.start(folder, List.of("DISPLAY", "", "WAYLAND_DISPLAY", ""), "print", basket.toString(), "--only", "cut-sheets", "--open"));
        assertEquals(0, ran.code());
        assertEquals("there is no viewer to open out/cut-sheets.pdf with; open it by hand\n", ran.err());
        assertTrue(Files.exists(out().resolve("cut-sheets.pdf")));
    }

    @Test
    void each_desktop_has_its_opener() {
        assertEquals(List.of("open"), Viewer.command("Mac OS X", Map.of()));
        assertEquals(List.of("explorer.exe"), Viewer.command("Windows 11", Map.of()));
        assertEquals(List.of("xdg-open"), Viewer.command("Linux", Map.of("WAYLAND_DISPLAY", "wayland-0")));
        assertEquals(List.of(), Viewer.command("Linux", Map.of("DISPLAY", "")));
    }
}
