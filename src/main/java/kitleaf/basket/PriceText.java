package kitleaf.basket;

import java.math.BigDecimal;
import java.util.Currency;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A price: an amount after a decimal point, then its currency by ISO 4217, {@code 1.20 GBP}. It is kept with as many
 * decimals as its currency has, so that 1.2 GBP and 1.20 GBP are one price.
 *
 * @param what is priced, in a word
 * @param example one to show her
 */
record PriceText(String what, String example) implements Form<Price> {

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
            throw new Fault(Quote.of(stripped) + " is a bare number", "write it with its currency, such as " + example());
        }
        return price(new BigDecimal(amount), currency(parts.group(2)), stripped);
    }

    private Fault noPrice(String text) {
        return new Fault(Quote.of(text) + " is not a price", "write an amount and its currency, such as " + example());
    }

    private Price price(BigDecimal amount, Currency currency, String text) throws Fault {
        if (text.startsWith("-")) {
            throw new Fault(Quote.of(text) + " is less than nothing", "write an amount of 0 or more");
        }
        if (amount.compareTo(MOST) > 0) {
            throw new Fault(Quote.of(text) + " is more than any " + what + " costs", "write 0 to " + MOST.toPlainString());
        }
        int decimals = currency.getDefaultFractionDigits();
        if (amount.scale() > decimals) {
            throw new Fault(Quote.of(text) + " has more decimals than " + currency.getCurrencyCode() + " has",
                    decimals == 0 ? "write a whole number" : "write at most " + decimals);
        }
        return new Price(amount.setScale(decimals), currency.getCurrencyCode());
    }

    private static Currency currency(String code) throws Fault {
        return known(code).orElseThrow(() -> new Fault(Quote.of(code) + " is not a currency known here",
                known(code.toUpperCase(Locale.ROOT)).map(near -> "did you mean " + near.getCurrencyCode() + "?")
                        .orElse("write its three capitals (ISO 4217), such as GBP or EUR")));
    }

    /** The currency of a code; none of those without coins, such as gold by the ounce, in which nothing is priced. */
    private static Optional<Currency> known(String code) {
        return Currency.getAvailableCurrencies().stream()
                .filter(currency -> currency.getCurrencyCode().equals(code) && currency.getDefaultFractionDigits() >= 0).findFirst();
    }

    @Override
    public JsonShape shape() {
        return JsonShape.pattern("([0-9]+(\\.[0-9]+)?|\\.[0-9]+)\\s*[A-Z]{3}", "An amount and its currency (ISO 4217).");
    }
}
