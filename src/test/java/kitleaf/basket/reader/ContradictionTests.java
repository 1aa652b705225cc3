package kitleaf.basket.reader;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import kitleaf.basket.LogEntry;
import kitleaf.basket.edit.LogEdit;
import kitleaf.basket.edit.News;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Two facts of which one must be wrong. examples/pieces.md lists them under What cannot be. */
class ContradictionTests {

    private static final String UNCUT = "piece: Fog bell\nstitches: 140 x 210\ncloth: {kind: linen, count: 36, over: 2, cut: no}\n";

    @TempDir
    Path temp;
    private Written written;

    @BeforeEach
    void nameTheFolder() throws IOException {
        written = new Written(Files.createDirectory(temp.resolve("harbour")));
    }

    @ParameterizedTest
    @ValueSource(strings = {"5%", "260", "{started: 2026-02-14}", "{finished: 2026-02-14}", "{done: 1%}", "{log: [{on: 2026-03-01, hours: 2.5, stitches: 0}]}"})
    void aPieceThatIsBegunHasItsClothCut(String progress) {
        assertEquals(List.of("3:47: this piece is begun, so its cloth is cut; write cut: yes, or leave it out; if nothing is stitched yet, take out its progress"),
                written.problems(UNCUT + "progress: " + progress + "\n"));
        assertTrue(written.problems(UNCUT.replace("cut: no", "cut: yes") + "progress: " + progress + "\n").isEmpty());
        assertTrue(written.problems(UNCUT.replace(", cut: no", "") + "progress: " + progress + "\n").isEmpty());
    }

    @ParameterizedTest
    @ValueSource(strings = {"0%", "0", "{done: 0}", "{log: []}"})
    void aPieceOfWhichNothingIsDoneMayBeUncut(String progress) {
        assertEquals(List.of(), written.problems(UNCUT + "progress: " + progress + "\n"));
    }

    @Test
    void theFirstEveningOfAnUncutPieceIsToldAndNotWritten() {
        Path file = written.file("pieces/p.yaml", UNCUT).folder().resolve("pieces/p.yaml");
        LogEdit edit = LogEdit.of(new PieceFile(file, 1, Optional.of(written.folder())),
                News.of(new LogEntry(LocalDate.of(2026, 3, 1), 2, 100)));
        assertEquals(List.of("cloth.uncut.wrong"), ((LogEdit.Broken) edit).problems().stream().map(problem -> problem.wrong().key()).toList());
    }

    @Test
    void aFinishedPieceIsDoneWhole() {
        String piece = Written.PIECE + "progress: {finished: 2026-11-07, done: %s}\n";
        assertEquals(List.of("4:40: this is not all, and the piece had its last stitch by 2026-11-07; leave done out, or take out "
                + "stitched or finished until all is done"),
                written.problems(piece.replace("%s", "45%")));
        assertEquals(List.of(), written.problems(piece.replace("%s", "100%")));
    }
}
