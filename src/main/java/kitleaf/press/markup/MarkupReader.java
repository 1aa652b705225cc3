package kitleaf.press.markup;

import com.fasterxml.aalto.stax.InputFactoryImpl;
import java.io.Reader;
import java.util.ArrayDeque;
import java.util.Deque;
import javax.xml.stream.XMLInputFactory;
import javax.xml.stream.XMLStreamConstants;
import javax.xml.stream.XMLStreamException;
import kitleaf.words.Said;
import org.codehaus.stax2.XMLInputFactory2;
import org.codehaus.stax2.XMLStreamReader2;

/**
 * Reads page markup as a stream and lets through only what the vocabulary knows, where it may stand.
 * Without document types there are no entities but XML's own five, and nothing is ever fetched.
 */
public final class MarkupReader {

    /** What comes next in the markup. */
    public enum Event {
        START, END, TEXT, DONE
    }

    /** How deep elements may stand in one another. */
    private static final int DEEPEST = 256;

    /** How much of a stray text a message quotes. */
    private static final int QUOTED = 40;

    private static final XMLInputFactory2 READERS = readers();

    private final XMLStreamReader2 xml;
    private final Deque<Element> open = new ArrayDeque<>();
    private Element element;

    /** Reads the beginning at once. */
    public MarkupReader(Reader markup) throws XMLStreamException {
        xml = (XMLStreamReader2) READERS.createXMLStreamReader(markup);
    }

    /** Makes readers for any number of threads, once it is set up. */
    private static XMLInputFactory2 readers() {
        XMLInputFactory2 factory = new InputFactoryImpl();
        factory.setProperty(XMLInputFactory.SUPPORT_DTD, false);
        factory.setProperty(XMLInputFactory.IS_SUPPORTING_EXTERNAL_ENTITIES, false);
        factory.setProperty(XMLInputFactory.IS_REPLACING_ENTITY_REFERENCES, false);
        factory.setProperty(XMLInputFactory.IS_COALESCING, false);
        // Whatever is wrong is told by the step that meets it.
        factory.setProperty(XMLInputFactory2.P_LAZY_PARSING, false);
        return factory;
    }

    /** Goes to the next event; stray white space, comments and processing instructions are skipped. */
    public Event next() throws XMLStreamException, MarkupException {
        while (true) {
            switch (xml.next()) {
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

    /** The element of the last start or end. */
    public Element element() {
        return element;
    }

    /** The last text, a part of it when it is long. */
    public String text() {
        return xml.getText();
    }

    /** Where the last event begins. */
    public Place place() {
        return Place.of(xml.getLocationInfo().getStartLocation());
    }

    private void start() throws MarkupException {
        String name = name(xml.getPrefix(), xml.getLocalName());
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
        if (xml.getNamespaceCount() > 0) {
            // Where no prefix is declared there is none but XML's own.
            throw new MarkupException(Hint.of("markup.attribute", "markup.attribute.near", "xmlns", tag.attributes(), name), place());
        }
        int count = xml.getAttributeCount();
        Vocabulary.Attribute[] attributes = new Vocabulary.Attribute[count];
        String[] values = new String[count];
        for (int i = 0; i < count; i++) {
            String attribute = name(xml.getAttributePrefix(i), xml.getAttributeLocalName(i));
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

    private static String name(String prefix, String local) {
        return prefix == null || prefix.isEmpty() ? local : prefix + ":" + local;
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
