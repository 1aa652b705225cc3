package kitleaf.basket.reader;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Optional;
import kitleaf.basket.cloth.ClothSupply;
import kitleaf.basket.place.Problems;
import kitleaf.basket.place.SourceReader;
import kitleaf.basket.table.TableFinder;
import kitleaf.basket.yaml.YamlTree;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.Chars;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.StringLength;

/** A slip of the hand anywhere in the cloth of a basket ends in cloth or in problems, never in an exception. */
class DamagedClothSupplyTests {

    private static final String WHOLE = """
            cloth-on-hand:
              - {name: Sea-mist, kind: linen, count: 36, size: 70 cm x 90 cm, selvedge: left, warp: down, flaws: [{from-left: 22 cm, wide: 1 cm}]}
              - {name: Bolt end, kind: linen, count: {warp: 71 in 2 in, weft: 145 in 10 cm}, size: 1 m x 20 in, flaws: [{from-top: 0 in, wide: 2 in}]}
            cloth-cuts:
              - {name: fat quarter, size: 27 in x 18 in, price: 14.00 GBP, kind: linen, count: 36, cloth: Sea-mist}
              - {name: strip, size: 20 cm x 1 m, price: 9.00 GBP, turning: yes}
            cutting: {fray: 3 mm, usable: 10 cm}
            """;

    private static Optional<Settings> read(String text, Problems problems) {
        TableFinder noTables = new TableFinder(Path.of("no-such-folder"), Path.of("no-such-folder"), problems);
        return SourceReader.decode(text.getBytes(StandardCharsets.UTF_8), Path.of("basket.yaml"), problems)
                .map(source -> YamlTree.read(source, problems))
                .flatMap(read -> read.documents().stream().findFirst())
                .map(document -> new SettingsReader(Optional.empty(), noTables, problems).read(document));
    }

    @Example
    void theWholeOneIsRead() {
        Problems problems = new Problems();
        ClothSupply supply = read(WHOLE, problems).orElseThrow().clothSupply();
        assertTrue(problems.none(), problems.all().toString());
        assertEquals(2, supply.onHand().size());
        assertEquals(2, supply.cuts().size());
    }

    @Property(tries = 5000)
    void aDamagedOneIsReadOrTold(@ForAll @IntRange(max = 700) int from, @ForAll @IntRange(max = 12) int cut,
            @ForAll @StringLength(max = 4) @Chars({'0', '1', '9', '.', '-', '/', '"', '{', '}', '[', ':', ' ', '\n', '\t', '#', 'x', 'm'}) String put) {
        int start = Math.min(from, WHOLE.length());
        String text = WHOLE.substring(0, start) + put + WHOLE.substring(Math.min(WHOLE.length(), start + cut));
        Problems problems = new Problems();
        Optional<Settings> settings = read(text, problems);
        assertTrue(settings.isPresent() || !problems.none() || text.isBlank(), text);
        // Cloth that went missing without a word would be planned as if she had none.
        assertTrue(!problems.none() || settings.orElseThrow().clothOnHandKnown(), text);
        long lines = text.lines().count() + 1;
        problems.all().forEach(problem -> assertTrue(Written.english(problem).length() > 0 && problem.line() <= lines));
    }
}
