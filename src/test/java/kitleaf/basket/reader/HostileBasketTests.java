package kitleaf.basket.reader;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import kitleaf.basket.Basket;
import kitleaf.basket.place.BasketFiles;
import kitleaf.basket.place.LinkGuard;
import kitleaf.basket.place.Problems;
import kitleaf.basket.place.SourceReader;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Baskets made to do harm: each costs its reader a sentence. */
class HostileBasketTests {

    private static final String WITH_TABLE = Written.PIECE + "threads: t.csv\n";

    @TempDir
    private Path folder;

    private List<String> table(String text) {
        return new Written(folder.resolve("b")).file("pieces/t.csv", text).problems(WITH_TABLE).stream()
                .map(problem -> problem.replace("pieces/t.csv:", "")).toList();
    }

    @Test
    void lettersThatAreNoneAreToldWhereTheyWereWritten() {
        for (String letter : List.of("\\ud800", "\\uffff", "\\ufffe", "\\e", "\\0", "\\u202e")) {
            List<String> problems = new Written(folder.resolve("b")).problems(Written.PIECE.replace("Fog bell", "\"a" + letter + "b\""));
            assertEquals(1, problems.size(), letter);
            assertTrue(problems.get(0).startsWith("1:8: "), problems.get(0));
            assertTrue(problems.get(0).contains("sign that does not show"), problems.get(0));
        }
    }

    @Test
    void aLinkOutOfTheBasketIsNotFollowedAndNothingBehindItIsShown() throws IOException {
        Path secret = Files.writeString(folder.resolve("secret.yaml"), "my secret\n");
        Written basket = new Written(folder.resolve("b")).file("pieces/p.yaml", Written.PIECE);
        Files.createSymbolicLink(folder.resolve("b/pieces/q.yaml"), secret);
        Files.createSymbolicLink(folder.resolve("b/basket.yaml"), secret);
        List<String> problems = basket.problems();
        String wrong = ": this is a link that leads out of the basket; put the file itself inside it";
        assertEquals(List.of("basket.yaml" + wrong, "pieces/q.yaml" + wrong), problems);
        assertFalse(BasketReader.read(folder.resolve("b")).problems().stream().map(Written::english).anyMatch(t -> t.contains("my secret")));
    }

    @Test
    void aLinkedFolderOfPiecesIsToldOnceAndNotLookedInto() throws IOException {
        Path elsewhere = Files.createDirectories(folder.resolve("elsewhere"));
        Files.writeString(elsewhere.resolve("p.yaml"), Written.PIECE);
        Files.writeString(elsewhere.resolve("q.txt"), Written.PIECE);
        Written basket = new Written(folder.resolve("b")).file("basket.yaml", "title: B\n");
        Files.createSymbolicLink(folder.resolve("b/pieces"), elsewhere);
        assertEquals(List.of("pieces: this is a link that leads out of the basket; put a folder in its place"), basket.problems());
    }

    /** What a file outside holds cannot be guessed from what is said of its name. */
    @Test
    void hintsAtMisnamedPiecesLookBehindNoLinkThatLeadsOut() throws IOException {
        Path secret = Files.writeString(folder.resolve("secret"), Written.PIECE);
        Written basket = new Written(folder.resolve("b")).file("pieces/p.yaml", Written.PIECE).file("drafts/inside", Written.PIECE.replace("Fog bell", "In"));
        Files.createSymbolicLink(folder.resolve("b/pieces/q.txt"), secret);
        Files.createSymbolicLink(folder.resolve("b/beside.yaml"), secret);
        assertEquals(List.of(), basket.problems());
        Files.createSymbolicLink(folder.resolve("b/pieces/r.txt"), folder.resolve("b/drafts/inside"));
        assertEquals(List.of("pieces/r.txt: this file's name does not end in .yaml; rename it to r.yaml"), basket.problems());
    }

    @Test
    void aPieceNamedByItsFileIsFencedByTheFolderAroundPiecesWithSettingsOrWithout() throws IOException {
        Path secret = Files.writeString(folder.resolve("secret"), "my secret\n");
        Files.createDirectories(folder.resolve("b/pieces"));
        Path link = Files.createSymbolicLink(folder.resolve("b/pieces/q.yaml"), secret);
        List<String> without = BasketReader.read(link).problems().stream().map(Written::english).toList();
        assertEquals(List.of(link + ": this is a link that leads out of the basket; put the file itself inside it"), without);
        Files.writeString(folder.resolve("b/basket.yaml"), "title: B\n");
        assertEquals(without, BasketReader.read(link).problems().stream().map(Written::english).toList());
    }

    /** Which documents a file holds is asked before it is read in earnest. */
    @Test
    void aFileOutsideIsNotEvenCounted() throws IOException {
        Path three = Files.writeString(folder.resolve("three.yaml"), (Written.PIECE + "---\n").repeat(3));
        Files.createDirectories(folder.resolve("b/pieces"));
        Files.createSymbolicLink(folder.resolve("b/pieces/q.yaml"), three);
        assertEquals(List.of("q"), PieceFile.in(folder.resolve("b")).stream().map(PieceFile::id).toList());
        assertEquals(List.of("q"), PieceFile.of(folder.resolve("b/pieces/q.yaml")).stream().map(PieceFile::id).toList());
    }

    @Test
    void aFileThatLiesAloneMayBeALinkToWhereverSheKeepsIt() throws IOException {
        Path kept = Files.createDirectories(folder.resolve("kept")).resolve("p.yaml");
        Files.writeString(kept, Written.PIECE);
        Path link = Files.createSymbolicLink(Files.createDirectories(folder.resolve("desk")).resolve("p.yaml"), kept);
        assertEquals(List.of(), BasketReader.read(link).problems());
    }

    /** What was looked at is what is opened: a link put in a file's place after that is not followed. */
    @Test
    void aLinkTurnedOutOfTheBasketAfterItWasLookedAtIsNotOpened() throws IOException {
        Path secret = Files.writeString(folder.resolve("secret"), Written.PIECE);
        Path file = new Written(folder.resolve("b")).file("pieces/p.yaml", Written.PIECE).folder().resolve("pieces/p.yaml");
        Problems problems = new Problems();
        Path real = LinkGuard.round(folder.resolve("b")).find(file, problems).orElseThrow();
        Files.delete(file);
        Files.createSymbolicLink(file, secret);
        assertEquals(Optional.empty(), SourceReader.bytes(real, file, problems));
        assertEquals(1, problems.all().size());
        assertTrue(SourceReader.table(real, file, problems).isEmpty());
    }

    @Test
    void aLinkWithinTheBasketIsFollowed() throws IOException {
        Written basket = new Written(folder.resolve("b")).file("drafts/p.yaml", Written.PIECE).file("pieces/q.yaml",
                Written.PIECE.replace("Fog bell", "Q"));
        Files.createSymbolicLink(folder.resolve("b/pieces/p.yaml"), folder.resolve("b/drafts/p.yaml"));
        assertEquals(2, basket.basket().pieces().size());
    }

    @Test
    void aFileNameThatSteersTheScreenIsRefusedAndShownHarmless() {
        List<String> problems = new Written(folder.resolve("b")).file("pieces/\u001b[31mx.yaml", Written.PIECE).problems(
                Written.PIECE.replace("Fog bell", "P"));
        assertEquals(List.of("pieces/\uFFFD[31mx.yaml: this file's name holds a sign that does not show; rename it"), problems);
    }

    @Test
    void wideTablesAndLongOnesAreToldAsWhatTheyAre() {
        assertEquals(List.of(), table("code,name\nA" + ",".repeat(100) + "\n"));
        assertEquals(List.of("2:1: this row has more than 200 cells; take out columns that are not needed"), table("code,name\nA" + ",".repeat(900_000) + "\n"));
        assertEquals(List.of("1:1001: this is column 201 of this table; keep at most 200"), table("code" + ",code".repeat(150_000) + "\nA\n"));
        assertEquals(List.of("5002:1: this table has more than 5000 rows; keep at most 5000"), table(rows(5001)));
        assertEquals(List.of(), table(rows(5000)));
    }

    private static String rows(int number) {
        StringBuilder rows = new StringBuilder("code,cross\n");
        for (int i = 0; i < number; i++) {
            rows.append(i).append(",1\n");
        }
        return rows.toString();
    }

    @Test
    void moreThreadsThanAnyChartHasAreTold() {
        List<String> problems = new Written(folder.resolve("b")).problems(Written.PIECE + "threads:\n" + "- {code: A}\n".repeat(5001));
        assertEquals(List.of("5005:3: this list has more than 5000 threads; keep at most 5000 in one list"), problems);
    }

    @Test
    void moreFilesThanAnyBasketHasAreTold() throws IOException {
        Written basket = new Written(folder.resolve("b")).file("pieces/p.yaml", Written.PIECE);
        for (int i = 0; i < BasketFiles.MOST_FILES; i++) {
            Files.createFile(folder.resolve("b/pieces/" + i + ".txt"));
        }
        assertEquals(List.of("pieces: there are more than 10000 files in here; part them into several baskets"), basket.problems());
    }

    /** Windows editors write both; names come in any script. */
    @Test
    void carriageReturnsMarksSpacesAndOtherScriptsAreTakenEverywhere() {
        byte[] mark = {(byte) 0xEF, (byte) 0xBB, (byte) 0xBF};
        Basket basket = new Written(folder.resolve("мой короб ςİı"))
                .file("basket.yaml", bytes(mark, "title: T\r\nstash: \"мои нитки.csv\"\r\n"))
                .file("мои нитки.csv", bytes(mark, "code,skeins\r\nA,2\r\n"))
                .file("pieces/Fløt İı 潮.yaml", bytes(mark, (Written.PIECE + "threads: \"t t.csv\"\n").replace("\n", "\r\n")))
                .file("pieces/t t.csv", bytes(mark, "code,cross\r\nA,100\r\n")).basket();
        assertEquals("T", basket.title());
        assertEquals("Fløt İı 潮", basket.pieces().get(0).id());
        assertEquals("A", basket.pieces().get(0).threads().get(0).code());
        assertEquals(2, basket.stash().get(0).skeins());
    }

    private static byte[] bytes(byte[] mark, String text) {
        byte[] words = text.getBytes(StandardCharsets.UTF_8);
        byte[] all = new byte[mark.length + words.length];
        System.arraycopy(mark, 0, all, 0, mark.length);
        System.arraycopy(words, 0, all, mark.length, words.length);
        return all;
    }
}
