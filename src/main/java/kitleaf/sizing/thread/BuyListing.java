package kitleaf.sizing.thread;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import kitleaf.basket.Basket;
import kitleaf.basket.CalledThread;
import kitleaf.basket.PutUp;

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
    }

    /** What to buy for those pieces of the basket that are not finished. */
    static BuyList of(Basket basket, List<PieceThreads> pieces) {
        Map<Key, List<Call>> calls = new TreeMap<>(Comparator.comparing(Key::code).thenComparing(Key::skein));
        pieces.stream().filter(piece -> piece.left() > 0)
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
        List<String> wanting = new ArrayList<>();
        for (Call call : calls) {
            Optional<Estimate> skeins = call.total().skeins();
            if (skeins.isEmpty()) {
                unknown.add(call.id());
                continue;
            }
            StashShare share = sharing.next(call.id(), skeins.get().times(call.piece().left()), call.lots());
            shares.add(share);
            if (putUp.lotMatters() && share.toBuySkeins() > Edge.SLACK && !call.lots().isEmpty()) {
                wanting.add(call.id());
            }
        }
        List<CalledThread> called = calls.stream().flatMap(call -> call.total().needs().stream()).map(ThreadNeed::thread).toList();
        CalledThread named = called.stream().filter(thread -> thread.name().isPresent()).findFirst().orElse(called.get(0));
        List<String> lots = called.stream().flatMap(thread -> thread.lot().stream()).distinct().sorted().toList();
        BuyLine line = new BuyLine(first.code(), putUp, named, lots, shares, unknown.stream().sorted().toList(),
                Optional.ofNullable(basket.prices().get(putUp.name())));
        warn(line, wanting);
        return line;
    }

    private void warn(BuyLine line, List<String> wanting) {
        warn(ThreadWarning.Kind.NEED_UNKNOWN, line, line.unknown());
        warn(ThreadWarning.Kind.MIXED_LOTS, line, line.shares().stream().filter(StashShare::mixed).map(StashShare::piece).toList());
        warn(ThreadWarning.Kind.ASK_FOR_LOT, line, wanting);
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
