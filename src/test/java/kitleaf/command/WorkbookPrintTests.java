package kitleaf.command;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.dataformat.yaml.YAMLMapper;
import com.github.miachm.sods.Sheet;
import com.github.miachm.sods.SpreadSheet;
import java.io.IOException;
import java.io.OutputStream;
import java.io.StringReader;
import java.io.StringWriter;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Stream;
import kitleaf.basket.Basket;
import kitleaf.basket.Piece;
import kitleaf.basket.reader.BasketReader;
import kitleaf.basket.reader.thread.ThreadsCsv;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.dhatim.fastexcel.Workbook;
import org.dhatim.fastexcel.Worksheet;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The example basket kept in one workbook, written by libraries that know nothing of Kitleaf, prints the very bytes its files print. */
class WorkbookPrintTests {

    private static final Path EXAMPLE = Path.of("examples/harbour");
    /** What has parts, which a row has no room for, stays a file; its progress too. */
    private static final String IN_PARTS = "lamplighter";

    @TempDir
    private Path temp;

    /** One sheet: rows of cells, words or numbers or days. */
    private record Rows(String name, List<List<Object>> cells) { }

    private static List<Rows> sheets(String kit) throws IOException {
        Basket basket = BasketReader.read(EXAMPLE).basket().orElseThrow();
        List<Piece> pieces = basket.pieces().stream().filter(piece -> !piece.id().equals(IN_PARTS)).toList();
        StringWriter threads = new StringWriter();
        ThreadsCsv.write(pieces, Locale.ENGLISH, threads);
        return List.of(new Rows("Pieces", pieces(kit)), new Rows("Tide table", table(threads.toString())), new Rows("Stash", stash(basket)),
                new Rows("Log of evenings", log(pieces)));
    }

    private static List<List<Object>> pieces(String kit) throws IOException {
        // What each file says, by key, as it is written there: read by a YAML library of its own.
        List<Map<String, Object>> rows = new ArrayList<>();
        YAMLMapper yaml = new YAMLMapper();
        try (Stream<Path> files = Files.list(EXAMPLE.resolve("pieces"))) {
            for (Path file : files.filter(file -> file.toString().endsWith(".yaml")).sorted().toList()) {
                String id = file.getFileName().toString().replace(".yaml", "");
                int number = 0;
                for (String document : Files.readString(file).split("(?m)^---$")) {
                    number++;
                    if (!id.equals(IN_PARTS)) {
                        Map<String, Object> row = new LinkedHashMap<>();
                        row.put("ID", number == 1 ? id : id + "-" + number);
                        flat("", (Map<?, ?>) yaml.readValue(document, Map.class), row);
                        if (row.remove("threads") != null) {
                            row.put("Threads", kit + "#tide table");
                        }
                        rows.add(row);
                    }
                }
            }
        }
        List<String> headings = rows.stream().flatMap(row -> row.keySet().stream()).distinct().toList();
        List<List<Object>> cells = new ArrayList<>();
        cells.add(List.copyOf(headings));
        rows.forEach(row -> cells.add(headings.stream().map(heading -> row.getOrDefault(heading, "")).toList()));
        return cells;
    }

    /** The keys of groups are columns: those of cloth, progress and goal by their own names, those of others with the group's before it. */
    private static void flat(String group, Map<?, ?> keys, Map<String, Object> row) {
        keys.forEach((key, value) -> {
            String column = switch (group) {
                case "", "progress", "goal" -> key.toString();
                case "cloth" -> key.equals("name") ? "Fabric" : key.toString();
                default -> group + " " + key;
            };
            if (value instanceof Map<?, ?> inner) {
                flat(key.toString(), inner, row);
            } else if (!key.equals("log")) {
                row.put(column.equals("piece") ? "Title" : column, typed(value));
            }
        });
    }

    private static Object typed(Object value) {
        String text = value.toString();
        return value instanceof Boolean yes ? yes : text.matches("[0-9]{4}-[0-9]{2}-[0-9]{2}") ? LocalDate.parse(text)
                : text.matches("[0-9]+(\\.[0-9]+)?") ? new BigDecimal(text) : value instanceof List<?> ? "" : text;
    }

    private static List<List<Object>> table(String csv) throws IOException {
        List<List<Object>> rows = new ArrayList<>();
        try (CSVParser parser = CSVFormat.RFC4180.parse(new StringReader(csv))) {
            for (CSVRecord record : parser) {
                rows.add(record.stream().map(cell -> cell.matches("[1-9][0-9]*") ? (Object) new BigDecimal(cell) : cell).toList());
            }
        }
        return rows;
    }

    private static List<List<Object>> stash(Basket basket) {
        List<List<Object>> rows = new ArrayList<>(List.of(List.of("Number", "Put-up", "Skeins", "Dye lot")));
        basket.stash().forEach(entry -> rows.add(List.of(entry.code(), entry.skein(),
                BigDecimal.valueOf(entry.skeins()), entry.lot().orElse(""))));
        return rows;
    }

    private static List<List<Object>> log(List<Piece> pieces) {
        List<List<Object>> rows = new ArrayList<>(List.of(List.of("Day", "Project", "Hours", "Stitches")));
        pieces.forEach(piece -> piece.progress().log().forEach(entry -> rows.add(List.of(entry.on(), piece.title(),
                BigDecimal.valueOf(entry.hours().getAsDouble()), BigDecimal.valueOf(entry.stitches().getAsInt())))));
        return rows;
    }

    private static void xlsx(Path file, List<Rows> sheets) throws IOException {
        try (OutputStream out = Files.newOutputStream(file); Workbook book = new Workbook(out, "Elsewhere", "1.0")) {
            for (Rows rows : sheets) {
                Worksheet sheet = book.newWorksheet(rows.name());
                for (int r = 0; r < rows.cells().size(); r++) {
                    for (int c = 0; c < rows.cells().get(r).size(); c++) {
                        Object cell = rows.cells().get(r).get(c);
                        if (cell instanceof LocalDate day) {
                            sheet.value(r, c, day);
                            sheet.style(r, c).format("d mmmm yyyy").set();
                        } else if (cell instanceof Boolean yes) {
                            sheet.value(r, c, yes);
                        } else if (cell instanceof Number number) {
                            sheet.value(r, c, number);
                        } else if (cell.toString().matches("[0-9]+%")) {
                            sheet.value(r, c, new BigDecimal(cell.toString().replace("%", "")).movePointLeft(2));
                            sheet.style(r, c).format("0%").set();
                        } else if (!cell.equals("")) {
                            sheet.value(r, c, cell.toString());
                        }
                    }
                }
            }
        }
    }

    private static void ods(Path file, List<Rows> sheets) throws IOException {
        SpreadSheet book = new SpreadSheet();
        for (Rows rows : sheets) {
            Sheet sheet = new Sheet(rows.name(), rows.cells().size(), rows.cells().get(0).size());
            for (int r = 0; r < rows.cells().size(); r++) {
                for (int c = 0; c < rows.cells().get(r).size(); c++) {
                    Object cell = rows.cells().get(r).get(c);
                    sheet.getRange(r, c).setValue(cell.equals("") ? null
                            : cell instanceof Number number ? (Object) number.doubleValue() : cell);
                }
            }
            book.addSheet(sheet, book.getNumSheets());
        }
        book.save(file.toFile());
    }

    @ParameterizedTest
    @ValueSource(strings = {"kit.xlsx", "kit.ods"})
    void theExampleAsAWorkbookPrintsTheSameBytes(String kit) throws IOException {
        Path basket = Files.createDirectories(temp.resolve("harbour"));
        List<Rows> sheets = sheets(kit);
        if (kit.endsWith(".xlsx")) {
            xlsx(basket.resolve(kit), sheets);
        } else {
            ods(basket.resolve(kit), sheets);
        }
        String settings = Files.readString(EXAMPLE.resolve("basket.yaml"));
        int stash = settings.indexOf("stash:\n");
        Files.writeString(basket.resolve("basket.yaml"), settings.substring(0, stash) + "stash: " + kit + "#Stash\npieces: " + kit
                + "\nlog: " + kit + "#log of EVENINGS\n" + settings.substring(settings.indexOf("\n\n", stash)));
        Files.createDirectories(basket.resolve("pieces"));
        Files.copy(EXAMPLE.resolve("pieces/" + IN_PARTS + ".yaml"), basket.resolve("pieces/" + IN_PARTS + ".yaml"));

        List<Path> printed = new ArrayList<>();
        for (Path folder : List.of(EXAMPLE, basket)) {
            Path out = temp.resolve("out-" + printed.size());
            Ran ran = Ran.kitleaf("print", folder, "--as-of", "2026-12-01", "--out", out);
            assertEquals(0, ran.code(), ran.err());
            printed.add(out);
        }
        assertEquals(Ran.files(printed.get(0)), Ran.files(printed.get(1)));
        assertTrue(Ran.files(printed.get(0)).size() >= 7, () -> "too few sheets");
        for (String sheet : Ran.files(printed.get(0))) {
            assertArrayEquals(Files.readAllBytes(printed.get(0).resolve(sheet)), Files.readAllBytes(printed.get(1).resolve(sheet)), sheet);
        }
    }
}
