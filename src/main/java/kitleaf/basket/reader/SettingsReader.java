package kitleaf.basket.reader;

import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
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
import kitleaf.basket.form.TextForm;
import kitleaf.basket.form.WholeText;
import kitleaf.basket.form.YesNo;
import kitleaf.basket.key.Fields;
import kitleaf.basket.place.Fault;
import kitleaf.basket.place.Problems;
import kitleaf.basket.place.Quote;
import kitleaf.basket.reader.thread.StashReader;
import kitleaf.basket.table.Tables;
import kitleaf.basket.thread.PutUp;
import kitleaf.basket.thread.StashEntry;
import kitleaf.basket.yaml.Node;
import kitleaf.words.Said;

/** Reads {@code basket.yaml}. */
public final class SettingsReader {

    private static final List<String> KEYS = List.of("title", "language", "paper", "units", "large-print", "printer", "cut-step", "skeins",
            "stash", "prices", "label-stock", "tags", "cloth-on-hand",
            "cloth-cuts", "cutting", "pace", "time-off", "goals");
    private static final List<String> PRINTER_KEYS = List.of("measured-across", "measured-down");
    private static final List<String> SKEIN_KEYS = List.of("length", "plies", "lot-matters");

    private static final Form<Double> BAR = new LengthText(Printer.LEAST_MM, Printer.MOST_MM,
            "printer.bar", "99.8 mm");
    private static final Form<Double> CUT_STEP = new LengthText(1, 2 * 25.4,
            "cut-step", "1/4 in");
    private static final Form<Double> SKEIN_LENGTH = new LengthText(100, 10_000_000,
            "skein.length", "8 m");
    private static final Form<Integer> PLIES = new WholeText(1, 24, "6");
    private static final String SKEIN_EXAMPLE = "{length: 5 m, plies: 7, lot-matters: yes}";

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
        return Fields.of(document, Said.of("thing.basket"), "title: My basket", KEYS, problems).map(this::read).orElse(Settings.UNREAD);
    }

    private Settings read(Fields fields) {
        Optional<String> title = fields.value("title", new TextForm("Harbour basket"));
        Optional<Locale> own = fields.value("language", new LanguageText());
        Locale language = asked.or(() -> own).orElse(Locale.ENGLISH);
        Optional<Paper> paper = fields.meant("paper") ? fields.value("paper", Papers.form()) : Optional.of(LanguageText.paper(language));
        Units units = fields.value("units", Choice.of("choice.units", Units.class)).orElse(LanguageText.units(language));
        boolean largePrint = fields.value("large-print", new YesNo()).orElse(false);
        Printer printer = fields.group("printer", "{measured-across: 99.3 mm, measured-down: 99.8 mm}", PRINTER_KEYS)
                .map(SettingsReader::printer).orElse(Printer.TRUE);
        OptionalDouble cutStepMm = fields.value("cut-step", CUT_STEP).map(OptionalDouble::of).orElseGet(OptionalDouble::empty);
        Map<String, PutUp> putUps = new LinkedHashMap<>(Settings.USUAL.putUps());
        boolean putUpsKnown = !fields.meant("skeins") || skeins(fields, putUps);
        PutUpName putUpName = new PutUpName(putUps, putUpsKnown);
        List<StashEntry> stash = new StashReader(putUpName, tables, problems).read(fields);
        Map<String, Price> prices = new PriceReader(putUpName, problems).read(fields);
        Optional<LabelStock> labelStock = new LabelStockReader(paper, problems).read(fields);
        ClothSupplyReader.ReadSupply cloth = new ClothSupplyReader(problems).read(fields, prices);
        return new Settings(title, language, paper.orElse(Papers.USUAL), units, largePrint, printer, cutStepMm, putUps, putUpsKnown, stash,
                prices, labelStock,
                new TagsReader(paper).read(fields), cloth.supply(), cloth.onHandKnown(), PaceReader.read(fields),
                new TimeOffReader(problems).read(fields), new GoalsReader(problems).read(fields));
    }

    private static Printer printer(Fields fields) {
        double acrossMm = fields.value("measured-across", BAR).orElse(Printer.BAR_MM);
        double downMm = fields.value("measured-down", BAR).orElse(Printer.BAR_MM);
        return new Printer(acrossMm, downMm);
    }

    /** Adds her own put-ups; false if any could not be read, so that pieces naming it are not told of it too. */
    private boolean skeins(Fields fields, Map<String, PutUp> putUps) {
        Optional<Node> node = fields.node("skeins", "{silk: " + SKEIN_EXAMPLE + "}");
        if (node.isEmpty() || !(node.get() instanceof Node.Mapping skeins)) {
            node.ifPresent(other -> Fields.of(other, Fields.key("skeins"), "{silk: " + SKEIN_EXAMPLE + "}", List.of(), problems));
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
        return Fields.of(entry.value(), Said.of("thing.skein"), SKEIN_EXAMPLE, SKEIN_KEYS, problems).flatMap(fields -> {
            Optional<Double> lengthMm = fields.required("length", SKEIN_LENGTH);
            Optional<Integer> plies = fields.required("plies", PLIES);
            boolean lotMatters = fields.value("lot-matters", new YesNo()).orElse(false);
            return name.flatMap(n -> lengthMm.flatMap(mm -> plies.map(p -> new PutUp(n, mm, p, lotMatters))));
        });
    }
}
