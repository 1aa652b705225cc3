package kitleaf.basket.reader.row;

import java.io.IOException;
import java.nio.file.DirectoryIteratorException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Set;
import java.util.TreeSet;
import kitleaf.basket.form.TableName;
import kitleaf.basket.place.BasketFiles;
import kitleaf.basket.place.Fault;
import kitleaf.basket.place.Problems;

/** Tells of tables that lie in a basket and are used by nobody, which she may well believe to be. */
public final class UnusedTables {

    /** Written by ourselves, perhaps right here. */
    private static final String BUY_LIST = "buy-list.csv";

    private UnusedTables() { }

    /**
     * Tells of those in the basket's folder and in that of its pieces.
     *
     * @param used where the tables that were found really lie
     */
    public static void tell(Path basket, Set<Path> used, Problems problems) {
        for (Path folder : new Path[] {basket, basket.resolve(BasketFiles.PIECES)}) {
            Set<Path> unused = new TreeSet<>();
            try (DirectoryStream<Path> files = Files.newDirectoryStream(folder)) {
                for (Path file : files) {
                    String name = file.getFileName().toString();
                    // Those with such a beginning are made by programs while she works, and taken away again.
                    boolean hers = TableName.names(name) && !name.startsWith(".") && !name.startsWith("~$") && !name.equals(BUY_LIST);
                    if (hers && Files.isRegularFile(file) && !used.contains(file.toRealPath())) {
                        unused.add(file);
                    }
                }
            } catch (IOException | DirectoryIteratorException unreadable) {
                // Whoever reads the basket's own files tells more.
                continue;
            }
            unused.forEach(file -> problems.remark(BasketFiles.shown(file), Fault.of("table.unused")));
        }
    }
}
