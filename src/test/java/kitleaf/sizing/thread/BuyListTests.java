package kitleaf.sizing.thread;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;
import kitleaf.basket.Amount;
import kitleaf.basket.Basket;
import kitleaf.basket.Goal;
import kitleaf.basket.Part;
import kitleaf.basket.Piece;
import kitleaf.basket.Price;
import kitleaf.basket.Progress;
import kitleaf.basket.thread.CalledThread;
import kitleaf.basket.thread.StashEntry;
import org.junit.jupiter.api.Test;

/** Threads here eat a thousandth of a skein a stitch, and a tenth more at the high end, so that shares can be worked in the head. */
class BuyListTests {

    private static final double EXACT = 1e-9;

    private static BuyList list(List<Piece> pieces, StashEntry... stash) {
        return ThreadReckoning.of(Skeins.basket(pieces, stash)).buyList();
    }

    private static Piece wanting(String id, int thousandths, Goal goal) {
        return Skeins.piece(id, List.of(Skeins.eating("K1", "cotton", thousandths)), List.of(), Optional.empty(), Progress.NONE, goal);
    }

    private static List<String> pieces(BuyLine line) {
        return line.shares().stream().map(StashShare::piece).toList();
    }

    private static List<ThreadWarning.Kind> kinds(BuyList list) {
        return list.warnings().stream().map(ThreadWarning::kind).toList();
    }

    /** By hand: 0.4 + 0.4 + 0.4 are 1.2 skeins, so 2 for all three, not 3. */
    @Test
    void pieces_share_the_skeins_they_buy() {
        BuyLine line = list(List.of(wanting("a", 400, Goal.NONE), wanting("b", 400, Goal.NONE), wanting("c", 400, Goal.NONE))).lines().get(0);
        assertEquals(1.2, line.missingSkeins(), EXACT);
        assertEquals(2, line.buy());
    }

    /** Due first, then must, then started, then ID. Two skeins of stash serve 0.8 + 0.8 + 0.4 of the third's 0.8. */
    @Test
    void the_stash_goes_round_in_the_stated_order() {
        Goal must = new Goal(true, Optional.empty(), 1);
        Progress begun = new Progress(Optional.of(LocalDate.parse("2025-01-01")), Optional.empty(), Optional.empty(), List.of());
        Piece late = wanting("a-late", 800, Skeins.due("2028-01-01"));
        Piece soon = wanting("z-soon", 800, Skeins.due("2027-01-01"));
        Piece wished = wanting("y-must", 800, must);
        Piece started = Skeins.piece("x-begun", List.of(Skeins.eating("K1", "cotton", 800)), List.of(), Optional.empty(), begun, Goal.NONE);
        Piece plain = wanting("b", 800, Goal.NONE);
        Piece first = wanting("a", 800, Goal.NONE);
        BuyLine line = list(List.of(plain, first, started, wished, late, soon), Skeins.stash("K1", "cotton", 2, "")).lines().get(0);
        assertEquals(List.of("z-soon", "a-late", "y-must", "x-begun", "a", "b"), pieces(line));
        assertEquals(0.8, line.shares().get(1).drawnSkeins(), EXACT);
        assertEquals(0.4, line.shares().get(2).drawnSkeins(), EXACT);
        assertEquals(0, line.shares().get(3).drawnSkeins(), EXACT);
        // 6 x 0.8 less 2 is 2.8.
        assertEquals(3, line.buy());
    }

    /** By hand: 0.5 needed, 0.55 at the high end; lots of 0.3, 2 and 0.6: the 0.6 is the smallest that covers it. */
    @Test
    void a_piece_is_served_from_the_smallest_single_lot_that_covers_it() {
        BuyList list = list(List.of(Skeins.piece("p", Skeins.eating("K1", "dyed", 500))),
                Skeins.stash("K1", "dyed", 0.3, "7 A"), Skeins.stash("K1", "dyed", 2, "7 B"), Skeins.stash("K1", "dyed", 0.6, "7 C"));
        StashShare share = list.lines().get(0).shares().get(0);
        assertEquals(1, share.drawn().size());
        assertEquals(Optional.of("7 C"), share.drawn().get(0).lot());
        assertEquals(0.55, share.drawnSkeins(), EXACT);
        assertEquals(0, list.lines().get(0).buy());
        assertEquals(List.of(), list.warnings());
    }

    /** Each lot once, in the order of their names, whichever piece asks for it. */
    @Test
    void a_line_names_the_lots_its_charts_ask_for() {
        BuyList list = list(List.of(Skeins.piece("p", Skeins.eating("K1", "dyed", 500, Optional.of("7 B"))),
                Skeins.piece("q", Skeins.eating("K1", "dyed", 500, Optional.of("7 A"))), Skeins.piece("r", Skeins.eating("K1", "dyed", 500)),
                Skeins.piece("s", Skeins.eating("K1", "dyed", 500, Optional.of("7 B")))));
        assertEquals(List.of("7 A", "7 B"), list.lines().get(0).lots());
    }

    @Test
    void the_lot_named_in_the_chart_comes_before_a_smaller_one() {
        BuyList list = list(List.of(Skeins.piece("p", Skeins.eating("K1", "dyed", 500, Optional.of("7 B")))),
                Skeins.stash("K1", "dyed", 0.6, "7 C"), Skeins.stash("K1", "dyed", 2, "7 B"));
        assertEquals(Optional.of("7 B"), list.lines().get(0).shares().get(0).drawn().get(0).lot());
        assertEquals(List.of(), list.warnings());
    }

    /** By hand: 1.1 at the high end out of lots of 0.7 and 0.6: 0.7 + 0.4, and nothing to buy, but two lots meet. */
    @Test
    void lots_meeting_in_a_piece_are_told() {
        BuyList list = list(List.of(Skeins.piece("p", Skeins.eating("K1", "dyed", 1000))),
                Skeins.stash("K1", "dyed", 0.6, "7 C"), Skeins.stash("K1", "dyed", 0.7, "7 B"));
        StashShare share = list.lines().get(0).shares().get(0);
        assertEquals(Optional.of("7 B"), share.drawn().get(0).lot());
        assertEquals(0.4, share.drawn().get(1).skeins(), EXACT);
        assertTrue(share.mixed());
        assertEquals(List.of(new ThreadWarning(ThreadWarning.Kind.MIXED_LOTS, "K1", "dyed", List.of("p"))), list.warnings());
    }

    @Test
    void stash_and_shop_meeting_in_a_piece_are_told_too() {
        BuyList list = list(List.of(Skeins.piece("p", Skeins.eating("K1", "dyed", 1000))), Skeins.stash("K1", "dyed", 0.7, "7 B"));
        assertEquals(List.of(ThreadWarning.Kind.MIXED_LOTS), kinds(list));
        assertEquals(1, list.lines().get(0).buy());
    }

    /** By hand: 1.1 at the high end, 0.7 of the lot in the stash; the 0.4 missing is of the same lot, so that no two meet. */
    @Test
    void a_named_lot_that_is_short_is_asked_for_and_meets_no_other() {
        BuyList list = list(List.of(Skeins.piece("p", Skeins.eating("K1", "dyed", 1000, Optional.of("7 B")))),
                Skeins.stash("K1", "dyed", 0.7, "7 B"));
        assertEquals(List.of(ThreadWarning.Kind.ASK_FOR_LOT), kinds(list));
        assertEquals(1, list.lines().get(0).buy());
        Missing missing = list.lines().get(0).missing();
        assertEquals(0.4, missing.ofLot().get("7 B"), EXACT);
        assertEquals(0, missing.ofAny(), EXACT);
    }

    /** By hand: 1.1 wanted of lot 12; the stash has 0.5 of it and 3 of lot 9, which stay. So 0.6 of lot 12 is missing. */
    @Test
    void where_the_lot_matters_a_named_lot_alone_serves() {
        StashEntry[] stash = {Skeins.stash("K1", "dyed", 3, "9"), Skeins.stash("K1", "dyed", 0.5, "12"), Skeins.stash("K1", "dyed", 2, "")};
        BuyList list = list(List.of(Skeins.piece("p", Skeins.eating("K1", "dyed", 1000, Optional.of("12")))), stash);
        StashShare share = list.lines().get(0).shares().get(0);
        assertEquals(List.of(new StashShare.Drawn(1, Optional.of("12"), 0.5)), share.drawn());
        assertEquals(0.6, share.missing().ofLot().get("12"), EXACT);
        assertEquals(List.of("12"), list.lines().get(0).missing().asked().stream().map(one -> one.lot().orElseThrow()).toList());
        assertEquals(List.of(ThreadWarning.Kind.ASK_FOR_LOT, ThreadWarning.Kind.OTHER_LOTS), kinds(list));
        assertFalse(share.mixed());
    }

    /** The same piece with leave to mix takes all from the lot that covers it, as a piece that names none would. */
    @Test
    void a_thread_that_mixes_lots_is_served_from_any() {
        StashEntry[] stash = {Skeins.stash("K1", "dyed", 3, "9"), Skeins.stash("K1", "dyed", 0.5, "12")};
        BuyList list = list(List.of(Skeins.piece("p", Skeins.mixing(Skeins.eating("K1", "dyed", 1000, Optional.of("12"))))), stash);
        assertEquals(List.of(Optional.of("9")), list.lines().get(0).shares().get(0).drawn().stream().map(StashShare.Drawn::lot).toList());
        assertEquals(0, list.lines().get(0).buy());
        assertEquals(List.of(), list.lines().get(0).missing().asked());
    }

    /** By hand: 1 likely; named 0.5 first, then the rest of another lot: cotton of two lots does not show. */
    @Test
    void where_the_lot_does_not_matter_a_named_lot_is_only_the_first() {
        BuyList list = list(List.of(Skeins.piece("p", Skeins.eating("K1", "cotton", 1000, Optional.of("12")))),
                Skeins.stash("K1", "cotton", 3, "9"), Skeins.stash("K1", "cotton", 0.5, "12"));
        assertEquals(List.of(new StashShare.Drawn(1, Optional.of("12"), 0.5), new StashShare.Drawn(0, Optional.of("9"), 0.5)),
                list.lines().get(0).shares().get(0).drawn());
        assertEquals(List.of(), list.warnings());
    }

    /** By hand: 0.55 of lot 12 for the piece, 0.55 of lot 9 for its part, 0.22 of any for another. Each lot covers its own; the third takes the greater rest. */
    @Test
    void a_piece_and_its_part_get_each_the_lot_they_name() {
        Part part = new Part("Verse", 2, Optional.empty(), List.of(Skeins.eating("K1", "dyed", 500, Optional.of("9"))));
        Part open = new Part("Date", 2, Optional.empty(), List.of(Skeins.eating("K1", "dyed", 200)));
        Piece piece = Skeins.piece("p", List.of(Skeins.eating("K1", "dyed", 500, Optional.of("12"))), List.of(part, open), Optional.empty(),
                Progress.NONE, Goal.NONE);
        StashShare share = list(List.of(piece), Skeins.stash("K1", "dyed", 0.8, "12"), Skeins.stash("K1", "dyed", 0.6, "9")).lines().get(0).shares().get(0);
        Map<Optional<String>, Double> drawn = share.drawn().stream().collect(Collectors.toMap(StashShare.Drawn::lot, StashShare.Drawn::skeins));
        assertEquals(0.77, drawn.get(Optional.of("12")), EXACT);
        assertEquals(0.55, drawn.get(Optional.of("9")), EXACT);
        assertEquals(0, share.toBuySkeins(), EXACT);
        assertTrue(share.mixed());
    }

    /**
     * By hand: a wants 0.44 of lot 9, b 0.44 of lot 12, c 0.44 of any. Two lots are two skeins, not the one that 0.88 would be, and
     * what may be of any fits into the first: 0.88. With 0.77 of any it would not (1.21), and the second is as good: three skeins.
     */
    @Test
    void every_lot_that_is_asked_for_is_a_skein_of_its_own() {
        Piece a = Skeins.piece("a", Skeins.eating("K1", "dyed", 400, Optional.of("9")));
        Piece b = Skeins.piece("b", Skeins.eating("K1", "dyed", 400, Optional.of("12")));
        BuyLine line = list(List.of(a, b, Skeins.piece("c", Skeins.eating("K1", "dyed", 400)))).lines().get(0);
        assertEquals(2, line.buy());
        assertEquals(List.of(1L, 1L), line.missing().asked().stream().map(Missing.OfLot::whole).toList());
        assertEquals(1.32, line.missingSkeins(), EXACT);
        BuyLine more = list(List.of(a, b, Skeins.piece("c", Skeins.eating("K1", "dyed", 700)))).lines().get(0);
        assertEquals(3, more.buy());
        BuyLine free = list(List.of(Skeins.piece("c", Skeins.eating("K1", "dyed", 400)))).lines().get(0);
        assertEquals(List.of(), free.missing().asked());
        assertEquals(1, free.buy());
    }

    /**
     * By hand: 0.7 of any would make 1.2 of lot 12's 0.5, a second skein, and 3.9 of lot 9's 3.2, which four hold anyway. So it goes with
     * lot 9, though that is the larger purchase: 1 + 4 skeins.
     */
    @Test
    void what_may_be_of_any_lot_goes_where_it_opens_no_skein() {
        Missing missing = new Missing(new TreeMap<>(Map.of("12", 0.5, "9", 3.2)), 0.7);
        assertEquals(List.of(1L, 4L), missing.purchases().stream().map(Missing.OfLot::whole).toList());
        assertEquals(3.9, missing.purchases().get(1).skeins(), EXACT);
        assertEquals(5, missing.buy());
    }

    @Test
    void what_is_missing_of_a_lot_is_more_than_nothing() {
        assertThrows(IllegalArgumentException.class, () -> new Missing(new TreeMap<>(Map.of("9", 0.0)), 1));
        assertThrows(IllegalArgumentException.class, () -> new Missing(new TreeMap<>(), -0.1));
    }

    /**
     * By hand: p names lots 9 and 12 and gets its 0.55 of lot 9; q names 12 alone. Both lack lot 12, 0.55 and 0.33, so one warning asks for
     * both; that p names lot 9 too makes its lots meet, and no other warning. 0.05 of lot 9 is left for nobody.
     */
    @Test
    void pieces_that_lack_the_same_lot_are_told_of_together() {
        Part verse = new Part("Verse", 2, Optional.empty(), List.of(Skeins.eating("K1", "dyed", 500, Optional.of("9"))));
        Piece p = Skeins.piece("p", List.of(Skeins.eating("K1", "dyed", 500, Optional.of("12"))), List.of(verse), Optional.empty(),
                Progress.NONE, Goal.NONE);
        Piece q = Skeins.piece("q", Skeins.eating("K1", "dyed", 300, Optional.of("12")));
        assertEquals(List.of(new ThreadWarning(ThreadWarning.Kind.MIXED_LOTS, "K1", "dyed", List.of("p")),
                new ThreadWarning(ThreadWarning.Kind.ASK_FOR_LOT, "K1", "dyed", List.of("p", "q")),
                new ThreadWarning(ThreadWarning.Kind.OTHER_LOTS, "K1", "dyed", List.of("p", "q"))),
                list(List.of(p, q), Skeins.stash("K1", "dyed", 0.6, "9")).warnings());
    }

    /** By hand: the stash's one skein is a's; b's 1.05 are bought, just over one. */
    @Test
    void only_who_buys_is_told_of_a_knifes_edge() {
        BuyList list = list(List.of(wanting("a", 1000, Goal.NONE), wanting("b", 1050, Goal.NONE)), Skeins.stash("K1", "cotton", 1, ""));
        assertEquals(List.of(new ThreadWarning(ThreadWarning.Kind.JUST_OVER, "K1", "cotton", List.of("b"))), list.warnings());
    }

    private static CalledThread called(String name) {
        CalledThread it = Skeins.eating("K1", "cotton", 300);
        return new CalledThread(it.code(), Optional.of(name), it.colour(), it.symbol(), it.skein(), it.strands(), it.stitches(), it.share(),
                it.used(), it.over(), it.lot(), it.mixLots());
    }

    @Test
    void a_thread_is_shown_as_it_is_first_called_by_a_name() {
        BuyList list = list(List.of(wanting("a", 300, Goal.NONE), Skeins.piece("b", called("Tar")), Skeins.piece("c", called("Pitch"))));
        assertEquals(Optional.of("Tar"), list.lines().get(0).thread().name());
        CalledThread plain = Skeins.eating("K1", "cotton", 400);
        assertEquals(plain, list(List.of(Skeins.piece("a", plain), wanting("b", 300, Goal.NONE))).lines().get(0).thread());
    }

    /** By hand: 0.4 and 0.7 likely are 1.1, a tenth less and a tenth more either way; each alone is one skein, both are two. */
    @Test
    void a_line_adds_up_what_its_pieces_need() {
        BuyLine line = list(List.of(wanting("a", 400, Goal.NONE), wanting("b", 700, Goal.NONE))).lines().get(0);
        assertEquals(0.99, line.needSkeins().low(), EXACT);
        assertEquals(1.1, line.needSkeins().likely(), EXACT);
        assertEquals(1.21, line.needSkeins().high(), EXACT);
        assertEquals(List.of(1L, 1L), line.shares().stream().map(StashShare::wholeSkeinsToBuy).toList());
        assertEquals(2, line.buy());
    }

    /** A stash entry without a put-up is cotton; a piece that takes the code as cotton too shows that it was meant so. */
    @Test
    void a_stash_in_another_put_up_is_told_unless_a_piece_takes_it_so() {
        Piece dyed = Skeins.piece("p", Skeins.eating("K1", "dyed", 400));
        assertEquals(List.of(new ThreadWarning(ThreadWarning.Kind.STASH_AS_OTHER, "K1", "dyed", List.of("p"))),
                list(List.of(dyed), Skeins.stash("K1", "cotton", 2, "7 C")).warnings());
        assertEquals(List.of(), list(List.of(dyed, Skeins.piece("q", Skeins.eating("K1", "cotton", 400))), Skeins.stash("K1", "cotton", 2, "7 C")).warnings());
        assertEquals(List.of(), list(List.of(dyed), Skeins.stash("K1", "cotton", 2, "7 C"), Skeins.stash("K1", "dyed", 2, "7 C")).warnings());
    }

    @Test
    void where_the_lot_does_not_matter_nothing_is_said_of_it() {
        BuyList list = list(List.of(Skeins.piece("p", Skeins.eating("K1", "cotton", 1500))),
                Skeins.stash("K1", "cotton", 0.6, "7 C"), Skeins.stash("K1", "cotton", 0.4, "7 B"));
        assertFalse(list.lines().get(0).shares().get(0).mixed());
        assertEquals(List.of(), list.warnings());
    }

    /** Entries of one lot are one lot: 0.3 + 0.3 cover 0.55. Without a lot they may be two. */
    @Test
    void entries_of_one_lot_are_one_and_entries_without_are_not() {
        Piece piece = Skeins.piece("p", Skeins.eating("K1", "dyed", 500));
        assertFalse(list(List.of(piece), Skeins.stash("K1", "dyed", 0.3, "7 C"), Skeins.stash("K1", "dyed", 0.3, "7 C"))
                .lines().get(0).shares().get(0).mixed());
        assertTrue(list(List.of(piece), Skeins.stash("K1", "dyed", 0.3, ""), Skeins.stash("K1", "dyed", 0.3, ""))
                .lines().get(0).shares().get(0).mixed());
    }

    @Test
    void another_code_or_another_put_up_serves_nobody() {
        BuyLine line = list(List.of(wanting("p", 500, Goal.NONE)), Skeins.stash("K2", "cotton", 5, ""), Skeins.stash("K1", "dyed", 5, ""))
                .lines().get(0);
        assertEquals(0, line.drawnSkeins(), EXACT);
        assertEquals(1, line.buy());
    }

    /** By hand: three quarters of 2 skeins are 1.5. A finished piece needs nothing. */
    @Test
    void only_what_is_left_to_stitch_is_bought_for() {
        LocalDate day = LocalDate.parse("2026-01-06");
        Progress quarter = new Progress(Optional.empty(), Optional.empty(), Optional.of(new Amount.Share(0.25)), List.of());
        Progress over = new Progress(Optional.of(day), Optional.of(day), Optional.empty(), List.of());
        Piece begun = Skeins.piece("a", List.of(Skeins.eating("K1", "cotton", 2000)), List.of(), Optional.empty(), quarter, Goal.NONE);
        Piece done = Skeins.piece("b", List.of(Skeins.eating("K1", "cotton", 9000)), List.of(), Optional.empty(), over, Goal.NONE);
        BuyList list = list(List.of(begun, done));
        assertEquals(1.5, list.lines().get(0).missingSkeins(), EXACT);
        assertEquals(List.of("a"), pieces(list.lines().get(0)));
        assertEquals(List.of(), list(List.of(done)).lines());
    }

    @Test
    void an_unknown_need_is_told_and_neither_bought_nor_served() {
        BuyList list = list(List.of(Skeins.piece("p", Skeins.sharing("K1", 0.5)), wanting("q", 500, Goal.NONE)),
                Skeins.stash("K1", "cotton", 0.2, ""));
        assertEquals(List.of("p"), list.lines().get(0).unknown());
        assertEquals(List.of("q"), pieces(list.lines().get(0)));
        assertEquals(List.of(new ThreadWarning(ThreadWarning.Kind.NEED_UNKNOWN, "K1", "cotton", List.of("p"))), list.warnings());
    }

    /** By hand: 2 skeins of cotton at 1.15 and 1 dyed (0.55) at 6.20 are 8.50. */
    @Test
    void prices_add_up() {
        List<Piece> pieces = List.of(Skeins.piece("p", Skeins.eating("K1", "cotton", 1500), Skeins.eating("K2", "dyed", 500)));
        BuyList list = ThreadReckoning.of(Skeins.basket(pieces, List.of(),
                Map.of("cotton", Skeins.price("1.15"), "dyed", Skeins.price("6.20")))).buyList();
        assertEquals(new BigDecimal("8.50"), list.cost().orElseThrow().amount());
        assertEquals("XTS", list.cost().orElseThrow().currency());
        BuyList half = ThreadReckoning.of(Skeins.basket(pieces, List.of(), Map.of("cotton", Skeins.price("1.15")))).buyList();
        assertEquals(new BigDecimal("2.30"), half.cost().orElseThrow().amount());
        assertEquals(List.of(new ThreadWarning(ThreadWarning.Kind.NO_PRICE, "K2", "dyed", List.of("p"))), half.warnings());
        assertEquals(Optional.empty(), ThreadReckoning.of(Skeins.basket(pieces)).buyList().cost());
    }

    @Test
    void prices_in_two_currencies_are_refused() {
        Basket basket = Skeins.basket(List.of(Skeins.piece("p", Skeins.eating("K1", "cotton", 1500), Skeins.eating("K2", "dyed", 500))),
                List.of(), Map.of("cotton", Skeins.price("1.15"), "dyed", new Price(BigDecimal.ONE, "XXX")));
        assertThrows(IllegalArgumentException.class, () -> ThreadReckoning.of(basket));
    }

    @Test
    void a_figure_on_a_knifes_edge_is_told() {
        assertEquals(List.of(ThreadWarning.Kind.JUST_ENOUGH), kinds(list(List.of(wanting("p", 1950, Goal.NONE)))));
        assertEquals(List.of(ThreadWarning.Kind.JUST_OVER), kinds(list(List.of(wanting("p", 1050, Goal.NONE)))));
        assertEquals(List.of(), kinds(list(List.of(wanting("p", 1500, Goal.NONE)))));
    }

    @Test
    void a_piece_finds_its_share() {
        ThreadReckoning reckoning = ThreadReckoning.of(Skeins.basket(List.of(wanting("p", 500, Goal.NONE)), Skeins.stash("K1", "cotton", 1, "")));
        ThreadTotal thread = reckoning.piece("p").orElseThrow().threads().get(0);
        assertEquals(0.5, reckoning.shares().get(ThreadReckoning.ShareOf.of("p", thread)).drawnSkeins(), EXACT);
        assertNull(reckoning.shares().get(ThreadReckoning.ShareOf.of("q", thread)));
    }
}
