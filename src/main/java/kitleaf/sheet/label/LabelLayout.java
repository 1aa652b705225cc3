package kitleaf.sheet.label;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.Iterator;
import java.util.List;
import java.util.Map;
import java.util.NoSuchElementException;
import java.util.Optional;
import java.util.TreeSet;
import java.util.function.Supplier;
import java.util.stream.Stream;
import kitleaf.basket.Basket;
import kitleaf.basket.LabelStock;
import kitleaf.basket.LabelStocks;
import kitleaf.basket.Paper;
import kitleaf.sheet.page.Box;
import kitleaf.sheet.page.Frames;
import kitleaf.sheet.page.Sheet;
import kitleaf.sheet.page.SheetKind;
import kitleaf.sheet.page.SheetSettings;
import kitleaf.sheet.page.Swatch;
import kitleaf.sheet.words.Figures;
import kitleaf.sheet.words.SheetWords;
import kitleaf.sheet.words.ThreadWords;
import kitleaf.sizing.Reckoning;
import kitleaf.sizing.label.CutLines;
import kitleaf.sizing.label.LabelPlace;
import kitleaf.sizing.label.LabelSheets;
import kitleaf.sizing.thread.Estimate;
import kitleaf.sizing.thread.PieceThreads;
import kitleaf.sizing.thread.ThreadNeed;
import kitleaf.sizing.thread.ThreadReckoning.ShareOf;
import kitleaf.sizing.thread.ThreadReckoning;
import kitleaf.sizing.thread.ThreadTotal;
import kitleaf.words.Words;

/**
 * Lays out a label for each thread of each piece that is not finished. Pages are made one at a time while they are printed,
 * so that a great many take no more memory than a few.
 */
public final class LabelLayout {

    /** Stands for a lot in its phrase. */
    private static final String LOT = "\uFFFC";

    private final SheetSettings settings;
    private final Words words;
    private final ThreadWords threadWords;
    private final LabelStock stock;

    private LabelLayout(SheetSettings settings, LabelStock stock) {
        this.settings = settings;
        this.words = SheetWords.in(settings.language());
        this.threadWords = new ThreadWords(words, settings.units());
        this.stock = stock;
    }

    /**
     * The labels of all pieces that are not finished, made a page at a time while they are read.
     *
     * @throws IllegalArgumentException where large print leaves no room for a label, which {@link #stock} tells before
     */
    public static Sheet layOut(Reckoning reckoning, SheetSettings settings) {
        LabelStock stock = stock(reckoning.basket(), settings).orElseThrow(() -> new IllegalArgumentException("no room for a label"));
        return new LabelLayout(settings, stock).layOut(reckoning);
    }

    /** What labels are printed on; nothing where the foot of large print leaves no room on plain paper. */
    public static Optional<LabelStock> stock(Basket basket, SheetSettings settings) {
        Optional<LabelStock> own = basket.labelStock();
        if (!settings.type().large() || own.isPresent() && !own.get().plain()) {
            return Optional.of(own.orElseGet(() -> LabelStocks.usual(settings.paper())));
        }
        Paper paper = own.map(LabelStock::paper).orElse(settings.paper());
        boolean wraps = own.isEmpty() || own.get().style() == LabelStock.Style.WRAP;
        double footMm = paper.heightMm() - frames(basket, settings, SheetWords.in(settings.language()), wraps)
                .of(paper.widthMm(), paper.heightMm(), 0, 0).foot().topMm();
        return own.isPresent() ? LabelStocks.cutAgain(own.get(), footMm) : LabelStocks.large(paper, footMm);
    }

    private static Frames frames(Basket basket, SheetSettings settings, Words words, boolean wraps) {
        return new Frames(basket, settings, words, words.say("label.name")).saying(words.say(wraps ? "label.note" : "label.note-face"));
    }

    /** A thread of a piece, the first of the piece's or not. */
    private record Bobbin(PieceThreads piece, ThreadTotal thread, boolean first) { }

    private Sheet layOut(Reckoning reckoning) {
        Basket basket = reckoning.basket();
        long number = ThreadReckoning.unfinished(basket);
        if (number > Integer.MAX_VALUE / 2) {
            throw new IllegalArgumentException("too many labels: " + number);
        }
        LabelSheets places = LabelSheets.places(stock, Math.min(settings.skip(), stock.perSheet() - 1), (int) number);
        Map<ShareOf, List<String>> stashLots = stashLots(reckoning);
        Frames frames = frames(basket, settings, words, stock.style() == LabelStock.Style.WRAP);
        CutLines cuts = CutLines.of(stock);
        Iterable<LabelPage> pages = () -> new Pages(new Bobbins(unfinished(basket).iterator()), stashLots, places, frames, cuts);
        return new Sheet(SheetKind.BOBBIN_LABELS, places.pages(), Map.of(
                "title", basket.title() + ": " + words.say("label.name"),
                "subject", words.say("label.subject"),
                "language", settings.language().toLanguageTag(),
                "pages", pages));
    }

    /** The threads of every piece that is not finished, reckoned when they are asked for. */
    private static Stream<PieceThreads> unfinished(Basket basket) {
        return ThreadReckoning.eachPiece(basket).filter(piece -> piece.piece().progress().finished().isEmpty());
    }

    /** One bobbin after another, piece by piece. */
    private static final class Bobbins implements Iterator<Bobbin> {

        private final Iterator<PieceThreads> pieces;
        private PieceThreads piece;
        private int next;

        Bobbins(Iterator<PieceThreads> pieces) {
            this.pieces = pieces;
        }

        @Override
        public boolean hasNext() {
            while ((piece == null || next == piece.threads().size()) && pieces.hasNext()) {
                piece = pieces.next();
                next = 0;
            }
            return piece != null && next < piece.threads().size();
        }

        @Override
        public Bobbin next() {
            if (!hasNext()) {
                throw new NoSuchElementException();
            }
            return new Bobbin(piece, piece.threads().get(next++), next == 1);
        }
    }

    /** The lots that threads get out of the stash; nothing where there is no stash, whatever the number of labels. */
    private static Map<ShareOf, List<String>> stashLots(Reckoning reckoning) {
        Map<ShareOf, List<String>> lots = new HashMap<>();
        if (!reckoning.basket().stash().isEmpty()) {
            reckoning.threads().shares().forEach((of, share) -> {
                List<String> drawn = share.drawn().stream().flatMap(one -> one.lot().stream()).distinct().sorted().toList();
                if (!drawn.isEmpty()) {
                    lots.put(of, drawn);
                }
            });
        }
        return lots;
    }

    private final class Pages implements Iterator<LabelPage> {

        private final Iterator<Bobbin> bobbins;
        private final Map<ShareOf, List<String>> stashLots;
        private final LabelSheets places;
        private final Frames frames;
        private final CutLines cuts;
        private int next;
        private int page;

        Pages(Iterator<Bobbin> bobbins, Map<ShareOf, List<String>> stashLots, LabelSheets places, Frames frames, CutLines cuts) {
            this.bobbins = bobbins;
            this.stashLots = stashLots;
            this.places = places;
            this.frames = frames;
            this.cuts = cuts;
        }

        @Override
        public boolean hasNext() {
            return bobbins.hasNext();
        }

        @Override
        public LabelPage next() {
            List<LabelPage.Label> labels = new ArrayList<>();
            do {
                labels.add(label(bobbins.next(), places.place(next), stashLots));
                next++;
            } while (next < places.number() && places.place(next).page() == page);
            page++;
            return new LabelPage(frames.of(stock.paper().widthMm(), stock.paper().heightMm(), page, places.pages()), stock.plain(),
                    stock.shape() == LabelStock.Shape.ROUND, cuts.xMm(), cuts.yMm(), labels);
        }
    }

    private LabelPage.Label label(Bobbin bobbin, LabelPlace place, Map<ShareOf, List<String>> stashLots) {
        ThreadTotal thread = bobbin.thread();
        Collection<String> lots = lots(thread, stashLots.getOrDefault(ShareOf.of(bobbin.piece().piece().id(), thread), List.of()));
        LabelWords says = new LabelWords(thread.code(), ThreadWords.first(thread).name().orElse(""),
                together(bobbin.piece().piece().title()),
                facts(thread, lots), new Shorter(thread, lots), new Crowded(thread, lots), !lots.isEmpty(), words.say("label.between"),
                Swatch.of(ThreadWords.first(thread)));
        Box box = new Box(place.xMm(), place.yMm(), place.widthMm(), place.heightMm());
        String bookmark = bobbin.first() ? bobbin.piece().piece().title() : "";
        if (stock.shape() == LabelStock.Shape.ROUND) {
            return new LabelPage.Label(box, List.of(settings.type().large() ? LargeLabelFace.round(says, box, settings.ruler())
                    : LabelFace.round(says, box, settings.ruler())), false, false, bookmark);
        }
        if (stock.style() == LabelStock.Style.FACE) {
            return new LabelPage.Label(box, List.of(face(says, LabelFace.Side.ALL, box, false)), false, false, bookmark);
        }
        if (box.widthMm() >= box.heightMm()) {
            double half = box.widthMm() / 2;
            return new LabelPage.Label(box, List.of(
                    face(says, LabelFace.Side.FRONT, new Box(box.xMm(), box.yMm(), half, box.heightMm()), false),
                    face(says, LabelFace.Side.BACK, new Box(box.xMm() + half, box.yMm(), half, box.heightMm()), false)), true, false,
                    bookmark);
        }
        double half = box.heightMm() / 2;
        return new LabelPage.Label(box, List.of(
                face(says, LabelFace.Side.BACK, new Box(box.xMm(), box.yMm(), box.widthMm(), half), true),
                face(says, LabelFace.Side.FRONT, new Box(box.xMm(), box.yMm() + half, box.widthMm(), half), false)), false, true, bookmark);
    }

    /** A title whose last word, if it is a letter or two or a number as short, does not stand on a line alone. */
    private static String together(String title) {
        int last = title.lastIndexOf(' ');
        return last > 0 && title.length() - last <= 3 ? title.substring(0, last) + Figures.NO_BREAK + title.substring(last + 1) : title;
    }

    private LabelFace face(LabelWords says, LabelFace.Side side, Box place, boolean turned) {
        return settings.type().large() ? LargeLabelFace.rectangle(says, side, place, turned, settings.ruler())
                : LabelFace.rectangle(says, side, place, turned, settings.ruler());
    }

    private String skeins(String number, String putUp) {
        return number.equals("1") ? words.say("label.skein-one", putUp) : words.say("label.skeins", number, putUp);
    }

    private List<String> facts(ThreadTotal thread, Collection<String> lots) {
        List<String> facts = new ArrayList<>();
        String strands = threadWords.strands(thread);
        String needle = threadWords.needle(thread);
        // Two of each are too long for one line.
        facts.addAll(ThreadWords.differ(thread) ? List.of(strands, needle) : List.of(strands + ", " + needle));
        Optional<Estimate> skeins = thread.skeins();
        if (skeins.isPresent()) {
            facts.add(skeins(threadWords.number(skeins.get().likely()), thread.putUp().name()).replace(' ', Figures.NO_BREAK));
        }
        facts.add(lot(lots, "label.lot-blank", "thread.lot"));
        return facts;
    }

    /** The lots it names, and where the lot matters those it gets beside them; else those it gets. */
    private static Collection<String> lots(ThreadTotal thread, List<String> stashLots) {
        TreeSet<String> lots = new TreeSet<>();
        for (ThreadNeed need : thread.needs()) {
            need.thread().lot().ifPresent(lots::add);
        }
        if (lots.isEmpty() || thread.putUp().lotMatters()) {
            lots.addAll(stashLots);
        }
        return lots;
    }

    private String lot(Collection<String> lots, String blank, String written) {
        return (lots.isEmpty() ? words.say(blank) : words.say(written, String.join(" + ", lots))).replace(' ', Figures.NO_BREAK);
    }

    /** The facts of a small label: in short forms, then without the put-up, the skeins, which the kit list has, and the blank for a lot. */
    private final class Shorter implements Supplier<List<List<String>>> {

        private final ThreadTotal thread;
        private final Collection<String> lots;

        Shorter(ThreadTotal thread, Collection<String> lots) {
            this.thread = thread;
            this.lots = lots;
        }

        @Override
        public List<List<String>> get() {
            List<List<String>> shorter = new ArrayList<>();
            String lot = lot(lots, "label.lot-blank-brief", "thread.lot-brief");
            List<String> brief = first(threadWords.strandsBriefly(thread), threadWords.needleBriefly(thread));
            if (thread.skeins().isPresent()) {
                String number = threadWords.number(thread.skeins().get().likely());
                List<String> whole = first(threadWords.strands(thread), threadWords.needle(thread));
                for (String skeins : List.of(words.say("label.skeins-brief", number, thread.putUp().name()),
                        words.say("label.skeins-least", number))) {
                    shorter.add(joined(whole, skeins, lot));
                    shorter.add(joined(brief, skeins, lot));
                }
            }
            shorter.add(joined(brief, lot));
            if (lots.isEmpty()) {
                shorter.add(brief);
            }
            return shorter;
        }

        private List<String> first(String strands, String needle) {
            return ThreadWords.differ(thread) ? List.of(strands, needle) : List.of(strands + ", " + needle);
        }

        private List<String> joined(List<String> first, String... then) {
            List<String> facts = new ArrayList<>(first);
            for (String fact : then) {
                facts.add(fact.replace(' ', Figures.NO_BREAK));
            }
            return facts;
        }
    }

    /**
     * The facts of a crowded label: the blank for a lot goes first, then the skeins, the needle, and which kinds take which strands. The
     * lot may be broken where its own blanks are.
     */
    private final class Crowded implements Supplier<LabelWords.Crowded> {

        private final ThreadTotal thread;
        private final Collection<String> lots;

        Crowded(ThreadTotal thread, Collection<String> lots) {
            this.thread = thread;
            this.lots = lots;
        }

        @Override
        public LabelWords.Crowded get() {
            String strands = threadWords.strandsBriefly(thread);
            String needle = threadWords.needleBriefly(thread);
            List<List<String>> facts = new ArrayList<>();
            if (thread.skeins().isPresent()) {
                facts.add(List.of(strands, needle, words.say("label.skeins-least", threadWords.number(thread.skeins().get().likely()))
                        .replace(' ', Figures.NO_BREAK)));
            }
            facts.add(List.of(strands, needle));
            facts.add(List.of(strands));
            String least = threadWords.strandsLeast(thread);
            if (!least.equals(strands)) {
                facts.add(List.of(least));
            }
            facts.add(List.of());
            if (lots.isEmpty()) {
                return new LabelWords.Crowded(facts, List.of());
            }
            String written = String.join(" +" + Figures.NO_BREAK, lots);
            return new LabelWords.Crowded(facts, Stream.of("thread.lot-brief", "kit.lot").map(key -> words.say(key, LOT))
                    .flatMap(lot -> Stream.of(lot.replace(' ', Figures.NO_BREAK), lot)).distinct().map(lot -> lot.replace(LOT, written))
                            .toList());
        }
    }
}
