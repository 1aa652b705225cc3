package kitleaf.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import kitleaf.ReadBack.Drawn;
import kitleaf.ReadBack.Letter;
import kitleaf.ReadBack;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The drawing on the cut sheet, read back with PDFBox. */
class CutSheetPrintTests {

    private static final int TINT = 0xeef0ec;
    private static final double MM_PER_POINT = 25.4 / 72;

    @TempDir
    private Path folder;

    /** A line at a letter's middle height, as long as it is wide. */
    private static Line2D middle(Letter letter) {
        double angle = Math.toRadians(-letter.turned());
        double cos = Math.cos(angle);
        double sin = Math.sin(angle);
        double up = letter.sizePt() * MM_PER_POINT * 0.3;
        double x = letter.x() + up * sin;
        double y = letter.y() - up * cos;
        return new Line2D.Double(x, y, x + letter.width() * cos, y + letter.width() * sin);
    }

    /** Long and low, square with equal margins, high, with unequal margins, and with hardly a margin: the label stands clear or not at all. */
    @ParameterizedTest
    @CsvSource({"240 x 60, 2 in, false", "80 x 80, 3 in, true", "150 x 100, 3 in, true", "90 x 150, 2 in, false",
        "'140 x 90', '{top: 1 in, right: 5 in, bottom: 3 in, left: 2 in}', true", "400 x 100, 1 in, true", "600 x 40, 1 in, false"})
    void the_diagonal_is_written_where_it_crosses_no_edge(String stitches, String margin, boolean room) throws IOException {
        for (String paper : List.of("A4", "letter", "A4 landscape")) {
            Path basket = Ran.basket(folder.resolve("b"), "", "piece: Groyne\nstitches: " + stitches + "\ncloth: {kind: linen, count: 28, over: 2}\nmargin: " + margin + "\n");
            Ran ran = Ran.kitleaf("print", basket, "--only", "cut-sheets", "--paper", paper, "--out", folder.resolve("out"));
            assertEquals("", ran.err());
            byte[] pdf = Files.readAllBytes(folder.resolve("out/cut-sheets.pdf"));
            Drawn design = ReadBack.drawn(pdf, 1).stream().filter(it -> it.filled() && it.stroked() && it.fill() == TINT).findFirst().orElseThrow();
            Drawn line = ReadBack.drawn(pdf, 1).stream().filter(it -> it.operations().equals("ML") && !it.dashMm().isEmpty()
                    && it.x(0) != it.x(1) && it.y(0) != it.y(1)).findFirst().orElseThrow();
            Rectangle2D edges = new Rectangle2D.Double(design.least(true), design.least(false), design.most(true) - design.least(true),
                    design.most(false) - design.least(false));
            List<Letter> along = ReadBack.letters(pdf, 1).stream().filter(it -> Math.abs(it.turned()) > 1 && Math.abs(it.turned()) < 89).toList();
            assertTrue(!along.isEmpty() || !room, paper + ": written along the diagonal");
            boolean inside = !along.isEmpty() && edges.contains(along.get(0).x(), along.get(0).y());
            for (Letter letter : along) {
                Line2D middle = middle(letter);
                assertEquals(inside, edges.contains(middle.getP1()) && edges.contains(middle.getP2()), paper + ": " + letter);
                assertTrue(middle.getX2() < line.most(true) && middle.getY2() < line.most(false), paper + ": " + letter);
            }
        }
    }
}
