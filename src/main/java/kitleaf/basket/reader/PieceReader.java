package kitleaf.basket.reader;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.stream.Stream;
import kitleaf.basket.Amount;
import kitleaf.basket.ChartSize;
import kitleaf.basket.Finish;
import kitleaf.basket.Goal;
import kitleaf.basket.Keeping;
import kitleaf.basket.Part;
import kitleaf.basket.Piece;
import kitleaf.basket.Progress;
import kitleaf.basket.cloth.Cloth;
import kitleaf.basket.form.AmountText;
import kitleaf.basket.form.ChartText;
import kitleaf.basket.form.Choice;
import kitleaf.basket.form.TableName;
import kitleaf.basket.form.TextForm;
import kitleaf.basket.key.Fields;
import kitleaf.basket.key.Key;
import kitleaf.basket.key.Keys;
import kitleaf.basket.key.Value;
import kitleaf.basket.place.Fault;
import kitleaf.basket.place.Place;
import kitleaf.basket.place.Problems;
import kitleaf.basket.place.Spot;
import kitleaf.basket.reader.thread.CrossSum;
import kitleaf.basket.reader.thread.SharedTables;
import kitleaf.basket.reader.thread.SharedValues;
import kitleaf.basket.reader.thread.Shares;
import kitleaf.basket.reader.thread.TableRows;
import kitleaf.basket.reader.thread.ThreadReader;
import kitleaf.basket.table.TableFinder;
import kitleaf.basket.table.Tables;
import kitleaf.basket.thread.CalledThread;
import kitleaf.basket.yaml.Node;

/** Reads one piece from one document. */
public final class PieceReader {

    private static final Value THREADS_OR_TABLE = Value.either(Value.of(new TableName("fog-bell.csv")), Value.list(ThreadReader.KEYS));

    private static final Keys PART = Keys.of("thing.part", "- {part: Verse, over: 1, stitches: 60 x 24}");
    private static final Key<String> PART_TITLE = PART.must("part", new TextForm("Verse"), "Verse", "Date");
    private static final Key<Integer> PART_OVER = PART.must("over", ClothReader.OVER_FORM, "1");
    private static final Key<ChartSize> PART_STITCHES = PART.may("stitches", new ChartText(), "60 x 24");
    private static final Key<Void> PART_THREADS = PART.may("threads", ThreadReader.KEYS.example(), THREADS_OR_TABLE,
            "- {code: S09, stitches: {cross: 1420}}", "date.csv");

    /** What a piece may say. */
    public static final Keys KEYS = Keys.of("thing.piece", "piece: Fog bell, and so on");
    private static final Key<String> TITLE = KEYS.must("piece", new TextForm("Fog bell"),
            "Breakwater band sampler", "Saltings in winter", "Beacon on the point", "Rope walk");
    private static final Key<String> DESIGNER = KEYS.may("designer", new TextForm("Ottoline Marsh"));
    private static final Key<ChartSize> STITCHES = KEYS.must("stitches", new ChartText(), "140 x 210", "120 x 180", "75 x 91", "40 x 40");
    private static final Key<Void> CLOTH = KEYS.must("cloth", ClothReader.KEYS,
            "{name: Sea-mist, kind: linen, count: 36, over: 2, shrink: 2%, counted: before, warp: down, over-dyed: yes, cut: yes}",
            "{kind: linen, count: {warp: 71 in 2 in, weft: 145 in 10 cm}, over: 2, shrink: {warp: 3%, weft: 2%}}",
            "{kind: block, count: 16}", "{name: Sea-mist, over: 2}");
    static final Key<Double> MARGIN = KEYS.may("margin", MarginReader.MARGIN, MarginReader.SIDES,
            "3 in", "{top: 2 1/2 in, right: 2 in, bottom: 7.5 cm, left: 2 in}");
    private static final Key<Finish> FINISH = KEYS.may("finish", Choice.of("choice.finish", Finish.class));
    private static final Key<Void> THREADS = KEYS.may("threads", ThreadReader.KEYS.example(), THREADS_OR_TABLE, """
            - {code: K12, name: Ebb grey, colour: "#6b7f8c", symbol: "●", skein: cotton, strands: 1, lot: 7 B, mix-lots: yes, over: 1,
               stitches: {cross: 2310, half: 40, tent: 60, quarter: 12, three-quarter: 8, back: 120, double-running: 90, satin: 80,
               knot: 14}}
            - {code: K15, share: 12%, used: {skeins: 1.5, stitches: 3000}}
            - {code: K16, strands: {cross: 2, half: 1, tent: 1, quarter: 2, three-quarter: 2, back: 1, double-running: 1, satin: 3, knot: 2,
               long-armed: 1, rice: 1, eyelet: 1, four-sided: 1, satin-block: 1, hem: 1, queen: 1, other: 1,
               else: 2}, stitches: {cross: 1, half: 1, tent: 1, quarter: 1, three-quarter: 1, back: 1, double-running: 1,
               satin: 1, knot: 1, long-armed: 1, rice: 1, eyelet: 1, four-sided: 1, satin-block: 1, hem: 1, queen: 1,
               other: {count: 1, each: 3 cm}}}
            - {code: K17, stitches: {long-armed: 60, rice: 24, eyelet: 18, four-sided: 36, satin-block: 9, hem: 40, queen: 7}}
            - {code: H21, skein: hand-dyed,
               stitches: {cross: {count: 900, worked: singly}, satin: {count: 96, span: 6}, other: {count: 12, each: 3 cm}}}""",
            "saltings.csv");
    private static final Key<Void> PARTS = KEYS.list("parts", PART, """
            - {part: Verse, over: 1, stitches: 60 x 24, threads: [{code: S09, stitches: {cross: 1420}}]}
            - {part: Date, over: 1, threads: date.csv}""");
    private static final Key<Amount> COVERAGE = KEYS.may("coverage", new AmountText(), "70%", "2310");
    static final Key<Amount> PROGRESS = KEYS.may("progress", new AmountText(), ProgressReader.PROGRESS,
            "{started: 2026-02-14, stitched: 2027-01-02, finished: 2027-01-06, done: 100%,"
                    + " log: [{on: 2026-03-01, hours: 2.5, stitches: 260}]}",
            "{readings: [{on: 2026-04-01, done: 45%}], log: [{on: 2026-04-09, hours: 2, unpicked: 20, note: Second page}],"
                    + " states: [{on: 2026-05-01, is: resting}]}", "780");
    static final Key<Void> GOAL = KEYS.may("goal", ProgressReader.GOAL);
    private static final Key<String> SOURCE = KEYS.may("source", new TextForm("Quarterly 14"));
    private static final Key<String> BAG = KEYS.may("bag", new TextForm("blue bag"));

    /**
     * Chart keys are counted by people: a few stitches more than the chart has are no contradiction, twice as many are a percent sign
     * left out.
     */
    private static final int SURELY_MORE = 2;

    private final Settings settings;
    private final Tables tables;
    private final SharedValues recurring;
    private final SharedTables shared;
    private final Problems problems;

    public PieceReader(Settings settings, Tables tables, Problems problems) {
        this(settings, tables, new SharedValues(), new SharedTables(), problems);
    }

    /** A reader of pieces that share threads and tables with others. */
    public PieceReader(Settings settings, Tables tables, SharedValues recurring, SharedTables shared, Problems problems) {
        this.settings = settings;
        this.tables = tables;
        this.recurring = recurring;
        this.shared = shared;
        this.problems = problems;
    }

    /**
     * What came of a document.
     *
     * @param title what the piece is called, if that could be read, and where that stands
     * @param piece present unless something that must be there is missing or wrong
     */
    record FoundPiece(String id, Optional<String> title, Spot titleSpot, Optional<Piece> piece) {
    }

    public FoundPiece read(Node document, String id) {
        Optional<Fields> fields = Fields.of(document, KEYS, problems);
        Optional<String> title = fields.flatMap(f -> f.value(TITLE));
        Place titlePlace = fields.map(f -> f.placeOf("piece")).orElse(document.place());
        // Kept until all pieces are read, when a great many texts would lie in memory.
        return new FoundPiece(id, title, titlePlace.spot(), fields.flatMap(f -> read(f, id, title)));
    }

    private Optional<Piece> read(Fields fields, String id, Optional<String> title) {
        Optional<String> designer = recurring.words(fields.value(DESIGNER));
        Optional<ChartSize> stitches = fields.value(STITCHES);
        Optional<Cloth> cloth = fields.node(CLOTH)
                .flatMap(new ClothReader(settings.clothsOnHand(), problems)::read).map(recurring::cloth);
        Optional<Finish> finish = fields.value(FINISH);
        MarginReader.Around around = new MarginReader(problems).read(fields, finish);
        Shares shares = new Shares();
        List<CalledThread> threads = threads(fields, THREADS, new TableRows.Owner(id, Optional.empty()), shares);
        List<Part> parts = parts(fields, id, shares, stitches.flatMap(chart -> cloth.map(on -> new Design(chart, on.over()))));
        shares.check(problems);
        Optional<Amount> coverage = fields.value(COVERAGE);
        long crosses = Stream.concat(threads.stream(), parts.stream().flatMap(part -> part.threads().stream())).mapToLong(CrossSum::crosses)
                .sum();
        if (coverage.isPresent() && coverage.get() instanceof Amount.Stitches written && crosses > SURELY_MORE * written.number()) {
            fields.wrong("coverage", Fault.of("coverage.fewer", written.number(), crosses));
        }
        stitches.flatMap(chart -> cloth.flatMap(on -> CrossSum.wrong(chart, on, threads)))
                .ifPresent(fault -> fields.wrong("stitches", fault));
        ProgressReader record = new ProgressReader(problems);
        OptionalLong most = stitches.isPresent() && cloth.isPresent()
                ? OptionalLong.of(MostStitches.of(stitches.get(), cloth.get(), threads, parts, coverage)) : OptionalLong.empty();
        Progress progress = record.progress(fields, most);
        if (cloth.isPresent() && progress.begun()) {
            fields.node(CLOTH).flatMap(ClothReader::saidUncut)
                    .ifPresent(place -> problems.add(place, Fault.of(ClothReader.UNCUT)));
        }
        Goal goal = record.goal(fields);
        return title.flatMap(t -> stitches.flatMap(s -> cloth.map(c -> new Piece(id, t, designer, s, c, finish,
                recurring.margins(around.margins()), around.given(), threads, parts, coverage, progress, goal,
                new Keeping(fields.value(SOURCE), fields.value(BAG))))));
    }

    private List<CalledThread> threads(Fields fields, Key<Void> key, TableRows.Owner owner, Shares shares) {
        Optional<Node> node = fields.node(key);
        Optional<Node.Scalar> table = node.flatMap(TableFinder::named);
        if (table.isPresent()) {
            return tables.find(table.get(), "threads", "fog-bell.csv").map(file -> shared.rows(file, settings, recurring))
                    .map(rows -> taken(rows, owner, table.get().place(), shares)).orElseGet(List::of);
        }
        List<Node> list = node.map(items -> fields.itemsOrTable(items, key)).orElseGet(List::of);
        return shared.roomFor(list.size()) ? new ThreadReader(settings, recurring, shares, problems).read(list) : List.of();
    }

    private List<CalledThread> taken(TableRows rows, TableRows.Owner owner, Place place, Shares shares) {
        Optional<TableRows.Taken> taken = rows.take(owner);
        if (taken.isEmpty() && rows.named()) {
            problems.add(place, Fault.of(owner.part().isEmpty() ? "table.no-row" : "table.no-row.part", owner.told()));
        }
        taken.ifPresent(own -> shares.addAll(own.shares()));
        return shared.counted(taken.map(TableRows.Taken::threads).orElseGet(List::of));
    }

    private List<Part> parts(Fields piece, String id, Shares shares, Optional<Design> design) {
        List<Part> parts = new ArrayList<>();
        for (Node node : piece.list(PARTS)) {
            Fields.of(node, PART, problems).flatMap(fields -> part(fields, id, shares, design))
                    .ifPresent(parts::add);
        }
        return parts;
    }

    private Optional<Part> part(Fields fields, String id, Shares shares, Optional<Design> design) {
        Optional<String> title = fields.value(PART_TITLE);
        Optional<Integer> over = fields.value(PART_OVER);
        Optional<ChartSize> stitches = fields.value(PART_STITCHES);
        design.flatMap(whole -> over.flatMap(o -> stitches.flatMap(s -> whole.tooLarge(s, o))))
                .ifPresent(fault -> fields.wrong("stitches", fault));
        List<CalledThread> threads = threads(fields, PART_THREADS, new TableRows.Owner(id, title.or(() -> Optional.of(""))), shares);
        return title.flatMap(t -> over.map(o -> new Part(t, o, stitches, threads)));
    }
}
