package kitleaf.basket;

import kitleaf.words.Said;

/**
 * The name of a table's file, ending in {@code .csv}.
 *
 * @param example one to show her
 */
record TableName(String example) implements Form<String> {

    static final String ENDING = ".csv";

    @Override
    public String read(String text) throws Fault {
        return new TextForm(example).read(text);
    }

    @Override
    public JsonShape shape() {
        return JsonShape.pattern(".*" + JsonShape.anyCase(ENDING), Said.of("note.table"));
    }
}
