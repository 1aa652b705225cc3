package kitleaf.basket.table.workbook;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import com.github.miachm.sods.OfficeAnnotation;
import com.github.miachm.sods.Sheet;
import com.github.miachm.sods.SpreadSheet;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.dhatim.fastexcel.Workbook;
import org.dhatim.fastexcel.Worksheet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Workbooks made by other hands: two libraries, a spreadsheet, and parts as the standards print them. */
class WorkbookTextTests {

    @TempDir
    private Path temp;

    /** Fills a sheet. */
    private interface Fill {
        void of(Worksheet sheet);
    }

    private Path book(Fill... sheets) throws IOException {
        Path file = temp.resolve(Packed.XLSX);
        try (OutputStream out = Files.newOutputStream(file); Workbook book = new Workbook(out, "Elsewhere", "1.0")) {
            for (Fill fill : sheets) {
                fill.of(book.newWorksheet("Net loft " + (fill == sheets[0] ? "1" : "Two")));
            }
        }
        return file;
    }

    private Path book(Sheet... sheets) throws IOException {
        SpreadSheet book = new SpreadSheet();
        for (Sheet sheet : sheets) {
            book.addSheet(sheet, book.getNumSheets());
        }
        book.save(temp.resolve(Packed.ODS).toFile());
        return temp.resolve(Packed.ODS);
    }

    private static Sheet sheet(String name, Object[]... rows) {
        Sheet sheet = new Sheet(name, rows.length, rows[0].length);
        sheet.getDataRange().setValues(rows);
        return sheet;
    }

    @Test
    void cellsOfALibrarysXlsxReadAsSheWouldTypeThem() throws IOException {
        assertEquals(List.of("Tide|140|2.5|0.3|100000|yes|2026-03-01|2026-03-02", "", "in place|45%|12.5%|1.25|1.5||-3|0.00001"),
                Packed.read(book(sheet -> {
                    sheet.value(0, 0, " Tide\n");
                    sheet.value(0, 1, 140);
                    sheet.value(0, 2, 2.5);
                    sheet.value(0, 3, 0.1 + 0.2);
                    sheet.value(0, 4, 1E5);
                    sheet.value(0, 5, true);
                    sheet.value(0, 6, LocalDate.of(2026, 3, 1));
                    sheet.style(0, 6).format("[$-407]d. mmmm yyyy").set();
                    sheet.value(0, 7, LocalDateTime.of(2026, 3, 2, 18, 30));
                    sheet.style(0, 7).format("yyyy-mm-dd h:mm").set();
                    sheet.inlineString(2, 0, "in place");
                    sheet.value(2, 1, 0.45);
                    sheet.style(2, 1).format("0%").set();
                    sheet.value(2, 2, 0.125);
                    sheet.style(2, 2).format("0.0 %").set();
                    sheet.value(2, 3, 1.25 / 24);
                    sheet.style(2, 3).format("[h]:mm").set();
                    sheet.value(2, 4, 1.5 / 24);
                    sheet.style(2, 4).format("h:mm").set();
                    sheet.value(2, 6, -3);
                    sheet.value(2, 7, 0.00001);
                })));
    }

    @Test
    void cellsOfALibrarysOdsReadAsSheWouldTypeThem() throws IOException {
        Sheet sheet = sheet("Net loft", new Object[] {"Tide", 140.0, 0.1 + 0.2, 1E5, true, LocalDate.of(2026, 3, 1), "x"},
                new Object[] {null, null, null, null, null, null, null}, new Object[] {"a & b <c>", 2.5, null, null, false, null, "x"});
        sheet.getRange(0, 0).setAnnotation(new OfficeAnnotation("not hers", LocalDateTime.of(2026, 1, 1, 0, 0)));
        assertEquals(List.of("Tide|140|0.3|100000|yes|2026-03-01|x", "", "a & b <c>|2.5|||no||x"), Packed.read(book(sheet)));
    }

    @Test
    void aSheetIsFoundByItsNameWhateverItsCapitals() throws IOException {
        Path xlsx = book(sheet -> sheet.value(0, 0, "one"), sheet -> sheet.value(0, 0, "two"));
        Path ods = book(sheet("Net loft 1", new Object[] {"one"}), sheet("Net loft Two", new Object[] {"two"}));
        for (Path file : List.of(xlsx, ods)) {
            assertEquals(List.of("one"), Packed.read(file));
            assertEquals(List.of("two"), Packed.read(file, " net LOFT two "));
            assertEquals(List.of(file.getFileName() + ": \"Net loft Tow\" is not a sheet of this workbook; write Net loft Two if that is meant"),
                    Packed.read(file, "Net loft Tow").stream().map(told -> told.replaceAll("; .*Net loft Two.*", "; write Net loft Two if that is meant"))
                            .toList());
        }
    }

    // Days of the 1904 system are 1462 fewer (ISO/IEC 29500-1, 18.17.4.1): 45000 is 2023-03-15 in the 1900 system, and 43538 the same here.
    @ParameterizedTest
    @CsvSource({"'',45000", "date1904='0',45000", "date1904='1',43538", "date1904='true',43538"})
    void daysCountFromTheWorkbooksOwnBeginning(String system, String number) throws IOException {
        Path file = new Packed(temp.resolve(Packed.XLSX)).part("xl/workbook.xml", "<workbook xmlns:r='r'><workbookPr " + system
                + "/><sheets><sheet name='Kit' r:id='rId1'/></sheets></workbook>").part("xl/_rels/workbook.xml.rels",
                        "<Relationships><Relationship Id='rId1' Target='/xl/worksheets/sheet1.xml'/></Relationships>")
                .part("xl/styles.xml", "<styleSheet><cellStyleXfs><xf numFmtId='9'/></cellStyleXfs><cellXfs><xf numFmtId='14'/></cellXfs></styleSheet>")
                .part("xl/worksheets/sheet1.xml", "<worksheet><row><c s='0'><v>" + number + "</v></c></row></worksheet>").close();
        assertEquals(List.of("2023-03-15"), Packed.read(file));
    }

    // Numbers of formats as in ISO/IEC 29500-1, 18.8.30; what an own format shows, by its letters (18.8.31).
    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            0 | | 0.5
            2 | | 0.5
            9 | | 50%
            10 | | 50%
            14 | | 1899-12-30
            20 | | 12
            22 | | 1899-12-30
            46 | | 12
            164 | 0.0" days" | 0.5
            164 | [Red]0.00 | 0.5
            164 | \\d0 | 0.5
            164 | General | 0.5
            164 | 0.00E+00 | 0.5
            164 | mmm | 1899-12-30
            164 | dd/mm/yy | 1899-12-30
            164 | [mm] | 12
            164 | 0" % done" | 0.5
            """)
    void aFormatSaysWhatANumberIs(int format, String own, String read) throws IOException {
        Path file = Packed.xlsx(temp.resolve(Packed.XLSX)).part("xl/styles.xml", "<styleSheet><numFmts><numFmt numFmtId='164' formatCode='"
                + (own == null ? "" : own.replace("\"", "&quot;")) + "'/></numFmts><cellXfs><xf numFmtId='0'/><xf numFmtId='" + format
                + "'/></cellXfs></styleSheet>").part("xl/worksheets/sheet1.xml", "<worksheet><row><c s='1'><v>0.5</v></c></row></worksheet>").close();
        assertEquals(List.of(read), Packed.read(file));
    }

    @Test
    void runsOfRichTextAreOneTextAndReadingsAreLeftOut() throws IOException {
        Path file = Packed.xlsx(temp.resolve(Packed.XLSX)).part("xl/sharedStrings.xml", "<sst><si><r><t>Fog </t></r><r><rPr><b/></rPr><t>bell</t></r>"
                + "<rPh sb='0' eb='1'><t>no</t></rPh></si><si><t>two</t></si></sst>").part("xl/worksheets/sheet1.xml",
                        "<worksheet><row><c t='s'><v>1</v></c><c t='s'><v>0</v></c><c t='inlineStr'><is><r><t>in</t></r><r><t>line</t></r></is></c>"
                                + "</row></worksheet>").close();
        assertEquals(List.of("two|Fog bell|inline"), Packed.read(file));
    }

    @Test
    void formulasAreTheValuesSavedWithThem() throws IOException {
        assertEquals(List.of("6|six|yes"), Packed.read(Packed.xlsx(temp, "<row><c><f>2*3</f><v>6</v></c><c t='str'><f>A1</f><v>six</v></c>"
                + "<c t='b'><f>TRUE()</f><v>1</v></c></row>")));
        assertEquals(List.of("6|#6b7f8c"), Packed.read(Packed.ods(temp, "<table:table-row><table:table-cell table:formula='of:=2*3'"
                + " office:value-type='float' office:value='6'><text:p>6.00</text:p></table:table-cell><table:table-cell table:formula='of:=A2'"
                + " office:value-type='string'><text:p>#6b7f8c</text:p></table:table-cell></table:table-row>")));
    }

    @Test
    void formulasWithoutAValueAndErrorsAreToldAtTheirCells() throws IOException {
        assertEquals(List.of("kit.xlsx:2:B: the value of this formula was not saved; open the file in your spreadsheet and save it, or write the value",
                "kit.xlsx:2:D: this cell holds the error #N/A; mend its formula, or write the value"),
                Packed.read(Packed.xlsx(temp, "<row r='2'><c r='B2'><f>2*3</f></c><c r='D2' t='e'><f>X</f><v>#N/A</v></c></row>")));
        assertEquals(List.of("kit.ods:3:B: this cell holds the error Err:502; mend its formula, or write the value",
                "kit.ods:3:C: this cell holds the error #DIV/0!; mend its formula, or write the value",
                "kit.ods:3:D: the value of this formula was not saved; open the file in your spreadsheet and save it, or write the value"),
                Packed.read(Packed.ods(temp, "<table:table-row table:number-rows-repeated='2'><table:table-cell/></table:table-row><table:table-row>"
                        + "<table:table-cell/><table:table-cell table:formula='a' office:value-type='string'><text:p>Err:502</text:p></table:table-cell>"
                        + "<table:table-cell table:formula='a' office:value-type='string'><text:p>#DIV/0!</text:p></table:table-cell>"
                        + "<table:table-cell table:formula='a'/></table:table-row>")));
    }

    @Test
    void whatIsRepeatedStandsAsOftenAsItIsSaid() throws IOException {
        assertEquals(List.of("a|a|b", "a|a|b", "", "c"), Packed.read(Packed.ods(temp, "<table:table-row table:number-rows-repeated='2'>"
                + "<table:table-cell table:number-columns-repeated='2'><text:p>a</text:p></table:table-cell><table:table-cell><text:p>b</text:p>"
                + "</table:table-cell><table:table-cell table:number-columns-repeated='16000'/></table:table-row>"
                + "<table:table-row><table:table-cell/></table:table-row><table:table-row><table:table-cell><text:p>c</text:p></table:table-cell>"
                + "</table:table-row><table:table-row table:number-rows-repeated='1048000'><table:table-cell/></table:table-row>"))
                .stream().map(row -> row.replaceAll("\\|+$", "")).toList());
    }

    @ParameterizedTest
    @ValueSource(strings = {"xlsx", "ods"})
    void aSpreadsheetsOwnFilesReadAsItsText(String ending) throws IOException, InterruptedException {
        assumeTrue(Stream.of(System.getenv("PATH").split(":")).anyMatch(folder -> Files.isExecutable(Path.of(folder, "soffice"))),
                "soffice is not installed here");
        Path text = Files.writeString(temp.resolve("kit.csv"), "Title,Wide,Done,Started,Hours,Note\nTide \"table\",140,45%,2026-03-01,1:15,\"a, b\"\n"
                + "#6b7f8c,0.25,100%,2026-12-31,2:00,ä ● ♥\n,,,,,\nLast,1,2,3,4,5\n");
        Process office = new ProcessBuilder("soffice", "-env:UserInstallation=" + temp.resolve("profile").toUri(), "--headless", "--convert-to", ending,
                "--infilter=CSV:44,34,76,1,,0,false,true,false", "--outdir", temp.toString(), text.toString())
                .redirectErrorStream(true).redirectOutput(temp.resolve("said").toFile()).start();
        assertEquals(true, office.waitFor(120, TimeUnit.SECONDS), "soffice did not end");
        assertEquals(List.of("Title|Wide|Done|Started|Hours|Note", "Tide \"table\"|140|45%|2026-03-01|1.25|a, b", "#6b7f8c|0.25|100%|2026-12-31|2|ä ● ♥",
                "", "Last|1|2|3|4|5"), Packed.read(temp.resolve("kit." + ending)));
    }
}
