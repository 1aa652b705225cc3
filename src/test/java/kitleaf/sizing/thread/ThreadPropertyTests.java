package kitleaf.sizing.thread;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Random;
import kitleaf.basket.Basket;
import kitleaf.basket.Goal;
import kitleaf.basket.Piece;
import kitleaf.basket.Progress;
import kitleaf.basket.thread.CalledThread;
import kitleaf.basket.thread.PutUp;
import kitleaf.basket.thread.StashEntry;
import kitleaf.basket.thread.StitchCount;
import kitleaf.basket.thread.StitchKind;
import kitleaf.sizing.Pieces;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;

/** What holds of every thread and every stash. Skeins are compared to a billionth for each draw, the slack of the arithmetic. */
class ThreadPropertyTests {

    private static final double SAME = 1e-6;

    private static StitchCount stitches(StitchKind kind, int count) {
        return new StitchCount(kind, count, Optional.empty(), OptionalInt.empty(),
                kind == StitchKind.OTHER ? OptionalDouble.of(20) : OptionalDouble.empty());
    }

    private static Estimate skeins(StitchKind kind, int count, int strands, double perInch, PutUp putUp) {
        CalledThread thread = Skeins.thread("K1", putUp.name(), strands, List.of(stitches(kind, count)), OptionalDouble.empty(),
                Optional.empty(), Optional.empty());
        Piece plain = Skeins.piece("p", thread);
        Piece piece = new Piece("p", "p", Optional.empty(), plain.stitches(), Pieces.linen(perInch, 1), Optional.empty(),
                plain.margins(), true, plain.threads(), List.of(), Optional.empty(), Progress.NONE, Goal.NONE);
        return PieceThreads.of(piece, Map.of(putUp.name(), putUp)).threads().get(0).skeins().orElseThrow();
    }

    private static void noMore(Estimate less, Estimate more) {
        assertTrue(less.low() <= more.low() && less.likely() <= more.likely() && less.high() <= more.high(), less + " " + more);
        assertTrue(less.low() >= 0 && Double.isFinite(more.high()));
    }

    @Property
    void more_stitches_more_strands_and_coarser_cloth_never_need_less(@ForAll StitchKind kind, @ForAll @IntRange(max = 200_000) int count,
            @ForAll @IntRange(min = 1, max = 11) int strands, @ForAll @DoubleRange(min = 6, max = 60) double perInch) {
        Estimate base = skeins(kind, count, strands, perInch, PutUp.COTTON);
        noMore(base, skeins(kind, count + 1, strands, perInch, PutUp.COTTON));
        noMore(base, skeins(kind, count, strands + 1, perInch, PutUp.COTTON));
        noMore(base, skeins(kind, count, strands, perInch * 0.9, PutUp.COTTON));
        assertTrue(count == 0 ? base.likely() == 0 : base.low() > 0);
    }

    @Property
    void an_estimate_keeps_its_order(@ForAll @IntRange(max = 200_000) int count, @ForAll StitchKind kind) {
        Estimate it = skeins(kind, count, 2, 18, PutUp.COTTON);
        assertTrue(it.low() <= it.likely() && it.likely() <= it.high());
        long buy = Edge.roundUp(it.likely());
        assertTrue(buy >= it.likely() - SAME && buy < it.likely() + 1);
    }

    @Provide
    Arbitrary<Basket> baskets() {
        Arbitrary<String> codes = Arbitraries.of("K1", "K2");
        Arbitrary<String> skeins = Arbitraries.of("cotton", "dyed");
        Arbitrary<Optional<String>> lots = Arbitraries.of("A", "B", "C").optional(0.7);
        Arbitrary<StashEntry> entries = Combinators.combine(codes, skeins, Arbitraries.doubles().between(0.1, 3).ofScale(1), lots)
                .as(StashEntry::new);
        Arbitrary<CalledThread> threads = Combinators.combine(codes, skeins, Arbitraries.integers().between(0, 4000), lots)
                .as(Skeins::eating).flatMap(thread -> Arbitraries.of(thread, thread, Skeins.mixing(thread)));
        Arbitrary<Goal> goals = Combinators.combine(Arbitraries.of(true, false),
                Arbitraries.integers().between(1, 3).map(day -> LocalDate.of(2027, 1, day)).optional(0.5))
                .as((must, by) -> new Goal(must, by, 1));
        Arbitrary<List<CalledThread>> lists = threads.list().ofMinSize(1).ofMaxSize(3);
        Arbitrary<Piece> pieces = Combinators.combine(lists, goals).as((list, goal) ->
                Skeins.piece("p", list, List.of(), Optional.empty(), Progress.NONE, goal));
        return Combinators.combine(pieces.list().ofMinSize(1).ofMaxSize(5), entries.list().ofMaxSize(6)).as((some, stash) -> {
            List<Piece> named = new ArrayList<>();
            for (Piece piece : some) {
                named.add(Skeins.piece("p" + named.size(), piece.threads(), List.of(), Optional.empty(), Progress.NONE, piece.goal()));
            }
            return Skeins.basket(named, stash.toArray(StashEntry[]::new));
        });
    }

    @Property
    void nothing_in_the_stash_is_shared_out_twice(@ForAll("baskets") Basket basket) {
        Map<String, Double> had = new HashMap<>();
        for (StashEntry entry : basket.stash()) {
            had.merge(entry.code() + entry.skein() + entry.lot(), entry.skeins(), Double::sum);
        }
        Map<String, Double> drawn = new HashMap<>();
        for (BuyLine line : ThreadReckoning.of(basket).buyList().lines()) {
            for (StashShare share : line.shares()) {
                for (StashShare.Drawn one : share.drawn()) {
                    drawn.merge(line.code() + line.putUp().name() + one.lot(), one.skeins(), Double::sum);
                }
            }
        }
        drawn.forEach((lot, skeins) -> assertTrue(skeins <= had.getOrDefault(lot, 0.0) + SAME, lot + " " + skeins + " of " + had));
    }

    @Property
    void stash_and_shop_hold_what_is_needed_and_no_skein_too_many(@ForAll("baskets") Basket basket) {
        ThreadReckoning reckoning = ThreadReckoning.of(basket);
        for (BuyLine line : reckoning.buyList().lines()) {
            double needed = 0;
            for (PieceThreads piece : reckoning.pieces()) {
                for (ThreadTotal total : piece.threads()) {
                    if (total.code().equals(line.code()) && total.putUp().equals(line.putUp())) {
                        Estimate skeins = total.skeins().orElseThrow();
                        needed += line.putUp().lotMatters() ? skeins.high() : skeins.likely();
                    }
                }
            }
            assertTrue(line.drawnSkeins() + line.buy() >= needed - SAME);
            int lots = Math.max(1, line.missing().asked().size());
            assertTrue(line.drawnSkeins() + line.buy() < needed + lots + SAME);
        }
    }

    @Property
    void a_stash_never_makes_her_buy_more(@ForAll("baskets") Basket basket) {
        List<BuyLine> with = ThreadReckoning.of(basket).buyList().lines();
        List<BuyLine> without = ThreadReckoning.of(Skeins.basket(basket.pieces())).buyList().lines();
        assertEquals(without.size(), with.size());
        for (int i = 0; i < with.size(); i++) {
            assertTrue(with.get(i).buy() <= without.get(i).buy());
        }
    }

    @Property
    void stash_is_left_only_where_every_piece_it_may_serve_is_served(@ForAll("baskets") Basket basket) {
        for (BuyLine line : ThreadReckoning.of(basket).buyList().lines()) {
            Map<Optional<String>, Double> left = new HashMap<>();
            basket.stash().stream().filter(it -> it.code().equals(line.code()) && it.skein().equals(line.putUp().name()))
                    .forEach(it -> left.merge(it.lot(), it.skeins(), Double::sum));
            line.shares().forEach(share -> share.drawn().forEach(one -> left.merge(one.lot(), -one.skeins(), Double::sum)));
            double all = left.values().stream().mapToDouble(Double::doubleValue).sum();
            assertTrue(line.missing().ofAny() < SAME || all < SAME, left + " left, " + line);
            line.missing().ofLot().keySet().forEach(lot -> assertTrue(left.getOrDefault(Optional.of(lot), 0.0) < SAME, left + " left, " + line));
        }
    }

    /**
     * What a piece gets of each lot, beyond what threads of it name that lot, has to be wanted by threads that name none or mix: by hand, the
     * wanted of a thread is 1.1 thousandths a stitch.
     */
    @Property
    void no_skein_of_another_lot_is_given_to_a_thread_that_names_one(@ForAll("baskets") Basket basket) {
        ThreadReckoning reckoning = ThreadReckoning.of(basket);
        for (BuyLine line : reckoning.buyList().lines()) {
            for (StashShare share : line.shares()) {
                double open = 0;
                Map<Optional<String>, Double> named = new HashMap<>();
                for (CalledThread thread : reckoning.piece(share.piece()).orElseThrow().piece().threads()) {
                    if (thread.code().equals(line.code()) && thread.skein().equals(line.putUp().name())) {
                        double wanted = 0.0011 * thread.stitches().get(0).count();
                        if (thread.lot().isEmpty() || thread.mixLots()) {
                            open += wanted;
                        } else {
                            named.merge(thread.lot(), wanted, Double::sum);
                        }
                    }
                }
                double beyond = share.drawn().stream().mapToDouble(one -> Math.max(0, one.skeins() - named.getOrDefault(one.lot(), 0.0))).sum();
                assertTrue(!line.putUp().lotMatters() || beyond <= open + SAME, share + ", " + named + " named, " + open + " open");
                double asked = share.missing().ofLot().values().stream().mapToDouble(Double::doubleValue).sum();
                assertTrue(line.putUp().lotMatters() || asked == 0, share.toString());
            }
        }
    }

    @Property
    void a_single_lot_that_covers_a_piece_is_all_it_is_served_from(@ForAll("baskets") Basket basket) {
        ThreadReckoning reckoning = ThreadReckoning.of(basket);
        for (BuyLine line : reckoning.buyList().lines()) {
            Map<Object, Double> left = new HashMap<>();
            for (int i = 0; i < basket.stash().size(); i++) {
                StashEntry it = basket.stash().get(i);
                if (it.code().equals(line.code()) && it.skein().equals(line.putUp().name())) {
                    left.merge(it.lot().<Object>map(lot -> lot).orElse(i), it.skeins(), Double::sum);
                }
            }
            for (StashShare share : line.shares()) {
                boolean named = reckoning.piece(share.piece()).orElseThrow().piece().threads().stream().anyMatch(thread ->
                        thread.code().equals(line.code()) && thread.skein().equals(line.putUp().name()) && thread.lot().isPresent() && !thread.mixLots());
                boolean covered = !named && left.values().stream().anyMatch(skeins -> skeins >= share.wantedSkeins());
                assertTrue(!line.putUp().lotMatters() || !covered || share.drawn().size() <= 1, share.toString());
                share.drawn().forEach(one -> left.merge(one.lot().<Object>map(lot -> lot).orElse(one.entry()), -one.skeins(), Double::sum));
            }
        }
    }

    @Property
    void the_order_of_pieces_in_the_basket_changes_nothing_to_buy(@ForAll("baskets") Basket basket, @ForAll long seed) {
        List<Piece> turned = new ArrayList<>(basket.pieces());
        Collections.shuffle(turned, new Random(seed));
        assertEquals(ThreadReckoning.of(basket).buyList(), ThreadReckoning.of(Skeins.basket(turned,
                basket.stash().toArray(StashEntry[]::new))).buyList());
    }
}
