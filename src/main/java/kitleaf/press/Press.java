package kitleaf.press;

import com.lowagie.text.ExceptionConverter;
import java.io.IOException;
import java.io.OutputStream;
import java.io.Reader;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import javax.xml.stream.XMLStreamException;
import kitleaf.press.binding.Binder;
import kitleaf.press.binding.Bindery;
import kitleaf.press.binding.Forme;
import kitleaf.press.binding.PdfSink;
import kitleaf.press.drawing.LateWords;
import kitleaf.press.drawing.PageArtist;
import kitleaf.press.drawing.Pen;
import kitleaf.press.flow.FixedBox;
import kitleaf.press.flow.FlowCards;
import kitleaf.press.flow.FlowPages;
import kitleaf.press.flow.FlowReader;
import kitleaf.press.flow.FlowTaker;
import kitleaf.press.flow.Laid;
import kitleaf.press.markup.Element;
import kitleaf.press.markup.MarkupException;
import kitleaf.press.markup.MarkupReader;
import kitleaf.press.markup.MarkupSource;
import kitleaf.press.markup.Place;
import kitleaf.press.markup.Plate;
import kitleaf.press.markup.Style;
import kitleaf.press.markup.Styles;
import kitleaf.press.type.Compositor;
import kitleaf.press.type.GlyphCodes;
import kitleaf.press.type.Warnings;
import kitleaf.words.Said;

/** Draws page markup as a PDF document, page by page as the markup is read. */
public final class Press {

    /** A PDF page is at most 14,400 points wide and high (ISO 32000-1, annex C.2). */
    private static final double MOST_PAGE_MM = 5080;

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
    /** What reads the flow that is open, or null; its own element, and what makes pages of it. */
    private FlowReader flow;
    private FlowReader.Node flowing;
    private FlowTaker taker;
    private final List<LateWords> late = new ArrayList<>();

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
                default -> {
                    if (flow != null) {
                        flow.text(reader.text());
                    } else {
                        artist.text(reader.text());
                    }
                }
            }
        }
        for (LateWords words : late) {
            Forme laid = words.lay(pages, compositor, warnings);
            bindery.take(laid.lock(codes.takeFresh()));
        }
        bindery.finish(source.digest());
        sink.flush();
        return new PressReport(pages, warnings.list());
    }

    private void start(Element root, Element element) throws MarkupException {
        if (flow != null) {
            flow.start(element);
            return;
        }
        switch (element.name()) {
            case "document" -> styles.speak(element.text("lang").orElse("en"));
            case "page" -> startPage(root, element);
            case "pages", "cards" -> startFlow(root, element);
            default -> artist.start(element);
        }
    }

    private void startFlow(Element root, Element element) throws MarkupException {
        source.startPage();
        flowing = new FlowReader.Node(element, element.style(Style.DEFAULT, styles), styles.quotes());
        flow = new FlowReader(flowing, styles, true);
        FlowTaker.Printer printer = (page, drawing) -> print(root, page, drawing);
        taker = element.name().equals("pages") ? new FlowPages(flowing, compositor, printer) : new FlowCards(flowing, compositor, printer);
    }

    private void end(FlowReader.Node node) throws MarkupException, IOException {
        if (node == flowing) {
            taker.end();
            flow = null;
        } else if (node != null) {
            taker.take(node);
        }
    }

    /** Draws a page of a flow. */
    private void print(Element root, Element page, Laid.Drawing drawing) throws MarkupException, IOException {
        startPage(root, page);
        drawing.at(0, 0, artist);
        checkContent(page);
        endPage();
    }

    private void checkContent(Element element) throws MarkupException {
        if (forme.content().length() > MOST_CONTENT) {
            throw element.fault("markup.full", MOST_CONTENT / 1_000_000);
        }
    }

    private void endPage() throws IOException {
        if (!artist.late().isEmpty()) {
            late.add(artist.late());
        }
        bindery.take(forme.lock(codes.takeFresh()));
        settings.onPage().accept(pages);
    }

    private void startPage(Element root, Element element) throws MarkupException {
        source.startPage();
        Plate plate = new Plate(side(element, "width"), side(element, "height"),
                settings.acrossFactor(), settings.downFactor());
        if (bindery == null) {
            bindery = new Bindery(new Binder(root, sink, settings.date()));
        }
        pages++;
        // Most pages are like the one before.
        forme = new Forme(plate, forme == null ? 1 << 14 : forme.content().length() + (1 << 10));
        artist = new PageArtist(pages, element, new Pen(forme), styles, compositor, warnings,
                (box, style) -> new FixedBox(box, style, styles, compositor));
    }

    private static double side(Element page, String name) throws MarkupException {
        double side = page.neededLength(name);
        if (side < 1 || side > MOST_PAGE_MM) {
            throw page.fault("markup.page", name, page.neededText(name), (int) MOST_PAGE_MM);
        }
        return side;
    }

    private void end(Element element) throws MarkupException, IOException {
        if (flow != null) {
            end(flow.end(element));
            return;
        }
        switch (element.name()) {
            case "document" -> {
                if (pages == 0) {
                    throw element.fault("markup.no-pages");
                }
            }
            case "page" -> endPage();
            default -> {
                artist.end(element);
                checkContent(element);
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
