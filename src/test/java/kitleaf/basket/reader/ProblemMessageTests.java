package kitleaf.basket.reader;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Each faulty value gives exactly one problem, in these words. */
class ProblemMessageTests {

    @TempDir
    Path folder;

    private List<String> problems(String text) {
        return new Written(folder).problems(text);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
            margin: 3                  | 4:9: "3" is a bare number; write it with its unit, such as 3 in or 7.5 cm
            margin: "3"                | 4:9: "3" is a bare number; write it with its unit, such as 3 in or 7.5 cm
            margin: 2 m                | 4:9: "2 m" is wider than any margin; write 0 in to 1 m
            margin:                    | 4:1: margin has no value; write one, such as margin: 3 in
            margin: [3 in]             | 4:9: margin needs one value; write it like 3 in
            margin: {tops: 3 in}       | 4:10: "tops" is not a key of margin; did you mean top?
            margin: {top: 7,5 cm}      | 4:17: the comma before "5 cm" ends the value, since commas part values inside { }; write the number without a comma, and with a point before decimals
            finish: framd              | 4:9: "framd" is not a finish; did you mean framed?
            finish: eaten              | 4:9: "eaten" is not a finish; write one of: framed, hooped, pillow, pin-pillow, ornament, needle-case, needle-roll, bell-pull, bookmark, box-top, bag
            hoop: 3                    | 4:1: "hoop" is not a key of this piece; write one of: piece, designer, stitches, cloth, margin, finish, threads, parts, coverage, progress, goal, source, bag
            designer: ""               | 4:11: this text is empty; write something, such as Ottoline Marsh
            designer: "a\\tb"          | 4:11: "a	b" holds a line break, tab or other sign that does not show; write it on one line with plain spaces
            designer: {a: b}           | 4:11: designer needs one value; write it like Ottoline Marsh
            coverage: 101%             | 4:11: "101%" is more than the whole; write 0% to 100%
            coverage: half             | 4:11: "half" is not a whole number; write digits only, such as 2310
            coverage: 0.5              | 4:11: "0.5" is neither a percentage nor a whole number; write a percentage such as 45%, or stitches such as 2310
            coverage: 2,310            | 4:11: "2,310" has a mark among its digits; write digits only, as in 2310
            coverage: 2.310            | 4:11: "2.310" has a mark among its digits; write digits only, as in 2310
            progress: -5               | 4:11: -5 is out of range; write 0 to 1000000000
            progress: 29401            | 4:11: 29401 stitches are more than the 29400 the piece can hold; write how many are done, or under coverage how many stitches the piece has
            progress: {started: 2026-03-01, done: 29401} | 4:39: 29401 stitches are more than the 29400 the piece can hold; write how many are done, or under coverage how many stitches the piece has
            progress: 30841~parts: [{part: Verse, over: 1, stitches: 60 x 24}] | 4:11: 30841 stitches are more than the 30840 the piece can hold; write how many are done, or under coverage how many stitches the piece has
            progress: {started: soon}  | 4:21: "soon" is not a date in the form year-month-day; write it like 2026-02-14
            progress: {started: 2026-02-30} | 4:21: "2026-02-30" is a day the calendar does not have; write 2026-02-01 to 2026-02-28
            progress: {started: 2026-13-01} | 4:21: "2026-13-01" has no month of the year in its middle; write 01 to 12 there
            progress: {started: 0026-02-01} | 4:21: "0026-02-01" is in the year 26; write a year from 1900 to 2199
            progress: {started: 2026-03-01, finished: 2026-02-01} | 4:43: 2026-02-01 is before the piece was started on 2026-03-01; write a later day, or mend started
            progress: {started: 2026-03-01, log: [{on: 2026-02-01, hours: 1, stitches: 1}]} | 4:44: 2026-02-01 is before the piece was started on 2026-03-01; write a later day, or mend started
            progress: {log: [{on: 2026-02-01, hours: 25, stitches: 1}]} | 4:42: 25 hours is no time at the hoop on one day; write more than 0, up to 24
            progress: {log: [{on: 2026-02-01, note: Fog}]} | 4:23: this evening tells neither hours nor stitches; write hours, stitches or unpicked; how far the piece is stands under readings
            progress: {stitched: 2026-02-03, finished: 2026-02-01} | 4:44: 2026-02-01 is before the last stitch on 2026-02-03; write a later day, or mend stitched
            progress: {log: [{on: 2026-02-01, hours: 2, stitches: 2001}]} | 4:55: 2001 stitches in 2 h are more than 1000 an hour; write what was done on this day, or mend hours
            progress: {finished: 2026-02-01, log: [{on: 2026-02-02, hours: 2, stitches: 1}]} | 4:45: 2026-02-02 is after the last stitch, which the piece had by 2026-02-01; write an earlier day, or mend stitched or finished
            progress: {log: [{on: 2026-02-01, hours: 24, stitches: 24000}, {on: 2026-02-02, hours: 24, stitches: 20101}, {on: 2026-02-03, hours: 1, stitches: 9}]} | 4:102: with these the log has 44101 stitches, and the piece holds at most 29400; mend the number, or write under coverage how many stitches the piece has
            goal: {must: perhaps}      | 4:14: "perhaps" is neither yes nor no; write yes or no
            goal: {weight: 0}          | 4:16: 0 is out of range; write 1 to 100
            goal: yes                  | 4:7: goal needs keys with values; write it like {must: yes, by: 2027-06-30, weight: 3}
            parts: [{part: Verse}]     | 4:9: this part has no over; write one, such as over: 2
            threads:                   | 4:1: threads has no value; write one, such as threads: - {code: K12, stitches: {cross: 2310, back: 120}}
            threads: 3                 | 4:10: threads needs a list; write it like - {code: K12, stitches: {cross: 2310, back: 120}}, or name a .csv file
            threads: [{name: x}]       | 4:11: this thread has no code; write one, such as code: K12
            threads: [{code: a}, {code: a}] | 4:29: the code "a" stands twice in this list; give each thread once, or a code of its own
            threads: [{code: a, skein: coton}] | 4:28: "coton" is not a skein of this basket; did you mean cotton?
            threads: [{code: a, skein: silk}]  | 4:28: "silk" is not a skein of this basket; write cotton, or add it to skeins in basket.yaml
            threads: [{code: a, colour: red}]  | 4:29: "red" is not a colour; write # and six digits or letters a to f, such as "#6b7f8c"
            threads: [{code: a, colour: “#6b7f8c”}] | 4:29: “#6b7f8c” stands in curly quotes, which are part of the value; write straight ones, "#6b7f8c", or none
            margin: „3 in“             | 4:9: „3 in“ stands in curly quotes, which are part of the value; write straight ones, "3 in", or none
            threads: [{code: a, symbol: abcd}] | 4:29: "abcd" has 4 characters; write at most 3
            threads: [{code: a, strands: 13}]  | 4:30: 13 is out of range; write 1 to 12
            threads: [{code: a, strands: [2]}] | 4:30: strands needs one value; write it like 2
            threads: [{code: a, strands: {cross: 2, back: 1}, stitches: {cross: 9}}] | 4:47: this thread has no "back" among its stitches; take back out, or write how many there are under stitches
            threads: [{code: a, strands: {cross: 2}, stitches: {cross: 9, back: 9, knot: 0}}] | 4:30: nothing says how many strands "back" is worked with; write back: 1 beside the others, or else: 1 for all that are not named
            threads: [{code: a, strands: {cros: 2, else: 1}, stitches: {cross: 9}}] | 4:31: "cros" is not a key of strands; did you mean cross?
            threads: [{code: a, strands: {cros: 2}, stitches: {cross: 9}}] | 4:31: "cros" is not a key of strands; did you mean cross?
            threads: [{code: a, strands: {cross: 13}, stitches: {cross: 9}}] | 4:38: 13 is out of range; write 1 to 12
            threads: [{code: a, strands: {cross: 2, back: 1}, stitches: {cros: 9, back: 9}}] | 4:62: "cros" is not a key of stitches; did you mean cross?
            threads: [{code: a, strands: {cross: 2, back: 1}, stitches: {cross: x, back: 9}}] | 4:69: "x" is not a whole number; write digits only, such as 2310
            threads: [{code: a, strands: {back: 1, else: 2}, share: 9%}] | 4:37: a thread whose stitches are not counted is taken as crosses, not as "back"; write cross, or how many there are of each kind under stitches
            threads: [{code: a, mix-lots: often}] | 4:31: "often" is neither yes nor no; write yes or no
            threads: [{code: a, share: 12}]    | 4:28: "12" has no % sign; write 12%
            threads: [{code: a, over: 5}]      | 4:27: 5 is out of range; write 1 to 4
            threads: [{code: a, used: {skeins: 0, stitches: 1}}] | 4:36: 0 is not a number of skeins used; write more than 0, up to 1000
            threads: [{code: a, used: {skeins: 1.5, stitches: 14}}] | 4:51: 14 stitches from 1.5 skeins are fewer than 10 a skein; write what was used, and for how many stitches
            threads: [{code: a, stitches: {croos: 3}}] | 4:32: "croos" is not a key of stitches; did you mean cross?
            threads: [{code: a, stitches: {other: 3}}] | 4:39: other needs keys with values; write it like {count: 12, each: 3 cm}
            threads: [{code: a, stitches: {cross: 1.5}}] | 4:39: "1.5" is not a whole number; write digits only, such as 2310
            threads: [{code: a, stitches: {cross: 2,310}}] | 4:41: the comma before "310" ends the value, since commas part values inside { }; write the number without a comma, and with a point before decimals
            threads: [{code: a, stitches: {satin: {count: 3, span: 41}}}] | 4:56: 41 is out of range; write 1 to 40
            threads: [{code: a, stitches: {cross: {count: 3, worked: fast}}}] | 4:58: "fast" is not a way to work crosses; write one of: rows, singly
            threads: gone.csv          | 4:10: there is no file "gone.csv"; put it beside this file, or name it from the top of the basket
            threads: ../x.csv          | 4:10: "../x.csv" leads out of the basket; name a file inside it, without .. and not from the root of the disk
            threads: /x.csv            | 4:10: "/x.csv" leads out of the basket; name a file inside it, without .. and not from the root of the disk
            """)
    void oneFaultyLineIsOneProblem(String line, String message) {
        assertEquals(List.of(message), problems(Written.PIECE + line.replace('~', '\n') + "\n"));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
            {kind: linen, count: 0, over: 2}    | 3:29: 0 is not a count any cloth has; write threads to the inch, 3 to 120
            {kind: linen, count: -3, over: 2}   | 3:29: -3 is not a count any cloth has; write threads to the inch, 3 to 120
            {kind: linen, count: 500, over: 2}  | 3:29: 500 is not a count any cloth has; write threads to the inch, 3 to 120
            {kind: linen, count: 71 in 50 in, over: 2} | 3:29: 71 in 50 in is not a count any cloth has; write threads to the inch, 3 to 120
            {kind: linen, count: 36 cts, over: 2} | 3:29: "36 cts" is not a count; write threads to the inch, such as 36, or as measured, such as 71 in 2 in
            {kind: linen, count: {warp: 36}, over: 2} | 3:29: count has no weft; write one, such as weft: 36
            {kind: linen, count: 71 in 2, over: 2} | 3:29: "2" is a bare number; write it with its unit, such as 3 in or 7.5 cm
            {kind: linen, over: 2}              | 3:8: cloth has no count; write one, such as count: 36
            {kind: linen, cuont: 36, over: 2}   | 3:22: "cuont" is not a key of cloth; did you mean count?
            {kind:linen, count: 36, over: 2}    | 3:9: there is no space after the colon in "kind:linen"; put a space after kind:
            {kind: linen, count: 36}            | 3:8: cloth has no over; write one, such as over: 2
            {kind: linnen, count: 36}           | 3:15: "linnen" is not a kind of cloth; did you mean linen?
            {count: 36, over: 2}                | 3:8: cloth has no kind; write one, such as kind: linen
            {kind: block, count: 14, over: 2}   | 3:39: block cloth is not worked over 2; write over: 1, or leave it out
            {kind: linen, count: 36, over: 2, shrink: 0.02} | 3:50: "0.02" has no % sign; write 2%
            {kind: linen, count: 36, over: 2, shrink: 31%}  | 3:50: "31%" is more than any cloth shrinks; write 0% to 30%
            {kind: linen, count: 36, over: 2, shrink: -1%}  | 3:50: "-1%" is less than nothing; write 0% to 30%
            {kind: linen, count: 36, over: 2, warp: up}     | 3:48: "up" is not a way the warp runs; write one of: down, across
            linen                               | 3:8: cloth needs keys with values; write it like {kind: linen, count: 36, over: 2}
            """)
    void oneFaultInTheClothIsOneProblem(String cloth, String message) {
        assertEquals(List.of(message), problems("piece: Fog bell\nstitches: 140 x 210\ncloth: " + cloth + "\n"));
    }

    /**
     * 140 x 210 are 29400 squares, over one instead of two four times as many: 117600. A log that goes half as far again
     * is one of much unpicking; so does one of a piece with 40000 stitches by her own word.
     */
    @ParameterizedTest
    @ValueSource(strings = {
        "threads: [{code: a, over: 1}]", "parts: [{part: Verse, over: 1}]", "coverage: 29401", "threads: [{code: a, stitches: {back: 1}}]",
        "threads: [{code: a, stitches: {cross: 10}}]\n#"})
    void aLogMayGoAsFarAsThePieceCanHold(String line) {
        String log = "{on: 2026-02-01, hours: 24, stitches: 24000}, {on: 2026-02-02, hours: 24, stitches: 20101}";
        assertEquals(List.of(), problems(Written.PIECE + line + "\nprogress: {log: [" + (line.endsWith("#") ? log.replace("20101", "20100") : log) + "]}\n"));
    }

    /**
     * 140 x 210 are 29400 squares; a tenth more, for miscounts, are 32340. Of a blend, two threads of fewer strands than the
     * third, each counts half: 10000 + 30000 / 2 + 14680 / 2 = 32340.
     */
    @Test
    void moreCrossesThanSquaresAreToldAtTheChart() {
        String one = "threads: [{code: a, stitches: {cross: 5}}, {code: b, stitches: {cross: %d, back: 90000}}]\n";
        assertEquals(List.of("2:11: this is a chart of 29400 squares, and its threads count 32341 crosses; mend the chart, or the crosses of its threads: \"b\" has 32336 of them"),
                problems(Written.PIECE + String.format(Locale.ROOT, one, 32336)));
        assertEquals(List.of(), problems(Written.PIECE + String.format(Locale.ROOT, one, 32335)));
        String blend = "threads: [{code: a, stitches: {cross: 10000}}, {code: b, strands: 1, stitches: {cross: 30000}}, {code: c, strands: 1, stitches: {cross: %d}}]\n";
        assertEquals(List.of(), problems(Written.PIECE + String.format(Locale.ROOT, blend, 14680)));
        assertEquals(1, problems(Written.PIECE + String.format(Locale.ROOT, blend, 14681)).size());
        assertEquals(List.of(), problems(Written.PIECE + "threads: [{code: a, over: 1, stitches: {cross: 90000}}]\n"));
        assertEquals(List.of(), problems(Written.PIECE + "parts: [{part: Verse, over: 1, threads: [{code: a, stitches: {cross: 90000}}]}]\n"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"{code: a, used: {skeins: 1.5, stitches: 15}}", "{code: a, used: {skeins: 3, stitches: 2}, stitches: {other: {count: 2, each: 9 m}}}"})
    void aSkeinMayGoFast(String thread) {
        assertEquals(List.of(), problems(Written.PIECE + "threads: [" + thread + "]\n"));
    }

    /** Half of one percent is left to each share, for rounding: with three, 101.5 %. */
    @Test
    void sharesOfMoreThanTheWholeAreToldWhereTheyBecomeTooMuch() {
        String three = "threads: [{code: a, share: 60%%}, {code: b, share: 40%%}, {code: c, share: %s}]\n";
        assertEquals(List.of("4:74: the shares of this piece's threads are 101.6% in all, more than the whole; mend them, so that together they are 100% at most"),
                problems(Written.PIECE + String.format(Locale.ROOT, three, "1.6%")));
        assertEquals(List.of(), problems(Written.PIECE + String.format(Locale.ROOT, three, "1.5%")));
        assertEquals(List.of("5:59: the shares of this piece's threads are 180% in all, more than the whole; mend them, so that together they are 100% at most"),
                problems(Written.PIECE + "threads: [{code: a, share: 90%}]\nparts: [{part: Verse, over: 1, threads: [{code: b, share: 90%}]}]\n"));
        assertEquals(List.of(), problems(Written.PIECE + "threads: [{code: a, share: 80%}, {code: b, strands: 1, share: 20%}, {code: c, strands: 1, share: 20%}]\n"));
    }

    /** 140 over two are 280 threads, so 280 stitches over one; 281 reach half a stitch too far, 282 a whole one. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
            282 x 24 | 282 x 24 stitches over 1 are larger than the whole design, 140 x 210 over 2; write the size of this part alone, at most 280 x 420
            60 x 422 | 60 x 422 stitches over 1 are larger than the whole design, 140 x 210 over 2; write the size of this part alone, at most 280 x 420
            """)
    void aPartLargerThanItsPieceIsTold(String size, String message) {
        assertEquals(List.of("4:42: " + message), problems(Written.PIECE + "parts: [{part: Verse, over: 1, stitches: " + size + "}]\n"));
        assertEquals(List.of(), problems(Written.PIECE + "parts: [{part: Verse, over: 1, stitches: 281 x 421}, {part: Band, over: 4, stitches: 70 x 1}]\n"));
    }

    /** Threads counted so far are no bound: their list may still be growing. Backstitches come on top of the squares. */
    @ParameterizedTest
    @ValueSource(strings = {"progress: 29400", "progress: 29401\ncoverage: 29401", "progress: 20000\nthreads: [{code: a, stitches: {cross: 10}}]",
        "progress: 30840\nparts: [{part: Verse, over: 1, stitches: 60 x 24}]", "progress: 117600\nparts: [{part: Verse, over: 1}]",
        "progress: 29405\nthreads: [{code: a, stitches: {cross: 10, back: 5}}]", "goal: {by: 1999-12-31}", "goal: {by: 2199-12-31}"})
    void progressMayGoAsFarAsThePieceCanHoldAndADayWantedMayLieAnywhere(String lines) {
        assertEquals(List.of(), problems(Written.PIECE + lines + "\n"));
    }

    @Test
    void anUnquotedColourIsARemark() {
        assertEquals(List.of("6:13: colour has no value, because # outside quotes starts a remark; write colour: \"#6b7f8c\""),
                problems(Written.PIECE + "threads:\n  - code: a\n    colour: #6b7f8c\n"));
        assertEquals(List.of("5:23: # outside quotes makes the rest of the line a remark; write \"#6b7f8c\" in quotes"),
                problems(Written.PIECE + "threads:\n  - {code: a, colour: #6b7f8c, symbol: x}\n  - {code: b}\n"));
    }

    @Test
    void decimalCommasAreToldOutsideBracesToo() {
        assertEquals(List.of("4:9: \"7,5 cm\" has a decimal comma; write a point, as in 7.5 cm"), problems(Written.PIECE + "margin: 7,5 cm\n"));
    }

    @Test
    void whatIsRefusedIsToldOnceAndNotRead() {
        assertEquals(List.of("4:9: & gives a value a name to point to, which is not taken here; write the value itself, in quotes if it starts so"),
                problems(Written.PIECE + "margin: &m 3\n"));
        assertEquals(List.of("3:8: ! gives a value a type, which is not taken here; write the value itself, in quotes if it starts so"),
                problems("piece: Fog bell\nstitches: 140 x 210\ncloth: !linen {kind: linnen}\n"));
    }

    @Test
    void aBraceRightAfterAColonIsTold() {
        assertEquals(List.of("3:1: there is no space after the colon in \"cloth:{kind\"; put a space after cloth:"),
                problems("piece: Fog bell\nstitches: 140 x 210\ncloth:{kind: linen}\n"));
    }

    @Test
    void aLongTextIsTold() {
        assertEquals(List.of("1:8: \"" + "a".repeat(40) + "…\" has 201 characters; write at most 200"),
                problems(Written.PIECE.replace("Fog bell", "a".repeat(201))));
    }

    @Test
    void sizesOfChartsAreTold() {
        assertEquals(List.of("2:11: \"140\" is not a size in stitches; write stitches wide x high, such as 140 x 210"),
                problems(Written.PIECE.replace("140 x 210", "140")));
        assertEquals(List.of("2:11: 5001 is out of range; write 1 to 5000"), problems(Written.PIECE.replace("140 x 210", "140 x 5001")));
        assertEquals(List.of("2:11: \"1,400\" has a mark among its digits; write digits only, as in 1400"),
                problems(Written.PIECE.replace("140 x 210", "1,400 x 210")));
    }

    @Test
    void aPieceThatIsNoMappingIsTold() {
        assertEquals(List.of("1:1: this piece needs keys with values; write it like piece: Fog bell, and so on"), problems("Fog bell\n"));
    }
}
