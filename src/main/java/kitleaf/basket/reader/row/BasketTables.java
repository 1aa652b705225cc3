package kitleaf.basket.reader.row;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import kitleaf.basket.form.TableName;
import kitleaf.basket.key.Fields;
import kitleaf.basket.key.Key;
import kitleaf.basket.place.BasketFiles;
import kitleaf.basket.place.Fault;
import kitleaf.basket.place.LinkGuard;
import kitleaf.basket.place.Problems;
import kitleaf.basket.place.Source;
import kitleaf.basket.table.TableFile;
import kitleaf.basket.table.TableFinder;
import kitleaf.basket.table.Tables;
import kitleaf.basket.yaml.Node;

/**
 * The tables a basket folder keeps its pieces and its log in: those its settings name, else those that lie in it by these names.
 *
 * @param pieces the table of pieces
 * @param log the table of the log
 */
public record BasketTables(Optional<TableFile> pieces, Optional<TableFile> log) {

    /** A basket without any. */
    public static final BasketTables NONE = new BasketTables(Optional.empty(), Optional.empty());

    /**
     * Those of a basket folder.
     *
     * @param settings what its {@code basket.yaml} says, if there is one
     * @param used takes where they really lie
     */
    public static BasketTables of(Path basket, Optional<Fields> settings, Key<String> pieces, Key<String> log, Set<Path> used,
            Problems problems) {
        Tables tables = new TableFinder(basket, basket, used, problems);
        BasketTables found = new BasketTables(of(basket, settings, pieces, tables, problems), of(basket, settings, log, tables, problems));
        Stream.of(found.pieces, found.log).flatMap(Optional::stream).map(TableFile::real).forEach(used::add);
        return found;
    }

    private static Optional<TableFile> of(Path basket, Optional<Fields> settings, Key<String> key, Tables tables, Problems problems) {
        if (settings.isEmpty() || !settings.get().meant(key.name())) {
            return lying(basket, key.name(), problems);
        }
        // What is no name of a file is told by who reads the settings.
        return settings.get().node(key).filter(Node.Scalar.class::isInstance)
                .flatMap(name -> tables.find((Node.Scalar) name, key.name(), key.example()));
    }

    private static Optional<TableFile> lying(Path basket, String name, Problems problems) {
        List<Path> found = TableName.ENDINGS.stream().map(ending -> basket.resolve(name + ending)).filter(Files::isRegularFile).toList();
        if (found.size() > 1) {
            problems.add(BasketFiles.shown(found.get(1)), Fault.of("table.two-files", found.get(0).getFileName().toString(), name));
        }
        return found.stream().findFirst().flatMap(file -> LinkGuard.round(basket).find(file, problems)
                .map(real -> new TableFile(real, BasketFiles.shown(file), Optional.empty())));
    }

    /** The rows of pieces; none where there is no such table. */
    public List<PieceTable.Row> readPieces(Problems problems) {
        return read(pieces, problems).map(source -> new PieceTable(source, problems).read()).orElseGet(List::of);
    }

    /** The rows of the log. */
    public LogTable readLog(Problems problems) {
        return read(log, problems).map(source -> LogTable.read(source, problems)).orElse(LogTable.NONE);
    }

    private static Optional<Source> read(Optional<TableFile> table, Problems problems) {
        return table.flatMap(file -> file.read(problems));
    }
}
