package kitleaf.basket.form;

import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import kitleaf.basket.place.Fault;
import kitleaf.basket.place.WorkbookName;
import kitleaf.words.Said;

/**
 * The name of a table's file: {@code stash.csv}, or a workbook's with the sheet where it is not the first, {@code kit.xlsx#Tide table}.
 *
 * @param example one to show her
 */
public record TableName(String example) implements Form<String> {

    public static final String ENDING = ".csv";

    /** All that a table's file may end in. */
    public static final List<String> ENDINGS = Stream.concat(Stream.of(ENDING), WorkbookName.ENDINGS.stream()).toList();

    /** Whether a text names a table. */
    public static boolean names(String text) {
        return text.strip().toLowerCase(Locale.ROOT).endsWith(ENDING) || WorkbookName.is(text.strip());
    }

    @Override
    public String read(String text) throws Fault {
        return new TextForm(example).read(text);
    }

    @Override
    public JsonShape shape() {
        return JsonShape.pattern(".*" + JsonShape.anyCase(ENDINGS) + "(#.*)?", Said.of("note.table"));
    }
}
