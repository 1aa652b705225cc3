package kitleaf.basket.reader;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import kitleaf.basket.cloth.Cloth;
import kitleaf.basket.cloth.ClothOnHand;
import kitleaf.basket.cloth.Count;
import kitleaf.basket.key.Fields;
import kitleaf.basket.place.Fault;
import kitleaf.basket.place.Quote;
import kitleaf.words.Said;

/**
 * The kind and count of a piece's cloth: those written there, or else those of the cloth on hand that it names.
 *
 * @param kind as written or taken, if that can be known
 * @param count as written or taken, if that can be known
 */
record ClothTaken(Optional<Cloth.Kind> kind, Optional<Count> count) {

    /** Reads them; what is left out and cannot be taken is a problem. */
    static ClothTaken read(Fields cloth, Optional<String> name, KnownCloths onHand) {
        Optional<Cloth.Kind> kind = cloth.value(ClothReader.KIND);
        Optional<Count> count = ClothReader.count(cloth, ClothReader.COUNT);
        List<String> missing = List.of("kind", "count").stream().filter(key -> !cloth.meant(key)).toList();
        boolean nameless = !cloth.meant("name");
        if (missing.isEmpty() || nameless || onHand.none()) {
            cloth.require(ClothReader.KIND);
            cloth.require(ClothReader.COUNT);
            return new ClothTaken(kind, count);
        }
        boolean inDoubt = name.isEmpty() || kind.isEmpty() && cloth.meant("kind") || count.isEmpty() && cloth.meant("count");
        if (inDoubt) {
            return new ClothTaken(kind, count);
        }
        List<ClothOnHand> alike = onHand.cloths().stream().filter(other -> other.isCalled(name.get()))
                .filter(other -> kind.map(k -> k == other.kind()).orElse(true))
                .filter(other -> count.map(c -> c.same(other.count())).orElse(true)).toList();
        Optional<Cloth.Kind> oneKind = one(alike, ClothOnHand::kind, Object::equals);
        Optional<Count> oneCount = one(alike, ClothOnHand::count, Count::same);
        if (onHand.known()) {
            tell(cloth, name.get(), onHand, missing, alike, oneKind.isPresent(), oneCount.isPresent());
        }
        return new ClothTaken(kind.or(() -> oneKind), count.or(() -> oneCount));
    }

    /** Whether two are the same. */
    private interface Same<T> {
        boolean of(T one, T other);
    }

    /** What all cloths agree on; nothing if they do not, or if there are none. */
    private static <T> Optional<T> one(List<ClothOnHand> cloths, Function<ClothOnHand, T> part, Same<T> same) {
        Optional<T> first = cloths.stream().map(part).findFirst();
        return first.filter(value -> cloths.stream().map(part).allMatch(other -> same.of(value, other)));
    }

    private static void tell(Fields cloth, String name, KnownCloths onHand, List<String> missing, List<ClothOnHand> alike,
                             boolean oneKind, boolean oneCount) {
        Said writeMissing = Said.of("taken", both(missing));
        if (onHand.cloths().stream().noneMatch(other -> other.isCalled(name))) {
            cloth.wrong("name", Fault.of(Said.of("taken.no-cloth", Quote.bare(name)), onHand.near(name)
                    .map(near -> Said.of("taken.near", near, writeMissing)).orElse(writeMissing)));
        } else if (alike.isEmpty()) {
            String written = missing.contains("kind") ? "count" : "kind";
            cloth.wrong("name", Fault.of(Said.of("taken.other", Quote.bare(name), written), writeMissing));
        } else {
            List<String> apart = new ArrayList<>();
            if (!oneKind) {
                apart.add("kind");
            }
            if (!oneCount) {
                apart.add("count");
            }
            if (!apart.isEmpty()) {
                cloth.wrong("name", Fault.of(Said.of("taken.differ", Quote.bare(name), both(apart)), Said.of("taken", both(apart))));
            }
        }
    }

    /** One key or two, as they stand in a sentence. */
    private static Object both(List<String> keys) {
        return keys.size() == 1 ? keys.get(0) : Said.of("taken.both", keys.get(0), keys.get(1));
    }
}
