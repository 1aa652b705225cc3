package kitleaf.press;

import java.io.Reader;
import java.util.ArrayDeque;
import java.util.Deque;
import javax.xml.stream.Location;
import javax.xml.stream.XMLInputFactory;
import javax.xml.stream.XMLStreamConstants;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;
import kitleaf.words.Said;

/**
 * Reads page markup as a stream and lets through only what the vocabulary knows, where it may stand.
 * Without document types there are no entities but XML's own five, and nothing is ever fetched.
 */
final class MarkupReader {

    /** What comes next in the markup. */
    enum Event {
        START, END, TEXT, DONE
    }

    /** How deep elements may stand in one another. */
    private static final int DEEPEST = 256;

    /** How much of a stray text a message quotes. */
    private static final int QUOTED = 40;

    private static final XMLInputFactory READERS = readers();

    private final XMLStreamReader xml;
    private final Deque<Element> open = new ArrayDeque<>();
    /** Where the last tag or text begins: where the one before ended. */
    private Location reached;
    /** Whether it is one character earlier. */
    private boolean tooFar;
    private Element element;

    MarkupReader(Reader markup) throws XMLStreamException {
        synchronized (READERS) {
            xml = READERS.createXMLStreamReader(markup);
        }
        reached = xml.getLocation();
    }

    /** The JDK's own, whatever else lies on the class path. It takes long to make and makes any number of readers, one at a time. */
    private static XMLInputFactory readers() {
        XMLInputFactory factory = XMLInputFactory.newDefaultFactory();
        factory.setProperty(XMLInputFactory.SUPPORT_DTD, false);
        factory.setProperty(XMLInputFactory.IS_SUPPORTING_EXTERNAL_ENTITIES, false);
        factory.setProperty(XMLInputFactory.IS_REPLACING_ENTITY_REFERENCES, false);
        factory.setProperty(XMLInputFactory.IS_COALESCING, false);
        factory.setProperty(XMLInputFactory.IS_NAMESPACE_AWARE, false);
        return factory;
    }

    /** Goes to the next event; stray white space, comments and processing instructions are skipped. */
    Event next() throws XMLStreamException, MarkupException {
        while (true) {
            Location before = xml.getLocation();
            boolean afterText = xml.getEventType() == XMLStreamConstants.CHARACTERS;
            int event = advance();
            reached = before;
            // The JDK's reader has already taken the "<" when it hands over the text before it.
            tooFar = afterText && event != XMLStreamConstants.CHARACTERS;
            switch (event) {
                case XMLStreamConstants.START_ELEMENT:
                    start();
                    return Event.START;
                case XMLStreamConstants.END_ELEMENT:
                    element = open.pop();
                    return Event.END;
                case XMLStreamConstants.CHARACTERS, XMLStreamConstants.CDATA, XMLStreamConstants.SPACE:
                    if (isText()) {
                        return Event.TEXT;
                    }
                    break;
                case XMLStreamConstants.END_DOCUMENT:
                    return Event.DONE;
                case XMLStreamConstants.DTD:
                    throw new MarkupException(Said.of("markup.doctype"), place());
                case XMLStreamConstants.ENTITY_REFERENCE:
                    throw new MarkupException(Said.of("markup.entity", xml.getLocalName()), place());
                default:
                    break;
            }
        }
    }

    private int advance() throws XMLStreamException, MarkupException {
        try {
            return xml.next();
        } catch (RuntimeException e) {
            // The JDK's reader trips over its own messages for some odd document types.
            throw new MarkupException(Said.of("markup.not-xml"), Place.of(xml.getLocation()));
        }
    }

    /** The element of the last start or end. */
    Element element() {
        return element;
    }

    /** The last text, a part of it when it is long. */
    String text() {
        return xml.getText();
    }

    /** Where the last event begins. */
    Place place() {
        Place place = Place.of(reached);
        return tooFar ? place.before() : place;
    }

    private void start() throws MarkupException {
        String name = xml.getLocalName();
        Vocabulary.Tag tag = Vocabulary.tag(name);
        if (tag == null) {
            throw new MarkupException(Hint.of("markup.element", "markup.element.near", name, Vocabulary.elements(), ""), place());
        }
        if (open.isEmpty()) {
            if (!name.equals("document")) {
                throw new MarkupException(Said.of("markup.begins", name), place());
            }
        } else if (!open.peek().tag().allows(name)) {
            throw new MarkupException(Said.of("markup.inside", name, open.peek().name()), place());
        }
        if (open.size() == DEEPEST) {
            throw new MarkupException(Said.of("markup.deep", DEEPEST), place());
        }
        int count = xml.getAttributeCount();
        Vocabulary.Attribute[] attributes = new Vocabulary.Attribute[count];
        String[] values = new String[count];
        for (int i = 0; i < count; i++) {
            String attribute = xml.getAttributeLocalName(i);
            attributes[i] = tag.attribute(attribute);
            if (attributes[i] == null) {
                throw new MarkupException(Hint.of("markup.attribute", "markup.attribute.near", attribute,
                        tag.attributes(), name), place());
            }
            values[i] = xml.getAttributeValue(i);
        }
        element = new Element(name, tag, attributes, values, place());
        open.push(element);
    }

    private boolean isText() throws MarkupException {
        if (!open.isEmpty() && open.peek().tag().takesText()) {
            return true;
        }
        // Nearly all of it is the space between tags, for which no text need be made.
        if (xml.isWhiteSpace()) {
            return false;
        }
        String stray = xml.getText().strip();
        if (stray.isEmpty()) {
            return false;
        }
        String quoted = stray.length() > QUOTED ? stray.substring(0, QUOTED) + "..." : stray;
        throw new MarkupException(Said.of("markup.stray", quoted), place());
    }
}
