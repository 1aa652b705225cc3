package kitleaf.basket.reader;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import kitleaf.basket.Price;
import kitleaf.basket.cloth.Cloth;
import kitleaf.basket.cloth.ClothCut;
import kitleaf.basket.cloth.Count;
import kitleaf.basket.form.CountText;
import kitleaf.basket.form.PriceText;
import kitleaf.basket.form.SizeText.Size;
import kitleaf.basket.form.TextForm;
import kitleaf.basket.form.YesNo;
import kitleaf.basket.key.Fields;
import kitleaf.basket.key.Key;
import kitleaf.basket.key.Keys;
import kitleaf.basket.place.Fault;
import kitleaf.basket.place.Problems;
import kitleaf.basket.place.Quote;
import kitleaf.basket.yaml.Node;

/** Reads the sizes cloth is sold in. */
final class ClothCutsReader {

    static final Keys KEYS = Keys.of("thing.cut", "- {name: fat quarter, size: 27 in x 18 in, price: 14.00 GBP}");
    private static final Key<String> NAME = KEYS.must("name", new TextForm("fat quarter"));
    private static final Key<Size> SIZE = KEYS.must("size", ClothOnHandReader.size("27 in x 18 in"));
    private static final Key<Price> PRICE = KEYS.may("price", new PriceText("price.too-much.cut", "14.00 GBP"));
    private static final Key<Cloth.Kind> KIND = KEYS.may("kind", ClothReader.KIND_FORM);
    private static final Key<Double> COUNT = KEYS.may("count", new CountText());
    private static final Key<String> CLOTH = KEYS.may("cloth", new TextForm("Sea-mist"));
    private static final Key<Cloth.WarpRun> WARP = KEYS.may("warp", ClothReader.WARP_FORM);
    private static final Key<Boolean> TURNING = KEYS.may("turning", new YesNo(), "no");

    private final Map<String, Price> skeinPrices;
    private final Problems problems;

    /**
     * A reader for a basket.
     *
     * @param skeinPrices what its skeins cost, for all its prices are in one currency
     */
    ClothCutsReader(Map<String, Price> skeinPrices, Problems problems) {
        this.skeinPrices = skeinPrices;
        this.problems = problems;
    }

    /** A cut with the keys it was read from. */
    private record FoundCut(Fields fields, Optional<ClothCut> cut) {
        boolean priced() {
            return fields.meant("price");
        }
    }

    /** The cuts that could be read, in their order; nothing if the basket is silent about them. */
    Optional<List<ClothCut>> read(Fields basket) {
        return basket.node(SettingsReader.CLOTH_CUTS).map(node -> {
            List<FoundCut> cuts = new ArrayList<>();
            for (Node item : basket.items(node, SettingsReader.CLOTH_CUTS)) {
                Fields.of(item, KEYS, problems).ifPresent(fields -> cuts.add(cut(fields)));
            }
            tellNames(cuts);
            tellPrices(cuts);
            return cuts.stream().flatMap(read -> read.cut().stream()).toList();
        });
    }

    private static FoundCut cut(Fields fields) {
        Optional<String> name = fields.value(NAME);
        Optional<Size> size = fields.value(SIZE);
        Optional<Price> price = fields.value(PRICE);
        Optional<Cloth.Kind> kind = fields.value(KIND);
        Optional<Count> count = ClothReader.count(fields, COUNT);
        Optional<String> cloth = fields.value(CLOTH);
        Cloth.WarpRun warp = fields.value(WARP).orElse(Cloth.WarpRun.DOWN);
        boolean turning = fields.value(TURNING).orElse(false);
        // A limit that cannot be read must not widen the cut to every cloth.
        boolean sure = kind.isPresent() == fields.meant("kind") && count.isPresent() == fields.meant("count")
                && cloth.isPresent() == fields.meant("cloth");
        return new FoundCut(fields, name.filter(n -> sure).flatMap(n -> size.map(
                s -> new ClothCut(n, s.acrossMm(), s.downMm(), warp, turning, price, cloth, kind, count))));
    }

    private static void tellNames(List<FoundCut> cuts) {
        List<ClothCut> before = new ArrayList<>();
        for (FoundCut read : cuts) {
            read.cut().ifPresent(cut -> {
                if (before.stream().anyMatch(other -> Cloth.sameName(other.name(), cut.name()) && oneClothIsSoldIn(other, cut))) {
                    read.fields().wrong("name", Fault.of("cut.same-name", Quote.bare(cut.name())));
                }
                before.add(cut);
            });
        }
    }

    /** Whether some cloth is sold in both cuts. */
    private static boolean oneClothIsSoldIn(ClothCut one, ClothCut other) {
        return one.cloth().flatMap(a -> other.cloth().map(b -> Cloth.sameName(a, b))).orElse(true)
                && one.kind().flatMap(a -> other.kind().map(b -> a == b)).orElse(true)
                && one.count().flatMap(a -> other.count().map(a::same)).orElse(true);
    }

    private void tellPrices(List<FoundCut> cuts) {
        boolean priced = cuts.stream().anyMatch(FoundCut::priced);
        Optional<Named> first = skeinPrices.entrySet().stream().sorted(Map.Entry.comparingByKey())
                .map(entry -> new Named(Quote.bare(entry.getKey()), entry.getValue())).findFirst();
        for (FoundCut read : cuts) {
            if (priced && !read.priced()) {
                read.fields().wrong("name", Fault.of("cut.no-price", PRICE.example()));
            }
            Optional<Named> own = read.cut().flatMap(cut -> cut.price().map(price -> new Named(Quote.bare(cut.name()), price)));
            if (own.isPresent() && first.isPresent() && !own.get().price().currency().equals(first.get().price().currency())) {
                read.fields().wrong("price", Fault.of("price.currencies", own.get().price().currency(), first.get().name(),
                        first.get().price().currency()));
            }
            first = first.or(() -> own);
        }
    }

    /** A price and what costs it, as it is told. */
    private record Named(String name, Price price) {
    }
}
