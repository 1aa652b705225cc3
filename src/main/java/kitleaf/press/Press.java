package kitleaf.press;

import com.lowagie.text.ExceptionConverter;
import java.io.IOException;
import java.io.OutputStream;
import java.io.Reader;
import java.util.Objects;
import javax.xml.stream.XMLStreamException;
import kitleaf.words.Said;

/** Draws page markup as a PDF document, page by page as the markup is read. */
public final class Press {

    /** A PDF page is at most 14,400 points wide and high (ISO 32000-1, annex C.2). */
    private static final double MOST_PAGE_MM = 5080;

    private static final int MOST_LEVELS = 3;

    /** The most bytes of marks on one page; the fullest bag tags have a twenty-fifth of it. */
    private static final int MOST_CONTENT = 8_000_000;

    private final PressSettings settings;
    private final MarkupSource source;
    private final PdfSink sink;
    private final Warnings warnings = new Warnings();
    private final Styles styles = new Styles();
    private final GlyphCodes codes = new GlyphCodes();
    private final Compositor compositor = new Compositor(codes);
    /** Null until the beginning has been read. */
    private MarkupReader reader;
    private Bindery bindery;
    private int pages;
    private Forme forme;
    private PageArtist artist;

    private Press(MarkupSource source, PdfSink sink, PressSettings settings) {
        this.source = source;
        this.sink = sink;
        this.settings = settings;
    }

    /**
     * Presses one document. Neither stream is closed. After an exception the PDF is incomplete and
     * must be thrown away.
     *
     * @param markup the page markup, read once to its end
     * @param pdf where the PDF goes, page by page
     * @param settings the printer's correction, the date, and who hears of pages
     * @return the number of pages, and what to warn of
     * @throws MarkupException if the markup is not well-formed XML or says something that cannot be drawn
     * @throws IOException what reading the markup or writing the PDF threw, as it was
     */
    public static PressReport press(Reader markup, OutputStream pdf, PressSettings settings)
            throws MarkupException, IOException {
        Objects.requireNonNull(settings);
        MarkupSource source = new MarkupSource(markup);
        PdfSink sink = new PdfSink(pdf);
        Press press = new Press(source, sink, settings);
        try {
            return press.run();
        } catch (XMLStreamException e) {
            Place place = press.place(e);
            if (source.tooLong()) {
                throw new MarkupException(Said.of("markup.endless", MarkupSource.MOST_A_PAGE / 1_000_000), place);
            }
            if (source.failure().isPresent()) {
                throw source.failure().get();
            }
            throw new MarkupException(Said.of("markup.xml", reason(e)), place);
        } catch (ExceptionConverter e) {
            if (sink.failure().isPresent()) {
                throw sink.failure().get();
            }
            throw e;
        } finally {
            if (press.bindery != null) {
                press.bindery.close();
            }
        }
    }

    private PressReport run() throws XMLStreamException, MarkupException, IOException {
        reader = new MarkupReader(source);
        Element root = null;
        for (MarkupReader.Event event = reader.next(); event != MarkupReader.Event.DONE; event = reader.next()) {
            Element element = reader.element();
            switch (event) {
                case START -> {
                    root = root == null ? element : root;
                    start(root, element);
                }
                case END -> end(element);
                default -> artist.text(reader.text());
            }
        }
        bindery.finish(source.digest());
        sink.flush();
        return new PressReport(pages, warnings.list());
    }

    private void start(Element root, Element element) throws MarkupException {
        switch (element.name()) {
            case "document" -> { }
            case "page" -> startPage(root, element);
            case "bookmark" -> forme.add(new Forme.Bookmark(element.neededText("title"),
                    element.count("level", 1, MOST_LEVELS, 1), artist.topPt()));
            default -> artist.start(element);
        }
    }

    private void startPage(Element root, Element element) throws MarkupException {
        source.startPage();
        Plate plate = new Plate(side(element, "width"), side(element, "height"),
                settings.acrossFactor(), settings.downFactor());
        if (bindery == null) {
            bindery = new Bindery(new Binder(root, sink, settings));
        }
        pages++;
        // Most pages are like the one before.
        forme = new Forme(plate, forme == null ? 1 << 14 : forme.content().length() + (1 << 10));
        artist = new PageArtist(pages, element, new Pen(forme), styles, compositor, warnings);
    }

    private static double side(Element page, String name) throws MarkupException {
        double side = page.neededLength(name);
        if (side < 1 || side > MOST_PAGE_MM) {
            throw page.fault("markup.page", name, page.neededText(name), (int) MOST_PAGE_MM);
        }
        return side;
    }

    private void end(Element element) throws MarkupException, IOException {
        switch (element.name()) {
            case "document" -> {
                if (pages == 0) {
                    throw element.fault("markup.no-pages");
                }
            }
            case "page" -> {
                bindery.take(forme.lock(codes.takeFresh()));
                settings.onPage().accept(pages);
            }
            case "bookmark" -> { }
            default -> {
                artist.end(element);
                if (forme.content().length() > MOST_CONTENT) {
                    throw element.fault("markup.full", MOST_CONTENT / 1_000_000);
                }
            }
        }
    }

    private Place place(XMLStreamException e) {
        return e.getLocation() != null ? Place.of(e.getLocation()) : reader != null ? reader.place() : new Place(1, 1, 0);
    }

    /** The XML reader's own words, without its line and column, which it adds on a line of their own. */
    private static Object reason(XMLStreamException e) {
        String message = e.getMessage();
        if (message == null) {
            return Said.of("markup.unreadable");
        }
        int place = message.indexOf("\n at [");
        return (place < 0 ? message : message.substring(0, place)).strip();
    }
}
