package kitleaf.basket.table.workbook;

import java.io.IOException;
import java.time.DateTimeException;
import java.time.Duration;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;
import kitleaf.basket.place.Fault;

/** Reads one sheet of an OpenDocument spreadsheet. Element and attribute names as in OpenDocument 1.3, parts 9 and 19. */
final class OdsSheet {

    private static final String OFFICE = "urn:oasis:names:tc:opendocument:xmlns:office:1.0";
    private static final String TABLE = "urn:oasis:names:tc:opendocument:xmlns:table:1.0";
    private static final String TEXT = "urn:oasis:names:tc:opendocument:xmlns:text:1.0";

    /** How errors are shown; a colour such as #6b7f8c is none. */
    private static final Pattern ERROR = Pattern.compile("Err:[0-9]+|#(DIV/0!|N/A|NAME\\?|NULL!|NUM!|REF!|VALUE!)");

    private static final String CONTENT = "content" + Parts.ENDING;

    /** Further down or right it need not be counted. */
    private static final int MOST = 100_000_000;

    private final Parts parts;
    private final Map<String, Cells> sheets = new LinkedHashMap<>();
    private Cells cells;
    private int row;
    private int column;
    /** How often the row at hand stands there. */
    private int times;

    OdsSheet(Parts parts) {
        this.parts = parts;
    }

    /**
     * The cells of a sheet.
     *
     * @param named which; the first where none is named
     * @throws Fault if there is no such sheet
     */
    Cells read(Optional<String> named) throws IOException, Fault {
        if (!parts.read(CONTENT, this::element)) {
            throw new IOException(CONTENT);
        }
        return sheets.get(WorkbookText.sheet(sheets.keySet(), named));
    }

    private void element(XMLStreamReader xml) throws XMLStreamException, Parts.TooLarge {
        switch (xml.getLocalName()) {
            case "table" -> {
                cells = new Cells();
                sheets.putIfAbsent(Optional.ofNullable(xml.getAttributeValue(TABLE, "name")).orElse(""), cells);
                row = 0;
                times = 0;
            }
            case "table-row" -> {
                row = Math.min(row + times, MOST);
                times = repeated(xml, "number-rows-repeated");
                row += row == 0 ? 1 : 0;
                column = 1;
            }
            case "table-cell", "covered-table-cell" -> {
                if (cells != null) {
                    cell(xml);
                }
            }
            default -> { }
        }
    }

    private static int repeated(XMLStreamReader xml, String name) {
        String number = xml.getAttributeValue(TABLE, name);
        return number == null || !number.matches("[0-9]{1,8}") ? 1 : Integer.parseInt(number);
    }

    private void cell(XMLStreamReader xml) throws XMLStreamException, Parts.TooLarge {
        int across = repeated(xml, "number-columns-repeated");
        String type = Optional.ofNullable(xml.getAttributeValue(OFFICE, "value-type")).orElse("");
        String value = Optional.ofNullable(xml.getAttributeValue(OFFICE, type.matches("date|time|boolean")
                ? type + "-value" : "value")).orElse("");
        boolean formula = xml.getAttributeValue(TABLE, "formula") != null;
        String shown = words(xml);
        String text = value.isEmpty() ? shown : switch (type) {
            case "float", "currency" -> Cells.number(value);
            case "percentage" -> Cells.percent(value);
            case "date" -> value.substring(0, Math.min(10, value.length()));
            case "time" -> time(value);
            case "boolean" -> value.equals("true") ? "yes" : "no";
            default -> shown;
        };
        // Where nothing stands it may be repeated to the end of the sheet, where something does a few times at most.
        for (int down = 0; !text.isBlank() && down < Math.min(times, Cells.MOST_ROWS); down++) {
            for (int right = 0; right < Math.min(across, Cells.MOST_COLUMNS); right++) {
                if (formula && (type.isEmpty() || ERROR.matcher(shown).matches())) {
                    cells.wrong(row + down, column + right, Fault.of("workbook.error", shown));
                } else {
                    cells.put(row + down, column + right, text);
                }
            }
        }
        if (formula && text.isBlank()) {
            cells.wrong(row, column, Fault.of("workbook.formula"));
        }
        column = Math.min(column + across, MOST);
    }

    private static String time(String value) {
        try {
            return Cells.time(Duration.parse(value).getSeconds() / 3600.0);
        } catch (DateTimeException e) {
            return value;
        }
    }

    /** The paragraphs of a cell as one; a remark fastened to it is no part of it. */
    private static String words(XMLStreamReader xml) throws XMLStreamException {
        StringBuilder words = new StringBuilder();
        for (int depth = 1; depth > 0;) {
            int event = xml.next();
            if (event == XMLStreamReader.START_ELEMENT && xml.getLocalName().equals("annotation")) {
                Parts.text(xml);
            } else if (event == XMLStreamReader.START_ELEMENT) {
                depth++;
                boolean apart = TEXT.equals(xml.getNamespaceURI()) && xml.getLocalName().matches("s|tab|line-break|p");
                words.append(apart ? " " : "");
            } else if (event == XMLStreamReader.END_ELEMENT) {
                depth--;
            } else if (event == XMLStreamReader.CHARACTERS || event == XMLStreamReader.SPACE) {
                words.append(xml.getText());
            }
        }
        return words.toString().strip();
    }
}
