package kitleaf.basket.form;

import java.time.LocalDate;
import java.util.Locale;
import kitleaf.basket.Amount;
import kitleaf.basket.ChartSize;
import kitleaf.basket.Paper;
import kitleaf.basket.Units;
import kitleaf.basket.cloth.Cloth;
import kitleaf.basket.place.Fault;
import kitleaf.basket.reader.ClothReader;
import kitleaf.basket.reader.ProgressReader;

/**
 * How a value is written that she gives outside a file: on the command line, or as an answer. It is read by
 * the very form that reads it from a file, so what is taken here is taken there.
 *
 * @param <T> what it is once read
 */
public final class ValueForm<T> {

    /** What a piece is called, or a thread's colour name. */
    public static final ValueForm<String> WORDS = new ValueForm<>(new TextForm("Fog bell"));
    /** A chart's size. */
    public static final ValueForm<ChartSize> CHART = new ValueForm<>(new ChartText());
    /** A kind of cloth. */
    public static final ValueForm<Cloth.Kind> CLOTH_KIND = new ValueForm<>(ClothReader.KIND_FORM);
    /** Threads, or blocks, to the inch. */
    public static final ValueForm<Double> COUNT = new ValueForm<>(new CountText());
    /** Threads a stitch spans. */
    public static final ValueForm<Integer> OVER = new ValueForm<>(ClothReader.OVER_FORM);
    /** A number of stitches. */
    public static final ValueForm<Integer> STITCHES = new ValueForm<>(WholeText.stitches());
    /** Hours at the hoop on one day. */
    public static final ValueForm<Double> HOURS = new ValueForm<>(ProgressReader.HOURS);
    /** How much of a piece is done. */
    public static final ValueForm<Amount> AMOUNT = new ValueForm<>(new AmountText());
    /** A day. */
    public static final ValueForm<LocalDate> DAY = new ValueForm<>(ProgressReader.DAY);

    /** A paper, by its name or its size. */
    public static final ValueForm<Paper> PAPER = new ValueForm<>(Papers.form());
    /** Units to think in. */
    public static final ValueForm<Units> UNITS = new ValueForm<>(Choice.of("choice.units", Units.class));
    /** A language. */
    public static final ValueForm<Locale> LANGUAGE = new ValueForm<>(new LanguageText());

    private final Form<T> form;

    private ValueForm(Form<T> form) {
        this.form = form;
    }

    /**
     * The value a text stands for.
     *
     * @throws WrongValue if it stands for none
     */
    public T read(String text) {
        try {
            return form.read(text);
        } catch (Fault fault) {
            throw new WrongValue(fault);
        }
    }
}
