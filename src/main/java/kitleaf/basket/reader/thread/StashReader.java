package kitleaf.basket.reader.thread;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import kitleaf.basket.form.Form;
import kitleaf.basket.form.NumberText;
import kitleaf.basket.form.PutUpName;
import kitleaf.basket.form.TextForm;
import kitleaf.basket.key.Fields;
import kitleaf.basket.key.Key;
import kitleaf.basket.key.Keys;
import kitleaf.basket.place.Fault;
import kitleaf.basket.place.Problems;
import kitleaf.basket.place.Quote;
import kitleaf.basket.reader.SettingsReader;
import kitleaf.basket.table.CsvTable;
import kitleaf.basket.table.Headings;
import kitleaf.basket.table.TableFinder;
import kitleaf.basket.table.Tables;
import kitleaf.basket.thread.PutUp;
import kitleaf.basket.thread.StashEntry;
import kitleaf.basket.yaml.Node;

/** Reads the thread she has already. */
public final class StashReader {

    public static final Keys KEYS = Keys.of("thing.stash-entry", "- {code: K12, skein: cotton, skeins: 1.5, lot: \"7\"}");
    private static final Key<String> CODE = KEYS.must("code", new TextForm("K12"));
    private static final Key<String> SKEIN = KEYS.may("skein", PutUpName.ANY);
    private static final Key<Double> SKEINS = KEYS.must("skeins", new NumberText(0, true, 1000, "stash.skeins", "1.5"));
    private static final Key<String> LOT = KEYS.may("lot", new TextForm("7 B"), "\"7\"");

    private static final CsvTable.Shape TABLE = new CsvTable.Shape("stash", new Headings("stash", List.copyOf(KEYS.names()))
            .also("skeins", "number of skeins"), List.of("code", "skeins"), Set.of("skeins"), "code,skein,skeins,lot");

    private final Form<String> putUpName;
    private final Tables tables;
    private final Problems problems;

    public StashReader(PutUpName putUpName, Tables tables, Problems problems) {
        this.putUpName = putUpName;
        this.tables = tables;
        this.problems = problems;
    }

    /** What tells one entry from another. */
    private record Kind(String code, String skein, Optional<String> lot) {
    }

    /** The entries that could be read, in their order. */
    public List<StashEntry> read(Fields basket) {
        List<StashEntry> stash = new ArrayList<>();
        Set<Kind> seen = new HashSet<>();
        for (Node node : nodes(basket)) {
            Fields.of(node, KEYS, problems).flatMap(fields -> entry(fields, seen))
                    .ifPresent(stash::add);
        }
        return stash;
    }

    private List<? extends Node> nodes(Fields basket) {
        Optional<Node> node = basket.node(SettingsReader.STASH);
        Optional<Node.Scalar> table = node.flatMap(TableFinder::named);
        if (table.isPresent()) {
            return tables.find(table.get(), "stash", "stash.csv")
                    .flatMap(file -> file.read(problems)).map(source -> new CsvTable(source, TABLE, problems).read()).orElseGet(List::of);
        }
        return node.map(list -> basket.itemsOrTable(list, SettingsReader.STASH)).orElseGet(List::of);
    }

    private Optional<StashEntry> entry(Fields fields, Set<Kind> seen) {
        Optional<String> code = fields.value(CODE);
        Optional<String> skein = fields.meant("skein") ? fields.value(SKEIN, putUpName) : Optional.of(PutUp.COTTON.name());
        Optional<Double> skeins = fields.value(SKEINS);
        Optional<String> lot = fields.value(LOT);
        Optional<Kind> kind = lot.isEmpty() && fields.meant("lot") ? Optional.empty()
                : code.flatMap(c -> skein.map(s -> new Kind(c, s, lot)));
        kind.filter(k -> !seen.add(k)).ifPresent(k -> fields.wrong("code", twice(k)));
        return kind.flatMap(k -> skeins.map(number -> new StashEntry(k.code(), k.skein(), number, k.lot())));
    }

    private static Fault twice(Kind kind) {
        String code = Quote.bare(kind.code());
        String skein = Quote.bare(kind.skein());
        return kind.lot().map(lot -> Fault.of("stash.twice.lot", code, skein, Quote.bare(lot)))
                .orElseGet(() -> Fault.of("stash.twice", code, skein));
    }
}
