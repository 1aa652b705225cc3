package kitleaf.sheet.label;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import kitleaf.basket.Basket;
import kitleaf.basket.LabelStock;
import kitleaf.basket.LabelStocks;
import kitleaf.basket.Paper;
import kitleaf.basket.place.Problem;
import kitleaf.basket.reader.Misfits;
import kitleaf.sheet.page.Box;
import kitleaf.sheet.page.Frames;
import kitleaf.sheet.page.Sheet;
import kitleaf.sheet.page.SheetKind;
import kitleaf.sheet.page.SheetSettings;
import kitleaf.sheet.words.SheetWords;
import kitleaf.sizing.Reckoning;
import kitleaf.sizing.label.LabelSheets;
import kitleaf.sizing.thread.PieceThreads;
import kitleaf.sizing.thread.ThreadReckoning;
import kitleaf.sizing.thread.ThreadReckoning.ShareOf;
import kitleaf.words.Words;

/**
 * Lays out a label for each thread of each piece that is not finished. Labels are made one at a time while they are printed,
 * so that a great many take no more memory than a few.
 */
public final class LabelLayout {

    private LabelLayout() { }

    /**
     * The labels of all pieces that are not finished, made while they are read.
     *
     * @throws IllegalArgumentException where the foot leaves no room for a label, which {@link #stock} tells before
     */
    public static Sheet layOut(Reckoning reckoning, SheetSettings settings) {
        Basket basket = reckoning.basket();
        LabelStock stock = stock(basket, settings).orElseThrow(() -> new IllegalArgumentException("no room for a label"));
        long number = ThreadReckoning.unfinished(basket);
        if (number > Integer.MAX_VALUE / 2) {
            throw new IllegalArgumentException("too many labels: " + number);
        }
        SheetSettings on = settings.on(stock.paper());
        Words words = SheetWords.in(settings.language());
        String note = words.say(note(stock.style() == LabelStock.Style.WRAP));
        Lying lying = Lying.of(stock, Math.min(settings.skip(), stock.perSheet() - 1), footMm(basket, on, note));
        LabelWords labelWords = new LabelWords(words, settings);
        Map<ShareOf, List<String>> stashLots = stashLots(reckoning);
        Iterable<Label> labels = () -> unfinished(basket).flatMap(piece -> labels(piece, stashLots, labelWords)).iterator();
        int pages = LabelSheets.places(stock, lying.skip(), (int) number).pages();
        return frames(basket, on).flowing(SheetKind.BOBBIN_LABELS, pages, words.say("label.subject"),
                Map.of("labels", labels, "lying", lying, "note", note, "between", words.say("label.between")));
    }

    /** The problem that a basket's labels to be cut have no room above the foot, if they have none. */
    public static Optional<Problem> misfit(Basket basket, SheetSettings settings, Misfits misfits, Misfits.Cause cause) {
        return basket.labelStock().filter(own -> stock(basket, settings).isEmpty()).map(own -> misfits.labels(own.heightMm(), own.paper(),
                own.paper().heightMm() - LabelStocks.MARGIN_MM - cutFootMm(basket, settings, own.paper(), own.style()), cause));
    }

    /** What labels are printed on; nothing where the foot leaves no room on plain paper. */
    public static Optional<LabelStock> stock(Basket basket, SheetSettings settings) {
        Optional<LabelStock> own = basket.labelStock();
        if (own.isPresent() && !own.get().plain()) {
            return own;
        }
        Paper paper = own.map(LabelStock::paper).orElse(settings.paper());
        LabelStock.Style style = own.map(LabelStock::style).orElse(LabelStock.Style.WRAP);
        Box usual = settings.type().usualLabel();
        return LabelStocks.cut(paper, own.map(LabelStock::widthMm).orElse(usual.widthMm()),
                own.map(LabelStock::heightMm).orElse(usual.heightMm()), style, cutFootMm(basket, settings, paper, style));
    }

    private static double cutFootMm(Basket basket, SheetSettings settings, Paper paper, LabelStock.Style style) {
        return footMm(basket, settings.on(paper), SheetWords.in(settings.language()).say(note(style == LabelStock.Style.WRAP)));
    }

    private static String note(boolean folded) {
        return folded ? "label.note" : "label.note-face";
    }

    private static double footMm(Basket basket, SheetSettings settings, String note) {
        double widthMm = settings.paper().widthMm() - 2 * Frames.MARGIN_MM;
        return Math.max(LabelStocks.FOOT_MM, Frames.LOWEST_MM + frames(basket, settings).footMm(note, widthMm) + Frames.CLEAR_MM);
    }

    private static Frames frames(Basket basket, SheetSettings settings) {
        Words words = SheetWords.in(settings.language());
        return new Frames(basket, settings, words, words.say("label.name"));
    }

    /** The threads of every piece that is not finished, reckoned when they are asked for. */
    private static Stream<PieceThreads> unfinished(Basket basket) {
        return ThreadReckoning.eachPiece(basket).filter(piece -> piece.piece().progress().finished().isEmpty());
    }

    private static Stream<Label> labels(PieceThreads piece, Map<ShareOf, List<String>> stashLots, LabelWords words) {
        return IntStream.range(0, piece.threads().size()).mapToObj(i -> words.of(piece.threads().get(i),
                stashLots.getOrDefault(ShareOf.of(piece.piece().id(), piece.threads().get(i)), List.of()), piece.piece().title(), i == 0));
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
}
