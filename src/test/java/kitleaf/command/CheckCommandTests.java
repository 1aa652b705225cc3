package kitleaf.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What only a sheet would tell, {@code check} tells too: facts that are odd together, in a basket without problems. */
class CheckCommandTests {

    private static final String PIECE = "piece: Fog bell\nstitches: 100 x 100\ncloth: {name: Sea-mist, kind: linen, count: 28, over: 2}\nmargin: 1 in\n";

    @TempDir
    Path folder;

    private List<String> notices(String settings, String piece, String... options) throws IOException {
        Path basket = Ran.basket(folder, settings, piece);
        Object[] arguments = new Object[2 + options.length];
        arguments[0] = "check";
        arguments[1] = basket;
        System.arraycopy(options, 0, arguments, 2, options.length);
        Ran ran = Ran.kitleaf(arguments);
        assertEquals(0, ran.code(), ran.err());
        List<String> lines = ran.out().lines().toList();
        if (lines.size() == 1) {
            return List.of();
        }
        assertTrue(lines.get(1).isEmpty() && lines.get(2).endsWith(":"), ran.out());
        return lines.subList(3, lines.size()).stream().map(String::strip).map(line -> line.replaceFirst("^[a-z0-9-]+: ", "")).toList();
    }

    @Test
    void aBasketWithoutOddFactsIsSoundAndNoMore() throws IOException {
        assertEquals(List.of(), notices("cloth-on-hand: [{name: Sea-mist, kind: linen, count: 28, size: 70 cm x 90 cm}]\n", PIECE));
    }

    @Test
    void aClothOnHandOfAnotherWeaveThanThePieceThatNamesItIsTold() throws IOException {
        String onHand = "cloth-on-hand: [{name: sea-MIST, kind: %s, count: %s, size: 70 cm x 90 cm}]\n";
        assertEquals(List.of("its cloth is linen 28, and sea-MIST on hand is linen 25"), notices(String.format(onHand, "linen", "25"), PIECE));
        assertEquals(List.of("its cloth is linen 28, and sea-MIST on hand is linen 28.125 x 27.5"),
                notices(String.format(onHand, "linen", "{warp: 28.125, weft: 27.5}"), PIECE));
        assertEquals(List.of("its cloth is linen 28, and sea-MIST on hand is evenweave 28"), notices(String.format(onHand, "evenweave", "28"), PIECE));
        // Of a begun piece the plan says nothing, and the two are as odd.
        assertEquals(List.of("its cloth is linen 28, and sea-MIST on hand is linen 25"), notices(String.format(onHand, "linen", "25"), PIECE + "progress: 5%\n"));
    }

    @Test
    void oneClothOfTheNameThatServesIsEnough() throws IOException {
        assertEquals(List.of(), notices("cloth-on-hand: [{name: Sea-mist, kind: linen, count: 25, size: 70 cm x 90 cm}, {name: Sea-mist, kind: linen, count: 28, size: 70 cm x 90 cm}]\n", PIECE));
    }

    /** 100 stitches over 2 of 28 are 100/14 = 7 1/7 in; with an inch on each side 9 1/7, rounded up to 9 1/4 in, which is 23.5 cm. */
    @Test
    void aClothOnHandThatIsTooSmallForThePieceThatNamesItIsTold() throws IOException {
        assertEquals(List.of(), notices("cloth-on-hand: [{name: Sea-mist, kind: linen, count: 28, size: 24 cm x 24 cm}]\n", PIECE));
        assertEquals(List.of("the plan finds no room for it on Sea-mist, the cloth on hand it names"),
                notices("cloth-on-hand: [{name: Sea-mist, kind: linen, count: 28, size: 23 cm x 24 cm}]\n", PIECE));
        assertEquals(List.of("no cloth on hand or from the shop is large enough for its cut of 9 1/4 x 9 1/4 in"),
                notices("cloth-on-hand: [{name: Sea-mist, kind: linen, count: 28, size: 23 cm x 24 cm}]\ncloth-cuts: []\n", PIECE));
    }

    @Test
    void aLogThatHasMoreThanWhatIsSaidToBeDoneIsTold() throws IOException {
        String log = ", log: [{on: 2026-03-01, hours: 2, stitches: 200}, {on: 2026-03-02, hours: 2, stitches: 100}]}\n";
        assertEquals(List.of("its log has 300 stitches, done says 120, and done is taken"), notices("", PIECE + "progress: {done: 120" + log));
        // 5 % of 10,000 are 500.
        assertEquals(List.of(), notices("", PIECE + "progress: {done: 5%" + log));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
            ``                                                        | {code: K1}                                        | K1: how much is not told in p
            `stash: [{code: K1, skein: silk, skeins: 1}]`             | {code: K1, stitches: {cross: 500}}                | K1: the stash has it in another put-up than cotton, as the pieces take it
            ``                                                        | {code: K1, skein: silk, lot: "7", share: 20%}     | K1: the stash holds too little of the lot named in p
            """)
    void whatTheBuyListWarnsOfIsTold(String stash, String thread, String expected) throws IOException {
        Path basket = Ran.basket(folder, "skeins: {silk: {length: 6 m, plies: 7, lot-matters: yes}}\n" + (stash == null ? "" : stash) + "\n",
                PIECE + "coverage: 20%\nthreads: [" + thread + "]\n");
        Ran ran = Ran.kitleaf("check", basket);
        assertEquals(0, ran.code(), ran.err());
        String id = Ran.files(basket.resolve("pieces")).get(0).replace(".yaml", "");
        assertTrue(ran.out().lines().anyMatch(line -> line.equals("  " + expected.replaceAll("\\bp$", id))), ran.out());
    }

    @Test
    void whatTheGoalGridWarnsOfIsTold() throws IOException {
        List<String> notices = notices("goals: {year: 2027, choose: 1}\npace: {stitches-per-hour: 100, hours-per-week: 1}\n",
                PIECE + "goal: {must: yes}\n---\n" + PIECE.replace("Fog bell", "Rope walk") + "goal: {must: yes}\n");
        // Two must be done and one is chosen; 100 hours each, and 52 in the year.
        assertTrue(notices.stream().anyMatch(line -> line.startsWith("goals 2027: more musts than chosen: 1")), notices.toString());
        assertTrue(notices.stream().anyMatch(line -> line.startsWith("goals 2027: musts do not fit: ")), notices.toString());
    }

    @Test
    void noticesAreGermanWhereTheBasketIs() throws IOException {
        assertEquals(List.of("Sein Stoff ist Leinen 28, und Meer im Vorrat ist Leinen 25,5"),
                notices("language: de\ncloth-on-hand: [{name: Meer, kind: linen, count: 25.5, size: 70 cm x 90 cm}]\n", PIECE.replace("Sea-mist", "Meer")));
    }

    @Test
    void aContradictionIsAProblemWithItsPlaceAndNoNotice() throws IOException {
        Ran ran = Ran.kitleaf("check", Ran.basket(folder, "", PIECE.replace("over: 2", "over: 2, cut: no") + "progress: 5%\n"));
        assertEquals(1, ran.code());
        assertEquals("", ran.out());
        assertTrue(ran.err().contains(".yaml:3:63: this piece is begun, so its cloth is cut; "), ran.err());
    }
}
