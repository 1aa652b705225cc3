package kitleaf.basket.reader;

import java.nio.file.AccessDeniedException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Function;
import java.util.stream.Stream;
import kitleaf.basket.Basket;
import kitleaf.basket.Piece;
import kitleaf.basket.place.BasketFiles;
import kitleaf.basket.place.Fault;
import kitleaf.basket.place.LinkGuard;
import kitleaf.basket.place.Place;
import kitleaf.basket.place.Problem;
import kitleaf.basket.place.Problems;
import kitleaf.basket.place.Quote;
import kitleaf.basket.place.Source;
import kitleaf.basket.place.SourceReader;
import kitleaf.basket.place.Spot;
import kitleaf.basket.place.Visible;
import kitleaf.basket.key.Fields;
import kitleaf.basket.reader.row.BasketTables;
import kitleaf.basket.reader.row.LogTable;
import kitleaf.basket.reader.row.PieceTable;
import kitleaf.basket.reader.row.UnusedTables;
import kitleaf.basket.reader.thread.SharedTables;
import kitleaf.basket.reader.thread.SharedValues;
import kitleaf.basket.table.TableFile;
import kitleaf.basket.table.TableFinder;
import kitleaf.basket.yaml.LanguageLine;
import kitleaf.basket.yaml.Node;
import kitleaf.basket.yaml.YamlTree;

/** Reads baskets. */
public final class BasketReader {

    /** From so many files on it is worth reading them side by side. */
    private static final int MANY = 50;

    private Problems problems = new Problems();
    private final List<PieceReader.FoundPiece> pieces = new ArrayList<>();
    private final SharedTables tables = new SharedTables();
    /** Whether every piece she has is among those read; if not, a name that is not among them may still be right. */
    private boolean allPieces = true;

    private final Optional<Locale> asked;
    private Optional<Locale> language;
    private Misfits misfits = Misfits.NONE;
    private final Set<Path> used = ConcurrentHashMap.newKeySet();
    private BasketTables kept = BasketTables.NONE;
    private LogTable log = LogTable.NONE;
    private Optional<Source> logged = Optional.empty();

    private BasketReader(Optional<Locale> asked) {
        this.asked = asked;
        this.language = asked;
    }

    /**
     * The basket at a place, or every problem in it. A folder is read as {@code basket.yaml}, which may be
     * missing, and {@code pieces/*.yaml}, of which there must be one. A single piece file is read as a basket of
     * its own, with the settings of the basket whose {@code pieces} folder it lies in, if it does.
     *
     * @param where a basket folder or a piece file ending in {@code .yaml}; problems name files from here
     */
    public static Reading read(Path where) {
        return read(where, Optional.empty());
    }

    /**
     * The same in a language asked for, whatever the basket says of it: what it leaves out of units and paper is then
     * what is usual there.
     */
    public static Reading read(Path where, Optional<Locale> asked) {
        BasketReader reader = new BasketReader(asked);
        Optional<Basket> basket = reader.basket(where);
        return reader.reading(basket);
    }

    /** A basket folder as it would be with other bytes in its table of the log, whether it has that yet or not. */
    public static Reading logged(Path basket, byte[] log, Path name) {
        BasketReader reader = new BasketReader(Optional.empty());
        reader.logged = SourceReader.table(log, name, reader.problems);
        Optional<Basket> read = reader.basket(basket);
        return reader.reading(read);
    }

    /** The table a basket folder keeps its log in, if there is one. */
    public static Optional<TableFile> logTable(Path basket) {
        BasketReader reader = new BasketReader(Optional.empty());
        reader.settings(basket);
        return reader.kept.log();
    }

    private Reading reading(Optional<Basket> basket) {
        return new Reading(problems.none() ? basket : Optional.empty(), problems.all(), misfits, language);
    }

    /** The language a basket folder names, for who needs no more of it; nothing where none is named or the file cannot be read. */
    public static Optional<Locale> language(Path basket) {
        Path file = basket.resolve(BasketFiles.SETTINGS);
        Problems untold = new Problems();
        return Files.exists(file) ? SourceReader.read(LinkGuard.round(basket), file, untold).flatMap(LanguageLine::in) : Optional.empty();
    }

    /** The pieces of one file as they would be with other bytes in it, with the settings of their basket. */
    public static Reading read(PieceFile where, byte[] bytes) {
        BasketReader reader = new BasketReader(Optional.empty());
        Path own = where.file().getParent() == null ? Path.of("") : where.file().getParent();
        Settings settings = where.basket().map(reader::settings).orElse(Settings.USUAL);
        SourceReader.decode(bytes, BasketFiles.shown(where.file()), reader.problems)
                .ifPresent(source -> reader.gather(
                        reader.pieces(where.file(), source, where.basket().orElse(own), settings, new SharedValues())));
        reader.allPieces = false;
        Optional<Basket> basket = reader.finish(BasketFiles.shown(where.file()), settings, Optional.empty());
        return reader.reading(basket);
    }

    private Optional<Basket> basket(Path where) {
        if (Files.isDirectory(where)) {
            return folder(where);
        }
        if (!where.toString().endsWith(BasketFiles.ENDING)) {
            problems.add(BasketFiles.shown(where), Fault.of(Files.exists(where) ? "file.neither" : "file.missing"));
            return Optional.empty();
        }
        if (where.endsWith(BasketFiles.SETTINGS) && Files.exists(where.resolveSibling(BasketFiles.PIECES))) {
            problems.add(BasketFiles.shown(where), Fault.of("file.settings"));
            return Optional.empty();
        }
        return pieceFile(where);
    }

    private Optional<Basket> folder(Path basket) {
        if (!Files.isReadable(basket) || !Files.isExecutable(basket)) {
            problems.add(SourceReader.unreadable(BasketFiles.shown(basket), new AccessDeniedException(basket.toString())));
            return Optional.empty();
        }
        Settings settings = settings(basket);
        Problems naming = new Problems();
        LinkGuard fence = LinkGuard.round(basket);
        List<Path> files = BasketFiles.pieces(basket, fence, naming);
        naming.all().forEach(problems::add);
        allPieces = naming.none();
        SharedValues recurring = new SharedValues();
        // Side by side where that pays; gathered in order, so that what is told does not depend on it.
        Function<Path, FoundFile> reader = file -> pieces(file, basket, fence, settings, recurring);
        (files.size() < MANY ? files.stream().map(reader) : SideBySide.map(files, reader)).forEach(this::gather);
        List<PieceTable.Row> rows = kept.readPieces(problems);
        gather(rows(rows, basket, settings, recurring));
        if (files.isEmpty() && rows.isEmpty() && problems.none()) {
            problems.add(BasketFiles.shown(basket), Fault.of("file.no-pieces"));
        }
        if (problems.none()) {
            UnusedTables.tell(basket, used, problems);
        }
        Path name = basket.toAbsolutePath().normalize().getFileName();
        return finish(BasketFiles.shown(basket), settings,
                Optional.ofNullable(name).map(Path::toString).filter(title -> !Visible.nothing(title)));
    }

    /** The pieces of the basket's table; all are lost where no row could be read of one that is there. */
    private FoundFile rows(List<PieceTable.Row> rows, Path basket, Settings settings, SharedValues recurring) {
        Problems found = new Problems();
        PieceReader reader = new PieceReader(settings, new TableFinder(basket, basket, used, found), recurring, tables, found);
        return new FoundFile(rows.stream().map(row -> reader.read(log.with(row.document(), row.id()), row.id())).toList(), found.all(),
                !rows.isEmpty() || kept.pieces().isEmpty());
    }

    private Optional<Basket> pieceFile(Path file) {
        Optional<Path> basket = BasketFiles.basketOf(file);
        Settings settings = basket.map(this::settings).orElseGet(this::usual);
        Path own = file.getParent() == null ? Path.of("") : file.getParent();
        gather(pieces(file, basket.orElse(own), LinkGuard.of(file), settings, new SharedValues()));
        allPieces = false;
        return finish(BasketFiles.shown(file), settings, pieces.stream().flatMap(piece -> piece.title().stream()).findFirst());
    }

    /** What holds for a basket folder; the tables it has are found beside. */
    private Settings settings(Path basket) {
        Path file = basket.resolve(BasketFiles.SETTINGS);
        Optional<Source> source = Files.exists(file) ? SourceReader.read(LinkGuard.round(basket), file, problems) : Optional.empty();
        language = asked.or(() -> source.flatMap(LanguageLine::in));
        YamlTree.Documents read = source.map(text -> YamlTree.read(text, problems))
                .orElse(new YamlTree.Documents(List.of(), !Files.exists(file)));
        Optional<Node> document = read.documents().stream().findFirst().filter(first -> read.whole());
        kept = BasketTables.of(basket, document.flatMap(first -> Fields.of(first, SettingsReader.KEYS, problems)), SettingsReader.PIECES,
                SettingsReader.LOG, used, problems);
        log = logged.map(text -> LogTable.read(text, problems)).orElseGet(() -> kept.readLog(problems));
        if (document.isEmpty()) {
            // All settings are optional, so a file of remarks says nothing wrong.
            return read.whole() ? usual() : Settings.UNREAD;
        }
        if (read.documents().size() > 1) {
            problems.add(read.documents().get(1).place(), Fault.of("document.second"));
        }
        misfits = Misfits.in(document.get());
        return new SettingsReader(asked, new TableFinder(basket, basket, used, problems), problems).read(document.get());
    }

    private Settings usual() {
        return asked.map(Settings.USUAL::speaking).orElse(Settings.USUAL);
    }

    /**
     * What came of one file. All files wait until the last is read, so it has nothing in it that is empty.
     *
     * @param whole whether no piece in it was lost
     */
    private record FoundFile(List<PieceReader.FoundPiece> pieces, List<Problem> problems, boolean whole) {

        /** A file of which no piece was read. */
        static FoundFile lost(Problems problems) {
            return new FoundFile(List.of(), problems.all(), false);
        }
    }

    private void gather(FoundFile file) {
        pieces.addAll(file.pieces());
        file.problems().forEach(problems::add);
        allPieces &= file.whole();
    }

    /** Reads one file, unless a link leads out of the fence; what it shares with other files may be asked side by side. */
    private FoundFile pieces(Path file, Path top, LinkGuard fence, Settings settings, SharedValues recurring) {
        Problems found = new Problems();
        return SourceReader.read(fence, file, found).map(source -> pieces(file, source, top, settings, recurring))
                .orElseGet(() -> FoundFile.lost(found));
    }

    private FoundFile pieces(Path file, Source source, Path top, Settings settings, SharedValues recurring) {
        Problems found = new Problems();
        List<PieceReader.FoundPiece> inFile = new ArrayList<>();
        Path beside = file.getParent() == null ? Path.of("") : file.getParent();
        PieceReader reader = new PieceReader(settings, new TableFinder(beside, top, used, found), recurring, tables, found);
        YamlTree.Documents read = YamlTree.read(source, found);
        if (read.documents().isEmpty() && read.whole()) {
            found.add(source.name(), Fault.of("file.empty"));
        }
        boolean whole = read.whole() && !read.documents().isEmpty();
        int number = 0;
        for (Node document : read.documents()) {
            number++;
            if (document instanceof Node.Scalar scalar && scalar.missing()) {
                found.add(opening(document.place()), Fault.of("document.empty"));
                whole = false;
                continue;
            }
            String id = BasketFiles.id(file, number);
            inFile.add(reader.read(log.with(document, id), id));
        }
        return new FoundFile(List.copyOf(inFile), found.all(), whole);
    }

    /** The {@code ---} that opens an empty document, which itself is nowhere. */
    private static Place opening(Place document) {
        for (int line = document.line() - 1; line >= 1; line--) {
            if (document.source().line(line).orElse("").startsWith("---")) {
                return new Place(document.source(), line, 1, 3);
            }
        }
        return document;
    }

    private Optional<Basket> finish(Path where, Settings settings, Optional<String> usualTitle) {
        if (tables.tooMany()) {
            problems = new Problems();
            problems.add(where, Fault.of("basket.most-threads", SharedTables.MOST_THREADS));
            return Optional.empty();
        }
        tables.tell(problems);
        told("piece.same-id", PieceReader.FoundPiece::id, piece -> Visible.of(piece.id()));
        Function<PieceReader.FoundPiece, String> title = piece -> piece.title().orElse("");
        told("piece.same-title", title, title.andThen(text -> text.toLowerCase(Locale.ROOT)));
        if (allPieces && !pieces.isEmpty()) {
            List<String> ids = pieces.stream().map(PieceReader.FoundPiece::id).sorted().toList();
            settings.goals().check(ids, problems);
            tables.check(ids, problems);
            log.check(pieces.stream().flatMap(piece -> Stream.concat(Stream.of(piece.id()), piece.title().stream())).distinct().sorted()
                    .toList(), problems);
        }
        if (!problems.none()) {
            return Optional.empty();
        }
        List<Piece> read = pieces.stream().flatMap(piece -> piece.piece().stream())
                .sorted(Comparator.comparing(Piece::id)).toList();
        return Optional.of(basket(settings, settings.title().or(() -> usualTitle).orElse("Basket"), read));
    }

    /** The basket of these settings and pieces. */
    static Basket basket(Settings settings, String title, List<Piece> pieces) {
        return new Basket(title, settings.language(), settings.paper(), settings.units(),
                settings.largePrint(), settings.printer(), settings.cutStepMm(), List.copyOf(settings.putUps().values()),
                settings.stash(), settings.prices(), settings.labelStock(), settings.tags(), settings.clothSupply(),
                settings.pace(), settings.timeOff(), settings.goals().goals(), pieces);
    }

    /**
     * Tells of pieces that share what must be their own.
     *
     * @param own what a piece has, as it is told
     * @param same what is compared; nothing is told of empty texts
     */
    private void told(String fault, Function<PieceReader.FoundPiece, String> own, Function<PieceReader.FoundPiece, String> same) {
        Map<String, Spot> seen = new HashMap<>();
        for (PieceReader.FoundPiece piece : pieces) {
            String text = own.apply(piece);
            Spot first = text.isEmpty() ? null : seen.putIfAbsent(same.apply(piece), piece.titleSpot());
            if (first != null) {
                problems.add(piece.titleSpot().problem(Fault.of(fault, Quote.bare(text),
                        Quote.visible(first.file().toString()), first.line())));
            }
        }
    }
}
