package kitleaf.sheet.plain;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import kitleaf.basket.LogEntry;
import kitleaf.basket.Units;
import kitleaf.sheet.words.Figures;
import kitleaf.sizing.year.Tonight;
import kitleaf.sizing.year.Tonight.Turn;

/** What lies ready for an evening, as plain lines of text. */
public final class PlainTonight {

    private static final int WIDTH = 18;

    private final PlainWords words;
    private final Figures figures;

    /** An evening in words of this language. */
    public PlainTonight(Locale language) {
        this.words = new PlainWords(language, WIDTH);
        // Nothing here is measured, so either units will do.
        this.figures = words.figures(Units.CM);
    }

    /** One evening. */
    public List<String> of(Tonight tonight) {
        List<String> lines = new ArrayList<>();
        for (Turn turn : tonight.turns()) {
            lines.add(words.say(lines.isEmpty() ? "tonight.focus" : "tonight.beside", turn.reckoning().piece().title(),
                    turn.reckoning().piece().id()));
            lines.add("  " + (turn.reckoning().tally().left() == 0 ? words.say("tonight.make-up")
                    : words.say("tonight.left", turn.reckoning().tally().percentDone(), turn.reckoning().tally().left())));
            turn.last().ifPresent(last -> lines.add("  " + words.say("tonight.last", last.on()) + note(last)));
            turn.stitches().ifPresent(stitches -> lines.add("  " + worth(turn, stitches, tonight)));
        }
        return lines.isEmpty() ? List.of(words.say("tonight.none")) : lines;
    }

    private static String note(LogEntry last) {
        return last.note().map(note -> ": " + note).orElse("");
    }

    private String worth(Turn turn, long stitches, Tonight tonight) {
        String hours = figures.decimal(tonight.hours().orElseThrow(), 1);
        long boxes = turn.boxesAfter() - turn.boxes();
        if (stitches == turn.reckoning().tally().left()) {
            return words.say("tonight.last-stitch", hours, stitches);
        }
        return boxes == 0 ? words.say("tonight.evenings", hours, stitches, turn.eveningsToNextBox().orElseThrow())
                : words.say(boxes == 1 ? "tonight.box" : "tonight.boxes", hours, stitches, boxes);
    }
}
