package kitleaf.press;

import com.lowagie.text.Document;
import com.lowagie.text.DocumentException;
import com.lowagie.text.Rectangle;
import com.lowagie.text.pdf.PdfBoolean;
import com.lowagie.text.pdf.PdfContentByte;
import com.lowagie.text.pdf.PdfDate;
import com.lowagie.text.pdf.PdfDestination;
import com.lowagie.text.pdf.PdfEncryption;
import com.lowagie.text.pdf.PdfName;
import com.lowagie.text.pdf.PdfOutline;
import com.lowagie.text.pdf.PdfString;
import com.lowagie.text.pdf.PdfWriter;
import java.io.OutputStream;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.Arrays;
import java.util.Calendar;
import java.util.GregorianCalendar;
import java.util.Locale;
import java.util.TimeZone;

/** Binds pages into one PDF document: its sizes, its metadata, its bookmarks. */
final class Binder {

    /** The date of a document that states none, so that equal markup gives equal bytes. */
    private static final LocalDate UNDATED = LocalDate.of(2000, 1, 1);

    /** Of 0 to 9. Files are a thirtieth larger than by the usual 6, and are packed in half the time. */
    private static final int COMPRESSION = 4;

    private final Document document = new Document(new Rectangle(1, 1), 0, 0, 0, 0);
    private final PdfWriter writer;
    private final PdfOutline[] latest = new PdfOutline[4];
    private int pages;

    Binder(Element root, OutputStream out, PressSettings settings) {
        try {
            writer = PdfWriter.getInstance(document, out);
        } catch (DocumentException e) {
            throw new IllegalStateException(e);
        }
        writer.setCloseStream(false);
        writer.setCompressionLevel(COMPRESSION);
        writer.setPdfVersion(PdfWriter.VERSION_1_6);
        // The plain cross-reference table is written in the default locale's digits, which breaks the
        // file where those are not 0 to 9; the compressed one is binary.
        writer.setFullCompression();
        document.setGlyphSubstitutionEnabled(false);
        writer.addViewerPreference(PdfName.PRINTSCALING, PdfName.NONE);
        writer.addViewerPreference(PdfName.DISPLAYDOCTITLE, PdfBoolean.PDFTRUE);
        writer.getExtraCatalog().put(PdfName.LANG, new PdfString(root.text("lang").orElse("en")));
        root.text("title").ifPresent(document::addTitle);
        root.text("subject").ifPresent(document::addSubject);
        document.addCreator("Kitleaf " + ProgramVersion.text());
        PdfDate date = date(settings.date().orElse(UNDATED));
        writer.getInfo().put(PdfName.CREATIONDATE, date);
        writer.getInfo().put(PdfName.MODDATE, date);
    }

    /** Starts a page and gives its canvas; the page before it goes out. */
    PdfContentByte page(Plate plate) {
        Rectangle size = new Rectangle((float) (plate.widthMm() * Plate.POINTS_PER_MM),
                (float) (plate.heightMm() * Plate.POINTS_PER_MM));
        document.setPageSize(size);
        if (pages == 0) {
            document.open();
        } else {
            document.newPage();
        }
        pages++;
        // A page with nothing on it is still a page.
        writer.setPageEmpty(false);
        return writer.getDirectContent();
    }

    /** A canvas of the document's that belongs to no page. */
    PdfContentByte aside() {
        return new PdfContentByte(writer);
    }

    int pages() {
        return pages;
    }

    /** Adds an entry to the outline that leads to the current page, below the last one of a lower level. */
    void bookmark(String title, int level, double topPt) {
        PdfOutline parent = writer.getRootOutline();
        for (int above = level - 1; above > 0; above--) {
            if (latest[above] != null) {
                parent = latest[above];
                break;
            }
        }
        PdfDestination top = new PdfDestination(PdfDestination.XYZ, 0, (float) topPt, 0);
        latest[level] = new PdfOutline(parent, top, title);
        Arrays.fill(latest, level + 1, latest.length, null);
    }

    /** Writes what comes after the last page; the file's identifier is customarily 16 bytes. */
    void close(byte[] id) {
        writer.getInfo().put(PdfName.FILEID, PdfEncryption.createInfoId(id, id));
        if (!writer.getRootOutline().getKids().isEmpty()) {
            writer.setViewerPreferences(PdfWriter.PageModeUseOutlines);
        }
        document.close();
    }

    private static PdfDate date(LocalDate date) {
        Calendar calendar = new GregorianCalendar(TimeZone.getTimeZone(ZoneOffset.UTC), Locale.ROOT);
        calendar.setTimeInMillis(date.atStartOfDay(ZoneOffset.UTC).toInstant().toEpochMilli());
        return new PdfDate(calendar);
    }
}
