package kitleaf.sheet.list;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import kitleaf.basket.thread.PutUp;
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
import kitleaf.sizing.cloth.PieceSize;
import kitleaf.sizing.thread.PieceThreads;
import kitleaf.sizing.thread.StashShare;
import kitleaf.sizing.thread.ThreadNeed;
import kitleaf.sizing.thread.ThreadReckoning;
import kitleaf.sizing.thread.ThreadReckoning.ShareOf;
import kitleaf.sizing.thread.ThreadTotal;
import kitleaf.words.Words;

/** Lays out a kit list for each piece that is not finished, or for all. */
public final class KitListLayout {

    private final SheetSettings settings;
    private final Words words;
    private final Figures figures;
    private final ThreadWords threadWords;
    private final ClothWords clothWords;

    private KitListLayout(SheetSettings settings) {
        this.settings = settings;
        this.words = SheetWords.in(settings.language());
        this.figures = new Figures(settings.units(), words);
        this.threadWords = new ThreadWords(words, settings.units());
        this.clothWords = new ClothWords(words, figures);
    }

    /** The kit lists of all pieces that are not finished; no pages where all are. Of all pieces where all are asked for. */
    public static Sheet layOut(Reckoning reckoning, SheetSettings settings) {
        return new KitListLayout(settings).layOut(reckoning);
    }

    private Sheet layOut(Reckoning reckoning) {
        ThreadReckoning threads = reckoning.threads();
        Map<ShareOf, StashShare> shares = threads.shares();
        List<KitList> kits = reckoning.pieces().stream()
                .filter(it -> settings.all() || it.piece().progress().finished().isEmpty())
                .map(it -> new KitList(it.piece().title(), clothWords.subtitle(it.piece()), rows(it, threads, shares))).toList();
        return new Frames(reckoning.basket(), settings, words, words.say("kit.name"))
                .flowing(SheetKind.KIT_LISTS, kits.size(), words.say("kit.subject"), Map.of("kits", kits, "below",
                        kits.size() == 1 ? words.say("buy.piece") : words.say("buy.pieces", kits.size())));
    }

    private List<ListRow> rows(PieceReckoning reckoned, ThreadReckoning threads, Map<ShareOf, StashShare> shares) {
        PieceThreads piece = threads.piece(reckoned.piece().id()).orElseThrow();
        List<ListRow> rows = new ArrayList<>();
        rows.add(ListRow.item(words.say("kit.cloth"), clothWords.cloth(reckoned.piece().cloth()), cut(reckoned.cloth().size())));
        if (piece.threads().isEmpty()) {
            rows.add(note(words.say("kit.no-threads")));
            return rows;
        }
        rows.add(ListRow.item(words.say("kit.needle"), needles(piece), words.say("kit.needle-note")));
        Map<PutUp, List<ThreadTotal>> groups = piece.threads().stream()
                .collect(Collectors.groupingBy(ThreadTotal::putUp, LinkedHashMap::new, Collectors.toList()));
        groups.forEach((putUp, totals) -> {
            rows.add(ListRow.words("group", threadWords.putUp(putUp)));
            totals.forEach(total -> rows.add(thread(total, Optional.ofNullable(shares.get(ShareOf.of(reckoned.piece().id(), total))))));
        });
        if (piece.left() < 1) {
            rows.add(note(words.say("kit.left-note", 100 - reckoned.tally().percentDone())));
        }
        if (!piece.threads().stream().allMatch(ThreadTotal::known)) {
            rows.add(note(words.say("kit.unknown-note")));
        }
        return rows;
    }

    private ListRow thread(ThreadTotal total, Optional<StashShare> share) {
        String below = String.join(" · ", Stream.of(threadWords.stitches(total), threadWords.strands(total), threadWords.needle(total),
                        share.map(it -> threadWords.asked(it.missing())).orElse(""))
                .filter(text -> !text.isEmpty()).toList());
        return ListRow.needed(Swatch.of(ThreadWords.first(total)), Figures.asTyped(total.code()),
                ThreadWords.first(total).name().orElse(""), below,
                total.skeins().map(threadWords::likely).orElseGet(() -> words.say("thread.unknown")),
                total.skeins().map(threadWords::range).orElse(""),
                share.map(threadWords::drawn).filter(text -> !text.isEmpty()).orElse(words.say("kit.nothing")),
                share.map(it -> it.wholeSkeinsToBuy() == 0 ? words.say("kit.nothing") : Long.toString(it.wholeSkeinsToBuy())).orElse(""));
    }

    private String needles(PieceThreads piece) {
        List<String> sizes = piece.threads().stream().flatMap(total -> total.needs().stream()).flatMapToInt(ThreadNeed::needles)
                .distinct().sorted().mapToObj(String::valueOf).toList();
        return words.say(sizes.size() == 1 ? "kit.needle-size" : "kit.needle-sizes", String.join(", ", sizes));
    }

    private String cut(PieceSize size) {
        return words.say("kit.cloth-cut", figures.size(size.across().finishedMm(), size.down().finishedMm()),
                figures.cut(size.across().cutMm(), size.down().cutMm()), figures.swapped().cut(size.across().cutMm(), size.down().cutMm()));
    }

    private static ListRow note(String text) {
        return ListRow.words("note", text);
    }
}
