package kitleaf.basket.form;

import java.util.regex.Matcher;
import java.util.regex.Pattern;
import kitleaf.basket.ChartSize;
import kitleaf.basket.place.Fault;
import kitleaf.basket.place.Quote;
import kitleaf.words.Said;

/** The size of a chart: stitches wide x high. */
public record ChartText() implements Form<ChartSize> {

    private static final Pattern SIZE = Pattern.compile("(.*[^\\sxX×])(?:\\s*[xX×]\\s*|\\s+by\\s+)(\\S.*)");
    private static final WholeText SIDE = new WholeText(1, ChartSize.MOST, "140");

    @Override
    public ChartSize read(String text) throws Fault {
        Matcher size = SIZE.matcher(text.strip());
        if (text.length() > 100 || !size.matches()) {
            throw Fault.of("chart.size", Quote.bare(text), example());
        }
        return new ChartSize(SIDE.read(size.group(1)), SIDE.read(size.group(2)));
    }

    @Override
    public String example() {
        return "140 x 210";
    }

    @Override
    public JsonShape shape() {
        return JsonShape.pattern("[0-9]+(\\s*[xX×]\\s*|\\s+by\\s+)[0-9]+", Said.of("note.chart"));
    }
}
