package kitleaf.basket.form;

import java.math.BigDecimal;
import java.util.Currency;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import kitleaf.basket.Price;
import kitleaf.basket.place.Advice;
import kitleaf.basket.place.Fault;
import kitleaf.basket.place.Quote;
import kitleaf.words.Said;

/**
 * A price: an amount after a decimal point, then its currency by ISO 4217, {@code 1.20 GBP}. It is kept with as many
 * decimals as its currency has, so that 1.2 GBP and 1.20 GBP are one price.
 *
 * @param tooMuch the name of the fault of a price too high for what is priced
 * @param example one to show her
 */
public record PriceText(String tooMuch, String example) implements Form<Price> {

    /** Nothing sold by the skein or the yard costs more, whatever the currency's coin is worth. */
    private static final BigDecimal MOST = BigDecimal.valueOf(1_000_000_000);

    private static final Pattern PARTS = Pattern.compile("(-?[0-9.,]+)\\s*(\\p{L}*)");
    private static final Pattern AMOUNT = Pattern.compile("-?([0-9]+(\\.[0-9]+)?|\\.[0-9]+)");

    @Override
    public Price read(String text) throws Fault {
        String stripped = text.strip();
        Matcher parts = PARTS.matcher(stripped);
        if (!parts.matches()) {
            throw noPrice(stripped);
        }
        String amount = parts.group(1);
        if (amount.indexOf(',') >= 0) {
            throw NumberText.decimalComma(stripped);
        }
        if (!AMOUNT.matcher(amount).matches()) {
            throw noPrice(stripped);
        }
        if (parts.group(2).isEmpty()) {
            throw Fault.of("price.bare", Quote.bare(stripped), example());
        }
        return price(new BigDecimal(amount), currency(parts.group(2)), stripped);
    }

    private Fault noPrice(String text) {
        return Fault.of("price.none", Quote.bare(text), example());
    }

    private Price price(BigDecimal amount, Currency currency, String text) throws Fault {
        if (text.startsWith("-")) {
            throw Fault.of("price.negative", Quote.bare(text));
        }
        if (amount.compareTo(MOST) > 0) {
            throw Fault.of(tooMuch, Quote.bare(text), MOST.toPlainString());
        }
        int decimals = currency.getDefaultFractionDigits();
        if (amount.scale() > decimals) {
            throw Fault.of(decimals == 0 ? "price.no-decimals" : "price.decimals", Quote.bare(text), currency.getCurrencyCode(), decimals);
        }
        return new Price(amount.setScale(decimals), currency.getCurrencyCode());
    }

    private static Currency currency(String code) throws Fault {
        return known(code).orElseThrow(() -> Fault.of(Said.of("price.currency", Quote.bare(code)),
                known(code.toUpperCase(Locale.ROOT)).map(near -> Advice.meant(near.getCurrencyCode()))
                        .orElse(Said.of("price.capitals"))));
    }

    /** The currency of a code; none of those without coins, such as gold by the ounce, in which nothing is priced. */
    private static Optional<Currency> known(String code) {
        return Currency.getAvailableCurrencies().stream()
                .filter(currency -> currency.getCurrencyCode().equals(code) && currency.getDefaultFractionDigits() >= 0).findFirst();
    }

    @Override
    public JsonShape shape() {
        return JsonShape.pattern("([0-9]+(\\.[0-9]+)?|\\.[0-9]+)\\s*[A-Z]{3}", Said.of("note.price"));
    }
}
