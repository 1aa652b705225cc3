package kitleaf.press;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.OutputStream;
import java.io.Reader;
import java.io.StringReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Calendar;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.TimeZone;
import kitleaf.press.markup.MarkupException;
import kitleaf.press.markup.PressWords;
import kitleaf.words.Said;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PageMode;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.font.PDType0Font;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.destination.PDPageXYZDestination;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.outline.PDOutlineItem;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The document around the pages: metadata, outline, fonts, equal bytes, streaming. */
class PressDocumentTests {

    private static final String SPECIMEN = "<document title=\"Kn\u00F6tchen\" subject=\"Cut sheets\" lang=\"en-GB\">"
            + "<page width=\"210\" height=\"297\"><bookmark title=\"One\"/><g transform=\"translate(10,50)\">"
            + "<bookmark title=\"\u03C8\" level=\"2\"/><text y=\"9\">Tide 2 \u00BD \u2702 \u0416</text>"
            + "<text y=\"19\" font-family=\"heading\">Tide</text></g><rect width=\"5.5\" height=\"7\"/></page>"
            + "<page width=\"148\" height=\"210\"><bookmark title=\"Two\"/></page></document>";

    @Test
    void metadataAndViewerPreferencesAreSet() throws Exception {
        Pressed pressed = Pressed.markup(SPECIMEN, new PressSettings(1, 1, Optional.of(LocalDate.of(2026, 3, 1)),
                page -> { }));
        assertEquals("%PDF-1.6", new String(pressed.bytes, 0, 8, StandardCharsets.ISO_8859_1));
        try (PDDocument document = Loader.loadPDF(pressed.bytes)) {
            assertEquals("Kn\u00F6tchen", document.getDocumentInformation().getTitle());
            assertEquals("Cut sheets", document.getDocumentInformation().getSubject());
            assertEquals("Kitleaf development", document.getDocumentInformation().getCreator());
            assertEquals("en-GB", document.getDocumentCatalog().getLanguage());
            COSDictionary preferences = document.getDocumentCatalog().getCOSObject()
                    .getCOSDictionary(COSName.getPDFName("ViewerPreferences"));
            assertEquals("None", preferences.getNameAsString("PrintScaling"));
            assertTrue(document.getDocumentCatalog().getViewerPreferences().displayDocTitle());
            for (Calendar date : List.of(document.getDocumentInformation().getCreationDate(),
                    document.getDocumentInformation().getModificationDate())) {
                // 2026-03-01T00:00Z is day 20513 after 1970-01-01.
                assertEquals(LocalDate.of(2026, 3, 1).toEpochDay() * 86_400_000L, date.getTimeInMillis());
            }
        }
    }

    @Test
    void languageIsEnglishWhenNoneIsGivenAndNoTitleIsMadeUp() throws Exception {
        Pressed pressed = Pressed.markup("<document><page width=\"9\" height=\"9\"/></document>", PressSettings.plain());
        try (PDDocument document = Loader.loadPDF(pressed.bytes)) {
            assertEquals("en", document.getDocumentCatalog().getLanguage());
            assertEquals(null, document.getDocumentInformation().getTitle());
            assertEquals(null, document.getDocumentCatalog().getDocumentOutline());
            assertEquals(PageMode.USE_NONE, document.getDocumentCatalog().getPageMode());
        }
    }

    @Test
    void bookmarksMakeAnOutlineToTheirPagesAndPlaces() throws Exception {
        try (PDDocument document = Loader.loadPDF(Pressed.markup(SPECIMEN, PressSettings.plain()).bytes)) {
            assertEquals(PageMode.USE_OUTLINES, document.getDocumentCatalog().getPageMode());
            PDOutlineItem one = document.getDocumentCatalog().getDocumentOutline().getFirstChild();
            PDOutlineItem two = one.getNextSibling();
            assertEquals("One", one.getTitle());
            assertEquals("\u03C8", one.getFirstChild().getTitle());
            assertEquals("Two", two.getTitle());
            assertEquals(document.getPage(0), one.findDestinationPage(document));
            assertEquals(document.getPage(1), two.findDestinationPage(document));
            // The page's top is 297 mm = 841.89 pt up; 50 mm further down 247 mm = 700.157 pt.
            assertEquals(841, ((PDPageXYZDestination) one.getDestination()).getTop(), 1);
            assertEquals(700, ((PDPageXYZDestination) one.getFirstChild().getDestination()).getTop(), 1);
        }
    }

    @Test
    void aBookmarkWithoutAnUpperOneStandsAtTheTop() throws Exception {
        Pressed pressed = Pressed.page("<bookmark title=\"a\" level=\"3\"/><bookmark title=\"b\"/>"
                + "<bookmark title=\"c\" level=\"3\"/><bookmark title=\"d\" level=\"2\"/>");
        try (PDDocument document = Loader.loadPDF(pressed.bytes)) {
            PDOutlineItem a = document.getDocumentCatalog().getDocumentOutline().getFirstChild();
            PDOutlineItem b = a.getNextSibling();
            assertEquals("b", b.getTitle());
            assertEquals("c", b.getFirstChild().getTitle());
            assertEquals("d", b.getFirstChild().getNextSibling().getTitle());
        }
    }

    @Test
    void fontsAreEmbeddedSubsetsAndReadable() throws Exception {
        Pressed pressed = Pressed.markup(SPECIMEN, PressSettings.plain());
        int fonts = 0;
        try (PDDocument document = Loader.loadPDF(pressed.bytes)) {
            PDPage page = document.getPage(0);
            for (COSName name : page.getResources().getFontNames()) {
                PDFont font = page.getResources().getFont(name);
                assertTrue(font instanceof PDType0Font, font.getName());
                assertTrue(font.isEmbedded(), font.getName());
                assertTrue(font.getName().matches("[A-Z]{6}\\+.+"), font.getName());
                assertEquals("Identity-H", font.getCOSObject().getNameAsString(COSName.ENCODING));
                assertTrue(font.getCOSObject().containsKey(COSName.TO_UNICODE));
                fonts++;
            }
        }
        assertEquals(4, fonts);
        assertTrue(pressed.text().contains("Tide 2 1\u20442 \u2702 \u0416"), pressed.text());
        // Whole, the four files are over 2 MB.
        assertTrue(pressed.bytes.length < 40_000, pressed.bytes.length + " bytes");
    }

    @Test
    void equalMarkupGivesEqualBytesInAnyLocaleAndTimeZone() throws Exception {
        byte[] first = Pressed.markup(SPECIMEN, PressSettings.plain()).bytes;
        Locale locale = Locale.getDefault();
        TimeZone zone = TimeZone.getDefault();
        try {
            for (String[] place : new String[][] {{"tr-TR", "Asia/Kathmandu"}, {"de-DE", "America/St_Johns"},
                {"ar-EG-u-nu-arab", "Pacific/Kiritimati"}, {"th-TH-u-ca-buddhist", "UTC"}}) {
                Locale.setDefault(Locale.forLanguageTag(place[0]));
                TimeZone.setDefault(TimeZone.getTimeZone(place[1]));
                assertArrayEquals(first, Pressed.markup(SPECIMEN, PressSettings.plain()).bytes, place[0]);
            }
        } finally {
            Locale.setDefault(locale);
            TimeZone.setDefault(zone);
        }
    }

    /** Presses the specimen into a file, in a process of its own. */
    static final class Alone {

        private Alone() {
        }

        public static void main(String[] arguments) throws Exception {
            try (OutputStream out = Files.newOutputStream(Path.of(arguments[0]))) {
                Press.press(new StringReader(SPECIMEN), out, PressSettings.plain());
            }
        }
    }

    @Test
    void anotherProcessGivesTheSameBytes(@TempDir Path folder) throws Exception {
        byte[] here = Pressed.markup(SPECIMEN, PressSettings.plain()).bytes;
        String java = Path.of(System.getProperty("java.home"), "bin", "java").toString();
        for (String place : List.of("tr Asia/Kathmandu", "fa Pacific/Kiritimati")) {
            String[] words = place.split(" ");
            Path pdf = folder.resolve(words[0] + ".pdf");
            Process process = new ProcessBuilder(java, "-cp", System.getProperty("java.class.path"),
                    "-Duser.language=" + words[0], "-Duser.timezone=" + words[1], Alone.class.getName(),
                    pdf.toString()).redirectErrorStream(true).start();
            String said = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
            assertEquals(0, process.waitFor(), said);
            assertArrayEquals(here, Files.readAllBytes(pdf), place);
        }
    }

    @Test
    void otherMarkupGivesAnotherIdentifier() throws Exception {
        assertNotEquals(id(SPECIMEN), id(SPECIMEN.replace("Two", "Too")));
        assertEquals(id(SPECIMEN), id(SPECIMEN));
    }

    private static String id(String markup) throws Exception {
        try (PDDocument document = Loader.loadPDF(Pressed.markup(markup, PressSettings.plain()).bytes)) {
            return document.getDocument().getDocumentID().toString();
        }
    }

    @Test
    void nothingOfAFailedDocumentIsLeftForTheNext() throws Exception {
        byte[] before = Pressed.markup(SPECIMEN, PressSettings.plain()).bytes;
        String broken = SPECIMEN.replace("</text><text y=\"19\"", " more \u6F22</text><rekt/><text y=\"19\"");
        assertThrows(MarkupException.class, () -> Pressed.markup(broken, PressSettings.plain()));
        Pressed after = Pressed.markup(SPECIMEN, PressSettings.plain());
        assertArrayEquals(before, after.bytes);
        assertEquals(List.of(), after.warnings());
    }

    @Test
    void stylesEndWithTheirPage() throws Exception {
        Pressed pressed = Pressed.markup("<document><page width=\"50\" height=\"50\" fill=\"#123456\" stroke=\"#fff\">"
                + "<rect width=\"5\" height=\"5\"/></page><page width=\"50\" height=\"50\"><rect width=\"5\" height=\"5\"/>"
                + "</page></document>", PressSettings.plain());
        assertEquals(0x123456, pressed.onlyDrawn().fill());
        try (PDDocument document = Loader.loadPDF(pressed.bytes)) {
            String second = new String(document.getPage(1).getContents().readAllBytes(), StandardCharsets.ISO_8859_1);
            assertFalse(second.contains("rg") || second.contains("RG"), second);
        }
    }

    @Test
    void warningsAreBounded() throws Exception {
        Pressed pressed = Pressed.page("<text y=\"9\" width=\"5\">breakwater</text>".repeat(600));
        assertEquals(501, pressed.warnings().size());
        assertEquals("and 100 more", pressed.warnings().get(500));
    }

    @Test
    void warningsOfOneCauseAreToldTogether() throws Exception {
        Pressed pressed = Pressed.markup("<document><page width=\"50\" height=\"50\"><text y=\"9\" width=\"30\">Fog</text><text y=\"9\" width=\"1\">Tide</text></page>"
                + "<page width=\"50\" height=\"50\">" + "<text y=\"9\" width=\"1\">Bell</text>".repeat(2)
                + "<text y=\"9\" width=\"20\">\uD83E\uDDF5</text></page></document>", PressSettings.plain());
        assertEquals(4, pressed.warnings().size());
        assertEquals(List.of("no room for 3 texts, the first on page 1: \"Tide\"", pressed.warnings().get(3)),
                pressed.report.warningsByCause().stream().map(PressWords.in(Locale.ENGLISH)::say).toList());
    }

    /** Each phrase for several has the number, and then what the phrase for one has. */
    @Test
    void causesThatComeTwiceAreSaidWhole() {
        for (String cause : List.of("warning.cut", "warning.no-room", "warning.missing", "warning.fine")) {
            Said one = Said.of(cause, 7, "first", "second", "third");
            for (Locale language : List.of(Locale.ENGLISH, Locale.GERMAN)) {
                String told = PressWords.in(language).say(new PressReport(9, List.of(one, Said.of(cause, 8, "fourth", "fifth", "sixth"))).warningsByCause().get(0));
                assertTrue(told.matches(".*\\b2 .*7.*first.*"), told);
                String alone = PressWords.in(language).say(one);
                for (String slot : List.of("second", "third")) {
                    assertEquals(alone.contains(slot), told.contains(slot), told);
                }
            }
        }
    }

    /** Gives one page at each read, so that what has been read is known to the page. */
    private static final class PageByPage extends Reader {

        private final int pages;
        private int given;
        private String rest = "<document>";

        PageByPage(int pages) {
            this.pages = pages;
        }

        @Override
        public int read(char[] buffer, int offset, int length) {
            if (rest.isEmpty()) {
                if (given > pages) {
                    return -1;
                }
                given++;
                rest = given > pages ? "</document>" : "<page width=\"210\" height=\"297\"><text x=\"20\" y=\"20\">Page "
                        + given + "</text><rect x=\"20\" y=\"30\" width=\"50\" height=\"4\"/></page>";
            }
            int count = Math.min(length, rest.length());
            rest.getChars(0, count, buffer, offset);
            rest = rest.substring(count);
            return count;
        }

        @Override
        public void close() {
        }
    }

    /** Forgets what is written, but not how much. */
    private static final class Counting extends OutputStream {

        private long bytes;

        @Override
        public void write(int b) {
            bytes++;
        }

        @Override
        public void write(byte[] b, int offset, int length) {
            bytes += length;
        }
    }

    @Test
    void pagesAreDrawnAsTheyAreRead() throws Exception {
        PageByPage reader = new PageByPage(3000);
        Counting out = new Counting();
        List<Integer> reported = new ArrayList<>();
        List<Long> written = new ArrayList<>();
        PressReport report = Press.press(reader, out, new PressSettings(1, 1, Optional.empty(), page -> {
            assertTrue(reader.given < page + 2, "page " + page + " reported after page " + reader.given + " was read");
            reported.add(page);
            written.add(out.bytes);
        }));
        assertEquals(3000, report.pages());
        assertEquals(3000, reported.size());
        for (int i = 0; i < 3000; i++) {
            assertEquals(i + 1, reported.get(i));
        }
        // What has been drawn has gone out too, but for a few pages that wait to be bound: those before have well over 200 bytes each.
        for (int i = 100; i < 3000; i += 100) {
            assertTrue(written.get(i) > 100L * (i - 2), "only " + written.get(i) + " bytes by page " + (i + 1));
        }
    }

    @Test
    void aListenersOwnExceptionEndsThePressing() {
        assertThrows(IllegalStateException.class, () -> Press.press(new PageByPage(3), OutputStream.nullOutputStream(),
                new PressSettings(1, 1, Optional.empty(), page -> {
                    throw new IllegalStateException("stopped");
                })));
    }

    @Test
    void correctionsOutOfRangeAreRefused() {
        for (double factor : new double[] {0, 0.79, 1.26, Double.NaN, -1}) {
            assertThrows(IllegalArgumentException.class, () -> Pressed.corrected(factor, 1));
            assertThrows(IllegalArgumentException.class, () -> Pressed.corrected(1, factor));
        }
    }

    @Test
    void theStreamsStayOpen() throws Exception {
        boolean[] closed = new boolean[2];
        Reader reader = new StringReader(SPECIMEN) {
            @Override
            public void close() {
                closed[0] = true;
            }
        };
        OutputStream out = new OutputStream() {
            @Override
            public void write(int b) {
            }

            @Override
            public void close() throws IOException {
                closed[1] = true;
            }
        };
        Press.press(reader, out, PressSettings.plain());
        assertFalse(closed[0] || closed[1]);
    }
}
