package kitleaf.sheet.list;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import kitleaf.basket.Price;
import kitleaf.basket.thread.CalledThread;
import kitleaf.basket.thread.PutUp;
import kitleaf.basket.thread.StashEntry;
import kitleaf.sheet.page.Frames;
import kitleaf.sheet.page.Sheet;
import kitleaf.sheet.page.SheetKind;
import kitleaf.sheet.page.SheetSettings;
import kitleaf.sheet.page.Swatch;
import kitleaf.sheet.words.ClothWords;
import kitleaf.sheet.words.Figures;
import kitleaf.sheet.words.SheetWords;
import kitleaf.sheet.words.ThreadWords;
import kitleaf.sizing.PieceReckoning;
import kitleaf.sizing.Reckoning;
import kitleaf.sizing.plan.ClothPlan;
import kitleaf.sizing.plan.Purchase;
import kitleaf.sizing.thread.BuyLine;
import kitleaf.sizing.thread.BuyList;
import kitleaf.sizing.thread.PieceThreads;
import kitleaf.sizing.thread.ThreadReckoning;
import kitleaf.sizing.thread.ThreadTotal;
import kitleaf.sizing.thread.ThreadWarning;
import kitleaf.words.Words;

/** Lays out the buy list across all pieces that are not finished. */
public final class BuyListLayout {

    private final SheetSettings settings;
    private final Reckoning reckoning;
    private final ThreadReckoning threads;
    private final Map<String, String> titles;
    private final Words words;
    private final ThreadWords threadWords;
    private final Figures figures;
    private final ClothWords clothWords;
    /** The cloth to buy; without cloth on hand or cuts of hers nobody knows what is there, and each cut sheet says what its piece needs. */
    private final Optional<ClothPlan> cloth;
    /** What all prices of a basket are in; empty where none is known. */
    private final Optional<String> currency;

    private BuyListLayout(Reckoning reckoning, SheetSettings settings) {
        this.settings = settings;
        this.reckoning = reckoning;
        this.threads = reckoning.threads();
        this.titles = reckoning.pieces().stream().collect(Collectors.toMap(it -> it.piece().id(), it -> it.piece().title()));
        this.words = SheetWords.in(settings.language());
        this.threadWords = new ThreadWords(words, settings.units());
        this.figures = new Figures(settings.units(), words);
        this.clothWords = new ClothWords(words, figures);
        this.cloth = reckoning.clothPlanToldOf();
        this.currency = Stream.of(threads.buyList().cost(), cloth.flatMap(ClothPlan::cost)).flatMap(Optional::stream)
                .map(Price::currency).findFirst();
    }

    /** The buy list of all pieces that are not finished; no pages where neither thread nor cloth stands on it. */
    public static Sheet layOut(Reckoning reckoning, SheetSettings settings) {
        return new BuyListLayout(reckoning, settings).layOut();
    }

    private Sheet layOut() {
        BuyList list = threads.buyList();
        return new Frames(reckoning.basket(), settings, words, words.say("buy.name"))
                .flowing(SheetKind.BUY_LIST, isEmpty(list) ? 0 : 1, words.say("buy.subject"),
                        Map.of("below", subtitle(), "columns", columns(),
                                "rows", rows(list)));
    }

    private List<List<String>> columns() {
        return currency.map(it -> List.of(List.of("each", words.say("buy.in-currency", words.say("buy.each"), it)),
                List.of("cost", words.say("buy.in-currency", words.say("buy.cost"), it)))).orElse(List.of());
    }

    private boolean isEmpty(BuyList list) {
        return list.lines().isEmpty() && cloth.stream().allMatch(plan -> plan.buy().isEmpty() && plan.unplaced().isEmpty());
    }

    private String subtitle() {
        long pieces = threads.pieces().stream().filter(PieceThreads::boughtFor).count();
        return pieces == 1 ? words.say("buy.piece") : words.say("buy.pieces", pieces);
    }

    private List<ListRow> rows(BuyList list) {
        List<ListRow> rows = new ArrayList<>();
        Map<PutUp, List<BuyLine>> groups = list.lines().stream().filter(BuyListLayout::wanted)
                .collect(Collectors.groupingBy(BuyLine::putUp, LinkedHashMap::new, Collectors.toList()));
        groups.forEach((putUp, lines) -> {
            rows.add(ListRow.words("group", threadWords.putUp(putUp)));
            lines.forEach(line -> rows.add(thread(line)));
            rows.add(ListRow.sum(summed(putUp.name(), lines), skeins(lines.stream().mapToLong(BuyLine::buy).sum()),
                    sum(lines).map(this::cost).orElse("")));
        });
        List<Purchase> bought = cloth.map(ClothPlan::buy).orElse(List.of());
        if (!bought.isEmpty()) {
            rows.add(ListRow.words("group", words.say("buy.cloth")));
            bought.forEach(purchase -> rows.add(cloth(purchase)));
        }
        if (groups.size() + (bought.isEmpty() ? 0 : 1) > 1) {
            rows.add(ListRow.sum(summed(words.say(bought.isEmpty() ? "buy.total" : "buy.total-cloth"), list.lines()),
                    skeins(list.lines().stream().mapToLong(BuyLine::buy).sum()), total(list).map(this::cost).orElse("")));
        }
        if (bought.isEmpty() && list.lines().stream().allMatch(line -> line.buy() == 0 && line.unknown().isEmpty())) {
            rows.add(note(words.say("buy.nothing")));
        }
        List<BuyLine> enough = list.lines().stream().filter(line -> !wanted(line)).toList();
        if (!enough.isEmpty()) {
            rows.add(ListRow.words("group", words.say("buy.enough")));
            enough.forEach(line -> rows.add(ListRow.enough(Swatch.of(line.thread()), Figures.asTyped(line.code()),
                    line.thread().name().orElse(""), need(line))));
        }
        List<String> sentences = new ArrayList<>(sentences(told(list.warnings())));
        clothSentence().ifPresent(sentences::add);
        if (!sentences.isEmpty()) {
            rows.add(ListRow.words("heading", words.say("buy.warnings")));
            sentences.forEach(sentence -> rows.add(note(sentence)));
        }
        rows.add(note(words.say("buy.note")));
        for (int i = 1; i < rows.size(); i++) {
            if (rows.get(i).kind().equals("sum")) {
                rows.set(i - 1, rows.get(i - 1).keptWithNext());
            }
        }
        return rows;
    }

    /** What is to be paid; nothing, where nothing is. */
    private String cost(Price price) {
        return price.amount().signum() == 0 ? "" : figures.amount(price);
    }

    /** Whether it is to be bought, as far as is known. */
    private static boolean wanted(BuyLine line) {
        return line.buy() > 0 || !line.unknown().isEmpty();
    }

    /** What is needed of it and what the stash gives. */
    private String need(BuyLine line) {
        String need = words.say("buy.need-large", line.shares().isEmpty() ? words.say("thread.unknown")
                : threadWords.skeins(line.needSkeins())).replace(' ', Figures.NO_BREAK);
        return line.drawnSkeins() == 0 ? need
                : need + ", " + words.say("buy.stash-large", threadWords.number(line.drawnSkeins())).replace(' ', Figures.NO_BREAK);
    }

    private ListRow cloth(Purchase purchase) {
        return ListRow.bought(Figures.unbroken(purchase.cut().name()), clothWords.purchased(purchase), Integer.toString(purchase.number()),
                purchase.cut().price().map(figures::amount).orElse(""), purchase.cost().map(figures::amount).orElse(""));
    }

    /** What is to be said of cloth that is not on the list. */
    private Optional<String> clothSentence() {
        List<String> open = cloth.map(ClothPlan::unplaced).orElseGet(() -> reckoning.pieces().stream().filter(PieceReckoning::wantsCloth)
                .toList())
                .stream().map(it -> it.piece().title()).toList();
        return open.isEmpty() ? Optional.empty() : Optional.of(words.say(cloth.isPresent() ? "buy.cloth-none" : "buy.cloth-untold",
                figures.list(open)));
    }

    /** What threads and cloth cost together, as far as they have prices. */
    private Optional<Price> total(BuyList list) {
        return Stream.of(list.cost(), cloth.flatMap(ClothPlan::cost)).flatMap(Optional::stream).reduce(Price::and);
    }

    private ListRow thread(BuyLine line) {
        CalledThread called = line.thread();
        Set<String> pieces = new TreeSet<>();
        line.shares().forEach(share -> pieces.add(title(share.piece())));
        line.unknown().forEach(id -> pieces.add(title(id)));
        return ListRow.bought(Swatch.of(called), Figures.asTyped(line.code()), called.name().orElse(""),
                Stream.of(threadWords.asked(line.missing()), words.say("buy.for", figures.list(pieces)), need(line))
                        .filter(it -> !it.isEmpty()).collect(Collectors.joining(" · ")),
                line.buy() == 0 ? "" : Long.toString(line.buy()), line.buy() == 0 ? "" : line.each().map(figures::amount).orElse(""),
                line.buy() == 0 ? "" : line.cost().map(figures::amount).orElse(""));
    }

    /**
     * What is told below the list: not the lot to ask for, which stands in its row, nor beside other words on a thread that the last of
     * it is hardly needed.
     */
    private static List<ThreadWarning> told(List<ThreadWarning> warnings) {
        Set<String> spokenOf = warnings.stream().filter(it -> !hardly(it) && it.kind() != ThreadWarning.Kind.NO_PRICE)
                .map(it -> it.code() + "\n" + it.skein()).collect(Collectors.toSet());
        return warnings.stream().filter(it -> it.kind() != ThreadWarning.Kind.ASK_FOR_LOT
                && !(hardly(it) && spokenOf.contains(it.code() + "\n" + it.skein()))).toList();
    }

    private static boolean hardly(ThreadWarning warning) {
        return warning.kind() == ThreadWarning.Kind.JUST_OVER || warning.kind() == ThreadWarning.Kind.JUST_ENOUGH;
    }

    /** One sentence for all threads of which the same is to be said. */
    private List<String> sentences(List<ThreadWarning> warnings) {
        Map<Said, List<String>> codes = new LinkedHashMap<>();
        for (ThreadWarning warning : warnings) {
            String pieces = figures.list(warning.pieces().stream().map(this::title).toList());
            boolean ofPieces = warning.kind() == ThreadWarning.Kind.NEED_UNKNOWN || warning.kind() == ThreadWarning.Kind.MIXED_LOTS
                    || warning.kind() == ThreadWarning.Kind.OTHER_LOTS;
            Said said = warning.kind() == ThreadWarning.Kind.STASH_AS_OTHER ? new Said(warning.kind(), Figures.straight(warning.skein()),
                    held(warning))
                    : new Said(warning.kind(), ofPieces ? pieces : "", ofPieces ? lots(warning) : "");
            codes.computeIfAbsent(said, one -> new ArrayList<>()).add(Figures.asTyped(warning.code()));
        }
        return codes.entrySet().stream().map(entry -> words.say("buy.warn." + Words.word(entry.getKey().kind()),
                figures.list(entry.getValue()), entry.getKey().pieces(), entry.getKey().lots())).toList();
    }

    /**
     * What all warnings of one sentence share.
     *
     * @param pieces their titles, or the put-up they take the thread in
     * @param lots the lots they name, or the put-ups the stash has it in
     */
    private record Said(ThreadWarning.Kind kind, String pieces, String lots) { }

    /** The other put-ups the stash has a thread in. */
    private String held(ThreadWarning warning) {
        return figures.list(reckoning.basket().stash().stream().filter(entry -> entry.code().equals(warning.code()) && !entry.skein()
                .equals(warning.skein()))
                .map(StashEntry::skein).map(Figures::straight).distinct().sorted().toList());
    }

    /** The lots the pieces of a warning have to be served from and lack, else those they name. */
    private String lots(ThreadWarning warning) {
        Set<String> lots = new TreeSet<>();
        if (warning.kind() != ThreadWarning.Kind.MIXED_LOTS) {
            threads.buyList().lines().stream()
                    .filter(line -> line.code().equals(warning.code()) && line.putUp().name().equals(warning.skein()))
                    .flatMap(line -> line.shares().stream()).filter(share -> warning.pieces().contains(share.piece()))
                    .forEach(share -> lots.addAll(share.missing().ofLot().keySet()));
        }
        if (!lots.isEmpty()) {
            return figures.list(lots.stream().map(Figures::asTyped).toList());
        }
        for (String id : warning.pieces()) {
            threads.piece(id).stream().flatMap(piece -> piece.threads().stream())
                    .filter(total -> total.code().equals(warning.code()) && total.putUp().name().equals(warning.skein()))
                    .map(ThreadTotal::needs).forEach(needs -> needs.forEach(need -> need.thread().lot().ifPresent(lots::add)));
        }
        return figures.list(lots.stream().map(Figures::asTyped).toList());
    }

    private String title(String id) {
        return titles.getOrDefault(id, id);
    }

    /** What is summed up; where a need is not known the sum is only the least it can be. */
    private String summed(String name, List<BuyLine> lines) {
        return lines.stream().allMatch(line -> line.unknown().isEmpty()) ? name : words.say("buy.at-least", name);
    }

    private String skeins(long number) {
        return number == 1 ? words.say("buy.subtotal-one") : words.say("buy.subtotal", number);
    }

    private static Optional<Price> sum(List<BuyLine> lines) {
        return lines.stream().flatMap(line -> line.cost().stream()).reduce(Price::and);
    }

    private static ListRow note(String text) {
        return ListRow.words("note", text);
    }
}
