package kitleaf.basket.table.workbook;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import kitleaf.basket.place.Problems;
import kitleaf.basket.place.Source;
import kitleaf.basket.reader.Written;

/** A workbook packed by hand, part by part, and what reading it tells. */
final class Packed {

    static final String XLSX = "kit.xlsx";
    static final String ODS = "kit.ods";

    private final Path file;
    private final ZipOutputStream zip;

    Packed(Path file) throws IOException {
        this.file = file;
        zip = new ZipOutputStream(Files.newOutputStream(file));
    }

    /** A part with a text in it. */
    Packed part(String name, String text) throws IOException {
        return part(name, out -> out.write(text.getBytes(StandardCharsets.UTF_8)));
    }

    /** Writes a part. */
    interface Part {
        void to(OutputStream out) throws IOException;
    }

    Packed part(String name, Part part) throws IOException {
        zip.putNextEntry(new ZipEntry(name));
        part.to(zip);
        zip.closeEntry();
        return this;
    }

    Path close() throws IOException {
        zip.close();
        return file;
    }

    /** All of a workbook (ISO/IEC 29500-1) but the rows of its one sheet. */
    static Packed xlsx(Path file) throws IOException {
        return new Packed(file).part("xl/workbook.xml", "<workbook xmlns='http://schemas.openxmlformats.org/spreadsheetml/2006/main'"
                + " xmlns:r='http://schemas.openxmlformats.org/officeDocument/2006/relationships'><sheets>"
                + "<sheet name='Kit' sheetId='1' r:id='rId1'/></sheets></workbook>")
                .part("xl/_rels/workbook.xml.rels",
                        "<Relationships><Relationship Id='rId1' Target='worksheets/sheet1.xml'/></Relationships>");
    }

    /** A workbook of one sheet with these rows, as XML. */
    static Path xlsx(Path folder, String rows) throws IOException {
        return xlsx(folder.resolve(XLSX)).part("xl/worksheets/sheet1.xml",
                "<worksheet><sheetData>" + rows + "</sheetData></worksheet>").close();
    }

    /** A document (OpenDocument 1.3) with one table of these rows, as XML. */
    static Path ods(Path folder, String rows) throws IOException {
        return new Packed(folder.resolve(ODS)).part("content.xml",
                content("<table:table table:name='Kit'>" + rows + "</table:table>")).close();
    }

    static String content(String tables) {
        return "<office:document-content xmlns:office='urn:oasis:names:tc:opendocument:xmlns:office:1.0'"
                + " xmlns:table='urn:oasis:names:tc:opendocument:xmlns:table:1.0'"
                + " xmlns:text='urn:oasis:names:tc:opendocument:xmlns:text:1.0'>"
                + "<office:body><office:spreadsheet>" + tables + "</office:spreadsheet></office:body></office:document-content>";
    }

    /** What a workbook reads as: its rows, cells parted by bars, or else what is told. */
    static List<String> read(Path file, String... sheet) {
        Problems problems = new Problems();
        Optional<Source> source = WorkbookText.read(file, file.getFileName(), List.of(sheet).stream().findFirst(), problems);
        return problems.all().isEmpty() ? rows(source.orElseThrow())
                : problems.all().stream().map(Written::english).map(told -> told.split("\n")[0]).toList();
    }

    private static List<String> rows(Source source) {
        return source.text().isEmpty() ? List.of() : List.of(source.text().replace('\t', '|').split("\n"));
    }
}
