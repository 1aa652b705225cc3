package kitleaf.basket.reader.thread;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.StringReader;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.stream.Stream;
import kitleaf.basket.Basket;
import kitleaf.basket.ChartSize;
import kitleaf.basket.Goal;
import kitleaf.basket.Part;
import kitleaf.basket.Piece;
import kitleaf.basket.Progress;
import kitleaf.basket.cloth.Cloth;
import kitleaf.basket.cloth.Count;
import kitleaf.basket.cloth.Shrink;
import kitleaf.basket.place.Problems;
import kitleaf.basket.place.Quote;
import kitleaf.basket.place.Source;
import kitleaf.basket.reader.BasketReader;
import kitleaf.basket.reader.MarginReader;
import kitleaf.basket.reader.Settings;
import kitleaf.basket.reader.Written;
import kitleaf.basket.table.FormulaGuard;
import kitleaf.basket.thread.CalledThread;
import kitleaf.basket.thread.Colour;
import kitleaf.basket.thread.StitchCount;
import kitleaf.basket.thread.StitchKind;
import kitleaf.basket.thread.Strands;
import kitleaf.basket.thread.Used;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Assume;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.Size;
import net.jqwik.api.constraints.UniqueElements;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVPrinter;
import org.apache.commons.csv.CSVRecord;
import org.apache.commons.csv.QuoteMode;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Tables that are written are read again, by Kitleaf and by a library that knows nothing of it. */
class ThreadsCsvTests {

    private static String written(List<Piece> pieces) throws IOException {
        return written(pieces, Locale.ENGLISH);
    }

    private static String written(List<Piece> pieces, Locale language) throws IOException {
        StringWriter text = new StringWriter();
        ThreadsCsv.write(pieces, language, text);
        return text.toString();
    }

    private static List<CSVRecord> records(String table) throws IOException {
        return records(table, ',');
    }

    private static List<CSVRecord> records(String table, char separator) throws IOException {
        try (CSVParser parser = CSVFormat.RFC4180.builder().setDelimiter(separator).setHeader().get().parse(new StringReader(table))) {
            return parser.getRecords();
        }
    }

    private static List<CalledThread> read(String table, TableRows.Owner owner) {
        Problems problems = new Problems();
        Path name = Path.of("t.csv");
        TableRows rows = TableRows.of(name, Optional.of(new Source(name, table)), problems, Settings.UNREAD, new SharedValues());
        List<CalledThread> threads = rows.take(owner).map(TableRows.Taken::threads).orElseGet(List::of);
        rows.tell(problems);
        assertEquals(List.of(), problems.all().stream().map(Written::english).toList(), table);
        return threads;
    }

    private static Piece piece(String id, List<CalledThread> threads) {
        return new Piece(id, id, Optional.empty(), new ChartSize(9, 9), new Cloth(Optional.empty(), Cloth.Kind.LINEN, new Count(36, 36), 2,
                Shrink.NONE, Cloth.Counted.AFTER, Cloth.WarpRun.DOWN, Cloth.Dyeing.NONE, false), Optional.empty(),
                MarginReader.USUAL, true, threads, List.of(),
                Optional.empty(), Progress.NONE, Goal.NONE);
    }

    /** Kinds in the order of the columns: a table keeps no other. */
    private static CalledThread inOrder(CalledThread t) {
        return new CalledThread(t.code(), t.name(), t.colour(), t.symbol(), t.skein(), t.strands(),
                t.stitches().stream().sorted(Comparator.comparing(StitchCount::kind)).toList(), t.share(), t.used(), t.over(), t.lot(), t.mixLots());
    }

    @TempDir
    Path temp;

    @Test
    void theThreadsOfTheExampleComeOutAndGoInAgain() throws IOException {
        Basket basket = BasketReader.read(Path.of("examples/harbour")).basket().orElseThrow();
        String table = written(basket.pieces());
        List<CalledThread> all = basket.pieces().stream()
                .flatMap(piece -> Stream.concat(piece.threads().stream(), piece.parts().stream().flatMap(part -> part.threads().stream()))).toList();
        List<CSVRecord> records = records(table);
        assertTrue(all.size() > 40);
        assertEquals(all.stream().map(CalledThread::code).toList(), records.stream().map(record -> record.get("code")).toList());
        assertEquals(all.stream().map(thread -> thread.name().orElse("")).toList(), records.stream().map(record -> record.get("name")).toList());
        for (Piece piece : basket.pieces()) {
            if (!piece.threads().isEmpty()) {
                assertEquals(piece.threads().stream().map(ThreadsCsvTests::inOrder).toList(),
                        read(table, new TableRows.Owner(piece.id(), Optional.empty())), piece.id());
            }
            for (Part part : piece.parts()) {
                assertEquals(part.threads(), read(table, new TableRows.Owner(piece.id(), Optional.of(part.title()))));
            }
        }
    }

    @Test
    void strandsByKindAreWrittenKindByKind() throws IOException {
        List<StitchCount> stitches = List.of(StitchCount.of(StitchKind.CROSS, 2310), StitchCount.of(StitchKind.HALF, 0), StitchCount.of(StitchKind.BACK, 120));
        CalledThread thread = new CalledThread("K1", Optional.empty(), Optional.empty(), Optional.empty(), "cotton", new Strands(2, Map.of(StitchKind.BACK, 1)),
                stitches, OptionalDouble.empty(), Optional.empty(), OptionalInt.empty(), Optional.of("12"), true);
        CSVRecord record = records(written(List.of(piece("bell", List.of(thread))))).get(0);
        assertEquals("cross 2, back 1", record.get("strands"));
        assertEquals("yes", record.get("mix-lots"));
    }

    @Test
    void aWholeBasketMayTakeItsThreadsFromTheTableThatCameOutOfIt() throws IOException {
        Basket basket = BasketReader.read(Path.of("examples/harbour")).basket().orElseThrow();
        List<Piece> plain = basket.pieces().stream().filter(piece -> piece.parts().isEmpty() && !piece.threads().isEmpty()).toList();
        Written again = new Written(temp).file("all.csv", written(plain));
        Files.copy(Path.of("examples/harbour/basket.yaml"), temp.resolve("basket.yaml"));
        again.file("basket.yaml", Files.readString(temp.resolve("basket.yaml")).replaceAll("(?s)\ngoals:.*", "\n"));
        for (Piece piece : plain) {
            again.file("pieces/" + piece.id() + ".yaml", "piece: " + piece.id()
                    + "\nstitches: 250 x 250\ncloth: {kind: linen, count: 36, over: 2}\nthreads: all.csv\n");
        }
        assertTrue(plain.size() > 8);
        assertEquals(plain.stream().map(piece -> piece.threads().stream().map(ThreadsCsvTests::inOrder).toList()).toList(),
                again.basket().pieces().stream().map(Piece::threads).toList());
    }

    /** Where decimals follow a comma, cells are parted by semicolons; an independent reader gets the same cells. */
    @Property(tries = 300)
    void whateverTheThreadsTheyComeBackAsTheyWere(@ForAll @Size(min = 1, max = 4)
            @UniqueElements(by = CodeOf.class) List<@net.jqwik.api.From("threads") CalledThread> threads, @ForAll boolean german) throws IOException {
        String table = written(List.of(piece("bell", threads)), german ? Locale.GERMAN : Locale.ENGLISH);
        assertEquals(threads, read(table, new TableRows.Owner("bell", Optional.empty())), table);
        List<CSVRecord> records = records(table, german ? ';' : ',');
        assertEquals(threads.size(), records.size());
        for (int i = 0; i < threads.size(); i++) {
            for (String cell : records.get(i)) {
                assertFalse(cell.matches("(?s)(.*[,;\t\r\n])?[ \"]*[=+\\-@＝＋－＠].*"), cell);
            }
            assertEquals(threads.get(i).code(), FormulaGuard.unguarded(records.get(i).get("code")));
        }
        for (String other : table.split("[,;\t\r\n]")) {
            assertFalse(other.matches("[ \"]*[=+\\-@＝＋－＠].*"), "parted at any sign: " + table);
        }
    }

    /** The other way round: an independent hand writes the table, in any of the ways there are. What looks guarded is read as guarded. */
    @Property(tries = 300)
    void whateverHandWritesTheTableItIsRead(@ForAll @Size(min = 1, max = 4) List<@net.jqwik.api.From("words") String> names,
            @ForAll("formats") CSVFormat format) throws IOException {
        Assume.that(names.stream().noneMatch(name -> name.matches(".*[,;]'.*")));
        StringWriter table = new StringWriter();
        try (CSVPrinter printer = new CSVPrinter(table, format)) {
            printer.printRecord("Name", "Code", "Cross stitch");
            for (int i = 0; i < names.size(); i++) {
                printer.printRecord("x" + names.get(i), "K" + i, i);
            }
        }
        List<CalledThread> read = read(table.toString(), new TableRows.Owner("bell", Optional.empty()));
        for (int i = 0; i < names.size(); i++) {
            assertEquals(Optional.of("x" + names.get(i)), read.get(i).name());
            assertEquals(List.of(StitchCount.of(StitchKind.CROSS, i)), read.get(i).stitches());
        }
        assertEquals(names.size(), read.size());
    }

    @Provide
    Arbitrary<CSVFormat> formats() {
        return Combinators.combine(Arbitraries.of(',', ';', '\t'), Arbitraries.of("\r\n", "\n", "\r"), Arbitraries.of(QuoteMode.ALL, QuoteMode.MINIMAL,
                QuoteMode.NON_NUMERIC)).as((sign, end, quotes) -> CSVFormat.RFC4180.builder().setDelimiter(sign).setRecordSeparator(end).setQuoteMode(quotes).get());
    }

    /** Words with every sign that means something to a table or a spreadsheet. */
    @Provide
    Arbitrary<String> words() {
        return Arbitraries.strings().withChars("ab=+-@'\",;#|é灯＝0 ").ofMinLength(1).ofMaxLength(8)
                .map(text -> Quote.composed(text.strip())).filter(text -> !text.isEmpty());
    }

    @Provide
    Arbitrary<CalledThread> threads() {
        Arbitrary<Optional<String>> maybe = words().optional();
        Arbitrary<OptionalDouble> share = Arbitraries.doubles().between(0, 1).ofScale(9).optional().map(o -> o.map(OptionalDouble::of).orElseGet(OptionalDouble::empty));
        Arbitrary<Optional<Used>> used = Combinators.combine(Arbitraries.doubles().between(0.001, 1000).ofScale(5), Arbitraries.integers().between(10_000, 90_000))
                .as(Used::new).optional();
        Arbitrary<OptionalInt> over = Arbitraries.integers().between(1, Cloth.MOST_OVER).optional().map(o -> o.map(OptionalInt::of).orElseGet(OptionalInt::empty));
        Arbitrary<Optional<Colour>> colour = Arbitraries.of(new Colour("#6b7f8c"), new Colour("#000000")).optional();
        return Combinators.combine(words(), maybe, colour, Arbitraries.of("●", "+", "=", "'", ",", "@x").optional(), stitches(), share, used, over)
                .as((code, name, c, symbol, stitches, s, u, o) -> new CalledThread(code, name, c, symbol, name.orElse("cotton"), strands(code, stitches), stitches, s, u, o, name, code.length() > 4));
    }

    /** One number for all or one for each kind, which with a short code is the same for some. */
    private static Strands strands(String code, List<StitchCount> stitches) {
        Map<StitchKind, Integer> kinds = new EnumMap<>(StitchKind.class);
        stitches.stream().filter(one -> one.count() > 0).forEach(one -> kinds.put(one.kind(), 1 + one.count() % (1 + code.length())));
        return kinds.isEmpty() ? Strands.of(1 + code.length()) : Strands.of(kinds, stitches);
    }

    private static Arbitrary<List<StitchCount>> stitches() {
        Arbitrary<StitchCount> cross = Combinators.combine(Arbitraries.integers().between(0, 9000), Arbitraries.of(StitchCount.Worked.class).optional())
                .as((count, worked) -> new StitchCount(StitchKind.CROSS, count, worked, OptionalInt.empty(), OptionalDouble.empty()));
        Arbitrary<StitchCount> satin = Arbitraries.integers().between(1, 40).map(span -> new StitchCount(StitchKind.SATIN, 3 * span, Optional.empty(),
                span % 2 == 0 ? OptionalInt.of(span) : OptionalInt.empty(), OptionalDouble.empty()));
        Arbitrary<StitchCount> other = Arbitraries.doubles().between(0.1, 10_000).ofScale(7).map(mm -> new StitchCount(StitchKind.OTHER, 12, Optional.empty(),
                OptionalInt.empty(), OptionalDouble.of(mm)));
        return Combinators.combine(cross.optional(), Arbitraries.integers().between(0, 99).map(n -> StitchCount.of(StitchKind.BACK, n)).optional(),
                satin.optional(), other.optional()).as((a, b, c, d) -> Stream.of(a, b, c, d).flatMap(Optional::stream).toList());
    }

    /** What tells two threads of a list apart. */
    private static final class CodeOf implements java.util.function.Function<Object, Object> {
        @Override
        public Object apply(Object thread) {
            return ((CalledThread) thread).code();
        }
    }
}
