package kitleaf.basket.form;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Optional;
import javax.print.attribute.Size2DSyntax;
import javax.print.attribute.standard.MediaSize;
import kitleaf.basket.Paper;
import org.junit.jupiter.api.Test;

class PapersTests {

    /** The JDK's own table of ISO 216, ANSI and North American sizes; it is kept to the micrometre. */
    private static void same(MediaSize outside, String name) {
        Paper paper = Papers.named(name).orElseThrow();
        assertEquals(outside.getX(Size2DSyntax.MM), paper.widthMm(), 1e-3, name);
        assertEquals(outside.getY(Size2DSyntax.MM), paper.heightMm(), 1e-3, name);
    }

    @Test
    void sizesAreThoseOfTheJdk() {
        same(MediaSize.ISO.A5, "A5");
        same(MediaSize.ISO.A4, "A4");
        same(MediaSize.ISO.A3, "A3");
        same(MediaSize.ISO.A2, "A2");
        same(MediaSize.ISO.A1, "A1");
        same(MediaSize.NA.LETTER, "letter");
        same(MediaSize.NA.LEGAL, "legal");
        same(MediaSize.Engineering.A, "letter");
        same(MediaSize.Engineering.B, "tabloid");
    }

    @Test
    void namesAreTakenInAnyCaseAndTurned() {
        assertEquals(new Paper("A4", 210, 297), Papers.named(" a4 portrait ").orElseThrow());
        assertEquals(new Paper("letter landscape", 279.4, 215.9), Papers.named("Letter Landscape").orElseThrow());
    }

    /** ISO 216: A2 is 420 x 594 mm, A1 594 x 841 mm. */
    @Test
    void wallPapersAreTurnedToo() {
        assertEquals(new Paper("A2 landscape", 594, 420), Papers.named("a2 landscape").orElseThrow());
        assertEquals(new Paper("A1", 594, 841), Papers.named("A1 portrait").orElseThrow());
        assertEquals(new Paper("A1 landscape", 841, 594), Papers.named("A1 Landscape").orElseThrow());
    }

    @Test
    void ownSizesAreWidthByHeight() {
        assertEquals(new Paper("210 mm x 320 mm", 210, 320), Papers.named("210 mm x 320 mm").orElseThrow());
        assertEquals(304.8, Papers.named("8.5 in × 12 in").orElseThrow().heightMm(), 1e-9);
    }

    @Test
    void whatIsNoPaperIsNotNamed() {
        assertEquals(Optional.empty(), Papers.named("A9"));
        assertEquals(Optional.empty(), Papers.named("A0"));
        assertEquals(Optional.empty(), Papers.named("B2"));
        assertEquals(Optional.empty(), Papers.named(""));
        assertEquals(Optional.empty(), Papers.named("A4 sideways"));
        assertEquals(Optional.empty(), Papers.named("20 mm x 30 mm"));
        assertEquals(Optional.empty(), Papers.named("210 x 320"));
    }
}
