package kitleaf.basket.reader;

import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Stream;
import kitleaf.basket.LabelStock;
import kitleaf.basket.Paper;
import kitleaf.basket.Price;
import kitleaf.basket.Printer;
import kitleaf.basket.Units;
import kitleaf.basket.form.Choice;
import kitleaf.basket.form.Form;
import kitleaf.basket.form.LanguageText;
import kitleaf.basket.form.LengthText;
import kitleaf.basket.form.Papers;
import kitleaf.basket.form.PutUpName;
import kitleaf.basket.form.TableName;
import kitleaf.basket.form.TextForm;
import kitleaf.basket.form.WholeText;
import kitleaf.basket.form.YesNo;
import kitleaf.basket.key.Fields;
import kitleaf.basket.key.Key;
import kitleaf.basket.key.Keys;
import kitleaf.basket.key.Value;
import kitleaf.basket.place.Fault;
import kitleaf.basket.place.Problems;
import kitleaf.basket.place.Quote;
import kitleaf.basket.reader.thread.StashReader;
import kitleaf.basket.table.Tables;
import kitleaf.basket.thread.PutUp;
import kitleaf.basket.thread.StashEntry;
import kitleaf.basket.yaml.Node;

/** Reads {@code basket.yaml}. */
public final class SettingsReader {

    private static final Keys PRINTER_KEYS = Keys.under("printer", "{measured-across: 99.3 mm, measured-down: 99.8 mm}");
    private static final Form<Double> BAR = new LengthText(Printer.LEAST_MM, Printer.MOST_MM, "printer.bar", "99.8 mm");
    private static final Key<Double> ACROSS = PRINTER_KEYS.may("measured-across", BAR, "99.3 mm");
    private static final Key<Double> DOWN = PRINTER_KEYS.may("measured-down", BAR);

    private static final Keys SKEIN = Keys.of("thing.skein", "{length: 5 m, plies: 7, lot-matters: yes}");
    private static final Key<Double> LENGTH = SKEIN.must("length", new LengthText(100, 10_000_000, "skein.length", "8 m"),
            "5 m", "6 m", "8 m");
    private static final Key<Integer> PLIES = SKEIN.must("plies", new WholeText(1, 24, "6"), "6", "7");
    private static final Key<Boolean> LOT_MATTERS = SKEIN.may("lot-matters", new YesNo());

    /** What {@code basket.yaml} may say. */
    public static final Keys KEYS = Keys.of("thing.basket", "title: My basket");
    private static final Key<String> TITLE = KEYS.may("title", new TextForm("Harbour basket"));
    static final Key<String> PIECES = KEYS.may("pieces", new TableName("pieces.csv"));
    static final Key<String> LOG = KEYS.may("log", new TableName("log.csv"));
    private static final Key<Locale> LANGUAGE = KEYS.may("language", new LanguageText());
    private static final Key<Paper> PAPER = KEYS.may("paper", Papers.form(), "A4", "210 mm x 320 mm");
    private static final Key<Units> UNITS = KEYS.may("units", Choice.of("choice.units", Units.class));
    private static final Key<Boolean> LARGE_PRINT = KEYS.may("large-print", new YesNo());
    private static final Key<Void> PRINTER = KEYS.may("printer", PRINTER_KEYS);
    private static final Key<Double> CUT_STEP = KEYS.may("cut-step", new LengthText(1, 2 * 25.4, "cut-step", "1/4 in"), "1/2 in");
    private static final Key<Void> SKEINS = KEYS.may("skeins", "{silk: " + SKEIN.example() + "}", Value.byName(SKEIN),
            "{hand-dyed: {length: 5 m, plies: 6, lot-matters: yes}, silk: {length: 6 m, plies: 7}}", "{silk: {length: 8 m, plies: 7}}");
    public static final Key<Void> STASH = KEYS.may("stash", StashReader.KEYS.example(),
            Value.either(Value.of(new TableName("stash.csv")), Value.list(StashReader.KEYS)), StashReader.KEYS.example(), "stash.csv");
    static final Key<Void> PRICES = KEYS.may("prices", PriceReader.EXAMPLE, Value.byName(Value.of(PriceReader.PRICE)),
            "{cotton: 1.20 GBP, silk: 5.75 GBP}", "{silk: 5.75 EUR}");
    static final Key<Void> LABEL_STOCK = KEYS.may("label-stock", LabelStockReader.KEYS, "{cut: 60 mm x 24 mm, style: wrap}", """
            {paper: letter, columns: 3, rows: 10, label: 2 5/8 in x 1 in, first: 3/16 in x 1/2 in, pitch: 2 3/4 in x 1 in, shape: rectangle,
             style: face}""", "{columns: 4, rows: 6, label: 40 mm, first: 16 mm x 15 mm, pitch: 46 mm x 45 mm, shape: round}");
    static final Key<Void> TAGS = KEYS.may("tags", TagsReader.KEYS,
            "{size: sixth, sides: long-edge, back-lies: {right: 0.8 mm, below: 0.5 mm}}",
            "{size: 70 mm x 110 mm, back-lies: {left: 0.8 mm, above: 0.5 mm}}");
    static final Key<Void> CLOTH_ON_HAND = KEYS.list("cloth-on-hand", ClothOnHandReader.KEYS, """
            - {name: Sea-mist, kind: linen, count: 36, size: 70 cm x 90 cm, warp: down, selvedge: left, turning: yes,
               flaws: [{from-left: 22 cm, wide: 1 cm}, {from-top: 40 cm, wide: 2 cm}]}
            - {name: Oyster, kind: evenweave, count: {warp: 35.5, weft: 71 in 2 in}, size: 27 in x 18 in}""");
    static final Key<Void> CLOTH_CUTS = KEYS.list("cloth-cuts", ClothCutsReader.KEYS,
            "- {name: fat quarter, size: 27 in x 18 in, price: 14.00 GBP, "
                    + "kind: linen, count: 36, cloth: Sea-mist, warp: down, turning: no}",
            "[]");
    static final Key<Void> CUTTING = KEYS.may("cutting", ClothSupplyReader.CUTTING);
    static final Key<Void> PACE = KEYS.may("pace", PaceReader.KEYS);
    static final Key<Void> TIME_OFF = KEYS.list("time-off", TimeOffReader.KEYS);
    static final Key<Void> GOALS = KEYS.may("goals", GoalsReader.KEYS,
            "{year: 2027, choose: 9, by: weight, main-share: 70%, cards: 3 x 3, wall: A2, seed: 7}",
            "{year: 2027, pieces: [breakwater, fog-bell], focus: fog-bell, beside: breakwater}");

    private final Optional<Locale> asked;
    private final Tables tables;
    private final Problems problems;

    public SettingsReader(Tables tables, Problems problems) {
        this(Optional.empty(), tables, problems);
    }

    /**
     * A reader of settings.
     *
     * @param asked the language asked for, whatever the basket says
     */
    public SettingsReader(Optional<Locale> asked, Tables tables, Problems problems) {
        this.asked = asked;
        this.tables = tables;
        this.problems = problems;
    }

    /** What a document says of the basket. */
    public Settings read(Node document) {
        return Fields.of(document, KEYS, problems).map(this::read).orElse(Settings.UNREAD);
    }

    private Settings read(Fields fields) {
        Optional<String> title = fields.value(TITLE);
        // The tables themselves are found before; here is told what is no name of one.
        Stream.of(PIECES, LOG).forEach(fields::value);
        Optional<Locale> own = fields.value(LANGUAGE);
        Locale language = asked.or(() -> own).orElse(Locale.ENGLISH);
        Optional<Paper> paper = fields.meant("paper") ? fields.value(PAPER) : Optional.of(LanguageText.paper(language));
        Units units = fields.value(UNITS).orElse(LanguageText.units(language));
        boolean largePrint = fields.value(LARGE_PRINT).orElse(false);
        Printer printer = fields.group(PRINTER, PRINTER_KEYS).map(SettingsReader::printer).orElse(Printer.TRUE);
        OptionalDouble cutStepMm = fields.value(CUT_STEP).map(OptionalDouble::of).orElseGet(OptionalDouble::empty);
        Map<String, PutUp> putUps = new LinkedHashMap<>(Settings.USUAL.putUps());
        boolean putUpsKnown = !fields.meant("skeins") || skeins(fields, putUps);
        PutUpName putUpName = new PutUpName(putUps, putUpsKnown);
        List<StashEntry> stash = new StashReader(putUpName, tables, problems).read(fields);
        Map<String, Price> prices = new PriceReader(putUpName, problems).read(fields);
        Optional<LabelStock> labelStock = new LabelStockReader(paper, problems).read(fields);
        ClothSupplyReader.SupplyFound cloth = new ClothSupplyReader(problems).read(fields, prices);
        return new Settings(title, language, paper.orElse(Papers.USUAL), units, largePrint, printer, cutStepMm, putUps, putUpsKnown, stash,
                prices, labelStock,
                new TagsReader(paper).read(fields), cloth.supply(), cloth.onHandKnown(), PaceReader.read(fields),
                new TimeOffReader(problems).read(fields), new GoalsReader(problems).read(fields));
    }

    private static Printer printer(Fields fields) {
        double acrossMm = fields.value(ACROSS).orElse(Printer.BAR_MM);
        double downMm = fields.value(DOWN).orElse(Printer.BAR_MM);
        return new Printer(acrossMm, downMm);
    }

    /** Adds her own put-ups; false if any could not be read, so that pieces naming it are not told of it too. */
    private boolean skeins(Fields fields, Map<String, PutUp> putUps) {
        Optional<Node> node = fields.node(SKEINS);
        if (node.isEmpty() || !(node.get() instanceof Node.Mapping skeins)) {
            node.ifPresent(other -> Fields.of(other, Fields.key("skeins"), SKEINS.example(), List.of(), problems));
            return false;
        }
        boolean known = true;
        // Two keys of one name are told by YAML only if they are written alike.
        Set<String> hers = new HashSet<>();
        for (Map.Entry<String, Node.Entry> skein : skeins.entries().entrySet()) {
            Optional<PutUp> putUp = putUp(skein.getKey(), skein.getValue());
            if (putUp.isPresent() && !hers.add(putUp.get().name())) {
                problems.add(skein.getValue().key(), Fault.of("fields.twice", Quote.bare(putUp.get().name())));
            }
            putUp.ifPresent(p -> putUps.put(p.name(), p));
            known &= putUp.isPresent();
        }
        return known;
    }

    private Optional<PutUp> putUp(String key, Node.Entry entry) {
        Optional<String> name = Fields.scalar(new Node.Scalar(entry.key(), key, true), Fields.key("skein"), new TextForm("silk"), problems);
        return Fields.of(entry.value(), SKEIN, problems).flatMap(fields -> {
            Optional<Double> lengthMm = fields.value(LENGTH);
            Optional<Integer> plies = fields.value(PLIES);
            boolean lotMatters = fields.value(LOT_MATTERS).orElse(false);
            return name.flatMap(n -> lengthMm.flatMap(mm -> plies.map(p -> new PutUp(n, mm, p, lotMatters))));
        });
    }
}
