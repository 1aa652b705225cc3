package kitleaf.basket.reader;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Path;
import java.util.List;
import kitleaf.basket.Tags;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class TagsReaderTests {

    @TempDir
    private Path folder;

    private Written settings(String text) {
        return new Written(folder).file("pieces/p.yaml", Written.PIECE).file("basket.yaml", text);
    }

    @Test
    void nothing_said_gives_the_usual_tags() {
        assertEquals(new Tags(Tags.Usual.QUARTER_OR_MORE, Tags.Sides.FOLDED, 0, 0), settings("units: cm\n").basket().tags());
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            {size: eighth, sides: short-edge}                                | EIGHTH | SHORT_EDGE | 0    | 0
            {sides: long-edge, back-lies: {right: 0.8 mm, below: 0.5 mm}, size: quarter}    | QUARTER | LONG_EDGE | 0.8  | 0.5
            {sides: long-edge, back-lies: {left: 1 mm, above: 0.05 cm}, size: sixth}      | SIXTH | LONG_EDGE | -1   | -0.5
            """)
    void tags_are_read(String text, Tags.Share size, Tags.Sides sides, double right, double below) {
        assertEquals(new Tags(size, sides, right, below), settings("tags: " + text + "\n").basket().tags());
    }

    @Test
    void a_size_of_her_own_is_that_of_the_finished_tag() {
        assertEquals(new Tags(new Tags.Own(70, 110), Tags.Sides.FOLDED, 0, 0), settings("tags: {size: 70 mm x 11 cm}\n").basket().tags());
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
            {size: half}              | 1:14: "half" is not one length by another; write quarter, sixth or eighth of the sheet, or width x height, such as 70 mm x 110 mm
            {size: 50 mm x 80 mm}     | 1:14: a tag of 50 mm x 80 mm is too small for what it carries; write at least 60 mm x 55 mm
            {size: 100 mm x 140 mm}   | 1:14: a tag this large does not fit A4 unfolded; write a smaller size, or name larger paper
            {size: 200 mm x 140 mm, sides: long-edge} | 1:14: a tag this large does not fit A4; write a smaller size, or name larger paper
            {size: eighth}            | 1:14: eighth of A4 gives a tag faces smaller than 60 mm x 55 mm, too small for what it carries; write sixth, or name larger paper
            {sides: foldd}            | 1:15: "foldd" is not a way to make a tag; did you mean folded?
            {back-lies: {right: 3 cm}} | 1:27: "3 cm" is further than any printer shifts; write 0 mm to 10 mm
            {back-lies: {right: 1 mm, left: 1 mm}} | 1:39: a back cannot lie right and left at once; keep one of the two
            {sise: quarter}           | 1:8: "sise" is not a key of tags; did you mean size?
            """)
    void each_fault_is_one_problem(String text, String message) {
        assertEquals(List.of("basket.yaml:" + message), settings("tags: " + text + "\n").problems());
    }
}
