package kitleaf.press;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import com.code_intelligence.jazzer.junit.FuzzTest;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.StringReader;
import java.nio.charset.StandardCharsets;
import kitleaf.press.markup.MarkupException;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;

/** Any bytes whatever, taken for page markup, end in a PDF another library opens or in a sentence. */
class MarkupFuzzTests {

    @FuzzTest(maxDuration = "5m")
    void pressedOrRefused(byte[] data) throws IOException {
        ByteArrayOutputStream pdf = new ByteArrayOutputStream();
        PressReport report;
        try {
            report = Press.press(new StringReader(new String(data, StandardCharsets.UTF_8)), pdf, PressSettings.plain());
        } catch (MarkupException e) {
            assertFalse(e.getMessage().isBlank(), e.getMessage());
            return;
        }
        try (PDDocument read = Loader.loadPDF(pdf.toByteArray())) {
            assertEquals(report.pages(), read.getNumberOfPages());
        }
    }
}
