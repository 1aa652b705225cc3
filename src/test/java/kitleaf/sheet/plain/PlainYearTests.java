package kitleaf.sheet.plain;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import kitleaf.basket.Basket;
import kitleaf.basket.Goal;
import kitleaf.basket.Pace;
import kitleaf.sizing.Reckoning;
import kitleaf.sizing.year.Years;
import org.junit.jupiter.api.Test;

class PlainYearTests {

    private static List<String> lines(Pace pace) {
        Basket basket = Years.basket(pace, List.of(), Years.goals(2027), List.of(Years.piece("lamp", 1400, Goal.NONE), Years.piece("net", 90_000, Goal.NONE)));
        return new PlainYear(Locale.ENGLISH).of(Reckoning.of(basket).year(LocalDate.parse("2027-01-01")).orElseThrow());
    }

    /** By hand: 1400 stitches at 100 an hour are 14 days of one hour; 90,000 are 900 of 365. */
    @Test
    void a_plan_reads_in_a_few_lines() {
        assertEquals(List.of(
                "goals 2027, as of 2027-01-01",
                "  pace       100 stitches an hour, 7 hours a week",
                "  hours      365 left in the year, 14 needed",
                "  chosen     lamp               2027-01-14 at this one pace",
                "  all        in time at this one pace, chance unknown",
                "  not chosen net                does not fit",
                "  to know    no spread, for no weeks are logged"), lines(Years.pace(100, 7)));
    }

    @Test
    void what_is_unknown_is_said_to_be() {
        List<String> lines = lines(Pace.UNSAID);
        assertEquals("  pace       unknown stitches an hour, unknown hours a week", lines.get(1));
        assertEquals("  not chosen lamp               hours unknown", lines.get(3));
        assertEquals("             net                hours unknown", lines.get(4));
        assertEquals("  to know    no stitches per hour", lines.get(5));
    }
}
