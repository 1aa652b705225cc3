package kitleaf.basket.edit;

import java.io.IOException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import kitleaf.basket.Piece;
import kitleaf.basket.Progress;
import kitleaf.basket.form.AmountText;
import kitleaf.basket.form.NumberText;
import kitleaf.basket.form.WrongValue;
import kitleaf.basket.place.BasketFiles;
import kitleaf.basket.place.Fault;
import kitleaf.basket.place.Problem;
import kitleaf.basket.place.Problems;
import kitleaf.basket.place.Source;
import kitleaf.basket.place.SourceReader;
import kitleaf.basket.place.WorkbookName;
import kitleaf.basket.reader.BasketReader;
import kitleaf.basket.reader.Reading;
import kitleaf.basket.reader.row.LogTable;
import kitleaf.basket.table.TableFile;

/** Adds news of a piece that stands in a table to the table of the log, as one line at its end. Her table of pieces is never written. */
public final class LogTableEdit {

    private static final String HEADINGS = "day,piece,hours,stitches,done,unpicked,note\r\n";

    private LogTableEdit() { }

    /** What comes of it; nothing is written here. */
    public static LogEdit of(Path basket, String id, News news) {
        try {
            return edit(basket, id, news);
        } catch (Fault fault) {
            return new LogEdit.Unfit(new WrongValue(fault));
        } catch (IOException e) {
            return new LogEdit.Broken(List.of(SourceReader.unreadable(BasketFiles.shown(basket), e)));
        }
    }

    private static LogEdit edit(Path basket, String id, News news) throws Fault, IOException {
        if (news.stitched().isPresent() || news.finished().isPresent()) {
            throw Fault.of("log-table.dates", id);
        }
        Optional<TableFile> table = BasketReader.logTable(basket);
        if (table.isPresent() && WorkbookName.is(table.get().file().toString())) {
            throw Fault.of("log-table.workbook", table.get().name().toString());
        }
        Path file = table.isPresent() ? table.get().real() : basket.toRealPath().resolve("log.csv");
        Path name = table.map(TableFile::name).orElseGet(() -> BasketFiles.shown(basket.resolve("log.csv")));
        Problems problems = new Problems();
        byte[] before = table.isPresent() ? SourceReader.bytes(file, name, problems).orElse(new byte[0]) : new byte[0];
        byte[] old = table.isPresent() ? before : HEADINGS.getBytes(StandardCharsets.UTF_8);
        Optional<Source> source = SourceReader.table(old, name, problems);
        Reading read = table.isPresent() ? BasketReader.logged(basket, old, name) : BasketReader.read(basket);
        if (source.isEmpty() || read.basket().isEmpty()) {
            return new LogEdit.Broken(Stream.concat(problems.all().stream(), read.problems().stream()).distinct().toList());
        }
        Piece was = read.basket().get().pieces().stream().filter(piece -> piece.id().equals(id)).findFirst().orElseThrow();
        if (news.entry().isPresent() && was.progress().done().isPresent()) {
            throw Fault.of("log-table.undated", AmountText.written(was.progress().done().get()), id);
        }
        byte[] after = ended(old, source.get().text(), LogTable.line(source.get(), cells(id, news)), name);
        Reading again = BasketReader.logged(basket, after, name);
        if (again.basket().isEmpty()) {
            Problem first = again.problems().get(0);
            throw Fault.of(first.wrong(), first.write());
        }
        Progress told = news.in(was.progress());
        Piece wanted = was.with(new Progress(told.started(), told.stitched(), told.finished(), was.progress().done(),
                was.progress().done().isPresent() ? told.readings().stream().filter(one -> news.reading().filter(one::equals).isPresent()
                        || was.progress().readings().contains(one)).toList() : told.readings(), told.log(), told.states()));
        List<Piece> pieces = read.basket().get().pieces().stream().map(piece -> piece.equals(was) ? wanted : piece).toList();
        if (!again.basket().get().pieces().equals(pieces)) {
            throw Fault.of("log-table.unsure", name.toString());
        }
        return new LogEdit.Ready(file, before, after, was, wanted);
    }

    private static Map<String, String> cells(String id, News news) {
        Map<String, String> cells = new LinkedHashMap<>();
        cells.put("on", news.days().get(0).toString());
        cells.put("piece", id);
        news.entry().ifPresent(entry -> {
            entry.hours().ifPresent(hours -> cells.put("hours", NumberText.written(hours)));
            entry.stitches().ifPresent(stitches -> cells.put("stitches", Integer.toString(stitches)));
            if (entry.unpicked() > 0) {
                cells.put("unpicked", Integer.toString(entry.unpicked()));
            }
            entry.note().ifPresent(note -> cells.put("note", note));
        });
        news.reading().ifPresent(reading -> cells.put("done", AmountText.written(reading.done())));
        return cells;
    }

    /** The bytes with a line added, in the letters and line breaks that are there. */
    private static byte[] ended(byte[] bytes, String text, String line, Path name) throws Fault {
        Charset charset = SourceReader.tableCharset(bytes);
        if (!charset.newEncoder().canEncode(line)) {
            throw Fault.of("log-table.letters", name.toString());
        }
        String end = text.contains("\r\n") || !text.contains("\n") ? "\r\n" : "\n";
        byte[] added = ((text.endsWith("\n") ? "" : end) + line + end).getBytes(charset);
        byte[] after = Arrays.copyOf(bytes, bytes.length + added.length);
        System.arraycopy(added, 0, after, bytes.length, added.length);
        return after;
    }
}
