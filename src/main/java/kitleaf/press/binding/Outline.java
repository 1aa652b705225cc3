package kitleaf.press.binding;

import com.lowagie.text.pdf.PdfDestination;
import com.lowagie.text.pdf.PdfDictionary;
import com.lowagie.text.pdf.PdfIndirectReference;
import com.lowagie.text.pdf.PdfName;
import com.lowagie.text.pdf.PdfNumber;
import com.lowagie.text.pdf.PdfObject;
import com.lowagie.text.pdf.PdfString;
import com.lowagie.text.pdf.PdfWriter;
import java.io.IOException;
import java.util.ArrayDeque;
import java.util.Deque;

/**
 * The document's outline (ISO 32000-1, 12.3.3), every entry open. An entry is written as soon as it is known what follows it, so that
 * only the path to the newest is held; OpenPDF would hold them all to the end.
 */
final class Outline {

    /** An entry that still may get children or a next one; the root has level 0 and neither title nor place. */
    private static final class Entry {

        private final int level;
        private final PdfIndirectReference self;
        private final PdfDictionary written = new PdfDictionary();
        private PdfIndirectReference latestChild;
        private int below;

        Entry(int level, PdfIndirectReference self) {
            this.level = level;
            this.self = self;
        }
    }

    private final PdfWriter writer;
    /** From the newest entry up to the root. */
    private final Deque<Entry> path = new ArrayDeque<>();

    Outline(PdfWriter writer) {
        this.writer = writer;
    }

    boolean isEmpty() {
        return path.isEmpty();
    }

    /**
     * Adds an entry below the last one of a lower level.
     *
     * @param level from 1
     * @param page it leads to
     * @param topPt how far from the page's lower edge the reader's window begins
     */
    void add(String title, int level, PdfIndirectReference page, double topPt) throws IOException {
        if (path.isEmpty()) {
            path.push(new Entry(0, writer.getPdfIndirectReference()));
        }
        Entry entry = new Entry(level, writer.getPdfIndirectReference());
        Entry before = null;
        while (path.peek().level >= level) {
            if (before != null) {
                write(before);
            }
            before = path.pop();
        }
        Entry parent = path.peek();
        if (before != null) {
            before.written.put(PdfName.NEXT, entry.self);
            write(before);
            entry.written.put(PdfName.PREV, before.self);
        } else {
            parent.written.put(PdfName.FIRST, entry.self);
        }
        parent.latestChild = entry.self;
        path.forEach(above -> above.below++);
        entry.written.put(PdfName.TITLE, new PdfString(title, PdfObject.TEXT_UNICODE));
        entry.written.put(PdfName.PARENT, parent.self);
        PdfDestination top = new PdfDestination(PdfDestination.XYZ, 0, (float) topPt, 0);
        top.addPage(page);
        entry.written.put(PdfName.DEST, top);
        path.push(entry);
    }

    /** Writes what is still held; gives the root. */
    PdfIndirectReference finish() throws IOException {
        while (path.size() > 1) {
            write(path.pop());
        }
        Entry root = path.pop();
        root.written.put(PdfName.TYPE, PdfName.OUTLINES);
        write(root);
        return root.self;
    }

    private void write(Entry entry) throws IOException {
        if (entry.below > 0) {
            entry.written.put(PdfName.LAST, entry.latestChild);
            entry.written.put(PdfName.COUNT, new PdfNumber(entry.below));
        }
        writer.addToBody(entry.written, entry.self);
    }
}
