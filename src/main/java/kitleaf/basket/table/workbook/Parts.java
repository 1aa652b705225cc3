package kitleaf.basket.table.workbook;

import java.io.FilterInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Path;
import java.util.Optional;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;
import javax.xml.stream.XMLInputFactory;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;

/** The XML parts packed in a workbook. They declare nothing, fetch nothing from elsewhere, and end where they grow beyond all measure. */
final class Parts implements AutoCloseable {

    /** The most that all parts read may hold once unpacked; five thousand rows of thirty cells take a tenth. */
    static final long MOST_BYTES = 32_000_000;

    static final String ENDING = ".xml";

    private static final XMLInputFactory XML = XMLInputFactory.newDefaultFactory();

    static {
        XML.setProperty(XMLInputFactory.SUPPORT_DTD, false);
        XML.setProperty(XMLInputFactory.IS_SUPPORTING_EXTERNAL_ENTITIES, false);
        XML.setProperty(XMLInputFactory.IS_COALESCING, true);
    }

    private final ZipFile zip;
    private long left = MOST_BYTES;

    /** Opens a workbook; one that is none is told by an exception. */
    Parts(Path file) throws IOException {
        zip = new ZipFile(file.toFile());
    }

    /** Reads one element after another of a part. */
    interface Reading {
        void of(XMLStreamReader xml) throws XMLStreamException, TooLarge;
    }

    /** Reads a part, if it is there: whoever reads meets each element's start, and reads on from it as far as is theirs. */
    boolean read(String name, Reading reading) throws IOException {
        Optional<ZipEntry> entry = Optional.ofNullable(zip.getEntry(name));
        if (entry.isEmpty()) {
            return false;
        }
        try (InputStream in = new Bounded(zip.getInputStream(entry.get()))) {
            XMLStreamReader xml = XML.createXMLStreamReader(in);
            while (xml.hasNext()) {
                if (xml.next() == XMLStreamReader.DTD) {
                    throw new IOException();
                }
                if (xml.isStartElement()) {
                    reading.of(xml);
                }
            }
            return true;
        } catch (XMLStreamException e) {
            throw left < 0 ? new TooLarge() : new IOException(e);
        }
    }

    /** All text within the element at hand, up to its end. */
    static String text(XMLStreamReader xml) throws XMLStreamException {
        StringBuilder text = new StringBuilder();
        for (int depth = 1; depth > 0;) {
            switch (xml.next()) {
                case XMLStreamReader.START_ELEMENT -> depth++;
                case XMLStreamReader.END_ELEMENT -> depth--;
                case XMLStreamReader.CHARACTERS, XMLStreamReader.CDATA, XMLStreamReader.SPACE -> text.append(xml.getText());
                default -> { }
            }
        }
        return text.toString();
    }

    @Override
    public void close() throws IOException {
        zip.close();
    }

    /** Stops a part that unpacks to more than there may be. */
    private final class Bounded extends FilterInputStream {

        Bounded(InputStream in) {
            super(in);
        }

        @Override
        public int read() throws IOException {
            int one = super.read();
            counted(one < 0 ? 0 : 1);
            return one;
        }

        @Override
        public int read(byte[] into, int from, int most) throws IOException {
            return counted(super.read(into, from, most));
        }

        private int counted(int bytes) throws TooLarge {
            left -= Math.max(0, bytes);
            if (left < 0) {
                throw new TooLarge();
            }
            return bytes;
        }
    }

    /** More is packed in it than anyone's table holds. */
    static final class TooLarge extends IOException {
        private static final long serialVersionUID = 1;
    }
}
