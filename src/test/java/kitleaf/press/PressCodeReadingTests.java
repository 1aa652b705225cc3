package kitleaf.press;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.google.zxing.BinaryBitmap;
import com.google.zxing.DecodeHintType;
import com.google.zxing.Result;
import com.google.zxing.ResultMetadataType;
import com.google.zxing.client.j2se.BufferedImageLuminanceSource;
import com.google.zxing.common.HybridBinarizer;
import com.google.zxing.qrcode.QRCodeReader;
import java.awt.image.BufferedImage;
import java.util.Map;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.rendering.ImageType;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Codes as a reader sees them: drawn by PDFBox at 300 dpi and decoded by a library that did not encode them. */
class PressCodeReadingTests {

    private static final int DPI = 300;

    private static BufferedImage picture(Pressed pressed) throws Exception {
        try (PDDocument document = Loader.loadPDF(pressed.bytes)) {
            return new PDFRenderer(document).renderImageWithDPI(0, DPI, ImageType.GRAY);
        }
    }

    /** Reads bytes as ISO 8859-1, the standard's default, and guesses nothing: the code must say what else it holds. */
    private static Result read(Pressed pressed) throws Exception {
        return new QRCodeReader().decode(
                new BinaryBitmap(new HybridBinarizer(new BufferedImageLuminanceSource(picture(pressed)))),
                Map.of(DecodeHintType.TRY_HARDER, true, DecodeHintType.CHARACTER_SET, "ISO-8859-1"));
    }

    private static String readText(String inner) throws Exception {
        return read(Pressed.page(inner)).getText();
    }

    @ParameterizedTest
    @ValueSource(strings = {
        "Tide",
        "BREAKWATER 36/2",
        "1234567890",
        "Kn\u00F6tchen, \u00E9cru, 2 \u00BD m\u00B2",
        "\u00E9",
        "\u03C8\u03AC\u03B8\u03B1",
        "\u041C\u043E\u0440\u0435 \u0438 \u0432\u0435\u0442\u0435\u0440",
        "\u2693 \uD83E\uDDF5 \u4E32",
        "Ebb grey, Lamp red, Wet rope 3",
    })
    void aTextIsReadAsItWasWritten(String text) throws Exception {
        assertEquals(text, readText("<code x=\"20\" y=\"30\" size=\"20\">" + text + "</code>"));
    }

    @Test
    void fourHundredCharactersAreRead() throws Exception {
        String text = "Breakwater band sampler; ebb grey K12; lot 7. ".repeat(9).substring(0, 400);
        Pressed pressed = Pressed.page("<code x=\"20\" y=\"30\" size=\"45\">" + text + "</code>");
        assertEquals(text, read(pressed).getText());
        assertEquals(0, pressed.warnings().size());
    }

    @Test
    void theSmallestModuleThatIsNotWarnedOfIsRead() throws Exception {
        // 29 modules with the quiet zone: 9.57 mm / 29 = 0.33 mm.
        Pressed pressed = Pressed.page("<code x=\"20\" y=\"30\" size=\"9.57\">ROPE</code>");
        assertEquals(0, pressed.warnings().size());
        assertEquals("ROPE", read(pressed).getText());
    }

    @Test
    void aTurnedCodeOnACorrectedPageIsRead() throws Exception {
        String code = "<code x=\"20\" y=\"30\" size=\"20\">Wet rope \u03C8 3</code>";
        assertEquals("Wet rope \u03C8 3", readText("<g transform=\"rotate(180 105 148)\">" + code + "</g>"));
        assertEquals("Wet rope \u03C8 3", readText("<g transform=\"rotate(31 60 60)\">" + code + "</g>"));
        assertEquals("Wet rope \u03C8 3", read(Pressed.page("<g transform=\"rotate(180 105 148)\">" + code + "</g>",
                Pressed.corrected(1.007, 0.995))).getText());
    }

    @Test
    void linesStayLinesWithoutTheirIndentation() throws Exception {
        assertEquals("Tide  3\t4 \nEbb <&>\n\nLamp\u00A05", readText("<code x=\"20\" y=\"30\" size=\"30\">\n"
                + "      Tide  3\t4 \r\n\t  Ebb &lt;<![CDATA[&>]]><!-- no -->\n   \n  Lamp\u00A05\n    </code>"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"L", "M", "Q", "H"})
    void aCodeMendsAtLeastAsMuchAsItsLevelSays(String level) throws Exception {
        Object read = read(Pressed.page("<code x=\"20\" y=\"30\" size=\"30\" level=\"" + level
                + "\">TIDE 12 ROPE 34 KNOT 56 LAMP 78 WIND 9</code>"))
                .getResultMetadata().get(ResultMetadataType.ERROR_CORRECTION_LEVEL);
        assertTrue("LMQH".indexOf(read.toString()) >= "LMQH".indexOf(level), read + " for " + level);
    }

    @Test
    void theLevelIsMWhereNoneIsGiven() throws Exception {
        // Version 2 holds 38 alphanumeric characters at level M (ISO/IEC 18004), fewer at Q: these fill it.
        Result read = read(Pressed.page("<code x=\"20\" y=\"30\" size=\"30\">TIDE 12 ROPE 34 KNOT 56 LAMP 78 WIND 9"
                + "</code>"));
        assertEquals("M", read.getResultMetadata().get(ResultMetadataType.ERROR_CORRECTION_LEVEL));
    }

    @Test
    void darkIsDarkThroughoutAndTheQuietZoneIsWhite() throws Exception {
        // Version 1 in 28.13 mm: modules of 0.97 mm = 11.457 dots, whose edges fall between dots.
        BufferedImage picture = picture(Pressed.page("<code x=\"20\" y=\"30\" size=\"28.13\">ROPE</code>"));
        double module = 0.97 / 25.4 * DPI;
        double left = 20 / 25.4 * DPI;
        double top = 30 / 25.4 * DPI;
        // The heart of the upper left finder pattern is 3 x 3 dark modules, 2 modules in; one dot off its edges.
        for (double y = top + 6 * module + 1; y < top + 9 * module - 2; y++) {
            for (double x = left + 6 * module + 1; x < left + 9 * module - 2; x++) {
                assertEquals(0, picture.getRaster().getSample((int) Math.ceil(x), (int) Math.ceil(y), 0));
            }
        }
        int dark = 0;
        for (int y = 0; y < picture.getHeight(); y++) {
            for (int x = 0; x < picture.getWidth(); x++) {
                boolean marked = picture.getRaster().getSample(x, y, 0) < 255;
                boolean inside = x >= Math.floor(left + 4 * module) && x <= Math.ceil(left + 25 * module)
                        && y >= Math.floor(top + 4 * module) && y <= Math.ceil(top + 25 * module);
                dark += marked ? 1 : 0;
                assertTrue(inside || !marked, "a mark outside the modules at " + x + ", " + y);
            }
        }
        assertTrue(dark > 0);
    }
}
