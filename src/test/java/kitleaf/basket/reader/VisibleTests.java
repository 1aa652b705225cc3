package kitleaf.basket.reader;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import kitleaf.basket.Piece;
import kitleaf.basket.form.Form;
import kitleaf.basket.form.TextForm;
import kitleaf.basket.place.Fault;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The code points are those of Unicode 15.0's DerivedCoreProperties.txt, Default_Ignorable_Code_Point, written down by hand. */
class VisibleTests {

    @TempDir
    Path temp;
    private Written written;

    @BeforeEach
    void nameTheFolder() throws IOException {
        written = new Written(Files.createDirectory(temp.resolve("harbour")));
    }

    /** Soft hyphen, grapheme joiner, fillers, blanks of no width, joiners, selectors, tags, and what is reserved for such. */
    @ParameterizedTest
    @ValueSource(ints = {0xAD, 0x34F, 0x61C, 0x115F, 0x1160, 0x17B4, 0x180B, 0x180E, 0x200B, 0x200C, 0x200D, 0x200E, 0x200F, 0x2060, 0x2064, 0x206A,
        0x3164, 0xFE00, 0xFE0F, 0xFEFF, 0xFFA0, 0xFFF0, 0x1BCA0, 0x1D173, 0xE0000, 0xE0001, 0xE0041, 0xE007F, 0xE0100, 0xE01EF, 0xE0FFF})
    void whatIsNeverSeenMakesNoCodeAndNoOtherCode(int ignored) throws Fault {
        String sign = Character.toString(ignored);
        Form<String> form = new TextForm("K12");
        assertEquals("text.unseen.wrong", assertThrows(Fault.class, () -> form.read(sign + " " + sign)).wrong().key());
        assertEquals("K12", form.read(sign + "K1" + sign + "2" + sign));
        assertEquals("Ebb grey", form.read("Ebb " + sign + "grey " + sign));
    }

    /** Blanks other than the plain one (Zs), the Braille pattern without dots, and marks with no letter under them. */
    @ParameterizedTest
    @ValueSource(ints = {0xA0, 0x1680, 0x2000, 0x2007, 0x200A, 0x202F, 0x205F, 0x3000, 0x2800, 0x301, 0x20DD, 0xFFF9})
    void blanksAndMarksAloneAreNoName(int blank) {
        String told = Character.isWhitespace(blank) ? "text.empty.wrong" : "text.unseen.wrong";
        assertEquals(told, assertThrows(Fault.class, () -> new TextForm("K12").read(Character.toString(blank))).wrong().key());
    }

    /** U+212B, U+00C5 and A with U+030A are one letter by UAX 15; so they are with a joiner (U+034F) between. */
    @ParameterizedTest
    @ValueSource(strings = {"\u00C5 7", "A\u030A 7", "\u212B 7", "A\u034F\u030A 7", "\u00C5\u00A07", "\u2003\u00C5 7\u00A0"})
    void aLetterWrittenInAnotherWayIsTheSameLetter(String written) throws Fault {
        assertEquals("\u00C5 7", new TextForm("K12").read(written));
    }

    @Test
    void whatIsSeenStays() throws Fault {
        for (String seen : List.of("●", "½", "é", "ẞ", "☂", "\uD83E\uDDF5", "한", "a b", "K-12/3")) {
            assertEquals(seen, new TextForm("K12").read(seen), seen);
        }
    }

    @Test
    void aCodeWithAnUnseenCharacterIsTheSameCodeInAListAndInATable() {
        assertEquals(List.of("5:10: the code \"K12\" stands twice in this list; give each thread once, or a code of its own"),
                written.problems(Written.PIECE + "threads: [{code: K12},\n  {code: \"K\\u20601\\u00AD2\"}]\n"));
        written.file("pieces/t.csv", "code,cross\nK12,5\nK\u20601\u00AD2,6\n");
        assertEquals(List.of("pieces/t.csv:3:1: the code \"K12\" stands twice in this list; give each thread once, or a code of its own"),
                written.file("pieces/p.yaml", Written.PIECE + "threads: t.csv\n").problems());
    }

    @Test
    void everyWordThatIsPrintedIsSeenOrToldWhereItStands() {
        String told = ": nothing of this text is seen in print; write something that is seen, such as ";
        written.file("basket.yaml", """
                title: "\\u2060"
                stash: [{code: "\\u200B", skeins: 1}, {code: K1, skeins: 1, lot: "\\u00AD"}]
                cloth-on-hand: [{name: "\\u034F", kind: linen, count: 36, size: 70 cm x 90 cm}]
                cloth-cuts: [{name: "\\uFE0F", size: 70 cm x 90 cm, cloth: "\\u3164"}]
                time-off: [{from: 2027-07-05, why: "\\u180E"}]
                skeins: {"\\u115F": {length: 8 m, plies: 6}}
                """);
        written.file("pieces/t.csv", "code,name,symbol,lot,part\n\u2060,\u200D,\uFE0F,\u00AD,\n");
        written.file("pieces/p.yaml", """
                piece: "\\U000E0041"
                designer: "\\u200C"
                stitches: 140 x 210
                cloth: {name: "\\u2800", kind: linen, count: 36, over: 2}
                threads: t.csv
                parts: [{part: "\\u200B", over: 1, threads: [{code: "\\u2060", name: "\\u2060", symbol: "\\u2060", lot: "\\u2060"}]}]
                """);
        assertEquals(List.of("basket.yaml:1:8" + told + "Harbour basket", "basket.yaml:2:16" + told + "K12", "basket.yaml:2:65" + told + "7 B",
                "basket.yaml:3:24" + told + "Sea-mist", "basket.yaml:4:21" + told + "fat quarter", "basket.yaml:4:59" + told + "Sea-mist",
                "basket.yaml:5:36" + told + "boats", "basket.yaml:6:10" + told + "silk",
                "pieces/p.yaml:1:8" + told + "Fog bell", "pieces/p.yaml:2:11" + told + "Ottoline Marsh", "pieces/p.yaml:4:15" + told + "Sea-mist",
                "pieces/p.yaml:6:16" + told + "Verse", "pieces/p.yaml:6:52" + told + "K12", "pieces/p.yaml:6:68" + told + "Ebb grey",
                "pieces/p.yaml:6:86" + told + "\"●\"", "pieces/p.yaml:6:101" + told + "7 B",
                "pieces/t.csv:2:1" + told + "K12", "pieces/t.csv:2:3" + told + "Ebb grey", "pieces/t.csv:2:5" + told + "\"●\"", "pieces/t.csv:2:7" + told + "7 B"),
                written.problems());
    }

    @Test
    void rowsFindTheirPieceAndPartWhateverIsUnseenInThem() {
        written.file("pieces/t.csv", "piece,part,code,cross\nb\u00ADell,,K1,5\nbell\u2060,Ver\u200Bse,K2,6\n");
        Piece piece = written.file("pieces/bell.yaml", Written.PIECE + "threads: t.csv\nparts: [{part: Verse, over: 1, threads: t.csv}]\n").basket().pieces().get(0);
        assertEquals("K1", piece.threads().get(0).code());
        assertEquals("K2", piece.parts().get(0).threads().get(0).code());
    }

    @Test
    void aPieceOrPartOfNothingSeenIsToldInItsCell() {
        written.file("pieces/t.csv", "piece,part,code\n\u2060,\u200B,K1\nbell,,K2\n");
        assertEquals(List.of("pieces/t.csv:2:1: nothing of this text is seen in print; write something that is seen, such as fog-bell",
                "pieces/t.csv:2:3: nothing of this text is seen in print; write something that is seen, such as Verse"),
                written.file("pieces/bell.yaml", Written.PIECE + "threads: t.csv\n").problems());
    }

    @Test
    void twoSkeinsOrPricesOfOneNameAreTold() {
        written.file("basket.yaml", "skeins: {silk: {length: 8 m, plies: 6}, \"si\\u00ADlk\": {length: 5 m, plies: 7}}\n"
                + "prices: {silk: 1 GBP, \"silk\\u2060\": 2 GBP}\n").file("pieces/p.yaml", Written.PIECE);
        assertEquals(List.of("basket.yaml:1:41: \"silk\" stands twice here; keep one of the two", "basket.yaml:2:23: \"silk\" stands twice here; keep one of the two"),
                written.problems());
    }

    @Test
    void filesOfOneLookAreOneIdAndAFileOfNoLookIsRefused() {
        written.file("pieces/bell.yaml", Written.PIECE).file("pieces/be\u00ADll.yaml", Written.PIECE.replace("Fog bell", "Other bell")).file("pieces/\u2060.yaml", Written.PIECE);
        List<String> problems = written.problems();
        assertEquals(2, problems.size(), problems.toString());
        assertEquals(1, problems.stream().filter(one -> one.endsWith("this file's name holds a sign that does not show; rename it")).count(), problems.toString());
        assertEquals(1, problems.stream().filter(one -> one.contains("is also that of the piece in")).count(), problems.toString());
    }
}
