package kitleaf.command;

import java.time.LocalDate;
import kitleaf.basket.form.ValueForm;
import kitleaf.basket.form.WrongValue;
import picocli.CommandLine.ITypeConverter;

/** Reads an option by the form that reads the same value from a basket. */
abstract class ValueOption<T> implements ITypeConverter<T> {

    private final ValueForm<T> form;

    private ValueOption(ValueForm<T> form) {
        this.form = form;
    }

    @Override
    public T convert(String value) {
        try {
            return form.read(value);
        } catch (WrongValue wrong) {
            throw new Unreadable(wrong);
        }
    }

    /** Words of hers. */
    static final class Words extends ValueOption<String> {
        Words() {
            super(ValueForm.WORDS);
        }
    }

    /** A number of stitches. */
    static final class Stitches extends ValueOption<Integer> {
        Stitches() {
            super(ValueForm.STITCHES);
        }
    }

    /** Hours of one day. */
    static final class Hours extends ValueOption<Double> {
        Hours() {
            super(ValueForm.HOURS);
        }
    }

    /** A day. */
    static final class Day extends ValueOption<LocalDate> {
        Day() {
            super(ValueForm.DAY);
        }
    }
}
