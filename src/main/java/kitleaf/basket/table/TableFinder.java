package kitleaf.basket.table;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import kitleaf.basket.form.TableName;
import kitleaf.basket.key.Fields;
import kitleaf.basket.place.BasketFiles;
import kitleaf.basket.place.Fault;
import kitleaf.basket.place.LinkGuard;
import kitleaf.basket.place.Problems;
import kitleaf.basket.place.Quote;
import kitleaf.basket.place.SourceReader;
import kitleaf.basket.place.WorkbookName;
import kitleaf.basket.yaml.Node;

/**
 * Finds the table a file names: beside that file first, then from the top of the basket.
 * Whatever a file says, nothing outside the basket is opened.
 *
 * @param beside the folder of the file that names tables, as she would call it
 * @param top the folder nothing outside of is opened, as she would call it
 * @param found takes where each really lies that is found; may be asked from several readers at a time
 */
public record TableFinder(Path beside, Path top, Set<Path> found, Problems problems) implements Tables {

    /** One that keeps no record of what it finds. */
    public TableFinder(Path beside, Path top, Problems problems) {
        this(beside, top, ConcurrentHashMap.newKeySet(), problems);
    }

    /** The value that names a table, if a node is one: anything else is left to be read as a list. */
    public static Optional<Node.Scalar> named(Node node) {
        return node instanceof Node.Scalar scalar && TableName.names(scalar.text()) ? Optional.of(scalar) : Optional.empty();
    }

    @Override
    public Optional<TableFile> find(Node.Scalar value, String key, String example) {
        Optional<String> text = Fields.scalar(value, Fields.key(key), new TableName(example), problems);
        if (text.isEmpty()) {
            return Optional.empty();
        }
        try {
            // Of one name, so that a table two pieces share is known to be one.
            Path given = Path.of(WorkbookName.file(text.get())).normalize();
            if (given.isAbsolute() || text.get().matches("[/\\\\].*|[A-Za-z]:.*") || text.get().matches("(.*[/\\\\])?\\.\\.([/\\\\].*)?")) {
                problems.add(value.place(), Fault.of("table.outside", Quote.bare(text.get())));
                return Optional.empty();
            }
            Path there = Files.exists(beside.resolve(given)) ? beside.resolve(given) : top.resolve(given);
            if (!Files.exists(there)) {
                problems.add(value.place(), Fault.of("table.no-file", Quote.bare(text.get())));
                return Optional.empty();
            }
            Optional<Path> real = LinkGuard.round(top).real(there);
            if (real.isEmpty()) {
                problems.add(value.place(), Fault.of("table.link", Quote.bare(text.get())));
            }
            real.ifPresent(found::add);
            return real.map(file -> new TableFile(file, BasketFiles.shown(there), WorkbookName.sheet(text.get())));
        } catch (InvalidPathException e) {
            problems.add(value.place(), Fault.of("table.name", Quote.bare(text.get()), example));
        } catch (IOException e) {
            problems.add(SourceReader.unreadable(BasketFiles.shown(top.resolve(text.get())), e));
        }
        return Optional.empty();
    }
}
