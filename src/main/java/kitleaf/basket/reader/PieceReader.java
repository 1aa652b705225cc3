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
import kitleaf.basket.Part;
import kitleaf.basket.Piece;
import kitleaf.basket.Progress;
import kitleaf.basket.cloth.Cloth;
import kitleaf.basket.form.AmountText;
import kitleaf.basket.form.ChartText;
import kitleaf.basket.form.Choice;
import kitleaf.basket.form.TextForm;
import kitleaf.basket.key.Fields;
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
import kitleaf.words.Said;

/** Reads one piece from one document. */
public final class PieceReader {

    private static final List<String> KEYS = List.of("piece", "designer", "stitches", "cloth", "margin", "finish",
            "threads", "parts", "coverage", "progress", "goal");
    private static final List<String> PART_KEYS = List.of("part", "over", "stitches", "threads");
    /**
     * Chart keys are counted by people: a few stitches more than the chart has are no contradiction, twice as many are a percent sign
     * left out.
     */
    private static final int SURELY_MORE = 2;
    private static final String PART_EXAMPLE = "- {part: Verse, over: 1, stitches: 60 x 24}";

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
    record ReadPiece(String id, Optional<String> title, Spot titleSpot, Optional<Piece> piece) {
    }

    public ReadPiece read(Node document, String id) {
        Optional<Fields> fields = Fields.of(document, Said.of("thing.piece"), "piece: Fog bell, and so on", KEYS, problems);
        Optional<String> title = fields.flatMap(f -> f.required("piece", new TextForm("Fog bell")));
        Place titlePlace = fields.map(f -> f.placeOf("piece")).orElse(document.place());
        // Kept until all pieces are read, when a great many texts would lie in memory.
        return new ReadPiece(id, title, titlePlace.spot(), fields.flatMap(f -> read(f, id, title)));
    }

    private Optional<Piece> read(Fields fields, String id, Optional<String> title) {
        Optional<String> designer = recurring.words(fields.value("designer", new TextForm("Ottoline Marsh")));
        Optional<ChartSize> stitches = fields.required("stitches", new ChartText());
        Optional<Cloth> cloth = fields.requiredNode("cloth", ClothReader.EXAMPLE)
                .flatMap(new ClothReader(settings.clothsOnHand(), problems)::read).map(recurring::cloth);
        Optional<Finish> finish = fields.value("finish", Choice.of("choice.finish", Finish.class));
        MarginReader.Around around = new MarginReader(problems).read(fields, finish);
        Shares shares = new Shares();
        List<CalledThread> threads = threads(fields, new TableRows.Owner(id, Optional.empty()), shares);
        List<Part> parts = parts(fields, id, shares, stitches.flatMap(chart -> cloth.map(on -> new Design(chart, on.over()))));
        shares.check(problems);
        Optional<Amount> coverage = fields.value("coverage", new AmountText());
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
            fields.node("cloth", ClothReader.EXAMPLE).flatMap(ClothReader::saidUncut)
                    .ifPresent(place -> problems.add(place, Fault.of(ClothReader.UNCUT)));
        }
        Goal goal = record.goal(fields);
        return title.flatMap(t -> stitches.flatMap(s -> cloth.map(c -> new Piece(id, t, designer, s, c, finish,
                recurring.margins(around.margins()), around.given(), threads, parts, coverage, progress, goal))));
    }

    private List<CalledThread> threads(Fields fields, TableRows.Owner owner, Shares shares) {
        Optional<Node> node = fields.node("threads", ThreadReader.EXAMPLE);
        Optional<Node.Scalar> table = node.flatMap(TableFinder::named);
        if (table.isPresent()) {
            return tables.find(table.get(), "threads", "fog-bell.csv").map(file -> shared.rows(file, settings, recurring))
                    .map(rows -> taken(rows, owner, table.get().place(), shares)).orElseGet(List::of);
        }
        List<Node> list = node.map(items -> fields.itemsOrTable(items, "threads", ThreadReader.EXAMPLE)).orElseGet(List::of);
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
        for (Node node : piece.list("parts", PART_EXAMPLE)) {
            Fields.of(node, Said.of("thing.part"), PART_EXAMPLE, PART_KEYS, problems).flatMap(fields -> part(fields, id, shares, design))
                    .ifPresent(parts::add);
        }
        return parts;
    }

    private Optional<Part> part(Fields fields, String id, Shares shares, Optional<Design> design) {
        Optional<String> title = fields.required("part", new TextForm("Verse"));
        Optional<Integer> over = fields.required("over", ClothReader.OVER);
        Optional<ChartSize> stitches = fields.value("stitches", new ChartText());
        design.flatMap(whole -> over.flatMap(o -> stitches.flatMap(s -> whole.tooLarge(s, o))))
                .ifPresent(fault -> fields.wrong("stitches", fault));
        List<CalledThread> threads = threads(fields, new TableRows.Owner(id, title.or(() -> Optional.of(""))), shares);
        return title.flatMap(t -> over.map(o -> new Part(t, o, stitches, threads)));
    }
}
