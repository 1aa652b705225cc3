package kitleaf.basket.reader;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import kitleaf.basket.Price;
import kitleaf.basket.form.Form;
import kitleaf.basket.form.PriceText;
import kitleaf.basket.form.PutUpName;
import kitleaf.basket.key.Fields;
import kitleaf.basket.place.Fault;
import kitleaf.basket.place.Problems;
import kitleaf.basket.place.Quote;
import kitleaf.basket.yaml.Node;
import kitleaf.words.Said;

/** Reads what a skein of each put-up costs. */
final class PriceReader {

    static final String EXAMPLE = "{cotton: 1.20 GBP}";
    static final Form<Price> PRICE = new PriceText("price.too-much.skein", "1.20 GBP");

    private final Form<String> putUpName;
    private final Problems problems;

    PriceReader(PutUpName putUpName, Problems problems) {
        this.putUpName = putUpName;
        this.problems = problems;
    }

    /** The prices that could be read, by put-up; all in the currency of the first. */
    Map<String, Price> read(Fields basket) {
        Map<String, Price> prices = new LinkedHashMap<>();
        basket.node(SettingsReader.PRICES).ifPresent(node -> {
            // Which names may stand there, their form says.
            List<String> names = node instanceof Node.Mapping mapping ? List.copyOf(mapping.entries().keySet()) : List.of();
            Fields.of(node, Fields.key("prices"), EXAMPLE, names, problems)
                    .ifPresent(fields -> names.forEach(name -> price(fields, name, prices)));
        });
        return prices;
    }

    private void price(Fields fields, String key, Map<String, Price> prices) {
        Node.Entry entry = fields.entries().get(key);
        Optional<String> putUp = fields.scalar(new Node.Scalar(entry.key(), key, true), Fields.key("skein"), putUpName);
        // A key that is no name may hold anything, so it is not set into a sentence.
        Optional<Price> price = putUp.isPresent() ? fields.value(key, PRICE) : fields.scalar(entry.value(), Said.of("thing.price"), PRICE);
        Optional<Map.Entry<String, Price>> other = price.flatMap(read -> prices.entrySet().stream()
                .filter(first -> !first.getValue().currency().equals(read.currency())).findFirst());
        if (other.isPresent()) {
            fields.wrong(key, Fault.of("price.currencies", price.get().currency(), Quote.bare(other.get().getKey()),
                    other.get().getValue().currency()));
        } else {
            putUp.ifPresent(name -> price.filter(read -> prices.put(name, read) != null)
                    .ifPresent(read -> problems.add(entry.key(), Fault.of("fields.twice", Quote.bare(name)))));
        }
    }
}
