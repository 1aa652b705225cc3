package kitleaf.sizing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import kitleaf.basket.LogEntry;
import kitleaf.basket.Piece;
import kitleaf.basket.reader.BasketReader;
import org.junit.jupiter.api.Test;

/** The example's logs and its figures of what is done tell one story. */
class ExampleLogsTests {

    @Test
    void noLogHoldsMoreThanIsDone() {
        List<Piece> logged = BasketReader.read(Path.of("examples/harbour")).basket().orElseThrow().pieces().stream()
                .filter(piece -> !piece.progress().log().isEmpty()).toList();
        assertEquals(List.of("almanac", "bosuns-knot", "breakwater", "cormorant-row", "rope-border", "saltings", "tide-table"),
                logged.stream().map(Piece::id).toList());
        for (Piece piece : logged) {
            long stitches = piece.progress().log().stream().mapToLong(LogEntry::stitches).sum();
            StitchTally tally = StitchTally.of(piece);
            assertTrue(stitches <= tally.done(), piece.id() + ": " + stitches + " in the log, done " + tally.done());
        }
    }
}
