package kitleaf.basket.form;

import java.math.BigDecimal;
import kitleaf.basket.Amount;
import kitleaf.basket.place.Fault;
import kitleaf.basket.place.Quote;

/** How much of a piece: a percentage or a whole number of stitches. */
public record AmountText() implements Form<Amount> {

    /** An amount as she writes it. */
    public static String written(Amount amount) {
        return amount instanceof Amount.Stitches stitches ? Long.toString(stitches.number())
                : BigDecimal.valueOf(((Amount.Share) amount).fraction()).movePointRight(2).stripTrailingZeros().toPlainString() + "%";
    }

    @Override
    public Amount read(String text) throws Fault {
        if (PercentText.meant(text)) {
            return new Amount.Share(PercentText.share().read(text));
        }
        if (text.strip().matches("[0-9]*\\.[0-9]{1,2}")) {
            throw Fault.of("amount.neither", Quote.bare(text));
        }
        return new Amount.Stitches(WholeText.stitches().read(text));
    }

    @Override
    public String example() {
        return "45%";
    }

    @Override
    public JsonShape shape() {
        return PercentText.share().shape().or(WholeText.stitches().shape());
    }
}
