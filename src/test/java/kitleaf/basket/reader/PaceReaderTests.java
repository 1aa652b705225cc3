package kitleaf.basket.reader;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Path;
import java.util.List;
import java.util.OptionalDouble;
import kitleaf.basket.Pace;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PaceReaderTests {

    @TempDir
    private Path folder;

    private Written settings(String text) {
        return new Written(folder).file("pieces/p.yaml", Written.PIECE).file("basket.yaml", text);
    }

    private Pace pace(String text) {
        return settings("pace: " + text + "\n").basket().pace();
    }

    @Test
    void bothFiguresAreReadAndEachMayBeLeftOut() {
        assertEquals(new Pace(OptionalDouble.of(110), OptionalDouble.of(9)), pace("{stitches-per-hour: 110, hours-per-week: 9}"));
        assertEquals(new Pace(OptionalDouble.of(97.5), OptionalDouble.empty()), pace("{stitches-per-hour: 97.5}"));
        assertEquals(new Pace(OptionalDouble.empty(), OptionalDouble.of(.25)), pace("{hours-per-week: .25}"));
        assertEquals(new Pace(OptionalDouble.of(2000), OptionalDouble.of(168)), pace("{stitches-per-hour: 2000, hours-per-week: 168}"));
    }

    @Test
    void withoutAPaceNothingIsSaid() {
        assertEquals(Pace.UNSAID, settings("units: cm\n").basket().pace());
        assertEquals(Pace.UNSAID, pace("{}"));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
            pace:                             | 1:1: pace has no value; write one, such as pace: {stitches-per-hour: 110, hours-per-week: 9}
            pace: 110                         | 1:7: pace needs keys with values; write it like {stitches-per-hour: 110, hours-per-week: 9}
            pace: {stiches-per-hour: 110}     | 1:8: "stiches-per-hour" is not a key of pace; did you mean stitches-per-hour?
            pace: {stitches-per-hour: 0}      | 1:27: 0 stitches an hour is no pace at the hoop; write more than 0, up to 2000
            pace: {stitches-per-hour: 2000.1} | 1:27: 2000.1 stitches an hour is no pace at the hoop; write more than 0, up to 2000
            pace: {stitches-per-hour: -5}     | 1:27: -5 stitches an hour is no pace at the hoop; write more than 0, up to 2000
            pace: {stitches-per-hour: fast}   | 1:27: "fast" is not a number; write digits, such as 110
            pace: {stitches-per-hour: "97,5"} | 1:27: "97,5" has a decimal comma; write a point, as in 97.5
            pace: {hours-per-week: 0}         | 1:24: 0 hours is no time at the hoop in one week; write more than 0, up to 168
            pace: {hours-per-week: 168.5}     | 1:24: 168.5 hours is no time at the hoop in one week; write more than 0, up to 168
            pace: {hours-per-week: [9]}       | 1:24: hours-per-week needs one value; write it like 9
            """)
    void eachFaultIsOneProblem(String text, String message) {
        assertEquals(List.of("basket.yaml:" + message), settings(text + "\n").problems());
    }
}
