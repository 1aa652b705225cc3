package kitleaf.basket;

import static org.junit.jupiter.api.Assertions.assertTrue;

import com.code_intelligence.jazzer.junit.FuzzTest;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

/** Any bytes whatever, taken for a table of threads, end in threads or in problems that can be told. */
class TableFuzzTests {

    @FuzzTest(maxDuration = "5m")
    void readOrTold(byte[] data) {
        Problems problems = new Problems();
        TableRows rows = new TableRows();
        TableRows.Owner owner = new TableRows.Owner("bell", Optional.empty());
        List<CalledThread> threads = SourceReader.decode(data, Path.of("t.csv"), problems)
                .map(source -> new ThreadReader(Settings.USUAL, new Recurring(), new Shares(), problems).read(new ThreadTable(source, problems).read(owner, rows)))
                .orElseGet(List::of);
        rows.check(List.of("bell"), problems);
        problems.all().forEach(problem -> assertTrue(Written.english(problem).startsWith("t.csv"), problem.toString()));
        threads.forEach(thread -> assertTrue(!thread.code().isBlank() && thread.code().codePoints().noneMatch(Quote::hidden), thread.code()));
    }
}
