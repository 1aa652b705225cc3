package kitleaf.basket.form;

import java.util.List;
import java.util.Locale;
import kitleaf.basket.place.Fault;
import kitleaf.basket.place.Quote;

/** Yes or no, in words. */
public record YesNo() implements Form<Boolean> {

    @Override
    public Boolean read(String text) throws Fault {
        return switch (text.strip().toLowerCase(Locale.ROOT)) {
            case "yes", "true" -> true;
            case "no", "false" -> false;
            default -> throw Fault.of("yes-no", Quote.bare(text));
        };
    }

    @Override
    public String example() {
        return "yes";
    }

    @Override
    public JsonShape shape() {
        return JsonShape.oneOf(List.of(true, false, "yes", "no")).or(JsonShape.pattern(JsonShape.anyCase(List.of("yes", "no", "true",
                "false"))));
    }
}
