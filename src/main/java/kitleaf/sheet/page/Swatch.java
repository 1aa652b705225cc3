package kitleaf.sheet.page;

import java.util.Optional;
import kitleaf.basket.thread.CalledThread;
import kitleaf.basket.thread.Colour;
import kitleaf.sizing.Contrast;

/**
 * A thread's colour with its chart symbol.
 *
 * @param fill its colour, white where she gave none
 * @param ink what the symbol is drawn in: ink or white, whichever reads better on the fill
 * @param symbol the chart's sign; empty for none
 */
public record Swatch(String fill, String ink, String symbol) implements Parts {

    private static final Colour INK = new Colour("#20262b");
    private static final Colour WHITE = new Colour("#ffffff");

    /** The swatch of a thread as its piece calls for it. */
    public static Swatch of(CalledThread thread) {
        return of(thread.colour(), thread.symbol());
    }

    /** The swatch of a colour and a symbol; white where there is no colour. */
    public static Swatch of(Optional<Colour> colour, Optional<String> symbol) {
        Colour fill = colour.orElse(WHITE);
        return new Swatch(fill.hex(), Contrast.better(fill, INK, WHITE).hex(), symbol.orElse(""));
    }

    @Override
    public Object part(String name) {
        return switch (name) {
            case "fill" -> fill;
            case "ink" -> ink;
            case "symbol" -> symbol;
            default -> null;
        };
    }
}
