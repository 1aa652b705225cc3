package kitleaf.basket.schema;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.StringReader;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import kitleaf.basket.form.WholeText;
import kitleaf.basket.key.Fields;
import kitleaf.basket.key.Key;
import kitleaf.basket.key.Keys;
import kitleaf.basket.key.Value;
import kitleaf.basket.place.Problem;
import kitleaf.basket.place.Problems;
import kitleaf.basket.place.Source;
import kitleaf.basket.reader.PieceReader;
import kitleaf.basket.reader.SettingsReader;
import kitleaf.basket.yaml.Node;
import kitleaf.basket.yaml.Plain;
import kitleaf.basket.yaml.YamlTree;
import kitleaf.words.Said;
import org.junit.jupiter.api.Test;

/** A key is declared once, and what reads, checks and describes it follows. */
class DeclaredKeysTests {

    private static final ObjectMapper JSON = new ObjectMapper();
    /** A value no key takes. */
    private static final Object WRONG = List.of(List.of());

    @Test
    void aNewKeyIsReadDescribedAndKnownByItsDeclarationAlone() throws IOException {
        Keys lamp = Keys.under("lamp", "{wicks: 2}");
        Key<Integer> wicks = lamp.must("wicks", new WholeText(1, 9, "2"));
        Problems problems = new Problems();
        assertEquals(Optional.of(7), Fields.of(node("{wicks: 7}"), lamp, problems).flatMap(fields -> fields.value(wicks)));
        assertTrue(problems.none());
        Fields.of(node("{wickz: 7}"), lamp, problems).flatMap(fields -> fields.value(wicks));
        assertEquals(List.of("advice.meant"), problems.all().stream().map(Problem::write).map(Said::key).toList());
        problems = new Problems();
        Fields.of(node("{}"), lamp, problems).flatMap(fields -> fields.value(wicks));
        assertEquals(List.of("fields.missing.wrong"), problems.all().stream().map(Problem::wrong).map(Said::key).toList());
        KeyTexts texts = KeyTexts.read("keys.properties", new StringReader("lamp.wicks = How many wicks it has."));
        Map<String, Object> schema = new SchemaDraft(texts, Locale.ENGLISH).of(Said.of("schema.piece"), lamp);
        assertEquals(List.of("wicks"), schema.get("required"));
        assertEquals("{wicks={description=How many wicks it has., anyOf=[{type=integer, minimum=1, maximum=9}, "
                + "{type=string, pattern=^\\s*[0-9]+\\s*$}], examples=[2]}}", schema.get("properties").toString());
    }

    @Test
    void everyKeyOfABasketIsAskedForByItsReader() throws IOException {
        asked(Schemas.BASKET_FILE, SettingsReader.KEYS, Map.of());
    }

    @Test
    void everyKeyOfAPieceIsAskedForByItsReader() throws IOException {
        asked(Schemas.PIECE_FILE, PieceReader.KEYS,
                Map.of("piece", "Fog bell", "stitches", "140 x 210", "cloth", Map.of("kind", "linen", "count", 36, "over", 2)));
    }

    /** Wherever an example of a key has keys, a wrong value under one of them is told. */
    private static void asked(String file, Keys keys, Map<String, Object> needed) throws IOException {
        Judge judge = Judge.of(file);
        Set<String> met = new TreeSet<>();
        for (Key<?> key : keys.all()) {
            for (String shown : key.shown()) {
                Object good = Plain.of(node(shown));
                List<String> told = judge.byReader(document(needed, key.name(), good));
                List<Object> wrongs = new ArrayList<>();
                wrong(good, met, wrongs);
                wrongs.add(WRONG);
                for (Object wrong : wrongs) {
                    List<String> now = new ArrayList<>(judge.byReader(document(needed, key.name(), wrong)));
                    now.removeAll(told);
                    assertFalse(now.isEmpty(), () -> "nobody asks for what is wrong in " + key.name() + ": " + wrong);
                }
            }
            met.add(key.name());
        }
        Set<String> declared = new TreeSet<>();
        declared(keys, declared, new TreeSet<>());
        declared.removeAll(met);
        assertEquals(Set.of(), declared, "keys that no example shows");
    }

    private static void declared(Keys keys, Set<String> names, Set<String> seen) {
        if (seen.add(keys.name())) {
            names.addAll(keys.names());
            Value.Draft draft = below -> {
                declared(below, names, seen);
                return new WholeText(1, 9, "2").shape();
            };
            keys.all().forEach(key -> key.value().shape(draft));
        }
    }

    /** The value with each of the values in it made wrong, one at a time. */
    private static void wrong(Object value, Set<String> met, List<Object> all) {
        if (value instanceof Map<?, ?> map) {
            map.forEach((name, one) -> {
                met.add((String) name);
                List<Object> inside = new ArrayList<>(List.of(WRONG));
                wrong(one, met, inside);
                for (Object wrong : inside) {
                    Map<Object, Object> copy = new LinkedHashMap<>(map);
                    copy.put(name, wrong);
                    all.add(copy);
                }
            });
        } else if (value instanceof List<?> list) {
            for (int i = 0; i < list.size(); i++) {
                List<Object> inside = new ArrayList<>();
                wrong(list.get(i), met, inside);
                for (Object wrong : inside) {
                    List<Object> copy = new ArrayList<>(list);
                    copy.set(i, wrong);
                    all.add(copy);
                }
            }
        }
    }

    private static String document(Map<String, Object> needed, String key, Object value) throws IOException {
        Map<String, Object> document = new LinkedHashMap<>(needed);
        document.put(key, value);
        return JSON.writeValueAsString(document);
    }

    private static Node node(String yaml) {
        return YamlTree.read(new Source(Path.of("example.yaml"), yaml), new Problems()).documents().get(0);
    }
}
