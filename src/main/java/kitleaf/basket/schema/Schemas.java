package kitleaf.basket.schema;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import kitleaf.basket.reader.PieceReader;
import kitleaf.basket.reader.SettingsReader;
import kitleaf.words.Said;

/** Gives the schemas (JSON Schema, draft 2020-12) by which an editor completes and checks a basket's files. */
public final class Schemas {

    /** The folder inside a basket that the files' comments look for the schemas in. */
    public static final String FOLDER = "schema";

    /** The file of the schema of {@code basket.yaml}. */
    public static final String BASKET_FILE = "basket.schema.json";

    /** The file of the schema of the files in {@code pieces}. */
    public static final String PIECE_FILE = "piece.schema.json";

    /** The first line of a {@code basket.yaml} that is to be checked by its schema. */
    public static final String BASKET_COMMENT = "# yaml-language-server: $schema=" + FOLDER + "/" + BASKET_FILE;

    /** The first line of each document of a file in {@code pieces} that is to be checked by its schema. */
    public static final String PIECE_COMMENT = "# yaml-language-server: $schema=../" + FOLDER + "/" + PIECE_FILE;

    private Schemas() {
    }

    /**
     * The schemas as texts that end in a line break, by their file names: {@link #BASKET_FILE} and {@link #PIECE_FILE}.
     *
     * @param language of the sentences editors show
     * @throws IllegalStateException if a key that readers take has no text; tests see to it that it is not so
     */
    public static Map<String, String> files(Locale language) {
        return files(KeyTexts.shipped(language), language);
    }

    static Map<String, String> files(KeyTexts texts, Locale language) {
        Map<String, String> files = new LinkedHashMap<>();
        Map<String, Object> basket = new SchemaDraft(texts, language).of(Said.of("schema.basket"), SettingsReader.KEYS);
        Map<String, Object> piece = new SchemaDraft(texts, language).of(Said.of("schema.piece"), PieceReader.KEYS);
        texts.complete();
        files.put(BASKET_FILE, json(basket));
        files.put(PIECE_FILE, json(piece));
        return files;
    }

    private static String json(Map<String, Object> schema) {
        StringWriter text = new StringWriter();
        DefaultIndenter lines = new DefaultIndenter("  ", "\n");
        try (JsonGenerator json = new JsonFactory().createGenerator(text)) {
            json.setPrettyPrinter(new DefaultPrettyPrinter().withObjectIndenter(lines));
            write(schema, json);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return text + "\n";
    }

    private static void write(Object value, JsonGenerator json) throws IOException {
        if (value instanceof Map<?, ?> map) {
            json.writeStartObject();
            for (Map.Entry<?, ?> entry : map.entrySet()) {
                json.writeFieldName((String) entry.getKey());
                write(entry.getValue(), json);
            }
            json.writeEndObject();
        } else if (value instanceof Collection<?> list) {
            json.writeStartArray();
            for (Object item : list) {
                write(item, json);
            }
            json.writeEndArray();
        } else if (value instanceof Boolean flag) {
            json.writeBoolean(flag);
        } else if (value instanceof Integer whole) {
            json.writeNumber(whole);
        } else if (value instanceof BigDecimal number) {
            json.writeNumber(number);
        } else {
            json.writeString((String) value);
        }
    }
}
