package kitleaf.basket.reader;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import kitleaf.basket.Basket;
import kitleaf.basket.LabelStock;
import kitleaf.basket.Paper;
import kitleaf.basket.Units;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class LabelStockReaderTests {

    private static final Paper A4 = new Paper("A4", 210, 297);
    private static final Paper LETTER = new Paper("letter", 215.9, 279.4);

    @TempDir
    Path folder;

    private Written settings(String text) {
        return new Written(folder).file("pieces/p.yaml", Written.PIECE).file("basket.yaml", text);
    }

    private LabelStock stock(String text) {
        return settings(text).basket().labelStock().orElseThrow();
    }

    @Test
    void withoutLabelStockThereIsNone() {
        assertEquals(Optional.empty(), settings("units: cm\n").basket().labelStock());
    }

    /** An inch is 25.4 mm: 2 5/8 in is 66.675 mm, 3/16 in 4.7625 mm, 2 3/4 in 69.85 mm. */
    @Test
    void everyKeyIsReadIntoItsField() {
        LabelStock stock = stock("""
                label-stock:
                  paper: letter
                  columns: 3
                  rows: 10
                  label: 2 5/8 in x 1 in
                  first: 3/16 in x 1/2 in
                  pitch: 2 3/4 in x 1 in
                  shape: rectangle
                  style: face
                """);
        assertEquals(LETTER, stock.paper());
        assertEquals(3, stock.columns());
        assertEquals(10, stock.rows());
        assertEquals(66.675, stock.widthMm(), 1e-9);
        assertEquals(25.4, stock.heightMm(), 1e-9);
        assertEquals(4.7625, stock.firstXMm(), 1e-9);
        assertEquals(12.7, stock.firstYMm(), 1e-9);
        assertEquals(69.85, stock.pitchXMm(), 1e-9);
        assertEquals(25.4, stock.pitchYMm(), 1e-9);
        assertEquals(LabelStock.Shape.RECTANGLE, stock.shape());
        assertFalse(stock.plain());
        assertEquals(LabelStock.Style.FACE, stock.style());
    }

    @Test
    void whatIsLeftOutIsTheUsual() {
        assertEquals(new LabelStock(LETTER, 2, 5, 100, 50, 0, 10, 100, 50, LabelStock.Shape.RECTANGLE, false, LabelStock.Style.WRAP),
                stock("label-stock: {columns: 2, rows: 5, label: 100 mm x 50 mm, first: 0 mm x 1 cm}\npaper: letter\n"));
    }

    @Test
    void aRoundLabelIsToldByItsDiameterAndGoesOnOneFace() {
        LabelStock round = new LabelStock(A4, 4, 6, 40, 40, 16, 22, 46, 44, LabelStock.Shape.ROUND, false, LabelStock.Style.FACE);
        assertEquals(round, stock("label-stock: {columns: 4, rows: 6, label: 40 mm, first: 16 mm x 22 mm, pitch: 46 mm x 44 mm, shape: round}\n"));
        assertEquals(round, stock("label-stock: {columns: 4, rows: 6, label: 40 mm × 4 cm, first: 16 mm x 22 mm, pitch: 46 mm x 44 mm, "
                + "shape: round, style: face}\n"));
    }

    /**
     * 1 in / 3 is 8.4666... mm however it is written, but not to the last bit of a double: the difference is no problem.
     */
    @Test
    void aRoundLabelMayBeToldInTwoUnits() {
        LabelStock stock = stock("label-stock: {columns: 1, rows: 1, label: 5/3 in x 4.23333333333 cm, first: 1 in x 1 in, shape: round}\n");
        assertEquals(42.3333333333, stock.widthMm(), 1e-9);
        assertEquals(stock.widthMm(), stock.heightMm());
    }

    /** A4 less 10 mm at the top and sides and 24 mm at the foot is 190 mm x 263 mm: 3 of 60 mm, 30 mm shared by both sides, and 10 of 24 mm. */
    @Test
    void cutLabelsFillThePaperInsideItsMargins() {
        assertEquals(new LabelStock(A4, 3, 10, 60, 24, 15, 10, 60, 24, LabelStock.Shape.RECTANGLE, true, LabelStock.Style.WRAP),
                stock("label-stock: {cut: 60 mm x 24 mm}\n"));
    }

    /** A4 lying has room for 277 mm x 176 mm, which 4 x 5 labels of 69.25 mm x 35.2 mm use up. */
    @Test
    void cutLabelsMayUseTheRoomToTheLastBit() {
        assertEquals(new LabelStock(new Paper("A4 landscape", 297, 210), 4, 5, 69.25, 35.2, 10, 10, 69.25, 35.2,
                LabelStock.Shape.RECTANGLE, true, LabelStock.Style.FACE),
                stock("label-stock: {cut: 69.25 mm x 3.52 cm, style: face, paper: A4 landscape}\n"));
    }

    /** Letter has room for 245.4 mm down, which 4 labels of 61.35 mm use up; in doubles the quotient falls just short of 4. */
    @Test
    void aLabelIsNotLostToRounding() {
        assertEquals(4, stock("paper: letter\nlabel-stock: {cut: 60 mm x 61.35 mm}\n").rows());
    }

    /** Two faces side by side need 20 mm each; one below the other, 12 mm each; a round needs 26 mm. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            {cut: 39 mm x 20 mm}                                              | 1:20 | write at least 40 mm x 12 mm, or 20 mm x 24 mm, to fold it
            {cut: 30 mm x 31 mm}                                              |      |
            {cut: 22 mm x 23 mm}                                              | 1:20 | write at least 40 mm x 12 mm, or 20 mm x 24 mm, to fold it
            {cut: 19 mm x 20 mm, style: face}                                 | 1:20 | write at least 20 mm x 12 mm
            {cut: 20 mm x 12 mm, style: face}                                 |      |
            {columns: 1, rows: 1, label: 25 mm, first: 5 mm x 5 mm, shape: round} | 1:43 | write at least 26 mm across
            """)
    void labelsTooSmallForACodeAreRefused(String stock, String place, String advice) {
        assertEquals(place == null ? List.of() : List.of("basket.yaml:" + place + ": a label this small cannot carry a code that reads at arm's length; " + advice),
                settings("label-stock: " + stock + "\n").problems());
    }

    private static final String SHEET = "columns: 2, rows: 5, label: 100 mm x 50 mm, first: 0 mm x 0 mm";

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
            label-stock:                          | 1:1: label-stock has no value; write one, such as label-stock: {cut: 60 mm x 24 mm}
            label-stock: 60 mm x 24 mm            | 1:14: label-stock needs keys with values; write it like {cut: 60 mm x 24 mm}
            label-stock: {cut: 60 mm x 24 mm, colums: 3} | 1:35: "colums" is not a key of label-stock; did you mean columns?
            label-stock: {paper: A4}              | 1:14: label-stock has no columns; write one, such as columns: 3 // 1:14: label-stock has no rows; write one, such as rows: 10 // 1:14: label-stock has no label; write width x height, such as 2 5/8 in x 1 in, or one length with shape: round // 1:14: label-stock has no first; write how far the first label is from the left edge x from the top, such as 3/16 in x 1/2 in
            label-stock: {SHEET, paper: A44}      | 1:86: "A44" is not a paper known here; did you mean A4?
            label-stock: {SHEET, paper: 100 mm x 100 mm} | 1:86: "100 mm x 100 mm" is too small or too large a paper; write at least A5, which is 148 mm x 210 mm, and sides of at most 1200 mm
            label-stock: {SHEET, pitch: 70 mm}    | 1:86: "70 mm" is not one length by another; write from one label's left edge to the next one's x from top to top, such as 2 3/4 in x 1 in
            label-stock: {SHEET, pitch: 4 mm x 60 mm} | 1:86: "4 mm" is not the way from label to label; write 5 mm to 1200 mm
            label-stock: {SHEET, shape: oval}     | 1:86: "oval" is not a shape of label; write one of: rectangle, round
            label-stock: {SHEET, style: fold}     | 1:86: "fold" is not a style of label; write one of: wrap, face
            label-stock: {columns: 0, rows: 1, label: 9 cm x 5 cm, first: 0 mm x 0 mm}   | 1:24: 0 is out of range; write 1 to 100
            label-stock: {columns: 1, rows: 101, label: 9 cm x 5 cm, first: 0 mm x 0 mm} | 1:33: 101 is out of range; write 1 to 100
            label-stock: {columns: 1, rows: 1, label: 9 cm, first: 0 mm x 0 mm}          | 1:43: "9 cm" is not one length by another; write width x height, such as 2 5/8 in x 1 in, or one length with shape: round
            label-stock: {columns: 1, rows: 1, label: 9 x 5, first: 0 mm x 0 mm}         | 1:43: "9" is a bare number; write it with its unit, such as 3 in or 7.5 cm
            label-stock: {columns: 1, rows: 1, label: 4 mm x 5 cm, first: 0 mm x 0 mm}   | 1:43: "4 mm" is not the side of a label; write 5 mm to 1200 mm
            label-stock: {columns: 1, rows: 1, label: 9 cm x 5 cm, first: 0 mm}          | 1:63: "0 mm" is not one length by another; write how far the first label is from the left edge x from the top, such as 3/16 in x 1/2 in
            label-stock: {columns: 1, rows: 1, label: 9 cm x 5 cm, first: 2 m x 0 mm}    | 1:63: "2 m" is not the way to a first label; write 0 mm to 1200 mm
            label-stock: {columns: 1, rows: 1, label: 1 cm x 2 cm x 3 cm, first: 0 mm x 0 mm, shape: round} | 1:43: "1 cm x 2 cm x 3 cm" is not one length by another; write its diameter, such as 40 mm
            label-stock: {columns: 1, rows: 1, label: 4 cm x 5 cm, first: 0 mm x 0 mm, shape: round} | 1:43: a label 40.0 mm wide and 50.0 mm high is not round; write its diameter, such as 40 mm, or shape: rectangle
            label-stock: {columns: 1, rows: 1, label: 4 cm, first: 0 mm x 0 mm, shape: round, style: wrap} | 1:90: a round label cannot be folded round a bobbin; write style: face, or leave it out
            label-stock: {cut: 60 mm}             | 1:20: "60 mm" is not one length by another; write width x height, such as 60 mm x 24 mm
            label-stock: {cut: 60 mm x 24 mm, shape: rectangle, rows: 3} | 1:42: shape describes printed labels, and cut plain paper; keep one of the two // 1:59: rows describes printed labels, and cut plain paper; keep one of the two
            """)
    void eachFaultIsOneProblem(String settings, String messages) {
        assertEquals(told(messages), settings(settings.replace("SHEET", SHEET) + "\n").problems());
    }

    private static List<String> told(String messages) {
        return Stream.of(messages.split(" // ")).map(message -> "basket.yaml:" + message).toList();
    }

    /**
     * By hand. Letter is 215.9 mm x 279.4 mm. 3 of 2 5/8 in every 2 7/8 in from 3/8 in: 9.525 + 2 x 73.025 + 66.675 =
     * 222.25 mm, shown as 222.3 (half up). 10 of 1 in from 1 1/8 in: 28.575 + 254 = 282.575 mm. 2 of 105 mm and 0.02 mm
     * beside: 210.02 mm, which a tenth would not tell from A4.
     */
    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
            {paper: letter, columns: 3, rows: 10, label: 2 5/8 in x 1 in, first: 3/8 in x 1/2 in, pitch: 2 7/8 in x 1 in} | 1:39: 3 labels across reach 222.3 mm, and letter is 215.9 mm wide; check columns, label, first and pitch
            {paper: letter, columns: 3, rows: 10, label: 2 5/8 in x 1 in, first: 3/16 in x 1 1/8 in}  | 1:48: 10 labels down reach 282.6 mm, and letter is 279.4 mm high; check rows, label, first and pitch
            {columns: 1, rows: 1, label: 200 mm x 100 mm, first: 11 mm x 0 mm}  | 1:24: 1 label across reaches 211.0 mm, and A4 is 210.0 mm wide; check columns, label, first and pitch
            {columns: 2, rows: 1, label: 105 mm x 100 mm, first: 0.02 mm x 0 mm} | 1:24: 2 labels across reach 210.02 mm, and A4 is 210.00 mm wide; check columns, label, first and pitch
            {columns: 2, rows: 1, label: 105 mm x 100 mm, first: 0.00001 mm x 0 mm} | 1:24: 2 labels across reach 210.00001 mm, and A4 is 210.00000 mm wide; check columns, label, first and pitch
            {paper: 150 mm x 220 mm, columns: 1, rows: 3, label: 100 mm x 80 mm, first: 0 mm x 0 mm} | 1:57: 3 labels down reach 240.0 mm, and 150 mm x 220 mm is 220.0 mm high; check rows, label, first and pitch
            {columns: 3, rows: 5, label: 60 mm x 50 mm, first: 0 mm x 0 mm, pitch: 59.5 mm x 50 mm}  | 1:85: labels 60.0 mm wide that start 59.5 mm apart overlap; check label and pitch
            {columns: 3, rows: 5, label: 60 mm x 50 mm, first: 0 mm x 0 mm, pitch: 60 mm x 49.99 mm} | 1:85: labels 50.00 mm high that start 49.99 mm apart overlap; check label and pitch
            {columns: 9, rows: 9, label: 60 mm x 50 mm, first: 0 mm x 0 mm}     | 1:24: 9 labels across reach 540.0 mm, and A4 is 210.0 mm wide; check columns, label, first and pitch // 1:33: 9 labels down reach 450.0 mm, and A4 is 297.0 mm high; check rows, label, first and pitch
            {cut: 200 mm x 24 mm}                 | 1:20: a label 200.0 mm wide does not fit A4, which is 190.0 mm wide inside its margins; write a smaller label, or name larger paper
            {cut: 60 mm x 264 mm}                 | 1:20: a label 264.0 mm high does not fit A4, which is 263.0 mm high inside its margins; write a smaller label, or name larger paper
            """)
    void labelsThatDoNotFitAreToldWithTheirLengths(String stock, String messages) {
        assertEquals(told(messages), settings("label-stock: " + stock + "\n").problems());
    }

    @Test
    void aSingleColumnNeedsNoPitchOfItsOwn() {
        assertEquals(5, stock("label-stock: {columns: 1, rows: 1, label: 60 mm x 50 mm, first: 0 mm x 0 mm, pitch: 5 mm x 5 mm}\n").pitchXMm());
    }

    @Test
    void paperThatCannotBeReadMakesNoNoiseInTheStock() {
        assertEquals(List.of("basket.yaml:1:8: \"A44\" is not a paper known here; did you mean A4?"),
                settings("paper: A44\nlabel-stock: {cut: 205 mm x 24 mm}\n").problems());
        assertEquals(List.of("basket.yaml:1:1: \"papr\" is not a key of basket.yaml; did you mean paper?"),
                settings("papr: A3\nlabel-stock: {cut: 205 mm x 24 mm}\n").problems());
    }

    /** Letter less its margins and foot is 195.9 mm x 245.4 mm: 3 of 60 mm and 10 of 24 mm. */
    @Test
    void otherPaperIsCutIntoTheSameLabels() {
        Basket cut = settings("label-stock: {cut: 60 mm x 24 mm}\n").basket().on(LETTER, Units.IN);
        LabelStock stock = cut.labelStock().orElseThrow();
        assertEquals(LETTER, stock.paper());
        assertEquals(List.of(3, 10, 60.0, 24.0), List.of(stock.columns(), stock.rows(), stock.widthMm(), stock.heightMm()));
        Basket printed = settings("label-stock: {" + SHEET + "}\n").basket();
        assertEquals(printed.labelStock(), printed.on(LETTER, Units.IN).labelStock());
        Basket wide = settings("label-stock: {cut: 190 mm x 24 mm}\n").basket();
        assertEquals(wide.labelStock(), wide.on(new Paper("A5", 148, 210), Units.IN).labelStock());
    }
}
