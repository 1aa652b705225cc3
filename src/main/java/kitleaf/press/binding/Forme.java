package kitleaf.press.binding;

import com.lowagie.text.pdf.ByteBuffer;
import com.lowagie.text.pdf.PdfContentByte;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import kitleaf.press.markup.Plate;
import kitleaf.press.type.ContentBytes;
import kitleaf.press.type.Face;
import kitleaf.press.type.GlyphCodes;

/** One page's set type and outlines, locked up and ready to be bound: laid by one thread, and then taken by another. */
public final class Forme {

    /** Content from a place on is in this face. */
    private record Turn(int place, Face face) { }

    /** An entry of the document's outline that leads to this page. */
    public record Bookmark(String title, int level, double topPt) { }

    private final Plate plate;
    private final ContentBytes content;
    private final List<Turn> turns = new ArrayList<>();
    private final List<Bookmark> bookmarks = new ArrayList<>(1);
    private List<GlyphCodes.Spelled> fresh = List.of();
    private boolean callsLate;
    private boolean isLate;

    /**
     * An empty page.
     *
     * @param expected bytes it will have, by guess
     */
    public Forme(Plate plate, int expected) {
        this.plate = plate;
        this.content = new ContentBytes(expected);
    }

    public Plate plate() {
        return plate;
    }

    public ContentBytes content() {
        return content;
    }

    /** What follows is in this face. */
    public void turnTo(Face face) {
        turns.add(new Turn(content.length(), face));
    }

    public void add(Bookmark bookmark) {
        bookmarks.add(bookmark);
    }

    List<Bookmark> bookmarks() {
        return bookmarks;
    }

    /** More of it is laid when all pages are. */
    public void callLate() {
        callsLate = true;
    }

    boolean callsLate() {
        return callsLate;
    }

    /** It is no page, but what the first of those that wait calls for. */
    public Forme late() {
        isLate = true;
        return this;
    }

    boolean isLate() {
        return isLate;
    }

    /** Locks it up, with the characters that no page before had. */
    public Forme lock(List<GlyphCodes.Spelled> characters) {
        fresh = characters;
        return this;
    }

    List<GlyphCodes.Spelled> fresh() {
        return fresh;
    }

    private static byte[] name(Face face, PdfContentByte canvas) {
        ByteBuffer written = canvas.getInternalBuffer();
        int from = written.size();
        canvas.setFontAndSize(face.font(), 1);
        return Arrays.copyOfRange(written.getBuffer(), from, written.size());
    }

    void drawOn(PdfContentByte canvas) {
        int from = 0;
        // OpenPDF names a font for the page when it is first asked, and writes the same each time.
        Map<Face, byte[]> named = new HashMap<>();
        for (Turn turn : turns) {
            content.copyTo(canvas, from, turn.place());
            byte[] name = named.get(turn.face());
            if (name == null) {
                named.put(turn.face(), name(turn.face(), canvas));
            } else {
                canvas.getInternalBuffer().append(name, 0, name.length);
            }
            from = turn.place();
        }
        content.copyTo(canvas, from, content.length());
    }
}
