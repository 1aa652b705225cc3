package kitleaf.sheet.page;

import java.time.LocalDate;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;
import kitleaf.basket.Paper;
import kitleaf.basket.Units;
import kitleaf.sizing.year.Span;

/**
 * How sheets are to be laid out.
 *
 * @param paper what they are printed on
 * @param units what comes first on them
 * @param type their type sizes, ordinary or large print
 * @param skip label places of the first sheet that are used already, 0 or more
 * @param asOf the day a year is looked at from; the data's own day when empty
 * @param span what is looked back on; the year of the data's own day when empty
 * @param all whether pieces are laid out too that need the sheet no more
 * @param language of the words
 * @param ruler measures text as it will be set
 */
public record SheetSettings(Paper paper, Units units, TypeScale type, int skip, Optional<LocalDate> asOf, Optional<Span> span,
        boolean all, Locale language, TextRuler ruler) {

    /** The same on other paper. */
    public SheetSettings on(Paper other) {
        return new SheetSettings(other, units, type, skip, asOf, span, all, language, ruler);
    }

    /** Refuses a missing part. */
    public SheetSettings {
        Objects.requireNonNull(paper);
        Objects.requireNonNull(units);
        Objects.requireNonNull(type);
        Objects.requireNonNull(asOf);
        Objects.requireNonNull(span);
        Objects.requireNonNull(language);
        Objects.requireNonNull(ruler);
    }
}
