package kitleaf.basket.reader;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import kitleaf.basket.Price;
import kitleaf.basket.cloth.ClothCut;
import kitleaf.basket.cloth.ClothSupply;
import kitleaf.basket.cloth.Cutting;
import kitleaf.basket.form.LengthText;
import kitleaf.basket.key.Fields;
import kitleaf.basket.key.Key;
import kitleaf.basket.key.Keys;
import kitleaf.basket.place.Problems;

/** Reads the cloth she has and can buy, and how she cuts. */
final class ClothSupplyReader {

    static final Keys CUTTING = Keys.under("cutting", "{fray: 3 mm, usable: 10 cm}");
    private static final Key<Double> FRAY = CUTTING.may("fray", new LengthText(0, Cutting.MOST_FRAY_MM, "cutting.fray", "3 mm"));
    private static final Key<Double> USABLE = CUTTING.may("usable", new LengthText(0, Cutting.MOST_USABLE_MM, "cutting.usable", "10 cm"));

    private final Problems problems;

    ClothSupplyReader(Problems problems) {
        this.problems = problems;
    }

    /**
     * What came of reading.
     *
     * @param onHandKnown whether the cloths on hand are all she has; false when some could not be read
     */
    record SupplyFound(ClothSupply supply, boolean onHandKnown) {
    }

    /** What the basket says of cloth; the usual where it is silent. */
    SupplyFound read(Fields basket, Map<String, Price> skeinPrices) {
        ClothOnHandReader.OnHand onHand = new ClothOnHandReader(problems).read(basket);
        Optional<List<ClothCut>> cuts = new ClothCutsReader(skeinPrices, problems).read(basket);
        Cutting cutting = basket.group(SettingsReader.CUTTING, CUTTING).map(ClothSupplyReader::cutting).orElse(Cutting.USUAL);
        return new SupplyFound(new ClothSupply(onHand.cloths(), cuts.orElse(ClothSupply.USUAL_CUTS), cuts.isPresent(), cutting),
                onHand.whole());
    }

    private static Cutting cutting(Fields fields) {
        return new Cutting(fields.value(FRAY).orElse(Cutting.USUAL.frayMm()),
                fields.value(USABLE).orElse(Cutting.USUAL.usableMm()));
    }
}
