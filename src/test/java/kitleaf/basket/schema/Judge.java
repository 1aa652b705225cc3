package kitleaf.basket.schema;

import com.fasterxml.jackson.core.type.TypeReference;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.dataformat.yaml.YAMLFactory;
import com.fasterxml.jackson.dataformat.yaml.YAMLMapper;
import com.networknt.schema.InputFormat;
import com.networknt.schema.JsonSchema;
import com.networknt.schema.JsonSchemaFactory;
import com.networknt.schema.SpecVersion;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import kitleaf.basket.place.Problems;
import kitleaf.basket.place.Source;
import kitleaf.basket.reader.PieceReader;
import kitleaf.basket.reader.Settings;
import kitleaf.basket.reader.SettingsReader;
import kitleaf.basket.reader.Written;
import kitleaf.basket.table.Tables;
import kitleaf.basket.yaml.Node;
import kitleaf.basket.yaml.YamlTree;

/**
 * Judges YAML texts twice: by a schema, in the eyes of a validator that knows nothing of Kitleaf, and by the readers.
 *
 * @param schema what the validator goes by
 * @param piece whether the texts are piece files; otherwise they are {@code basket.yaml}
 */
record Judge(JsonSchema schema, boolean piece) {

    private static final YAMLMapper YAML = new YAMLMapper();

    static final JsonSchemaFactory VALIDATORS = JsonSchemaFactory.getInstance(SpecVersion.VersionFlag.V202012);

    static Judge of(String file) {
        return new Judge(VALIDATORS.getSchema(Schemas.files(Locale.ENGLISH).get(file), InputFormat.JSON), file.startsWith("piece"));
    }

    /** What the schema has against a text; YAML 1.2 types it, so that days are strings. */
    List<String> bySchema(String text) {
        return documents(text).stream().flatMap(document -> bySchema(document).stream()).toList();
    }

    List<String> bySchema(JsonNode document) {
        return schema.validate(document).stream().map(Object::toString).toList();
    }

    /** What the readers have against it. */
    List<String> byReader(String text) {
        Problems problems = new Problems();
        Tables tables = (value, key, example) -> Optional.empty();
        for (Node document : YamlTree.read(new Source(Path.of("f.yaml"), text), problems).documents()) {
            if (piece) {
                new PieceReader(Settings.USUAL, tables, problems).read(document, "f");
            } else {
                new SettingsReader(tables, problems).read(document);
            }
        }
        return problems.all().stream().map(Written::english).toList();
    }

    static List<JsonNode> documents(String text) {
        try {
            return YAML.readerFor(new TypeReference<JsonNode>() { }).<JsonNode>readValues(new YAMLFactory().createParser(text)).readAll();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
