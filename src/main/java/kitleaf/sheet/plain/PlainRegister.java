package kitleaf.sheet.plain;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import kitleaf.basket.Units;
import kitleaf.sheet.words.Figures;
import kitleaf.sheet.words.SheetWords;
import kitleaf.sizing.PieceReckoning;
import kitleaf.sizing.Register;
import kitleaf.sizing.cloth.PieceSize;
import kitleaf.words.Words;

/** All pieces as plain text, one line each by how they stand, at most 80 columns wide where IDs allow. */
public final class PlainRegister {

    private static final int WIDTH = 80;
    private static final int LEAST_TITLE = 12;
    /** What stands behind the title: percents, stitches left, the last day and the size, with blanks before the latter two. */
    private static final int FIGURES = 5 + 8 + 2 + 10 + 2 + 15;
    private static final String CUT_OFF = "...";

    private final Locale language;
    private final PlainWords words;
    private final Words sheetWords;
    private final Figures figures;
    private final String unit;

    /** Lines with these units, in words of this language. */
    public PlainRegister(Units units, Locale language) {
        this.language = language;
        this.words = new PlainWords(language, 0);
        this.sheetWords = SheetWords.in(language);
        this.figures = words.figures(units);
        this.unit = figures.unit(units == Units.IN ? "in" : "cm");
    }

    /** The lines of all pieces, each group under its heading. */
    public List<String> of(List<PieceReckoning> pieces) {
        int ids = pieces.stream().mapToInt(it -> it.piece().id().length()).max().orElse(0);
        int titles = Math.max(LEAST_TITLE, WIDTH - 4 - ids - FIGURES);
        List<String> lines = new ArrayList<>();
        lines.add(line(ids, words.say("register.id"), titles, words.say("register.piece"), words.say("register.done"),
                words.say("register.left"), words.say("register.touched"), words.say("register.size", unit.strip())));
        Register.of(pieces, language).forEach((state, alike) -> {
            lines.add("");
            lines.add(words.say("register.group", sheetWords.say("state." + Words.word(state)), alike.size()));
            alike.forEach(one -> lines.add(line(ids, titles, one)));
        });
        return lines;
    }

    private String line(int ids, int titles, PieceReckoning one) {
        PieceSize size = one.cloth().size();
        String wide = figures.size(size.across().finishedMm(), size.down().finishedMm());
        return line(ids, one.piece().id(), titles, one.piece().title(), figures.percent(Integer.toString(one.tally().percentDone())),
                one.tally().left() == 0 ? "" : figures.grouped(one.tally().left()),
                one.piece().progress().touched().map(Object::toString).orElse(""), wide.substring(0, wide.length() - unit.length()));
    }

    private static String line(int ids, String id, int titles, String title, String done, String left, String touched, String size) {
        String format = "  %-" + ids + "s %-" + titles + "s %5s%8s  %-10s  %s";
        return Figures.plain(String.format(Locale.ROOT, format, id, fitted(title, titles), done, left, touched, size)).stripTrailing();
    }

    private static String fitted(String title, int width) {
        return title.codePointCount(0, title.length()) <= width ? title
                : title.substring(0, title.offsetByCodePoints(0, width - CUT_OFF.length())).stripTrailing() + CUT_OFF;
    }
}
