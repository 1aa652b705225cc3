package kitleaf.basket.place;

import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** Takes apart the name of a workbook and, after a sign, of a sheet of it: {@code kit.xlsx#Tide table}. */
public final class WorkbookName {

    /** What workbooks end in. */
    public static final List<String> ENDINGS = List.of(".xlsx", ".ods");

    private static final String SHEET = "#";

    private WorkbookName() { }

    /** Whether a name is a workbook's. */
    public static boolean is(String name) {
        String file = file(name).toLowerCase(Locale.ROOT);
        return ENDINGS.stream().anyMatch(file::endsWith);
    }

    /** The name of the file alone. */
    public static String file(String name) {
        int sheet = sheetFrom(name);
        return sheet < 0 ? name : name.substring(0, sheet);
    }

    /** The name of the sheet, if one is named. */
    public static Optional<String> sheet(String name) {
        int sheet = sheetFrom(name);
        return sheet < 0 ? Optional.empty() : Optional.of(name.substring(sheet + SHEET.length()));
    }

    /** Where the sign before the sheet's name stands; below 0 where none is named. */
    private static int sheetFrom(String name) {
        String low = name.toLowerCase(Locale.ROOT);
        return ENDINGS.stream().filter(ending -> low.contains(ending + SHEET))
                .mapToInt(ending -> low.indexOf(ending + SHEET) + ending.length()).findFirst().orElse(-1);
    }
}
