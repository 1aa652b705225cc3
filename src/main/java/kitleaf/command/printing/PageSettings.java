package kitleaf.command.printing;

import java.time.LocalDate;
import java.util.Locale;
import java.util.Optional;
import kitleaf.basket.Basket;
import kitleaf.press.drawing.QrSize;
import kitleaf.press.type.TextMeasure;
import kitleaf.sheet.page.SheetSettings;
import kitleaf.sheet.page.TextRuler;
import kitleaf.sheet.page.TypeScale;
import kitleaf.sizing.year.Span;

/** Makes the settings sheets are laid out by. */
public final class PageSettings {

    private PageSettings() {
    }

    /** How the sheets of a basket are laid out, their texts measured by the press. */
    public static SheetSettings of(Basket basket, boolean large, int skip, Optional<LocalDate> asOf,
                                   Optional<Span> span, boolean all) {
        return new SheetSettings(basket.paper(), basket.units(), large ? TypeScale.LARGE : TypeScale.ORDINARY, skip, asOf, span,
                all, basket.language(), ruler(basket.language()));
    }

    private static TextRuler ruler(Locale language) {
        TextMeasure measure = new TextMeasure(language);
        return new TextRuler() {
            @Override
            public int lines(String text, String family, int weight, double sizePt, double widthMm) {
                return measure.lines(text, family, weight, sizePt, widthMm);
            }

            @Override
            public int codeModules(String text) {
                return QrSize.modules(text, 'M').orElse(Integer.MAX_VALUE);
            }

            @Override
            public double widthMm(String text, String family, int weight, double sizePt) {
                return measure.widthMm(text, family, weight, sizePt);
            }
        };
    }
}
