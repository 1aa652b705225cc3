package kitleaf.sizing.plan;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Predicate;
import java.util.stream.IntStream;
import kitleaf.basket.cloth.Cloth;
import kitleaf.basket.cloth.ClothOnHand;
import kitleaf.basket.cloth.ClothSupply;

/**
 * Parts the pieces into groups that share no cloth. A piece that names its cloth may be cut from cloth of that name only,
 * one that does not from any; kind and count must be what it asks for in both cases.
 */
final class Grouping {

    private final ClothSupply supply;
    private final List<Wanted> wanted;
    private final int[] leader;

    private Grouping(ClothSupply supply, List<Wanted> wanted) {
        this.supply = supply;
        this.wanted = wanted;
        this.leader = IntStream.range(0, wanted.size()).toArray();
    }

    /** The groups, in the order of their first pieces. */
    static List<Group> of(ClothSupply supply, List<Wanted> wanted) {
        Grouping grouping = new Grouping(supply, wanted);
        for (int one = 0; one < wanted.size(); one++) {
            for (int other = 0; other < one; other++) {
                if (meet(wanted.get(one).cloth(), wanted.get(other).cloth())) {
                    grouping.leader[grouping.leader(one)] = grouping.leader(other);
                }
            }
        }
        Map<Integer, List<Wanted>> groups = new LinkedHashMap<>();
        for (int piece = 0; piece < wanted.size(); piece++) {
            groups.computeIfAbsent(grouping.leader(piece), first -> new ArrayList<>()).add(wanted.get(piece));
        }
        return groups.values().stream().map(grouping::group).toList();
    }

    private int leader(int piece) {
        int leading = piece;
        while (leader[leading] != leading) {
            leading = leader[leading];
        }
        leader[piece] = leading;
        return leading;
    }

    /** Whether some cloth could serve both. */
    private static boolean meet(Cloth one, Cloth other) {
        return one.kind() == other.kind() && one.count().same(other.count())
                && (one.name().isEmpty() || other.name().isEmpty() || name(one).equals(name(other)));
    }

    private static Optional<String> name(Cloth cloth) {
        return cloth.name().map(name -> name.strip().toLowerCase(Locale.ROOT));
    }

    /** Whether a piece may be cut from a cloth on hand. */
    static boolean serves(ClothOnHand onHand, Cloth cloth) {
        return onHand.kind() == cloth.kind() && onHand.count().same(cloth.count())
                && cloth.name().map(onHand::isCalled).orElse(true);
    }

    private Group group(List<Wanted> pieces) {
        Cloth first = pieces.get(0).cloth();
        Kerf kerf = Kerf.of(first.count(), supply.cutting());
        List<Stock> onHand = IntStream.range(0, supply.onHand().size())
                .filter(place -> pieces.stream().anyMatch(piece -> serves(supply.onHand().get(place), piece.cloth())))
                .mapToObj(place -> Stock.of(place, supply.onHand().get(place))).toList();
        List<Stock> shop = IntStream.range(0, supply.cuts().size())
                .filter(place -> pieces.stream().anyMatch(piece -> supply.cuts().get(place).soldIn(piece.cloth())))
                .mapToObj(place -> Stock.of(place, supply.cuts().get(place))).toList();
        Map<Likeness, List<Wanted>> kins = new LinkedHashMap<>();
        for (Wanted piece : pieces) {
            kins.computeIfAbsent(likeness(piece, kerf, onHand, shop), alike -> new ArrayList<>()).add(piece);
        }
        return new Group(first.kind(), first.count(), kerf,
                kins.entrySet().stream().map(kin -> kin.getKey().kin(kin.getValue())).toList(), onHand, shop);
    }

    /** What makes two pieces alike to the knife. */
    private record Likeness(List<Shape> shapes, Optional<String> name, Set<Integer> onHand, Set<Integer> shop) {

        Group.Kin kin(List<Wanted> members) {
            return new Group.Kin(members, name, onHand, shop);
        }
    }

    private static Likeness likeness(Wanted piece, Kerf kerf, List<Stock> onHand, List<Stock> shop) {
        return new Likeness(piece.shapes(true, kerf), name(piece.cloth()),
                which(onHand, stock -> serves(stock.onHand().orElseThrow(), piece.cloth())),
                which(shop, stock -> stock.cut().orElseThrow().soldIn(piece.cloth())));
    }

    private static Set<Integer> which(List<Stock> stocks, Predicate<Stock> takes) {
        Set<Integer> which = new TreeSet<>();
        for (int at = 0; at < stocks.size(); at++) {
            if (takes.test(stocks.get(at))) {
                which.add(at);
            }
        }
        return which;
    }
}
