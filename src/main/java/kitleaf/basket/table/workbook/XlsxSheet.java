package kitleaf.basket.table.workbook;

import java.io.IOException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;
import kitleaf.basket.place.Fault;

/** Reads one sheet of an Office Open XML workbook. Element and attribute names as in ISO/IEC 29500-1, part 18. */
final class XlsxSheet {

    /** Numbers of formats that are dates and times without being written out (ISO/IEC 29500-1, 18.8.30). */
    private static final List<Integer> DATES = List.of(14, 15, 16, 17, 22, 27, 28, 29, 30, 31, 36, 50, 51, 52, 53, 54, 55, 56, 57, 58);
    private static final List<Integer> TIMES = List.of(18, 19, 20, 21, 45, 46, 47);
    private static final List<Integer> PERCENTS = List.of(9, 10);

    /** What in a format is shown as it stands, or names a colour or a condition; a span of time in square brackets is neither. */
    private static final Pattern LITERAL = Pattern.compile("\"[^\"]*\"|\\\\.|_.|\\*.|\\[(?![hms]+\\])[^\\]]*\\]", Pattern.CASE_INSENSITIVE);

    /** How a number is meant. */
    private enum Meant { NUMBER, PERCENT, DATE, TIME }

    private final Parts parts;
    private final List<String> shared = new ArrayList<>();
    private final List<Meant> styles = new ArrayList<>();
    private LocalDate zero = LocalDate.of(1899, 12, 30);

    XlsxSheet(Parts parts) {
        this.parts = parts;
    }

    /**
     * The cells of a sheet.
     *
     * @param named which; the first where none is named
     * @throws Fault if there is no such sheet
     */
    Cells read(Optional<String> named) throws IOException, Fault {
        Map<String, String> sheets = new LinkedHashMap<>();
        boolean there = parts.read("xl/workbook.xml", xml -> {
            if (xml.getLocalName().equals("sheet")) {
                sheets.put(Optional.ofNullable(xml.getAttributeValue(null, "name")).orElse(""), relation(xml));
            } else if (xml.getLocalName().equals("workbookPr")
                    && Optional.ofNullable(xml.getAttributeValue(null, "date1904")).filter(set -> set.matches("1|true")).isPresent()) {
                zero = LocalDate.of(1904, 1, 1);
            }
        });
        String sheet = WorkbookText.sheet(there ? sheets.keySet() : List.of(), named);
        String part = target(sheets.get(sheet));
        parts.read("xl/styles.xml", new Styles());
        parts.read("xl/sharedStrings.xml", xml -> {
            if (xml.getLocalName().equals("si")) {
                shared.add(string(xml, "si"));
            }
        });
        Cells cells = new Cells();
        if (!parts.read(part, new Rows(cells))) {
            throw new IOException(part);
        }
        return cells;
    }

    private static String relation(XMLStreamReader xml) {
        for (int i = 0; i < xml.getAttributeCount(); i++) {
            if (xml.getAttributeLocalName(i).equals("id") && xml.getAttributeNamespace(i) != null) {
                return xml.getAttributeValue(i);
            }
        }
        return "";
    }

    /** Where the part of a sheet lies. */
    private String target(String relation) throws IOException {
        Map<String, String> targets = new HashMap<>();
        parts.read("xl/_rels/workbook.xml.rels",
                xml -> targets.put(xml.getAttributeValue(null, "Id"), xml.getAttributeValue(null, "Target")));
        String target = Optional.ofNullable(targets.get(relation)).orElseThrow(() -> new IOException(relation));
        return target.startsWith("/") ? target.substring(1) : "xl/" + target;
    }

    /** The words of a string, whatever runs they are parted into; how they are spoken in Japanese is no part of it. */
    private static String string(XMLStreamReader xml, String end) throws XMLStreamException {
        StringBuilder text = new StringBuilder();
        while (!(xml.next() == XMLStreamReader.END_ELEMENT && xml.getLocalName().equals(end))) {
            if (xml.isStartElement() && xml.getLocalName().equals("t")) {
                text.append(Parts.text(xml));
            } else if (xml.isStartElement() && xml.getLocalName().equals("rPh")) {
                Parts.text(xml);
            }
        }
        return text.toString();
    }

    /** Finds what each style makes of a number. */
    private final class Styles implements Parts.Reading {

        private final Map<Integer, Meant> own = new HashMap<>();
        private boolean ofCells;

        @Override
        public void of(XMLStreamReader xml) {
            switch (xml.getLocalName()) {
                case "numFmt" -> own.put(number(xml, "numFmtId"),
                        meant(Optional.ofNullable(xml.getAttributeValue(null, "formatCode")).orElse("")));
                case "cellXfs" -> ofCells = true;
                case "cellStyleXfs", "cellStyles" -> ofCells = false;
                case "xf" -> {
                    int format = number(xml, "numFmtId");
                    if (ofCells) {
                        styles.add(own.getOrDefault(format, DATES.contains(format) ? Meant.DATE : TIMES.contains(format) ? Meant.TIME
                                : PERCENTS.contains(format) ? Meant.PERCENT : Meant.NUMBER));
                    }
                }
                default -> { }
            }
        }

        private static Meant meant(String format) {
            String bare = LITERAL.matcher(format).replaceAll("").toLowerCase(Locale.ROOT);
            return bare.contains("%") ? Meant.PERCENT
                    : bare.matches(".*[yd].*") ? Meant.DATE : bare.matches(".*[hs].*|.*\\[m+\\].*") ? Meant.TIME
                    : bare.contains("m") ? Meant.DATE : Meant.NUMBER;
        }

        private static int number(XMLStreamReader xml, String name) {
            String value = xml.getAttributeValue(null, name);
            return value == null || !value.matches("[0-9]{1,6}") ? 0 : Integer.parseInt(value);
        }
    }

    /** Gathers the cells of each row. */
    private final class Rows implements Parts.Reading {

        private final Cells cells;
        private int row;
        private int column;

        Rows(Cells cells) {
            this.cells = cells;
        }

        @Override
        public void of(XMLStreamReader xml) throws XMLStreamException, Parts.TooLarge {
            if (xml.getLocalName().equals("row")) {
                String number = xml.getAttributeValue(null, "r");
                row = number != null && number.matches("[0-9]{1,7}") ? Integer.parseInt(number) : row + 1;
                column = 0;
            } else if (xml.getLocalName().equals("c")) {
                cell(xml);
            }
        }

        private void cell(XMLStreamReader xml) throws XMLStreamException, Parts.TooLarge {
            column = Optional.ofNullable(xml.getAttributeValue(null, "r")).map(XlsxSheet::column).filter(named -> named > 0)
                    .orElse(column + 1);
            String type = Optional.ofNullable(xml.getAttributeValue(null, "t")).orElse("n");
            int style = Styles.number(xml, "s");
            boolean formula = false;
            String value = "";
            while (!(xml.next() == XMLStreamReader.END_ELEMENT && xml.getLocalName().equals("c"))) {
                if (xml.isStartElement()) {
                    switch (xml.getLocalName()) {
                        case "f" -> {
                            formula = true;
                            Parts.text(xml);
                        }
                        case "v" -> value = Parts.text(xml);
                        case "is" -> value = string(xml, "is");
                        default -> { }
                    }
                }
            }
            if (formula && value.isEmpty()) {
                cells.wrong(row, column, Fault.of("workbook.formula"));
            } else if (type.equals("e")) {
                cells.wrong(row, column, Fault.of("workbook.error", value));
            } else {
                cells.put(row, column, text(type, value, style < styles.size() ? styles.get(style) : Meant.NUMBER));
            }
        }

        private String text(String type, String value, Meant meant) {
            if (value.isEmpty()) {
                return "";
            }
            return switch (type) {
                case "s" -> value.matches("[0-9]{1,9}") && Integer.parseInt(value) < shared.size()
                        ? shared.get(Integer.parseInt(value)) : "";
                case "b" -> value.equals("1") ? "yes" : "no";
                case "n" -> switch (meant) {
                    case NUMBER -> Cells.number(value);
                    case PERCENT -> Cells.percent(value);
                    case DATE -> Cells.day(zero, value);
                    case TIME -> Cells.time(value);
                };
                case "d" -> value.substring(0, Math.min(10, value.length()));
                default -> value;
            };
        }
    }

    /** The number of the column in a reference such as {@code AB12}, from 1; 0 where none is named. */
    private static int column(String reference) {
        int column = 0;
        for (int i = 0; i < Math.min(4, reference.length()) && reference.substring(i, i + 1).matches("[A-Za-z]"); i++) {
            column = column * 26 + Character.toUpperCase(reference.charAt(i)) - 'A' + 1;
        }
        return column;
    }
}
