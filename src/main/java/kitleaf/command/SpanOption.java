package kitleaf.command;

import java.time.DateTimeException;
import java.time.YearMonth;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import kitleaf.sizing.year.Span;
import picocli.CommandLine.ITypeConverter;

/** Reads {@code --span}: a year, a quarter such as {@code 2026-Q1}, or a month. */
final class SpanOption implements ITypeConverter<Span> {

    private static final Pattern FORM = Pattern.compile("((?:19|20|21)[0-9]{2})(?:-[Qq]([1-4])|-([0-9]{2}))?");

    @Override
    public Span convert(String value) {
        Matcher form = FORM.matcher(value.strip());
        if (form.matches()) {
            int year = Integer.parseInt(form.group(1));
            try {
                return form.group(2) != null ? Span.quarter(year, Integer.parseInt(form.group(2)))
                        : form.group(3) != null ? Span.month(YearMonth.of(year, Integer.parseInt(form.group(3)))) : Span.year(year);
            } catch (DateTimeException noSuchMonth) {
                // Said below, with what to write instead.
            }
        }
        throw new Unreadable("value.span", value);
    }
}
