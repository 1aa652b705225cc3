package kitleaf.command;

import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.YearMonth;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import kitleaf.basket.Paper;
import kitleaf.basket.Units;
import kitleaf.basket.form.ValueForm;
import kitleaf.command.speech.Exit;
import kitleaf.command.speech.Failure;
import kitleaf.sheet.page.SheetKind;
import kitleaf.sizing.year.Span;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.Model.ArgSpec;
import picocli.CommandLine.Model.OptionSpec;

/**
 * The options that several commands take, and how each value is read: by the forms of the basket, so that a slip gets the same answer
 * here as in a file, and where a basket has no such value by a reader of its own.
 */
final class Options {

    private Options() { }

    /** An option without a value. */
    static OptionSpec.Builder flag(String... names) {
        return OptionSpec.builder(names).type(boolean.class).arity("0");
    }

    /** Whether an option without a value was given. */
    static boolean given(OptionSpec flag) {
        return Boolean.TRUE.equals(flag.getValue());
    }

    /** What was given for an option or an argument. */
    static <T> Optional<T> value(ArgSpec given) {
        return Optional.ofNullable(given.getValue());
    }

    /** An option whose value a basket may hold too. */
    static <T> OptionSpec.Builder of(String name, String label, Class<T> type, ValueForm<T> form) {
        return OptionSpec.builder(name).paramLabel(label).type(type).converters((ITypeConverter<T>) form::read);
    }

    /** A day as a basket has it, or as one says it. */
    static OptionSpec.Builder spokenDay(String name) {
        return OptionSpec.builder(name).paramLabel("DAY").type(LocalDate.class)
                .converters((ITypeConverter<LocalDate>) value -> SpokenTime.day(value, LocalDate.now()));
    }

    static OptionSpec.Builder language() {
        return of("--language", "LANGUAGE", Locale.class, ValueForm.LANGUAGE);
    }

    static OptionSpec.Builder asOf() {
        return of("--as-of", "DATE", LocalDate.class, ValueForm.DAY);
    }

    static OptionSpec.Builder units() {
        return of("--units", "UNITS", Units.class, ValueForm.UNITS).completionCandidates(List.of("in", "cm"));
    }

    static OptionSpec.Builder paper() {
        return of("--paper", "PAPER", Paper.class, ValueForm.PAPER)
                .completionCandidates(List.of("A5", "A4", "A3", "A2", "A1", "letter", "legal", "tabloid"));
    }

    /** Sheets by their names, with commas between. */
    static OptionSpec.Builder sheets() {
        return OptionSpec.builder("--only").paramLabel("SHEET").splitRegex(",").type(List.class).auxiliaryTypes(SheetKind.class)
                .converters((ITypeConverter<SheetKind>) Options::sheet)
                .completionCandidates(Arrays.stream(SheetKind.values()).map(SheetKind::id).toList());
    }

    /** What is looked back on: a year, a quarter or a month. */
    static OptionSpec.Builder span() {
        return OptionSpec.builder("--span").paramLabel("SPAN").type(Span.class).converters((ITypeConverter<Span>) Options::span);
    }

    /** A folder. */
    static OptionSpec.Builder folder(String name) {
        return OptionSpec.builder(name).paramLabel("DIR").type(Path.class);
    }

    /** A number of labels or pages. */
    static OptionSpec.Builder number(String name) {
        return OptionSpec.builder(name).paramLabel("N").type(int.class).converters((ITypeConverter<Integer>) Options::whole);
    }

    /** The most labels or pages there may be, 1 or more. */
    static OptionSpec.Builder most(String name) {
        return number(name).converters((ITypeConverter<Integer>) Options::oneOrMore);
    }

    /** The name of a file or folder. */
    static Path path(String value) {
        try {
            return Path.of(value);
        } catch (InvalidPathException e) {
            throw Failure.of(Exit.WRONG_USAGE, "value.path");
        }
    }

    private static Span span(String value) {
        Matcher form = Pattern.compile("((?:19|20|21)[0-9]{2})(?:-[Qq]([1-4])|-(0[1-9]|1[0-2]))?").matcher(value.strip());
        if (!form.matches()) {
            throw Failure.of(Exit.WRONG_USAGE, "value.span", value);
        }
        int year = Integer.parseInt(form.group(1));
        return form.group(2) != null ? Span.quarter(year, Integer.parseInt(form.group(2)))
                : form.group(3) != null ? Span.month(YearMonth.of(year, Integer.parseInt(form.group(3)))) : Span.year(year);
    }

    private static SheetKind sheet(String value) {
        return Arrays.stream(SheetKind.values()).filter(kind -> kind.id().equals(value)).findFirst()
                .orElseThrow(() -> Failure.of(Exit.WRONG_USAGE, "value.sheet", value,
                        Arrays.stream(SheetKind.values()).map(SheetKind::id).collect(Collectors.joining(", "))));
    }

    private static int whole(String value) {
        try {
            return Integer.parseInt(value);
        } catch (NumberFormatException e) {
            throw Failure.of(Exit.WRONG_USAGE, "value.places", value);
        }
    }

    private static int oneOrMore(String value) {
        int number = whole(value);
        if (number < 1) {
            throw Failure.of(Exit.WRONG_USAGE, "value.most", value);
        }
        return number;
    }
}
