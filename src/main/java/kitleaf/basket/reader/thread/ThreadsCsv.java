package kitleaf.basket.reader.thread;

import java.io.IOException;
import java.io.Writer;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import kitleaf.basket.Piece;
import kitleaf.basket.table.TableWriter;
import kitleaf.basket.thread.CalledThread;
import kitleaf.basket.thread.Colour;
import kitleaf.basket.thread.StitchCount;

/** Writes the threads of pieces as the table they could be read from. */
public final class ThreadsCsv {

    private ThreadsCsv() {
    }

    /**
     * Writes a table (see {@link TableWriter}) with a row for each thread of each piece and its parts,
     * and the columns that hold anything; {@code piece} is among them where there is more than one. Pieces that
     * name this table for their threads, and for those of their parts, get the same threads again.
     *
     * @param language whose spreadsheets it is for
     * @throws IOException if {@code to} cannot be written to
     */
    public static void write(List<Piece> pieces, Locale language, Writer to) throws IOException {
        TableWriter table = new TableWriter(to, language);
        List<Map<String, String>> rows = new ArrayList<>();
        for (Piece piece : pieces) {
            piece.threads().forEach(thread -> rows.add(cells(piece, "", thread, table)));
            piece.parts().forEach(part -> part.threads().forEach(thread -> rows.add(cells(piece, part.title(), thread, table))));
        }
        boolean several = rows.stream().map(row -> row.get(ThreadTable.PIECE)).distinct().count() > 1;
        List<String> columns = ThreadTable.COLUMNS.stream().filter(column -> column.equals("code")
                || (several || !column.equals(ThreadTable.PIECE)) && rows.stream().anyMatch(row -> !row.getOrDefault(column, "").isEmpty()))
                        .toList();
        table.row(columns);
        for (Map<String, String> row : rows) {
            table.row(columns.stream().map(column -> row.getOrDefault(column, "")).toList());
        }
    }

    private static Map<String, String> cells(Piece piece, String part, CalledThread thread, TableWriter table) {
        Map<String, String> cells = new HashMap<>();
        cells.put(ThreadTable.PIECE, piece.id());
        cells.put(ThreadTable.PART, part);
        cells.put("code", thread.code());
        cells.put("name", thread.name().orElse(""));
        cells.put("colour", thread.colour().map(Colour::hex).orElse(""));
        cells.put("symbol", thread.symbol().orElse(""));
        cells.put("skein", thread.skein());
        cells.put("strands", StrandsReader.cell(thread.strands(), thread.stitches()));
        thread.share().ifPresent(share -> cells.put("share", table.number(plain(BigDecimal.valueOf(share).movePointRight(2))) + "%"));
        thread.over().ifPresent(over -> cells.put("over", String.valueOf(over)));
        cells.put("lot", thread.lot().orElse(""));
        cells.put("mix-lots", thread.mixLots() ? "yes" : "");
        for (StitchCount stitches : thread.stitches()) {
            cells.put(stitches.kind().word(), String.valueOf(stitches.count()));
            stitches.worked().ifPresent(worked -> cells.put("cross-worked", word(worked)));
            stitches.span().ifPresent(span -> cells.put("satin-span", String.valueOf(span)));
            stitches.eachMm().ifPresent(mm -> cells.put("other-each", table.number(plain(BigDecimal.valueOf(mm))) + " mm"));
        }
        thread.used().ifPresent(used -> {
            cells.put("used-skeins", table.number(plain(BigDecimal.valueOf(used.skeins()))));
            cells.put("used-stitches", String.valueOf(used.stitches()));
        });
        return cells;
    }

    private static String word(Enum<?> constant) {
        return constant.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    private static String plain(BigDecimal number) {
        return number.stripTrailingZeros().toPlainString();
    }
}
