package kitleaf.basket.reader;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Optional;
import kitleaf.basket.Piece;
import kitleaf.basket.place.Problems;
import kitleaf.basket.place.SourceReader;
import kitleaf.basket.table.TableFinder;
import kitleaf.basket.yaml.YamlTree;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.Chars;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.StringLength;

/** A slip of the hand anywhere in a piece ends in a piece or in problems, never in an exception. */
class DamagedPieceTests {

    private static final Path FILE = Path.of("p.yaml");

    private static Optional<Piece> read(String text, Problems problems) {
        TableFinder noTables = new TableFinder(Path.of("no-such-folder"), Path.of("no-such-folder"), problems);
        PieceReader reader = new PieceReader(Settings.USUAL, noTables, problems);
        return SourceReader.decode(text.getBytes(StandardCharsets.UTF_8), FILE, problems)
                .map(source -> YamlTree.read(source, problems))
                .flatMap(read -> read.documents().stream().findFirst())
                .flatMap(document -> reader.read(document, "p").piece());
    }

    @Property(tries = 5000)
    void aDamagedPieceIsReadOrTold(@ForAll @IntRange(min = 0, max = 1200) int from, @ForAll @IntRange(min = 0, max = 12) int cut,
            @ForAll @StringLength(max = 4) @Chars({'0', '1', '9', '.', ',', '-', '/', '%', '½', '"', '{', '}', '[', ':', ' ', '\n', '\r',
                '\t', '#', 'x', 'e', '&', '*'}) String put) {
        String whole = PieceReaderTests.FULL;
        int start = Math.min(from, whole.length());
        String text = whole.substring(0, start) + put + whole.substring(Math.min(whole.length(), start + cut));
        Problems problems = new Problems();
        Optional<Piece> piece = read(text, problems);
        assertTrue(piece.isPresent() || !problems.none(), text);
        // Each can be set out, and lies in the text.
        long lines = text.lines().count() + 1;
        problems.all().forEach(problem -> assertTrue(Written.english(problem).length() > 0 && problem.line() <= lines));
    }
}
