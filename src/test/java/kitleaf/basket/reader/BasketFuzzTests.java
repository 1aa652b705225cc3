package kitleaf.basket.reader;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.code_intelligence.jazzer.junit.FuzzTest;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import kitleaf.basket.Basket;
import kitleaf.basket.Piece;
import kitleaf.basket.place.Problem;
import kitleaf.basket.place.Problems;
import kitleaf.basket.place.Quote;
import kitleaf.basket.place.SourceReader;
import kitleaf.basket.table.TableFinder;
import kitleaf.basket.yaml.Node;
import kitleaf.basket.yaml.YamlTree;
import kitleaf.sizing.Reckoning;
import kitleaf.sizing.thread.BuyLine;

/**
 * Any bytes whatever, taken for a basket, end in a basket that can be reckoned or in problems that can be told. The
 * bytes before the first form feed are basket.yaml, the others a piece file.
 */
class BasketFuzzTests {

    /** A form feed, which is refused in YAML. */
    private static final byte PARTING = 0x0C;

    private static final Path NOWHERE = Path.of("no-such-folder");

    @FuzzTest(maxDuration = "5m")
    void readOrTold(byte[] data) {
        int parting = 0;
        while (parting < data.length && data[parting] != PARTING) {
            parting++;
        }
        byte[] settingsBytes = parting == data.length ? new byte[0] : Arrays.copyOf(data, parting);
        byte[] pieceBytes = parting == data.length ? data : Arrays.copyOfRange(data, parting + 1, data.length);
        Problems problems = new Problems();
        TableFinder noTables = new TableFinder(NOWHERE, NOWHERE, problems);
        Settings settings = documents(settingsBytes, "basket.yaml", problems).stream().findFirst()
                .map(node -> new SettingsReader(noTables, problems).read(node)).orElse(Settings.USUAL);
        List<Piece> pieces = new ArrayList<>();
        for (Node document : documents(pieceBytes, "pieces/p.yaml", problems)) {
            new PieceReader(settings, noTables, problems).read(document, "p" + pieces.size()).piece().ifPresent(pieces::add);
        }
        settings.goals().check(pieces.stream().map(Piece::id).toList(), problems);
        problems.all().forEach(BasketFuzzTests::canBeTold);
        if (problems.none() && !pieces.isEmpty()) {
            canBeReckoned(BasketReader.basket(settings, "t", pieces));
        }
    }

    private static List<Node> documents(byte[] bytes, String name, Problems problems) {
        return SourceReader.decode(bytes, Path.of(name), problems)
                .map(source -> YamlTree.read(source, problems).documents()).orElseGet(List::of);
    }

    private static void canBeTold(Problem problem) {
        String told = Written.english(problem);
        assertTrue(told.codePoints().noneMatch(c -> c != '\n' && c != '\r' && c != '\t' && Quote.hidden(c)), told);
        assertTrue(told.startsWith("basket.yaml") || told.startsWith("pieces/p.yaml"), told);
    }

    private static void canBeReckoned(Basket basket) {
        Reckoning reckoning = Reckoning.of(basket);
        assertEquals(basket.pieces().size(), reckoning.pieces().size());
        reckoning.pieces().forEach(piece -> {
            aLength(piece.cloth().size().across().finishedMm());
            aLength(piece.cloth().size().down().finishedMm());
            aLength(piece.cloth().size().across().cutMm());
            aLength(piece.cloth().size().down().cutMm());
            aLength(piece.cloth().size().cutDiagonalMm());
        });
        for (BuyLine line : reckoning.threads().buyList().lines()) {
            assertTrue(line.buy() >= 0 && Double.isFinite(line.needSkeins().high()) && line.needSkeins().low() >= 0, line.toString());
        }
        reckoning.year(basket.latest().orElse(LocalDate.of(2027, 1, 1)));
    }

    private static void aLength(double mm) {
        assertTrue(mm > 0 && Double.isFinite(mm), String.valueOf(mm));
    }
}
