package kitleaf.basket.reader;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import kitleaf.basket.TimeOff;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class TimeOffReaderTests {

    @TempDir
    private Path folder;

    private Written settings(String text) {
        return new Written(folder).file("pieces/p.yaml", Written.PIECE).file("basket.yaml", text);
    }

    private static TimeOff off(String from, String to, String why) {
        return new TimeOff(LocalDate.parse(from), LocalDate.parse(to), Optional.ofNullable(why));
    }

    @Test
    void stretchesAreReadAndSetInTheOrderOfTheirDays() {
        assertEquals(List.of(off("2027-02-28", "2027-02-28", null), off("2027-03-01", "2027-03-01", "herring supper"),
                off("2027-07-05", "2027-07-18", "boats")), settings("""
                time-off:
                  - {from: 2027-07-05, to: 2027-07-18, why: boats}
                  - {from: 2027-03-01, why: herring supper}
                  - {from: 2027-02-28, to: 2027-02-28}
                """).basket().timeOff());
    }

    @Test
    void withoutTimeOffThereIsNone() {
        assertEquals(List.of(), settings("units: cm\n").basket().timeOff());
        assertEquals(List.of(), settings("time-off: []\n").basket().timeOff());
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
            time-off:                            | 1:1: time-off has no value; write one, such as time-off: - {from: 2027-07-05, to: 2027-07-18, why: boats}
            time-off: {from: 2027-07-05}         | 1:11: time-off needs a list; write it like - {from: 2027-07-05, to: 2027-07-18, why: boats}
            time-off: [2027-07-05]               | 1:12: this time off needs keys with values; write it like - {from: 2027-07-05, to: 2027-07-18, why: boats}
            time-off: [{to: 2027-07-05}]         | 1:12: this time off has no from; write one, such as from: 2026-02-14
            time-off: [{form: 2027-07-05}]       | 1:13: "form" is not a key of this time off; did you mean from?
            time-off: [{from: 2027-07-05, till: 2027-07-18}] | 1:31: "till" is not a key of this time off; write one of: from, to, why
            time-off: [{from: July}]             | 1:19: "July" is not a date in the form year-month-day; write it like 2026-02-14
            time-off: [{from: 2027-07-05, to: 2027-07-32}] | 1:35: "2027-07-32" is a day the calendar does not have; write 2027-07-01 to 2027-07-31
            time-off: [{from: 2027-07-05, to: 2027-07-04}] | 1:35: 2027-07-04 is before this time off begins on 2027-07-05; write a later day, or mend from
            time-off: [{from: 2027-07-05, why: ""}] | 1:36: this text is empty; write something, such as boats
            """)
    void eachFaultIsOneProblem(String text, String message) {
        assertEquals(List.of("basket.yaml:" + message), settings(text + "\n").problems());
    }
}
