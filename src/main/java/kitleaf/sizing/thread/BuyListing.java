package kitleaf.sizing.thread;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Collectors;
import kitleaf.basket.Basket;
import kitleaf.basket.thread.CalledThread;
import kitleaf.basket.thread.PutUp;

/** Makes the buy list: one thread after the other, each piece in its turn. */
final class BuyListing {

    private final Basket basket;
    /** What pieces call for, in which put-up. */
    private final Set<Key> called;
    private final List<ThreadWarning> warnings = new ArrayList<>();

    private BuyListing(Basket basket, Set<Key> called) {
        this.basket = basket;
        this.called = called;
    }

    private record Key(String code, String skein) { }

    private record Call(PieceThreads piece, ThreadTotal total) {
        String id() {
            return piece.piece().id();
        }

        Set<String> lots() {
            return total.needs().stream().flatMap(need -> need.thread().lot().stream()).collect(Collectors.toSet());
        }

        /**
         * What it still needs; where the lot matters, a thread that names one takes no other unless it may mix. Nothing if nobody
         * knows.
         */
        Optional<StashSharing.Demand> demand() {
            Optional<Estimate> all = total.skeins().map(skeins -> skeins.times(piece.left()));
            Set<String> lots = lots();
            if (all.isEmpty() || lots.isEmpty() || !total.putUp().lotMatters()) {
                return all.map(skeins -> StashSharing.Demand.ofAny(skeins, lots));
            }
            SortedMap<String, Estimate> ofLot = new TreeMap<>();
            Estimate ofAny = Estimate.NONE;
            for (ThreadNeed need : total.needs()) {
                Estimate skeins = ((ThreadNeed.Known) need).skeins().times(piece.left());
                if (need.thread().lot().isPresent() && !need.thread().mixLots()) {
                    ofLot.merge(need.thread().lot().get(), skeins, Estimate::plus);
                } else {
                    ofAny = ofAny.plus(skeins);
                }
            }
            return Optional.of(new StashSharing.Demand(all.get(), ofLot, ofAny, lots));
        }
    }

    /** What to buy for those pieces of the basket that are neither stitched nor laid aside. */
    static BuyList of(Basket basket, List<PieceThreads> pieces) {
        Map<Key, List<Call>> calls = new TreeMap<>(Comparator.comparing(Key::code).thenComparing(Key::skein));
        pieces.stream().filter(PieceThreads::boughtFor)
                .sorted(Comparator.comparing(PieceThreads::piece, StashSharing.TURNS))
                .forEach(piece -> piece.threads().forEach(total -> calls
                        .computeIfAbsent(new Key(total.code(), total.putUp().name()), key -> new ArrayList<>())
                        .add(new Call(piece, total))));
        BuyListing listing = new BuyListing(basket, calls.keySet());
        List<BuyLine> lines = calls.values().stream().map(listing::line).toList();
        return new BuyList(lines, BuyList.cost(lines), listing.warnings);
    }

    private BuyLine line(List<Call> calls) {
        ThreadTotal first = calls.get(0).total();
        PutUp putUp = first.putUp();
        StashSharing sharing = new StashSharing(putUp, StashLot.of(basket.stash(), first.code(), putUp.name()));
        List<StashShare> shares = new ArrayList<>();
        List<String> unknown = new ArrayList<>();
        Map<Set<String>, List<String>> wanting = new LinkedHashMap<>();
        for (Call call : calls) {
            Optional<StashSharing.Demand> demand = call.demand();
            if (demand.isEmpty()) {
                unknown.add(call.id());
                continue;
            }
            StashShare share = sharing.next(call.id(), demand.get());
            shares.add(share);
            if (putUp.lotMatters() && share.toBuySkeins() > Edge.SLACK && !demand.get().named().isEmpty()) {
                Set<String> asked = share.missing().ofLot().isEmpty() ? demand.get().named() : share.missing().ofLot().keySet();
                wanting.computeIfAbsent(asked, lot -> new ArrayList<>()).add(call.id());
            }
        }
        Map<Set<String>, List<String>> strict = new LinkedHashMap<>();
        shares.stream().filter(share -> sharing.someLeft() && !share.missing().ofLot().isEmpty())
                .forEach(share -> strict.computeIfAbsent(share.missing().ofLot().keySet(), lot -> new ArrayList<>()).add(share.piece()));
        List<CalledThread> called = calls.stream().flatMap(call -> call.total().needs().stream()).map(ThreadNeed::thread).toList();
        CalledThread named = called.stream().filter(thread -> thread.name().isPresent()).findFirst().orElse(called.get(0));
        List<String> lots = called.stream().flatMap(thread -> thread.lot().stream()).distinct().sorted().toList();
        BuyLine line = new BuyLine(first.code(), putUp, named, lots, shares, unknown.stream().sorted().toList(),
                Optional.ofNullable(basket.prices().get(putUp.name())));
        warn(line, wanting, strict);
        return line;
    }

    /**
     * Warns of a line.
     *
     * @param wanting pieces that lack a lot they name, by the lots to ask for
     * @param strict those of them that take no other, though the stash has others left
     */
    private void warn(BuyLine line, Map<Set<String>, List<String>> wanting, Map<Set<String>, List<String>> strict) {
        warn(ThreadWarning.Kind.NEED_UNKNOWN, line, line.unknown());
        warn(ThreadWarning.Kind.MIXED_LOTS, line, line.shares().stream().filter(StashShare::mixed).map(StashShare::piece).toList());
        wanting.values().forEach(pieces -> warn(ThreadWarning.Kind.ASK_FOR_LOT, line, pieces));
        strict.values().forEach(pieces -> warn(ThreadWarning.Kind.OTHER_LOTS, line, pieces));
        List<String> buying = line.buy() == 0 ? List.of() : line.shares().stream()
                .filter(share -> share.toBuySkeins() > 0).map(StashShare::piece).toList();
        if (basket.stash().stream().map(entry -> new Key(entry.code(), entry.skein()))
                .anyMatch(held -> held.code().equals(line.code()) && !called.contains(held))) {
            warn(ThreadWarning.Kind.STASH_AS_OTHER, line, buying);
        }
        switch (line.edge()) {
            case JUST_ENOUGH -> warn(ThreadWarning.Kind.JUST_ENOUGH, line, buying);
            case JUST_OVER -> warn(ThreadWarning.Kind.JUST_OVER, line, buying);
            case CLEAR -> { }
        }
        if (!basket.prices().isEmpty() && line.each().isEmpty()) {
            warn(ThreadWarning.Kind.NO_PRICE, line, buying);
        }
    }

    private void warn(ThreadWarning.Kind kind, BuyLine line, List<String> pieces) {
        if (!pieces.isEmpty()) {
            warnings.add(new ThreadWarning(kind, line.code(), line.putUp().name(), pieces));
        }
    }
}
