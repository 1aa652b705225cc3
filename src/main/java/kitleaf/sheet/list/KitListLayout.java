package kitleaf.sheet.list;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import kitleaf.basket.Piece;
import kitleaf.basket.PutUp;
import kitleaf.sheet.page.Frames;
import kitleaf.sheet.page.LargePage;
import kitleaf.sheet.page.Passages;
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
import kitleaf.sizing.thread.ThreadReckoning.ShareOf;
import kitleaf.sizing.thread.ThreadReckoning;
import kitleaf.sizing.thread.ThreadTotal;
import kitleaf.words.Words;

/** Lays out a kit list for each piece that is not finished. */
public final class KitListLayout {

    private static final double GROUP_MM = 8;
    private static final double NOTE_LINE_MM = 3.4;

    private final SheetSettings settings;
    private final Words words;
    private final Figures figures;
    private final ThreadWords threadWords;
    private final ClothWords clothWords;
    private final double innerMm;

    private KitListLayout(SheetSettings settings) {
        this.settings = settings;
        this.words = SheetWords.in(settings.language());
        this.figures = new Figures(settings.units(), words);
        this.threadWords = new ThreadWords(words, settings.units());
        this.clothWords = new ClothWords(words, figures);
        this.innerMm = settings.paper().widthMm() - 2 * Frames.MARGIN_MM;
    }

    /** The kit lists of all pieces that are not finished; no pages where all are. */
    public static Sheet layOut(Reckoning reckoning, SheetSettings settings) {
        return new KitListLayout(settings).layOut(reckoning);
    }

    private Sheet layOut(Reckoning reckoning) {
        return settings.type().large() ? large(reckoning) : ordinary(reckoning);
    }

    private Sheet large(Reckoning reckoning) {
        ThreadReckoning threads = reckoning.threads();
        Map<ShareOf, StashShare> shares = threads.shares();
        Frames frames = new Frames(reckoning.basket(), settings, words, words.say("kit.name"));
        LargeRows set = new LargeRows(new Passages(settings.type(), settings.ruler(), Frames.MARGIN_MM, innerMm), words);
        List<LargePage> pages = new ArrayList<>();
        for (PieceReckoning piece : reckoning.pieces()) {
            if (piece.piece().progress().finished().isEmpty()) {
                String title = piece.piece().title();
                pages.addAll(LargePage.flow(frames, words.say("kit.eyebrow"), title, words.say("kit.continued", title),
                        clothWords.subtitle(piece.piece()), set.kit(rows(piece, threads, shares))));
            }
        }
        return sheet(reckoning, pages.size(), LargePage.numbered(pages, frames));
    }

    private Sheet ordinary(Reckoning reckoning) {
        ThreadReckoning threads = reckoning.threads();
        Map<ShareOf, StashShare> shares = threads.shares();
        List<PieceReckoning> pieces = reckoning.pieces().stream().filter(it -> it.piece().progress().finished().isEmpty()).toList();
        List<List<List<ListRow>>> rows = pieces.stream().map(piece -> ListPage.flow(rows(piece, threads, shares), settings.paper().heightMm())).toList();
        int count = rows.stream().mapToInt(List::size).sum();
        Frames frames = new Frames(reckoning.basket(), settings, words, words.say("kit.name"));
        List<ListPage> pages = new ArrayList<>();
        for (int n = 0; n < pieces.size(); n++) {
            Piece piece = pieces.get(n).piece();
            List<List<ListRow>> flowed = rows.get(n);
            for (int i = 0; i < flowed.size(); i++) {
                String title = piece.title();
                pages.add(new ListPage(frames.of(pages.size() + 1, count), i == 0 ? title : "", words.say("kit.eyebrow"),
                        i == 0 ? title : words.say("kit.continued", title), clothWords.subtitle(piece), headings(), flowed.get(i)));
            }
        }
        return sheet(reckoning, count, pages);
    }

    private Sheet sheet(Reckoning reckoning, int count, List<?> pages) {
        return new Sheet(SheetKind.KIT_LISTS, count, Map.of(
                "title", reckoning.basket().title() + ": " + words.say("kit.name"),
                "subject", words.say("kit.subject"),
                "language", settings.language().toLanguageTag(),
                "pages", pages));
    }

    private List<String> headings() {
        return List.of(words.say("kit.thread"), words.say("kit.skeins"), words.say("kit.stash"), words.say("kit.buy"));
    }

    private List<ListRow> rows(PieceReckoning reckoned, ThreadReckoning threads, Map<ShareOf, StashShare> shares) {
        PieceThreads piece = threads.piece(reckoned.piece().id()).orElseThrow();
        List<ListRow> rows = new ArrayList<>();
        rows.add(ListRow.item(settings, words.say("kit.cloth"), clothWords.cloth(reckoned.piece().cloth()), cut(reckoned.cloth().size())));
        if (piece.threads().isEmpty()) {
            rows.add(note(words.say("kit.no-threads")));
            return rows;
        }
        rows.add(ListRow.item(settings, words.say("kit.needle"), needles(piece), words.say("kit.needle-note")));
        Map<PutUp, List<ThreadTotal>> groups = piece.threads().stream()
                .collect(Collectors.groupingBy(ThreadTotal::putUp, LinkedHashMap::new, Collectors.toList()));
        groups.forEach((putUp, totals) -> {
            rows.add(ListRow.words("group", GROUP_MM, threadWords.putUp(putUp)));
            totals.forEach(total -> rows.add(thread(total, Optional.ofNullable(shares.get(ShareOf.of(reckoned.piece().id(), total))))));
        });
        if (piece.left() < 1) {
            rows.add(note(words.say("kit.left-note", 100 - reckoned.tally().percentDone())));
        }
        if (!piece.threads().stream().allMatch(ThreadTotal::known)) {
            rows.add(note(words.say("kit.unknown-note")));
        }
        rows.add(note(words.say("kit.note")));
        return rows;
    }

    private ListRow thread(ThreadTotal total, Optional<StashShare> share) {
        String drawn = share.map(threadWords::drawn).filter(text -> !text.isEmpty()).orElse(words.say("kit.nothing"));
        // Lots that have no room in their column stand below, and how much it is in all stays there.
        boolean down = !settings.type().large() && settings.ruler().widthMm(drawn, "text", 400,
                ListRow.LEAST_PT) > ListPage.stashMm(settings.paper().widthMm());
        String stash = down ? threadWords.number(share.orElseThrow().drawn().stream().mapToDouble(StashShare.Drawn::skeins).sum()) : drawn;
        String below = Stream.of(threadWords.stitches(total), threadWords.strands(total), threadWords.needle(total),
                        down ? words.say("kit.stash-large", drawn.replace(" + ".replace(' ', Figures.NO_BREAK), " + ")) : "",
                        share.map(it -> threadWords.asked(it.missing())).orElse(""))
                .filter(text -> !text.isEmpty()).collect(Collectors.joining(" · "));
        return ListRow.thread(settings, false, Swatch.of(ThreadWords.first(total)), total.code(), ThreadWords.first(total).name().orElse(""), below,
                total.skeins().map(threadWords::skeins).orElseGet(() -> words.say("thread.unknown")),
                stash,
                share.map(it -> it.wholeSkeinsToBuy() == 0 ? words.say("kit.nothing") : Long.toString(it.wholeSkeinsToBuy())).orElse(""),
                "", "");
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

    private ListRow note(String text) {
        return ListRow.words("note", 3 + NOTE_LINE_MM * settings.ruler().lines(text, "text", 400, settings.type().small(), innerMm), text);
    }
}
