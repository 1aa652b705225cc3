package kitleaf.basket.reader;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.AccessDeniedException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.List;
import java.util.OptionalDouble;
import kitleaf.basket.Basket;
import kitleaf.basket.Paper;
import kitleaf.basket.Piece;
import kitleaf.basket.Printer;
import kitleaf.basket.Units;
import kitleaf.basket.place.BasketFiles;
import kitleaf.basket.place.Problem;
import kitleaf.basket.place.SourceReader;
import kitleaf.basket.thread.PutUp;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class BasketReaderTests {

    @TempDir
    Path temp;
    private Written written;

    @BeforeEach
    void nameTheFolder() throws IOException {
        written = new Written(Files.createDirectory(temp.resolve("harbour")));
    }

    private static String titled(String title) {
        return Written.PIECE.replace("Fog bell", title);
    }

    @Test
    void aBasketWithoutSettingsHasTheUsualOnes() {
        Basket basket = written.file("pieces/fog-bell.yaml", Written.PIECE).basket();
        assertEquals("harbour", basket.title());
        assertEquals(new Paper("A4", 210, 297), basket.paper());
        assertEquals(Units.IN, basket.units());
        assertEquals(Printer.TRUE, basket.printer());
        assertEquals(OptionalDouble.empty(), basket.cutStepMm());
        assertEquals(List.of(PutUp.COTTON), basket.putUps());
    }

    @Test
    void everySettingIsRead() {
        Basket basket = written.file("pieces/a.yaml", Written.PIECE).file("basket.yaml", """
                title: Night tides
                paper: letter landscape
                units: cm
                printer: {measured-across: 99.3 mm, measured-down: 9.98 cm}
                cut-step: 1/2 in
                skeins:
                  silk: {length: 5 m, plies: 7, lot-matters: yes}
                  cotton: {length: 10 m, plies: 4}
                """).basket();
        assertEquals("Night tides", basket.title());
        assertEquals(new Paper("letter landscape", 279.4, 215.9), basket.paper());
        assertEquals(Units.CM, basket.units());
        assertEquals(99.3, basket.printer().measuredAcrossMm(), 1e-9);
        assertEquals(99.8, basket.printer().measuredDownMm(), 1e-9);
        assertEquals(12.7, basket.cutStepMm().orElseThrow(), 1e-9);
        assertEquals(List.of(new PutUp("cotton", 10_000, 4, false), new PutUp("silk", 5000, 7, true)), basket.putUps());
    }

    @Test
    void settingsFaultsSayWhatToWrite() {
        assertEquals(List.of(
                "basket.yaml:1:1: \"titel\" is not a key of basket.yaml; did you mean title?",
                "basket.yaml:2:8: \"A44\" is not a paper known here; did you mean A4?",
                "basket.yaml:3:8: \"inch\" is not a unit to think in; write one of: in, cm",
                "basket.yaml:4:28: \"90 mm\" is too far from 100 mm to be the printer's own error; "
                        + "set the print dialog to 100 % or actual size, print the bars again and measure them",
                "basket.yaml:5:11: \"3 in\" is not a step to round cuts to; write 1 mm to 2 in",
                "basket.yaml:6:16: this skein has no length; write one, such as length: 8 m"),
                written.file("pieces/a.yaml", Written.PIECE + "threads: [{code: K1, skein: silk}]\n").file("basket.yaml", """
                titel: x
                paper: A44
                units: inch
                printer: {measured-across: 90 mm}
                cut-step: 3 in
                skeins: {silk: {plies: 7}}
                """).problems());
    }

    @Test
    void idsAreFileNamesNumberedFromTheSecondDocument() {
        Basket basket = written.file("pieces/b.yaml", titled("One") + "---\n" + titled("Two") + "---\n" + titled("Three"))
                .file("pieces/a.yaml", "\uFEFF" + titled("Zero").replace("\n", "\r\n")).basket();
        assertEquals(List.of("a", "b", "b-2", "b-3"), basket.pieces().stream().map(Piece::id).toList());
        assertEquals(List.of("Zero", "One", "Two", "Three"), basket.pieces().stream().map(Piece::title).toList());
    }

    @Test
    void sharedIdsAreTold() {
        assertEquals(List.of("pieces/a.yaml:5:8: the ID \"a-2\" is also that of the piece in pieces/a-2.yaml, line 1; "
                + "rename one of the files"),
                written.file("pieces/a.yaml", titled("One") + "---\n" + titled("Two")).file("pieces/a-2.yaml", titled("Three")).problems());
    }

    @Test
    void sharedTitlesAreTold() {
        assertEquals(List.of("pieces/b.yaml:1:8: the title \"fog bell\" is also that of the piece in pieces/a.yaml, line 1; "
                + "give each piece a title of its own"),
                written.file("pieces/a.yaml", Written.PIECE).file("pieces/b.yaml", titled("fog bell")).problems());
    }

    @Test
    void everyProblemOfEveryFileIsToldByPlace() {
        assertEquals(List.of(
                "basket.yaml:1:8: \"A44\" is not a paper known here; did you mean A4?",
                "pieces/a.yaml:2:1: \"stiches\" is not a key of this piece; did you mean stitches?",
                "pieces/a.yaml:4:9: \"3\" is a bare number; write it with its unit, such as 3 in or 7.5 cm",
                "pieces/b.yaml:1:1: this piece has no stitches; write one, such as stitches: 140 x 210",
                "pieces/b.yaml:1:1: this piece has no cloth; write one, such as cloth: {kind: linen, count: 36, over: 2}"),
                written.file("basket.yaml", "paper: A44\n")
                        .file("pieces/a.yaml", Written.PIECE.replace("stitches", "stiches") + "margin: 3\n")
                        .file("pieces/b.yaml", "piece: Bell buoy\n").problems());
    }

    @Test
    void theOrderIsByFileThenLineThenColumn() {
        List<String> places = written.file("pieces/b.yaml", "piece: B\nx1: 1\nx2: 1\n").file("pieces/a.yaml", "{piece: A, y1: 1, y2: 1}\n")
                .problems().stream().map(p -> p.substring(0, p.indexOf(": "))).distinct().toList();
        assertEquals(List.of("pieces/a.yaml:1:1", "pieces/a.yaml:1:12", "pieces/a.yaml:1:19",
                "pieces/b.yaml:1:1", "pieces/b.yaml:2:1", "pieces/b.yaml:3:1"), places);
    }

    @Test
    void anEmptyBasketIsTold() {
        assertEquals(List.of(".: there are no pieces in this basket; write each in a file of its own in its pieces folder, ending in .yaml"),
                written.problems());
    }

    @Test
    void aMissingFolderIsTold() {
        assertEquals("nowhere: there is no such file or folder; check its name and where you stand", only(Path.of("nowhere")));
        assertEquals("nowhere.yaml: there is no such file or folder; check its name and where you stand", only(Path.of("nowhere.yaml")));
    }

    private static String only(Path where) {
        List<Problem> problems = BasketReader.read(where).problems();
        assertEquals(1, problems.size());
        return Written.english(problems.get(0));
    }

    @Test
    void aFileThatIsNoYamlIsTold() {
        written.file("notes.txt", "x");
        Path file = written.folder().resolve("notes.txt");
        assertEquals(file + ": this is neither a basket folder nor a .yaml file; name a basket folder, or a piece file ending in .yaml",
                only(file));
    }

    @Test
    void aYmlFileIsToBeRenamed() {
        assertEquals(List.of("pieces/a.yml: this file's name does not end in .yaml; rename it to a.yaml"),
                written.file("pieces/a.yml", Written.PIECE).problems());
    }

    /** Such as editors make that put their own ending behind hers, while the desktop shows neither. */
    @Test
    void aTextEndingBehindTheNameIsToldAndNotPassedOver() {
        assertEquals(List.of("basket.yaml.txt: this file's name does not end in .yaml; rename it to basket.yaml",
                "pieces/b.yaml.txt: this file's name does not end in .yaml; rename it to b.yaml",
                "pieces/c.YML.TXT: this file's name does not end in .yaml; rename it to c.yaml"),
                written.file("basket.yaml.txt", "").file("pieces/a.yaml", Written.PIECE).file("pieces/b.yaml.txt", Written.PIECE)
                        .file("pieces/c.YML.TXT", Written.PIECE).file("pieces/notes.txt", "x").problems());
    }

    /** A copy kept beside its piece, and notes, are nobody's concern. */
    @Test
    void aPieceSavedAsPlainTextIsTold() {
        assertEquals(List.of("pieces/b.TXT: this file's name does not end in .yaml; rename it to b.yaml"),
                new Written(temp).file("pieces/a.yaml", Written.PIECE).file("pieces/a.txt", Written.PIECE).file("pieces/b.TXT", "# mine\n" + Written.PIECE)
                        .file("pieces/notes.txt", "piece: to be cut by the Friday\n").problems());
    }

    @Test
    void settingsGivenForTheirBasketAreToldWhatToName() {
        written.file("pieces/a.yaml", Written.PIECE).file("basket.yaml", "units: cm\n");
        Path file = written.folder().resolve("basket.yaml");
        assertEquals(file + ": this holds what pieces share, and no piece; name the folder it lies in", only(file));
    }

    @Test
    void settingsInTwoDocumentsOrUnderAnotherNameAreTold() {
        assertEquals(List.of("basket.yaml:3:1: this is a second document in basket.yaml; keep all settings in one",
                "basket.yml: this file's name does not end in .yaml; rename it to basket.yaml"),
                written.file("pieces/a.yaml", Written.PIECE).file("basket.yaml", "units: cm\n---\ntitle: x\n")
                        .file("basket.yml", "units: cm\n").problems());
    }

    @Test
    void settingsThatCannotBeReadMakeNoNoiseInPieces() {
        assertEquals(List.of("basket.yaml:1:1: \"skiens\" is not a key of basket.yaml; did you mean skeins?"),
                written.file("pieces/a.yaml", Written.PIECE + "threads: [{code: K1, skein: silk}]\n")
                        .file("basket.yaml", "skiens: {silk: {length: 5 m, plies: 7}}\n").problems());
        assertEquals(List.of("basket.yaml:1:8: this [ is never closed; write ] where the group ends"),
                written.file("basket.yaml", "title: [\n a: b\n").problems());
    }

    @Test
    void aFileOfMoreThanAMegabyteIsTold() {
        assertEquals(List.of("pieces/a.yaml: this file is larger than 1 MB; split it into several"),
                written.file("pieces/a.yaml", Written.PIECE + "#" + "x".repeat(1_000_000)).problems());
    }

    @Test
    void aFloodOfProblemsInOneFileIsCutShort() {
        StringBuilder flood = new StringBuilder(Written.PIECE);
        for (int i = 0; i < 2000; i++) {
            flood.append("hoop").append(i).append(": 1\n");
        }
        List<String> problems = written.file("pieces/a.yaml", flood.toString()).problems();
        assertEquals(1000, problems.size());
        assertEquals("pieces/a.yaml: this file has 1000 problems or more; mend those told of here, then look again", problems.get(0));
    }

    @Test
    void emptyFilesAndDocumentsAreTold() {
        assertEquals(List.of("pieces/a.yaml: this file is empty; write a piece in it, or take it out",
                "pieces/b.yaml:4:1: this document is empty; write a piece in it, or take out this ---"),
                written.file("pieces/a.yaml", "# later\n").file("pieces/b.yaml", Written.PIECE + "---\n").problems());
    }

    @Test
    void aBarePieceIsABasketOfItsOwn() {
        written.file("fog-bell.yaml", Written.PIECE).file("basket.yaml", "title: Not this one\n");
        Basket basket = BasketReader.read(written.folder().resolve("fog-bell.yaml")).basket().orElseThrow();
        assertEquals("Fog bell", basket.title());
        assertEquals("fog-bell", basket.pieces().get(0).id());
    }

    @Test
    void aBarePieceInAPiecesFolderHasItsBasketsSettings() {
        written.file("pieces/fog-bell.yaml", Written.PIECE).file("pieces/other.yaml", "broken").file("basket.yaml", "units: cm\n");
        Basket basket = BasketReader.read(written.folder().resolve("pieces/fog-bell.yaml")).basket().orElseThrow();
        assertEquals(Units.CM, basket.units());
        assertEquals("Fog bell", basket.title());
        assertEquals(1, basket.pieces().size());
    }

    @Test
    void lettersThatAreNotUtf8AreTold() {
        byte[] latin1 = "piece: Fog bell\ndesigner: Ren\u00e9e\n".getBytes(StandardCharsets.ISO_8859_1);
        assertEquals(List.of("pieces/a.yaml:2:14: this letter is not in UTF-8; save the file as UTF-8"),
                written.file("pieces/a.yaml", latin1).problems());
    }

    @Test
    void whatMayNotBeReadIsSaid() {
        assertEquals("harbour: you have no permission to read this; allow yourself to read it",
                Written.english(SourceReader.unreadable(Path.of("harbour"), new AccessDeniedException("harbour"))));
    }

    @Test
    void aFolderAndAFileWithoutPermissionAreTold() throws IOException {
        written.file("pieces/a.yaml", Written.PIECE);
        Path file = written.folder().resolve("pieces/a.yaml");
        Files.setPosixFilePermissions(file, PosixFilePermissions.fromString("---------"));
        Assumptions.assumeFalse(Files.isReadable(file), "whoever runs this may read everything");
        assertEquals(List.of("pieces/a.yaml: you have no permission to read this; allow yourself to read it"), written.problems());
        Files.setPosixFilePermissions(written.folder(), PosixFilePermissions.fromString("---------"));
        try {
            assertEquals(List.of(".: you have no permission to read this; allow yourself to read it"), written.problems());
        } finally {
            Files.setPosixFilePermissions(written.folder(), PosixFilePermissions.fromString("rwx------"));
        }
    }

    @Test
    void pathsAreNamedFromWhereSheStands() {
        assertEquals(Path.of("pieces/a.yaml"), BasketFiles.shown(Path.of(".").resolve("pieces/a.yaml")));
        assertEquals(Path.of("harbour/pieces/a.yaml"), BasketFiles.shown(Path.of("harbour/pieces/a.yaml")));
        assertEquals(Path.of("."), BasketFiles.shown(Path.of(".")));
    }

    @Test
    void filesLeftByEditorsAreNoPieces() {
        assertTrue(written.file("pieces/.a.yaml", "x: [").file("pieces/a.yaml", Written.PIECE).problems().isEmpty());
    }

    @Test
    void aPieceBesideThePiecesFolderIsToldOf() {
        assertEquals(List.of("tide.yaml: this piece lies beside the pieces folder, where it is not read; put it into the folder pieces"),
                written.file("pieces/a.yaml", Written.PIECE).file("tide.yaml", "# new\n" + titled("Tide")).file("other.yaml", "notes: none\n").problems());
    }

    @Test
    void aShareWithoutItsSignIsNotTakenForStitches() {
        // 3 x 100 crosses: more than twice 70.
        String threads = "threads: [{code: K1, stitches: {cross: 150}}, {code: K2, stitches: {cross: 50, back: 900}}]\nparts:\n"
                + "  - {part: Verse, over: 1, stitches: 10 x 10, threads: [{code: K3, stitches: {cross: 100}}]}\ncoverage: ";
        assertEquals(List.of("pieces/a.yaml:7:11: this is 70 stitches, and the threads count 300 crosses; "
                + "write the share of the chart with its sign, such as 70%, or the number of all stitches"),
                written.file("pieces/a.yaml", Written.PIECE + threads + "70\n").problems());
        assertEquals(List.of(), written.file("pieces/a.yaml", Written.PIECE + threads + "150\n").problems());
        assertEquals(List.of(), written.file("pieces/a.yaml", Written.PIECE + threads + "70%\n").problems());
    }
}
