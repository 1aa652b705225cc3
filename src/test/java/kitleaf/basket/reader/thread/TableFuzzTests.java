package kitleaf.basket.reader.thread;

import static org.junit.jupiter.api.Assertions.assertTrue;

import com.code_intelligence.jazzer.junit.FuzzTest;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import kitleaf.basket.place.Problems;
import kitleaf.basket.place.Quote;
import kitleaf.basket.place.SourceReader;
import kitleaf.basket.reader.Settings;
import kitleaf.basket.reader.Written;
import kitleaf.basket.thread.CalledThread;

/** Any bytes whatever, taken for a table of threads, end in threads or in problems that can be told. */
class TableFuzzTests {

    @FuzzTest(maxDuration = "5m")
    void readOrTold(byte[] data) {
        Problems problems = new Problems();
        TableRows.Owner owner = new TableRows.Owner("bell", Optional.empty());
        Path name = Path.of("t.csv");
        TableRows rows = TableRows.of(name, SourceReader.decode(data, name, problems), problems, Settings.USUAL, new SharedValues());
        List<CalledThread> threads = rows.take(owner).map(TableRows.Taken::threads).orElseGet(List::of);
        rows.tell(problems);
        rows.check(Set.of("bell"), List.of("bell"), problems);
        problems.all().forEach(problem -> assertTrue(Written.english(problem).startsWith("t.csv"), problem.toString()));
        threads.forEach(thread -> assertTrue(!thread.code().isBlank() && thread.code().codePoints().noneMatch(Quote::hidden), thread.code()));
    }
}
