package kitleaf.sizing.thread;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import kitleaf.basket.Amount;
import kitleaf.basket.Basket;
import kitleaf.basket.ChartSize;
import kitleaf.basket.Goal;
import kitleaf.basket.Margins;
import kitleaf.basket.Pace;
import kitleaf.basket.Paper;
import kitleaf.basket.Part;
import kitleaf.basket.Piece;
import kitleaf.basket.Price;
import kitleaf.basket.Printer;
import kitleaf.basket.Progress;
import kitleaf.basket.Tags;
import kitleaf.basket.Units;
import kitleaf.basket.cloth.ClothSupply;
import kitleaf.basket.thread.CalledThread;
import kitleaf.basket.thread.PutUp;
import kitleaf.basket.thread.StashEntry;
import kitleaf.basket.thread.StitchCount;
import kitleaf.basket.thread.StitchKind;
import kitleaf.basket.thread.Strands;
import kitleaf.basket.thread.Used;
import kitleaf.sizing.Pieces;

/** Threads, pieces and baskets for tests. A thread that used 1 skein for 1000 stitches makes needs one can read off. */
final class Skeins {

    /** Hand-dyed, 5 m of six plies, of which the dye lot matters. */
    static final PutUp DYED = new PutUp("dyed", 5000, 6, true);

    private Skeins() { }

    static CalledThread crosses(String code, String skein, int strands, int count) {
        return thread(code, skein, strands, List.of(StitchCount.of(StitchKind.CROSS, count)), OptionalDouble.empty(), Optional.empty(), Optional.empty());
    }

    /** So many thousandths of a skein, by its own record. */
    static CalledThread eating(String code, String skein, int thousandths) {
        return eating(code, skein, thousandths, Optional.empty());
    }

    static CalledThread eating(String code, String skein, int thousandths, Optional<String> lot) {
        return thread(code, skein, 2, List.of(StitchCount.of(StitchKind.CROSS, thousandths)), OptionalDouble.empty(),
                Optional.of(new Used(1, 1000)), lot);
    }

    /** The same thread, which takes other lots beside the one it names. */
    static CalledThread mixing(CalledThread it) {
        return new CalledThread(it.code(), it.name(), it.colour(), it.symbol(), it.skein(), it.strands(), it.stitches(), it.share(), it.used(),
                it.over(), it.lot(), true);
    }

    static CalledThread sharing(String code, double share) {
        return thread(code, "cotton", 2, List.of(), OptionalDouble.of(share), Optional.empty(), Optional.empty());
    }

    static CalledThread thread(String code, String skein, int strands, List<StitchCount> stitches, OptionalDouble share,
                               Optional<Used> used, Optional<String> lot) {
        return new CalledThread(code, Optional.empty(), Optional.empty(), Optional.empty(), skein, Strands.of(strands), stitches, share, used,
                OptionalInt.empty(), lot, false);
    }

    static Piece piece(String id, CalledThread... threads) {
        return piece(id, List.of(threads), List.of(), Optional.empty(), Progress.NONE, Goal.NONE);
    }

    static Piece piece(String id, List<CalledThread> threads, List<Part> parts, Optional<Amount> coverage, Progress progress, Goal goal) {
        return new Piece(id, id, Optional.empty(), new ChartSize(100, 80), Pieces.linen(28, 2), Optional.empty(), Margins.all(50),
                true, threads, parts, coverage, progress, goal);
    }

    static Goal due(String day) {
        return new Goal(false, Optional.of(LocalDate.parse(day)), 1);
    }

    static StashEntry stash(String code, String skein, double skeins, String lot) {
        return new StashEntry(code, skein, skeins, lot.isEmpty() ? Optional.empty() : Optional.of(lot));
    }

    static Price price(String amount) {
        return new Price(new BigDecimal(amount), "XTS");
    }

    static Basket basket(List<Piece> pieces, StashEntry... stash) {
        return basket(pieces, List.of(stash), Map.of());
    }

    static Basket basket(List<Piece> pieces, List<StashEntry> stash, Map<String, Price> prices) {
        return new Basket("Net loft", Locale.ENGLISH, PAPER, Units.IN, false, Printer.TRUE, OptionalDouble.empty(),
                List.of(PutUp.COTTON, DYED), stash, prices, Optional.empty(), Tags.USUAL, ClothSupply.NONE, Pace.UNSAID, List.of(), Optional.empty(), pieces);
    }

    private static final Paper PAPER = new Paper("A4", 210, 297);
}
