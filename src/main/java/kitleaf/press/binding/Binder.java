package kitleaf.press.binding;

import com.lowagie.text.Document;
import com.lowagie.text.DocumentException;
import com.lowagie.text.ExceptionConverter;
import com.lowagie.text.Rectangle;
import com.lowagie.text.pdf.PdfBoolean;
import com.lowagie.text.pdf.PdfContentByte;
import com.lowagie.text.pdf.PdfDate;
import com.lowagie.text.pdf.PdfEncryption;
import com.lowagie.text.pdf.PdfName;
import com.lowagie.text.pdf.PdfString;
import com.lowagie.text.pdf.PdfTemplate;
import com.lowagie.text.pdf.PdfWriter;
import java.io.IOException;
import java.io.OutputStream;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayDeque;
import java.util.Calendar;
import java.util.Deque;
import java.util.GregorianCalendar;
import java.util.Locale;
import java.util.Optional;
import java.util.TimeZone;
import kitleaf.press.markup.Element;
import kitleaf.press.markup.Plate;
import kitleaf.press.type.GlyphCodes;

/** Binds pages into one PDF document: its sizes, its metadata, its bookmarks. */
public final class Binder {

    /** The date of a document that states none, so that equal markup gives equal bytes. */
    private static final LocalDate UNDATED = LocalDate.of(2000, 1, 1);

    /** Of 0 to 9. Files are a thirtieth larger than by the usual 6, and are packed in half the time. */
    private static final int COMPRESSION = 4;

    private final Document document = new Document(new Rectangle(1, 1), 0, 0, 0, 0);
    private final PdfWriter writer;
    private final Outline outline;
    private PdfContentByte aside;
    /** Of the pages that call for words laid last, what they call. */
    private final Deque<PdfTemplate> called = new ArrayDeque<>();
    private int pages;

    public Binder(Element root, OutputStream out, Optional<LocalDate> date) {
        try {
            writer = PdfWriter.getInstance(document, out);
        } catch (DocumentException e) {
            throw new IllegalStateException(e);
        }
        outline = new Outline(writer);
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
        PdfDate made = date(date.orElse(UNDATED));
        writer.getInfo().put(PdfName.CREATIONDATE, made);
        writer.getInfo().put(PdfName.MODDATE, made);
    }

    /** Adds a page; the one before it goes out. */
    void bind(Forme forme) {
        Plate plate = forme.plate();
        document.setPageSize(new Rectangle((float) (plate.widthMm() * Plate.POINTS_PER_MM),
                (float) (plate.heightMm() * Plate.POINTS_PER_MM)));
        if (pages == 0) {
            document.open();
            // A canvas of the document's that belongs to no page.
            aside = new PdfContentByte(writer);
        } else {
            document.newPage();
        }
        pages++;
        // A page with nothing on it is still a page.
        writer.setPageEmpty(false);
        draw(forme, writer.getDirectContent());
        if (forme.callsLate()) {
            PdfTemplate late = PdfTemplate.createTemplate(writer, document.getPageSize().getWidth(), document.getPageSize().getHeight());
            writer.getDirectContent().addTemplate(late, 0, 0);
            called.add(late);
        }
        for (Forme.Bookmark bookmark : forme.bookmarks()) {
            try {
                outline.add(bookmark.title(), bookmark.level(), writer.getPageReference(pages), bookmark.topPt());
            } catch (IOException e) {
                throw new ExceptionConverter(e);
            }
        }
    }

    private void draw(Forme forme, PdfContentByte canvas) {
        for (GlyphCodes.Spelled fresh : forme.fresh()) {
            GlyphCodes.show(fresh.face(), fresh.text(), aside);
        }
        forme.drawOn(canvas);
    }

    /** What the next of the pages that wait for their last words calls for. */
    void bindLate(Forme forme) {
        PdfTemplate late = called.remove();
        draw(forme, late);
        try {
            writer.releaseTemplate(late);
        } catch (IOException e) {
            throw new ExceptionConverter(e);
        }
    }

    /** Writes what comes after the last page; the file's identifier is customarily 16 bytes. */
    void close(byte[] id) {
        writer.getInfo().put(PdfName.FILEID, PdfEncryption.createInfoId(id, id));
        if (!outline.isEmpty()) {
            writer.setViewerPreferences(PdfWriter.PageModeUseOutlines);
            try {
                writer.getExtraCatalog().put(PdfName.OUTLINES, outline.finish());
            } catch (IOException e) {
                throw new ExceptionConverter(e);
            }
        }
        document.close();
    }

    private static PdfDate date(LocalDate date) {
        Calendar calendar = new GregorianCalendar(TimeZone.getTimeZone(ZoneOffset.UTC), Locale.ROOT);
        calendar.setTimeInMillis(date.atStartOfDay(ZoneOffset.UTC).toInstant().toEpochMilli());
        return new PdfDate(calendar);
    }
}
