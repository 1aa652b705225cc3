package kitleaf.basket.table.workbook;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.Arrays;
import java.util.HexFormat;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Workbooks made to hurt: each is a sentence or is read, within seconds, and never an exception. */
class HostileWorkbookTests {

    private static final String NONE = "this is no workbook that can be read;"
            + " save it from your spreadsheet as .xlsx, .ods or .csv, without a password";
    private static final String LARGE = "this workbook is too large; keep what a table needs; pictures belong elsewhere";
    /** A limit for machines with much else to do; each takes well under a second. */
    private static final Duration SOON = Duration.ofSeconds(20);

    @TempDir
    Path temp;

    private static void assertTold(String told, Path file) {
        assertEquals(List.of(file.getFileName() + ": " + told), assertTimeoutPreemptively(SOON, () -> Packed.read(file)));
    }

    private static void assertRead(List<String> rows, Path file) {
        assertEquals(rows, assertTimeoutPreemptively(SOON, () -> Packed.read(file)));
    }

    @ParameterizedTest
    @ValueSource(strings = {"xl/worksheets/sheet1.xml", "xl/styles.xml", "xl/sharedStrings.xml"})
    void aPartThatUnpacksWithoutMeasureIsTooLarge(String part) throws IOException {
        byte[] blanks = new byte[1 << 20];
        Arrays.fill(blanks, (byte) ' ');
        Path file = Packed.xlsx(temp.resolve(Packed.XLSX)).part(part, out -> {
            out.write("<a>".getBytes(StandardCharsets.UTF_8));
            for (int i = 0; i < 512; i++) {
                out.write(blanks);
            }
        }).close();
        assertEquals(true, Files.size(file) < WorkbookText.MOST_BYTES, "the bomb itself is small");
        assertTold(LARGE, file);
    }

    @Test
    void aMillionRowsAreTooLarge() throws IOException {
        assertTold(LARGE, Packed.xlsx(temp.resolve(Packed.XLSX)).part("xl/worksheets/sheet1.xml", out -> {
            out.write("<worksheet><sheetData>".getBytes(StandardCharsets.UTF_8));
            for (int i = 1; i <= 1_000_000; i++) {
                out.write(("<row r='" + i + "'><c r='A" + i + "'><v>1</v></c></row>").getBytes(StandardCharsets.UTF_8));
            }
            out.write("</sheetData></worksheet>".getBytes(StandardCharsets.UTF_8));
        }).close());
    }

    @Test
    void aCellRepeatedAllOverTheSheetManyTimesIsTooLarge() throws IOException {
        String cell = "<table:table-row table:number-rows-repeated='1048576'>"
                + "<table:table-cell table:number-columns-repeated='16384'><text:p>x</text:p></table:table-cell></table:table-row>";
        assertTold(LARGE, Packed.ods(temp, cell.repeat(2000)));
    }

    @ParameterizedTest
    @ValueSource(strings = {"<!DOCTYPE a [<!ENTITY b 'c'>]>", "<!DOCTYPE a SYSTEM 'file:///etc/hostname'>",
        "<!DOCTYPE a [<!ENTITY b SYSTEM 'file:///etc/hostname'>]>", "<!DOCTYPE a>"})
    void declarationsAreRefused(String declared) throws IOException {
        assertTold(NONE, new Packed(temp.resolve(Packed.ODS)).part("content.xml", declared + Packed.content("")).close());
        assertTold(NONE, Packed.xlsx(temp.resolve(Packed.XLSX)).part("xl/worksheets/sheet1.xml", declared + "<worksheet/>").close());
        assertTold(NONE, Packed.xlsx(temp.resolve(Packed.XLSX)).part("xl/sharedStrings.xml", declared + "<sst><si><t>&b;</t></si></sst>")
                .part("xl/worksheets/sheet1.xml", "<worksheet/>").close());
    }

    @Test
    void entitiesWithoutADeclarationAreRefused() throws IOException {
        assertTold(NONE, Packed.xlsx(temp, "<row><c t='inlineStr'><is><t>&b;</t></is></c></row>"));
    }

    @Test
    void whatIsMissingIsTold() throws IOException {
        assertTold(NONE, new Packed(temp.resolve(Packed.XLSX)).part("mimetype", "x").close());
        assertTold(NONE, new Packed(temp.resolve(Packed.ODS)).part("mimetype", "x").close());
        assertTold(NONE, Packed.xlsx(temp.resolve(Packed.XLSX)).close());
        assertTold(NONE, new Packed(temp.resolve(Packed.XLSX)).part("xl/workbook.xml", "<workbook/>").close());
        assertTold(NONE, new Packed(temp.resolve(Packed.ODS)).part("content.xml", Packed.content("")).close());
        assertTold(NONE, Files.createDirectory(temp.resolve("folder.xlsx")));
        assertTold(NONE, temp.resolve("nowhere.xlsx"));
    }

    @Test
    void whatIsNoZipIsTold() throws IOException {
        Path whole = Packed.xlsx(temp, "<row><c><v>1</v></c></row>");
        byte[] bytes = Files.readAllBytes(whole);
        for (int length : new int[] {0, 1, 30, bytes.length / 2, bytes.length - 1}) {
            assertTold(NONE, Files.write(temp.resolve("part.xlsx"), Arrays.copyOf(bytes, length)));
        }
        // What a workbook with a password is: a compound file, whose first eight bytes are these ([MS-CFB] 2.2).
        byte[] locked = Arrays.copyOf(HexFormat.of().parseHex("d0cf11e0a1b11ae1"), 4096);
        assertTold(NONE, Files.write(temp.resolve("locked.xlsx"), locked));
        assertTold(NONE, Files.write(temp.resolve("locked.ods"), locked));
    }

    @Test
    void everyBrokenByteIsToldOrRead() throws IOException {
        byte[] bytes = Files.readAllBytes(Packed.xlsx(temp, "<row><c><v>1</v></c></row>"));
        Path file = temp.resolve("broken.xlsx");
        for (int at = 0; at < bytes.length; at++) {
            for (int with : new int[] {0x00, 0xFF, bytes[at] ^ 0x01}) {
                byte[] broken = bytes.clone();
                broken[at] = (byte) with;
                List<String> read = Packed.read(Files.write(file, broken));
                assertEquals(1, read.size(), "byte " + at + ": " + read);
            }
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"../../etc/hostname", "/etc/hostname", "http://localhost/sheet1.xml", "file:///etc/hostname", "workbook.xml/..",
        "", "%2e%2e/a"})
    void nothingOutsideTheWorkbookIsOpened(String target) throws IOException {
        assertTold(NONE, new Packed(temp.resolve(Packed.XLSX)).part("xl/workbook.xml", "<workbook xmlns:r='r'><sheets>"
                + "<sheet name='Kit' r:id='rId1'/></sheets></workbook>")
                .part("xl/_rels/workbook.xml.rels", "<Relationships><Relationship Id='rId1' Target='" + target + "'/></Relationships>")
                .close());
    }

    @Test
    void aSheetThatIsTheWorkbookItselfIsEmpty() throws IOException {
        assertRead(List.of(), new Packed(temp.resolve(Packed.XLSX)).part("xl/workbook.xml", "<workbook xmlns:r='r'><sheets>"
                + "<sheet name='Kit' r:id='rId1'/></sheets></workbook>").part("xl/_rels/workbook.xml.rels",
                        "<Relationships><Relationship Id='rId1' Target='workbook.xml'/></Relationships>").close());
    }

    @Test
    void partsWithNamesThatLeadOutAreNeverUnpacked() throws IOException {
        Path file = Packed.xlsx(temp.resolve(Packed.XLSX)).part("../../outside.xml", "x")
                .part("xl/worksheets/sheet1.xml", "<worksheet><row><c><v>1</v></c></row></worksheet>").close();
        assertRead(List.of("1"), file);
        assertEquals(List.of(Packed.XLSX), List.of(temp.toFile().list()));
    }

    @Test
    void aSheetWithoutANameOrAPartIsTold() throws IOException {
        for (String sheet : List.of("<sheet/>", "<sheet name='Kit'/>", "<sheet name=''/>")) {
            assertTold(NONE, new Packed(temp.resolve(Packed.XLSX)).part("xl/workbook.xml", "<workbook>" + sheet + "</workbook>").close());
        }
        assertRead(List.of("x"), new Packed(temp.resolve(Packed.ODS)).part("content.xml", Packed.content(
                "<table:table><table:table-row><table:table-cell><text:p>x</text:p></table:table-cell></table:table-row></table:table>"))
                .close());
    }

    @ParameterizedTest
    @ValueSource(strings = {"1E999", "-1E999", "1E999999999", "1E-999999999", "1E99999999999", "NaN", "many", "1E31", "0x10"})
    void aNumberBeyondMeasureStaysAsItIsWritten(String number) throws IOException {
        assertRead(List.of(number + "|5"), Packed.xlsx(temp, "<row><c><v>" + number + "</v></c><c><v>5</v></c></row>"));
        for (String type : List.of("float", "percentage", "currency")) {
            assertRead(List.of(number + "|x"), Packed.ods(temp, "<table:table-row><table:table-cell office:value-type='" + type
                    + "' office:value='" + number + "'/><table:table-cell><text:p>x</text:p></table:table-cell></table:table-row>"));
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"-1", "1E9", "1E300", "2958466", "NaN", "soon"})
    void aDayThatIsNoneStaysAsItIsWritten(String day) throws IOException {
        for (int style : new int[] {0, 1}) {
            Path file = Packed.xlsx(temp.resolve(Packed.XLSX)).part("xl/styles.xml",
                    "<styleSheet><cellXfs><xf numFmtId='14'/><xf numFmtId='20'/></cellXfs></styleSheet>").part("xl/worksheets/sheet1.xml",
                            "<worksheet><row><c s='" + style + "'><v>" + day + "</v></c><c t='str'><v>x</v></c></row></worksheet>").close();
            assertRead(List.of(day + "|x"), file);
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"time", "date", "boolean", "nothing", "float"})
    void aTypeWithoutItsValueIsReadAsTheWordsThatStandThere(String type) throws IOException {
        assertRead(List.of("x"), Packed.ods(temp, "<table:table-row><table:table-cell office:value-type='" + type
                + "'><text:p>x</text:p></table:table-cell></table:table-row>"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"soon", "PT1E99H", "P"})
    void aTimeThatIsNoneStaysAsItIsWritten(String time) throws IOException {
        assertRead(List.of(time), Packed.ods(temp, "<table:table-row><table:table-cell office:value-type='time' office:time-value='" + time
                + "'><text:p>x</text:p></table:table-cell></table:table-row>"));
    }

    @Test
    void attributesThatMakeNoSenseAreReadAsIfTheyWereNotThere() throws IOException {
        assertRead(List.of("1|2"), Packed.xlsx(temp, "<row r='x'><c r='' s='-1'><v>1</v></c><c r='§§' s='999'><v>2</v></c></row>"));
        assertRead(List.of("|2"), Packed.xlsx(temp, "<row r='0'><c r='A0' t='s'><v>99</v></c><c r='B0' t='?'><v>2</v></c></row>"));
        assertRead(List.of("1"), Packed.ods(temp, "<table:table-row table:number-rows-repeated='-3'><table:table-cell"
                + " table:number-columns-repeated='x'><text:p>1</text:p></table:table-cell></table:table-row>"));
    }

    @Test
    void rowsAndColumnsBeyondCountingComeToNothing() throws IOException {
        String far = "<table:table-row table:number-rows-repeated='99999999'><table:table-cell table:number-columns-repeated='99999999'/>"
                .concat("<table:table-cell table:number-columns-repeated='99999999'/>".repeat(30))
                .concat("<table:table-cell table:formula='of:=1'/></table:table-row>");
        List<String> read = assertTimeoutPreemptively(SOON, () -> Packed.read(Packed.ods(temp, far.repeat(30))));
        assertEquals("kit.ods:1:GS: the value of this formula was not saved;"
                + " open the file in your spreadsheet and save it, or write the value",
                read.get(0));
    }

    @Test
    void anErrorInARowOrColumnThereIsNotIsTold() throws IOException {
        assertEquals(List.of("kit.xlsx:1:A: this cell holds the error #REF!; mend its formula, or write the value"),
                Packed.read(Packed.xlsx(temp, "<row r='0'><c r='1' t='e'><v>#REF!</v></c></row>")));
    }

    @Test
    void elementsNestedWithoutEndAreRead() throws IOException {
        assertRead(List.of("1"), Packed.xlsx(temp, "<x>".repeat(200_000) + "<row><c><v>1</v></c></row>" + "</x>".repeat(200_000)));
        assertRead(List.of("x"), Packed.ods(temp, "<table:table-row><table:table-cell>" + "<text:span>".repeat(100_000) + "x"
                + "</text:span>".repeat(100_000) + "</table:table-cell></table:table-row>"));
    }
}
