package kitleaf.basket.form;

import java.util.List;
import kitleaf.basket.place.Fault;
import kitleaf.words.Said;

/**
 * The name of a table's file, ending in {@code .csv}.
 *
 * @param example one to show her
 */
public record TableName(String example) implements Form<String> {

    public static final String ENDING = ".csv";

    /** All that a table's file may end in. */
    public static final List<String> ENDINGS = List.of(ENDING);

    @Override
    public String read(String text) throws Fault {
        return new TextForm(example).read(text);
    }

    @Override
    public JsonShape shape() {
        return JsonShape.pattern(".*" + JsonShape.anyCase(ENDING), Said.of("note.table"));
    }
}
